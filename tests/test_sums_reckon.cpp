#include "model/sums/number_column.h"
#include "model/sums/reckon.h"
#include "model/sums/spread.h"
#include "tests/testing.h"

#include <QFile>
#include <QTemporaryDir>

#include <cmath>

using namespace ts;

namespace {

/// Agreement in correct digits: the log relative error that NIST StRD uses.
double digits(double value, double certified)
{
    return value == certified ? 16 : -std::log10(std::abs(value - certified) / std::abs(certified));
}

QString text(const QJsonValue &value)
{
    return value.isDouble() ? QString::number(value.toDouble(), 'g', 15) : value.toVariant().toString();
}

QMap<QString, QJsonValue> asMap(const SumOutput &out)
{
    QMap<QString, QJsonValue> map;
    for (const auto &[key, value] : out)
        map.insert(key, value);
    return map;
}

QString written(const QTemporaryDir &folder, const QByteArray &bytes)
{
    static int number = 0;
    const QString path = folder.filePath(QStringLiteral("%1.csv").arg(++number));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("cannot write the test's own file");
    return path;
}

} // namespace

class TestSumsReckon : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void spreadCertified_data();
    void spreadCertified();
    void spreadAlways();
    void median();
    void columns();
    void letterCode_data();
    void letterCode();
    void breakEvenSums();
    void refusals_data();
    void refusals();
    void registry();
};

void TestSumsReckon::spreadCertified_data()
{
    QTest::addColumn<QString>("file");
    QTest::addColumn<int>("n");
    QTest::addColumn<double>("mean");
    QTest::addColumn<double>("sd");
    QTest::addColumn<double>("lag1");
    QTest::addColumn<double>("digitsWanted");
    // NIST Statistical Reference Datasets, univariate, certified values (../shared/checks/07_nist_certified.csv, N01 to N08).
    QTest::newRow("Lew") << "07_nist_lew_data.csv" << 200 << -177.435000000000 << 277.332168044316 << -0.307304800605679 << 13.0;
    QTest::newRow("Lottery") << "07_nist_lottery_data.csv" << 218 << 518.958715596330 << 291.699727470969 << -0.120948622967393
                             << 13.0;
    QTest::newRow("PiDigits") << "07_nist_pidigits_data.csv" << 5000 << 4.53480000000000 << 2.86733906028871
                              << -0.00355099287237972 << 12.0;
    QTest::newRow("NumAcc1") << "07_nist_numacc1_data.csv" << 3 << 10000002.0 << 1.0 << -0.5 << 15.0;
    QTest::newRow("NumAcc2") << "07_nist_numacc2_data.csv" << 1001 << 1.2 << 0.1 << -0.999 << 13.0;
    // Its decimals cannot be held in binary: 3.5e-10 is the best there is.
    QTest::newRow("NumAcc3") << "07_nist_numacc3_data.csv" << 1001 << 1000000.2 << 0.1 << -0.999 << 9.0;
}

void TestSumsReckon::spreadCertified()
{
    QFETCH(QString, file);
    QFETCH(int, n);
    QFETCH(double, mean);
    QFETCH(double, sd);
    QFETCH(double, lag1);
    QFETCH(double, digitsWanted);
    if (testing::sharedFolder().isEmpty())
        QSKIP("the published data are not beside the project");
    const auto out =
        reckon(QStringLiteral("spread"), {{QStringLiteral("file"), testing::sharedFolder() + QStringLiteral("/checks/") + file}});
    testing::wantOk(out);
    const auto values = asMap(*out);
    QCOMPARE(values.value(QStringLiteral("n")).toInt(), n);
    QVERIFY(digits(values.value(QStringLiteral("mean")).toDouble(), mean) > std::max(digitsWanted, 13.0));
    QVERIFY2(digits(values.value(QStringLiteral("sd")).toDouble(), sd) > digitsWanted,
             qPrintable(QString::number(digits(values.value(QStringLiteral("sd")).toDouble(), sd))));
    QVERIFY(digits(values.value(QStringLiteral("lag1")).toDouble(), lag1) > std::min(digitsWanted - 1, 11.0));
}

