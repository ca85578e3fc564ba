// The sums of money that can be asked for by themselves, against the trade's worked examples and published guidance.
#include "model/sums/money/margin_tax.h"
#include "model/sums/reckon.h"
#include "tests/testing.h"

#include <QJsonArray>

#include <cmath>

using namespace ts;

namespace {

QMap<QString, QJsonValue> asMap(const SumOutput &out)
{
    QMap<QString, QJsonValue> map;
    for (const auto &[key, value] : out)
        map.insert(key, value);
    return map;
}

} // namespace

class TestSumsReckonMoney : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void bidSums();
    void marginTaxSums_data();
    void marginTaxSums();
    void periodMargins();
    void apportionSums();
    void threePointSums();
};

void TestSumsReckonMoney::bidSums()
{
    // The worked example of the trade's notes on the highest bid: to the cent.
    SumInput given{{QStringLiteral("price"), QStringLiteral("180")},
                   {QStringLiteral("carriage_paid"), QStringLiteral("15")},
                   {QStringLiteral("carriage"), QStringLiteral("17")},
                   {QStringLiteral("packing"), QStringLiteral("4")},
                   {QStringLiteral("returns"), QStringLiteral("4.10")},
                   {QStringLiteral("chance"), QStringLiteral("0.75")},
                   {QStringLiteral("salvage"), QStringLiteral("30")},
                   {QStringLiteral("costs"), QStringLiteral("38")},
                   {QStringLiteral("hours"), QStringLiteral("4")},
                   {QStringLiteral("rate"), QStringLiteral("12")},
                   {QStringLiteral("gain"), QStringLiteral("20")},
                   {QStringLiteral("rules"), QStringLiteral("13:item+carriage:0.35,3:item+carriage")}};
    const auto made = [&given] {
        const auto out = reckon(QStringLiteral("bid"), given);
        return out ? asMap(*out) : QMap<QString, QJsonValue>{{QStringLiteral("bid"), out.trouble().sentence()}};
    };
    QCOMPARE(made().value(QStringLiteral("net")).toString(), QStringLiteral("138.35"));
    QCOMPARE(made().value(QStringLiteral("expected")).toString(), QStringLiteral("111.26"));
    QCOMPARE(made().value(QStringLiteral("bid")).toString(), QStringLiteral("5.26"));
    QCOMPARE(made().value(QStringLiteral("bid_without_hours")).toString(), QStringLiteral("53.26"));
    QCOMPARE(made().value(QStringLiteral("back_of_envelope")).toString(), QStringLiteral("118.60"));
    given.insert(QStringLiteral("parts"), QStringLiteral("18")); // "180 less 13 % less parts 18 less 20"
    QCOMPARE(made().value(QStringLiteral("back_of_envelope")).toString(), QStringLiteral("118.60"));
    given.insert(QStringLiteral("hours"), QStringLiteral("3 h 60 min"));
    for (const char *fraction : {"1/6", "0.1666666667", "16.66666667 %"}) {
        given.insert(QStringLiteral("tax_fraction"), QString::fromUtf8(fraction));
        QCOMPARE(made().value(QStringLiteral("bid")).toString(), QStringLiteral("-21.84"));
        QCOMPARE(made().value(QStringLiteral("bid_without_hours")).toString(), QStringLiteral("33.01"));
    }
    given.insert(QStringLiteral("tax_fraction"), QStringLiteral("6/6"));
    QVERIFY(made().value(QStringLiteral("bid")).toString().contains(QStringLiteral("tax fraction")));
    given.insert(QStringLiteral("chance"), QStringLiteral("1.2"));
    QVERIFY(made().value(QStringLiteral("bid")).toString().contains(QStringLiteral("chance")));
}

void TestSumsReckonMoney::marginTaxSums_data()
{
    QTest::addColumn<QString>("bought");
    QTest::addColumn<QString>("sold");
    QTest::addColumn<QString>("scheme");
    QTest::addColumn<QString>("margin");
    QTest::addColumn<QString>("tax");
    QTest::addColumn<QString>("saleLessTax");
    const auto row = [](const char *name, const char *bought, const char *sold, const char *scheme, const char *margin,
                        const char *tax, const char *rest) {
        QTest::newRow(name) << QString::fromUtf8(bought) << QString::fromUtf8(sold) << QString::fromUtf8(scheme)
                            << QString::fromUtf8(margin) << QString::fromUtf8(tax) << QString::fromUtf8(rest);
    };
    // UK margin scheme guidance at 20 %: the example, its return boxes, a loss, and one sixth, not one fifth.
    row("V01 and V02", "1500", "2000", "", "500.00", "83.33", "1916.67");
    row("V03", "120", "90", "", "-30.00", "0.00", "90.00");
    row("V12", "0", "120", "", "120.00", "20.00", "100.00");
    // From memory (HMRC Notice 718): parts do not raise the purchase price; carriage charged belongs to the sale.
    row("V08", "60", "150", "", "90.00", "15.00", "135.00");
    row("V09", "60", "150", "margin", "90.00", "15.00", "135.00");
    // Bought on an invoice that shows tax: price × 20/120.
    row("V10", "60", "150", "none", "90.00", "25.00", "125.00");
    row("half up", "0", "0.03", "", "0.03", "0.01", "0.02"); // 0.005
}

