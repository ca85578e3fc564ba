#pragma once

#include <QStyledItemDelegate>

namespace ts {

/// Fills the ground of a line that stands out, which a style sheet's own items would leave bare.
class CostDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
};

} // namespace ts
