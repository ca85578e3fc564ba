#include "model/jot/families.h"
#include "model/jot/phrase.h"
#include "model/jot/reading_taken.h"
#include "model/jot/tried_line.h"
#include "model/records/settings.h"
#include "model/sums/acceptance.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/supply/leakage.h"

#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

const auto did = u"Nothing was recorded"_s;

/// What people call the tests; "leakage" is the one that the rule set and the class ask for.
QList<std::pair<QString, SafetyTest>> names(const SafetyCase &about)
{
    QList<std::pair<QString, SafetyTest>> list;
    for (const auto &[test, word] : Words<SafetyTest>::list)
        list << std::pair{QString::fromLatin1(word).replace(u'_', u' '), test};
    const SafetyTest leakage = about.rules == SafetyRules::Makers ? SafetyTest::HotLeakage
                               : about.protectionClass == ProtectionClass::I ? SafetyTest::EarthCurrent
                                                                             : SafetyTest::TouchCurrent;
    return list << std::pair{u"leakage"_s, leakage} << std::pair{u"touch"_s, SafetyTest::TouchCurrent} << std::pair{u"substitute"_s, SafetyTest::SubstituteLeakage}
                << std::pair{u"cold"_s, SafetyTest::ColdResistance} << std::pair{u"hot"_s, SafetyTest::HotLeakage} << std::pair{u"protective earth"_s, SafetyTest::Earth}
                << std::pair{u"protective conductor current"_s, SafetyTest::EarthCurrent};
}

/// Takes "by iet 4", "by en 50678", "by vde", "by makers" out of what was typed.
QString takeRules(const QString &typed, SafetyCase &about)
{
    static const QRegularExpression by(u"\\bby\\s+(en[ _]?50678|vde(?:[ _]?0701(?:-0702)?)?|iet[ _]?4(?:th)?|iet[ _]?5(?:th)?|makers)(?=\\s|$)"_s, QRegularExpression::CaseInsensitiveOption);
    const auto match = by.match(typed);
    if (!match.hasMatch())
        return typed;
    const QString word = match.captured(1).toLower();
    about.rules = word.startsWith(u"iet") ? (word.contains(u'4') ? SafetyRules::Iet4 : SafetyRules::Iet5) : word == u"makers" ? SafetyRules::Makers : SafetyRules::En50678;
    return (typed.left(match.capturedStart()) + typed.mid(match.capturedEnd())).simplified();
}

Expected<void> byValue(Proof &proof, SafetyTest test, const QString &typed, SafetyCase about, const Jotting &jotting)
{
    const LeadTold lead = takeLead(typed);
    about.leadMetres = lead.metres;
    about.leadOhms = lead.ohms.value_or(0);
    const auto line = splitReading(u"x = "_s + lead.rest);
    if (!line || line->value.isEmpty())
        return Trouble{did, u"this test has a value and is not passed without it"_s, u"type what was measured"_s};
    const auto bare = Quantity::parse(line->value);
    const auto limit = safetyLimit(about, test, !bare || bare->measure().symbol() != u"A");
    if (!limit)
        return Trouble{did, limit.trouble().wrong, limit.trouble().todo};
    auto taken = takeReading(jotting, *line, limit->limit.measure(), limit->limit);
    if (!taken)
        return Trouble{did, taken.trouble().did, u"type it like 12 %1, or OL where it is over range"_s.arg(limit->limit.measure().text())};
    Limit wanted = limit->limit;
    QString source = limit->source;
    if (!line->want.isEmpty()) {
        const auto own = stricterLimit(limit->limit, taken->reading.wanted, about.hertz);
        if (!own)
            return Trouble{did, own.trouble().wrong.isEmpty() ? own.trouble().did : own.trouble().wrong, own.trouble().todo};
        wanted = *own;
        source = u"the set's own, stricter than %1"_s.arg(limit->source);
    }
    const auto judged = judge(*taken->reading.value, wanted, taken->reading.uncertainty);
    if (!judged)
        return Trouble{did, u"%1 cannot be held against %2"_s.arg(taken->reading.value->text(), wanted.display()), u"give it in %1"_s.arg(wanted.measure().text())};
    proof.value = taken->reading.value;
    proof.uncertainty = taken->reading.uncertainty;
    proof.wanted = wanted;
    proof.limitSource = source;
    proof.meter = taken->reading.meter;
    if (!taken->reading.meterName.isEmpty())
        proof.instrument = taken->reading.meterName;
    QStringList more;
    if (test == SafetyTest::HotLeakage && proof.value->measure().symbol() == u"V" && proof.value->sense() != Sense::OverRange)
        more << u"%1 mA by |Z| = %2 Ω of the network at %3 Hz"_s.arg(QString::number(1000 * leakageAmperes(proof.value->base(), about.hertz), 'f', 3),
                                                                     QString::number(leakageNetworkOhms(about.hertz), 'f', 1), numberText(about.hertz));
    if (lead.metres)
        more << u"lead %1 m"_s.arg(numberText(*lead.metres));
    if (lead.ohms)
        more << u"lead %1 Ω"_s.arg(numberText(*lead.ohms));
    if (!line->conditions.isEmpty())
        more << line->conditions;
    proof.result = more.join(u", "_s);
    return {};
}

