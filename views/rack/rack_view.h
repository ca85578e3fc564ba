#pragma once

#include <QAbstractItemView>

class QTimer;

namespace ts {

class RackModel;
class Style;
class TagDelegate;

/// The rack as it is seen. Headings and tags have two heights, so that any row's place is reckoned and none is laid out: ten thousand
/// tags cost no more than those that are in sight.
class RackView : public QAbstractItemView {
    Q_OBJECT
public:
    RackView(RackModel &model, const Style &style, QWidget *parent = nullptr);

    void setInHand(const QUuid &unit);
    /// Marks a row without saying that it was chosen.
    void mark(int row);
    /// The nearest tag from `row` on, upwards or downwards, headings passed over; -1 where there is none.
    [[nodiscard]] int tagFrom(int row, int by) const;

    [[nodiscard]] QRect visualRect(const QModelIndex &index) const override;
    [[nodiscard]] QModelIndex indexAt(const QPoint &point) const override;
    void scrollTo(const QModelIndex &index, ScrollHint hint = EnsureVisible) override;

    /// Letters and figures that are typed here narrow the rack.
    void keyboardSearch(const QString &typed) override { Q_EMIT this->typed(typed); }

    [[nodiscard]] int topRow() const; ///< the first row in sight, -1 where there is none

Q_SIGNALS:
    void chosen(const QModelIndex &index); ///< by a click, or by the arrows after a moment
    void typed(const QString &typed);
    void entered(const QModelIndex &index); ///< by Enter: it is opened to be worked on

protected:
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    bool viewportEvent(QEvent *event) override;
    void scrollContentsBy(int dx, int dy) override;
    void updateGeometries() override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    [[nodiscard]] int horizontalOffset() const override { return 0; }
    [[nodiscard]] int verticalOffset() const override;
    [[nodiscard]] bool isIndexHidden(const QModelIndex &) const override { return false; }
    void setSelection(const QRect &rect, QItemSelectionModel::SelectionFlags command) override;
    [[nodiscard]] QRegion visualRegionForSelection(const QItemSelection &selection) const override;
    void dataChanged(const QModelIndex &first, const QModelIndex &last, const QList<int> &roles) override;

private:
    [[nodiscard]] int topOf(int row) const;
    [[nodiscard]] int rowAt(int y) const; ///< of the whole rack, -1 outside
    void settle();
    void loadSeen();

    RackModel &m_model;
    TagDelegate *m_delegate;
    QTimer *m_chosen;
    QTimer *m_load;
    QPersistentModelIndex m_hover;
};

} // namespace ts
