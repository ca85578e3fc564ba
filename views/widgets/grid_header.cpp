#include "views/widgets/grid_header.h"

#include <QPainter>

namespace ts {

GridHeader::GridHeader(QWidget *parent) : QHeaderView(Qt::Horizontal, parent)
{
    setSectionResizeMode(QHeaderView::Fixed);
    setHighlightSections(false);
    setSectionsClickable(false);
}

void GridHeader::setPinned(int left, int right)
{
    m_left = left;
    m_right = right;
    viewport()->update();
}

std::optional<int> GridHeader::pinnedAt(int column) const
{
    if (!crowded() || column < 0 || column >= count())
        return std::nullopt;
    if (column < m_left)
        return sectionPosition(column);
    if (column >= count() - m_right)
        return viewport()->width() - length() + sectionPosition(column);
    return std::nullopt;
}

int GridHeader::pinnedUnder(int x) const
{
    for (int column = 0; column < count(); ++column)
        if (const auto at = pinnedAt(column); at && x >= *at && x < *at + sectionSize(column))
            return column;
    return -1;
}

int GridHeader::freeLeft() const
{
    return crowded() && m_left > 0 && m_left < count() ? sectionPosition(m_left) : 0;
}

int GridHeader::freeRight() const
{
    const int width = viewport()->width();
    return crowded() && m_right > 0 && m_right < count() ? width - length() + sectionPosition(count() - m_right) : width;
}

void GridHeader::paintEvent(QPaintEvent *event)
{
    QHeaderView::paintEvent(event);
    QPainter painter(viewport());
    for (int column = 0; column < count(); ++column)
        if (const auto at = pinnedAt(column)) {
            const QRect rect(*at, 0, sectionSize(column), viewport()->height());
            painter.fillRect(rect, palette().brush(QPalette::Base));
            painter.save();
            paintSection(&painter, rect, column);
            painter.restore();
        }
}

} // namespace ts
