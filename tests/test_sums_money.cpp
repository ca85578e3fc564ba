#include "model/records/settings.h"
#include "model/sums/cost_sheet.h"
#include "model/sums/fees.h"
#include "tests/testing.h"

#include <QRandomGenerator>

using namespace ts;

namespace {

const Currency &pounds()
{
    static const Currency currency = *Currency::parse(u"GBP");
    return currency;
}

Money money(const char *text)
{
    return *Money::parse(QString::fromUtf8(text), pounds());
}

Money minor(qint64 amount)
{
    return {amount, pounds()};
}

FeeRule rule(const char *percent, FeeBase base, const char *fixed = nullptr, const char *cap = nullptr)
{
    FeeRule made;
    made.id = Id<FeeRule>{QUuid::createUuid()};
    made.name = QString::fromUtf8(percent);
    made.rate = Rate::parse(made.name)->millionths();
    made.base = base;
    if (fixed)
        made.fixed = money(fixed);
    if (cap)
        made.cap = money(cap);
    return made;
}

template <class R>
R &added(UnitFile &file)
{
    R record;
    record.id = Id<R>{QUuid::createUuid()};
    record.at = QDateTime(QDate(2026, 11, 20), QTime(10, 0), Qt::UTC);
    record.unit = file.unit.id;
    file.all<R>() << record;
    return file.all<R>().last();
}

void spend(UnitFile &file, SpendKind kind, const char *amount, Flow flow = Flow::Out)
{
    auto &record = added<Spend>(file);
    record.text = toWord(kind);
    record.kind = kind;
    record.flow = flow;
    record.amount = money(amount);
}

void need(UnitFile &file, NeedState state, const char *price, int quantity = 1)
{
    auto &record = added<Need>(file);
    record.text = QStringLiteral("part");
    record.state = state;
    record.quantity = quantity;
    if (price)
        record.price = money(price);
}

void comparable(UnitFile &file, const char *price, bool asking = false, std::optional<bool> working = {})
{
    auto &record = added<Comparable>(file);
    record.price = money(price);
    record.asking = asking;
    record.working = working;
}

void set(BenchFile &bench, const QString &name, const char *value)
{
    Setting setting;
    setting.name = name;
    setting.value = QString::fromUtf8(value);
    bench.all<Setting>() << setting;
}

/// The net of a sale, worked out here from the rules' definition in whole numbers, apart from the code under test.
qint64 netBySlowMeans(qint64 price, qint64 carriage, qint64 costs, const QList<FeeRule> &rules)
{
    qint64 net = price + carriage - costs;
    for (const FeeRule &each : rules) {
        const qint64 base = price + (each.base == FeeBase::Item ? 0 : carriage);
        const qint64 from = each.tierFrom ? each.tierFrom->minor() : 0;
        if (from > 0 && base <= from)
            continue;
        const qint64 part = (each.tierTo && each.tierTo->minor() < base ? each.tierTo->minor() : base) - from;
        qint64 fee = part > 0 ? (2 * each.rate * part + 1'000'000) / 2'000'000 : 0; // half up, for rates from 0
        fee += each.fixed ? each.fixed->minor() : 0;
        if (each.minimum && fee < each.minimum->minor())
            fee = each.minimum->minor();
        if (each.cap && fee > each.cap->minor())
            fee = each.cap->minor();
        net -= fee;
    }
    return net;
}

void wantSumsRight(const CostSheet &sheet)
{
    for (const bool planned : {true, false}) {
        const auto at = [&](CostKey key) { return planned ? sheet.planned(key) : sheet.toDate(key); };
        const auto orNone = [&](CostKey key) { return at(key).value_or(Money()); };
        Money spent(0, sheet.currency);
        for (const CostLine &line : sheet.lines)
            if (line.key < CostKey::Spent)
                spent += (planned ? line.planned : line.toDate).value_or(Money());
        if (at(CostKey::Spent))
            QCOMPARE(at(CostKey::Spent)->minor(), spent.minor());
        if (at(CostKey::EverythingButHours))
            QCOMPARE(at(CostKey::EverythingButHours)->minor(), (spent + orNone(CostKey::SellingFee) + orNone(CostKey::CarriageOut)).minor());
        if (at(CostKey::ProfitBeforeHours))
            QCOMPARE(at(CostKey::ProfitBeforeHours)->minor(), (orNone(CostKey::Resale) - orNone(CostKey::EverythingButHours)).minor());
    }
}

} // namespace

