#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// Bars of a strobe ring for a turning speed.
struct StrobeBars {
    int bars = 0;
    double standingSpeed = 0; ///< rpm at which that many bars stand still
    [[nodiscard]] double errorPercent(double rpm) const { return 100 * (standingSpeed / rpm - 1); }
};

/// The whole number of bars nearest to flashes · mains frequency · 60 / rpm. An ordinary lamp flashes twice in a mains cycle; a
/// ring for one flash a cycle has half the bars. Refuses what gives no bar.
[[nodiscard]] Expected<StrobeBars> strobeBars(double rpm, double mainsHertz, int flashesPerCycle = 2);

/// How far a speed or frequency is from what it ought to be.
struct SpeedError {
    double percent = 0;
    double cents = 0; ///< hundredths of a semitone: 1200 log2(read / nominal)
};
[[nodiscard]] SpeedError speedError(double nominal, double read);

/// strobe, speed-error and mains-speed for the command line and the page of sums: strobe bars; deviation of a test tone or a
/// tachometer; a synchronous motor on another mains frequency, and the pulley that would put it right.
[[nodiscard]] Sum strobeSum();
[[nodiscard]] Sum speedErrorSum();
[[nodiscard]] Sum mainsSpeedSum();

} // namespace ts
