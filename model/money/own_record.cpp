#include "model/money/own_record.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

constexpr int enoughOfCategory = 5;
constexpr int enoughToUse = 3;
constexpr double doubt = 5;    // as many units' worth of "as planned"
constexpr double tenLike = 10; // as many units' worth of the starting value

double middleOf(QList<double> values)
{
    std::sort(values.begin(), values.end());
    const qsizetype half = values.size() / 2;
    return values.size() % 2 == 1 ? values.at(half) : (values.at(half - 1) + values.at(half)) / 2;
}

QString unitsText(int count)
{
    return count == 1 ? QStringLiteral("1 closed unit") : QStringLiteral("%1 closed units").arg(count);
}

OwnFactor factorOf(const QList<double> &ratios, const QString &what)
{
    OwnFactor made;
    made.count = static_cast<int>(ratios.size());
    if (ratios.isEmpty()) {
        made.why = QStringLiteral("No closed unit tells of %1 yet.").arg(what);
        return made;
    }
    QList<double> logs;
    for (const double ratio : ratios)
        logs << std::log(ratio);
    const double middle = middleOf(logs);
    made.plain = std::exp(middle);
    made.used = made.count >= enoughToUse;
    if (made.used)
        made.factor = std::exp(middle * made.count / (made.count + doubt));
    made.why = QStringLiteral("%1: your %2 came to %3 times it in the middle; %4.")
                   .arg(what.left(1).toUpper() + what.mid(1), unitsText(made.count), QString::number(made.plain, 'f', 2),
                        made.used ? QStringLiteral("taken by %1, the rest is left to chance").arg(made.factor, 0, 'f', 2)
                                  : QStringLiteral("too few to be taken into account"));
    return made;
}

OwnShare shareOf(int times, int count, double start, const QString &what)
{
    OwnShare made{(times + tenLike * start) / (count + tenLike), times, count, {}};
    made.why = count == 0
                   ? QStringLiteral("%1: %2 % to start with, no closed unit tells yet.").arg(what).arg(std::lround(start * 100))
                   : QStringLiteral("%1: %2 of your %3, drawn towards a starting %4 %: %5 %.")
                         .arg(what)
                         .arg(times)
                         .arg(unitsText(count))
                         .arg(std::lround(start * 100))
                         .arg(std::lround(made.share * 100));
    return made;
}

QList<PastUnit> telling(const QList<PastUnit> &past, Category category)
{
    QList<PastUnit> like;
    for (const PastUnit &unit : past)
        if (unit.category == category)
            like << unit;
    return like.size() >= enoughOfCategory ? like : past;
}

} // namespace

OwnRecord ownRecord(const QList<PastUnit> &past, Category category, double startChance, double startReturns)
{
    QList<double> hours;
    QList<double> prices;
    QList<double> days;
    int repaired = 0;
    int closed = 0;
    int sold = 0;
    int back = 0;
    for (const PastUnit &unit : telling(past, category)) {
        ++closed;
        const bool well = unit.outcome != Outcome::BrokenForParts && unit.outcome != Outcome::Scrapped;
        repaired += well;
        if (unit.plannedMinutes.value_or(0) > 0 && unit.minutes > 0 && well)
            hours << static_cast<double>(unit.minutes) / *unit.plannedMinutes;
        if (unit.outcome != Outcome::Sold)
            continue;
        ++sold;
        back += unit.cameBack;
        if (unit.soldFor && unit.soldFor->minor() > 0 && unit.plannedResale && unit.plannedResale->minor() > 0)
            prices << static_cast<double>(unit.soldFor->minor()) / static_cast<double>(unit.plannedResale->minor());
        if (unit.offeredOn.isValid() && unit.soldOn.isValid() && unit.offeredOn <= unit.soldOn)
            days << static_cast<double>(unit.offeredOn.daysTo(unit.soldOn));
    }
    OwnRecord made;
    made.hours = factorOf(hours, QStringLiteral("hours taken against hours planned"));
    made.price = factorOf(prices, QStringLiteral("price fetched against the plan's likely one"));
    made.repaired = shareOf(repaired, closed, startChance, QStringLiteral("Chance of repair"));
    made.returned = shareOf(back, sold, startReturns, QStringLiteral("Sales that come back"));
    made.sold = sold;
    if (days.size() >= enoughToUse)
        made.daysToSell = static_cast<int>(std::lround(middleOf(days)));
    return made;
}

BaseRate baseRate(Category category)
{
    switch (category) {
    case Category::DiscPlayer:
        return {992, 1971};
    case Category::CassetteDeck:
        return {393, 733};
    case Category::Turntable:
        return {493, 814};
    case Category::AmplifierReceiver:
        return {443, 853};
    case Category::Tuner:
        return {50, 115};
    case Category::ReelRecorder:
        return {42, 67};
    case Category::Loudspeaker:
        return {507, 926};
    case Category::Radio:
        return {3185, 5492};
    case Category::GameConsole:
        return {167, 338};
    case Category::OldComputer:
        return {720, 1181}; // 61 % of 1,181
    case Category::TestGear:
    case Category::Other:
        break;
    }
    return {};
}

} // namespace ts
