// Lots shared out, donors taken apart, and every penny found again.
#include "model/money/lot_shares.h"
#include "model/money/money_places.h"
#include "tests/money_samples.h"

#include <QRandomGenerator>

using namespace ts;
using namespace ts::testing;

namespace {

Lot lotOf(LotMethod method, const char *price, const char *carriage = nullptr)
{
    Lot lot;
    lot.id = DeckSample::fresh<Lot>();
    lot.name = QStringLiteral("clearance");
    lot.method = method;
    lot.price = money(price);
    if (carriage)
        lot.carriage = money(carriage);
    lot.reason = QStringLiteral("the dearest is worth as much as all the others");
    return lot;
}

/// The four units of the worked example: value as found, weight in kilograms, restored value less cost.
QList<LotUnit> four()
{
    QList<LotUnit> units;
    for (const auto &[value, weight, restored] : {std::tuple{150., 9., 150.}, {60., 6., 60.}, {25., 4., 20.}, {5., 3., 8.}})
        units << LotUnit{DeckSample::fresh<Unit>(),
                         QStringLiteral("unit %1").arg(units.size()),
                         value * 100,
                         weight,
                         restored * 100 + 4'000,
                         4'000,
                         true};
    return units;
}

QString prices(const Expected<QList<LotShare>> &shares)
{
    if (!shares)
        return shares.trouble().sentence();
    QStringList list;
    for (const LotShare &share : *shares)
        list << share.price.decimal();
    return list.join(QLatin1Char(' '));
}

} // namespace

class TestMoneyLots : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void workedExample();
    void allOnTheGood();
    void carriageApart();
    void refusals();
    void sharedOutOnce();
    void donors();
    void nothingIsLost();
};

void TestMoneyLots::workedExample()
{
    // The trade's notes on a lot at 120 (apportioning): the last has one cent to place, which goes to the largest remainder.
    QCOMPARE(prices(lotShares(lotOf(LotMethod::ByValue, "120"), four())), QStringLiteral("75.00 30.00 12.50 2.50"));
    QCOMPARE(prices(lotShares(lotOf(LotMethod::Equal, "120"), four())), QStringLiteral("30.00 30.00 30.00 30.00"));
    QCOMPARE(prices(lotShares(lotOf(LotMethod::ByWeight, "120"), four())), QStringLiteral("49.09 32.73 21.82 16.36"));
    QCOMPARE(prices(lotShares(lotOf(LotMethod::ByValueLessCost, "120"), four())), QStringLiteral("75.63 30.25 10.09 4.03"));
}

void TestMoneyLots::allOnTheGood()
{
    QList<LotUnit> units = four();
    units[2].good = units[3].good = false;
    QCOMPARE(prices(lotShares(lotOf(LotMethod::AllOnTheGood, "120"), units)),
             QStringLiteral("85.71 34.29 0.00 0.00")); // 150 to 60
    units[0].value = units[1].value = 0;
    QCOMPARE(prices(lotShares(lotOf(LotMethod::AllOnTheGood, "120"), units)), QStringLiteral("60.00 60.00 0.00 0.00"));
    units[0].good = units[1].good = false;
    QVERIFY(prices(lotShares(lotOf(LotMethod::AllOnTheGood, "120"), units)).contains(QStringLiteral("no unit has a figure")));
}

void TestMoneyLots::carriageApart()
{
    const auto shares = lotShares(lotOf(LotMethod::ByWeight, "120", "9.99"), four());
    wantOk(shares);
    // By the same key, 9 : 6 : 4 : 3 of 22: 4.0868, 2.7245, 1.8164, 1.3623; by hand 4.08 + 2.72 + 1.81 + 1.36 and two cents more.
    QStringList carriages;
    for (const LotShare &share : *shares)
        carriages << share.carriage.decimal();
    QCOMPARE(carriages,
             (QStringList{QStringLiteral("4.09"), QStringLiteral("2.72"), QStringLiteral("1.82"), QStringLiteral("1.36")}));
    QVERIFY(shares->first().why.contains(QStringLiteral("40.9 %")) && shares->first().why.contains(QStringLiteral("by weight")));
}

