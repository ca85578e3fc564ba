#include "model/jot/families.h"
#include "model/jot/phrase.h"

namespace ts {

namespace {

/// Changes the unit's one left-off record, or makes it.
template <class Edit>
Jotted leaveOff(const Jotting &jotting, const QString &badge, const QString &sentence, Edit edit)
{
    Jotted jotted{QStringLiteral("left off"), QStringLiteral("left off, ") + badge, sentence, {}, Change(sentence)};
    const QList<LeftOff> &all = jotting.file.all<LeftOff>();
    if (all.isEmpty()) {
        LeftOff fresh = jotting.fresh<LeftOff>();
        edit(fresh);
        jotted.change.add(fresh);
        return jotted;
    }
    LeftOff after = all.last();
    edit(after);
    if (after == all.last()) {
        jotted.preview += QStringLiteral(" · recorded so already");
        return jotted;
    }
    after.at = jotting.maker.now(); // the page says when the unit was left off
    jotted.change.edit(all.last(), after);
    return jotted;
}

} // namespace

Jotted jotNext(const Jotting &jotting)
{
    return leaveOff(jotting, QStringLiteral("next"), QStringLiteral("Next: ") + shown(jotting.text),
                    [&](LeftOff &left) { left.next = jotting.text; });
}

Jotted jotDoNotPower(const Jotting &jotting)
{
    // The reason is what the flag stands by, so it must not be empty; the flag itself must not wait for one.
    const QString reason = jotting.text.isEmpty() ? QStringLiteral("no reason noted") : jotting.text;
    return leaveOff(jotting, QStringLiteral("do not power"), QStringLiteral("Do not power: ") + shown(reason),
                    [&](LeftOff &left) { left.doNotPower = reason; });
}

Jotted jotSafeToPower(const Jotting &jotting)
{
    // "safe to power only through the lamp" must not take the flag away.
    const QString more = jotting.text.toLower();
    if (!more.isEmpty() && more != QLatin1String("now") && more != QLatin1String("again") && more != QLatin1String("."))
        return asNote(jotting, QStringLiteral("more follows; type just \"safe to power\" to take the flag away"));
    const QList<LeftOff> &all = jotting.file.all<LeftOff>();
    Jotted jotted{
        QStringLiteral("left off"), QStringLiteral("left off, safe to power"), {}, {}, Change(QStringLiteral("Safe to power"))};
    if (all.isEmpty() || all.last().doNotPower.isEmpty()) {
        jotted.preview = QStringLiteral("Nothing to record: no flag says that it must not be powered");
        return jotted;
    }
    LeftOff after = all.last();
    after.doNotPower.clear();
    after.at = jotting.maker.now();
    jotted.preview = QStringLiteral("Safe to power: takes away the flag ") + inQuotes(all.last().doNotPower);
    jotted.change.edit(all.last(), after);
    return jotted;
}

Jotted jotWaiting(const Jotting &jotting)
{
    const QDate today = jotting.today();
    QString reason = jotting.text;
    QDate until;
    QString aside;
    for (const auto word : {QLatin1String(" until "), QLatin1String(" till "), QLatin1String(" due ")}) {
        const qsizetype at = jotting.text.lastIndexOf(word, -1, Qt::CaseInsensitive);
        if (at <= 0)
            continue;
        const QString written = jotting.text.mid(at + word.size()).trimmed();
        if (const auto day = dateOf(written, today)) {
            until = *day;
            reason = jotting.text.left(at).trimmed();
        } else {
            aside = QStringLiteral(" · %1 is no day, so it stays in the words").arg(inQuotes(written));
        }
        break;
    }
    if (reason.startsWith(QLatin1String("for "), Qt::CaseInsensitive) && reason.size() > 4)
        reason = reason.mid(4).trimmed();

    const Unit &before = jotting.file.unit;
    Unit unit = before;
    unit.stage = Stage::Held;
    unit.heldBecause = reason;
    unit.heldUntil = until;
    unit.outcome.reset();
    QString sentence = QStringLiteral("Held: waiting for ") + shown(reason);
    if (until.isValid())
        sentence += QStringLiteral(" until ") + dateText(until, today);
    Jotted jotted{QStringLiteral("stage"), QStringLiteral("stage, held"), sentence + aside, {}, Change(sentence)};
    if (before.stage == Stage::Closed)
        jotted.question = QStringLiteral("The unit is closed. Open it again as held?");
    else if (until.isValid() && until < today)
        jotted.question = QStringLiteral("%1 is past. Record it all the same?").arg(dateText(until, today));
    if (unit == before) {
        jotted.preview += QStringLiteral(" · recorded so already");
        return jotted;
    }
    if (before.stage == Stage::Held) { // no move: only the reason or the day is another
        jotted.change.edit(before, unit);
        return jotted;
    }
    unit.stageSince = jotting.maker.now();
    StageMove move = jotting.fresh<StageMove>();
    move.fromStage = before.stage;
    move.toStage = Stage::Held;
    move.because = reason;
    move.until = until;
    jotted.change.edit(before, unit).add(move);
    return jotted;
}

} // namespace ts