void TestSumsReckon::spreadAlways()
{
    // NIST StRD NumAcc1: three values, mean 10000002 and standard deviation 1 exactly, lag-1 autocorrelation −0.5.
    const auto spread = spreadOf({10000001, 10000003, 10000002});
    testing::wantOk(spread);
    QCOMPARE(spread->mean, 10000002.0);
    QCOMPARE(*spread->sd, 1.0);
    QCOMPARE(*spread->lag1, -0.5);
    // NumAcc3 made from its description: 1000000.2, then 500 times 1000000.1 and 1000000.3.
    QList<double> row{1000000.2};
    for (int i = 0; i < 500; ++i)
        row << 1000000.1 << 1000000.3;
    const auto hard = spreadOf(row);
    QVERIFY(digits(hard->mean, 1000000.2) > 14 && digits(*hard->sd, 0.1) > 9 && digits(*hard->lag1, -0.999) > 8);

    const auto one = spreadOf({5});
    QVERIFY(one->mean == 5 && !one->sd && !one->lag1);
    const auto same = spreadOf({0.1, 0.1, 0.1});
    QVERIFY(same->mean == 0.1 && *same->sd == 0 && !same->lag1);
    QVERIFY(spreadOf({1e308, 1e308})->mean == 1e308); // no overflow on the way
    QVERIFY(!spreadOf({}).ok());
    QVERIFY(testing::refusal(spreadOf({1, std::nan("")})).contains(QStringLiteral("value 2")));
    QVERIFY(!spreadOf({HUGE_VAL}).ok());
}

void TestSumsReckon::median()
{
    QCOMPARE(*medianOf({3, 1, 2}), 2.0);
    QCOMPARE(*medianOf({4, 1, 2, 3}), 2.5);
    QCOMPARE(*medianOf({7}), 7.0);
    QVERIFY(!medianOf({}).ok());
}

void TestSumsReckon::columns()
{
    const QTemporaryDir folder;
    QCOMPARE(*numbersInFile(written(folder, "1\n2.5\r\n\n3\n")), (QList<double>{1, 2.5, 3}));
    QCOMPARE(*numbersInFile(written(folder, "\xEF\xBB\xBFvolts\n1\n-2e3\n")), (QList<double>{1, -2000}));
    QCOMPARE(*numbersInFile(written(folder, "i;y;note\n1;5;\"a;b\"\n2;6,5;\n")), (QList<double>{5, 6.5}));
    QCOMPARE(*numbersInFile(written(folder, "a,b\n1,2\n3,4\n"), QStringLiteral("B")), (QList<double>{2, 4}));
    const auto refused = [&](const QByteArray &bytes, const QString &column = {}) {
        return testing::refusal(numbersInFile(written(folder, bytes), column));
    };
    QVERIFY(refused("a,b\n1,2\n").contains(QStringLiteral("a, b")));
    QVERIFY(refused("a,b\n1,2\n", QStringLiteral("c")).contains(QStringLiteral("\"c\"")));
    QVERIFY(refused("1\n2\nthree\n").contains(QStringLiteral("line 3")));
    QVERIFY(refused("y\n1\nnan\n").contains(QStringLiteral("line 3")));
    QVERIFY(!refused("").isEmpty());
    QVERIFY(refused(QByteArray("1\n\0002\n", 5)).contains(QStringLiteral("no text")));
    QVERIFY(!testing::refusal(numbersInFile(folder.filePath(QStringLiteral("missing.csv")))).isEmpty());
    QCOMPARE(*numbersOf(QStringLiteral("1, 2;3  4")), (QList<double>{1, 2, 3, 4}));
    QVERIFY(!numbersOf(QStringLiteral("1, two")).ok());
}

void TestSumsReckon::letterCode_data()
{
    QTest::addColumn<QString>("marking");
    QTest::addColumn<double>("value");
    QTest::addColumn<QString>("unit");
    QTest::addColumn<double>("tolerance"); // below zero: none
    // ../shared/checks/02_value_cases.csv, IEC 60062: E30, E31, E32, E34. Exact: the double nearest to the decimals.
    QTest::newRow("E30 R47") << "R47" << 0.47 << "Ω" << -1.0;
    QTest::newRow("E30 4R7") << "4R7" << 4.7 << "Ω" << -1.0;
    QTest::newRow("E30 4K7") << "4K7" << 4700.0 << "Ω" << -1.0;
    QTest::newRow("E30 47K3") << "47K3" << 47300.0 << "Ω" << -1.0;
    QTest::newRow("E30 4M7") << "4M7" << 4700000.0 << "Ω" << -1.0;
    QTest::newRow("E31 1M0") << "1M0" << 1e6 << "Ω" << -1.0;
    QTest::newRow("E32 2n2") << "2n2" << 2.2e-9 << "F" << -1.0;
    QTest::newRow("E32 p33") << "p33" << 0.33e-12 << "F" << -1.0;
    QTest::newRow("E32 33p2") << "33p2" << 33.2e-12 << "F" << -1.0;
    QTest::newRow("E32 470n") << "470n" << 470e-9 << "F" << -1.0;
    QTest::newRow("E34 473J") << "473J" << 47e-9 << "F" << 5.0;
    QTest::newRow("E34 105K") << "105K" << 1e-6 << "F" << 10.0;
}