void TestMoneyLots::refusals()
{
    QList<LotUnit> units = four();
    units[1].weight = 0;
    QVERIFY(prices(lotShares(lotOf(LotMethod::ByWeight, "120"), units)).contains(QStringLiteral("unit 1 has no weight")));
    units[1].value = -1;
    QVERIFY(prices(lotShares(lotOf(LotMethod::ByValue, "120"), units)).contains(QStringLiteral("unit 1")));
    Lot unpriced = lotOf(LotMethod::Equal, "120");
    unpriced.price = {};
    QVERIFY(prices(lotShares(unpriced, units)).contains(QStringLiteral("no price")));
    QVERIFY(!lotShares(lotOf(LotMethod::Equal, "120"), {}).ok());
}

void TestMoneyLots::sharedOutOnce()
{
    SetClock clock(QDateTime({2026, 11, 25}, {12, 0}, Qt::UTC));
    IdMaker ids(clock);
    Maker maker(ids);
    Lot lot = lotOf(LotMethod::ByValue, "120", "10");
    const auto shares = lotShares(lot, four());
    wantOk(shares);
    const auto change = shareOutLot(lot, *shares, {}, maker);
    wantOk(change);
    QCOMPARE(change->items().size(), 8);
    Money sum;
    QList<Spend> spends;
    for (const ChangeItem &item : change->items()) {
        spends << *description<Spend>().fromRow(*item.after);
        QCOMPARE(spends.last().lot, lot.id);
        sum += *spends.last().amount;
    }
    QCOMPARE(sum.decimal(), QStringLiteral("130.00"));
    QVERIFY(refusal(shareOutLot(lot, *shares, spends, maker)).contains(QStringLiteral("shared out already")));
    lot.reason.clear();
    QVERIFY(refusal(shareOutLot(lot, *shares, {}, maker)).contains(QStringLiteral("is fair")));
}

void TestMoneyLots::donors()
{
    DeckSample deck; // 38.40 in all
    Batch head;
    head.donor = deck.asked.file.unit.id;
    const auto taken = takeFromDonor(money("38.40"), money("15"), 2);
    wantOk(taken);
    QCOMPARE(taken->each.decimal(), QStringLiteral("15.00"));
    QCOMPARE(taken->left.decimal(), QStringLiteral("8.40"));
    head.unitCost = taken->each;
    head.quantity = 2;
    head.left = 2;
    // Worth more than is left: it takes what is left, in whole pennies each, and the odd one stays.
    const auto rest = takeFromDonor(taken->left, money("9"), 9);
    QCOMPARE(rest->each.decimal(), QStringLiteral("0.93"));
    QCOMPARE(rest->moved.decimal(), QStringLiteral("8.37"));
    QCOMPARE(rest->left.decimal(), QStringLiteral("0.03"));
    Donor donor = donorOf(deck.asked.file, {head}, pounds());
    QCOMPARE(donor.moved.decimal(), QStringLiteral("30.00"));
    QCOMPARE(donor.left.decimal(), QStringLiteral("8.40"));
    QVERIFY(!donor.writtenOff);
    deck.asked.file.unit.stage = Stage::Closed;
    deck.asked.file.unit.outcome = Outcome::BrokenForParts;
    QVERIFY(donorOf(deck.asked.file, {head}, pounds()).why.contains(QStringLiteral("£8.40 is written off")));
    QVERIFY(!takeFromDonor(money("5"), money("1"), 0).ok());
    QVERIFY(!takeFromDonor(money("5"), money("-1"), 1).ok());
    QVERIFY(!takeFromDonor(money("5"), *Money::parse(u"1 EUR", pounds()), 1).ok());
}

