#include "model/values/money.h"
#include "tests/testing.h"

#include <QRandomGenerator>

#include <cmath>
#include <limits>

using namespace ts;
using ts::testing::refusal;

namespace {

Currency currency(const char *code)
{
    return *Currency::parse(QString::fromLatin1(code));
}

Money pounds(qint64 pence)
{
    return {pence, currency("GBP")};
}

QStringList decimals(const QList<Money> &shares)
{
    QStringList texts;
    for (const Money &share : shares)
        texts << share.decimal();
    return texts;
}

} // namespace

class TestValuesSharing : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void roundsAsNamed_data();
    void roundsAsNamed();
    void scalesWithoutRunningOver();
    void sharesTheLotOfTheTrade_data();
    void sharesTheLotOfTheTrade();
    void sharesExactly();
    void refusesSharesThatCannotBe();
    void ratesAreExact_data();
    void ratesAreExact();
};

void TestValuesSharing::roundsAsNamed_data()
{
    QTest::addColumn<qint64>("minor");
    QTest::addColumn<qint64>("numerator");
    QTest::addColumn<qint64>("denominator");
    QTest::addColumn<qint64>("halfUp");
    QTest::addColumn<qint64>("down");
    QTest::addColumn<qint64>("up");
    // Worked by hand from the definition of each rounding.
    QTest::newRow("a sixth of 35") << 35LL << 1LL << 6LL << 6LL << 5LL << 6LL;
    QTest::newRow("a half") << 5LL << 1LL << 2LL << 3LL << 2LL << 3LL;
    QTest::newRow("just under a half") << 149LL << 1LL << 100LL << 1LL << 1LL << 2LL;
    QTest::newRow("even") << 600LL << 1LL << 6LL << 100LL << 100LL << 100LL;
    QTest::newRow("money back mirrors money paid") << -5LL << 1LL << 2LL << -3LL << -2LL << -3LL;
    QTest::newRow("both signs") << 5LL << -1LL << -2LL << 3LL << 2LL << 3LL;
    QTest::newRow("none") << 0LL << 7LL << 3LL << 0LL << 0LL << 0LL;
}

void TestValuesSharing::roundsAsNamed()
{
    QFETCH(const qint64, minor);
    QFETCH(const qint64, numerator);
    QFETCH(const qint64, denominator);
    QTEST(pounds(minor).scaled(numerator, denominator, Rounding::HalfUp).minor(), "halfUp");
    QTEST(pounds(minor).scaled(numerator, denominator, Rounding::Down).minor(), "down");
    QTEST(pounds(minor).scaled(numerator, denominator, Rounding::Up).minor(), "up");
}

