#pragma once

#include "model/paper/photo_choice.h"
#include "model/paper/restoration_facts.h"
#include "model/records/unit_file.h"

namespace ts {

/// The facts of a unit's restoration sheet, from its records alone. `now` becomes the sheet's date, in its own time zone.
/// What was not done is worked out, never typed; texts that only claim care ("serviced") are left out and counted.
[[nodiscard]] RestorationFacts gatherRestoration(const UnitFile &file, const BenchFile &bench, const QList<PaperPhoto> &photos,
                                                 const QDateTime &now);

} // namespace ts
