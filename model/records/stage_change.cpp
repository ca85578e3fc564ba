#include "model/records/stage_change.h"

#include "model/records/tag_text.h"

namespace ts {

QString stageText(Stage stage)
{
    QString word = toWord(stage);
    word[0] = word.at(0).toUpper();
    return word;
}

Expected<Change> stageChange(const Unit &unit, const StageWish &wish, Maker &maker)
{
    const QString did = QStringLiteral("Unit %1 was not moved to %2").arg(tagText(unit.tag), stageText(wish.stage));
    const bool held = wish.stage == Stage::Held;
    const bool closed = wish.stage == Stage::Closed;
    if (held && wish.because.trimmed().isEmpty())
        return Trouble{did, QStringLiteral("a held unit needs a reason"), QStringLiteral("say what it waits for")};
    if (closed && !wish.outcome)
        return Trouble{did, QStringLiteral("a closed unit needs an outcome"), QStringLiteral("say one of ") + allWords<Outcome>().join(QStringLiteral(", "))};
    if (wish.until.isValid() && !held)
        return Trouble{did, QStringLiteral("only a held unit has a day to wait for"), {}};
    if (wish.outcome && !closed)
        return Trouble{did, QStringLiteral("only a closed unit has an outcome"), {}};
    const bool offered = wish.stage == Stage::Offered;
    if (!offered && (wish.asked || !wish.channel.isNull()))
        return Trouble{did, QStringLiteral("only an offered unit has a channel and a price that is asked"), {}};
    if (wish.asked && wish.asked->minor() < 0)
        return Trouble{did, QStringLiteral("a price that is asked is not below nothing"), QStringLiteral("leave the price out until it is known")};

    Unit after = unit;
    after.stage = wish.stage;
    after.heldBecause = held ? wish.because.trimmed() : QString();
    after.heldUntil = wish.until;
    after.outcome = wish.outcome;
    if (!wish.channel.isNull())
        after.channel = wish.channel;
    if (wish.asked)
        after.asked = wish.asked;
    QString sentence = stageText(wish.stage);
    if (closed)
        sentence += QStringLiteral(": ") + toWord(*wish.outcome).replace(QLatin1Char('_'), QLatin1Char(' '));
    if (offered && after.asked)
        sentence += QStringLiteral(" at ") + after.asked->display();
    if (!wish.because.trimmed().isEmpty())
        sentence += QStringLiteral(": ") + wish.because.trimmed();
    Change change((wish.stage == unit.stage ? QStringLiteral("%1 stands at %2") : QStringLiteral("Moved %1 to %2")).arg(tagText(unit.tag), sentence));
    if (after == unit)
        return change;
    if (after.stage != unit.stage) {
        after.stageSince = maker.now();
        StageMove move = maker.fresh<StageMove>();
        move.unit = unit.id;
        move.fromStage = unit.stage;
        move.toStage = wish.stage;
        move.because = wish.because.trimmed();
        move.until = wish.until;
        move.outcome = wish.outcome;
        move.channel = wish.channel;
        move.asked = wish.asked;
        change.add(move);
    }
    change.edit(unit, after);
    return change;
}

} // namespace ts