/// Takes "with INSTRUMENT" off what was seen.
QString takeInstrument(const QString &typed, Proof &proof)
{
    static const QRegularExpression with(u"\\s+with\\s+(.{1,80})$"_s);
    const auto match = with.match(typed);
    if (!match.hasMatch())
        return typed;
    proof.instrument = match.captured(1);
    return typed.left(match.capturedStart());
}

Jotted jotClass(const Jotting &jotting, ProtectionClass of)
{
    Unit unit = jotting.file.unit;
    unit.protectionClass = of;
    const QString sentence = u"Protection class "_s + toWord(of);
    Jotted jotted{u"unit"_s, u"unit, class "_s + toWord(of), sentence + u" (IEC 61140)"_s, {}, Change(sentence)};
    if (unit == jotting.file.unit)
        jotted.preview += u" · recorded so already"_s;
    jotted.change.edit(jotting.file.unit, unit);
    return jotted;
}

} // namespace

Expected<Jotted> jotSafetyTest(SafetyTest test, Said said, const QString &typed, const UnitFile &file, const BenchFile &bench, Maker &maker)
{
    SafetyCase about = safetyCaseOf(file, bench);
    QString text = takeRules(typed.simplified(), about);
    const Jotting jotting{text, text, file, bench, maker};
    if (!safetyTests(about.rules, about.protectionClass).contains(test))
        return Trouble{did, safetyLimit(about, test).ok() ? QString() : safetyLimit(about, test).trouble().wrong, u"choose the rule set that asks for it"_s};
    const Proof *before = proofOf(file, test);
    Proof proof = before ? *before : jotting.fresh<Proof>();
    if (!before) {
        proof.text = safetyTestText(test);
        proof.kind = ProofKind::ElectricalSafety;
    }
    proof.test = test;
    proof.value.reset();
    proof.wanted = {};
    proof.limitSource.clear();
    proof.uncertainty.reset();
    proof.meter = {};
    proof.instrument.clear();
    proof.ruleSet = rulesName(about.rules);
    ProofOutcome outcome = ProofOutcome::NotTested;
    if (said != Said::Nothing || isLookedAt(test)) {
        if (text.isEmpty())
            return Trouble{did, said == Said::NotApplicable ? u"what is not applicable needs its reason"_s : u"this test is not ticked blind"_s, u"type what was seen"_s};
        proof.result = takeInstrument(text, proof);
        outcome = said == Said::Wrong ? ProofOutcome::Failed : said == Said::NotApplicable ? ProofOutcome::NotApplicable : ProofOutcome::Passed;
    } else {
        if (auto measured = byValue(proof, test, text, about, jotting); !measured)
            return measured.trouble();
        outcome = outcomeOf(proof);
    }
    proof = provedAs(proof, outcome, jotting.today(), bench.setting(settings::worker));
    if (proof.value) { // also where it is too close to call
        proof.doneOn = jotting.today();
        proof.initials = bench.setting(settings::worker);
    }
    const QString sentence = u"Electrical safety, %1: %2, %3"_s.arg(toWord(test).replace(u'_', u' '), cameOutText(proof), shown(proofResult(proof)));
    Jotted jotted{u"proof"_s, u"proof, "_s + cameOutText(proof), sentence + u" · "_s + proof.ruleSet, {}, Change(sentence)};
    if (outcome == ProofOutcome::NotTested)
        jotted.preview += u" · not passed: measure it with a surer meter"_s;
    if (before)
        jotted.change.edit(*before, proof);
    else
        jotted.change.add(proof);
    return jotted;
}

Jotted jotSafety(const Jotting &jotting)
{
    static const QRegularExpression classed(u"^class\\s+(I{1,3}|[123])$"_s, QRegularExpression::CaseInsensitiveOption);
    if (const auto match = classed.match(jotting.text); match.hasMatch()) {
        const QString which = match.captured(1).toUpper();
        const qsizetype number = which.startsWith(u'I') ? which.size() : which.toInt();
        return jotClass(jotting, number == 1 ? ProtectionClass::I : number == 2 ? ProtectionClass::II : ProtectionClass::III);
    }
    SafetyCase about = safetyCaseOf(jotting.file, jotting.bench);
    (void)takeRules(jotting.text, about);
    const auto line = splitTried(jotting.text, names(about));
    if (!line)
        return asNote(jotting);
    const auto jotted = jotSafetyTest(line->what, line->said, line->typed, jotting.file, jotting.bench, jotting.maker);
    return jotted ? *jotted : asNote(jotting, jotted.trouble().wrong.isEmpty() ? jotted.trouble().did : jotted.trouble().wrong + u"; "_s + jotted.trouble().todo);
}

} // namespace ts
