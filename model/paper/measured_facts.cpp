#include "model/paper/measured_facts.h"

#include "model/paper/plain_words.h"
#include "model/sums/hours.h"
#include "model/sums/verdict.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

using Value = RestorationFacts::Value;
using Measured = RestorationFacts::Measured;

Value valueOf(const Reading &reading)
{
    if (!reading.value)
        return {};
    QString text = reading.value->text();
    text.replace(QLatin1Char(' '), QChar(0x00A0)); // a figure is not parted from its unit
    return {text, reading.uncertainty ? uncertaintyText(*reading.uncertainty, reading.value->measure()) : QString()};
}

const TestPoint *pointOf(const UnitFile &file, const Reading &reading)
{
    return reading.point.isNull() ? nullptr : file.find(reading.point);
}

QString conditionsOf(const Reading &reading, const TestPoint *point)
{
    const QString own = plainText(reading.conditions);
    return own.isEmpty() && point ? plainText(point->conditions) : own;
}

const Limit &wantedOf(const Reading &reading, const TestPoint *point)
{
    return reading.wanted.isNone() && point ? point->wanted : reading.wanted;
}

/// The readings of one test point under one condition.
struct Group {
    const TestPoint *point = nullptr;
    QString key;
    QString conditions;
    const Reading *found = nullptr;
    const Reading *during = nullptr;
    const Reading *leaves = nullptr;
    int taken = 0;

    [[nodiscard]] const Reading *shown() const { return leaves ? leaves : during ? during : found; }
};

QString meterOf(const Reading &reading, const BenchFile &bench)
{
    const Meter *meter = reading.meter.isNull() ? nullptr : bench.find(reading.meter);
    return plainText(meter ? meter->name : reading.meterName);
}

Measured measuredRow(const Group &group, const BenchFile &bench)
{
    const Reading &shown = *group.shown();
    const Limit &wanted = wantedOf(shown, group.point);
    Measured row;
    row.what = plainText(group.point ? group.point->name : shown.name);
    row.conditions = group.conditions;
    row.wanted = wanted.display();
    row.source = group.point && !row.wanted.isEmpty() ? plainText(group.point->source) : QString();
    if (group.found)
        row.found = valueOf(*group.found);
    if (group.during && !group.leaves)
        row.during = valueOf(*group.during);
    row.repeated = group.taken > (group.found ? 1 : 0) + (group.leaves || group.during ? 1 : 0);
    QStringList meters;
    for (const Reading *reading : {group.found, group.leaves ? nullptr : group.during, group.leaves})
        if (reading && !meterOf(*reading, bench).isEmpty() && !meters.contains(meterOf(*reading, bench)))
            meters << meterOf(*reading, bench);
    row.meter = meters.join(QStringLiteral(", then "));
    if (group.leaves) {
        row.leaves = valueOf(*group.leaves);
        const auto judgement = group.leaves->value ? judge(*group.leaves->value, wanted, group.leaves->uncertainty)
                                                   : Expected<Judgement>(Judgement{});
        const Verdict verdict = judgement ? judgement->verdict : Verdict::NoLimit;
        row.verdict = toWord(verdict);
        row.verdictText = verdictText(verdict);
        row.byFigureAlone = verdict != Verdict::NoLimit && !group.leaves->uncertainty;
        if (verdict == Verdict::TooCloseToCall && judgement->chanceWithin)
            row.chance = QStringLiteral("%1 % likely within")
                             .arg(std::clamp(static_cast<int>(std::lround(*judgement->chanceWithin * 100)), 1, 99));
    }
    return row;
}

} // namespace

