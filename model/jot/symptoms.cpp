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

Jotted clear(const Jotting &jotting, const Symptom &symptom, const QString &aside)
{
    Symptom cleared = symptom;
    cleared.state = SymptomState::Cleared;
    cleared.clearedAt = jotting.maker.now();
    const QString sentence = QStringLiteral("Symptom cleared: ") + shown(symptom.text);
    return {QStringLiteral("symptom"), QStringLiteral("symptom, cleared"), sentence + aside, {}, Change(sentence).edit(symptom, cleared)};
}

bool isOpen(const Symptom &symptom)
{
    return symptom.state == SymptomState::Open;
}

/// "the crackle" names what "crackle" names.
QString withoutArticles(const QString &text)
{
    static const QStringList articles{QStringLiteral("the"), QStringLiteral("a"), QStringLiteral("an"), QStringLiteral("that"),
                                      QStringLiteral("this")};
    QStringList words = pieces(text);
    while (words.size() > 1 && articles.contains(words.first(), Qt::CaseInsensitive))
        words.removeFirst();
    return words.join(QLatin1Char(' '));
}

/// `"hum"`, `"hum" and 2 more`: what is open, the newest first.
QString openOnes(const QList<Symptom> &symptoms)
{
    constexpr int named = 2;
    QStringList texts;
    for (auto it = symptoms.crbegin(); it != symptoms.crend(); ++it)
        if (isOpen(*it))
            texts << inQuotes(it->text);
    const qsizetype more = texts.size() - named;
    QString words = texts.mid(0, named).join(QStringLiteral(", "));
    if (more > 0)
        words += QStringLiteral(" and %1 more").arg(more);
    return words;
}

} // namespace

Jotted jotCleared(const Jotting &jotting)
{
    const QList<Symptom> &symptoms = jotting.file.all<Symptom>();
    const Symptom *last = newest(symptoms, isOpen);
    if (jotting.text.isEmpty())
        return last ? clear(jotting, *last, {}) : asNote(jotting, QStringLiteral("no symptom is open"));
    const QString name = withoutArticles(jotting.text);
    if (const auto named = bestNamed(symptoms, name, &Symptom::text, isOpen, Likeness::Holds))
        return clear(jotting, *named.record,
                     named.rivals ? QStringLiteral(" · the newest of %1 that read so").arg(named.rivals + 1) : QString());
    if (bestNamed(symptoms, name, &Symptom::text, [](const Symptom &) { return true; }))
        return asNote(jotting, QStringLiteral("that symptom is cleared already"));
    if (!last)
        return asNote(jotting, QStringLiteral("no symptom is open"));
    // Words that name no open symptom may well mean another fault; a symptom taken for cleared would be missing on the sheet, so
    // nothing is cleared by a guess. "cleared" alone clears the newest.
    return asNote(jotting, QStringLiteral("no open symptom reads %1; still open: %2").arg(inQuotes(jotting.text), openOnes(symptoms)));
}

} // namespace ts
