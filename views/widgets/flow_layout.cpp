#include "views/widgets/flow_layout.h"

#include <QWidget>

namespace ts {

FlowLayout::FlowLayout(int gap, QWidget *parent) : QLayout(parent), m_gap(gap)
{
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout()
{
    qDeleteAll(m_items);
}

void FlowLayout::addItem(QLayoutItem *item)
{
    m_items << item;
}

QLayoutItem *FlowLayout::takeAt(int index)
{
    return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

int FlowLayout::heightForWidth(int width) const
{
    return layOut(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::minimumSize() const
{
    QSize size;
    for (const QLayoutItem *item : m_items)
        if (!item->isEmpty())
            size = size.expandedTo(item->minimumSize());
    return size.grownBy(contentsMargins());
}

void FlowLayout::setGeometry(const QRect &rect)
{
    QLayout::setGeometry(rect);
    layOut(rect, true);
}

int FlowLayout::layOut(const QRect &rect, bool place) const
{
    const QMargins margins = contentsMargins();
    const QRect inner = rect.marginsRemoved(margins);
    int x = 0;
    int y = 0;
    int line = 0; // the height of this one
    for (QLayoutItem *item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize size = item->sizeHint();
        if (x > 0 && x + size.width() > inner.width()) {
            x = 0;
            y += line + m_gap;
            line = 0;
        }
        if (place) {
            const QRect at(inner.x() + x, inner.y() + y, qMin(size.width(), qMax(inner.width(), 1)), size.height());
            const bool mirrored = parentWidget() && parentWidget()->isRightToLeft();
            item->setGeometry(mirrored ? QRect(inner.right() - (at.right() - inner.x()), at.y(), at.width(), at.height()) : at);
        }
        x += size.width() + m_gap;
        line = qMax(line, size.height());
    }
    return y + line + margins.top() + margins.bottom();
}

} // namespace ts
