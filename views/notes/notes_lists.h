#pragma once

#include "model/faults/solved_cause.h"
#include "views/notes/notes_list.h"

#include <memory>

namespace ts {

// The lists of a model's notes, one for each kind of thing that is known.

[[nodiscard]] std::unique_ptr<NotesList> pointsList();
[[nodiscard]] std::unique_ptr<NotesList> teardownList();
[[nodiscard]] std::unique_ptr<NotesList> partsList();
[[nodiscard]] std::unique_ptr<NotesList> proofsList();
[[nodiscard]] std::unique_ptr<NotesList> papersList();
/// `solved` answers what was found on the owner's own closed units, to be counted beside each cause.
[[nodiscard]] std::unique_ptr<NotesList> causesList(std::function<QList<SolvedCause>()> solved, std::function<Currency()> currency);
/// Each check with the causes it points to: named in the list, parted by semicolons, "90/5" where the odds are not the usual 95 and 5 %.
[[nodiscard]] std::unique_ptr<NotesList> checksList();

} // namespace ts
