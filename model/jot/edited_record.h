#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// The change that sets one record of a unit right, as its row is to read after it, with what follows: a reading as `corrected`
/// has it; a need or a check that is in another state has been so since now; the reason and the day of the last move of a stage are the
/// unit's, too. Refused: what the kind refuses (a required text that is empty, a strange word), a symptom of
/// another unit, an end before its beginning.
/// Empty where nothing differs.
[[nodiscard]] Expected<Change> editedRecord(const Kind &kind, const Row &before, const Row &after, const UnitFile &file, const BenchFile &bench, Maker &maker);

} // namespace ts
