#include "views/rack/rack_view.h"

#include "views/rack/rack_model.h"
#include "views/rack/tag_delegate.h"
#include "views/style/style.h"

#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace ts {

namespace {
constexpr int restMs = 120; // an arrow key held down passes over units without opening each
}

RackView::RackView(RackModel &model, const Style &style, QWidget *parent) : QAbstractItemView(parent),
      m_model(model),
      m_delegate(new TagDelegate(style, this)),
      m_chosen(new QTimer(this)),
      m_load(new QTimer(this))
{
    setObjectName(QStringLiteral("rack"));
    setAccessibleName(tr("Rack of units"));
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTabKeyNavigation(false);
    setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_Hover);
    setItemDelegate(m_delegate);
    setModel(&m_model);
    m_chosen->setSingleShot(true);
    m_chosen->setInterval(restMs);
    connect(m_chosen, &QTimer::timeout, this, [this] {
        if (currentIndex().isValid() && !m_model.isHeading(currentIndex().row()))
            Q_EMIT chosen(currentIndex());
    });
    m_load->setSingleShot(true);
    m_load->setInterval(0);
    connect(m_load, &QTimer::timeout, this, &RackView::loadSeen);
    const auto hangs = [this] { settle(); };
    connect(&m_model, &QAbstractItemModel::modelReset, this, hangs);
    connect(&m_model, &QAbstractItemModel::rowsInserted, this, hangs);
    connect(&m_model, &QAbstractItemModel::rowsRemoved, this, hangs);
    connect(&m_model, &QAbstractItemModel::rowsMoved, this, hangs);
    connect(&style, &Style::changed, this, [this] {
        m_delegate->measure();
        settle();
    });
}

void RackView::settle()
{
    updateGeometries();
    viewport()->update();
    m_load->start();
}

void RackView::setInHand(const QUuid &unit)
{
    m_delegate->setInHand(unit);
    viewport()->update();
}

void RackView::mark(int row)
{
    m_chosen->stop();
    const QModelIndex index = m_model.index(row);
    if (index != currentIndex())
        selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect);
}

int RackView::tagFrom(int row, int by) const
{
    for (; row >= 0 && row < m_model.rowCount(); row += by)
        if (!m_model.isHeading(row))
            return row;
    return -1;
}

int RackView::topOf(int row) const
{
    const QList<int> &headings = m_model.headings();
    const auto above = static_cast<int>(std::lower_bound(headings.begin(), headings.end(), row) - headings.begin());
    return above * m_delegate->headingHeight() + (row - above) * m_delegate->tagHeight();
}

int RackView::rowAt(int y) const
{
    // The last row that begins at or above y.
    int low = 0;
    int high = m_model.rowCount();
    while (low < high) {
        const int middle = (low + high) / 2;
        if (topOf(middle) <= y)
            low = middle + 1;
        else
            high = middle;
    }
    const int row = low - 1;
    return row >= 0 && y < topOf(row + 1) ? row : -1;
}

QRect RackView::visualRect(const QModelIndex &index) const
{
    if (!index.isValid())
        return {};
    const int top = topOf(index.row());
    return {0, top - verticalOffset(), viewport()->width(), topOf(index.row() + 1) - top};
}

QModelIndex RackView::indexAt(const QPoint &point) const
{
    return m_model.index(rowAt(point.y() + verticalOffset()));
}

int RackView::topRow() const
{
    return rowAt(verticalOffset());
}

int RackView::verticalOffset() const
{
    return verticalScrollBar()->value();
}

void RackView::scrollTo(const QModelIndex &index, ScrollHint hint)
{
    if (!index.isValid())
        return;
    // The heading of a stage comes along with its first tag.
    const int row = index.row();
    const int top = topOf(row > 0 && m_model.isHeading(row - 1) ? row - 1 : row);
    const int bottom = topOf(row + 1);
    const int seen = viewport()->height();
    const int at = verticalOffset();
    if (hint == PositionAtTop)
        verticalScrollBar()->setValue(top);
    else if (hint == PositionAtCenter)
        verticalScrollBar()->setValue((top + bottom - seen) / 2);
    else if (top < at)
        verticalScrollBar()->setValue(top);
    else if (bottom > at + seen)
        verticalScrollBar()->setValue(bottom - seen);
}

void RackView::updateGeometries()
{
    const int seen = viewport()->height();
    verticalScrollBar()->setSingleStep(m_delegate->tagHeight() / 3);
    verticalScrollBar()->setPageStep(seen);
    verticalScrollBar()->setRange(0, qMax(0, topOf(m_model.rowCount()) - seen));
    QAbstractItemView::updateGeometries();
}

