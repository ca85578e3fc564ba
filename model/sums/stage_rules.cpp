#include "model/sums/stage_rules.h"

#include "model/records/tag_text.h"
#include "model/sums/category_facts.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/loose.h"

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
    const SafetyRecord record = safetyRecord(file);
    return {.untested = record.untested, .none = !record.tested && record.proofs.isEmpty() && record.untested.isEmpty() && mainsPowered(file.unit)};
}

QString SafetyGap::text() const
{
    if (none)
        return QStringLiteral("no electrical-safety proof is on record");
    if (untested.isEmpty())
        return {};
    return (untested.size() == 1 ? QStringLiteral("%1 electrical-safety proof not tested") : QStringLiteral("%1 electrical-safety proofs not tested")).arg(untested.size());
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
    QStringList also;
    if (const QString loose = looseItems(file); overruled && !loose.isEmpty())
        also << QStringLiteral("left out: ") + loose;
    if (const QString untested = handsOn(file.unit, wish.stage, wish.outcome) ? safetyGap(file).text() : QString(); !untested.isEmpty())
        also << untested;
    if (!also.isEmpty())
        change->setSentence(change->sentence() + QStringLiteral("; ") + also.join(QStringLiteral("; ")));
    if (!overruled)
        return change;
    // What is still off stays out, for the reason given: named in the sentence, and on the sheet from then on.
    for (const TeardownItem &item : file.all<TeardownItem>()) {
        if (item.removed || item.state != TeardownState::Off)
            continue;
        TeardownItem out = item;
        out.state = TeardownState::LeftOut;
        out.leftOutBecause = wish.because.trimmed();
        out.backAt = maker.now();
        change->edit(item, out);
    }
    return change;
}

} // namespace ts
