#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// Impedance in ohms of the makers' network, 1.5 kΩ in parallel with 0.15 µF, at a frequency in hertz: R / √(1 + (2 π f R C)²); 1496.27 Ω
/// at 50 Hz. Service manuals' leakage check.
[[nodiscard]] double leakageNetworkOhms(double hertz);
/// Amperes through that network at so many volts rms over it.
[[nodiscard]] double leakageAmperes(double volts, double hertz);

/// leakage for the command line and the page of sums.
[[nodiscard]] Sum leakageSum();

} // namespace ts
