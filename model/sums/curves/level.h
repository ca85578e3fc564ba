#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// 0 dBu in volts: what drives 1 mW into 600 Ω, √0.6.
inline constexpr double voltsOf0dBu = 0.7745966692414834;

/// 20 log10 of a ratio of voltages, 10 log10 of a ratio of powers; −∞ for 0, NaN below.
[[nodiscard]] double decibelsOfVolts(double ratio);
[[nodiscard]] double decibelsOfPower(double ratio);
/// The ratio of voltages of so many decibels.
[[nodiscard]] double voltRatioOf(double decibels);

/// level for the command line and the page of sums.
[[nodiscard]] Sum levelSum();

} // namespace ts
