#pragma once

class QAbstractAxis;
class QChart;

namespace ts {

class Style;

/// Takes everything off a chart, and makes it plain: no legend, no ground, no margins but a little at the right.
void clearChart(QChart &chart);
/// The face and colours of an axis.
void dressAxis(QAbstractAxis &axis, const Style &style);

} // namespace ts