void RackView::scrollContentsBy(int, int dy)
{
    viewport()->scroll(0, dy);
    m_load->start();
}

void RackView::resizeEvent(QResizeEvent *event)
{
    QAbstractItemView::resizeEvent(event);
    settle();
}

void RackView::loadSeen()
{
    const int first = topRow();
    if (first < 0)
        return;
    const int last = rowAt(verticalOffset() + viewport()->height());
    m_model.load(first, last < 0 ? m_model.rowCount() - 1 : last);
}

void RackView::paintEvent(QPaintEvent *event)
{
    QPainter painter(viewport());
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    int row = rowAt(qMax(0, event->rect().top() + verticalOffset()));
    for (; row >= 0 && row < m_model.rowCount(); ++row) {
        const QModelIndex index = m_model.index(row);
        option.rect = visualRect(index);
        if (option.rect.top() > event->rect().bottom())
            break;
        option.state.setFlag(QStyle::State_MouseOver, index == m_hover);
        option.state.setFlag(QStyle::State_HasFocus, hasFocus() && index == currentIndex());
        m_delegate->paint(&painter, option, index);
    }
}

void RackView::dataChanged(const QModelIndex &first, const QModelIndex &last, const QList<int> &)
{
    viewport()->update(visualRect(first).united(visualRect(last)));
}

bool RackView::viewportEvent(QEvent *event)
{
    const QEvent::Type type = event->type();
    if (type == QEvent::HoverMove || type == QEvent::HoverLeave || type == QEvent::Leave) {
        const QModelIndex over = type == QEvent::HoverMove ? indexAt(static_cast<QHoverEvent *>(event)->position().toPoint()) : QModelIndex();
        if (over != m_hover) {
            viewport()->update(visualRect(m_hover));
            m_hover = over;
            viewport()->update(visualRect(m_hover));
        }
    }
    return QAbstractItemView::viewportEvent(event);
}

void RackView::mouseReleaseEvent(QMouseEvent *event)
{
    QAbstractItemView::mouseReleaseEvent(event);
    const QModelIndex index = indexAt(event->position().toPoint());
    if (event->button() == Qt::LeftButton && index.isValid() && index == currentIndex()) {
        m_chosen->stop();
        Q_EMIT chosen(index);
    }
}

void RackView::keyPressEvent(QKeyEvent *event)
{
    const bool opens = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const QModelIndex current = currentIndex();
    if (current.isValid() && (opens || (event->key() == Qt::Key_Space && m_model.isHeading(current.row())))) {
        m_chosen->stop();
        Q_EMIT entered(current);
        return;
    }
    const QModelIndex before = current;
    QAbstractItemView::keyPressEvent(event);
    if (currentIndex() != before)
        m_chosen->start();
}

// The arrows pass over the headings of stages that lie open; a folded one is a place to stop and unfold it.
QModelIndex RackView::moveCursor(CursorAction action, Qt::KeyboardModifiers)
{
    const int rows = m_model.rowCount();
    if (rows == 0)
        return {};
    int row = currentIndex().isValid() ? currentIndex().row() : -1;
    const int shown = qMax(1, viewport()->height() / m_delegate->tagHeight() - 1);
    int by = 1;
    switch (action) {
    case MoveUp:
    case MovePrevious:
    case MoveLeft:
        by = -1;
        --row;
        break;
    case MoveDown:
    case MoveNext:
    case MoveRight:
        ++row;
        break;
    case MoveHome:
        row = 0;
        break;
    case MoveEnd:
        row = rows - 1;
        by = -1;
        break;
    case MovePageUp:
        row = qMax(0, row - shown);
        break;
    case MovePageDown:
        row = qMin(rows - 1, row + shown);
        by = -1;
        break;
    }
    for (; row >= 0 && row < rows; row += by)
        if (!m_model.isHeading(row) || m_model.index(row).data(RackModel::Folded).toBool())
            return m_model.index(row);
    return currentIndex();
}

void RackView::setSelection(const QRect &rect, QItemSelectionModel::SelectionFlags command)
{
    const QModelIndex index = indexAt(rect.topLeft());
    if (index.isValid())
        selectionModel()->select(index, command);
}

QRegion RackView::visualRegionForSelection(const QItemSelection &selection) const
{
    QRegion region;
    for (const QModelIndex &index : selection.indexes())
        region += visualRect(index);
    return region;
}

} // namespace ts
