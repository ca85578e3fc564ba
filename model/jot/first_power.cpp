#include "model/jot/families.h"
#include "model/jot/phrase.h"
#include "model/jot/reading_taken.h"
#include "model/jot/tried_line.h"
#include "model/records/settings.h"
#include "model/sums/mains_match.h"
#include "model/sums/power_ladder.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

const auto did = u"Nothing was recorded"_s;

/// The stored words, and what people call the steps beside them.
const QList<std::pair<QString, PowerStep>> &names()
{
    static const QList<std::pair<QString, PowerStep>> all = [] {
        QList<std::pair<QString, PowerStep>> list;
        for (const auto &[step, word] : Words<PowerStep>::list)
            list << std::pair{QString::fromLatin1(word), step};
        list << std::pair{u"rating plate"_s, PowerStep::Plate} << std::pair{u"mains lead"_s, PowerStep::Lead} << std::pair{u"looked inside"_s, PowerStep::Inside}
             << std::pair{u"protective earth"_s, PowerStep::Earth} << std::pair{u"capacitors"_s, PowerStep::Drained} << std::pair{u"series lamp"_s, PowerStep::Lamp}
             << std::pair{u"mains"_s, PowerStep::Direct};
        return list;
    }();
    return all;
}

Expected<void> byValue(Rung &rung, const LadderStep &step, const QString &typed, const Jotting &jotting)
{
    const LeadTold lead = takeLead(typed);
    Limit wanted = step.wanted;
    if (step.step == PowerStep::Earth && lead.ohms)
        if (const auto with = Limit::parse(u"<= %1 Ω"_s.arg(numberText(0.1 + *lead.ohms))))
            wanted = *with;
    const auto line = splitReading(u"x = "_s + lead.rest);
    const Trouble blind{did, u"this step has a value and is not ticked without it"_s, u"type what was measured, such as first power %1 = 12 %2"_s.arg(toWord(step.step), wanted.isNone() ? u"µA"_s : wanted.measure().text())};
    if (!line || line->value.isEmpty())
        return blind;
    auto taken = takeReading(jotting, *line, wanted.measure(), wanted);
    if (!taken)
        return Trouble{did, taken.trouble().did, u"type it like %1, or OL where it is open"_s.arg(wanted.isNone() ? u"12 µA"_s : u"12 "_s + wanted.measure().text())};
    if (taken->reading.wanted.isNone() || !taken->reading.wanted.bounded())
        return Trouble{did, u"nothing is wanted of it, so pass or stop cannot be worked out"_s, u"name it behind the value: want <= …, %1"_s.arg(step.stops)};
    if (const auto judged = judge(*taken->reading.value, taken->reading.wanted, taken->reading.uncertainty); !judged)
        return Trouble{did, judged.trouble().wrong.isEmpty() ? judged.trouble().did : judged.trouble().wrong, u"give it in the unit of %1"_s.arg(taken->reading.wanted.display())};
    rung.value = taken->reading.value;
    rung.wanted = taken->reading.wanted;
    rung.uncertainty = taken->reading.uncertainty;
    rung.meter = taken->reading.meter;
    rung.meterName = taken->reading.meterName;
    QStringList more;
    if (!line->conditions.isEmpty())
        more << line->conditions;
    if (lead.ohms)
        more << u"lead %1 Ω"_s.arg(numberText(*lead.ohms));
    rung.saw = more.join(u", "_s);
    rung.cameOut = outcomeOf(rung);
    return {};
}

Expected<void> byPlate(Rung &rung, const QString &typed, const Jotting &jotting)
{
    const QString bench = jotting.bench.setting(settings::mains);
    if (bench.isEmpty())
        return Trouble{did, u"the bench's own mains is not known, so the plate cannot be held against it"_s, u"set it first: mains, such as 230 V 50 Hz"_s};
    const Unit &unit = jotting.file.unit;
    const QString plate = typed.isEmpty() ? QString() : typed;
    if (mainsPlate(plate).volts.isEmpty())
        return Trouble{did, u"no voltage can be read from it, and the plate is not ticked blind"_s, u"type what the plate says, such as first power plate: 230 V 50 Hz"_s};
    rung.saw = plate;
    rung.asked = bench;
    rung.cameOut = mainsStops(unit, plate, bench).isEmpty() ? RungOutcome::Pass : RungOutcome::Stop;
    return {};
}

