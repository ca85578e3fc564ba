#include "views/widgets/grid_delegate.h"

#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/grid_model.h"
#include "views/widgets/grid_paint.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>

namespace ts {

GridDelegate::GridDelegate(const Style &style, GridModel &model, QObject *parent) : QStyledItemDelegate(parent), m_style(style), m_model(model) {}

void GridDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const Ink &ink = m_style.ink();
    const GridPaint paint(m_style);
    const GridRow &row = m_model.row(index.row());
    painter->save();
    painter->setClipRect(option.rect);
    if (row.kind == GridRowKind::Group) {
        paint.drawGroup(*painter, option.rect, m_model.cell(index));
    } else {
        if (option.state & QStyle::State_Selected)
            painter->fillRect(option.rect, ink.copperPaper);
        paint.draw(*painter, option.rect, m_model.cell(index), m_model.columns().at(index.column()));
    }
    painter->setRenderHint(QPainter::Antialiasing, false);
    if (index.row() + 1 < m_model.rowCount()) { // under the last one runs the frame
        painter->setPen(ink.line);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    }
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    const bool worked = view && view->hasFocus();
    // The row at hand has an edge: where it has gone after a key is seen from the corner of an eye.
    if (worked && index.column() == 0 && index.row() == view->currentIndex().row())
        painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height() - 1), ink.copper);
    if (worked && view->currentIndex() == index) {
        painter->setPen(QPen(ink.copper, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    painter->restore();
}

QSize GridDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    return {option.rect.width(), GridPaint(m_style).height(m_model.cell(index), option.rect.width())};
}

QWidget *GridDelegate::createEditor(QWidget *parent, const QStyleOptionViewItem &, const QModelIndex &index) const
{
    const GridColumn &column = m_model.columns().at(index.column());
    auto *field = new QLineEdit(parent);
    field->setProperty("role", QStringLiteral("cell"));
    field->setPlaceholderText(m_model.cell(index).hint);
    if (column.right)
        field->setAlignment(Qt::AlignRight);
    if (m_model.cell(index).figures)
        field->setFont(m_style.figures(0.96));
    const QString row = m_model.cell(m_model.index(index.row(), 0)).text;
    field->setAccessibleName(index.column() == 0 || row.isEmpty() ? column.title : tr("%1 of %2").arg(column.title, row));
    if (column.completions) {
        auto *completer = new QCompleter(column.completions(), field);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        field->setCompleter(completer);
    }
    connect(field, &QLineEdit::textEdited, field, [field] { restyle(field, "wrong", false); });
    m_editor = field;
    m_editing = index;
    return field;
}

void GridDelegate::setEditorData(QWidget *editor, const QModelIndex &index) const
{
    auto *field = qobject_cast<QLineEdit *>(editor);
    if (!field || field->isModified())
        return; // somebody is typing: another's change must not take it away
    field->setText(index.data(Qt::EditRole).toString());
}

void GridDelegate::setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const
{
    const auto *field = qobject_cast<QLineEdit *>(editor);
    if (!field)
        return;
    m_model.setLeaving(true);
    model->setData(index, field->text());
    m_model.setLeaving(false);
}

void GridDelegate::updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option, const QModelIndex &) const
{
    editor->setGeometry(option.rect.adjusted(0, 0, 0, -1));
}

bool GridDelegate::finish(GridGo go)
{
    auto *field = qobject_cast<QLineEdit *>(m_editor.data());
    if (!field)
        return true;
    const QPersistentModelIndex edited = m_editing;
    const bool added = edited.isValid() && m_model.row(edited.row()).kind == GridRowKind::Adding && !field->text().trimmed().isEmpty();
    const QPointer<QWidget> alive = field;
    if (edited.isValid() && !m_model.setData(edited, field->text())) {
        if (alive)
            restyle(field, "wrong", true);
        return false;
    }
    if (alive)
        Q_EMIT closeEditor(field, NoHint);
    Q_EMIT finished(edited, go, added);
    return true;
}

bool GridDelegate::passesKey(int key) const
{
    const auto *field = qobject_cast<QLineEdit *>(m_editor.data());
    const bool choosing = field && field->completer() && field->completer()->popup()->isVisible();
    return choosing && (key == Qt::Key_Up || key == Qt::Key_Down);
}

bool GridDelegate::eventFilter(QObject *object, QEvent *event)
{
    if (object != m_editor || event->type() != QEvent::KeyPress)
        return QStyledItemDelegate::eventFilter(object, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    if (passesKey(key))
        return false;
    switch (key) {
    case Qt::Key_Tab:
        finish(GridGo::Next);
        return true;
    case Qt::Key_Backtab:
        finish(GridGo::Previous);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        finish(m_editing.isValid() && m_model.columns().at(m_editing.column()).down ? GridGo::Down : GridGo::Stay);
        return true;
    case Qt::Key_Up:
        finish(GridGo::Up);
        return true;
    case Qt::Key_Down:
        finish(GridGo::Down);
        return true;
    case Qt::Key_Escape:
        Q_EMIT closeEditor(m_editor, RevertModelCache);
        return true;
    default:
        return QStyledItemDelegate::eventFilter(object, event);
    }
}

bool GridDelegate::editorEvent(QEvent *event, QAbstractItemModel *model, const QStyleOptionViewItem &option, const QModelIndex &index)
{
    const GridCell &cell = m_model.cell(index);
    if (!cell.tick || !(model->flags(index) & Qt::ItemIsUserCheckable))
        return false;
    if (event->type() == QEvent::MouseButtonRelease) {
        const QRect box = GridPaint(m_style).tickRect(option.rect).adjusted(-4, -4, 4, 4);
        if (!box.contains(static_cast<QMouseEvent *>(event)->position().toPoint()))
            return false;
        return model->setData(index, *cell.tick ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    }
    return false;
}

} // namespace ts
