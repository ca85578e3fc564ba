#include "model/faults/model_learning.h"

#include "model/faults/fault_board.h"
#include "model/faults/same_text.h"

#include <algorithm>

namespace ts {

namespace {

template <class R>
R freshOf(const NotesFile &notes, Maker &maker)
{
    R record = maker.fresh<R>();
    record.modelNotes = notes.notes.id;
    return record;
}

void learnPoints(NotesFile &notes, const UnitFile &file, Maker &maker)
{
    QList<TestPoint> &points = notes.all<TestPoint>();
    const auto learn = [&](const QString &name, const Limit &wanted, const QString &conditions, const QString &source) {
        if (std::any_of(points.begin(), points.end(), [&](const TestPoint &each) { return sameText(each.name, name); }))
            return;
        TestPoint point = freshOf<TestPoint>(notes, maker);
        point.name = name;
        point.wanted = wanted;
        point.conditions = conditions;
        point.source = source;
        point.position = static_cast<int>(points.size()) + 1;
        points << point;
    };
    for (const TestPoint &each : file.all<TestPoint>())
        learn(each.name, each.wanted, each.conditions, each.source);
    for (const Reading &each : file.all<Reading>())
        if (!each.wanted.isNone())
            learn(each.name, each.wanted, each.conditions, {});
}

/// Minutes of the steps that were done for a symptom; none where none were counted.
std::optional<int> minutesFor(const UnitFile &file, const Id<Symptom> &symptom)
{
    int minutes = 0;
    for (const Step &step : file.all<Step>())
        if (!symptom.isNull() && step.symptom == symptom && step.kind != StepKind::Investigate)
            minutes += step.minutes.value_or(0);
    return minutes > 0 ? std::optional(minutes) : std::nullopt;
}

void learnFaults(NotesFile &notes, const UnitFile &file, Maker &maker)
{
    const auto symptomOf = [&](const Id<Symptom> &id) {
        const Symptom *symptom = id.isNull() ? nullptr : file.find(id);
        return symptom ? symptom->text : QString();
    };
    QHash<Id<Cause>, Id<KnownCause>> causes;
    QHash<Id<Check>, Id<KnownCheck>> checks;
    for (const Cause &each : file.all<Cause>()) {
        if (isSomethingElse(each.text))
            continue;
        KnownCause known = freshOf<KnownCause>(notes, maker);
        known.symptom = symptomOf(each.symptom);
        known.text = each.text;
        known.weight = each.weight;
        known.fixMinutes = each.fixMinutes;
        known.fixCost = each.fixCost;
        known.fixOdds = each.fixOdds;
        if (each.state == CauseState::Confirmed) {
            known.note = each.reason;
            if (!known.fixMinutes)
                known.fixMinutes = minutesFor(file, each.symptom);
        }
        causes.insert(each.id, known.id);
        notes.all<KnownCause>() << known;
    }
    for (const Check &each : file.all<Check>()) {
        if (each.symptom.isNull())
            continue; // steps before power and the like
        KnownCheck known = freshOf<KnownCheck>(notes, maker);
        known.symptom = symptomOf(each.symptom);
        known.text = each.text;
        known.minutes = each.minutes;
        known.wanted = each.cameOut == CameOut::Normal && each.wanted.isEmpty() ? each.result : each.wanted;
        checks.insert(each.id, known.id);
        notes.all<KnownCheck>() << known;
    }
    for (const Bearing &each : file.all<Bearing>())
        if (causes.contains(each.cause) && checks.contains(each.check)) {
            KnownMark known = freshOf<KnownMark>(notes, maker);
            known.check = checks.value(each.check);
            known.cause = causes.value(each.cause);
            known.abnormalIf = each.abnormalIf;
            known.abnormalIfNot = each.abnormalIfNot;
            notes.all<KnownMark>() << known;
        }
}

void learnWork(NotesFile &notes, const UnitFile &file, Maker &maker)
{
    QList<TeardownItem> items = file.all<TeardownItem>();
    std::stable_sort(items.begin(), items.end(), [](const auto &a, const auto &b) { return a.position < b.position; });
    for (const TeardownItem &each : items) {
        KnownTeardown known = freshOf<KnownTeardown>(notes, maker);
        known.position = static_cast<int>(notes.all<KnownTeardown>().size()) + 1;
        known.what = each.what;
        known.fasteners = each.fasteners;
        known.fastenerCount = each.fastenerCount;
        known.connectors = each.connectors;
        known.springs = each.springs;
        known.marks = each.marks;
        known.caution = each.caution;
        notes.all<KnownTeardown>() << known;
    }
    for (const Need &each : file.all<Need>()) {
        if (each.state != NeedState::Fitted)
            continue;
        KnownPart known = freshOf<KnownPart>(notes, maker);
        known.position = each.position;
        known.text = each.text;
        known.quantity = each.quantity;
        known.note = each.oldValue.isEmpty() ? QString() : QStringLiteral("was ") + each.oldValue;
        notes.all<KnownPart>() << known;
    }
    for (const Proof &each : file.all<Proof>()) {
        KnownProof known = freshOf<KnownProof>(notes, maker);
        known.text = each.text;
        known.kind = each.kind;
        known.position = static_cast<int>(notes.all<KnownProof>().size()) + 1;
        notes.all<KnownProof>() << known;
    }
    QStringList adjustments;
    for (const Step &each : file.all<Step>())
        if ((each.kind == StepKind::Adjust || each.kind == StepKind::Align) &&
            !(each.before + each.after + each.position).isEmpty())
            adjustments << QStringLiteral("%1%2: %3 → %4")
                               .arg(each.text.simplified(),
                                    each.position.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(each.position), each.before,
                                    each.after);
    notes.notes.adjustments = adjustments.join(QLatin1Char('\n'));
}

} // namespace

NotesFile notesFrom(const UnitFile &file, Maker &maker)
{
    NotesFile notes;
    notes.notes = maker.fresh<ModelNotes>();
    notes.notes.maker = file.unit.maker;
    notes.notes.makerModel = file.unit.makerModel;
    notes.notes.category = file.unit.category;
    notes.notes.mainsVersions = file.unit.mains;
    learnPoints(notes, file, maker);
    learnFaults(notes, file, maker);
    learnWork(notes, file, maker);
    return notes;
}

} // namespace ts
