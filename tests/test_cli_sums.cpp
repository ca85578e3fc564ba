// Sums without a workbook, as the program answers them to other programs, against published figures.
#include "tests/program.h"

#include <cmath>

using namespace Qt::StringLiterals;
using namespace ts::testing;

namespace {

bool near(double value, double wanted, double within)
{
    return std::fabs(value - wanted) <= within;
}

} // namespace

class TestCliSums : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void judge_data()
    {
        QTest::addColumn<QStringList>("how");
        QTest::addColumn<QString>("value");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<double>("chance"); // below 0: not looked at
        QTest::addColumn<double>("chanceWithin");
        QTest::addColumn<double>("standard"); // standard uncertainty, below 0: not looked at
        // JCGM 106:2012 clause 7, examples of a one-sided upper and a one-sided lower limit; ../shared/checks 01, rows U01 and
        // U02 (their inputs from memory, the chances computed: Φ(1.4) and Φ(2.2907)).
        QTest::newRow("U01") << QStringList{u"--want"_s, u"<= -5.40 V"_s, u"--standard-uncertainty"_s, u"0.05"_s} << u"-5.47 V"_s
                             << u"too_close_to_call"_s << 0.919243 << 0.0005 << 0.05;
        QTest::newRow("U02") << QStringList{u"--want"_s, u">= 490 kPa"_s, u"--standard-uncertainty"_s, u"8.6"_s} << u"509.7 kPa"_s
                             << u"within"_s << 0.989010 << 0.0005 << 8.6;
        // Accuracy statement of a hand-held meter, ± (0.7 % + 2 counts) at 120.0 V on 0.1 V: half width 1.04 V, as a rectangle
        // 0.600444 V;
        // ../shared/checks 01, row U22 (source S-DMM-120).
        QTest::newRow("U22") << QStringList{u"--want"_s, u"110..130 V"_s, u"--meter"_s, u"0.7% + 2 x 0.1 V"_s} << u"120.0 V"_s
                             << u"within"_s << -1.0 << 0.0 << 0.600444;
        // The same reading beside its limit, half width and all: 118.96 V to 121.04 V is the interval of the row.
        QTest::newRow("U22, near a limit") << QStringList{u"--want"_s, u"<= 121 V"_s, u"--meter"_s, u"0.7% + 2 x 0.1 V"_s}
                                           << u"120.0 V"_s << u"too_close_to_call"_s << -1.0 << 0.0 << 0.600444;
        // Limits are inclusive: on the limit is within. ../shared/checks README, choice 2.
        QTest::newRow("on the limit") << QStringList{u"--want"_s, u"12 V 5%"_s} << u"12.6 V"_s << u"within"_s << -1.0 << 0.0
                                      << -1.0;
        QTest::newRow("above it") << QStringList{u"--want"_s, u"12 V 5%"_s} << u"12.601 V"_s << u"outside"_s << -1.0 << 0.0
                                  << -1.0;
        QTest::newRow("below zero") << QStringList{u"--want"_s, u"-5 V 5%"_s} << u"-4.9 V"_s << u"within"_s << -1.0 << 0.0
                                    << -1.0;
    }
    void judge()
    {
        QFETCH(QStringList, how);
        QFETCH(QString, value);
        QFETCH(QString, verdict);
        QFETCH(double, chance);
        QFETCH(double, chanceWithin);
        QFETCH(double, standard);
        for (const QStringList &order : {QStringList{u"--json"_s} + how, how + QStringList{u"--json"_s}}) {
            const Answer answer = program(QStringList{u"judge"_s} + order + QStringList{u"--"_s, value});
            QVERIFY2(answer.status == 0 && answer.err.isEmpty(), answer.told().constData());
            const QJsonObject judged = answer.json();
            QCOMPARE(judged.keys(), (QStringList{u"chance_within"_s, u"uncertainty"_s, u"unit"_s, u"value"_s, u"verdict"_s,
                                                 u"wanted_high"_s, u"wanted_low"_s}));
            QCOMPARE(judged.value(u"verdict"_s).toString(), verdict);
            QCOMPARE(judged.value(u"value"_s).toDouble(), value.section(u' ', 0, 0).toDouble());
            QCOMPARE(judged.value(u"unit"_s).toString(), value.section(u' ', 1));
            if (chance >= 0)
                QVERIFY2(near(judged.value(u"chance_within"_s).toDouble(), chance, chanceWithin), answer.told().constData());
            // 95 % of the normal law lie within 1.959964 standard deviations: NIST/SEMATECH e-Handbook 1.3.6.7.1.
            if (standard >= 0)
                QVERIFY2(near(judged.value(u"uncertainty"_s).toDouble() / 1.959964, standard, standard * 2e-6),
                         answer.told().constData());
            else
                QVERIFY(judged.value(u"uncertainty"_s).isNull());
        }
    }

    // IEC 60062: ../shared/checks 02, rows E30 to E34 (E32 beyond its first marking is from memory).
    void letterCode_data()
    {
        QTest::addColumn<double>("value");
        QTest::addColumn<QString>("unit");
        QTest::addColumn<double>("tolerance"); // below 0: none
        const auto ohms = [](const char *marking, double value) { QTest::newRow(marking) << value << u"Ω"_s << -1.0; };
        const auto farads = [](const char *marking, double value, double tolerance = -1.0) {
            QTest::newRow(marking) << value << u"F"_s << tolerance;
        };
        ohms("R47", 0.47);
        ohms("4R7", 4.7);
        ohms("470R", 470);
        ohms("4K7", 4700);
        ohms("47K", 47000);
        ohms("47K3", 47300);
        ohms("470K", 470000);
        ohms("4M7", 4700000);
        ohms("2K2", 2200);
        ohms("1M0", 1000000);
        farads("2n2", 2.2e-9);
        farads("4n7", 4.7e-9);
        farads("p33", 0.33e-12);
        farads("33p2", 33.2e-12);
        farads("2u2", 2.2e-6);
        farads("470n", 470e-9);
        farads("473J", 47e-9, 5);
        farads("105K", 1e-6, 10);
    }
    void letterCode()
    {
        QFETCH(double, value);
        QFETCH(QString, unit);
        QFETCH(double, tolerance);
        const Answer answer =
            program({u"reckon"_s, u"letter-code"_s, u"text="_s + QLatin1String(QTest::currentDataTag()), u"--json"_s});
        QVERIFY2(answer.status == 0 && answer.err.isEmpty(), answer.told().constData());
        const QJsonObject said = answer.json();
        QVERIFY2(near(said.value(u"value"_s).toDouble(), value, value * 1e-12), answer.told().constData());
        QCOMPARE(said.value(u"unit"_s).toString(), unit);
        QVERIFY(said.contains(u"tolerance_percent"_s));
        if (tolerance < 0)
            QVERIFY(said.value(u"tolerance_percent"_s).isNull());
        else
            QCOMPARE(said.value(u"tolerance_percent"_s).toDouble(), tolerance);
    }

    // ../shared/trade/trade.md 4.3, the worked example: sold for 180 with 15 carriage, commission 13 % + 0.35 and promotion 3 %,
    // both on 195, leave 163.45 (its N 138.35 with freight 17, packing 4 and returns 4.10 still in). So 163.45 is covered from
    // 180.00.
    void breakEven()
    {
        const QStringList sum{u"reckon"_s, u"break-even"_s, u"rules=13:item+carriage:0.35,3:item+carriage"_s, u"carriage=15"_s,
                              u"--json"_s};
        const auto price = [&sum](const QString &costs) {
            return program(sum + QStringList{u"costs="_s + costs}).json().value(u"price"_s);
        };
        QCOMPARE(price(u"163.45"_s), QJsonValue(u"180.00"_s));
        QCOMPARE(price(u"163.46"_s), QJsonValue(u"180.01"_s)); // the fees of 0.01 more round to the same
        // Without fees the price is the costs.
        QCOMPARE(program({u"reckon"_s, u"break-even"_s, u"costs=41.50"_s, u"--json"_s}).json().value(u"price"_s),
                 QJsonValue(u"41.50"_s));
    }

    // Mean, standard deviation and lag-1 autocorrelation of 10000001, 10000003, 10000002: NIST StRD, set NumAcc1;
    // ../shared/checks 07.
    void spread()
    {
        const QJsonObject said = program({u"reckon"_s, u"--json"_s, u"spread"_s, u"values=10000001,10000003,10000002"_s}).json();
        QCOMPARE(said.value(u"n"_s).toInt(), 3);
        QCOMPARE(said.value(u"mean"_s).toDouble(), 10000002.0);
        QVERIFY(near(said.value(u"sd"_s).toDouble(), 1, 1e-9));
        QVERIFY(near(said.value(u"lag1"_s).toDouble(), -0.5, 1e-9));
    }

    // What the program answers is what the functions give: one published figure of each kind of answer. ../shared/checks 02 (E29,
    // E10), 03 (G01), 06 (X04), 05 (R29), 11 (O01).
    void bench_data()
    {
        QTest::addColumn<QStringList>("sum");
        QTest::addColumn<QString>("key");
        QTest::addColumn<double>("value");
        QTest::addColumn<double>("within");
        QTest::newRow("E10") << QStringList{u"preferred-value"_s, u"value=9200"_s, u"series=E24"_s} << u"nearest"_s << 9100.0
                             << 0.0;
        QTest::newRow("E29") << QStringList{u"colour-code"_s, u"bands=brown,black,black,red,brown,red"_s} << u"tempco"_s << 50.0
                             << 0.0;
        QTest::newRow("G01") << QStringList{u"fuse"_s, u"characteristic=T"_s, u"rating=1"_s, u"multiple=2.75"_s} << u"max_time"_s
                             << 10.0 << 0.0;
        QTest::newRow("X04") << QStringList{u"discharge"_s, u"capacitance=100u"_s, u"resistance=10k"_s, u"from=450"_s, u"to=60"_s}
                             << u"time"_s << 2.01490 << 1e-4;
        QTest::newRow("R29") << QStringList{u"replay-curve"_s, u"curve=riaa"_s, u"frequency=10k"_s} << u"db"_s << -13.734
                             << 0.001;
        QTest::newRow("O01") << QStringList{u"idle-current"_s, u"drop=10 mV"_s, u"resistance=0R22"_s} << u"current"_s
                             << 45.4545e-3 << 1e-7;
    }
    void bench()
    {
        QFETCH(QStringList, sum);
        QFETCH(QString, key);
        QFETCH(double, value);
        QFETCH(double, within);
        const Answer answer = program(QStringList{u"reckon"_s} + sum + QStringList{u"--json"_s});
        QVERIFY2(answer.status == 0 && answer.err.isEmpty(), answer.told().constData());
        QVERIFY2(near(answer.json().value(key).toDouble(), value, within), answer.told().constData());
        const Answer plain = program(QStringList{u"reckon"_s} + sum);
        QVERIFY2(plain.status == 0 && plain.out.contains(key + u": "_s), plain.told().constData());
    }

    void sumsAreListedWithTheirKeys()
    {
        const QJsonObject list = program({u"reckon"_s, u"--json"_s}).json();
        const QMap<QString, QStringList> promised{
            {u"preferred-value"_s, {u"nearest"_s, u"below"_s, u"above"_s, u"error_percent"_s}},
            {u"colour-code"_s, {u"value"_s, u"tolerance_percent"_s, u"tempco"_s}},
            {u"letter-code"_s, {u"value"_s, u"unit"_s, u"tolerance_percent"_s}},
            {u"fuse"_s, {u"min_time"_s, u"max_time"_s}},
            {u"discharge"_s, {u"time"_s, u"energy"_s, u"peak_current"_s, u"peak_power"_s}},
            {u"idle-current"_s, {u"current"_s}},
            {u"load-power"_s, {u"watts"_s}},
            {u"level"_s, {u"dBu"_s, u"dBV"_s, u"dB"_s}},
            {u"ripple"_s, {u"volts"_s}},
            {u"replay-curve"_s, {u"db"_s}},
            {u"weighting"_s, {u"db"_s}},
            {u"spread"_s, {u"n"_s, u"mean"_s, u"sd"_s, u"lag1"_s}},
            {u"line-fit"_s,
             {u"slope"_s, u"intercept"_s, u"slope_sd"_s, u"intercept_sd"_s, u"residual_sd"_s, u"r2"_s, u"theil_sen"_s}},
            {u"quantile"_s, {u"value"_s}},
            {u"uncertainty"_s, {u"combined"_s, u"dof"_s, u"k"_s, u"expanded"_s}},
            {u"break-even"_s, {u"price"_s}},
            {u"strobe"_s, {u"bars"_s, u"true_speed"_s}},
            {u"belt"_s, {u"length"_s}},
            {u"mains-speed"_s, {u"speed"_s}}};
        for (auto [name, gives] : promised.asKeyValueRange()) {
            const QJsonObject sum = list.value(name).toObject();
            QVERIFY2(!sum.value(u"keys"_s).toObject().isEmpty() && !sum.value(u"source"_s).toString().isEmpty(),
                     qPrintable(name));
            for (const QString &key : gives)
                QVERIFY2(sum.value(u"gives"_s).toObject().contains(key), qPrintable(name + u' ' + key));
            QVERIFY2(sum.value(u"says"_s).isString() && sum.contains(u"formula"_s) && sum.contains(u"units"_s), qPrintable(name));
        }
    }
};

QTEST_GUILESS_MAIN(TestCliSums)
#include "test_cli_sums.moc"
