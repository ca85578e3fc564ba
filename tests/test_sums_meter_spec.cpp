#include "model/sums/meter_spec.h"
#include "tests/testing.h"

#include <cmath>

using namespace ts;

namespace {

Quantity quantity(const char *text)
{
    const auto parsed = Quantity::parse(QString::fromUtf8(text));
    if (!parsed)
        qFatal("%s", qPrintable(parsed.trouble().sentence()));
    return *parsed;
}

bool near(double value, double wanted, double tolerance)
{
    if (std::abs(value - wanted) <= tolerance)
        return true;
    qWarning("%.17g is not %.17g within %g", value, wanted, tolerance);
    return false;
}

} // namespace

class TestSumsMeterSpec : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void meterSpec_data();
    void meterSpec();
    void meterSpecRefused_data();
    void meterSpecRefused();
    void meterRanges();
};

void TestSumsMeterSpec::meterSpec_data()
{
    QTest::addColumn<QString>("spec");
    QTest::addColumn<QString>("value");
    QTest::addColumn<double>("half");
    QTest::addColumn<double>("tolerance");
    // 01_uncertainty_cases.csv U20: JCGM 100:2008 4.3.7 example, in microvolts.
    QTest::newRow("U20") << "14 ppm + 2 ppm of 1 V"
                         << "0.928571 V" << 15.0e-6 << 0.05e-6;
    // U22: 120.0 V read to 0.1 V, 0.7 % + 2 counts: 118.96 to 121.04 V.
    QTest::newRow("U22") << "0.7% + 2 x 0.1 V"
                         << "120.0 V" << 1.04 << 1e-9;
    QTest::newRow("U22 in words") << "±0.7 % + 2 counts of 0.1 V"
                                  << "120.0 V" << 1.04 << 1e-9;
    QTest::newRow("U22 in millivolts") << "0.7% + 2 x 0.1 V"
                                       << "120000 mV" << 1040.0 << 1e-6;
    QTest::newRow("U22 below zero") << "0.7% + 2 x 0.1 V"
                                    << "-120.0 V" << 1.04 << 1e-9;
    // U24: 8 ppm of reading + 0.3 µV at 1 V is 8.3 µV.
    QTest::newRow("U24") << "8 ppm + 0.3 uV"
                         << "1 V" << 8.3e-6 << 0.01e-6;
    // By the definition of each form.
    QTest::newRow("of range") << "0.5% + 0.1% of 40 V"
                              << "12 V" << 0.1 << 1e-12;
    QTest::newRow("counts") << "0.5% + 2 x 0.01 V"
                            << "12 V" << 0.08 << 1e-12;
    QTest::newRow("amount alone") << "0.05 V"
                                  << "12 V" << 0.05 << 1e-15;
    QTest::newRow("share alone") << "1% of reading"
                                 << "250 Hz" << 2.5 << 1e-12;
    QTest::newRow("exponent") << "1e-1% + 1e+1 mV"
                              << "1 V" << 0.011 << 1e-12;
    QTest::newRow("two prefixes") << "2 mV + 1000 uV"
                                  << "1 V" << 0.003 << 1e-12;
    QTest::newRow("decimal comma") << "0,5% + 2 x 0,01 V"
                                   << "12 V" << 0.08 << 1e-12;
}

void TestSumsMeterSpec::meterSpec()
{
    QFETCH(QString, spec);
    QFETCH(QString, value);
    QFETCH(double, half);
    QFETCH(double, tolerance);
    const auto parsed = MeterSpec::parse(spec);
    testing::wantOk(parsed);
    const auto width = parsed->halfWidth(*Quantity::parse(value));
    testing::wantOk(width);
    QVERIFY(near(*width, half, tolerance));
    // U20 and U22 print u = a / √3: 8.66 µV and 0.600444 V; the law is JCGM 100:2008, 4.3.7.
    const auto standard = parsed->standardUncertainty(*Quantity::parse(value));
    testing::wantOk(standard);
    QVERIFY(near(*standard, half / 1.7320508075688772, tolerance));
    if (spec == QLatin1String("0.7% + 2 x 0.1 V") && value == QLatin1String("120.0 V"))
        QVERIFY(near(*standard, 0.600444, 1e-6));
    const auto expanded = parsed->expanded95(*Quantity::parse(value));
    testing::wantOk(expanded);
    QVERIFY(near(*expanded / *standard, 1.959964, 1e-6));
}

