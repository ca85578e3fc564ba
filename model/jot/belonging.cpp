#include "model/jot/belonging.h"

#include "model/jot/likeness.h"

namespace ts {

QString Belonging::words() const
{
    return symptom ? QStringLiteral(" · for ") + inQuotes(symptom->text) : QString();
}

Belonging plainlyNamed(const QString &text, const UnitFile &file)
{
    const QString word = QStringLiteral(" for ");
    const qsizetype at = text.lastIndexOf(word, -1, Qt::CaseInsensitive);
    if (at > 0) {
        const Belonging named = belonging(text, file);
        const QStringList given = wordsOf(text.mid(at + word.size()));
        if (named.symptom && named.text.size() <= at && (given.size() > 1 || given == wordsOf(named.symptom->text)))
            return named;
    }
    return {newest(file.all<Symptom>(), [](const Symptom &symptom) { return symptom.state == SymptomState::Open; }), text};
}

Belonging belonging(const QString &text, const UnitFile &file)
{
    const QList<Symptom> &symptoms = file.all<Symptom>();
    const auto inState = [](SymptomState state) { return [state](const Symptom &symptom) { return symptom.state == state; }; };
    const QString word = QStringLiteral(" for ");
    const qsizetype at = text.lastIndexOf(word, -1, Qt::CaseInsensitive);
    if (at > 0) {
        const QString name = text.mid(at + word.size());
        for (const SymptomState state : {SymptomState::Open, SymptomState::Cleared})
            if (const auto named = bestNamed(symptoms, name, &Symptom::text, inState(state)))
                return {named.record, text.left(at).trimmed()};
    }
    // A symptom of one word ("hum") is named in passing too often to count.
    if (const auto held = bestNamed(
            symptoms, text, &Symptom::text,
            [](const Symptom &symptom) { return symptom.state == SymptomState::Open && wordsOf(symptom.text).size() > 1; },
            Likeness::Holds);
        held && (held.how == Likeness::Holds || held.how == Likeness::Same))
        return {held.record, text};
    return {newest(symptoms, inState(SymptomState::Open)), text};
}

} // namespace ts
