#include "model/sums/parts/order_list.h"

#include <QHash>
#include <QSet>

#include <algorithm>
#include <array>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

bool awaited(const Need &need)
{
    return !need.removed && (need.state == NeedState::Needed || need.state == NeedState::Ordered) && need.quantity > 0;
}

/// A need while the list is made: how many of its pieces nobody has yet.
struct Open {
    OrderNeed of;
    QList<ShelfPart> shelf;
    int pieces = 0;
    QString supplier;
};

/// The batches of a part in the order they are taken from: a donor's first, then the oldest.
QList<qsizetype> batchOrder(const Id<Part> &part, const QList<Batch> &batches)
{
    QList<qsizetype> order;
    for (qsizetype i = 0; i < batches.size(); ++i)
        if (!batches.at(i).removed && batches.at(i).part == part && batches.at(i).left > 0)
            order << i;
    std::stable_sort(order.begin(), order.end(), [&](qsizetype a, qsizetype b) {
        const Batch &one = batches.at(a), &two = batches.at(b);
        if (one.donor.isNull() != two.donor.isNull())
            return two.donor.isNull();
        return one.boughtOn < two.boughtOn;
    });
    return order;
}

bool fromDonor(const Id<Part> &part, const QList<Batch> &batches)
{
    return std::any_of(batches.begin(), batches.end(), [&](const Batch &each) { return !each.removed && each.part == part && each.left > 0 && !each.donor.isNull(); });
}

/// Who has it, where the need does not say: who a part of the store that would fit comes from.
QString supplierOf(const Need &need, const QList<Part> &parts, const QList<Batch> &batches)
{
    if (!need.supplier.trimmed().isEmpty())
        return need.supplier.simplified();
    const ReadRating needed = ratingInText(need.text);
    for (const Part &part : parts) {
        const bool same = need.part == part.id || part.name.compare(need.text.simplified(), Qt::CaseInsensitive) == 0;
        if (part.removed || !(same || (needed.kind && fitOf(ratingOfPart(part), needed).word == FitWord::Fits)))
            continue;
        if (!part.supplier.isEmpty())
            return part.supplier.simplified();
        for (const Batch &batch : batches)
            if (!batch.removed && batch.part == part.id && !batch.supplier.isEmpty())
                return batch.supplier.simplified();
    }
    return {};
}

QString lookText(const ShelfPart &one)
{
    const QString where = one.part.place.isEmpty() ? QString() : u" in "_s + one.part.place;
    return u"%1%2: %3"_s.arg(one.part.name, where, one.fit.why.join(u"; "_s));
}

void addToLine(SupplierOrder &order, const Open &open)
{
    OrderNeed of = open.of;
    of.pieces = open.pieces;
    const QString text = of.need.text.simplified();
    auto line = std::find_if(order.lines.begin(), order.lines.end(), [&](const OrderLine &each) {
        return each.text.compare(text, Qt::CaseInsensitive) == 0 && (each.each == of.need.price || !each.each || !of.need.price);
    });
    if (line == order.lines.end()) {
        order.lines << OrderLine{text, ratingInText(text).rating.lines().replace(u'\n', u", "_s), 0, {}, {}, {}};
        line = std::prev(order.lines.end());
    }
    line->pieces += open.pieces;
    if (!line->each)
        line->each = of.need.price;
    line->of << of;
    for (const ShelfPart &one : open.shelf)
        if (const QString look = lookText(one); one.fit.word == FitWord::LookFirst && !line->look.contains(look))
            line->look << look;
}

void sumUp(SupplierOrder &order)
{
    for (const OrderLine &line : order.lines) {
        if (!line.each) {
            ++order.unpriced;
            continue;
        }
        const Money sum = line.each->times(line.pieces);
        const auto same = std::find_if(order.sums.begin(), order.sums.end(), [&](const Money &each) { return each.currency() == sum.currency(); });
        if (same != order.sums.end())
            *same += sum;
        else
            order.sums << sum;
    }
}

/// What one unit waits for, by where it comes from.
struct Waiting {
    OrderUnit unit;
    QList<std::pair<QString, QString>> fromOrders; ///< supplier in lower case, text
    QStringList underWay;
};

OrderUnit beside(const Waiting &waiting, const QString &supplier)
{
    OrderUnit unit = waiting.unit;
    for (const auto &[from, text] : waiting.fromOrders)
        if (from != supplier)
            unit.alsoWaits << text;
    unit.alsoWaits += waiting.underWay;
    unit.underWay = !waiting.underWay.isEmpty();
    return unit;
}

} // namespace

QList<ShelfPick> picksFrom(const OrderNeed &of, const Part &part, const QList<Batch> &batches)
{
    QList<ShelfPick> picks;
    int open = of.pieces;
    for (const qsizetype at : batchOrder(part.id, batches)) {
        const Batch &batch = batches.at(at);
        const int pieces = std::min(open, batch.left);
        if (pieces <= 0)
            break;
        ShelfPick pick{of, part, batch, 0, batch.place.isEmpty() ? part.place : batch.place};
        pick.of.pieces = pieces;
        open -= pieces;
        picks << pick;
    }
    return picks;
}

