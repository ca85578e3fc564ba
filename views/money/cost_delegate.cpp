#include "views/money/cost_delegate.h"

#include <QPainter>

namespace ts {

void CostDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    if (const auto ground = index.data(Qt::BackgroundRole); ground.isValid())
        painter->fillRect(option.rect, ground.value<QColor>());
    QStyledItemDelegate::paint(painter, option, index);
}

} // namespace ts