void TestSumsReckon::letterCode()
{
    QFETCH(QString, marking);
    QFETCH(double, value);
    QFETCH(QString, unit);
    QFETCH(double, tolerance);
    const auto out = reckon(QStringLiteral("letter-code"), {{QStringLiteral("text"), marking}});
    testing::wantOk(out);
    const auto values = asMap(*out);
    QCOMPARE(text(values.value(QStringLiteral("value"))), QString::number(value, 'g', 15));
    QVERIFY(values.value(QStringLiteral("value")).toDouble() == value);
    QCOMPARE(values.value(QStringLiteral("unit")).toString(), unit);
    QVERIFY(tolerance < 0 ? values.value(QStringLiteral("tolerance_percent")).isNull()
                          : values.value(QStringLiteral("tolerance_percent")).toDouble() == tolerance);
}

void TestSumsReckon::breakEvenSums()
{
    const auto price = [](const char *costs, const char *rules, const char *carriage = "", const char *currency = "") {
        const auto out = reckon(QStringLiteral("break-even"), {{QStringLiteral("costs"), QString::fromUtf8(costs)},
                                                               {QStringLiteral("rules"), QString::fromUtf8(rules)},
                                                               {QStringLiteral("carriage"), QString::fromUtf8(carriage)},
                                                               {QStringLiteral("currency"), QString::fromUtf8(currency)}});
        return out ? asMap(*out).value(QStringLiteral("price")).toString() : out.trouble().sentence();
    };
    // The worked fees of the trade notes backwards: of 195 paid, 31.55 goes in fees and 163.45 is left, from an item at 180.
    QCOMPARE(price("163.45", "13:item+carriage:0.35, 3:item_and_carriage", "15"), QStringLiteral("180.00"));
    QCOMPARE(price("68.40", "12.8:item:0.30"), QStringLiteral("78.78"));    // by hand: 78.78 − 10.08 − 0.30 = 68.40
    QCOMPARE(price("68.40", "12.8%:item:0.30:5"), QStringLiteral("73.40")); // the cap holds fee and fixed part at 5
    QCOMPARE(price("50", ""), QStringLiteral("50.00"));
    QCOMPARE(price("5000", "10", "", "JPY"), QStringLiteral("5556")); // no minor unit: 5555 − 556 is 4999, 5556 − 556 is 5000
    QCOMPARE(price("£9", "10"), QStringLiteral("10.00"));
    QVERIFY(price("10", "100").contains(QStringLiteral("100 %")));
}

void TestSumsReckon::refusals_data()
{
    QTest::addColumn<QString>("sum");
    QTest::addColumn<QString>("keys"); // a=b joined by |
    QTest::addColumn<QString>("says");
    QTest::newRow("unknown sum") << "horoscope"
                                 << ""
                                 << "horoscope";
    QTest::newRow("unknown key") << "letter-code"
                                 << "text=4k7|sign=x"
                                 << "\"sign\"";
    QTest::newRow("missing key") << "letter-code"
                                 << ""
                                 << "text is missing";
    QTest::newRow("empty key") << "break-even"
                               << "costs= "
                               << "costs is missing";
    QTest::newRow("no marking") << "letter-code"
                                << "text=4q7"
                                << "4q7";
    QTest::newRow("no number") << "spread"
                               << "values=1,two,3"
                               << "two";
    QTest::newRow("nothing") << "spread"
                             << ""
                             << "either values or a file";
    QTest::newRow("both") << "spread"
                          << "values=1|file=x"
                          << "either values or a file";
    QTest::newRow("no file") << "spread"
                             << "file=/nowhere/at/all.csv"
                             << "/nowhere/at/all.csv";
    QTest::newRow("no money") << "break-even"
                              << "costs=plenty"
                              << "plenty";
    QTest::newRow("negative costs") << "break-even"
                                    << "costs=-3"
                                    << "costs";
    QTest::newRow("negative carriage") << "break-even"
                                       << "costs=3|carriage=-1"
                                       << "carriage";
    QTest::newRow("no base") << "break-even"
                             << "costs=3|rules=10:everything"
                             << "everything";
    QTest::newRow("no rate") << "break-even"
                             << "costs=3|rules=ten:item"
                             << "ten";
    QTest::newRow("too many parts") << "break-even"
                                    << "costs=3|rules=10:item:1:2:3"
                                    << "too many parts";
    QTest::newRow("no currency") << "break-even"
                                 << "costs=3|currency=XQX"
                                 << "XQX";
    QTest::newRow("two currencies") << "break-even"
                                    << "costs=3 GBP|rules=10:item:1 EUR"
                                    << "EUR";
}

