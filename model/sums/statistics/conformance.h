#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// What accepting within a guard band costs: a population of items and a measurement, both by the normal law.
struct AcceptanceRisk {
    double conforming = 0; ///< chance that an item is within its limits, before it is measured
    double consumer = 0;   ///< chance that an item is accepted and is not within
    double producer = 0;   ///< chance that an item is rejected and is within
};

/// Global risks of JCGM 106:2012, clause 9.3: items with mean and standard deviation of a process, measured with standard
/// uncertainty u, limits low and high, accepted from low + guard to high − guard. Refuses what is not above 0 or crosses over.
[[nodiscard]] Expected<AcceptanceRisk> acceptanceRisk(double mean, double processSd, double u, double low, double high,
                                                      double guard);

/// acceptance-risk for the command line and the page of sums.
[[nodiscard]] Sum acceptanceRiskSum();

} // namespace ts
