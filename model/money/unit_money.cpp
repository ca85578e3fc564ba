#include "model/money/unit_money.h"

#include <cmath>

namespace ts {

QString forecastText(const Forecast &forecast, const Currency &currency)
{
    const auto money = [&](double minor) { return Money(std::llround(minor), currency).display(); };
    return QStringLiteral("In all it comes to %1 in the middle, %2 an hour; 1 in 10 ends below %3, 1 in 10 above %4; the chance "
                          "of a loss is %5 %. "
                          "Money is tied up for %6 days in the middle. %7 draws.")
        .arg(money(forecast.profit.middle), money(forecast.perHour.middle), money(forecast.profit.low),
             money(forecast.profit.high))
        .arg(std::lround(forecast.chanceOfLoss * 100))
        .arg(std::lround(forecast.days.middle))
        .arg(forecast.draws);
}

UnitMoney unitMoney(const MoneyQuestion &asked, const ForecastOptions &options)
{
    const QDate today = asked.now.toUTC().date();
    const Unit &unit = asked.file.unit;
    const MoneySettings settings = MoneySettings::of(asked.bench);
    UnitMoney made;
    ResaleTerms terms = ResaleTerms::of(asked.file, asked.bench, today);
    made.resale = resaleOf(asked.file, asked.bench, asked.others, terms);
    terms.working = false;
    made.asItStands = resaleOf(asked.file, asked.bench, asked.others, terms);
    made.sheet = costSheet(asked.file, asked.bench, asked.now, made.resale);
    made.record = ownRecord(asked.past, unit.category, baseRate(unit.category).share(),
                            static_cast<double>(settings.returnsRate.millionths()) / 1e6);
    made.basis = forecastBasis(asked, made.sheet, made.resale, made.asItStands, made.record, settings);
    if (unit.kind == UnitKind::ToSell && unit.stage != Stage::Closed && made.basis.resaleKnown) {
        made.forecast = forecastOf(made.basis.terms, options);
        made.why = forecastText(*made.forecast, made.sheet.currency);
    }
    made.ways = waysOut(asked, made.sheet, made.basis, made.forecast.value_or(Forecast()), settings, options);
    if (unit.stage == Stage::Scouted) {
        auto bid = scoutedBid(asked, made.resale, made.asItStands, made.record, settings);
        if (bid)
            made.bid = *std::move(bid);
        else
            made.bidMissing = bid.trouble().sentence();
    }
    return made;
}

} // namespace ts