void TestSumsReckon::refusals()
{
    QFETCH(QString, sum);
    QFETCH(QString, keys);
    QFETCH(QString, says);
    SumInput given;
    for (const QString &pair : keys.split(QLatin1Char('|'), Qt::SkipEmptyParts))
        given.insert(pair.section(QLatin1Char('='), 0, 0), pair.section(QLatin1Char('='), 1));
    const QString sentence = testing::refusal(reckon(sum, given));
    QVERIFY2(sentence.contains(says), qPrintable(sentence));
    QVERIFY(!sentence.contains(QLatin1Char('\n')));
}

void TestSumsReckon::registry()
{
    QStringList names;
    for (const Sum &sum : allSums()) {
        QVERIFY(!sum.says.isEmpty() && !sum.source.isEmpty() && !sum.keys.isEmpty() && !sum.gives.isEmpty() && sum.work);
        QVERIFY(!names.contains(sum.name));
        names << sum.name;
    }
    // What is promised of each comes out, in that order: one call of each.
    const QHash<QString, QString> calls{
        {QStringLiteral("preferred-value"), QStringLiteral("value=4k7")},
        {QStringLiteral("preferred-pair"), QStringLiteral("value=4321")},
        {QStringLiteral("colour-code"), QStringLiteral("bands=red red red")},
        {QStringLiteral("digit-code"), QStringLiteral("text=472|part=resistor")},
        {QStringLiteral("fuse"), QStringLiteral("characteristic=F|rating=1|multiple=4")},
        {QStringLiteral("fuse-marking"), QStringLiteral("text=T1A")},
        {QStringLiteral("discharge"), QStringLiteral("capacitance=1m|resistance=1k|from=60|to=1")},
        {QStringLiteral("idle-current"), QStringLiteral("drop=1|resistance=1")},
        {QStringLiteral("load-power"), QStringLiteral("volts=1|load=8")},
        {QStringLiteral("dropper"), QStringLiteral("supply=2|volts=1|current=1")},
        {QStringLiteral("damping"), QStringLiteral("load=8|source=1")},
        {QStringLiteral("ripple"), QStringLiteral("current=1|frequency=50|capacitance=1m")},
        {QStringLiteral("esr"), QStringLiteral("dissipation=0.1|capacitance=1m")},
        {QStringLiteral("level"), QStringLiteral("volts=1")},
        {QStringLiteral("replay-curve"), QStringLiteral("curve=riaa|frequency=50")},
        {QStringLiteral("weighting"), QStringLiteral("curve=A|frequency=50")},
        {QStringLiteral("strobe"), QStringLiteral("speed=33|frequency=50")},
        {QStringLiteral("speed-error"), QStringLiteral("nominal=1|read=1")},
        {QStringLiteral("mains-speed"), QStringLiteral("made_for=50|runs_on=60")},
        {QStringLiteral("belt"), QStringLiteral("path=250")},
        {QStringLiteral("tape-length"), QStringLiteral("speed=15|minutes=1")},
        {QStringLiteral("spread"), QStringLiteral("values=1,2,4")},
        {QStringLiteral("line-fit"), QStringLiteral("x=1,2|y=3,4")},
        {QStringLiteral("quantile"), QStringLiteral("values=1,2|p=0.5")},
        {QStringLiteral("uncertainty"), QStringLiteral("terms=1")},
        {QStringLiteral("acceptance-risk"), QStringLiteral("mean=0|spread=1|uncertainty=1|low=-1|high=1")}};
    for (const Sum &sum : allSums()) {
        if (!calls.contains(sum.name))
            continue;
        SumInput given;
        for (const QString &pair : calls.value(sum.name).split(QLatin1Char('|')))
            given.insert(pair.section(QLatin1Char('='), 0, 0), pair.section(QLatin1Char('='), 1));
        const auto said = reckon(sum.name, given);
        testing::wantOk(said);
        QStringList came;
        QStringList promised;
        for (const auto &[key, value] : *said)
            came << key;
        for (const SumKey &key : sum.gives)
            promised << key.name;
        QCOMPARE(came, promised);
        QVERIFY2(!sum.formula.isEmpty(), qPrintable(sum.name));
    }
    const auto out = reckon(QStringLiteral("spread"), {{QStringLiteral("values"), QStringLiteral("1,2,4")}});
    testing::wantOk(out);
    QStringList keys;
    for (const auto &[key, value] : *out)
        keys << key;
    QCOMPARE(keys, (QStringList{QStringLiteral("n"), QStringLiteral("mean"), QStringLiteral("sd"), QStringLiteral("lag1")}));
}

QTEST_GUILESS_MAIN(TestSumsReckon)
#include "test_sums_reckon.moc"
