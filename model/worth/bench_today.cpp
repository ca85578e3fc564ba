#include "model/worth/bench_today.h"

#include "model/desk/past_units.h"

#include <QHash>

namespace ts {

namespace {
constexpr ForecastOptions quick{20'000, 1, 1};
}

Expected<QList<BenchUse>> benchToday(Desk &desk, const BenchFile &bench, const QDateTime &now, const Progress &progress)
{
    const auto rack = desk.rack();
    if (!rack)
        return rack.trouble();
    QList<Id<Unit>> worked;
    for (const RackRow &row : *rack)
        if (row.stage >= Stage::Shelved && row.stage <= Stage::Ready)
            worked << row.id;
    const auto past = pastUnits(desk);
    if (!past)
        return past.trouble();
    QList<UseQuestion> units;
    for (const Id<Unit> &id : worked) {
        if (progress && !progress(units.size(), worked.size()))
            return QList<BenchUse>();
        const auto file = desk.unitFile(id);
        if (!file)
            return file.trouble();
        auto others = comparablesLike(desk, file->unit);
        if (!others)
            return others.trouble();
        const MoneyQuestion asked{*file, bench, *std::move(others), *past, now};
        units << useQuestion(asked, unitMoney(asked, quick));
    }
    return bestUse(units, now.toUTC().date());
}

} // namespace ts