void TestValuesSharing::scalesWithoutRunningOver()
{
    // 9e15 × 999,999,999 does not fit 64 bits; the answer does: 9e15 × (1 − 1e-9) = 9e15 − 9e6
    QCOMPARE(pounds(9'000'000'000'000'000).scaled(999'999'999, 1'000'000'000, Rounding::Down).minor(), 8'999'999'991'000'000LL);
}

void TestValuesSharing::sharesTheLotOfTheTrade_data()
{
    QTest::addColumn<QList<double>>("weights");
    QTest::addColumn<QStringList>("shares");
    // The example lot of 120 in ../shared/trade/trade.md 4.5. By residual value plain rounding gives 75.63, 30.25, 10.08 and
    // 4.03, a penny short; by largest remainder it goes to the third, whose 10.08403 lost the most (0.00403).
    QTest::newRow("by value") << QList<double>{150, 60, 25, 5}
                              << QStringList{QStringLiteral("75.00"), QStringLiteral("30.00"), QStringLiteral("12.50"),
                                             QStringLiteral("2.50")};
    QTest::newRow("equal") << QList<double>{1, 1, 1, 1}
                           << QStringList{QStringLiteral("30.00"), QStringLiteral("30.00"), QStringLiteral("30.00"),
                                          QStringLiteral("30.00")};
    QTest::newRow("by weight") << QList<double>{9, 6, 4, 3}
                               << QStringList{QStringLiteral("49.09"), QStringLiteral("32.73"), QStringLiteral("21.82"),
                                              QStringLiteral("16.36")};
    QTest::newRow("by residual") << QList<double>{150, 60, 20, 8}
                                 << QStringList{QStringLiteral("75.63"), QStringLiteral("30.25"), QStringLiteral("10.09"),
                                                QStringLiteral("4.03")};
}

void TestValuesSharing::sharesTheLotOfTheTrade()
{
    QFETCH(const QList<double>, weights);
    QFETCH(const QStringList, shares);
    const auto found = pounds(12000).shared(weights);
    QVERIFY2(found.ok(), qPrintable(refusal(found)));
    QCOMPARE(decimals(*found), shares);
}

void TestValuesSharing::sharesExactly()
{
    // A tie goes to the earlier; a weight of 0 gets nothing; money back is shared as money paid.
    QCOMPARE(decimals(*pounds(100).shared({1, 1, 1})),
             (QStringList{QStringLiteral("0.34"), QStringLiteral("0.33"), QStringLiteral("0.33")}));
    QCOMPARE(decimals(*pounds(-100).shared({1, 1, 1})),
             (QStringList{QStringLiteral("-0.34"), QStringLiteral("-0.33"), QStringLiteral("-0.33")}));
    QCOMPARE(decimals(*pounds(5).shared({0, 3})), (QStringList{QStringLiteral("0.00"), QStringLiteral("0.05")}));
    // 0.1 : 0.2 : 0.3 is 1 : 2 : 3, however a double writes them
    QCOMPARE(decimals(*pounds(1001).shared({0.1, 0.2, 0.3})), decimals(*pounds(1001).shared({1, 2, 3})));
    QCOMPARE(decimals(*pounds(1001).shared({1e-90, 2e-90, 3e-90})), decimals(*pounds(1001).shared({1, 2, 3})));
    QRandomGenerator random(45);
    for (int i = 0; i < 3000; ++i) {
        QList<double> weights;
        for (int n = random.bounded(1, 12); n > 0; --n)
            weights << (random.bounded(4) ? random.bounded(1e6) : random.bounded(3));
        weights << 1;
        const Money whole = pounds(random.bounded(qint64{-1'000'000'000}, qint64{1'000'000'000}));
        const auto shares = whole.shared(weights);
        QVERIFY(shares.ok());
        QCOMPARE(shares->size(), weights.size());
        double sum = 0;
        for (const double weight : weights)
            sum += weight;
        Money back;
        for (qsizetype k = 0; k < weights.size(); ++k) {
            back += shares->at(k);
            // a share is never a whole penny or more from its quota: what the method promises
            const double quota = static_cast<double>(whole.minor()) * weights[k] / sum;
            QVERIFY(std::abs(static_cast<double>(shares->at(k).minor()) - quota) < 1.0 + 1e-3);
        }
        QCOMPARE(back, whole);
    }
}

void TestValuesSharing::refusesSharesThatCannotBe()
{
    QVERIFY(refusal(pounds(100).shared({})).contains(QStringLiteral("nothing to share")));
    QVERIFY(refusal(pounds(100).shared({0, 0})).contains(QStringLiteral("all weights are 0")));
    QVERIFY(refusal(pounds(100).shared({1, -0.5})).contains(QStringLiteral("-0.5")));
    QVERIFY(!pounds(100).shared({1, std::numeric_limits<double>::quiet_NaN()}).ok());
    QVERIFY(!pounds(100).shared({1, std::numeric_limits<double>::infinity()}).ok());
}

void TestValuesSharing::ratesAreExact_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<qint64>("millionths"); // -1: refused
    QTest::addColumn<QString>("back");
    const auto row = [](const char *text, qint64 millionths, const char *back) {
        QTest::newRow(*text ? text : "nothing") << QString::fromUtf8(text) << millionths << QString::fromUtf8(back);
    };
    row("12.8 %", 128000, "12.8");
    row("12,8%", 128000, "12.8");
    row("12.8", 128000, "12.8");
    row("20", 200000, "20");
    row("0.0001", 1, "0.0001");
    row("16.6667 %", 166667, "16.6667");
    row("-1.5%", -15000, "-1.5");
    row("0", 0, "0");
    row("12.80001", -1, "four decimals");
    row("", -1, "No percentage");
    row("x", -1, "\"x\"");
    row("12 %%", -1, "does not belong");
    row("1 2", -1, "does not belong");
    row("%", -1, "missing");
    row("12.", -1, "missing");
    row("99999999", -1, "too large");
}

void TestValuesSharing::ratesAreExact()
{
    QFETCH(const QString, text);
    QFETCH(const qint64, millionths);
    QFETCH(const QString, back);
    const auto rate = Rate::parse(text);
    if (millionths == -1) {
        QVERIFY(!rate.ok());
        QVERIFY2(refusal(rate).contains(back), qPrintable(refusal(rate)));
        return;
    }
    QVERIFY2(rate.ok(), qPrintable(refusal(rate)));
    QCOMPARE(rate->millionths(), millionths);
    QCOMPARE(rate->percent(), back);
    // 12.8 % of 100.00 is 12.80: the rate itself, by its definition
    QCOMPARE(rate->of(pounds(1'000'000), Rounding::HalfUp).minor(), millionths);
}

QTEST_GUILESS_MAIN(TestValuesSharing)
#include "test_values_sharing.moc"
