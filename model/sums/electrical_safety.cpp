#include "model/sums/electrical_safety.h"

#include "model/sums/standing.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

bool made(const Proof &proof)
{
    return !proof.removed && (proof.cameOut == ProofOutcome::Passed || proof.cameOut == ProofOutcome::Failed);
}

bool speaksOf(const QString &text, const QStringList &named)
{
    const QStringList other = electricalSafetyNamed(text);
    return std::any_of(named.begin(), named.end(), [&other](const QString &each) { return other.contains(each); });
}

} // namespace

QStringList electricalSafetyNamed(const QString &text)
{
    const auto options = QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption;
    static const QRegularExpression words(
        QStringLiteral("\\b(earth|insulation|leakage|bonding|touch[ -]current)(?:ed|ing)?\\b"), options);
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
    for (const Reading &reading : latestReadings(file, Phase::AsItLeaves)) {
        if (!reading.value || !reading.soak.isNull() || electricalSafetyNamed(reading.name).isEmpty())
            continue;
        const TestPoint *point = reading.point.isNull() ? nullptr : file.find(reading.point);
        const Limit wanted = reading.wanted.isNone() && point ? point->wanted : reading.wanted;
        const auto judged = judge(*reading.value, wanted, reading.uncertainty);
        found << SafetyReading{reading, wanted, judged ? judged->verdict : Verdict::NoLimit};
    }
    return found;
}

QList<SafetyReading> safetyReadingsBesideProofs(const UnitFile &file)
{
    const QList<Proof> &proofs = file.all<Proof>();
    QList<SafetyReading> list;
    for (const SafetyReading &each : safetyReadings(file)) {
        const QStringList named = electricalSafetyNamed(each.reading.name);
        const bool told = std::any_of(proofs.begin(), proofs.end(), [&named](const Proof &proof) {
            return made(proof) && proof.kind == ProofKind::ElectricalSafety && speaksOf(proof.text, named);
        });
        // A reading that is outside is never silent, whatever a check says.
        if (each.decided() && (!told || each.verdict == Verdict::Outside))
            list << each;
    }
    return list;
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
        if (each.verdict == Verdict::Outside)
            failed << each.reading.name.simplified() + QStringLiteral(": ") + each.result();
    return failed;
}

} // namespace ts
