#include "views/widgets/page_scroll.h"

#include "views/widgets/grid_view.h"

namespace ts {

PageScroll::PageScroll(QWidget *content, const QList<GridView *> &tables, QWidget *parent) : QScrollArea(parent)
{
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidget(content);
    for (GridView *table : tables) {
        table->setWhole(true);
        connect(table, &GridView::currentRowChanged, this, [this, table] { follow(table); });
    }
}

void PageScroll::follow(GridView *table)
{
    if (!table->hasFocus() || !table->currentIndex().isValid())
        return;
    const QRect row = table->visualRect(table->currentIndex());
    const QPoint at = table->viewport()->mapTo(widget(), row.center());
    ensureVisible(at.x(), at.y(), 0, row.height());
}

} // namespace ts
