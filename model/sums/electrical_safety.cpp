#include "model/sums/electrical_safety.h"

#include "model/sums/acceptance.h"
#include "model/sums/category_facts.h"
#include "model/sums/standing.h"
#include "model/values/name_key.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

bool made(const Proof &proof)
{
    return !proof.removed && (proof.cameOut == ProofOutcome::Passed || proof.cameOut == ProofOutcome::Failed);
}

/// What is measured, whatever it is called: bonding is of the earth, and a current through it is leakage (IEC 60990 calls what was
/// the earth leakage current the protective conductor current).
QStringList subjectsOf(const QString &text)
{
    QStringList named = electricalSafetyNamed(text);
    const bool current = text.contains(QLatin1String("current"), Qt::CaseInsensitive) || named.contains(QLatin1String("leakage"));
    for (QString &each : named)
        if (each == u"bonding" || each == u"earth" || each == u"protective conductor")
            each = current ? QStringLiteral("leakage") : QStringLiteral("earth");
    // "Touch current, earth open" is of the touch current alone.
    if (named.contains(QLatin1String("touch current")))
        return {QStringLiteral("touch current")};
    named.removeDuplicates();
    return named;
}

bool speaksOf(const QString &text, const QString &other)
{
    const QStringList ours = subjectsOf(text);
    const QStringList theirs = subjectsOf(other);
    return std::any_of(ours.begin(), ours.end(), [&theirs](const QString &each) { return theirs.contains(each); });
}

SafetyReading judged(const Reading &reading, const UnitFile &file)
{
    const TestPoint *point = reading.point.isNull() ? nullptr : file.find(reading.point);
    const Limit wanted = reading.wanted.isNone() && point ? point->wanted : reading.wanted;
    const auto judgement = judge(*reading.value, wanted, reading.uncertainty);
    return {reading, wanted, judgement ? judgement->verdict : Verdict::NoLimit, point ? point->source.simplified() : QString()};
}

/// Whether a proof that was made speaks of what a reading is of; one that is outside as it leaves is never silent, whatever a proof says.
bool toldByProof(const SafetyReading &each, const UnitFile &file)
{
    const QList<Proof> &proofs = file.all<Proof>();
    const bool stands = each.decided() && each.verdict == Verdict::Outside;
    return !stands && std::any_of(proofs.begin(), proofs.end(), [&each](const Proof &proof) {
               return made(proof) && proof.kind == ProofKind::ElectricalSafety && speaksOf(proof.text, each.reading.name);
           });
}

} // namespace

QStringList electricalSafetyNamed(const QString &text)
{
    const auto options = QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption;
    static const QRegularExpression words(
        QStringLiteral("\\b(earth|insulation|leakage|bonding|touch[ -]current|protective[ -]conductor)(?:ed|ing)?\\b"), options);
    static const QRegularExpression component(
        QStringLiteral("\\b(?:capacitors?|caps?|electrolytics?|valves?|tubes?|transistors?|diodes?|batter(?:y|ies)|[CQDV][0-9]{1,4})\\b"),
        options);
    if (component.match(text).hasMatch())
        return {};
    QStringList named;
    for (auto found = words.globalMatch(text); found.hasNext();) {
        const QString word = found.next().captured(1).toLower().replace(QLatin1Char('-'), QLatin1Char(' '));
        if (!named.contains(word))
            named << word;
    }
    return named;
}

QString SafetyReading::result() const
{
    if (!reading.value)
        return {};
    QString text = reading.value->text();
    if (reading.uncertainty)
        text += QLatin1Char(' ') + uncertaintyText(*reading.uncertainty, reading.value->measure()).replace(QChar(0x00A0), QLatin1Char(' '));
    if (!wanted.isNone())
        text += QStringLiteral(", wanted ") + wanted.display();
    return reading.uncertainty || wanted.isNone() ? text : text + QStringLiteral(", by the figure alone");
}

QList<SafetyReading> safetyReadings(const UnitFile &file)
{
    QList<SafetyReading> found;
    const auto samePlace = [](const Reading &a, const Reading &b) {
        return (!a.point.isNull() && a.point == b.point) || nameKey(a.name) == nameKey(b.name);
    };
    const auto counts = [](const Reading &reading) {
        return reading.value && reading.soak.isNull() && !electricalSafetyNamed(reading.name).isEmpty();
    };
    for (const Reading &reading : latestReadings(file, Phase::AsItLeaves))
        if (counts(reading))
            found << judged(reading, file);
    for (const Reading &reading : latestReadings(file))
        if (counts(reading) && std::none_of(found.begin(), found.end(), [&](const SafetyReading &each) { return samePlace(each.reading, reading); }))
            found << judged(reading, file);
    return found;
}

QList<SafetyReading> safetyReadingsBesideProofs(const UnitFile &file)
{
    QList<SafetyReading> list;
    for (const SafetyReading &each : safetyReadings(file))
        if (each.decided() && !toldByProof(each, file))
            list << each;
    return list;
}

SafetyRecord safetyRecord(const UnitFile &file)
{
    SafetyRecord record;
    for (const SafetyReading &each : safetyReadings(file))
        if (!toldByProof(each, file))
            record.readings << each;
    bool any = false;
    const auto open = [&record](const QString &text, const QString &rules) {
        bool answered = false;
        for (SafetyReading &each : record.readings)
            if (each.decided() && speaksOf(text, each.reading.name)) {
                answered = true;
                if (each.ruleSet.isEmpty())
                    each.ruleSet = rules;
            }
        if (!answered)
            record.untested << text;
    };
    for (const Proof &proof : file.all<Proof>()) {
        if (proof.removed || proof.kind != ProofKind::ElectricalSafety)
            continue;
        any = true;
        record.tested = record.tested || made(proof);
        if (proof.cameOut == ProofOutcome::NotTested)
            open(proof.text.simplified(), proof.ruleSet.simplified());
        else
            record.proofs << proof;
    }
    record.tested = record.tested || std::any_of(record.readings.begin(), record.readings.end(), [](const SafetyReading &each) { return each.decided(); });
    // With a reading alone there is no list of what else should have been tried; the shipped one says it.
    if (!any && record.tested && mainsPowered(file.unit))
        for (const AcceptanceLine &line : acceptanceFor(file.unit))
            if (line.kind == ProofKind::ElectricalSafety)
                open(line.text, {});
    return record;
}

QStringList failedSafety(const UnitFile &file)
{
    QStringList failed;
    for (const Proof &proof : file.all<Proof>()) {
        if (!made(proof) || proof.kind != ProofKind::ElectricalSafety)
            continue;
        const QString text = proof.text.simplified();
        failed.removeIf([&text](const QString &other) { return other.compare(text, Qt::CaseInsensitive) == 0; });
        if (proof.cameOut == ProofOutcome::Failed)
            failed << text;
    }
    for (const SafetyReading &each : safetyReadings(file))
        if (each.verdict == Verdict::Outside && !toldByProof(each, file))
            failed << each.reading.name.simplified() + QStringLiteral(": ") + each.result() +
                          (each.decided() ? QString() : QStringLiteral(", and not measured as it leaves"));
    return failed;
}

} // namespace ts
