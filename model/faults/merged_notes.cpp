#include "model/faults/model_learning.h"

#include "model/faults/same_text.h"

#include <algorithm>

namespace ts {

namespace {

/// Adds the records that none of those known is the same as; answers, for each incoming one, the id that stands for it.
template <class R, class Same>
QHash<Id<R>, Id<R>> mergeList(Change &change, const NotesFile &incoming, const NotesFile &known, const Id<ModelNotes> &owner,
                              Same same)
{
    QHash<Id<R>, Id<R>> standsFor;
    QList<R> there = known.all<R>();
    for (R record : incoming.all<R>()) {
        const auto twin = std::find_if(there.begin(), there.end(), [&](const R &each) { return same(each, record); });
        if (twin != there.end()) {
            standsFor.insert(record.id, twin->id);
            continue;
        }
        standsFor.insert(record.id, record.id);
        record.modelNotes = owner;
        if constexpr (requires { record.position = 1; })
            record.position = static_cast<int>(there.size()) + 1;
        there << record;
        change.add(record);
    }
    return standsFor;
}

void mergeMarks(Change &change, const NotesFile &incoming, const NotesFile &known, const Id<ModelNotes> &owner,
                const QHash<Id<KnownCause>, Id<KnownCause>> &causes, const QHash<Id<KnownCheck>, Id<KnownCheck>> &checks)
{
    for (KnownMark mark : incoming.all<KnownMark>()) {
        mark.cause = causes.value(mark.cause);
        mark.check = checks.value(mark.check);
        const auto &there = known.all<KnownMark>();
        if (mark.cause.isNull() || mark.check.isNull() || std::any_of(there.begin(), there.end(), [&](const KnownMark &each) {
                return each.cause == mark.cause && each.check == mark.check;
            }))
            continue;
        mark.modelNotes = owner;
        change.add(mark);
    }
}

/// The notes' own texts: where they are empty the incoming ones; lines of adjustments are added.
ModelNotes mergedTexts(const ModelNotes &known, const ModelNotes &incoming)
{
    ModelNotes merged = known;
    for (const auto text : {&ModelNotes::variants, &ModelNotes::mainsVersions, &ModelNotes::usualCauses, &ModelNotes::parts,
                            &ModelNotes::teardown, &ModelNotes::sources, &ModelNotes::ideas, &ModelNotes::cautions})
        if ((merged.*text).trimmed().isEmpty())
            merged.*text = incoming.*text;
    QStringList lines = known.adjustments.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (const QString &line : incoming.adjustments.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        if (std::none_of(lines.begin(), lines.end(), [&](const QString &each) { return sameText(each, line); }))
            lines << line;
    if (lines.join(QLatin1Char('\n')) != known.adjustments.trimmed())
        merged.adjustments = lines.join(QLatin1Char('\n'));
    return merged;
}

} // namespace

Change mergedNotes(const NotesFile &incoming, const NotesFile &known, Maker &maker)
{
    Change change;
    Id<ModelNotes> owner = known.notes.id;
    if (owner.isNull()) {
        ModelNotes fresh = incoming.notes;
        if (fresh.id.isNull())
            fresh.id = maker.fresh<ModelNotes>().id;
        owner = fresh.id;
        change.add(fresh);
    } else {
        change.edit(known.notes, mergedTexts(known.notes, incoming.notes));
    }
    mergeList<TestPoint>(change, incoming, known, owner, [](const auto &a, const auto &b) { return sameText(a.name, b.name); });
    const auto sameFault = [](const auto &a, const auto &b) {
        return sameText(a.text, b.text) && sameText(a.symptom, b.symptom);
    };
    const auto causes = mergeList<KnownCause>(change, incoming, known, owner, sameFault);
    const auto checks = mergeList<KnownCheck>(change, incoming, known, owner, sameFault);
    mergeMarks(change, incoming, known, owner, causes, checks);
    mergeList<KnownTeardown>(change, incoming, known, owner,
                             [](const auto &a, const auto &b) { return sameText(a.what, b.what); });
    mergeList<KnownPart>(change, incoming, known, owner, [](const KnownPart &a, const KnownPart &b) {
        return sameText(a.position + a.text, b.position + b.text);
    });
    mergeList<KnownProof>(change, incoming, known, owner, [](const auto &a, const auto &b) { return sameText(a.text, b.text); });
    mergeList<KnownPaper>(change, incoming, known, owner,
                          [](const auto &a, const auto &b) { return sameText(a.title, b.title); });
    return change;
}

Expected<Change> learnFrom(const UnitFile &file, const NotesFile &known, Maker &maker)
{
    const QString did = QStringLiteral("Nothing was learned from unit %1").arg(file.unit.tag, 4, 10, QLatin1Char('0'));
    if (file.unit.maker.trimmed().isEmpty() || file.unit.makerModel.trimmed().isEmpty())
        return Trouble{did, QStringLiteral("it has no maker or no model"), QStringLiteral("say both first")};
    Change change = mergedNotes(notesFrom(file, maker), known, maker);
    if (change.isEmpty())
        return Trouble{did, QStringLiteral("the notes have all of it already"), {}};
    change.setSentence(QStringLiteral("Learned from %1 for %2 %3")
                           .arg(file.unit.tag, 4, 10, QLatin1Char('0'))
                           .arg(file.unit.maker.simplified(), file.unit.makerModel.simplified()));
    return change;
}

} // namespace ts
