#include "views/widgets/grid_view.h"

#include "views/style/style.h"
#include "views/widgets/grid_delegate.h"
#include "views/widgets/grid_header.h"

#include <QAction>
#include <QHeaderView>
#include <QLineEdit>

#include <algorithm>

namespace ts {

GridView::GridView(const Style &style, const QString &name, QList<GridColumn> columns, QWidget *parent)
    : QTableView(parent), m_style(style), m_rows(new GridModel(std::move(columns), this)), m_delegate(new GridDelegate(style, *m_rows, this)), m_head(new GridHeader(this))
{
    setObjectName(QStringLiteral("grid"));
    setAccessibleName(name);
    setHorizontalHeader(m_head);
    setModel(m_rows);
    setItemDelegate(m_delegate);
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(true);
    setCornerButtonEnabled(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollMode(ScrollPerPixel);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(10);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(m_delegate, &GridDelegate::finished, this, &GridView::goOn);
    connect(&style, &Style::changed, this, &GridView::fit);
}

void GridView::setColumns(const QList<GridColumn> &columns)
{
    const QList<GridColumn> &before = m_rows->columns();
    if (std::equal(columns.begin(), columns.end(), before.begin(), before.end(), [](const GridColumn &a, const GridColumn &b) { return a.title == b.title; }))
        return;
    commitEdit();
    m_stayAt = currentKey();
    m_rows->setColumns(columns);
    fitColumns();
}

void GridView::setRows(const QList<GridRow> &rows)
{
    m_rows->setRows(rows);
    clearSpans();
    for (int i = 0; i < rows.size() && m_rows->columnCount() > 1; ++i)
        if (rows.at(i).kind == GridRowKind::Group)
            setSpan(i, 0, 1, m_rows->columnCount());
    fitRows();
    if (!m_stayAt.isNull())
        setCurrent(std::exchange(m_stayAt, {}));
    if (currentIndex().isValid())
        return;
    for (int i = 0; i < rows.size(); ++i)
        if (rows.at(i).kind != GridRowKind::Group) {
            setCurrentIndex(m_rows->index(i, 0));
            return;
        }
}

QUuid GridView::currentKey() const
{
    return currentIndex().isValid() ? m_rows->row(currentIndex().row()).key : QUuid();
}

void GridView::setCurrent(const QUuid &key, int column)
{
    const int row = m_rows->rowOf(key);
    if (row < 0)
        return;
    setCurrentIndex(m_rows->index(row, column >= 0 ? column : std::max(0, currentIndex().column())));
    scrollTo(currentIndex());
}

void GridView::editAt(const QUuid &key, int column)
{
    setCurrent(key, column);
    if (currentKey() == key && (currentIndex().flags() & Qt::ItemIsEditable) && m_rows->columns().at(column).choices.isEmpty())
        edit(currentIndex());
}

void GridView::step(int by)
{
    for (int row = currentIndex().row() + by; row >= 0 && row < m_rows->rowCount(); row += by)
        if (m_rows->row(row).kind == GridRowKind::Record) {
            setCurrentIndex(m_rows->index(row, std::max(0, currentIndex().column())));
            return;
        }
}

void GridView::editAdding(const QString &name)
{
    for (int i = 0; i < m_rows->rowCount(); ++i) {
        const GridRow &row = m_rows->row(i);
        if (row.kind != GridRowKind::Adding || (!name.isEmpty() && row.name != name))
            continue;
        setFocus();
        setCurrentIndex(m_rows->index(i, 0));
        scrollTo(currentIndex());
        goSideways(i, -1, 1);
        return;
    }
}

QLineEdit *GridView::field() const
{
    return qobject_cast<QLineEdit *>(m_delegate->editor());
}

void GridView::commitEdit()
{
    if (!isEditing() || m_delegate->finish(GridGo::Stay))
        return;
    closeEditor(m_delegate->editor(), QAbstractItemDelegate::RevertModelCache);
}

void GridView::closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint)
{
    QTableView::closeEditor(editor, hint);
    Q_EMIT fieldClosed();
}

QAction *GridView::addRowAction(const QString &text, const QKeySequence &key, std::function<void(const QUuid &row)> act)
{
    auto *action = new QAction(text, this);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    action->setShortcutVisibleInContextMenu(true);
    connect(action, &QAction::triggered, this, [this, act = std::move(act)] {
        const QUuid row = currentKey();
        if (!row.isNull())
            act(row);
    });
    addAction(action);
    return action;
}

void GridView::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QTableView::currentChanged(current, previous);
    viewport()->update(); // pinned cells are not where the table looks for them
    if (current.row() != previous.row() || !current.isValid())
        Q_EMIT currentRowChanged(currentKey());
}

void GridView::focusInEvent(QFocusEvent *event)
{
    QTableView::focusInEvent(event);
    viewport()->update();
}

void GridView::focusOutEvent(QFocusEvent *event)
{
    QTableView::focusOutEvent(event);
    viewport()->update();
}

// Where typing goes after a field was committed: an added row is filled on from left to right, a column from top to bottom.
void GridView::goOn(const QPersistentModelIndex &edited, GridGo go, bool added)
{
    const int row = added ? m_rows->rowOf(m_rows->landed()) : edited.isValid() ? edited.row() : -1;
    const int column = edited.isValid() ? edited.column() : currentIndex().column();
    if (row < 0)
        return;
    if (added && m_addsInARow && go == GridGo::Stay)
        return editAdding(m_rows->row(edited.row()).name);
    const bool onward = added && go != GridGo::Previous && go != GridGo::Up;
    if (go == GridGo::Next || onward)
        goSideways(row, column, 1);
    else if (go == GridGo::Previous)
        goSideways(row, column, -1);
    else if (go == GridGo::Down || go == GridGo::Up)
        goAlong(row, column, go == GridGo::Down ? 1 : -1);
    else
        setCurrentIndex(m_rows->index(row, column));
}

void GridView::goSideways(int row, int column, int step)
{
    for (int next = column + step; next >= 0 && next < m_rows->columnCount(); next += step) {
        const QModelIndex cell = m_rows->index(row, next);
        if (!m_rows->cell(cell).editable || !m_rows->columns().at(next).choices.isEmpty())
            continue;
        setCurrentIndex(cell);
        edit(cell);
        return;
    }
    setCurrentIndex(m_rows->index(row, std::max(column, 0)));
}

void GridView::goAlong(int row, int column, int step)
{
    for (int next = row + step; next >= 0 && next < m_rows->rowCount(); next += step) {
        const QModelIndex cell = m_rows->index(next, column);
        if (m_rows->row(next).kind == GridRowKind::Group)
            continue;
        if (m_rows->row(next).kind == GridRowKind::Adding)
            break; // the column is done: what was typed last stays the one that is looked at
        setCurrentIndex(cell);
        if (m_rows->cell(cell).editable)
            edit(cell);
        return;
    }
    setCurrentIndex(m_rows->index(row, column));
}

} // namespace ts
