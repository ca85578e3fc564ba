#include "model/sums/power_ladder.h"

#include "model/sums/category_facts.h"
#include "model/sums/mains_match.h"
#include "model/sums/supply/fuse_marking.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

Limit limit(const QString &text)
{
    const auto parsed = Limit::parse(text);
    return parsed ? *parsed : Limit();
}

const auto habit = u"common practice, no source"_s;

LadderStep look(PowerStep step, const QString &text, const QString &asks, const QString &stops, double minutes)
{
    return {step, text, asks, stops, StepAsks::Words, {}, habit, minutes};
}

LadderStep value(PowerStep step, const QString &text, const QString &asks, const QString &stops, const QString &wanted, const QString &source, double minutes)
{
    return {step, text, asks, stops, StepAsks::Value, wanted.isEmpty() ? Limit() : limit(wanted), source, minutes};
}

/// Seen before the plug goes in.
void before(QList<LadderStep> &steps)
{
    steps << LadderStep{PowerStep::Plate, u"rating plate: mains voltage, frequency and selector fit the supply here"_s, u"what the plate says, 230 V 50 Hz"_s,
                        u"another voltage or frequency than the bench has"_s, StepAsks::Plate, {}, u"handbooks of valve sets, common practice"_s, 1}
          << look(PowerStep::Lead, u"plug, lead, strain relief and switch undamaged"_s, u"what the lead is like from end to end"_s, u"damage, single insulation, perished rubber: renew it first"_s, 1)
          << LadderStep{PowerStep::Fuse, u"fuse fitted is the one on the plate, rating and characteristic"_s, u"marking of the fuse, want the plate's: T1.6AL250V want T1.6AL250V"_s,
                        u"another rating or characteristic, bridged, UL in place of IEC"_s, StepAsks::Fuse, {}, u"IEC 60127-2; UL 248-14"_s, 2}
          << look(PowerStep::Inside, u"opened and looked: nothing loose, leaking, burnt or broken"_s, u"what is seen inside"_s, u"debris, loose screws, leaks, burns, broken supports"_s, 5)
          << look(PowerStep::Emptied, u"discs, tapes and cells out, transport locks undone"_s, u"what came out"_s, u"anything that can be harmed is still in it"_s, 1);
}

void measured(QList<LadderStep> &steps, const Unit &unit, bool charge, bool filter)
{
    steps << value(PowerStep::Primary, u"resistance across the plug with the switch on"_s, u"ohms; a switch-mode supply reads otherwise: not applicable"_s,
                   u"below 1 Ω or open; a transformer usually has tens to a few hundred ohms"_s, u"1..10000 Ω"_s, u"habit of the trade; both ends are our choice"_s, 2)
          << value(PowerStep::Metal, u"resistance from the plug pins to touchable metal"_s, u"ohms, each pin, switch on"_s, u"below 1 MΩ"_s, u">= 1 MΩ"_s, u"portable appliance test guides"_s, 2);
    if (unit.protectionClass == ProtectionClass::I)
        steps << value(PowerStep::Earth, u"protective earth: metal to earth pin"_s, u"ohms; name the lead's own behind it: 0.14 Ω lead 0.05 Ω"_s, u"above 0.1 Ω and the lead's own resistance"_s,
                       u"<= 0.1 Ω"_s, u"portable appliance test guides"_s, 2);
    if (charge)
        steps << value(PowerStep::Drained, u"large capacitors drained through a resistor, measured, not shorted"_s, u"volts left, each one, and again after minutes"_s, u"more than 5 V left"_s, u"<= 5 V"_s,
                       u"\"a few volts\" is habit; 5 V is our choice"_s, 4);
    if (filter)
        steps << look(PowerStep::Filter, u"mains filter capacitors sound, no cracked case"_s, u"what their cases are like"_s, u"cracked clear case: renew before power, it fails after hours"_s, 3);
}

void ofCategory(QList<LadderStep> &steps, Category category, bool isolate)
{
    if (category == Category::AmplifierReceiver)
        steps << look(PowerStep::Output, u"output devices: no short by diode test"_s, u"lowest diode reading of each channel"_s, u"any reading near 0 V either way"_s, 5);
    if (category == Category::OldComputer || category == Category::TestGear || category == Category::GameConsole)
        steps << look(PowerStep::Supply, u"supply alone on a dummy load gives its voltages"_s, u"each voltage"_s, u"any of them outside"_s, 10);
    if (category == Category::Radio) {
        steps << look(PowerStep::Valves, u"valve sets: high tension not shorted, audio coupling capacitor renewed or lifted"_s, u"valves in their sockets, HT to chassis in ohms"_s, u"HT line shorted, coupling capacitor leaking"_s, 10);
        steps << value(PowerStep::Reforming, u"old electrolytics reformed through a resistor"_s, u"leakage at full voltage, want <= 0.15 to 0.5 µA for each µF and volt"_s, u"above what is wanted for its capacitance and voltage"_s, {},
                       u"handbooks of valve sets: 0.15 to 0.5 µA / (µF V)"_s, 20);
    }
    if (isolate)
        steps << look(PowerStep::Isolation, u"on an isolating transformer, a residual-current device upstream, one hand, not alone"_s, u"how it is isolated"_s, u"not isolated; a variable transformer does not isolate"_s, 2);
}

