#include "app/money_facts.h"

#include "app/json_values.h"

#include <cmath>

namespace ts {

namespace {

QJsonArray waysArray(const WaysOut &ways)
{
    QJsonArray list;
    for (const WayFigures &way : ways.ways) {
        const auto figure = [&](const Money &money) { return way.open ? QJsonValue(money.decimal()) : QJsonValue(); };
        list << QJsonObject{{QStringLiteral("way"), toWord(way.way)},
                            {QStringLiteral("open"), way.open},
                            {QStringLiteral("leads"), ways.leads == way.way},
                            {QStringLiteral("low"), figure(way.low)},
                            {QStringLiteral("middle"), figure(way.middle)},
                            {QStringLiteral("high"), figure(way.high)},
                            {QStringLiteral("after_hours"), figure(way.afterHours)},
                            {QStringLiteral("minutes"), way.open ? QJsonValue(way.minutes) : QJsonValue()},
                            {QStringLiteral("per_hour"), moneyOrNull(way.perHour)},
                            {QStringLiteral("why"), way.why}};
    }
    return list;
}

QJsonValue bidValue(const UnitMoney &money)
{
    if (!money.bid)
        return {};
    return QJsonObject{{QStringLiteral("bid"), money.bid->bid.bid.decimal()},
                       {QStringLiteral("bid_without_hours"), money.bid->bid.withoutHours.decimal()},
                       {QStringLiteral("back_of_envelope"), money.bid->bid.backOfEnvelope.decimal()},
                       {QStringLiteral("why"), money.bid->why},
                       {QStringLiteral("rests_on"), money.bid->restsOn}};
}

} // namespace

QJsonObject moneyObject(const UnitMoney &money)
{
    const CostSheet &sheet = money.sheet;
    const auto drawn = [&](double minor) { return QJsonValue(Money(std::llround(minor), sheet.currency).decimal()); };
    const auto ofForecast = [&](auto pick, const std::optional<Money> &otherwise) {
        return money.forecast ? drawn(pick(*money.forecast)) : moneyOrNull(otherwise);
    };
    return {{QStringLiteral("currency"), sheet.currency.code()},
            {QStringLiteral("spent"), sheet.spent.total.decimal()},
            {QStringLiteral("break_even"), moneyOrNull(sheet.toDate(CostKey::BreakEven))},
            {QStringLiteral("resale_middle"), moneyOrNull(sheet.toDate(CostKey::Resale))},
            {QStringLiteral("resale_low"), moneyOrNull(money.resale.low)},
            {QStringLiteral("resale_high"), moneyOrNull(money.resale.high)},
            {QStringLiteral("resale_count"), money.resale.count},
            {QStringLiteral("resale_guessing"), money.resale.guessing},
            {QStringLiteral("profit_low"), ofForecast([](const Forecast &f) { return f.profit.low; }, {})},
            {QStringLiteral("profit_middle"),
             ofForecast([](const Forecast &f) { return f.profit.middle; }, sheet.toDate(CostKey::ProfitBeforeHours))},
            {QStringLiteral("profit_high"), ofForecast([](const Forecast &f) { return f.profit.high; }, {})},
            {QStringLiteral("per_hour"),
             ofForecast([](const Forecast &f) { return f.perHour.middle; }, sheet.toDate(CostKey::EarnedPerHour))},
            {QStringLiteral("chance_of_loss"), money.forecast ? QJsonValue(money.forecast->chanceOfLoss) : QJsonValue()},
            {QStringLiteral("days_middle"), money.forecast ? QJsonValue(money.forecast->days.middle) : QJsonValue()},
            {QStringLiteral("ways_out"), waysArray(money.ways)},
            {QStringLiteral("ways_out_why"), textOrNull(money.ways.why)},
            {QStringLiteral("ways_out_change"), textOrNull(money.ways.whenItChanges)},
            {QStringLiteral("bid"), bidValue(money)}};
}

void printMoney(QTextStream &out, const UnitMoney &money)
{
    const Resale &resale = money.resale;
    if (resale.middle)
        out << "\nWhat it should fetch: " << resale.middle->display() << " in the middle, 1 in 10 below " << resale.low->display()
            << ", 1 in 10 above " << resale.high->display() << " (" << resale.heading << ")\n  " << resale.why << '\n';
    if (!money.why.isEmpty())
        out << "\nForecast\n  " << money.why << '\n';
    if (!money.ways.ways.isEmpty()) {
        out << "\nFrom here, not counting what is already spent" << QStringLiteral("1 in 10").rightJustified(12)
            << QStringLiteral("middle").rightJustified(12) << QStringLiteral("9 in 10").rightJustified(12)
            << QStringLiteral("time").rightJustified(12) << QStringLiteral("an hour").rightJustified(12) << '\n';
        for (const WayFigures &way : money.ways.ways) {
            out << (money.ways.leads == way.way ? "* " : "  ") << wayText(way.way).leftJustified(43);
            if (way.open)
                out << way.low.display().rightJustified(12) << way.middle.display().rightJustified(12)
                    << way.high.display().rightJustified(12) << durationText(way.minutes).rightJustified(12)
                    << (way.perHour ? way.perHour->display() : QString()).rightJustified(12) << '\n';
            else
                out << way.why << '\n';
        }
        out << "  " << money.ways.why << ' ' << money.ways.whenItChanges << '\n';
    }
    if (money.bid) {
        out << "\nHighest bid\n  " << money.bid->why << "\n  " << money.bid->restsOn << '\n';
        for (const QString &remark : money.bid->remarks)
            out << "  " << remark << '\n';
    } else if (!money.bidMissing.isEmpty()) {
        out << "\nHighest bid\n  " << money.bidMissing << '\n';
    }
}

} // namespace ts
