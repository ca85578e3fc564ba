#include "model/paper/order_sheet.h"

#include "model/paper/plain_words.h"
#include "model/paper/unit_words.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"

#include <QSet>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString of(const OrderNeed &need)
{
    const QString tag = tagText(need.tag);
    return need.need.position.isEmpty() || need.need.position == need.need.text ? tag : tag + u" at "_s + plainText(need.need.position);
}

QString allOf(const QList<OrderNeed> &needs)
{
    QStringList all;
    for (const OrderNeed &need : needs)
        if (const QString text = of(need); !all.contains(text))
            all << text;
    return all.join(u", "_s);
}

QString tagsText(const QList<OrderUnit> &units)
{
    QStringList tags;
    for (const OrderUnit &unit : units)
        tags << tagText(unit.tag);
    return tags.join(u", "_s);
}

OrderFacts::Line lineOf(const OrderLine &line)
{
    OrderFacts::Line made;
    made.pieces = QString::number(line.pieces);
    made.what = plainText(line.text);
    made.rating = line.rating;
    made.units = allOf(line.of);
    if (line.each) {
        made.each = line.each->display();
        made.sum = line.each->times(line.pieces).display();
    }
    for (const QString &look : line.look)
        made.look << u"On the shelf, look first: "_s + plainText(look);
    return made;
}

OrderFacts::Order orderOf(const SupplierOrder &order)
{
    OrderFacts::Order made;
    made.supplier = order.supplier.isEmpty() ? u"No supplier named"_s : plainText(order.supplier);
    made.frees = order.frees.isEmpty() ? u"Frees no unit by itself."_s : u"Frees %1."_s.arg(tagsText(order.frees));
    QStringList helps;
    for (const OrderUnit &unit : order.helps)
        helps << u"%1 also waits for %2"_s.arg(tagText(unit.tag), plainText(unit.alsoWaits.join(u", "_s)));
    made.helps = helps.join(u"; "_s);
    QStringList sums;
    for (const Money &sum : order.sums)
        sums << sum.display();
    if (order.unpriced > 0)
        sums << (order.unpriced == 1 ? u"1 line without a price"_s : u"%1 lines without a price"_s.arg(order.unpriced));
    made.total = sums.join(u" · "_s);
    for (const OrderLine &line : order.lines)
        made.lines << lineOf(line);
    return made;
}

} // namespace

Expected<OrderFacts> gatherOrder(const OrderList &list, const Unit *unit, const BenchFile &bench, const QDateTime &now)
{
    OrderFacts facts;
    if (unit)
        facts.tag = tagText(unit->tag);
    if (list.isEmpty())
        return Trouble{unit ? u"There is no order list of unit %1"_s.arg(facts.tag) : u"There is no order list"_s, u"no part is awaited"_s, {}};
    facts.madeAt = now;
    facts.date = dayText(now.date());
    facts.benchName = plainText(bench.setting(settings::benchName));
    facts.worker = plainText(bench.setting(settings::worker));
    QSet<int> waiting;
    for (const ShelfPick &pick : list.shelf) {
        waiting << pick.of.tag;
        OrderFacts::Line line;
        line.pieces = QString::number(pick.of.pieces);
        line.what = plainText(pick.part.name);
        if (pick.of.need.text.compare(pick.part.name, Qt::CaseInsensitive) != 0)
            line.rating = u"for "_s + plainText(pick.of.need.text);
        line.units = of(pick.of);
        line.place = plainText(pick.place);
        if (pick.donorTag > 0)
            line.place += (line.place.isEmpty() ? QString() : u", "_s) + u"from donor "_s + tagText(pick.donorTag);
        facts.shelf << line;
    }
    facts.shelfFrees = list.shelfFrees.isEmpty() ? QString() : u"Frees %1 without any order."_s.arg(tagsText(list.shelfFrees));
    for (const SupplierOrder &order : list.orders) {
        facts.orders << orderOf(order);
        for (const OrderLine &line : order.lines)
            for (const OrderNeed &need : line.of)
                waiting << need.tag;
    }
    for (const UnderWay &order : list.underWay) {
        OrderFacts::Order made;
        made.supplier = order.supplier.isEmpty() ? u"No supplier named"_s : plainText(order.supplier);
        for (const OrderNeed &need : order.needs) {
            waiting << need.tag;
            OrderFacts::Line line;
            line.pieces = QString::number(need.pieces);
            line.what = plainText(need.need.text);
            line.units = of(need);
            line.due = need.need.due.isValid() ? dayText(need.need.due) : QString();
            if (need.need.due.isValid() && need.need.due < now.date())
                line.due += u" (overdue)"_s;
            made.lines << line;
        }
        facts.underWay << made;
    }
    if (unit) {
        facts.title = nameOf(*unit);
        facts.about = identityOf(*unit, facts.title).join(u" · "_s);
    } else {
        facts.title = u"Parts for all waiting units"_s;
        facts.about = waiting.size() == 1 ? u"1 unit waits"_s : u"%1 units wait"_s.arg(waiting.size());
    }
    return facts;
}

} // namespace ts