Expected<void> byFuse(Rung &rung, const QString &typed)
{
    static const QRegularExpression parted(u"^(.+?)\\s+(?:want|wanted|plate|for)\\s+(.+)$"_s, QRegularExpression::CaseInsensitiveOption);
    const auto match = parted.match(typed);
    if (!match.hasMatch())
        return Trouble{did, u"a fuse is passed only against what the plate names"_s, u"type both, such as first power fuse = T1.6AL250V want T1.6AL250V"_s};
    const auto stops = fuseStops(match.captured(1), match.captured(2));
    if (!stops)
        return stops.trouble();
    rung.saw = match.captured(1).trimmed();
    rung.asked = match.captured(2).trimmed();
    rung.cameOut = stops->isEmpty() ? RungOutcome::Pass : RungOutcome::Stop;
    if (!stops->isEmpty())
        rung.saw += u" ("_s + stops->join(u"; "_s) + u')';
    return {};
}

Expected<void> tried(Rung &rung, const LadderStep &step, Said said, const QString &typed, const Jotting &jotting)
{
    if (said != Said::Nothing) {
        // Stop and not applicable may be said of any step, with their reason.
        if (typed.isEmpty())
            return Trouble{did, said == Said::Wrong ? u"a stop needs what was seen"_s : u"what is not applicable needs its reason"_s, u"type it behind a colon"_s};
        rung.saw = typed;
        rung.cameOut = said == Said::Wrong ? RungOutcome::Stop : RungOutcome::NotApplicable;
        return {};
    }
    switch (step.kind) {
    case StepAsks::Value:
        return byValue(rung, step, typed, jotting);
    case StepAsks::Plate:
        return byPlate(rung, typed, jotting);
    case StepAsks::Fuse:
        return byFuse(rung, typed);
    case StepAsks::Words:
        break;
    }
    if (typed.isEmpty())
        return Trouble{did, u"this step is not ticked blind"_s, u"type what was seen: %1"_s.arg(step.asks)};
    rung.saw = typed;
    rung.cameOut = RungOutcome::Pass;
    return {};
}

/// "do not power" with one more reason, on the unit's one left-off record.
void flag(Change &change, const QString &reason, const Jotting &jotting)
{
    const QList<LeftOff> &all = jotting.file.all<LeftOff>();
    if (all.isEmpty()) {
        change.add(flaggedFor(jotting.fresh<LeftOff>(), reason));
        return;
    }
    LeftOff after = flaggedFor(all.last(), reason);
    if (after == all.last())
        return;
    after.at = jotting.maker.now();
    change.edit(all.last(), after);
}

} // namespace

Expected<Jotted> jotRung(PowerStep step, Said said, const QString &typed, const UnitFile &file, const BenchFile &bench, Maker &maker)
{
    const QString text = typed.simplified();
    const Jotting jotting{text, text, file, bench, maker};
    const QList<LadderStep> steps = ladderSteps(file.unit);
    const auto asked = std::find_if(steps.begin(), steps.end(), [step](const LadderStep &each) { return each.step == step; });
    if (asked == steps.end())
        return Trouble{did, steps.isEmpty() ? u"this unit takes no mains"_s : u"the ladder of this unit has no step %1%2"_s.arg(inQuotes(toWord(step)), step == PowerStep::Earth && !file.unit.protectionClass ? u" while its protection class is not known"_s : QString()),
                       step == PowerStep::Earth ? u"safety class I, II or III says it"_s : QString()};
    Rung rung = jotting.fresh<Rung>();
    rung.step = step;
    rung.initials = bench.setting(settings::worker);
    if (auto understood = tried(rung, *asked, said, text, jotting); !understood)
        return understood.trouble();
    const QString word = toWord(rung.cameOut).replace(u'_', u' ');
    const QString sentence = u"First power, %1: %2, %3"_s.arg(toWord(step), word, shown(foundText(rung)));
    Jotted jotted{u"first power"_s, u"first power, "_s + word, sentence, {}, Change(sentence)};
    jotted.change.add(rung);
    if (rung.cameOut == RungOutcome::Stop) {
        if (step == PowerStep::Plate && said == Said::Nothing)
            jotted.preview += u" · "_s + mainsStops(file.unit, rung.saw, rung.asked).join(u' ');
        jotted.preview += u" · do not power: flagged, until you say safe to power"_s;
        flag(jotted.change, u"first power, %1: %2"_s.arg(toWord(step), shown(foundText(rung))), jotting);
    }
    if (step == PowerStep::Plate && said == Said::Nothing && file.unit.mains.isEmpty()) {
        Unit unit = file.unit;
        unit.mains = rung.saw;
        jotted.change.edit(file.unit, unit);
    }
    return jotted;
}

Jotted jotFirstPower(const Jotting &jotting)
{
    const auto line = splitTried(jotting.text, names());
    if (!line) // "first power: it hums" is a plain sentence
        return asNote(jotting);
    const auto jotted = jotRung(line->what, line->said, line->typed, jotting.file, jotting.bench, jotting.maker);
    return jotted ? *jotted : asNote(jotting, jotted.trouble().wrong.isEmpty() ? jotted.trouble().did : jotted.trouble().wrong + u"; "_s + jotted.trouble().todo);
}

} // namespace ts
