#pragma once

#include "model/records/reading.h"
#include "model/records/unit.h"

namespace ts {

// The words of the records as people read them, in their own language.
[[nodiscard]] QString categoryName(Category category); ///< "Cassette deck"
[[nodiscard]] QString kindName(UnitKind kind);         ///< "To sell"
[[nodiscard]] QString phaseName(Phase phase);          ///< "As found"

} // namespace ts
