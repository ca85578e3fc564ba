#pragma once

#include <QList>
#include <QPointF>

namespace ts {

/// What a chart of so many columns of dots needs of a long row of points with rising x: of each column the first, the lowest, the
/// highest and the last, so that the drawn line is the same as with all of them and no spike is lost (M4 aggregation: Jugel,
/// Jerzak, Hackenbroich, Markl, PVLDB 7(10), 2014). Points within `from` to `to`, and one beyond on either side so that the line
/// goes on to the edge. A row that has no more than four points a column comes back whole. Columns below 1 count as 1.
[[nodiscard]] QList<QPointF> thinned(const QList<QPointF> &points, double from, double to, int columns);

} // namespace ts
