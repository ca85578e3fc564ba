#include "model/sums/stage_rules.h"

#include "model/records/tag_text.h"
#include "model/sums/category_facts.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/loose.h"

#include <algorithm>

namespace ts {

InTheWay inTheWay(const UnitFile &file, Stage to)
{
    InTheWay way;
    const Stage from = file.unit.stage;
    const bool leaves = to == Stage::Ready || to == Stage::Offered;
    if (!leaves || from == to || from == Stage::Ready || from == Stage::Offered)
        return way;
    for (const Proof &proof : file.all<Proof>()) {
        if (proof.removed || proof.cameOut != ProofOutcome::Failed)
            continue;
        way.reasons << QStringLiteral("it failed: ") + proof.text;
        if (to == Stage::Ready && proof.kind == ProofKind::ElectricalSafety)
            way.canBeOverruled = false;
    }
    if (const QString loose = looseItems(file); !loose.isEmpty())
        way.reasons << QStringLiteral("still off: ") + loose;
    for (const LeftOff &left : file.all<LeftOff>()) {
        if (left.removed || left.doNotPower.trimmed().isEmpty())
            continue;
        way.reasons << QStringLiteral("do not power: ") + left.doNotPower.trimmed();
        if (to == Stage::Ready)
            way.canBeOverruled = false;
    }
    return way;
}

SafetyGap safetyGap(const UnitFile &file)
{
    SafetyGap gap;
    for (const Proof &proof : file.all<Proof>()) {
        if (proof.removed || proof.kind != ProofKind::ElectricalSafety || proof.cameOut == ProofOutcome::NotApplicable)
            continue;
        ++gap.asked;
        if (proof.cameOut == ProofOutcome::NotTested)
            gap.untested << proof.text;
    }
    const auto isSafety = [](const Proof &proof) { return !proof.removed && proof.kind == ProofKind::ElectricalSafety; };
    const QList<Proof> &proofs = file.all<Proof>();
    const QList<SafetyReading> readings = safetyReadings(file);
    gap.none = mainsPowered(file.unit) && std::none_of(proofs.begin(), proofs.end(), isSafety) &&
               std::none_of(readings.begin(), readings.end(), [](const SafetyReading &reading) { return reading.decided(); });
    return gap;
}

QString SafetyGap::text() const
{
    if (none)
        return QStringLiteral("no electrical-safety test is recorded");
    return untested.isEmpty() ? QString() : QStringLiteral("%1 of %2 electrical-safety proofs not tested").arg(untested.size()).arg(asked);
}

bool handsOn(const Unit &unit, Stage to, std::optional<Outcome> outcome)
{
    if (unit.stage == to)
        return false;
    return (to == Stage::Ready && unit.stage != Stage::Offered) || to == Stage::Offered || (to == Stage::Closed && outcome == Outcome::Sold);
}

Expected<Change> ruledStageChange(const UnitFile &file, const StageWish &wish, Maker &maker)
{
    const InTheWay way = inTheWay(file, wish.stage);
    const bool overruled = !way.reasons.isEmpty() && way.canBeOverruled && !wish.because.trimmed().isEmpty();
    if (!way.reasons.isEmpty() && !overruled)
        return Trouble{QStringLiteral("Unit %1 was not moved to %2").arg(tagText(file.unit.tag), stageText(wish.stage)), way.reasons.join(QStringLiteral("; ")),
                       way.canBeOverruled ? QStringLiteral("put it right, or say why it goes there all the same") : QStringLiteral("put it right first")};
    auto change = stageChange(file.unit, wish, maker);
    if (!change)
        return change;
    const QString untested = handsOn(file.unit, wish.stage, wish.outcome) ? safetyGap(file).text() : QString();
    if (!untested.isEmpty())
        change->setSentence(change->sentence() + QStringLiteral("; ") + untested);
    if (!overruled)
        return change;
    // What is still off stays out, for the reason given: named in the sentence, and on the sheet from then on.
    const QString loose = looseItems(file);
    for (const TeardownItem &item : file.all<TeardownItem>()) {
        if (item.removed || item.state != TeardownState::Off)
            continue;
        TeardownItem out = item;
        out.state = TeardownState::LeftOut;
        out.leftOutBecause = wish.because.trimmed();
        out.backAt = maker.now();
        change->edit(item, out);
    }
    if (!loose.isEmpty())
        change->setSentence(change->sentence() + QStringLiteral("; left out: ") + loose);
    return change;
}

} // namespace ts
