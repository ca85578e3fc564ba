// One order list for all waiting units. The rules are those of ../shared/trade/trade.md row 16 ("consolidate over all waiting units;
// check stock and donor shelf first"; errors: "ordered twice; waiting on one part for five units") and 3.5 ("sort by how many units
// each order frees"); the lists themselves were worked out by hand.
#include "model/sums/parts/order_list.h"
#include "tests/testing.h"

#include <QtTest>

using namespace ts;
using namespace Qt::StringLiterals;

namespace {

class Bench {
public:
    Id<Unit> unit(int tag, Stage stage = Stage::Held)
    {
        Unit made;
        made.id.value = next();
        made.tag = tag;
        made.name = u"Unit %1"_s.arg(tag);
        made.stage = stage;
        units << made;
        return made.id;
    }
    Need &need(const Id<Unit> &of, const QString &text, const QString &supplier = {}, int quantity = 1)
    {
        Need made;
        made.id.value = next();
        made.at = QDateTime(QDate(2026, 11, 1), QTime(10, m_next % 60), Qt::UTC);
        made.unit = of;
        made.text = text;
        made.supplier = supplier;
        made.quantity = quantity;
        needs << made;
        return needs.last();
    }
    Part part(const QString &name, const QString &kind = {}, const QString &rating = {}, const QString &supplier = {})
    {
        Part made;
        made.id.value = next();
        made.name = name;
        made.kind = kind;
        made.rating = rating;
        made.supplier = supplier;
        parts << made;
        return made;
    }
    Batch &batch(const Part &of, int left, const Id<Unit> &donor = {}, QDate bought = QDate(2026, 1, 1))
    {
        Batch made;
        made.id.value = next();
        made.part = of.id;
        made.quantity = made.left = left;
        made.donor = donor;
        made.boughtOn = bought;
        batches << made;
        return batches.last();
    }
    [[nodiscard]] OrderList list() const
    {
        QHash<Id<Unit>, int> tags;
        for (const Unit &each : units)
            tags.insert(each.id, each.tag);
        return orderList(waitingNeeds(needs, units), parts, batches, tags);
    }

    QList<Unit> units;
    QList<Need> needs;
    QList<Part> parts;
    QList<Batch> batches;

private:
    QUuid next() { return QUuid::createUuidV5(QUuid(), QByteArray::number(++m_next)); }
    int m_next = 0;
};

QList<int> tags(const QList<OrderUnit> &units)
{
    QList<int> all;
    for (const OrderUnit &unit : units)
        all << unit.tag;
    return all;
}

template <class R>
QList<R> after(const Change &change)
{
    QList<R> all;
    for (const ChangeItem &item : change.items())
        if (item.kind == &description<R>() && item.after)
            all << *description<R>().fromRow(*item.after);
    return all;
}

} // namespace

