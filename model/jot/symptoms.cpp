#include "model/jot/families.h"
#include "model/jot/likeness.h"

namespace ts {

Jotted jotSaw(const Jotting &jotting)
{
    Symptom symptom = jotting.fresh<Symptom>();
    symptom.text = jotting.text;
    const QString sentence = QStringLiteral("Symptom: ") + shown(symptom.text);
    return {QStringLiteral("symptom"), QStringLiteral("symptom, open"), sentence, {}, Change(sentence).add(symptom)};
}

namespace {

Jotted clear(const Jotting &jotting, const Symptom &symptom, const QString &aside, const QString &question)
{
    Symptom cleared = symptom;
    cleared.state = SymptomState::Cleared;
    cleared.clearedAt = jotting.maker.now();
    const QString sentence = QStringLiteral("Symptom cleared: ") + shown(symptom.text);
    return {QStringLiteral("symptom"), QStringLiteral("symptom, cleared"), sentence + aside, question,
            Change(sentence).edit(symptom, cleared)};
}

} // namespace

Jotted jotCleared(const Jotting &jotting)
{
    const QList<Symptom> &symptoms = jotting.file.all<Symptom>();
    const auto open = [](const Symptom &symptom) { return symptom.state == SymptomState::Open; };
    const Symptom *last = newest(symptoms, open);
    if (jotting.text.isEmpty()) {
        if (last)
            return clear(jotting, *last, {}, {});
        return asNote(jotting, QStringLiteral("no symptom is open"));
    }
    if (const auto named = bestNamed(symptoms, jotting.text, &Symptom::text, open, Likeness::Holds))
        return clear(jotting, *named.record,
                     named.rivals ? QStringLiteral(" · the newest of %1 that read so").arg(named.rivals + 1) : QString(), {});
    if (bestNamed(symptoms, jotting.text, &Symptom::text, [](const Symptom &) { return true; }))
        return asNote(jotting, QStringLiteral("that symptom is cleared already"));
    if (!last)
        return asNote(jotting, QStringLiteral("no symptom is open"));
    // What names none belongs to the newest open one; that may be the wrong one, so it is asked about.
    return clear(jotting, *last, QStringLiteral(" · the newest, as none reads ") + inQuotes(jotting.text),
                 QStringLiteral("No open symptom reads %1. Clear %2?").arg(inQuotes(jotting.text), inQuotes(last->text)));
}

} // namespace ts
