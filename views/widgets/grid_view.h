#pragma once

#include "views/widgets/grid_model.h"

#include <QTableView>

class QLineEdit;
class QMenu;

namespace ts {

class GridDelegate;
class GridHeader;
class Style;
enum class GridGo;

/// A table of records that is edited in place. Typing or Enter begins a field; Enter and Tab commit it and go on, Escape leaves it as
/// it was, leaving it commits, too. Space ticks, or sets the next word; a word's own letter sets it. Tab leaves the table.
/// It is as high as its rows, and scrolls where there is less room.
class GridView : public QTableView {
    Q_OBJECT
public:
    GridView(const Style &style, const QString &name, QList<GridColumn> columns, QWidget *parent = nullptr);

    [[nodiscard]] GridModel &rows() const { return *m_rows; }
    void setCommit(GridModel::Commit commit) { m_rows->setCommit(std::move(commit)); }
    /// Shows these rows; the current one and a field in which somebody types stay.
    void setRows(const QList<GridRow> &rows);

    /// Other columns, where their titles differ; the current row stays when it is shown again.
    void setColumns(const QList<GridColumn> &columns);

    /// The column whose words their letters set from anywhere in a row; letters then begin no field. `after` is told what was set.
    void setLetterColumn(int column, std::function<void(const QUuid &row, const QString &value)> after = {})
    {
        m_letterColumn = column;
        m_afterLetter = std::move(after);
    }
    /// Where the first key in a row that shows nothing to edit at hand begins to write: -1 nowhere.
    void setHomeColumn(int column) { m_homeColumn = column; }

    /// Enter in the adding row adds, and is ready for the next one; Tab goes on in the row that was added. Else both do.
    void setAddsInARow(bool inARow) { m_addsInARow = inARow; }

    /// Never scrolls by itself: always as high as its rows, in a page that scrolls as a whole.
    void setWhole(bool whole);

    /// So many columns at its left and right edge stay where they are while the others scroll from side to side.
    void setPinned(int left, int right);
    [[nodiscard]] QRect visualRect(const QModelIndex &index) const override;
    [[nodiscard]] QModelIndex indexAt(const QPoint &place) const override;
    void scrollTo(const QModelIndex &index, ScrollHint hint = EnsureVisible) override;

    [[nodiscard]] QUuid currentKey() const;
    void setCurrent(const QUuid &key, int column = -1);
    /// Opens the field of a cell.
    void editAt(const QUuid &key, int column);
    /// Makes the row that shows a record next after (or before) the current one the current one, where there is one.
    void step(int by);
    void editAdding(const QString &name = {});
    void commitEdit();
    [[nodiscard]] bool isEditing() const { return state() == EditingState; }
    [[nodiscard]] QLineEdit *field() const; ///< in which somebody types; nullptr where none is open

    /// Something that can be done with the current row, by a key and from the row's menu.
    QAction *addRowAction(const QString &text, const QKeySequence &key, std::function<void(const QUuid &row)> act);
    /// The words of a cell to choose from, or nullptr where it has none. It deletes itself when it closes.
    QMenu *openChoices(const QModelIndex &index);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void currentRowChanged(const QUuid &key);
    /// Enter or a double click on a cell without a field, words or box.
    void opened(const QUuid &key, int column);
    void fieldClosed();

protected:
    void closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void scrollContentsBy(int dx, int dy) override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;
    void keyboardSearch(const QString &) override {}
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void fit();
    void fitColumns();
    void fitRows();
    [[nodiscard]] int contentHeight(int rows) const;
    void goOn(const QPersistentModelIndex &edited, GridGo go, bool added);
    void goSideways(int row, int column, int step);
    void goAlong(int row, int column, int step);
    bool typeLetter(const QString &text);
    bool activate(const QModelIndex &index);
    bool setNextWord(const QModelIndex &index);

    const Style &m_style;
    GridModel *m_rows;
    GridDelegate *m_delegate;
    GridHeader *m_head;
    int m_letterColumn = -1;
    std::function<void(const QUuid &row, const QString &value)> m_afterLetter;
    int m_homeColumn = -1;
    QUuid m_stayAt; ///< the row to be current again when the rows of other columns come
    bool m_addsInARow = false;
    bool m_whole = false;
    bool m_fitting = false;
};

} // namespace ts