OrderList orderList(const QList<OrderNeed> &needs, const QList<Part> &parts, const QList<Batch> &givenBatches, const QHash<Id<Unit>, int> &donorTags)
{
    OrderList list;
    QList<Batch> batches = givenBatches; // what is left of them while the shelf serves
    QList<Open> open;
    QList<Waiting> waiting; // in the order of the needs
    const auto unitOf = [&](const OrderNeed &of) -> Waiting & {
        const auto found = std::find_if(waiting.begin(), waiting.end(), [&](const Waiting &each) { return each.unit.id == of.need.unit; });
        if (found != waiting.end())
            return *found;
        waiting << Waiting{{of.need.unit, of.tag, of.unitName, {}, false}, {}, {}};
        return waiting.last();
    };
    for (const OrderNeed &of : needs) {
        if (!awaited(of.need))
            continue;
        Waiting &unit = unitOf(of);
        if (of.need.state == NeedState::Ordered) {
            unit.underWay << of.need.text.simplified();
            const QString supplier = of.need.supplier.simplified();
            auto found = std::find_if(list.underWay.begin(), list.underWay.end(), [&](const UnderWay &each) { return each.supplier.compare(supplier, Qt::CaseInsensitive) == 0; });
            if (found == list.underWay.end()) {
                list.underWay << UnderWay{supplier, {}};
                found = std::prev(list.underWay.end());
            }
            found->needs << of;
            found->needs.last().pieces = of.need.quantity;
            continue;
        }
        Open one{of, shelfFor(of.need, parts, batches), of.need.quantity, {}};
        std::stable_sort(one.shelf.begin(), one.shelf.end(), [&](const ShelfPart &a, const ShelfPart &b) {
            return a.fit.word == b.fit.word && fromDonor(a.part.id, batches) && !fromDonor(b.part.id, batches);
        });
        for (const ShelfPart &shelf : one.shelf) {
            if (shelf.fit.word != FitWord::Fits)
                continue;
            OrderNeed rest = of;
            rest.pieces = one.pieces;
            for (ShelfPick pick : picksFrom(rest, shelf.part, batches)) {
                one.pieces -= pick.of.pieces;
                for (qsizetype at = 0; at < batches.size(); ++at) {
                    if (batches.at(at).id != pick.batch.id)
                        continue;
                    pick.batch = givenBatches.at(at); // as the workbook has it, for the change that takes it
                    batches[at].left -= pick.of.pieces;
                }
                pick.donorTag = donorTags.value(pick.batch.donor);
                list.shelf << pick;
            }
        }
        if (one.pieces <= 0)
            continue;
        one.supplier = supplierOf(of.need, parts, givenBatches);
        unit.fromOrders << std::pair(one.supplier.toLower(), of.need.text.simplified());
        open << one;
    }
    for (const Open &one : open) {
        auto order = std::find_if(list.orders.begin(), list.orders.end(), [&](const SupplierOrder &each) { return each.supplier.compare(one.supplier, Qt::CaseInsensitive) == 0; });
        if (order == list.orders.end()) {
            list.orders << SupplierOrder{one.supplier, {}, {}, {}, {}, 0};
            order = std::prev(list.orders.end());
        }
        addToLine(*order, one);
    }
    for (SupplierOrder &order : list.orders) {
        const QString supplier = order.supplier.toLower();
        sumUp(order);
        for (const Waiting &each : waiting) {
            if (std::none_of(each.fromOrders.begin(), each.fromOrders.end(), [&](const auto &from) { return from.first == supplier; }))
                continue;
            const OrderUnit unit = beside(each, supplier);
            (unit.alsoWaits.isEmpty() ? order.frees : order.helps) << unit;
        }
    }
    for (const Waiting &each : waiting)
        if (each.fromOrders.isEmpty() && each.underWay.isEmpty())
            list.shelfFrees << each.unit;
    std::stable_sort(list.orders.begin(), list.orders.end(), [](const SupplierOrder &a, const SupplierOrder &b) {
        if (a.frees.size() != b.frees.size())
            return a.frees.size() > b.frees.size();
        return a.lines.size() > b.lines.size();
    });
    const auto dueOf = [](const OrderNeed &of) { return of.need.due.isValid() ? of.need.due : QDate(9999, 1, 1); };
    for (UnderWay &each : list.underWay)
        std::stable_sort(each.needs.begin(), each.needs.end(), [&](const OrderNeed &a, const OrderNeed &b) { return dueOf(a) < dueOf(b); });
    return list;
}

QList<OrderNeed> waitingNeeds(const QList<Need> &needs, const QList<Unit> &units)
{
    // As the rack hangs; a closed unit waits for nothing, and of one that is not here yet nothing is known for sure.
    static constexpr std::array order{Stage::Bench, Stage::Held, Stage::Proving, Stage::Ready, Stage::Offered, Stage::Shelved, Stage::Inbound, Stage::Scouted};
    QHash<Id<Unit>, const Unit *> byId;
    for (const Unit &unit : units)
        if (!unit.removed && unit.stage != Stage::Closed && unit.stage != Stage::Scouted)
            byId.insert(unit.id, &unit);
    QList<OrderNeed> waiting;
    for (const Need &need : needs)
        if (const Unit *unit = awaited(need) ? byId.value(need.unit) : nullptr)
            waiting << OrderNeed{need, unit->tag, unit->name, unit->stage, need.quantity};
    const auto placeOf = [](Stage stage) { return std::find(order.begin(), order.end(), stage) - order.begin(); };
    std::stable_sort(waiting.begin(), waiting.end(), [&](const OrderNeed &a, const OrderNeed &b) {
        const auto one = placeOf(a.stage), two = placeOf(b.stage);
        return one != two ? one < two : a.need.at < b.need.at;
    });
    return waiting;
}

} // namespace ts
