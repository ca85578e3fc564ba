#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// A resistor that takes up what a supply has too much for a part that draws a steady current.
struct Dropper {
    double ohms = 0;
    double watts = 0; ///< that it turns into heat; choose about twice as much
};

/// (supply − volts) / current and the heat in it. Refuses a supply that is not above the part's voltage.
[[nodiscard]] Expected<Dropper> dropperFor(double supplyVolts, double volts, double amperes);

/// Sums by Ohm's law for the command line and the page of sums: idle-current from the drop over an emitter or cathode resistor,
/// load-power from the rms voltage over a load, dropper, damping.
[[nodiscard]] Sum idleCurrentSum();
[[nodiscard]] Sum loadPowerSum();
[[nodiscard]] Sum dropperSum();
[[nodiscard]] Sum dampingSum();

} // namespace ts
