#pragma once

#include "model/faults/fault_offer.h"
#include "model/faults/solved_cause.h"
#include "model/records/notes_file.h"

namespace ts {

/// The notes on the unit's model with all that is known, from a desk (anything with its `list`, `get` and `benchFile`); an empty file
/// where there are none.
template <class Reader>
[[nodiscard]] Expected<NotesFile> notesFor(Reader &desk, const Unit &unit)
{
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    const ModelNotes *notes = notesOf(*bench, unit);
    return notes ? notesFile(desk, notes->id) : Expected<NotesFile>(NotesFile{});
}

/// Causes and checks for a symptom: from the model's notes where they know it, else from the category's table, with the owner's own
/// closed units in the weights. Refused where neither knows a symptom like that.
template <class Reader>
[[nodiscard]] Expected<FaultOffer> usualCauses(Reader &desk, const Unit &unit, const QString &symptom)
{
    const auto notes = notesFor(desk, unit);
    if (!notes)
        return notes.trouble();
    QList<FaultOffer> offers = offersOf(*notes);
    qsizetype place = offerFor(offers, symptom);
    if (place < 0) {
        const auto bench = desk.benchFile();
        if (!bench)
            return bench.trouble();
        offers = offersOf(tableOf(*bench, unit.category));
        place = offerFor(offers, symptom);
    }
    if (place < 0)
        return Trouble{QStringLiteral("Nothing was brought in"), QStringLiteral("no notes and no table know a symptom like \"%1\"").arg(symptom.simplified()),
                       QStringLiteral("say it in other words, or think of causes yourself")};
    const auto solved = solvedCauses(desk, unit);
    if (!solved)
        return solved.trouble();
    return blended(offers[place], unit, *solved);
}

} // namespace ts
