#include "model/paper/gather_restoration.h"

#include "model/paper/measured_facts.h"
#include "model/paper/plain_words.h"
#include "model/paper/unit_words.h"
#include "model/paper/work_facts.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/power_ladder.h"
#include "model/sums/standing.h"

#include <QLocale>
#include <QRegularExpression>
#include <QTimeZone>

#include <algorithm>

namespace ts {

namespace {

RestorationFacts::Proved provedFact(const Proof &proof)
{
    RestorationFacts::Proved fact;
    fact.text = withoutBareClaims(proof.text);
    fact.result = withoutBareClaims(proofResult(proof));
    if (fact.text.isEmpty())
        std::swap(fact.text, fact.result);
    fact.cameOut = toWord(proof.cameOut);
    fact.cameOutText = cameOutText(proof);
    if (fact.cameOutText == verdictText(Verdict::TooCloseToCall))
        fact.cameOut = toWord(Verdict::TooCloseToCall);
    fact.made = proof.cameOut == ProofOutcome::Passed || proof.cameOut == ProofOutcome::Failed;
    fact.instrument = plainText(proof.instrument);
    QStringList by;
    if (proof.doneOn.isValid())
        by << dayText(proof.doneOn);
    if (const QString initials = plainText(proof.initials); !initials.isEmpty())
        by << initials;
    fact.by = by.join(QStringLiteral(", "));
    return fact;
}

RestorationFacts::Proved safetyFact(const SafetyReading &check, const BenchFile &bench, const QDateTime &now)
{
    const Reading &reading = check.reading;
    const Meter *meter = reading.meter.isNull() ? nullptr : bench.find(reading.meter);
    RestorationFacts::Proved fact;
    fact.text = plainText(reading.name);
    fact.result = plainText(check.result());
    if (const QString conditions = plainText(reading.conditions); !conditions.isEmpty())
        fact.result += QStringLiteral(", ") + conditions;
    if (!check.wanted.isNone())
        fact.result += check.ruleSet.isEmpty() ? QStringLiteral(" (whose limit that is, is not on record)")
                                               : QStringLiteral(" (limit by %1)").arg(plainText(check.ruleSet));
    if (reading.phase != Phase::AsItLeaves)
        fact.result += reading.phase == Phase::AsFound ? QStringLiteral("; as found, not measured as it leaves")
                                                       : QStringLiteral("; during the work, not as it leaves");
    fact.cameOut = toWord(check.verdict);
    fact.cameOutText = verdictText(check.verdict);
    fact.made = check.decided();
    fact.byFigureAlone = check.verdict != Verdict::NoLimit && !reading.uncertainty;
    fact.instrument = plainText(meter ? meter->name : reading.meterName);
    fact.by = dayText(reading.at.toTimeZone(now.timeZone()).date());
    return fact;
}

/// The first-power ladder in one row; nothing where it was not begun or is not at an end. A stop stands among the notices.
std::optional<RestorationFacts::Proved> firstPowerFact(const UnitFile &file, const QDateTime &now)
{
    const Ladder ladder = ladderOf(file);
    if (ladder.verdict != LadderVerdict::Passed)
        return std::nullopt;
    QDateTime last;
    QStringList values;
    int passed = 0;
    for (const LadderRung &rung : ladder.rungs) {
        last = last.isValid() && rung.last->at < last ? last : rung.last->at;
        passed += rung.last->cameOut == RungOutcome::Pass ? 1 : 0;
        if (rung.last->value && rung.last->cameOut == RungOutcome::Pass)
            values << toWord(rung.step.step) + QLatin1Char(' ') + rung.last->value->text();
    }
    RestorationFacts::Proved fact;
    fact.text = QStringLiteral("First power, step by step, on a series lamp before the mains");
    fact.result = QStringLiteral("%1 steps passed").arg(passed) + (values.isEmpty() ? QString() : QStringLiteral(": ") + plainText(values.join(QStringLiteral(", "))));
    fact.cameOut = toWord(ProofOutcome::Passed);
    fact.cameOutText = fact.cameOut;
    QStringList by{dayText(last.toTimeZone(now.timeZone()).date())};
    if (const QString initials = plainText(ladder.rungs.last().last->initials); !initials.isEmpty())
        by << initials;
    fact.by = by.join(QStringLiteral(", "));
    return fact;
}

bool hasLiveParts(const Unit &unit)
{
    return !unit.mains.trimmed().isEmpty() || (unit.protectionClass && *unit.protectionClass != ProtectionClass::III);
}

QStringList useOf(const UnitFile &file)
{
    const Unit &unit = file.unit;
    QStringList use;
    if (const QString mains = plainText(unit.mains); !mains.isEmpty())
        use << QStringLiteral("For %1 mains only. Do not open: live parts inside.").arg(mains);
    else if (hasLiveParts(unit))
        use << QStringLiteral(
            "Compare the mains voltage on the rating plate with yours before plugging in. Do not open: live parts inside.");
    else if (unit.category != Category::Loudspeaker)
        use << QStringLiteral("How this unit is powered is not on record: read its rating plate before you connect it. If it "
                              "takes mains voltage, do not open it: live parts inside.");
    for (const Note &note : file.all<Note>())
        if (note.kind == NoteKind::Use)
            if (const QString text = withoutBareClaims(note.text); !text.isEmpty())
                use << text;
    return use;
}

/// What has to be read before anything else.
QStringList noticesOf(const UnitFile &file)
{
    QStringList notices;
    for (const LeftOff &left : file.all<LeftOff>())
        if (const QString reason = plainText(left.doNotPower); !reason.isEmpty())
            notices << QStringLiteral("Do not power this unit: ") + reason;
    for (const QString &check : failedSafety(file))
        notices << QStringLiteral("Do not use this unit: an electrical safety check failed, ") + plainText(check);
    if (file.unit.outcome == Outcome::BrokenForParts)
        notices << QStringLiteral("This unit was broken for parts; it is not offered for use.");
    if (file.unit.outcome == Outcome::Scrapped)
        notices << QStringLiteral("This unit was scrapped; it is not offered for use.");
    return notices;
}

QList<RestorationFacts::Labelled> buyerFacts(const Unit &unit)
{
    QList<RestorationFacts::Labelled> list;
    const auto add = [&list](const char *label, const QString &text) {
        if (!text.isEmpty())
            list << RestorationFacts::Labelled{QString::fromLatin1(label), text};
    };
    const auto orElse = [](const QString &text, const char *otherwise) {
        return text.isEmpty() ? QString::fromLatin1(otherwise) : text;
    };
    const QString looks = withoutBareClaims(unit.looks);
    const QString function = withoutBareClaims(unit.function);
    if (looks.isEmpty() && function.isEmpty()) {
        add("Looks and function", QStringLiteral("not graded"));
    } else {
        add("Looks", orElse(looks, "not graded"));
        add("Function", orElse(function, "not graded"));
    }
    const QString earlier = withoutBareClaims(unit.earlierWork);
    const QString accessories = withoutBareClaims(unit.accessories);
    if (earlier.isEmpty() && accessories.isEmpty()) {
        add("Earlier work by others, accessories", QStringLiteral("nothing is on record"));
    } else {
        add("Earlier work by others", orElse(earlier, "no signs of it are on record"));
        add("Accessories", orElse(accessories, "none on record"));
    }
    if (const QString basis = plainText(unit.yearBasis); unit.year && !basis.isEmpty())
        add("Age", QStringLiteral("about %1; how it is known: %2").arg(*unit.year).arg(basis));
    return list;
}

} // namespace

RestorationFacts gatherRestoration(const UnitFile &file, const BenchFile &bench, const QList<PaperPhoto> &photos,
                                   const QDateTime &now)
{
    const Unit &unit = file.unit;
    RestorationFacts facts;
    facts.tag = tagText(unit.tag);
    facts.stage = stageOf(unit);
    facts.name = nameOf(unit);
    facts.identity = identityOf(unit, facts.name);
    facts.benchName = plainText(bench.setting(settings::benchName));
    facts.benchAddress = plainText(bench.setting(settings::benchAddress)).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    facts.worker = plainText(bench.setting(settings::worker));
    facts.madeAt = now;
    facts.date = dayText(now.date());
    facts.saidBy = unit.kind == UnitKind::Owners        ? QStringLiteral("The owner said")
                   : file.all<SourceRecord>().isEmpty() ? QStringLiteral("The seller said")
                                                        : QStringLiteral("As reported");
    facts.claim = withoutBareClaims(unit.claim);
    facts.pictures = chosenPictures(photos, now);

    WorkFacts work = workFacts(file);
    facts.work = work.rows;
    facts.fitted = work.fitted;
    int vague = work.vague;
    facts.measured = measuredFacts(file, bench);
    QStringList meters;
    for (const RestorationFacts::Measured &row : std::as_const(facts.measured))
        if (!meters.contains(row.meter))
            meters << row.meter;
    if (meters.size() == 1)
        facts.oneMeter = meters.first();
    facts.soaked = soakedFacts(file, now);

    if (const auto first = firstPowerFact(file, now))
        facts.proved << *first;
    QStringList ruleSets;
    const auto addRules = [&ruleSets](const QString &text) {
        if (const QString rules = plainText(text); !rules.isEmpty() && !ruleSets.contains(rules))
            ruleSets << rules;
    };
    for (const Proof &proof : file.all<Proof>()) {
        if (proof.cameOut == ProofOutcome::NotTested && !proof.value)
            continue; // said once, under what was not done
        const RestorationFacts::Proved fact = provedFact(proof);
        if (fact.text.isEmpty()) {
            ++vague;
            continue;
        }
        if (proof.kind != ProofKind::ElectricalSafety) {
            facts.proved << fact;
            continue;
        }
        facts.safety.checks << fact;
        facts.safety.recorded = facts.safety.recorded || fact.made;
        addRules(proof.ruleSet);
    }
    const SafetyRecord safety = safetyRecord(file);
    for (const SafetyReading &each : safety.readings) {
        facts.safety.checks << safetyFact(each, bench, now);
        facts.safety.recorded = facts.safety.recorded || each.decided();
        facts.safety.measured = true;
        addRules(each.ruleSet);
    }
    facts.safety.untested = !safety.untested.isEmpty();
    facts.safety.ruleSets = ruleSets.join(QStringLiteral(", "));
    facts.safety.protectionClass = unit.protectionClass ? toWord(*unit.protectionClass) : QString();

    for (const QString &sentence : notDone(file))
        facts.notDone << plainText(sentence);
    if (vague > 0)
        facts.notDone
            << (vague == 1
                    ? QStringLiteral("One entry names no particular work or check; nothing is claimed for it.")
                    : QStringLiteral("%1 entries name no particular work or check; nothing is claimed for them.").arg(vague));
    facts.buyer = buyerFacts(unit);
    for (const Note &note : file.all<Note>())
        if (note.kind == NoteKind::Flaw)
            if (const QString text = withoutBareClaims(note.text); !text.isEmpty())
                facts.flaws << text;
    facts.use = useOf(file);
    facts.notices = noticesOf(file);
    for (const QString &caution : handoverCautions(file, bench))
        facts.cautions << plainText(caution);
    facts.terms = withoutBareClaims(bench.setting(settings::terms));
    return facts;
}

} // namespace ts
