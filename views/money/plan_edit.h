#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/sums/cost_sheet.h"

namespace ts {

/// The change that sets one line of the unit's plan from what was typed (parts, carriage out, resale, or hours such as "4 h 30 m",
/// "4:30" or minutes); the plan is made where there is none. Empty unsets it. Refused where it cannot be read.
[[nodiscard]] Expected<Change> planWith(const UnitFile &file, const BenchFile &bench, CostKey key, const QString &typed, Maker &maker);
/// Minutes of "4 h 30 m", "4h30", "4:30", "90 m", "90", "1.5 h"; refused below zero, past 10,000 hours, and what is none of these.
[[nodiscard]] Expected<int> minutesTyped(const QString &typed);

} // namespace ts
