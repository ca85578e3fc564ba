// bring-in, learn: what is known of a model or a category onto a unit, and from a unit into the notes.
#include "app/commands.h"

#include "model/faults/model_learning.h"
#include "model/faults/usual_causes.h"
#include "model/records/tag_text.h"

namespace ts {

namespace {

/// The symptom that was named, or the newest open one.
Expected<Id<Symptom>> symptomFor(const UnitFile &file, const QString &named)
{
    Id<Symptom> found;
    for (const Symptom &symptom : file.all<Symptom>())
        if (named.isEmpty() ? symptom.state == SymptomState::Open : symptom.text.contains(named, Qt::CaseInsensitive))
            found = symptom.id;
    if (found.isNull())
        return Trouble{QStringLiteral("Nothing was brought in"),
                       named.isEmpty() ? QStringLiteral("no symptom is open")
                                       : QStringLiteral("no symptom reads \"%1\"").arg(named.simplified()),
                       QStringLiteral("record it first: jot BOOK TAG \"saw …\"")};
    return found;
}

/// Causes and checks for a symptom: from the model's notes where they know it, else from the category's table, with the owner's
/// own closed units in the weights.
Expected<Change> faultsFor(Desk &desk, const UnitFile &file, const QString &named, Maker &maker)
{
    const auto symptom = symptomFor(file, named);
    if (!symptom)
        return symptom.trouble();
    const auto offer = usualCauses(desk, file.unit, file.find(*symptom)->text);
    return offer ? bringIn(file, *symptom, *offer, maker) : Expected<Change>(offer.trouble());
}

Expected<Change> wantedChange(Desk &desk, const UnitFile &file, const Options &options)
{
    Maker maker = desk.maker();
    const QString what = options.at(2);
    if (what == QLatin1String("faults"))
        return faultsFor(desk, file, options.value(QStringLiteral("for")), maker);
    if (what == QLatin1String("notes")) {
        const auto notes = notesFor(desk, file.unit);
        if (!notes)
            return notes.trouble();
        if (notes->notes.id.isNull())
            return Trouble{QStringLiteral("Nothing was brought in"),
                           QStringLiteral("there are no notes on this unit's maker and model"),
                           {}};
        return offerNotes(file, *notes, {}, maker);
    }
    const auto other = unitOf(desk, options.value(QStringLiteral("of")));
    if (!other)
        return other.trouble();
    const auto from = desk.unitFile(*other);
    return from ? copyTeardown(file, *from, maker) : Expected<Change>(from.trouble());
}

Exit applied(Invocation &run, Desk &desk, const UnitFile &file, const Expected<Change> &wanted)
{
    if (!wanted)
        return run.refuse(wanted.trouble());
    Change change = *wanted;
    if (!change.sentence().contains(tagText(file.unit.tag)))
        change.setSentence(tagText(file.unit.tag) + QLatin1Char(' ') + change.sentence());
    if (auto done = desk.apply(change); !done)
        return run.refuse(done.trouble());
    run.out() << change.sentence() << '\n';
    return Exit::Done;
}

} // namespace

Exit runBringIn(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("for"), QStringLiteral("symptom"));
    options.add(QStringLiteral("of"), QStringLiteral("tag"));
    if (auto read = options.read(run.arguments(), 3, 3); !read)
        return run.misuse(read.trouble().sentence());
    const QString what = options.at(2);
    const bool teardown = what == QLatin1String("teardown");
    if (!teardown && what != QLatin1String("faults") && what != QLatin1String("notes"))
        return run.misuse(QStringLiteral("Say what is brought in: faults, notes or teardown."));
    if (teardown != options.has(QStringLiteral("of")))
        return run.misuse(QStringLiteral("A teardown, and nothing else, is brought in --of another unit's TAG."));
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto file = (*desk)->unitFile(*id);
    if (!file)
        return run.refuse(file.trouble());
    return applied(run, **desk, *file, wantedChange(**desk, *file, options));
}

Exit runLearn(Invocation &run)
{
    Options options(run);
    if (auto read = options.read(run.arguments(), 2, 2); !read)
        return run.misuse(read.trouble().sentence());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto file = (*desk)->unitFile(*id);
    if (!file)
        return run.refuse(file.trouble());
    const auto notes = notesFor(**desk, file->unit);
    if (!notes)
        return run.refuse(notes.trouble());
    Maker maker = (*desk)->maker();
    return applied(run, **desk, *file, learnFrom(*file, *notes, maker));
}

} // namespace ts
