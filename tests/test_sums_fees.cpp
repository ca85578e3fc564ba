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

} // namespace

class TestSumsFees : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void workedFees();
    void feeShapes();
    void feesOnTheirDay();
    void feesOfAnotherCurrency();
    void breakEvenKnown();
    void breakEvenAgainstEveryPrice();
    void breakEvenRefused();
};

void TestSumsFees::workedFees()
{
    // Worked example (restorer's trade notes, maximum bid): price 180, carriage 15; 13 % + 0.35 and 3 %, both on 195: 25.70
    // + 5.85.
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

void TestSumsFees::feeShapes()
{
    const auto feeAt = [](const FeeRule &each, const char *item) {
        return feesOf({each}, {money(item), money("0"), {}})->total.decimal();
    };
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
    QCOMPARE(feesOf({lower, upper}, {money("100"), {}, {}})->total.decimal(),
             QStringLiteral("10.00")); // the upper tier is not entered
    // A base with tax.
    QCOMPARE(feesOf({rule("10", FeeBase::ItemCarriageAndTax)}, {money("100"), money("10"), money("22")})->total.decimal(),
             QStringLiteral("13.20"));
    QCOMPARE(feesOf({}, {money("100"), {}, {}})->total.minor(), 0);
}

void TestSumsFees::feesOnTheirDay()
{
    BenchFile bench;
    const Id<Channel> channel{QUuid::createUuid()};
    for (const auto &[from, to, percent] :
         {std::tuple{QDate(), QDate(2026, 3, 31), "10"}, {QDate(2026, 4, 1), QDate(), "12.8"}}) {
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

void TestSumsFees::feesOfAnotherCurrency()
{
    FeeRule foreign = rule("10", FeeBase::Item);
    foreign.name = QStringLiteral("listing");
    foreign.fixed = *Money::parse(u"0.30", *Currency::parse(u"EUR"));
    const QString sentence = testing::refusal(feesOf({foreign}, {money("100"), {}, {}}));
    QVERIFY2(sentence.contains(QStringLiteral("listing")) && sentence.contains(QStringLiteral("EUR")), qPrintable(sentence));
    QVERIFY(!breakEven(money("10"), {foreign}).ok());
    QVERIFY(!feesOf({}, {money("1"), *Money::parse(u"1 EUR", pounds()), {}}).ok());
}

void TestSumsFees::breakEvenKnown()
{
    QCOMPARE(breakEven(money("86.87"), {})->decimal(), QStringLiteral("86.87"));
    // By hand: P − 0.128 P − 0.30 >= 68.40 gives P >= 78.7844; at 78.78 the fee is 10.08 + 0.30 and 68.40 is left.
    QCOMPARE(breakEven(money("68.40"), {rule("12.8", FeeBase::Item, "0.30")})->decimal(), QStringLiteral("78.78"));
    QCOMPARE(breakEven(money("10"), {rule("13", FeeBase::ItemAndCarriage)}, money("15"))->minor(), 0); // carriage alone covers
    // A fee with tax in its base: 10 % of 1.2 P is 12 % of P; 88 / 0.88 = 100.
    QCOMPARE(breakEven(money("88"), {rule("10", FeeBase::ItemCarriageAndTax)}, {}, *Rate::parse(u"20"))->decimal(),
             QStringLiteral("100.00"));
    // Half of everything and half again of the item: nothing is left however high; but a cap ends that.
    QVERIFY(!breakEven(money("1"), {rule("50", FeeBase::Item), rule("50", FeeBase::Item)}).ok());
    QCOMPARE(breakEven(money("1"), {rule("50", FeeBase::Item), rule("50", FeeBase::Item, nullptr, "5")})->decimal(),
             QStringLiteral("12.00"));
    // A reduction of the fee: 10 % less 2 % of the price.
    FeeRule back = rule("2", FeeBase::Item);
    back.rate = -back.rate;
    QCOMPARE(breakEven(money("92"), {rule("10", FeeBase::Item), back})->decimal(), QStringLiteral("100.00"));
}

void TestSumsFees::breakEvenAgainstEveryPrice()
{
    // Against brute force over every minor unit, with the fees worked out a second time above.
    QRandomGenerator random(20261125);
    const auto below = [&random](int bound) { return static_cast<qint64>(random.bounded(bound)); };
    int jumped = 0;
    for (int round = 0; round < 800; ++round) {
        QList<FeeRule> rules;
        for (qint64 i = below(4); i >= 0; --i) {
            FeeRule each;
            each.name = QStringLiteral("rule %1").arg(i);
            each.base = below(2) ? FeeBase::Item : FeeBase::ItemAndCarriage;
            each.rate = below(250'000);
            if (below(2))
                each.fixed = minor(below(1'500));
            if (below(2) == 0)
                each.tierFrom = minor(below(8'000));
            if (below(3) == 0)
                each.tierTo = minor((each.tierFrom ? each.tierFrom->minor() : 0) + 1 + below(8'000));
            if (below(4) == 0)
                each.minimum = minor(below(1'500));
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
    QVERIFY2(jumped > 20,
             qPrintable(QStringLiteral("only %1 rule sets fell again").arg(jumped))); // the hard cases were among them
}

void TestSumsFees::breakEvenRefused()
{
    const QString sentence =
        testing::refusal(breakEven(money("10"), {rule("60", FeeBase::Item), rule("45", FeeBase::ItemAndCarriage)}));
    QVERIFY2(sentence.contains(QStringLiteral("105 %")), qPrintable(sentence));
    QVERIFY(!breakEven(money("10"), {rule("90", FeeBase::ItemCarriageAndTax)}, {}, *Rate::parse(u"20")).ok());
    // All of it above 100 leaves a price below: 40 / 0.9.
    FeeRule lower = rule("10", FeeBase::Item);
    FeeRule upper = rule("95", FeeBase::Item);
    upper.tierFrom = money("100");
    QCOMPARE(breakEven(money("40"), {lower, upper})->decimal(), QStringLiteral("44.44"));
    QVERIFY(!breakEven(money("95"), {lower, upper}).ok());
    // A tier that takes everything holds the net still; above it the price goes on. Out of 1000: 10 % and all between 100 and
    // 1000.
    upper.rate = 900'000;
    upper.tierTo = money("1000");
    QCOMPARE(breakEven(money("95"), {lower, upper})->decimal(), QStringLiteral("1005.56")); // 90 + 0.9 × 5.56 = 95.004
    // Very large sums come out too.
    QCOMPARE(breakEven(minor(4'500'000'000'000'000), {rule("10", FeeBase::Item)})->minor(), 5'000'000'000'000'000);
}

QTEST_GUILESS_MAIN(TestSumsFees)
#include "test_sums_fees.moc"
