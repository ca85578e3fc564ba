#include "model/sums/money/break_even.h"
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
qint64 netBySlowMeans(qint64 price, qint64 carriage, qint64 costs, const QList<FeeRule> &rules, const Rate &tax)
{
    // Half up by size: away from zero, also for reductions.
    const auto share = [](qint64 rate, qint64 part) {
        const qint64 size = (2 * std::abs(rate) * part + 1'000'000) / 2'000'000;
        return rate < 0 ? -size : size;
    };
    const qint64 charged = share(tax.millionths(), price + carriage);
    qint64 net = price + carriage - costs;
    for (const FeeRule &each : rules) {
        const qint64 base =
            price + (each.base == FeeBase::Item ? 0 : carriage) + (each.base == FeeBase::ItemCarriageAndTax ? charged : 0);
        const qint64 from = each.tierFrom ? each.tierFrom->minor() : 0;
        if (from > 0 && base <= from)
            continue;
        const qint64 part = (each.tierTo && each.tierTo->minor() < base ? each.tierTo->minor() : base) - from;
        qint64 fee = part > 0 ? share(each.rate, part) : 0;
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
    void promotionAndReturns();
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

void TestSumsFees::promotionAndReturns()
{
    FeeRule promotion = rule("3", FeeBase::ItemAndCarriage);
    promotion.kind = FeeKind::Promotion;
    promotion.givenBack = true;
    FeeRule payment = rule("2", FeeBase::ItemAndCarriage, "0.25");
    payment.kind = FeeKind::Payment;
    const QList<FeeRule> rules{rule("13", FeeBase::ItemAndCarriage, "0.35"), promotion, payment};
    // By hand on 195: 25.70, 5.85, 4.15; the promotion's only where the sale came through it.
    const auto used = feesOf(rules, {money("180"), money("15"), {}, Promotion::Counted});
    const auto notUsed = feesOf(rules, {money("180"), money("15"), {}, Promotion::NotUsed});
    QCOMPARE(used->total.decimal(), QStringLiteral("35.70"));
    QCOMPARE(notUsed->total.decimal(), QStringLiteral("29.85"));
    QCOMPARE(notUsed->lines.size(), 2);
    const auto schedule = FeeSchedule::of(rules);
    testing::wantOk(schedule);
    QCOMPARE(schedule->total(18'000, 1'500), 3'570);
    QCOMPARE(schedule->keptOnReturn(18'000, 1'500), 2'985);
    QVERIFY(*breakEven(money("100"), rules, {}, {}, Promotion::NotUsed) < *breakEven(money("100"), rules));
    // Sums past 64-bit products: 12.8 % of 50,000,000,000,000.00 to the minor unit.
    QCOMPARE(FeeSchedule::shareOf(128'000, 5'000'000'000'000'000), 640'000'000'000'000);
    QCOMPARE(FeeSchedule::shareOf(-20'000, 25), -1); // 0.5 by size
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
    // A fixed part given back above a tier: 10 %, and 5.00 less from 100 on. At 100 exactly it is not entered.
    FeeRule less = rule("0", FeeBase::Item, "-5");
    less.tierFrom = money("100");
    QCOMPARE(breakEven(money("91"), {rule("10", FeeBase::Item), less})->decimal(), QStringLiteral("100.01"));
    // Half a percent on top of a hundred, refused however far; a tax below zero makes no sense.
    QVERIFY(!breakEven(money("1"), {}, {}, Rate(-1)).ok());
    // A reduction of the fee: 10 % less 2 % of the price.
    FeeRule back = rule("2", FeeBase::Item);
    back.rate = -back.rate;
    QCOMPARE(breakEven(money("92"), {rule("10", FeeBase::Item), back})->decimal(), QStringLiteral("100.00"));
}

void TestSumsFees::breakEvenAgainstEveryPrice()
{
    // Against brute force over every minor unit for 10,000 random rule sets, with the fees worked out a second time above: tiers,
    // jumps up and down at their ends, caps, minimums, reductions, taxes on top, and rates that take everything.
    QRandomGenerator random(20261125);
    const auto below = [&random](int bound) { return static_cast<qint64>(random.bounded(bound)); };
    int jumped = 0;
    int downward = 0;
    int refused = 0;
    for (int round = 0; round < 10'000; ++round) {
        QList<FeeRule> rules;
        bool contrary = false;
        for (qint64 i = below(4); i >= 0; --i) {
            FeeRule each;
            each.name = QStringLiteral("rule %1").arg(i);
            each.base = std::array{FeeBase::Item, FeeBase::ItemAndCarriage, FeeBase::ItemCarriageAndTax}.at(
                static_cast<std::size_t>(below(3)));
            each.rate = below(12) == 0 ? below(1'100'000) : below(250'000);
            if (below(6) == 0)
                each.rate = -below(60'000);
            if (below(2))
                each.fixed = minor(below(8) == 0 ? -below(300) : below(600));
            if (below(2) == 0)
                each.tierFrom = minor(below(3'000));
            if (below(3) == 0)
                each.tierTo = minor((each.tierFrom ? each.tierFrom->minor() : 0) + 1 + below(3'000));
            if (below(4) == 0)
                each.minimum = minor(below(600));
            if (below(4) == 0)
                each.cap = minor((each.minimum ? each.minimum->minor() : 0) + below(900));
            contrary = contrary || (each.tierFrom && each.rate < 0 && each.fixed && each.fixed->minor() > 0) ||
                       (each.tierFrom && each.rate > 0 && each.fixed && each.fixed->minor() < 0);
            rules << each;
        }
        const qint64 costs = below(4'000);
        const qint64 carriage = below(2) ? below(600) : 0;
        const Rate tax(below(2) ? 0 : below(250'000));
        constexpr qint64 looked = 30'000;
        qint64 least = 0;
        while (least < looked && netBySlowMeans(least, carriage, costs, rules, tax) < 0)
            ++least;
        const auto price = breakEven(minor(costs), rules, minor(carriage), tax);
        if (least == looked) { // none so low: it is refused, or it lies further up and holds
            if (!price) {
                ++refused;
                for (qint64 far = looked; far < 100'000'000; far += far / 7 + 1)
                    QVERIFY(netBySlowMeans(far, carriage, costs, rules, tax) < 0);
            } else {
                QVERIFY(price->minor() >= looked);
                QVERIFY(netBySlowMeans(price->minor(), carriage, costs, rules, tax) >= 0);
                QVERIFY(netBySlowMeans(price->minor() - 1, carriage, costs, rules, tax) < 0);
            }
            continue;
        }
        testing::wantOk(price);
        QCOMPARE(price->minor(), least);
        bool fallsAgain = false;
        for (qint64 further = least; further < least + 3'000 && !fallsAgain; ++further)
            fallsAgain = netBySlowMeans(further, carriage, costs, rules, tax) < 0;
        jumped += fallsAgain;
        downward += contrary;
        const qint64 charged = FeeSchedule::shareOf(tax.millionths(), least + carriage);
        const auto fees = feesOf(rules, {minor(least), minor(carriage), minor(charged), Promotion::Counted});
        QCOMPARE(least + carriage - costs - fees->total.minor(), netBySlowMeans(least, carriage, costs, rules, tax));
    }
    // The hard cases were among them.
    QVERIFY2(
        jumped > 200 && downward > 200 && refused > 20,
        qPrintable(
            QStringLiteral("%1 fell again, %2 went against their rate, %3 were refused").arg(jumped).arg(downward).arg(refused)));
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