void TestSumsReckonMoney::marginTaxSums()
{
    QFETCH(QString, bought);
    QFETCH(QString, sold);
    QFETCH(QString, scheme);
    const auto out = reckon(QStringLiteral("margin-tax"), {{QStringLiteral("bought"), bought},
                                                           {QStringLiteral("sold"), sold},
                                                           {QStringLiteral("rate"), QStringLiteral("20")},
                                                           {QStringLiteral("scheme"), scheme}});
    testing::wantOk(out);
    const auto values = asMap(*out);
    QTEST(values.value(QStringLiteral("margin")).toString(), "margin");
    QTEST(values.value(QStringLiteral("tax")).toString(), "tax");
    QTEST(values.value(QStringLiteral("sale_less_tax")).toString(), "saleLessTax");
}

void TestSumsReckonMoney::periodMargins()
{
    // V07 (HMRC Notice 718, from memory): purchases 1000, sales 800: no tax, 200 carried to the next period.
    const Currency pounds = *Currency::parse(u"GBP");
    const auto sum = [&](qint64 whole) { return Money(whole * 100, pounds); };
    const GlobalMargin first = globalMargin(sum(1000), sum(800), sum(0), *Rate::parse(u"20"));
    QCOMPARE(first.tax.tax.decimal(), QStringLiteral("0.00"));
    QCOMPARE(first.carriedOn.decimal(), QStringLiteral("200.00"));
    const GlobalMargin next = globalMargin(sum(100), sum(600), first.carriedOn, *Rate::parse(u"20")); // 600 − 100 − 200 = 300
    QCOMPARE(next.tax.tax.decimal(), QStringLiteral("50.00"));
    QCOMPARE(next.carriedOn.decimal(), QStringLiteral("0.00"));
}

void TestSumsReckonMoney::apportionSums()
{
    const auto shares = [](const char *total, const char *by) {
        const auto out = reckon(QStringLiteral("apportion"), {{QStringLiteral("total"), QString::fromUtf8(total)},
                                                              {QStringLiteral("by"), QString::fromUtf8(by)}});
        if (!out)
            return out.trouble().sentence();
        QStringList list;
        for (const QJsonValue &each : asMap(*out).value(QStringLiteral("shares")).toArray())
            list << each.toString();
        return list.join(QLatin1Char(' '));
    };
    // The trade's notes on a lot at 120: by value, by weight, by value less cost, where one cent is left to place (it goes to the
    // largest remainder: 0.40 of a cent, where the others have 0.03, 0.21 and 0.36).
    QCOMPARE(shares("120", "150,60,25,5"), QStringLiteral("75.00 30.00 12.50 2.50"));
    QCOMPARE(shares("120", "1,1,1,1"), QStringLiteral("30.00 30.00 30.00 30.00"));
    QCOMPARE(shares("120", "9,6,4,3"), QStringLiteral("49.09 32.73 21.82 16.36"));
    QCOMPARE(shares("120", "150,60,20,8"), QStringLiteral("75.63 30.25 10.09 4.03"));
    QCOMPARE(shares("0.02", "1,1,1"), QStringLiteral("0.01 0.01 0.00"));
    QVERIFY(shares("120", "0,0").contains(QStringLiteral("all weights are 0")));
    QVERIFY(shares("120", "-1,2").contains(QStringLiteral("-1")));
}

void TestSumsReckonMoney::threePointSums()
{
    const auto out = reckon(QStringLiteral("three-point"), {{QStringLiteral("low"), QStringLiteral("10")},
                                                            {QStringLiteral("likely"), QStringLiteral("20")},
                                                            {QStringLiteral("high"), QStringLiteral("60")}});
    testing::wantOk(out);
    const auto values = asMap(*out);
    const auto near = [&](const char *key, double wanted) {
        const double got = values.value(QString::fromUtf8(key)).toDouble();
        QVERIFY2(std::abs(got - wanted) < 1e-6, qPrintable(QString::number(got)));
    };
    near("mean", 25);
    near("sd", 8.660254); // √75, row Z21
    near("alpha", 1.8);
    near("beta", 4.2);
    near("p10", 14.49510652); // SciPy 1.10, stats.beta.ppf
    near("p50", 23.83361297);
    near("p90", 37.26670252);
    const auto sure = reckon(QStringLiteral("three-point"), {{QStringLiteral("low"), QStringLiteral("5")},
                                                             {QStringLiteral("likely"), QStringLiteral("5")},
                                                             {QStringLiteral("high"), QStringLiteral("5")}});
    testing::wantOk(sure);
    QVERIFY(asMap(*sure).value(QStringLiteral("alpha")).isNull());
    QCOMPARE(asMap(*sure).value(QStringLiteral("sd")).toDouble(), 0.0);
}

QTEST_GUILESS_MAIN(TestSumsReckonMoney)
#include "test_sums_reckon_money.moc"
