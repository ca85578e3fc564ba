#pragma once

#include "model/sums/point_rows.h"
#include "views/widgets/grid_row.h"

namespace ts {

enum class ReadingColumn { Point, Wanted, Found, After, Verdict, Meter };

/// Which of the test points are shown.
enum class PointFilter { All, OutOfSpec, Unread, UnreadAfter };

[[nodiscard]] QList<GridColumn> readingColumns();
[[nodiscard]] bool passes(const PointRow &point, PointFilter filter);
/// The points that pass, and at the foot the row that adds one.
[[nodiscard]] QList<GridRow> readingRows(const QList<PointRow> &points, PointFilter filter, const BenchFile &bench);
/// "bench meter, 40 V, ± 0.04 V": what the newest reading was taken with, and how sure it is.
[[nodiscard]] QString meterText(const Reading &reading, const BenchFile &bench);

} // namespace ts