void TestSumsMeterSpec::meterSpecRefused_data()
{
    QTest::addColumn<QString>("spec");
    QTest::addColumn<QString>("says");
    QTest::newRow("empty") << ""
                           << "empty";
    QTest::newRow("rubbish") << "quite good"
                             << "quite good";
    QTest::newRow("open end") << "0.5% +"
                              << "empty";
    QTest::newRow("counts of what") << "0.5% + 2 counts"
                                    << "how much a count is";
    QTest::newRow("two measures") << "0.5% + 2 x 0.01 V + 1 mA"
                                  << "different measures";
    QTest::newRow("negative") << "-0.5 V"
                              << "below zero";
    QTest::newRow("everything") << "100%"
                                << "100 %";
    QTest::newRow("a reading") << "OL"
                               << "neither";
    QTest::newRow("markup") << "<script>"
                            << "neither";
}

void TestSumsMeterSpec::meterSpecRefused()
{
    QFETCH(QString, spec);
    QFETCH(QString, says);
    const QString sentence = testing::refusal(MeterSpec::parse(spec));
    QVERIFY2(sentence.contains(says), qPrintable(sentence));
}

void TestSumsMeterSpec::meterRanges()
{
    BenchFile bench;
    Meter meter;
    meter.id = Id<Meter>{QUuid::createUuid()};
    meter.name = QStringLiteral("bench meter");
    bench.all<Meter>() << meter;
    const auto add = [&](const char *measure, double fullScale, double resolution, double percent, double counts) {
        MeterRange range;
        range.id = Id<MeterRange>{QUuid::createUuid()};
        range.meter = meter.id;
        range.measure = QString::fromUtf8(measure);
        range.fullScale = fullScale;
        range.resolution = resolution;
        range.percentOfReading = percent;
        range.counts = counts;
        bench.all<MeterRange>() << range;
    };
    add("V", 400, 0.1, 0.7, 2);
    add("V", 40, 0.01, 0.5, 2);
    add("mV", 400, 0.1, 0.5, 3);
    add("Ω", 400, 0.1, 0.8, 2);

    const auto range = rangeFor(bench, meter.id, quantity("0.3 V"));
    testing::wantOk(range);
    QCOMPARE(range->measure, QStringLiteral("mV"));
    QCOMPARE(rangeFor(bench, meter.id, quantity("40 V"))->fullScale, 40.0);
    QCOMPARE(rangeFor(bench, meter.id, quantity("-41 V"))->fullScale, 400.0);
    // 120 V on the 400 V range: U22 again, × 1.959964 / √3.
    const auto expanded = uncertaintyOf(bench, meter.id, quantity("120 V"));
    testing::wantOk(expanded);
    QVERIFY(near(*expanded, 1.959964 * 0.600444, 1e-5));
    // 0.5 % of 300 mV + 3 × 0.1 mV = 1.8 mV, given in volts as the value is.
    QVERIFY(near(*MeterSpec::of(*range)->halfWidth(quantity("0.3 V")), 0.0018, 1e-12));
    QVERIFY(testing::refusal(rangeFor(bench, meter.id, quantity("600 V"))).contains(QStringLiteral("bench meter")));
    QVERIFY(!rangeFor(bench, meter.id, quantity("5 Hz")).ok());
    QVERIFY(!rangeFor(bench, meter.id, quantity("OL")).ok());
    QVERIFY(!MeterSpec::of(*range)->halfWidth(quantity("5 Hz")).ok());
    QCOMPARE(meterNamed(bench, QStringLiteral("Bench  Meter"))->id, meter.id);
    QVERIFY(!meterNamed(bench, QStringLiteral("scope")) && !meterNamed(bench, QString()));

    MeterRange warm = *rangeFor(bench, meter.id, quantity("40 V"));
    warm.percentPerKelvin = 0.05; // of reading for each kelvin outside: 4 K more is 0.2 % of 40 V
    QVERIFY(near(*MeterSpec::of(warm, 4)->halfWidth(quantity("40 V")), 0.2 + 0.02 + 0.08, 1e-12));
    warm.counts = -1;
    QVERIFY(!MeterSpec::of(warm).ok());
}

QTEST_GUILESS_MAIN(TestSumsMeterSpec)
#include "test_sums_meter_spec.moc"
