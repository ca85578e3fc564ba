#include "model/jot/families.h"
#include "model/jot/likeness.h"
#include "model/records/settings.h"
#include "model/sums/acceptance.h"
#include "model/sums/electrical_safety.h"

namespace ts {

namespace {

ProofKind kindOf(const QString &text)
{
    static const QStringList looks{QStringLiteral("mark"), QStringLiteral("scratch"),  QStringLiteral("finish"),
                                   QStringLiteral("case"), QStringLiteral("cosmetic"), QStringLiteral("dent"),
                                   QStringLiteral("scuff")};
    if (!electricalSafetyNamed(text).isEmpty())
        return ProofKind::ElectricalSafety;
    const QStringList words = wordsOf(text);
    for (const QString &word : words)
        for (const QString &stem : looks)
            if (word == stem || (word.startsWith(stem) && stem != QLatin1String("case") && stem != QLatin1String("mark")) ||
                word == stem + QLatin1Char('s') || word == QLatin1String("marked"))
                return ProofKind::Cosmetic;
    return ProofKind::Function;
}

QString words(ProofOutcome outcome)
{
    return toWord(outcome).replace(QLatin1Char('_'), QLatin1Char(' '));
}

Jotted prove(const Jotting &jotting, ProofOutcome outcome)
{
    // "failed to start", "proved to be the belt": plain sentences, not checks before handover.
    if ((outcome == ProofOutcome::Failed || outcome == ProofOutcome::Passed) &&
        jotting.text.startsWith(QLatin1String("to "), Qt::CaseInsensitive))
        return asNote(jotting);
    QString text = jotting.text;
    QString result;
    if (const qsizetype at = text.indexOf(QLatin1String(": ")); at > 0) {
        result = text.mid(at + 2).trimmed();
        text = text.left(at).trimmed();
    }
    const auto waiting = bestNamed(
        jotting.file.all<Proof>(), text, &Proof::text,
        [](const Proof &proof) { return proof.cameOut == ProofOutcome::NotTested; }, Likeness::Same);
    Proof proof = waiting ? *waiting.record : jotting.fresh<Proof>();
    if (!waiting) {
        proof.text = text;
        proof.kind = kindOf(text);
    }
    proof = provedAs(proof, outcome, jotting.today(), jotting.bench.setting(settings::worker));
    if (!result.isEmpty())
        proof.result = result;
    QString sentence = QStringLiteral("Proof %1: %2").arg(words(outcome), shown(proof.text));
    if (!result.isEmpty())
        sentence += QStringLiteral(", ") + shown(result);
    Jotted jotted{QStringLiteral("proof"),
                  QStringLiteral("proof, ") + words(outcome),
                  sentence + QStringLiteral(" · ") + toWord(proof.kind).replace(QLatin1Char('_'), QLatin1Char(' ')),
                  {},
                  Change(sentence)};
    if (!waiting) {
        jotted.change.add(proof);
        return jotted;
    }
    if (proof == *waiting.record)
        jotted.preview += QStringLiteral(" · recorded so already");
    jotted.change.edit(*waiting.record, proof);
    return jotted;
}

} // namespace

Jotted jotFlaw(const Jotting &jotting)
{
    Note note = jotting.fresh<Note>();
    note.text = jotting.text;
    note.kind = NoteKind::Flaw;
    const QString sentence = QStringLiteral("Flaw: ") + shown(note.text);
    return {QStringLiteral("note"), QStringLiteral("note, flaw"), sentence, {}, Change(sentence).add(note)};
}

Jotted jotProved(const Jotting &jotting)
{
    return prove(jotting, ProofOutcome::Passed);
}

Jotted jotFailed(const Jotting &jotting)
{
    return prove(jotting, ProofOutcome::Failed);
}

Jotted jotNotTested(const Jotting &jotting)
{
    return prove(jotting, ProofOutcome::NotTested);
}

Jotted jotNotApplicable(const Jotting &jotting)
{
    return prove(jotting, ProofOutcome::NotApplicable);
}

} // namespace ts
