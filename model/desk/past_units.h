#pragma once

#include "model/desk/desk.h"
#include "model/records/past_unit.h"

namespace ts {

/// Every closed unit with what was expected of it and what came, sums in the bench's currency: what the owner's record is made
/// from. Refused where the workbook cannot be read.
[[nodiscard]] Expected<QList<PastUnit>> pastUnits(Desk &desk);

/// Comparables of the unit's model and of its category, whoever's they are; its own are among them.
[[nodiscard]] Expected<QList<Comparable>> comparablesLike(Desk &desk, const Unit &unit);

} // namespace ts
