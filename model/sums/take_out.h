#pragma once

#include "model/records/change.h"
#include "model/sums/timeline.h"

namespace ts {

/// The change that takes entries out of the log. Where an entry is how its record began, the record goes out of sight, with what
/// cannot stand without it and with a test point that came about with the reading; where it is what became of the record later,
/// that is taken back: a cleared symptom is open again, a settled cause is open, a check is still to be done, what was put back is
/// off, a fitted part is here, an ordered one needed, a soak runs on. The last move of a stage puts the unit back to where it was.
/// Refused: taking in (the unit itself), an earlier move of a stage, a paper that was made, an entry that is there no longer.
[[nodiscard]] Expected<Change> takenOut(const QList<Event> &entries, const UnitFile &file);

} // namespace ts
