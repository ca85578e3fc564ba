#include "views/log/log_view.h"

#include "views/log/log_delegate.h"
#include "views/log/log_model.h"
#include "views/photos/thumbnails.h"
#include "views/style/style.h"

#include <QContextMenuEvent>
#include <QScrollBar>

#include <algorithm>

namespace ts {

LogView::LogView(LogModel &model, const Style &style, Thumbnails &thumbnails, QWidget *parent) : QListView(parent), m_model(model)
{
    setObjectName(QStringLiteral("logList"));
    setAccessibleName(tr("Log of the unit"));
    setModel(&m_model);
    m_delegate = new LogDelegate(model, style, thumbnails, this);
    setItemDelegate(m_delegate);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMouseTracking(true);
    setViewportMargins(0, 0, 0, gap::small);
    verticalScrollBar()->setSingleStep(style.space(8));
    connect(&m_model, &QAbstractItemModel::dataChanged, this, [this](const QModelIndex &first, const QModelIndex &last) {
        for (int row = first.row(); row <= last.row(); ++row)
            m_delegate->forget(m_model.entry(row).key);
        scheduleDelayedItemsLayout();
    });
    connect(&thumbnails, &Thumbnails::arrived, viewport(), qOverload<>(&QWidget::update));
    connect(&style, &Style::changed, this, [this, &style] {
        m_delegate->forgetAll();
        verticalScrollBar()->setSingleStep(style.space(8));
        scheduleDelayedItemsLayout();
    });
}

bool LogView::seesNewest() const
{
    return verticalScrollBar()->value() >= verticalScrollBar()->maximum() - 4;
}

// What is at the top of the view stays there, whatever comes, goes or grows above it; at the end of the log one stays at the end.
void LogView::layOutKeeping(const std::function<void()> &change)
{
    const bool newest = seesNewest();
    const QModelIndex top = indexAt(QPoint(viewport()->width() / 2, 4));
    const QString key = top.isValid() ? m_model.entry(top.row()).key : QString();
    const int y = top.isValid() ? visualRect(top).y() : 0;
    change();
    doItemsLayout();
    if (newest) {
        scrollToNewest();
        return;
    }
    if (const int row = m_model.rowOfKey(key); row >= 0)
        verticalScrollBar()->setValue(verticalScrollBar()->value() + visualRect(m_model.index(row)).y() - y);
}

void LogView::show(const QList<LogEntry> &rows)
{
    layOutKeeping([&] { m_model.setRows(rows); });
}

void LogView::scrollToNewest()
{
    executeDelayedItemsLayout();
    verticalScrollBar()->setValue(verticalScrollBar()->maximum());
}

void LogView::choose(int row)
{
    const QModelIndex index = m_model.index(row);
    setCurrentIndex(index);
    scrollTo(index, QAbstractItemView::PositionAtCenter);
}

QList<LogEntry> LogView::chosen() const
{
    QModelIndexList indexes = selectionModel()->selectedIndexes();
    if (indexes.isEmpty() && currentIndex().isValid())
        indexes << currentIndex();
    std::sort(indexes.begin(), indexes.end());
    QList<LogEntry> entries;
    for (const QModelIndex &index : indexes)
        if (!m_model.entry(index.row()).isDay)
            entries << m_model.entry(index.row());
    return entries;
}

void LogView::setEditor(int row, QWidget *editor)
{
    layOutKeeping([&] {
        if (m_edited.isValid())
            setIndexWidget(m_edited, nullptr);
        m_edited = editor ? QPersistentModelIndex(m_model.index(row)) : QPersistentModelIndex();
        m_delegate->setEditor(editor ? m_model.entry(row).key : QString(), editor);
        if (editor)
            setIndexWidget(m_edited, editor);
    });
    if (editor)
        scrollTo(m_edited);
}

int LogView::photoUnder(const QModelIndex &index, const QPoint &point) const
{
    return index.isValid() ? m_delegate->photoAt(m_model.entry(index.row()), visualRect(index), point) : -1;
}

void LogView::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_F2:
        if (currentIndex().isValid())
            Q_EMIT editWanted(currentIndex().row());
        return;
    case Qt::Key_Delete:
        Q_EMIT takeOutWanted();
        return;
    default:
        break;
    }
    // Letters are for the line, not for a search in the list; space marks only with Ctrl.
    if (!event->text().isEmpty() && event->text().at(0).isPrint() && !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))) {
        event->ignore();
        return;
    }
    if (event->key() == Qt::Key_Escape && selectionModel()->selectedIndexes().size() > 1) {
        setCurrentIndex(currentIndex());
        return;
    }
    QListView::keyPressEvent(event);
}

