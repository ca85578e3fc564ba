#include "views/money/cost_delegate.h"

#include <QLineEdit>
#include <QPainter>

namespace ts {

void CostDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    if (const auto ground = index.data(Qt::BackgroundRole); ground.isValid())
        painter->fillRect(option.rect, ground.value<QColor>());
    QStyledItemDelegate::paint(painter, option, index);
}

QWidget *CostDelegate::createEditor(QWidget *parent, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QWidget *editor = QStyledItemDelegate::createEditor(parent, option, index);
    if (auto *line = qobject_cast<QLineEdit *>(editor))
        connect(line, &QLineEdit::textEdited, this, [this, row = index.row()](const QString &text) { Q_EMIT typed(row, text); });
    return editor;
}

void CostDelegate::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    if (const auto *line = qobject_cast<QLineEdit *>(editor); line && line->isModified())
        return;
    QStyledItemDelegate::setEditorData(editor, index);
}

void CostDelegate::setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const
{
    if (const auto *line = qobject_cast<QLineEdit *>(editor); line && !line->isModified())
        return;
    QStyledItemDelegate::setModelData(editor, model, index);
}

} // namespace ts
