#include "app/reading_document.h"

#include "app/json_values.h"

#include "model/sums/metering/budget.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/soaking/soak_report.h"
#include "model/sums/verdict.h"

#include <QJsonArray>

#include <cmath>

namespace ts {

namespace {

/// How the uncertainty came about, where it is what the meter's range gives; empty where somebody typed it or it is a mean's.
QJsonArray budgetLines(const Reading &reading, const BenchFile &bench)
{
    if (!reading.uncertainty || !reading.value || reading.meter.isNull())
        return {};
    const auto budget = budgetWith(bench, reading.meter, {*reading.value});
    if (!budget || std::abs(budget->sum.expanded - *reading.uncertainty) > 1e-9 * *reading.uncertainty)
        return {};
    return QJsonArray::fromStringList(budget->words());
}

QJsonValue overdueOrNull(const Reading &reading, const BenchFile &bench)
{
    const Meter *meter = bench.find(reading.meter);
    return meter && meter->calibrationDue.isValid() ? QJsonValue(calibrationOverdue(*meter, reading.at.date())) : QJsonValue();
}

QJsonObject driftObject(const std::optional<Drift> &drift)
{
    return {{QStringLiteral("drift_per_hour"), drift ? QJsonValue(drift->perHour) : QJsonValue()},
            {QStringLiteral("drift_low"), drift ? QJsonValue(drift->low) : QJsonValue()},
            {QStringLiteral("drift_high"), drift ? QJsonValue(drift->high) : QJsonValue()}};
}

} // namespace

QJsonObject readingObject(const Reading &reading, const BenchFile &bench)
{
    const auto judged = judge(reading);
    const bool figure = reading.value && reading.value->sense() != Sense::OverRange;
    return {{QStringLiteral("point"), reading.name},
            {QStringLiteral("value"), figure ? QJsonValue(reading.value->value()) : QJsonValue()},
            {QStringLiteral("unit"), reading.value ? textOrNull(reading.value->measure().text()) : QJsonValue()},
            {QStringLiteral("sense"), reading.value ? QJsonValue(toWord(reading.value->sense())) : QJsonValue()},
            {QStringLiteral("wanted_low"), judged ? numberOrNull(judged->low) : QJsonValue()},
            {QStringLiteral("wanted_high"), judged ? numberOrNull(judged->high) : QJsonValue()},
            {QStringLiteral("uncertainty"), numberOrNull(reading.uncertainty)},
            {QStringLiteral("phase"), toWord(reading.phase)},
            {QStringLiteral("verdict"), toWord(judged ? judged->verdict : Verdict::NoLimit)},
            {QStringLiteral("chance_within"), judged ? numberOrNull(judged->chanceWithin) : QJsonValue()},
            {QStringLiteral("meter"), textOrNull(reading.meterName)},
            {QStringLiteral("calibration_overdue"), overdueOrNull(reading, bench)},
            {QStringLiteral("budget"), budgetLines(reading, bench)},
            {QStringLiteral("conditions"), textOrNull(reading.conditions)}};
}

QJsonObject soakObject(const UnitFile &file, const Soak &soak, const QDateTime &now)
{
    const SoakReport report = soakReport(file, soak, now);
    QJsonArray series;
    for (const SoakSeries &each : report.series) {
        QJsonObject its = driftObject(each.drift);
        its.insert(QStringLiteral("name"), each.name);
        its.insert(QStringLiteral("unit"), each.measure.text());
        its.insert(QStringLiteral("readings"), each.values.size() + each.overRange);
        its.insert(QStringLiteral("verdict"), wordOrNull(each.verdict));
        series << its;
    }
    QJsonArray gaps;
    for (const SoakGap &gap : report.gaps)
        gaps << QJsonObject{{QStringLiteral("from"), timeOrNull(gap.from)},
                            {QStringLiteral("to"), timeOrNull(gap.to)},
                            {QStringLiteral("powered"), gap.powered ? QJsonValue(*gap.powered) : QJsonValue()}};
    QJsonObject document = driftObject(report.telling < 0 ? std::nullopt : report.series.at(report.telling).drift);
    document.insert(QStringLiteral("name"), soak.name);
    document.insert(QStringLiteral("readings"), report.readings);
    document.insert(QStringLiteral("verdict"), wordOrNull(report.verdict));
    document.insert(QStringLiteral("minutes"), report.minutes);
    document.insert(QStringLiteral("series"), series);
    document.insert(QStringLiteral("gaps"), gaps);
    return document;
}

} // namespace ts