class TestSumsMoney : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void workedFees();
    void feeShapes();
    void feesOnTheirDay();
    void feesOfAnotherCurrency();
    void breakEvenKnown();
    void breakEvenAgainstEveryPrice();
    void breakEvenRefused();
    void moneyOut();
    void costSheetAdds();
    void costSheetWithoutPlan();
    void costSheetSold();
};

void TestSumsMoney::workedFees()
{
    // Worked example (restorer's trade notes, maximum bid): price 180, carriage 15; 13 % + 0.35 and 3 %, both on 195: 25.70 + 5.85.
    const QList<FeeRule> rules{rule("13", FeeBase::ItemAndCarriage, "0.35"), rule("3", FeeBase::ItemAndCarriage)};
    const auto fees = feesOf(rules, {money("180"), money("15"), {}});
    testing::wantOk(fees);
    QCOMPARE(fees->lines.at(0).amount.decimal(), QStringLiteral("25.70"));
    QCOMPARE(fees->lines.at(1).amount.decimal(), QStringLiteral("5.85"));
    QCOMPARE(fees->total.decimal(), QStringLiteral("31.55"));
    // The same notes, fee structures: 13 % on 180 + 15 is 14.1 % of the item.
    const auto one = feesOf({rule("13", FeeBase::ItemAndCarriage)}, {money("180"), money("15"), {}});
    QCOMPARE(qRound(static_cast<double>(one->total.minor()) / 180.0 * 10), 141);
    QCOMPARE(feeText(rules), QStringLiteral("13 % + 0.35; 3 %"));
}

void TestSumsMoney::feeShapes()
{
    const auto feeAt = [](const FeeRule &each, const char *item) { return feesOf({each}, {money(item), money("0"), {}})->total.decimal(); };
    // Half up to the minor unit: 12.5 % of 0.20 is 0.025.
    QCOMPARE(feeAt(rule("12.5", FeeBase::Item), "0.20"), QStringLiteral("0.03"));
    QCOMPARE(feeAt(rule("12.4", FeeBase::Item), "0.20"), QStringLiteral("0.02"));
    QCOMPARE(feeAt(rule("10", FeeBase::Item, "0.30", "5"), "100"), QStringLiteral("5.00"));
    FeeRule least = rule("10", FeeBase::Item);
    least.minimum = money("1.50");
    QCOMPARE(feeAt(least, "3"), QStringLiteral("1.50"));
    QCOMPARE(feeAt(least, "30"), QStringLiteral("3.00"));
    // Tiers hold for the part of the base between their ends.
    FeeRule lower = rule("10", FeeBase::Item);
    lower.tierTo = money("100");
    FeeRule upper = rule("2", FeeBase::Item, "1");
    upper.tierFrom = money("100");
    QCOMPARE(feesOf({lower, upper}, {money("250"), {}, {}})->total.decimal(), QStringLiteral("14.00")); // 10 + 2 % of 150 + 1
    QCOMPARE(feesOf({lower, upper}, {money("100"), {}, {}})->total.decimal(), QStringLiteral("10.00")); // the upper tier is not entered
    // A base with tax.
    QCOMPARE(feesOf({rule("10", FeeBase::ItemCarriageAndTax)}, {money("100"), money("10"), money("22")})->total.decimal(), QStringLiteral("13.20"));
    QCOMPARE(feesOf({}, {money("100"), {}, {}})->total.minor(), 0);
}