QList<Measured> measuredFacts(const UnitFile &file, const BenchFile &bench)
{
    QList<Group> groups;
    QHash<QString, qsizetype> places;
    for (const Reading &reading : file.all<Reading>()) {
        if (!reading.value || !reading.soak.isNull())
            continue;
        const TestPoint *point = pointOf(file, reading);
        const QString conditions = conditionsOf(reading, point);
        const QString name = (point ? point->name : reading.name).simplified().toCaseFolded();
        const QString key = name + QLatin1Char('\n') + conditions.simplified().toCaseFolded();
        auto place = places.constFind(key);
        if (place == places.constEnd()) {
            groups << Group{point, key, conditions, nullptr, nullptr, nullptr, 0};
            place = places.insert(key, groups.size() - 1);
        }
        Group &group = groups[*place];
        if (!group.point)
            group.point = point;
        ++group.taken;
        switch (reading.phase) {
        case Phase::AsFound:
            if (!group.found)
                group.found = &reading;
            break;
        case Phase::DuringWork:
            group.during = &reading;
            break;
        case Phase::AsItLeaves:
            group.leaves = &reading;
            break;
        }
    }
    std::stable_sort(groups.begin(), groups.end(), [](const Group &a, const Group &b) {
        constexpr int last = std::numeric_limits<int>::max();
        return (a.point ? a.point->position : last) < (b.point ? b.point->position : last);
    });
    QList<Measured> rows;
    for (const Group &group : std::as_const(groups))
        rows << measuredRow(group, bench);
    return rows;
}

QList<RestorationFacts::Soaked> soakedFacts(const UnitFile &file, const QDateTime &now)
{
    // From harmless to telling: the worst verdict speaks for the soak.
    const auto rank = [](Verdict verdict) {
        constexpr std::array order{Verdict::NoLimit, Verdict::Within, Verdict::TooCloseToCall, Verdict::Outside};
        return std::find(order.cbegin(), order.cend(), verdict) - order.cbegin();
    };
    QList<RestorationFacts::Soaked> soaks;
    for (const Soak &soak : file.all<Soak>()) {
        RestorationFacts::Soaked fact;
        fact.name = withoutBareClaims(soak.name);
        const QDateTime end = soak.endedAt.isValid() ? soak.endedAt : now;
        const int minutes = static_cast<int>(std::max<qint64>(0, soak.startedAt.secsTo(end)) / 60);
        fact.length = durationText(minutes) + (soak.endedAt.isValid() ? QString() : QStringLiteral(" so far, still running"));
        fact.interruptions = plainText(soak.interruptions);
        fact.conditions = plainText(soak.conditions);

        const Quantity *lowest = nullptr;
        const Quantity *highest = nullptr;
        int count = 0;
        Verdict worst = Verdict::NoLimit;
        bool sure = true;
        for (const Reading &reading : file.all<Reading>()) {
            if (reading.soak != soak.id || !reading.value)
                continue;
            ++count;
            sure = sure && reading.uncertainty;
            const auto judgement =
                judge(*reading.value, reading.wanted.isNone() ? soak.wanted : reading.wanted, reading.uncertainty);
            if (judgement && rank(judgement->verdict) > rank(worst))
                worst = judgement->verdict;
            if (reading.value->sense() == Sense::OverRange ||
                (lowest && !lowest->measure().comparableWith(reading.value->measure())))
                continue;
            if (!lowest || reading.value->base() < lowest->base())
                lowest = &*reading.value;
            if (!highest || reading.value->base() > highest->base())
                highest = &*reading.value;
        }
        if (count > 0) {
            fact.readings = count == 1 ? QStringLiteral("1 reading") : QStringLiteral("%1 readings").arg(count);
            if (lowest && *lowest == *highest)
                fact.readings += QStringLiteral(", ") + lowest->text();
            else if (lowest)
                fact.readings += QStringLiteral(" from %1 to %2").arg(lowest->text(), highest->text());
            if (!soak.wanted.isNone())
                fact.readings += QStringLiteral(", wanted ") + soak.wanted.display();
        }
        if (worst != Verdict::NoLimit) {
            fact.verdict = toWord(worst);
            fact.verdictText = verdictText(worst);
            fact.byFigureAlone = !sure;
        }
        soaks << fact;
    }
    return soaks;
}

} // namespace ts