void LogView::mousePressEvent(QMouseEvent *event)
{
    QListView::mousePressEvent(event);
    const QModelIndex index = indexAt(event->position().toPoint());
    if (const int photo = photoUnder(index, event->position().toPoint()); photo >= 0 && event->button() == Qt::LeftButton && event->modifiers() == Qt::NoModifier)
        Q_EMIT photoWanted(m_model.entry(index.row()), photo);
}

void LogView::mouseMoveEvent(QMouseEvent *event)
{
    QListView::mouseMoveEvent(event);
    const bool photo = photoUnder(indexAt(event->position().toPoint()), event->position().toPoint()) >= 0;
    viewport()->setCursor(photo ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void LogView::mouseDoubleClickEvent(QMouseEvent *event)
{
    const QModelIndex index = indexAt(event->position().toPoint());
    if (index.isValid() && photoUnder(index, event->position().toPoint()) < 0)
        Q_EMIT editWanted(index.row());
}

void LogView::contextMenuEvent(QContextMenuEvent *event)
{
    if (event->reason() == QContextMenuEvent::Keyboard) {
        if (currentIndex().isValid())
            Q_EMIT menuWanted(viewport()->mapToGlobal(visualRect(currentIndex()).center()), -1);
        return;
    }
    const QModelIndex index = indexAt(event->pos());
    if (!index.isValid() || m_model.entry(index.row()).isDay)
        return;
    if (!selectionModel()->isSelected(index))
        setCurrentIndex(index);
    Q_EMIT menuWanted(event->globalPos(), photoUnder(index, event->pos()));
}

void LogView::focusInEvent(QFocusEvent *event)
{
    // By the keyboard one comes to the newest entry, from which Up goes back in time.
    if (!currentIndex().isValid() && m_model.rowCount() > 0)
        selectionModel()->setCurrentIndex(m_model.index(m_model.rowCount() - 1), QItemSelectionModel::NoUpdate);
    QListView::focusInEvent(event);
}

void LogView::resizeEvent(QResizeEvent *event)
{
    if (viewport()->width() == event->oldSize().width()) {
        const bool newest = verticalScrollBar()->value() >= verticalScrollBar()->maximum() - qMax(0, event->oldSize().height() - viewport()->height()) - 4;
        QListView::resizeEvent(event);
        if (newest)
            scrollToNewest();
        return;
    }
    layOutKeeping([&] {
        m_delegate->setWidth(viewport()->width());
        QListView::resizeEvent(event);
    });
}

void LogView::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QListView::currentChanged(current, previous);
    // Who comes to the first entry of a day sees which day it is.
    if (current.row() > 0 && m_model.entry(current.row() - 1).isDay && visualRect(current).y() < visualRect(m_model.index(current.row() - 1)).height())
        scrollTo(m_model.index(current.row() - 1));
}

QModelIndex LogView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers)
{
    Q_UNUSED(modifiers)
    // The view's own way stops at headings. One up or down is the next entry; a page is as far as is seen; Home and End are the ends.
    const int last = m_model.rowCount() - 1;
    const int now = qMax(0, currentIndex().row());
    int to = now;
    int by = 1; // where to go on from a heading
    switch (action) {
    case MoveUp:
    case MovePrevious:
        to = now - 1;
        by = -1;
        break;
    case MoveDown:
    case MoveNext:
        to = now + 1;
        break;
    case MoveHome:
        to = 0;
        break;
    case MoveEnd:
        to = last;
        by = -1;
        break;
    case MovePageUp:
    case MovePageDown: {
        by = action == MovePageUp ? -1 : 1;
        const int from = visualRect(currentIndex()).y();
        while (to + by >= 0 && to + by <= last && qAbs(visualRect(m_model.index(to + by)).y() - from) < viewport()->height())
            to += by;
        break;
    }
    default:
        return QListView::moveCursor(action, modifiers);
    }
    for (; to >= 0 && to <= last; to += by)
        if (!m_model.entry(to).isDay)
            return m_model.index(to);
    return currentIndex();
}

} // namespace ts
