#include "views/widgets/chart_dress.h"

#include "views/style/style.h"

#include <QAbstractAxis>
#include <QChart>
#include <QLegend>

namespace ts {

void clearChart(QChart &chart)
{
    chart.removeAllSeries();
    for (QAbstractAxis *axis : chart.axes())
        chart.removeAxis(axis);
    chart.legend()->hide();
    chart.setBackgroundVisible(false);
    chart.setMargins(QMargins(0, 0, gap::small, 0));
}

void dressAxis(QAbstractAxis &axis, const Style &style)
{
    axis.setLabelsFont(style.text(0.88));
    axis.setTitleFont(style.text(0.88));
    axis.setLabelsBrush(style.ink().quiet);
    axis.setTitleBrush(style.ink().quiet);
    axis.setGridLineColor(style.ink().line);
    axis.setLinePen(QPen(style.ink().line));
}

} // namespace ts
