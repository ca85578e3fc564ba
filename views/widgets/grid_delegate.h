#pragma once

#include <QStyledItemDelegate>

#include <QPersistentModelIndex>
#include <QPointer>

namespace ts {

class GridModel;
class Style;
struct GridCell;
struct GridColumn;

/// Where typing goes on after a field was committed.
enum class GridGo { Stay, Next, Previous, Down, Up };

/// Paints the cells of a grid and makes the fields that they are edited in.
class GridDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    GridDelegate(const Style &style, GridModel &model, QObject *parent);

    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    /// Of a width that is already known (option.rect), how high the cell is.
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override;
    void updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option, const QModelIndex &index) const override;

    [[nodiscard]] QWidget *editor() const { return m_editor; }
    /// Commits the open field. Where it is refused the field stays open, and false is answered.
    bool finish(GridGo go);

Q_SIGNALS:
    /// A field was committed and closed. `edited` may have become invalid.
    void finished(const QPersistentModelIndex &edited, ts::GridGo go, bool added) const;

protected:
    bool eventFilter(QObject *object, QEvent *event) override;
    bool editorEvent(QEvent *event, QAbstractItemModel *model, const QStyleOptionViewItem &option, const QModelIndex &index) override;

private:
    bool passesKey(int key) const;

    const Style &m_style;
    GridModel &m_model;
    mutable QPointer<QWidget> m_editor;
    mutable QPersistentModelIndex m_editing;
};

} // namespace ts