class TestSumsOrder : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatOneOrderFrees()
    {
        Bench bench;
        const auto deck = bench.unit(42), player = bench.unit(29), tuner = bench.unit(35), done = bench.unit(20, Stage::Closed);
        bench.need(deck, u"belt 78x4x0.6"_s, u"Millrace"_s).price = Money::parse(u"2.50"_s, *Currency::parse(u"GBP")).value();
        bench.need(deck, u"relay 24 V"_s, u"Tern Street"_s);
        bench.need(player, u"belt 71 x 1.2 square"_s, u"millrace"_s);
        bench.need(tuner, u"Belt 78x4x0.6"_s, u"Millrace"_s, 2);
        bench.need(done, u"belt 90x4x0.6"_s, u"Millrace"_s);
        const OrderList list = bench.list();
        QVERIFY(list.shelf.isEmpty());
        QCOMPARE(list.orders.size(), 2);
        const SupplierOrder &belts = list.orders.first();
        QCOMPARE(belts.supplier, u"Millrace"_s);
        QCOMPARE(belts.lines.size(), 2);
        QCOMPARE(belts.lines.first().pieces, 3); // one line for two units, not two
        QCOMPARE(belts.lines.first().rating, u"inner circumference 78 mm, width 4 mm, thickness 0.6 mm"_s);
        QCOMPARE(belts.sums.first().minor(), 750); // 3 × 2.50
        QCOMPARE(belts.unpriced, 1);
        QCOMPARE(tags(belts.frees), (QList{29, 35}));
        QCOMPARE(tags(belts.helps), (QList{42}));
        QCOMPARE(belts.helps.first().alsoWaits, QStringList(u"relay 24 V"_s));
        QCOMPARE(tags(list.orders.last().frees), QList<int>());
    }

    void shelfAndDonorsFirst()
    {
        Bench bench;
        const auto deck = bench.unit(42, Stage::Bench), other = bench.unit(33, Stage::Shelved), donor = bench.unit(22, Stage::Closed);
        const Part bought = bench.part(u"belt 78x4x0.6"_s, u"belt"_s);
        bench.batch(bought, 1);
        bench.batch(bought, 1, donor);
        bench.need(other, u"belt 78x4x0.6"_s, u"Millrace"_s, 2); // typed first, but the bench is served first
        bench.need(deck, u"capstan belt 78x4x0.6"_s);
        const OrderList list = bench.list();
        QCOMPARE(list.shelf.size(), 2);
        QCOMPARE(list.shelf.at(0).of.tag, 42);
        QCOMPARE(list.shelf.at(0).donorTag, 22);
        QCOMPARE(list.shelf.at(1).of.tag, 33);
        QCOMPARE(list.shelf.at(1).donorTag, 0);
        QCOMPARE(tags(list.shelfFrees), QList{42});
        QCOMPARE(list.orders.size(), 1);
        QCOMPARE(list.orders.first().lines.first().pieces, 1); // the other one is on the shelf
        QCOMPARE(tags(list.orders.first().frees), QList{33});
    }

    void whatOnlyMightFitIsOrdered()
    {
        Bench bench;
        const auto deck = bench.unit(42);
        const Part look = bench.part(u"belt of the tin"_s, u"belt"_s, u"inner circumference 78 mm"_s);
        bench.batch(look, 4);
        bench.need(deck, u"belt 78x4x0.6"_s);
        const OrderList list = bench.list();
        QVERIFY(list.shelf.isEmpty());
        QCOMPARE(list.orders.first().supplier, QString());
        QVERIFY(list.orders.first().lines.first().look.first().contains(u"width is not recorded"_s));
    }

    void supplierOfThePartOfTheStore()
    {
        Bench bench;
        const auto deck = bench.unit(42);
        bench.part(u"Fuse T 315 mA 5 x 20"_s, u"fuse"_s, {}, u"Tern Street"_s);
        bench.need(deck, u"fuse T 315 mA"_s);
        QCOMPARE(bench.list().orders.first().supplier, u"Tern Street"_s);
    }

    void underWay()
    {
        Bench bench;
        const auto deck = bench.unit(42), tuner = bench.unit(35);
        for (const auto &[unit, text, day] : {std::tuple{deck, u"relay 24 V"_s, 28}, std::tuple{tuner, u"lamp 8 V"_s, 26}}) {
            Need &need = bench.need(unit, text, u"Tern Street"_s);
            need.state = NeedState::Ordered;
            need.due = QDate(2026, 11, day);
        }
        bench.need(deck, u"belt 78x4x0.6"_s, u"Millrace"_s);
        Need &here = bench.need(tuner, u"belt 60x4x0.6"_s, u"Millrace"_s);
        here.state = NeedState::Here;
        const OrderList list = bench.list();
        QCOMPARE(list.orders.size(), 1);
        QVERIFY(list.orders.first().frees.isEmpty());
        QVERIFY(list.orders.first().helps.first().underWay);
        QCOMPARE(list.underWay.size(), 1);
        QCOMPARE(list.underWay.first().needs.first().tag, 35); // due first

        SetClock clock(QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC));
        IdMaker ids(clock);
        const Change change = orderArrived(list.underWay.first(), Maker(ids));
        QCOMPARE(change.sentence(), u"Arrived from Tern Street for 0035, 0042"_s);
        for (const Need &need : after<Need>(change)) {
            QCOMPARE(need.state, NeedState::Here);
            QCOMPARE(need.stateSince, clock.now());
        }
        QCOMPARE(change.items().size(), 2);
    }

    void aNeedIsPartedBetweenShelfAndOrder()
    {
        Bench bench;
        const auto deck = bench.unit(42);
        const Part cap = bench.part(u"Electrolytic 470 uF 25 V"_s, u"electrolytic"_s, {}, u"Tern Street"_s);
        bench.batch(cap, 1).unitCost = Money::parse(u"0.20"_s, *Currency::parse(u"GBP")).value();
        bench.batch(cap, 2, {}, QDate(2026, 6, 1));
        bench.need(deck, u"electrolytic 470 µF 25 V"_s, {}, 5);
        const OrderList list = bench.list();
        QCOMPARE(list.shelf.size(), 2);
        QCOMPARE(list.orders.first().lines.first().pieces, 2);

        SetClock clock(QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC));
        IdMaker ids(clock);
        const Change taken = takeFromShelf(list.shelf, Maker(ids));
        const auto needs = after<Need>(taken);
        QCOMPARE(needs.size(), 3);
        QCOMPARE(needs.at(0).id, bench.needs.first().id);
        QCOMPARE(needs.at(0).quantity, 2); // what is still to be ordered
        QCOMPARE(needs.at(0).state, NeedState::Needed);
        QCOMPARE(needs.at(1).quantity, 1);
        QCOMPARE(needs.at(1).price->minor(), 20);
        QCOMPARE(needs.at(2).quantity, 2);
        QCOMPARE(needs.at(2).state, NeedState::Here);
        QCOMPARE(needs.at(2).batch, bench.batches.at(1).id);
        const auto batches = after<Batch>(taken);
        QCOMPARE(batches.size(), 2);
        QCOMPARE(batches.at(0).left + batches.at(1).left, 0);

        const Change ordered = placeOrder(list.orders.first(), QDate(2026, 11, 30), Maker(ids));
        const auto rest = after<Need>(ordered);
        QCOMPARE(rest.size(), 2);
        QCOMPARE(rest.at(0).quantity, 3);
        QCOMPARE(rest.at(0).state, NeedState::Needed);
        QCOMPARE(rest.at(1).quantity, 2);
        QCOMPARE(rest.at(1).state, NeedState::Ordered);
        QCOMPARE(rest.at(1).supplier, u"Tern Street"_s);
        QCOMPARE(rest.at(1).due, QDate(2026, 11, 30));
    }

    void orderedOnceOnly()
    {
        Bench bench;
        const auto deck = bench.unit(42);
        bench.need(deck, u"relay 24 V"_s, u"Tern Street"_s);
        SetClock clock(QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC));
        IdMaker ids(clock);
        const auto ordered = after<Need>(placeOrder(bench.list().orders.first(), {}, Maker(ids)));
        QCOMPARE(ordered.size(), 1);
        bench.needs = ordered;
        QVERIFY(bench.list().orders.isEmpty());
        QCOMPARE(bench.list().underWay.size(), 1);
    }
};

QTEST_GUILESS_MAIN(TestSumsOrder)
#include "test_sums_order.moc"
