#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// The quantile of a row of numbers at p (0 to 1) by one of the nine types of Hyndman and Fan (The American Statistician 50(4),
/// 1996); type 8 is median-unbiased and the one used for forecasts. Refuses an empty row, p outside 0 to 1, another type.
[[nodiscard]] Expected<double> quantileOf(QList<double> values, double p, int type = 8);

/// quantile for the command line and the page of sums.
[[nodiscard]] Sum quantileSum();

} // namespace ts
