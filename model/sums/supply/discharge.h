#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// A capacitor emptied through a resistor.
struct Discharge {
    double time = 0;        ///< s, from the first voltage down to the second
    double energy = 0;      ///< J, stored at the first voltage
    double peakCurrent = 0; ///< A, at the first moment
    double peakPower = 0;   ///< W, in the resistor at the first moment
    QString caution;        ///< what to mind, always ends in measuring
};

/// t = R C ln(from / to), E = C from² / 2, I = from / R, P = from² / R. Refuses voltages that do not fall or are not above zero.
[[nodiscard]] Expected<Discharge> discharge(double farads, double ohms, double fromVolts, double toVolts);
/// Volts that are left after so many seconds: from · e^(−t / R C).
[[nodiscard]] double voltsLeft(double farads, double ohms, double fromVolts, double seconds);

/// A resistor for the job: 100 Ω for each volt (common practice, no source), and the watts it takes at the first moment.
struct DischargeResistor {
    double ohms = 0;
    double peakWatts = 0;
};
[[nodiscard]] DischargeResistor dischargeResistorFor(double volts);

/// discharge for the command line and the page of sums.
[[nodiscard]] Sum dischargeSum();

} // namespace ts
