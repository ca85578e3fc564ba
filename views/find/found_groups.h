#pragma once

#include "views/workplace.h"

namespace ts {

/// Under which heading something found is shown, in their order.
enum class FoundGroup { Units, Faults, Readings, Parts, Log, Teardown, Proofs, Money, Papers, Bench };

[[nodiscard]] QString foundGroupName(FoundGroup group);
/// By the record kind's table name.
[[nodiscard]] FoundGroup foundGroupOf(const QString &kind);
/// The page of a unit that shows records of this kind.
[[nodiscard]] PageKey pageOfKind(const QString &kind);
/// The place for what belongs to the bench as a whole.
[[nodiscard]] PlaceKey placeOfKind(const QString &kind);

} // namespace ts
