#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/notes_file.h"

namespace ts {

/// What a unit would teach its model's notes: its test points (readings with a limit count too), causes and checks with their
/// marks, what came off, parts fitted, proofs, and adjustments with what they were before and after. Ids are new; nothing is
/// recorded yet.
[[nodiscard]] NotesFile notesFrom(const UnitFile &file, Maker &maker);

/// Adds to notes what they do not have yet (by name or text, case and spaces aside), as one change; texts of the notes themselves
/// are filled where they are empty. `known` with a null id of its notes makes new notes. Empty where nothing is new.
[[nodiscard]] Change mergedNotes(const NotesFile &incoming, const NotesFile &known, Maker &maker);

/// "Learn from this unit": copies what was found on it into the notes of its model (`known`, or an empty NotesFile where there
/// are none yet). Refused where the unit has no maker or model, and where there is nothing new to learn.
[[nodiscard]] Expected<Change> learnFrom(const UnitFile &file, const NotesFile &known, Maker &maker);

/// What of the notes a unit is to get.
struct NotesWish {
    bool testPoints = true;
    bool teardown = true; ///< as items that are still on
    bool proofs = true;
    bool parts = false; ///< as needs
};

/// Brings notes onto a unit as one change: what the unit does not have yet. Refused where nothing would be new.
[[nodiscard]] Expected<Change> offerNotes(const UnitFile &file, const NotesFile &notes, const NotesWish &wish, Maker &maker);

/// What another unit's teardown says, for this one: its items as still on, in their order, those that this unit has left out.
/// Refused where nothing would be new.
[[nodiscard]] Expected<Change> copyTeardown(const UnitFile &to, const UnitFile &from, Maker &maker);

} // namespace ts
