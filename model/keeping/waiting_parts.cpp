#include "model/keeping/waiting_parts.h"

#include <QSet>

namespace ts {

Expected<OrderList> readOrderList(Desk &desk, const Id<Unit> &unit)
{
    QList<Need> needs;
    for (const NeedState state : {NeedState::Needed, NeedState::Ordered}) {
        const auto some = desk.list<Need>(QStringLiteral("state"), toWord(state));
        if (!some)
            return some.trouble();
        for (const Need &need : *some)
            if (unit.isNull() || need.unit == unit)
                needs << need;
    }
    QList<Unit> units;
    QSet<QUuid> asked;
    for (const Need &need : needs) {
        if (asked.contains(need.unit.value))
            continue;
        asked << need.unit.value;
        const auto of = desk.get(need.unit);
        if (!of)
            return of.trouble();
        units << *of;
    }
    const auto parts = desk.list<Part>();
    const auto batches = parts ? desk.list<Batch>() : Expected<QList<Batch>>(parts.trouble());
    if (!batches)
        return batches.trouble();
    QHash<Id<Unit>, int> donors;
    for (const Batch &batch : *batches)
        if (!batch.donor.isNull() && batch.left > 0 && !donors.contains(batch.donor))
            if (const auto donor = desk.get(batch.donor))
                donors.insert(batch.donor, donor->tag);
    return orderList(waitingNeeds(needs, units), *parts, *batches, donors);
}

Expected<Paper> handOverOrder(Desk &desk, const Unit *unit, const BenchFile &bench, const QDateTime &now, const SheetWish &wish)
{
    const auto list = readOrderList(desk, unit ? unit->id : Id<Unit>());
    if (!list)
        return list.trouble();
    auto facts = gatherOrder(*list, unit, bench, now);
    if (!facts)
        return facts.trouble();
    return handOver(desk, unit ? *unit : Unit(),
                    {PaperKind::Order, QStringLiteral("Order list"), facts->title, now,
                     [&](const Paper &numbered) {
                         facts->number = numbered.number;
                         facts->edition = numbered.edition;
                         return wish.format == QLatin1String("html") ? Expected<QByteArray>(orderHtml(*facts)) : orderPdf(*facts, wish.size);
                     }},
                    wish);
}

} // namespace ts
