// Columns of a grid that stay at its edges while the others scroll: where their cells are, and how they come to be painted there.
#include "views/style/style.h"
#include "views/widgets/grid_delegate.h"
#include "views/widgets/grid_header.h"
#include "views/widgets/grid_view.h"

#include <QPainter>
#include <QScrollBar>

namespace ts {

void GridView::setPinned(int left, int right)
{
    m_head->setPinned(left, right);
    viewport()->update();
}

QRect GridView::visualRect(const QModelIndex &index) const
{
    QRect rect = QTableView::visualRect(index);
    if (const auto at = m_head->pinnedAt(index.column()); at && rect.isValid())
        rect.moveLeft(*at);
    return rect;
}

QModelIndex GridView::indexAt(const QPoint &place) const
{
    const int column = m_head->pinnedUnder(place.x());
    return column < 0 ? QTableView::indexAt(place) : m_rows->index(rowAt(place.y()), column);
}

// A pinned cell is always seen from side to side; any other must not lie below one that is.
void GridView::scrollTo(const QModelIndex &index, ScrollHint hint)
{
    QScrollBar *bar = horizontalScrollBar();
    const int before = bar->value();
    QTableView::scrollTo(index, hint);
    if (m_head->pinnedAt(index.column())) {
        bar->setValue(before);
        return;
    }
    const QRect rect = QTableView::visualRect(index);
    if (rect.right() >= m_head->freeRight())
        bar->setValue(bar->value() + rect.right() + 1 - m_head->freeRight());
    if (const int hidden = m_head->freeLeft() - QTableView::visualRect(index).left(); hidden > 0)
        bar->setValue(bar->value() - hidden);
}

void GridView::scrollContentsBy(int dx, int dy)
{
    QTableView::scrollContentsBy(dx, dy);
    viewport()->update(); // what is pinned has not moved with the rest
    m_head->viewport()->update();
}

void GridView::paintEvent(QPaintEvent *event)
{
    QTableView::paintEvent(event);
    QPainter painter(viewport());
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    const int low = rowAt(viewport()->height() - 1);
    bool any = false;
    for (int column = 0; column < m_rows->columnCount(); ++column) {
        const auto at = m_head->pinnedAt(column);
        if (!at)
            continue;
        any = true;
        painter.fillRect(QRect(*at, 0, m_head->sectionSize(column), viewport()->height()), m_style.ink().sheet);
        for (int row = std::max(0, rowAt(0)); row < m_rows->rowCount() && (low < 0 || row <= low); ++row) {
            const QModelIndex index = m_rows->index(row, column);
            option.rect = visualRect(index);
            option.state.setFlag(QStyle::State_Selected, selectionModel()->isSelected(index));
            m_delegate->paint(&painter, option, index);
        }
    }
    if (!any)
        return;
    painter.setPen(m_style.ink().strong);
    for (const int edge : {m_head->freeLeft() - 1, m_head->freeRight()})
        if (edge > 0 && edge < viewport()->width())
            painter.drawLine(edge, 0, edge, viewport()->height());
}

} // namespace ts
