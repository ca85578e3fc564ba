#pragma once

#include "model/sums/reckon.h"

namespace ts {

enum class Rectifier { HalfWave, FullWave };

/// Peak-to-peak ripple on a reservoir capacitor that a steady current empties between charges, the usual overestimate:
/// I / (f C) behind a half-wave rectifier, I / (2 f C) behind a full-wave one; f is the mains frequency.
[[nodiscard]] double rippleVolts(double amperes, double hertz, double farads, Rectifier rectifier);
/// Equivalent series resistance from the dissipation factor: tan δ / (2 π f C).
[[nodiscard]] double seriesResistance(double tanDelta, double hertz, double farads);

/// ripple and esr for the command line and the page of sums.
[[nodiscard]] Sum rippleSum();
[[nodiscard]] Sum esrSum();

} // namespace ts