void TestSumsMoney::feesOnTheirDay()
{
    BenchFile bench;
    const Id<Channel> channel{QUuid::createUuid()};
    for (const auto &[from, to, percent] : {std::tuple{QDate(), QDate(2026, 3, 31), "10"}, {QDate(2026, 4, 1), QDate(), "12.8"}}) {
        FeeRule each = rule(percent, FeeBase::Item);
        each.channel = channel;
        each.validFrom = from;
        each.validTo = to;
        bench.all<FeeRule>() << each;
    }
    FeeRule elsewhere = rule("50", FeeBase::Item);
    elsewhere.channel = Id<Channel>{QUuid::createUuid()};
    bench.all<FeeRule>() << elsewhere;
    QCOMPARE(rulesOn(bench, channel, QDate(2026, 3, 31)).size(), 1);
    QCOMPARE(rulesOn(bench, channel, QDate(2026, 3, 31)).first().rate, 100'000);
    QCOMPARE(rulesOn(bench, channel, QDate(2026, 4, 1)).first().rate, 128'000);
}

void TestSumsMoney::feesOfAnotherCurrency()
{
    FeeRule foreign = rule("10", FeeBase::Item);
    foreign.name = QStringLiteral("listing");
    foreign.fixed = *Money::parse(u"0.30", *Currency::parse(u"EUR"));
    const QString sentence = testing::refusal(feesOf({foreign}, {money("100"), {}, {}}));
    QVERIFY2(sentence.contains(QStringLiteral("listing")) && sentence.contains(QStringLiteral("EUR")), qPrintable(sentence));
    QVERIFY(!breakEven(money("10"), {foreign}).ok());
    QVERIFY(!feesOf({}, {money("1"), *Money::parse(u"1 EUR", pounds()), {}}).ok());
}

void TestSumsMoney::breakEvenKnown()
{
    QCOMPARE(breakEven(money("86.87"), {})->decimal(), QStringLiteral("86.87"));
    // By hand: P − 0.128 P − 0.30 >= 68.40 gives P >= 78.7844; at 78.78 the fee is 10.08 + 0.30 and 68.40 is left.
    QCOMPARE(breakEven(money("68.40"), {rule("12.8", FeeBase::Item, "0.30")})->decimal(), QStringLiteral("78.78"));
    QCOMPARE(breakEven(money("10"), {rule("13", FeeBase::ItemAndCarriage)}, money("15"))->minor(), 0); // carriage alone covers
    // A fee with tax in its base: 10 % of 1.2 P is 12 % of P; 88 / 0.88 = 100.
    QCOMPARE(breakEven(money("88"), {rule("10", FeeBase::ItemCarriageAndTax)}, {}, *Rate::parse(u"20"))->decimal(), QStringLiteral("100.00"));
    // Half of everything and half again of the item: nothing is left however high; but a cap ends that.
    QVERIFY(!breakEven(money("1"), {rule("50", FeeBase::Item), rule("50", FeeBase::Item)}).ok());
    QCOMPARE(breakEven(money("1"), {rule("50", FeeBase::Item), rule("50", FeeBase::Item, nullptr, "5")})->decimal(), QStringLiteral("12.00"));
    // A reduction of the fee: 10 % less 2 % of the price.
    FeeRule back = rule("2", FeeBase::Item);
    back.rate = -back.rate;
    QCOMPARE(breakEven(money("92"), {rule("10", FeeBase::Item), back})->decimal(), QStringLiteral("100.00"));
}

void TestSumsMoney::breakEvenAgainstEveryPrice()
{
    // Against brute force over every minor unit, with the fees worked out a second time above.
    QRandomGenerator random(20261125);
    const auto below = [&random](int bound) { return static_cast<qint64>(random.bounded(bound)); };
    int jumped = 0;
    for (int round = 0; round < 600; ++round) {
        QList<FeeRule> rules;
        for (qint64 i = below(4); i >= 0; --i) {
            FeeRule each;
            each.name = QStringLiteral("rule %1").arg(i);
            each.base = below(2) ? FeeBase::Item : FeeBase::ItemAndCarriage;
            each.rate = below(250'000);
            if (below(2))
                each.fixed = minor(below(300));
            if (below(3) == 0)
                each.tierFrom = minor(below(8'000));
            if (below(3) == 0)
                each.tierTo = minor((each.tierFrom ? each.tierFrom->minor() : 0) + 1 + below(8'000));
            if (below(4) == 0)
                each.minimum = minor(below(500));
            if (below(4) == 0)
                each.cap = minor((each.minimum ? each.minimum->minor() : 0) + below(2'000));
            rules << each;
        }
        const qint64 costs = below(12'000);
        const qint64 carriage = below(2) ? below(1'500) : 0;
        qint64 least = 0;
        while (netBySlowMeans(least, carriage, costs, rules) < 0)
            ++least;
        bool fallsAgain = false;
        for (qint64 price = least; price < least + 9'000; ++price)
            fallsAgain = fallsAgain || netBySlowMeans(price, carriage, costs, rules) < 0;
        jumped += fallsAgain;
        const auto price = breakEven(minor(costs), rules, minor(carriage));
        testing::wantOk(price);
        QCOMPARE(price->minor(), least);
        const auto fees = feesOf(rules, {minor(least), minor(carriage), {}});
        QCOMPARE(least + carriage - costs - fees->total.minor(), netBySlowMeans(least, carriage, costs, rules));
    }
    QVERIFY2(jumped > 20, qPrintable(QStringLiteral("only %1 rule sets fell again").arg(jumped))); // the hard cases were among them
}

void TestSumsMoney::breakEvenRefused()
{
    const QString sentence = testing::refusal(breakEven(money("10"), {rule("60", FeeBase::Item), rule("45", FeeBase::ItemAndCarriage)}));
    QVERIFY2(sentence.contains(QStringLiteral("105 %")), qPrintable(sentence));
    QVERIFY(!breakEven(money("10"), {rule("90", FeeBase::ItemCarriageAndTax)}, {}, *Rate::parse(u"20")).ok());
    // All of it above 100 leaves a price below: 40 / 0.9.
    FeeRule lower = rule("10", FeeBase::Item);
    FeeRule upper = rule("95", FeeBase::Item);
    upper.tierFrom = money("100");
    QCOMPARE(breakEven(money("40"), {lower, upper})->decimal(), QStringLiteral("44.44"));
    QVERIFY(!breakEven(money("95"), {lower, upper}).ok());
}

void TestSumsMoney::moneyOut()
{
    UnitFile file;
    spend(file, SpendKind::Purchase, "30");
    spend(file, SpendKind::CarriageIn, "8.40");
    spend(file, SpendKind::Refund, "5", Flow::In);
    spend(file, SpendKind::Sale, "120", Flow::In);
    spend(file, SpendKind::Deposit, "20", Flow::In);
    need(file, NeedState::Needed, "2.50");
    need(file, NeedState::Ordered, "0.85", 2);
    need(file, NeedState::Here, "1.20");
    need(file, NeedState::Fitted, "3");
    need(file, NeedState::Fitted, nullptr);
    auto &foreign = added<Spend>(file);
    foreign.text = QStringLiteral("belt");
    foreign.kind = SpendKind::Part;
    foreign.amount = *Money::parse(u"4.00 EUR", pounds());
    auto &converted = added<Spend>(file);
    converted.kind = SpendKind::Part;
    converted.amount = *Money::parse(u"10.00 EUR", pounds());
    converted.inBenchCurrency = money("8.62");
    auto &removed = added<Spend>(file);
    removed.amount = money("999");
    removed.removed = true;

    const Spent spent = spentOn(file, pounds());
    // 30 + 8.40 − 5 + 2 × 0.85 + 1.20 + 3 + 8.62; the foreign 4.00 has no rate.
    QCOMPARE(spent.total.decimal(), QStringLiteral("47.92"));
    QCOMPARE(spent.toCome.decimal(), QStringLiteral("2.50"));
    QCOMPARE(spent.unpriced, 1);
    QCOMPARE(spent.without.size(), 1);
    QCOMPARE(spent.without.first().text, QStringLiteral("belt"));
    QCOMPARE(spentAs(file, pounds(), {SpendKind::Refund, SpendKind::Purchase}).decimal(), QStringLiteral("25.00"));
}

void TestSumsMoney::costSheetAdds()
{
    UnitFile file;
    file.unit.id = Id<Unit>{QUuid::createUuid()};
    BenchFile bench;
    set(bench, settings::currency, "GBP");
    set(bench, settings::hourlyRate, "12.00");
    set(bench, settings::overheadRate, "0.50");
    set(bench, settings::channel, "auction house");
    Channel channel;
    channel.id = Id<Channel>{QUuid::createUuid()};
    channel.name = QStringLiteral("Auction house");
    bench.all<Channel>() << channel;
    FeeRule fee = rule("12.8", FeeBase::Item, "0.30");
    fee.channel = channel.id;
    bench.all<FeeRule>() << fee;

    spend(file, SpendKind::Purchase, "30");
    spend(file, SpendKind::CarriageIn, "8.40");
    spend(file, SpendKind::Consumable, "0.90");
    spend(file, SpendKind::OutsideWork, "4");
    spend(file, SpendKind::Other, "1.10");
    spend(file, SpendKind::Refund, "2", Flow::In);
    need(file, NeedState::Fitted, "6.15");
    need(file, NeedState::Needed, "3.50");
    auto &step = added<Step>(file);
    step.text = QStringLiteral("cleaned the clutch");
    step.minutes = 175; // 2 h 55 m
    auto &plan = added<Plan>(file);
    plan.minutes = 270;
    plan.parts = money("12");
    plan.resaleLikely = money("115");
    plan.carriageOut = money("11");
    plan.packing = money("3.50");
    comparable(file, "110");
    comparable(file, "130.01");
    comparable(file, "120");
    comparable(file, "300", true);        // asked, not paid
    comparable(file, "20", false, false); // sold as not working
    comparable(file, "121", false, true);

    const QDateTime now(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC);
    const CostSheet sheet = costSheet(file, bench, now);
    wantSumsRight(sheet);
    const auto toDate = [&](CostKey key) { return sheet.toDate(key)->decimal(); };
    // By hand from the definitions in cost_sheet.h.
    QCOMPARE(toDate(CostKey::Overhead), QStringLiteral("1.46")); // 0.50 × 175 / 60 = 1.4583
    QCOMPARE(toDate(CostKey::Spent), QStringLiteral("50.01"));   // 30 + 8.40 + 6.15 + 0.90 + 4 + 1.10 − 2 + 1.46
    QCOMPARE(toDate(CostKey::Resale), QStringLiteral("120.50")); // between 120 and 121
    QCOMPARE(sheet.resaleFrom, QStringLiteral("median of 4 sold comparables"));
    QCOMPARE(toDate(CostKey::SellingFee), QStringLiteral("15.72")); // 15.424 + 0.30
    QCOMPARE(toDate(CostKey::CarriageOut), QStringLiteral("14.50"));
    QCOMPARE(toDate(CostKey::EverythingButHours), QStringLiteral("80.23"));
    QCOMPARE(toDate(CostKey::ProfitBeforeHours), QStringLiteral("40.27"));
    QCOMPARE(toDate(CostKey::YourHours), QStringLiteral("35.00"));
    QCOMPARE(toDate(CostKey::EarnedPerHour), QStringLiteral("13.81")); // 40.27 × 60 / 175
    // The break-even price covers to the penny, and one penny less does not.
    const Money price = *sheet.toDate(CostKey::BreakEven);
    const qint64 costs = 5'001 + 1'450;
    QVERIFY(netBySlowMeans(price.minor(), 0, costs, {fee}) >= 0 && netBySlowMeans(price.minor() - 1, 0, costs, {fee}) < 0);

    QCOMPARE(sheet.planned(CostKey::Spent)->decimal(), QStringLiteral("52.65")); // 38.40 + 12 + 0.50 × 4.5
    QCOMPARE(sheet.planned(CostKey::SellingFee)->decimal(), QStringLiteral("15.02"));
    QCOMPARE(sheet.planned(CostKey::YourHours)->decimal(), QStringLiteral("54.00"));
    QCOMPARE(sheet.channel, QStringLiteral("Auction house"));
    QCOMPARE(sheet.line(CostKey::SellingFee)->text, QStringLiteral("Selling fee 12.8 % + 0.30"));
    QCOMPARE(sheet.spent.total.decimal(), QStringLiteral("48.55")); // without the overhead that is only reckoned
    QVERIFY2(sheet.remarks.isEmpty(), qPrintable(sheet.remarks.join(QLatin1Char('\n'))));
}

void TestSumsMoney::costSheetWithoutPlan()
{
    UnitFile file;
    spend(file, SpendKind::Purchase, "12");
    comparable(file, "40");
    const CostSheet sheet = costSheet(file, {}, QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC));
    wantSumsRight(sheet);
    QVERIFY(!sheet.planned(CostKey::Spent) && !sheet.planned(CostKey::ProfitBeforeHours) && !sheet.planned(CostKey::BreakEven));
    QCOMPARE(sheet.toDate(CostKey::ProfitBeforeHours)->decimal(), QStringLiteral("28.00"));
    QVERIFY(!sheet.toDate(CostKey::SellingFee) && !sheet.toDate(CostKey::YourHours) && !sheet.toDate(CostKey::EarnedPerHour));
    QCOMPARE(sheet.resaleFrom, QStringLiteral("1 sold comparable"));
    QVERIFY(sheet.remarks.join(QString()).contains(QStringLiteral("No channel")));
    QVERIFY(!costSheet(UnitFile(), {}, {}).toDate(CostKey::Resale));
}

void TestSumsMoney::costSheetSold()
{
    UnitFile file;
    file.unit.outcome = Outcome::Sold;
    spend(file, SpendKind::Purchase, "30");
    spend(file, SpendKind::Sale, "125", Flow::In);
    spend(file, SpendKind::SellingFee, "16.30");
    spend(file, SpendKind::CarriageOut, "9.90");
    spend(file, SpendKind::Packing, "2.10");
    comparable(file, "500");
    auto &plan = added<Plan>(file);
    plan.carriageOut = money("50");
    plan.resaleLikely = money("90");
    const CostSheet sheet = costSheet(file, {}, QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC));
    wantSumsRight(sheet);
    QCOMPARE(sheet.resaleFrom, QStringLiteral("sold"));
    QCOMPARE(sheet.toDate(CostKey::CarriageOut)->decimal(), QStringLiteral("12.00"));
    QCOMPARE(sheet.toDate(CostKey::ProfitBeforeHours)->decimal(), QStringLiteral("66.70")); // 125 − 30 − 16.30 − 12
    QCOMPARE(sheet.spent.total.decimal(), QStringLiteral("58.30"));
}

QTEST_GUILESS_MAIN(TestSumsMoney)
#include "test_sums_money.moc"
