#include "model/worth/money_asked.h"

#include "model/desk/past_units.h"

namespace ts {

Expected<MoneyAround> moneyAround(Desk &desk, const Unit &unit)
{
    auto past = pastUnits(desk);
    if (!past)
        return past.trouble();
    auto others = comparablesLike(desk, unit);
    if (!others)
        return others.trouble();
    return MoneyAround{*std::move(others), *std::move(past)};
}

Expected<MoneyQuestion> moneyQuestion(Desk &desk, const UnitFile &file, const BenchFile &bench, const QDateTime &now)
{
    auto around = moneyAround(desk, file.unit);
    if (!around)
        return around.trouble();
    return MoneyQuestion{file, bench, std::move(around->others), std::move(around->past), now};
}

} // namespace ts
