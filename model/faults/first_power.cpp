#include "model/faults/first_power.h"

#include "model/sums/category_facts.h"

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
    if (!mainsPowered(unit))
        return {};
    const QList<Hazard> hazards = factsOf(unit.category).hazards;
    const auto oneOf = [&](std::initializer_list<Hazard> any) {
        return std::any_of(any.begin(), any.end(), [&](Hazard hazard) { return hazards.contains(hazard); });
    };
    QList<SafetyStep> steps{{QStringLiteral("rating plate: mains voltage, frequency and selector fit the supply here"), 1},
                            {QStringLiteral("plug, lead, strain relief and switch undamaged"), 1},
                            {QStringLiteral("fuse fitted is the one on the plate, rating and characteristic"), 2},
                            {QStringLiteral("opened and looked: nothing loose, leaking, burnt or broken"), 5},
                            {QStringLiteral("discs, tapes and cells out, transport locks undone"), 1},
                            {QStringLiteral("resistance across the plug with the switch on, and from its pins to metal"), 3}};
    if (unit.protectionClass == ProtectionClass::I)
        steps << SafetyStep{QStringLiteral("protective earth: metal to earth pin"), 2};
    if (oneOf({Hazard::StoredCharge, Hazard::ValveHighTension, Hazard::SwitchingPrimary}))
        steps << SafetyStep{QStringLiteral("large capacitors drained through a resistor, measured, not shorted"), 4};
    if (oneOf({Hazard::SwitchingPrimary, Hazard::LiveChassis}))
        steps << SafetyStep{QStringLiteral("mains filter capacitors sound, no cracked case"), 3};
    if (unit.category == Category::AmplifierReceiver)
        steps << SafetyStep{QStringLiteral("output devices: no short by diode test"), 5};
    if (unit.category == Category::Radio)
        steps << SafetyStep{QStringLiteral("valve sets: high tension not shorted, audio coupling capacitor renewed or lifted"),
                            10};
    steps << SafetyStep{QStringLiteral("first power through a series lamp: it flashes and dims"), 3};
    return steps;
}

QList<SafetyStep> firstPowerDue(const UnitFile &file)
{
    QList<SafetyStep> due;
    if (const QString why = flagged(file); !why.isEmpty())
        due << SafetyStep{QStringLiteral("do not power: ") + why.simplified(), 0};
    if (poweredBefore(file))
        return due;
    for (const SafetyStep &step : firstPowerSteps(file.unit)) {
        const CameOut out = cameOut(file, step.text);
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
