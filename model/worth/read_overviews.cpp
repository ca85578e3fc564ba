#include "model/worth/read_overviews.h"

#include "model/desk/past_units.h"

namespace ts {

Expected<Overviews> readOverviews(Desk &desk, const QDate &today)
{
    const auto rack = desk.rack();
    const auto units = desk.list<Unit>();
    const auto past = pastUnits(desk);
    const auto found = desk.list<Cause>(QStringLiteral("state"), toWord(CauseState::Confirmed));
    if (!rack || !units)
        return rack ? units.trouble() : rack.trouble();
    if (!past || !found)
        return past ? found.trouble() : past.trouble();
    QHash<Id<Unit>, QDate> since;
    for (const Unit &unit : *units)
        since.insert(unit.id, unit.at.toLocalTime().date());
    QList<OpenUnit> open;
    for (const RackRow &row : *rack)
        if (row.stage != Stage::Closed)
            open << OpenUnit{row.stage, row.spent, static_cast<int>(row.minutes), since.value(row.id), row.stageSince.toLocalTime().date()};
    QStringList causes;
    QSet<QPair<QUuid, QString>> counted;
    for (const Cause &cause : *found) {
        const auto once = qMakePair(cause.unit.value, cause.text.simplified().toCaseFolded());
        if (!counted.contains(once))
            causes << cause.text;
        counted << once;
    }
    return overviews(open, *past, causes, today);
}

} // namespace ts
