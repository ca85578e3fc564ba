#include "model/records/settings.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/mains_match.h"
#include "model/sums/supply/leakage.h"
#include "model/values/name_key.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

Verdict verdictOf(const Proof &proof)
{
    if (!proof.value)
        return Verdict::NoLimit;
    const auto judged = judge(*proof.value, proof.wanted, proof.uncertainty);
    return judged ? judged->verdict : Verdict::NoLimit;
}

ProofOutcome outcomeOf(const Proof &proof)
{
    switch (verdictOf(proof)) {
    case Verdict::Within:
        return ProofOutcome::Passed;
    case Verdict::Outside:
        return ProofOutcome::Failed;
    default:
        return ProofOutcome::NotTested;
    }
}

QString cameOutText(const Proof &proof)
{
    if (proof.cameOut == ProofOutcome::NotTested && verdictOf(proof) == Verdict::TooCloseToCall)
        return verdictText(Verdict::TooCloseToCall);
    return toWord(proof.cameOut).replace(u'_', u' ');
}

QString proofResult(const Proof &proof)
{
    if (!proof.value)
        return proof.result;
    QString text = proof.value->text();
    if (proof.uncertainty)
        text += u' ' + uncertaintyText(*proof.uncertainty, proof.value->measure()).replace(QChar(0x00A0), u' ');
    if (!proof.wanted.isNone())
        text += u", wanted "_s + proof.wanted.display();
    if (!proof.limitSource.isEmpty())
        text += u" ("_s + proof.limitSource + u')';
    if (!proof.uncertainty && !proof.wanted.isNone())
        text += u", by the figure alone"_s;
    return proof.result.isEmpty() ? text : text + u"; "_s + proof.result;
}

const Proof *proofOf(const UnitFile &file, SafetyTest test)
{
    const Proof *found = nullptr;
    for (const Proof &proof : file.all<Proof>()) {
        if (proof.removed || proof.kind != ProofKind::ElectricalSafety)
            continue;
        if (proof.test == test)
            found = &proof;
        else if (!proof.test && !(found && found->test) && nameKey(proof.text) == nameKey(safetyTestText(test)))
            found = &proof;
    }
    return found;
}

SafetyCase safetyCaseOf(const UnitFile &file, const BenchFile &bench)
{
    SafetyCase about;
    about.rules = fromWord<SafetyRules>(bench.setting(settings::safetyRules)).value_or(SafetyRules::En50678);
    about.protectionClass = file.unit.protectionClass;
    for (const QString &mains : {bench.setting(settings::mains), file.unit.mains})
        if (const QList<double> hertz = mainsPlate(mains).hertz; !hertz.isEmpty()) {
            about.hertz = hertz.first();
            break;
        }
    return about;
}

SafetySheet safetySheet(const UnitFile &file, const SafetyCase &about)
{
    using enum SafetyTest;
    SafetySheet sheet;
    const auto done = [&file](SafetyTest test) {
        const Proof *proof = proofOf(file, test);
        return proof && proof->cameOut != ProofOutcome::NotTested;
    };
    const bool substitute = done(SubstituteLeakage);
    const QList<SafetyTest> tests = safetyTests(about.rules, about.protectionClass);
    const bool live = std::all_of(tests.begin(), tests.end(), [&](SafetyTest test) { return (test != EarthCurrent && test != TouchCurrent) || done(test); });
    bool open = false;
    bool failed = false;
    for (const SafetyTest test : tests) {
        const Proof *proof = proofOf(file, test);
        SafetyLine line{test, safetyLimit(about, test), proof ? std::optional(*proof) : std::nullopt, false};
        line.substituted = !done(test) && ((test == SubstituteLeakage && live) || ((test == EarthCurrent || test == TouchCurrent) && substitute));
        open = open || (!done(test) && !line.substituted);
        failed = failed || (proof && proof->cameOut == ProofOutcome::Failed);
        sheet.lines << line;
    }
    sheet.verdict = failed ? SafetyVerdict::Failed : open ? SafetyVerdict::Open : SafetyVerdict::Passed;
    return sheet;
}

} // namespace ts
