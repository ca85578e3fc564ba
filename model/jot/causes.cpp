#include "model/jot/belonging.h"
#include "model/jot/families.h"
#include "model/jot/likeness.h"

namespace ts {

namespace {

QString stateText(CauseState state)
{
    return toWord(state).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString weightText(double weight)
{
    return numberText(weight * 100) + QStringLiteral(" %");
}

bool anyCause(const Cause &)
{
    return true;
}

/// What `ruled out` and `was` share: settles the cause that is named, else records one that is settled from the start.
Jotted settle(const Jotting &jotting, CauseState state, const QString &text, const QString &reason)
{
    const QString label =
        state == CauseState::Confirmed ? QStringLiteral("Cause confirmed: ") : QStringLiteral("Cause ruled out: ");
    Jotted jotted{QStringLiteral("cause"), QStringLiteral("cause, ") + stateText(state), {}, {}, Change()};
    const QString because = reason.isEmpty() ? QString() : QStringLiteral(", because ") + shown(reason);
    const QList<Cause> &causes = jotting.file.all<Cause>();
    const Belonging to = belonging(text, jotting.file);
    const bool aimed = to.text != text; // "for SYMPTOM" stands behind the cause
    auto named = aimed ? bestNamed(causes, to.text, &Cause::text, [&](const Cause &cause) { return cause.symptom == to.id(); }) : Named<Cause>();
    if (!named)
        named = bestNamed(causes, text, &Cause::text, [](const Cause &cause) { return cause.state == CauseState::Open; });
    if (!named)
        named = bestNamed(causes, text, &Cause::text, anyCause);
    if (!named) {
        Cause cause = jotting.fresh<Cause>();
        cause.symptom = to.id();
        cause.text = to.text;
        cause.state = state;
        cause.reason = reason;
        cause.settledAt = jotting.maker.now();
        const QString sentence = label + shown(cause.text) + because;
        // Not on the board: a slip of the fingers would otherwise pass for what was found.
        jotted.preview = sentence + to.words() + QStringLiteral(" · a new cause, ") + stateText(state);
        jotted.change = Change(sentence).add(cause);
        return jotted;
    }
    Cause cause = *named.record;
    if (cause.state != state || !reason.isEmpty()) {
        cause.state = state;
        cause.settledAt = jotting.maker.now();
        if (!reason.isEmpty())
            cause.reason = reason;
    }
    const QString sentence = label + shown(cause.text) + because;
    jotted.preview = cause == *named.record ? sentence + QStringLiteral(" · recorded so already") : sentence;
    if (named.rivals)
        jotted.preview += QStringLiteral(" · the newest of %1 that read so").arg(named.rivals + 1);
    jotted.change = Change(sentence).edit(*named.record, cause);
    return jotted;
}

} // namespace

Jotted jotThink(const Jotting &jotting)
{
    // The share may stand before or after "for SYMPTOM": "worn belt 40% for reel stops", "worn belt for reel stops 40%".
    QString text = jotting.text;
    std::optional<double> percent;
    std::optional<int> minutes;
    const auto takeFigures = [&] {
        for (bool more = true; more;) {
            more = false;
            if (const auto taken = takePercent(text); taken && !percent) {
                percent = taken->value;
                text = taken->rest;
                more = true;
            } else if (const auto time = takeMinutes(text); time && !minutes) {
                minutes = time->value;
                text = time->rest;
                more = true;
            }
        }
    };
    takeFigures();
    const Belonging to = belonging(text, jotting.file);
    text = to.text;
    takeFigures();

    const auto same = bestNamed(
        jotting.file.all<Cause>(), text, &Cause::text, [&](const Cause &cause) { return cause.symptom == to.id(); },
        Likeness::Same);
    Cause cause = same ? *same.record : jotting.fresh<Cause>();
    if (!same) {
        cause.symptom = to.id();
        cause.text = text;
    }
    if (cause.state != CauseState::Open) {
        cause.state = CauseState::Open;
        cause.settledAt = {};
    }
    if (percent) {
        cause.weight = *percent / 100;
        cause.weightFrom.clear(); // one's own now
    }
    if (minutes)
        cause.fixMinutes = minutes;

    QString sentence = QStringLiteral("Cause: ") + shown(cause.text);
    if (cause.weight)
        sentence += QStringLiteral(", ") + weightText(*cause.weight);
    if (cause.fixMinutes)
        sentence += QStringLiteral(", %1 to fix").arg(minutesText(*cause.fixMinutes));
    Jotted jotted{QStringLiteral("cause"), QStringLiteral("cause"), sentence + to.words(), {}, Change(sentence)};
    if (same) {
        jotted.preview += cause == *same.record ? QStringLiteral(" · recorded so already")
                          : same.record->state != CauseState::Open
                              ? QStringLiteral(" · open again, was ") + stateText(same.record->state)
                              : QStringLiteral(" · thought of before");
        jotted.change.edit(*same.record, cause);
    } else {
        jotted.change.add(cause);
    }
    return jotted;
}

Jotted jotRuledOut(const Jotting &jotting)
{
    const auto because = takeBecause(jotting.text);
    return settle(jotting, CauseState::RuledOut, because ? because->rest : jotting.text, because ? because->value : QString());
}

Jotted jotWas(const Jotting &jotting)
{
    const auto because = takeBecause(jotting.text);
    return settle(jotting, CauseState::Confirmed, because ? because->rest : jotting.text, because ? because->value : QString());
}

} // namespace ts
