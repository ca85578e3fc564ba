#include "model/faults/first_power.h"

#include "model/sums/power_ladder.h"

#include <algorithm>

namespace ts {

namespace {

bool poweredBefore(const UnitFile &file)
{
    if (file.unit.stage == Stage::Ready || file.unit.stage == Stage::Offered || file.unit.stage == Stage::Closed)
        return true;
    static const QStringList live{QStringLiteral("V"), QStringLiteral("A"), QStringLiteral("W"), QStringLiteral("Hz")};
    const auto &readings = file.all<Reading>();
    const auto &proofs = file.all<Proof>();
    return !file.all<Soak>().isEmpty() || std::any_of(readings.begin(), readings.end(), [](const Reading &reading) {
        return !reading.removed && reading.value && live.contains(reading.value->measure().symbol());
    }) || std::any_of(proofs.begin(), proofs.end(), [](const Proof &proof) {
        return !proof.removed && proof.kind == ProofKind::Function && proof.cameOut == ProofOutcome::Passed;
    });
}

/// Why it must not be powered, as last recorded.
QString flagged(const UnitFile &file)
{
    QString why;
    for (const LeftOff &left : file.all<LeftOff>())
        if (!left.removed)
            why = left.doNotPower.trimmed();
    return why;
}

/// How that step came out last, on whatever symptom it was recorded.
CameOut cameOut(const UnitFile &file, const QString &step)
{
    CameOut last = CameOut::NotDone;
    for (const Check &check : file.all<Check>())
        if (!check.removed && check.text.simplified().compare(step, Qt::CaseInsensitive) == 0)
            last = check.cameOut;
    return last;
}

} // namespace

QList<SafetyStep> firstPowerSteps(const Unit &unit)
{
    QList<SafetyStep> steps;
    for (const LadderStep &each : ladderSteps(unit))
        steps << SafetyStep{each.text, each.minutes};
    return steps;
}

QList<SafetyStep> firstPowerDue(const UnitFile &file)
{
    QList<SafetyStep> due;
    if (const QString why = flagged(file); !why.isEmpty())
        due << SafetyStep{QStringLiteral("do not power: ") + why.simplified(), 0};
    if (poweredBefore(file))
        return due;
    const QList<LadderRung> rungs = ladderOf(file).rungs;
    for (const LadderRung &rung : rungs) {
        const SafetyStep step{rung.step.text, rung.step.minutes};
        const CameOut out = rung.last ? (rung.last->cameOut == RungOutcome::Stop ? CameOut::Abnormal : CameOut::Normal) : cameOut(file, step.text);
        if (out == CameOut::Normal)
            continue;
        if (out == CameOut::Abnormal)
            return due << SafetyStep{QStringLiteral("stop, do not power: ") + step.text + QStringLiteral(" (came out abnormal)"),
                                     0};
        due << step;
    }
    return due;
}

} // namespace ts
