// How wide the columns of a grid are, how high its rows, and how much room it wants.
#include "views/style/style.h"
#include "views/widgets/grid_paint.h"
#include "views/widgets/grid_view.h"

#include <QFontMetrics>
#include <QHeaderView>
#include <QScrollBar>

#include <algorithm>

namespace ts {

namespace {

int sides(const GridColumn &column)
{
    return column.middle ? gap::tight : 2 * gap::small;
}

/// What a column is given at least: its own width, and room for the longest of its words as a pill.
int leastWidth(const GridColumn &column, const Style &style)
{
    int width = qRound(column.width * QFontMetrics(style.text()).horizontalAdvance(QLatin1Char('0')));
    for (const GridChoice &choice : column.choices)
        width = std::max(width, GridPaint(style).pillWidth(choice.word));
    return width + sides(column);
}

} // namespace

void GridView::fit()
{
    fitColumns();
    fitRows();
}

void GridView::fitColumns()
{
    const QList<GridColumn> &columns = m_rows->columns();
    int taken = 0;
    int shares = 0;
    for (const GridColumn &column : columns) {
        taken += leastWidth(column, m_style);
        shares += column.stretch;
    }
    int left = std::max(0, viewport()->width() - taken);
    for (int i = 0; i < columns.size(); ++i) {
        const GridColumn &column = columns.at(i);
        const int more = shares > 0 ? left * column.stretch / shares : 0;
        left -= more;
        shares -= column.stretch;
        horizontalHeader()->resizeSection(i, leastWidth(column, m_style) + more);
    }
}

void GridView::fitRows()
{
    if (m_fitting)
        return;
    m_fitting = true;
    const GridPaint paint(m_style);
    const int columns = m_rows->columnCount();
    for (int row = 0; row < m_rows->rowCount(); ++row) {
        int high = 0;
        for (int column = 0; column < columns; ++column)
            high = std::max(high, paint.height(m_rows->cell(m_rows->index(row, column)), horizontalHeader()->sectionSize(column)));
        verticalHeader()->resizeSection(row, high + 1);
    }
    updateGeometry();
    m_fitting = false;
}

int GridView::contentHeight(int rows) const
{
    int high = 2 * frameWidth() + horizontalHeader()->sizeHint().height();
    for (int row = 0; row < std::min(rows, m_rows->rowCount()); ++row)
        high += verticalHeader()->sectionSize(row);
    return high;
}

QSize GridView::sizeHint() const
{
    const int bar = horizontalHeader()->length() > viewport()->width() ? horizontalScrollBar()->sizeHint().height() : 0;
    return {400, contentHeight(m_rows->rowCount()) + bar};
}

// A bar of its own would take room from the columns before the page has given it its height.
void GridView::setWhole(bool whole)
{
    m_whole = whole;
    setVerticalScrollBarPolicy(whole ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    updateGeometry();
}

QSize GridView::minimumSizeHint() const
{
    return {200, m_whole ? sizeHint().height() : contentHeight(3)};
}

void GridView::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    fit();
}

} // namespace ts