void TestMoneyLots::nothingIsLost()
{
    // Random benches: lots shared out, spends, donors taken apart, parts bought and fitted. Every penny that was paid, counted
    // here as it is paid, is on a unit, in the store, overhead, or written off; none is astray.
    QRandomGenerator random(1969);
    const auto below = [&random](int bound) { return random.bounded(bound); };
    const auto pence = [&](int bound) { return Money(below(bound), pounds()); };
    for (int round = 0; round < 400; ++round) {
        QList<UnitFile> units(2 + below(5));
        Money paid(0, pounds());
        QList<LotUnit> ofLot;
        for (UnitFile &file : units) {
            file.unit.id = DeckSample::fresh<Unit>();
            ofLot << LotUnit{file.unit.id,
                             QStringLiteral("u"),
                             1.0 + below(9'999),
                             0.5 + below(20),
                             5'000.0 + below(20'000),
                             0.0 + below(5'000),
                             true};
        }
        const auto spend = [&](UnitFile *file, const Money &sum, SpendKind kind = SpendKind::Purchase, Flow flow = Flow::Out) {
            Spend made;
            made.kind = kind;
            made.flow = flow;
            made.amount = sum;
            if (file) {
                made.unit = file->unit.id;
                file->all<Spend>() << made;
            }
            return made;
        };
        Lot lot = lotOf(static_cast<LotMethod>(below(5)), "0");
        lot.price = pence(50'000);
        lot.carriage = pence(3'000);
        paid += *lot.price + *lot.carriage;
        const auto shares = lotShares(lot, ofLot);
        wantOk(shares);
        for (qsizetype i = 0; i < units.size(); ++i) {
            spend(&units[i], shares->at(i).price);
            spend(&units[i], shares->at(i).carriage, SpendKind::CarriageIn);
        }
        QList<Spend> ofBench;
        for (int i = below(4); i > 0; --i) {
            const Money sum = pence(4'000);
            ofBench << spend(nullptr, sum, SpendKind::Overhead);
            paid += sum;
        }
        if (below(2)) {
            const Money back = pence(500);
            spend(&units.last(), back, SpendKind::Refund, Flow::In);
            paid = paid - back;
        }
        // The first is a donor.
        QList<Batch> batches;
        Money left = spentOn(units.first(), pounds()).total;
        for (int i = below(4); i > 0; --i) {
            Batch batch;
            batch.id = DeckSample::fresh<Batch>();
            batch.donor = units.first().unit.id;
            batch.quantity = batch.left = 1 + below(5);
            const auto taken = takeFromDonor(left, pence(6'000), batch.quantity);
            wantOk(taken);
            batch.unitCost = taken->each;
            left = taken->left;
            batches << batch;
        }
        if (below(2)) {
            units.first().unit.stage = Stage::Closed;
            units.first().unit.outcome = Outcome::BrokenForParts;
        }
        for (int i = below(4); i > 0; --i) {
            Batch batch;
            batch.id = DeckSample::fresh<Batch>();
            batch.quantity = batch.left = 1 + below(20);
            batch.unitCost = pence(700);
            paid += batch.unitCost->times(batch.quantity);
            batches << batch;
        }
        for (int i = below(12); i > 0; --i) {
            UnitFile &file = units[1 + below(static_cast<int>(units.size()) - 1)];
            Need need;
            need.unit = file.unit.id;
            need.quantity = 1 + below(3);
            need.state = static_cast<NeedState>(below(4));
            if (below(2) && !batches.isEmpty()) {
                Batch &batch = batches[below(static_cast<int>(batches.size()))];
                if (batch.left < need.quantity)
                    continue;
                need.state = NeedState::Fitted;
                need.batch = batch.id;
                need.price = batch.unitCost;
                batch.left -= need.quantity;
            } else {
                need.price = pence(900);
                if (need.state != NeedState::Needed)
                    paid += need.price->times(need.quantity);
            }
            file.all<Need>() << need;
        }
        const MoneyPlaces places = moneyPlaces(units, ofBench, batches, pounds());
        QCOMPARE(places.paid.decimal(), paid.decimal());
        QCOMPARE((places.onUnits + places.inStock + places.overhead + places.writtenOff).decimal(), paid.decimal());
        QCOMPARE(places.astray.minor(), 0);
        // A part that goes missing is found out.
        for (Batch &batch : batches)
            if (batch.left > 0 && batch.unitCost->minor() > 0) {
                --batch.left;
                const MoneyPlaces after = moneyPlaces(units, ofBench, batches, pounds());
                QCOMPARE(after.astray.minor(), batch.unitCost->minor());
                QCOMPARE((after.onUnits + after.inStock + after.overhead + after.writtenOff + after.astray).decimal(),
                         paid.decimal());
                break;
            }
    }
}

QTEST_GUILESS_MAIN(TestMoneyLots)
#include "test_money_lots.moc"
