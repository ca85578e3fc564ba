#pragma once

#include "model/faults/check_next.h"

namespace ts {

/// The steps before and at first power that a unit from the mains still owes, in their order: those of its category and
/// protection class (model/sums/power_ladder.h) that neither was passed there nor came out normal in a check (by the same text, on whatever symptom). One that came
/// out abnormal says stop, and nothing comes after it. None for a unit that was powered before: a value in volts, amperes, watts
/// or hertz read on it, a soak, a function that was proved, or a stage past Proving. A unit flagged "do not power" owes the
/// reason first, in any case. Order and contents are common practice of the trade, no source; local codes and licensed practice
/// come first.
[[nodiscard]] QList<SafetyStep> firstPowerDue(const UnitFile &file);

/// The same steps whether they were done or not, for a page that walks through them.
[[nodiscard]] QList<SafetyStep> firstPowerSteps(const Unit &unit);

} // namespace ts
