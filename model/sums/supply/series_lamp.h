#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// The lamp in line with a unit at its first power.
struct SeriesLamp {
    double leastWatts = 0;
    double mostWatts = 0;
    QList<double> usual;      ///< usual sizes within, else the next one above
    double shortCurrent = 0;  ///< A, through the largest of these into a dead short
    double hotOhms = 0;       ///< of the same
};

/// Watts from the unit's idle power to twice that (habit of the trade, no source); what a dead short draws through it is P / U, and its
/// hot resistance U² / P. Refuses what is not above zero.
[[nodiscard]] Expected<SeriesLamp> seriesLampFor(double idleWatts, double mainsVolts);

/// series-lamp for the command line and the page of sums.
[[nodiscard]] Sum seriesLampSum();

} // namespace ts
