#pragma once

#include <QStyledItemDelegate>

namespace ts {

/// Fills the ground of a line that stands out, which a style sheet's own items would leave bare; tells what is being typed in an
/// editor, and keeps it there when the figures around it change.
class CostDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    void setEditorData(QWidget *editor, const QModelIndex &index) const override;
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override; ///< only where something was typed

Q_SIGNALS:
    void typed(int row, const QString &text) const;
};

} // namespace ts
