#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// The change that sets a recorded reading right, with what follows from it: under another name or other conditions it is a reading
/// of the test point there (its own point goes along where that was made for it alone); what is wanted is set right at the
/// point too where the point wanted the same; an uncertainty that came from the meter is worked out again for the new value, one
/// that was typed is kept, in the new prefix. Refused: no name, a value and a limit of different measures. Empty where nothing differs.
[[nodiscard]] Expected<Change> corrected(const Reading &before, Reading after, const UnitFile &file, const BenchFile &bench, Maker &maker);

} // namespace ts