void atPower(QList<LadderStep> &steps, Category category)
{
    steps << look(PowerStep::Lamp, u"first power through a series lamp: it flashes and dims"_s, u"watts of the lamp and what it did; a switch-mode supply may hiccup on it"_s, u"the lamp stays bright"_s, 3)
          << look(PowerStep::Rails, u"on the lamp: supply rails"_s, u"each rail in volts"_s, u"missing, uneven or climbing"_s, 5);
    if (category == Category::AmplifierReceiver)
        steps << value(PowerStep::Offset, u"on the lamp: direct voltage at the output, no speaker"_s, u"the worse channel, in mV"_s, u"above 50 mV"_s, u"±50 mV"_s, u"repairers' guides: good under 20 mV, accepted to 50 mV"_s, 5);
    steps << look(PowerStep::Heat, u"heat by thermometer, hands off, at 1, 5 and 15 minutes"_s, u"three temperatures, and where"_s, u"anything that climbs and goes on climbing"_s, 15)
          << look(PowerStep::Direct, u"straight from the mains: rails, output and heat again"_s, u"what changed against the lamp"_s, u"smell, smoke, hum, heat"_s, 15);
}

} // namespace

QList<LadderStep> ladderSteps(const Unit &unit)
{
    if (!mainsPowered(unit))
        return {};
    const QList<Hazard> hazards = factsOf(unit.category).hazards;
    const auto oneOf = [&](std::initializer_list<Hazard> any) { return std::any_of(any.begin(), any.end(), [&](Hazard hazard) { return hazards.contains(hazard); }); };
    QList<LadderStep> steps;
    before(steps);
    measured(steps, unit, oneOf({Hazard::StoredCharge, Hazard::ValveHighTension, Hazard::SwitchingPrimary}), oneOf({Hazard::SwitchingPrimary, Hazard::LiveChassis}));
    ofCategory(steps, unit.category, oneOf({Hazard::LiveChassis}));
    atPower(steps, unit.category);
    return steps;
}

Ladder ladderOf(const UnitFile &file)
{
    Ladder ladder;
    for (const LadderStep &step : ladderSteps(file.unit)) {
        LadderRung rung{step, {}};
        for (const Rung &each : file.all<Rung>())
            if (!each.removed && each.step == step.step && (!rung.last || !(each.at < rung.last->at)))
                rung.last = each;
        ladder.stopped += rung.last && rung.last->cameOut == RungOutcome::Stop ? 1 : 0;
        ladder.open += rung.last ? 0 : 1;
        ladder.rungs << rung;
    }
    if (ladder.stopped > 0)
        ladder.verdict = LadderVerdict::Stopped;
    else if (!ladder.rungs.isEmpty() && ladder.open == 0)
        ladder.verdict = LadderVerdict::Passed;
    return ladder;
}

RungOutcome outcomeOf(const Rung &rung)
{
    if (!rung.value)
        return rung.cameOut;
    const auto judged = judge(*rung.value, rung.wanted, rung.uncertainty);
    return judged && judged->verdict == Verdict::Within ? RungOutcome::Pass : RungOutcome::Stop;
}

QString foundText(const Rung &rung)
{
    QStringList words;
    if (rung.value) {
        QString text = rung.value->text();
        if (rung.uncertainty)
            text += u' ' + uncertaintyText(*rung.uncertainty, rung.value->measure()).replace(QChar(0x00A0), u' ');
        words << text;
        if (!rung.wanted.isNone())
            words << u"wanted "_s + rung.wanted.display();
        const auto judged = judge(*rung.value, rung.wanted, rung.uncertainty);
        if (judged && judged->verdict == Verdict::TooCloseToCall)
            words << u"too close to call"_s;
    }
    if (!rung.saw.isEmpty())
        words << rung.saw;
    if (!rung.asked.isEmpty())
        words << (rung.step == PowerStep::Fuse ? u"plate "_s : u"bench "_s) + rung.asked;
    return words.join(u", "_s);
}

QStringList mainsStops(const Unit &unit, const QString &plate, const QString &benchMains)
{
    Unit asRead = unit;
    asRead.mains = plate;
    const MainsMismatch off = mainsMismatch(asRead, benchMains);
    QStringList stops;
    if (!off.voltage.isEmpty())
        stops << off.voltage;
    if (!off.frequency.isEmpty())
        stops << off.frequency;
    return stops;
}

Expected<QStringList> fuseStops(const QString &fitted, const QString &plate)
{
    const auto read = [](QString text, bool &ul) {
        const QString before = text;
        text.remove(QRegularExpression(u"\\bUL\\b"_s, QRegularExpression::CaseInsensitiveOption));
        ul = text != before;
        return fuseMarking(text.simplified());
    };
    bool fittedUl = false;
    bool plateUl = false;
    const auto one = read(fitted, fittedUl);
    if (!one)
        return one.trouble();
    const auto other = read(plate, plateUl);
    if (!other)
        return other.trouble();
    return fuseAgainstPlate(*one, *other, fittedUl, plateUl);
}

LeftOff flaggedFor(const LeftOff &before, const QString &reason)
{
    LeftOff after = before;
    const QString stands = before.doNotPower.trimmed();
    if (stands.isEmpty())
        after.doNotPower = reason;
    else if (!stands.contains(reason))
        after.doNotPower = stands + u"; "_s + reason;
    return after;
}

double reformingLeakage(double farads, double volts)
{
    return 0.5 * farads * volts; // 0.5 µA / (µF V) is 0.5 A / (F V)
}

} // namespace ts
