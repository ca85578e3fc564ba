#include "model/sums/metering/budget.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/metering/derived.h"
#include "model/sums/metering/good_enough.h"
#include "model/sums/metering/repeats.h"
#include "model/sums/metering/uncertainty_text.h"
#include "model/sums/normal.h"
#include "model/sums/spread.h"
#include "tests/reckoned.h"

using namespace ts;
using namespace ts::testing;
using namespace Qt::StringLiterals;

namespace {

Quantity quantity(const char *text)
{
    const auto value = Quantity::parse(QString::fromUtf8(text));
    if (!value)
        qFatal("%s is no value", text);
    return *value;
}

bool near(double value, double wanted, double within)
{
    if (std::abs(value - wanted) <= within)
        return true;
    qWarning("%.10g, wanted %.10g", value, wanted);
    return false;
}

/// Two meters: a good one with two ranges, overdue at the end of January, and a rough one.
struct Bench {
    BenchFile file;
    Meter good;
    Meter rough;
    QDate day{2026, 1, 10};

    Bench()
    {
        good = meter(u"bench meter"_s);
        good.calibrationDue = QDate(2026, 1, 31);
        rough = meter(u"hand meter"_s);
        file.all<Meter>() << good << rough;
        range(good, u"V"_s, 4, 0.001, 0.3, 1, 0.02);
        range(good, u"V"_s, 40, 0.01, 0.3, 1, 0.02);
        range(rough, u"mV"_s, 20000, 10, 0.5, 3, 0);
    }

private:
    static Meter meter(const QString &name)
    {
        Meter made;
        made.id = Id<Meter>{QUuid::createUuid()};
        made.name = name;
        return made;
    }
    void range(const Meter &of, const QString &measure, double fullScale, double resolution, double percent, double counts,
               double perKelvin)
    {
        MeterRange range;
        range.id = Id<MeterRange>{QUuid::createUuid()};
        range.meter = of.id;
        range.measure = measure;
        range.fullScale = fullScale;
        range.resolution = resolution;
        range.percentOfReading = percent;
        range.counts = counts;
        range.percentPerKelvin = perKelvin;
        file.all<MeterRange>() << range;
    }
};

// JCGM 100 H.2, five simultaneous readings of voltage, current and phase (S-GTC; ../shared/checks 01, U40).
const QList<double> volts{5.007, 4.994, 5.005, 4.990, 4.999};
const QList<double> milliamperes{19.663, 19.639, 19.640, 19.685, 19.678};
const QList<double> radians{1.0456, 1.0438, 1.0468, 1.0428, 1.0433};

} // namespace

/// Budgets, meters that are good enough and derived readings, against the GUM and data sheets (../shared/checks 01, with its row
/// ids).
class TestSumsMetering : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void accuracyStatements();
    void meansOfRepeats();
    void correlatedInputs();
    void budgetOfAMeter();
    void temperature();
    void words();
    void repeatsAreRead();
    void overdue();
    void settles_data();
    void settles();
    void derivedFromTwo();
    void derivedByHand_data();
    void derivedByHand();
    void derivedRefusals();
    void sums_data();
    void sums() { holdFigure(); }
};

void TestSumsMetering::accuracyStatements()
{
    // U20: JCGM 100 4.3.7 (from memory, arithmetic checked): 14e-6 of reading + 2e-6 of the 1 V range at 0.928571 V.
    MeterRange range;
    range.measure = u"V"_s;
    range.fullScale = 1;
    range.percentOfReading = 14e-4;
    range.percentOfRange = 2e-4;
    const auto spec = MeterSpec::of(range);
    QVERIFY(near(*spec->halfWidth(quantity("0.928571 V")), 15.0e-6, 0.05e-6));
    QVERIFY(near(*spec->standardUncertainty(quantity("0.928571 V")), 8.66e-6, 0.05e-6));
    // U21: with 12 uV of repeat readings.
    const auto both = budgetOf({{quantity("0.928571 V")}, *spec, u"meter"_s, {{u"repeats"_s, {12e-6, 1, 1, 4}}}});
    QVERIFY(near(both->sum.standard, 14.8e-6, 0.3e-6));
    // U22 (S-DMM-120): 120.0 V on 0.1 V, 0.7 % + 2 counts: 118.96 to 121.04 V.
    const auto hand = MeterSpec::parse(u"0.7% + 2 x 0.1 V");
    QVERIFY(near(120 - *hand->halfWidth(quantity("120.0 V")), 118.96, 0.005) &&
            near(120 + *hand->halfWidth(quantity("120.0 V")), 121.04, 0.005));
    QVERIFY(near(*hand->standardUncertainty(quantity("120.0 V")), 0.600444, 1e-6));
    // U24 (S-DMM-3458): 8 ppm + 0.3 uV at 1 V is 8.3 uV.
    QVERIFY(near(*MeterSpec::parse(u"8 ppm + 0.3 uV")->halfWidth(quantity("1 V")), 8.3e-6, 0.01e-6));
    // U25: EA-4/02 S9 takes k = 1.65 for a law that is nearly a rectangle; the combined uncertainty is ours, U that factor.
    const auto sheet = combined({{0.001}, {0.05, std::sqrt(3)}, {0.011, std::sqrt(3)}});
    QVERIFY(near(1.65 * sheet.standard, 0.049, 0.0005));
}

void TestSumsMetering::meansOfRepeats()
{
    const auto mean = [](const QList<double> &row, const char *unit) {
        QList<Quantity> repeats;
        for (const double value : row)
            repeats << Quantity(value, *Measure::parse(QString::fromUtf8(unit)));
        return *budgetOf({repeats, {}, {}, {}});
    };
    // U40: means and standard uncertainties of the means, unrounded as in S-GTC.
    const Budget v = mean(volts, "V");
    QVERIFY(near(v.value.value(), 4.9990, 5e-5) && near(v.sum.standard, 0.00320936, 1e-8) && v.sum.dof == 4);
    const Budget i = mean(milliamperes, "mA");
    QVERIFY(near(i.value.value(), 19.6610, 5e-5) && near(i.sum.standard, 0.00947101, 1e-8));
    const Budget phi = mean(radians, "rad");
    QVERIFY(near(phi.value.value(), 1.04446, 5e-6) && near(phi.sum.standard, 0.000752064, 1e-9));
    QVERIFY(near(v.sum.k, 2.78, 0.005)); // t of 95 % with four degrees of freedom, JCGM 100 table G.2
    QVERIFY(v.value.measure().text() == u"V"_s && v.lines.size() == 1 && near(v.lines.first().share, 1, 1e-12));
}

void TestSumsMetering::correlatedInputs()
{
    // U41: correlation of the means.
    const double rVI = *correlationOfMeans(volts, milliamperes);
    const double rVphi = *correlationOfMeans(volts, radians);
    const double rIphi = *correlationOfMeans(milliamperes, radians);
    QVERIFY(near(rVI, -0.355, 0.001) && near(rVphi, 0.858, 0.001) && near(rIphi, -0.645, 0.001));
    // U43, U44: X = V / I sin phi and Z = V / I, covariances carried through.
    const auto u = [](const QList<double> &row) { return *spreadOf(row)->sd / std::sqrt(5.0); };
    const double v = spreadOf(volts)->mean;
    const double i = spreadOf(milliamperes)->mean / 1000;
    const double phi = spreadOf(radians)->mean;
    const QList<double> standards{u(volts), u(milliamperes) / 1000, u(radians)};
    const QList<QList<double>> r{{1, rVI, rVphi}, {rVI, 1, rIphi}, {rVphi, rIphi, 1}};
    QVERIFY(near(v / i * std::sin(phi), 219.847, 0.001));
    QVERIFY(
        near(propagated({std::sin(phi) / i, -v / (i * i) * std::sin(phi), v / i * std::cos(phi)}, standards, r), 0.2956, 0.001));
    // Z needs two of them: the same by the derived reading.
    QVERIFY(near(v / i, 254.260, 0.001));
    QVERIFY(near(propagated({1 / i, -v / (i * i), 0}, standards, r), 0.2363, 0.001));
    const auto z =
        derivedReading(Derived::Ratio, {Quantity(v, {}), standards.at(0), 4, {}}, {Quantity(i, {}), standards.at(1), 4, {}}, rVI);
    QVERIFY(near(z->value.value(), 254.260, 0.001) && near(z->sum.standard, 0.2363, 0.001) && z->sum.dof == 4);
}

void TestSumsMetering::budgetOfAMeter()
{
    const Bench bench;
    // By hand: 0.3 % of 12 V + 1 x 0.01 V on the 40 V range is 0.046 V; a rectangle of that is 0.0265581 V.
    const auto budget = budgetWith(bench.file, bench.good.id, {quantity("12 V")});
    wantOk(budget);
    QVERIFY(near(budget->sum.standard, 0.046 / std::sqrt(3), 1e-12));
    QVERIFY(near(budget->sum.expanded, 0.046 / std::sqrt(3) * coverage95, 1e-12));
    QVERIFY(std::isinf(budget->sum.dof));
    // The range is that of the highest of the readings, since the meter stood on one.
    const auto about4 = budgetWith(bench.file, bench.good.id, {quantity("3.99 V"), quantity("4.01 V"), quantity("4.00 V")});
    wantOk(about4);
    QVERIFY(about4->lines.first().text.contains(u"40 V range"_s));
    // By hand: u = sqrt((0.022/sqrt3)^2 + (0.01/sqrt3)^2) with s = 0.01; nu = u^4 / ((0.01/sqrt3)^4 / 2).
    const double meter = 0.022 / std::sqrt(3);
    const double repeats = 0.01 / std::sqrt(3);
    const double u = std::hypot(meter, repeats);
    QVERIFY(near(about4->sum.standard, u, 1e-9) && near(about4->sum.dof, std::pow(u, 4) / (std::pow(repeats, 4) / 2), 1e-3));
    QVERIFY(near(about4->lines.at(0).share + about4->lines.at(1).share, 1, 1e-9));
    // A reading in another prefix than the range.
    const auto small = budgetWith(bench.file, bench.rough.id, {quantity("1500 mV")});
    QVERIFY(small && near(small->sum.standard, (0.005 * 1500 + 30) / std::sqrt(3), 1e-9));
    QVERIFY(refusal(budgetWith(bench.file, bench.good.id, {quantity("400 V")})).contains(u"bench meter has no range"_s));
    QVERIFY(refusal(budgetWith(bench.file, bench.good.id, {quantity("OL V")})).contains(u"no figure"_s));
    QVERIFY(refusal(budgetWith(bench.file, bench.good.id, {quantity("1 V"), quantity("1 A")})).contains(u"different"_s));
    QVERIFY(!budgetOf({}).ok());
}

void TestSumsMetering::temperature()
{
    const Bench bench;
    QCOMPARE(kelvinOutside({}), 0.0);
    QCOMPARE(kelvinOutside(23.0), 0.0);
    QCOMPARE(kelvinOutside(28.0), 0.0);
    QCOMPARE(kelvinOutside(33.0), 5.0);
    QCOMPARE(kelvinOutside(10.0), 8.0);
    // By hand: 5 K outside at 0.02 % a kelvin adds 0.1 % of 12 V to the 0.046 V.
    const auto warm = budgetWith(bench.file, bench.good.id, {quantity("12 V")}, 33.0);
    QVERIFY(near(warm->sum.standard, (0.046 + 0.012) / std::sqrt(3), 1e-12));
    QVERIFY(warm->words().first().contains(u"5 K outside"_s));
}

void TestSumsMetering::words()
{
    const Bench bench;
    const auto budget = budgetWith(bench.file, bench.good.id, {quantity("11.92 V"), quantity("11.93 V"), quantity("11.91 V")}, {},
                                   {{u"loading by the meter, 0.1 %"_s, {0.012, std::sqrt(3)}}});
    wantOk(budget);
    const QStringList words = budget->words();
    QCOMPARE(words.size(), 4);
    QVERIFY2(words.at(0).startsWith(u"bench meter, 40 V range: ± 0.046 V, a rectangle (u = 0.027 V, "_s),
             qPrintable(words.at(0)));
    QVERIFY2(words.at(1).startsWith(u"3 readings, standard deviation of their mean (u = 0.0058 V, "_s) &&
                 words.at(1).contains(u"2 degrees of freedom"_s),
             qPrintable(words.at(1)));
    QVERIFY(words.at(2).startsWith(u"loading by the meter"_s));
    QVERIFY2(words.at(3).startsWith(u"together ± 0.0"_s) && words.at(3).contains(u"95 %, k = 1.96"_s), qPrintable(words.at(3)));
    // Figures to two places, never better than they are (JCGM 100:2008, 7.2.6).
    QCOMPARE(uncertaintyFigures(0.0451), u"0.046"_s);
    QCOMPARE(uncertaintyFigures(0.3), u"0.3"_s);
    QCOMPARE(uncertaintyFigures(1234), u"1300"_s);
    QCOMPARE(uncertaintyFigures(0), QString());
    QCOMPARE(uncertaintyWithUnit(0.02, *Measure::parse(u"mA")), u"0.02 mA"_s);
}

void TestSumsMetering::repeatsAreRead()
{
    const auto repeats = repeatedReadings(u"11.92; 11,93;11.91 V"_s);
    wantOk(repeats);
    QVERIFY(repeats->size() == 3 && repeats->at(1) == quantity("11.93 V"));
    QCOMPARE(repeatsText(*repeats), u"11.92; 11.93; 11.91"_s);
    QCOMPARE(repeatedReadings(u"950 mV; 1.02 V"_s)->at(1).text(), u"1020 mV"_s);
    QCOMPARE(repeatedReadings(u"1;2"_s, *Measure::parse(u"V"))->first().text(), u"1 V"_s);
    QVERIFY(!repeatedReadings(u"1 V; red"_s).ok() && !repeatedReadings(u"1; 2 V; 3 A"_s).ok() && !repeatedReadings(u";"_s).ok());
}

void TestSumsMetering::overdue()
{
    const Bench bench;
    QVERIFY(!calibrationOverdue(bench.good, QDate(2026, 1, 31)) && calibrationOverdue(bench.good, QDate(2026, 2, 1)));
    QVERIFY(!calibrationOverdue(bench.rough, QDate(2030, 1, 1)));
    QCOMPARE(overdueWords(bench.good, QDate(2026, 2, 1)), u"calibration was due on 2026-01-31"_s);
    QVERIFY(overdueWords(bench.good, bench.day).isEmpty());
}

void TestSumsMetering::settles_data()
{
    QTest::addColumn<QString>("value");
    QTest::addColumn<QString>("limit");
    QTest::addColumn<QDate>("day");
    QTest::addColumn<double>("needed");
    QTest::addColumn<QString>("good"); // names, best first
    const QDate due(2026, 1, 10);
    const QDate overdue(2026, 3, 1);
    // The bench meter reads 3.2 V to ± 0.012 V (0.3 % + 1 mV as a rectangle), the hand meter to ± 0.052 V.
    QTest::newRow("both") << "3.2 V"
                          << "<= 3.3 V" << due << 0.1 << "bench meter,hand meter";
    QTest::newRow("one") << "3.28 V"
                         << "<= 3.3 V" << due << 0.02 << "bench meter";
    QTest::newRow("none") << "3.295 V"
                          << "<= 3.3 V" << due << 0.005 << "";
    QTest::newRow("outside just so") << "3.32 V"
                                     << "3.0..3.3 V" << due << 0.02 << "bench meter";
    QTest::newRow("the lower end") << "3.01 V"
                                   << "3 V..3.5 V" << due << 0.01 << "";
    QTest::newRow("overdue comes last") << "3.2 V"
                                        << "<= 3.3 V" << overdue << 0.1 << "hand meter,bench meter";
    QTest::newRow("on the limit") << "3.3 V"
                                  << "<= 3.3 V" << due << 0.0 << "";
    QTest::newRow("no range") << "900 V"
                              << "<= 950 V" << due << 50.0 << "";
}

void TestSumsMetering::settles()
{
    QFETCH(QString, value);
    QFETCH(QString, limit);
    QFETCH(QDate, day);
    QFETCH(double, needed);
    QFETCH(QString, good);
    const Bench bench;
    const Quantity read = *Quantity::parse(value);
    const auto settling = whatWouldSettle(read, *Limit::parse(limit), bench.file, day);
    wantOk(settling);
    QVERIFY(near(settling->needed, needed, 1e-12));
    QStringList names;
    for (const MeterChoice &choice : settling->good) {
        names << choice.name;
        // What is called good enough does settle it.
        QVERIFY(judge(read, *Limit::parse(limit), choice.uncertainty95)->verdict != Verdict::TooCloseToCall);
    }
    QCOMPARE(names.join(u','), good);
    for (const MeterChoice &choice : settling->others)
        QVERIFY(judge(read, *Limit::parse(limit), choice.uncertainty95)->verdict == Verdict::TooCloseToCall);
    QVERIFY2(!settling->sentence.isEmpty(), qPrintable(settling->sentence));
    if (good.isEmpty() && needed > 0)
        QVERIFY(settling->sentence.contains(u"none of the bench's meters"_s));
    if (day.month() == 3)
        QVERIFY(settling->sentence.contains(u"calibration was due"_s));
}

void TestSumsMetering::derivedFromTwo()
{
    // O01 (S-BIAS-L): 10.0 mV over 0.22 ohm is 45.4545 mA. With 1 % and 5 % as rectangles the relative parts add as squares.
    const double uv = 0.1 / std::sqrt(3);
    const double ur = 0.011 / std::sqrt(3);
    const auto current = derivedReading(Derived::Current, {quantity("10.0 mV"), uv, HUGE_VAL, u"drop over R12"_s},
                                        {quantity("0.22 Ω"), ur, HUGE_VAL, u"R12"_s});
    wantOk(current);
    QVERIFY(near(current->value.value(), 45.4545, 1e-4) && current->value.measure().text() == u"mA"_s);
    QVERIFY(near(current->sum.standard / 45.4545, std::hypot(0.01, 0.05) / std::sqrt(3), 1e-6));
    QVERIFY(current->words().first().startsWith(u"drop over R12 10 mV ± 0.058 mV standard"_s));
    QVERIFY(near(current->lines.at(1).share, 25.0 / 26, 1e-6)); // the resistor is 5 of 5 and 1 squared
    // O06: 28.28 V into 8 ohm is 99.97 W; the voltage counts twice.
    const auto power =
        derivedReading(Derived::Power, {quantity("28.28 V"), 0.2828, HUGE_VAL, {}}, {quantity("8 Ω"), 0, HUGE_VAL, {}});
    QVERIFY(near(power->value.value(), 99.97, 0.001) && near(power->sum.standard, 2 * 0.01 * 99.97, 0.001));
    // 6 dB more or less: 1 % of a voltage is 0.0864 dB (20 log10(1.01) = 0.08643).
    const auto gain = derivedReading(Derived::Gain, {quantity("2 V"), 0.02, HUGE_VAL, {}}, {quantity("1 V"), 0, HUGE_VAL, {}});
    QVERIFY(near(gain->value.value(), 6.0206, 1e-4) && near(gain->sum.standard, 0.0869, 1e-4));
    // Two channels with one range of one meter: what both share cancels in their ratio.
    const DerivedFrom left{quantity("98 mV"), 0.98, HUGE_VAL, {}};
    const DerivedFrom right{quantity("100 mV"), 1.0, HUGE_VAL, {}};
    const auto apart = derivedReading(Derived::Ratio, left, right);
    const auto together = derivedReading(Derived::Ratio, left, right, 1);
    QVERIFY(near(apart->value.value(), 0.98, 1e-12) && near(apart->sum.standard, 0.98 * std::sqrt(2) * 0.01, 1e-9));
    QVERIFY(near(together->sum.standard, 0, 1e-9));
    QVERIFY(near(derivedReading(Derived::Ratio, left, right, -1)->sum.standard, 0.98 * 0.02, 1e-9));
    const auto balance = derivedReading(Derived::Balance, left, right);
    QVERIFY(near(balance->value.value(), 20 * std::log10(0.98), 1e-9) && balance->value.measure().text() == u"dB"_s);
}

void TestSumsMetering::derivedByHand_data()
{
    QTest::addColumn<Derived>("kind");
    QTest::addColumn<QString>("first");
    QTest::addColumn<QString>("second");
    for (const auto &[kind, word] : Words<Derived>::list) {
        const bool ohms = kind == Derived::Current || kind == Derived::Power;
        QTest::newRow(word) << kind << u"3.3 V"_s << (ohms ? u"47 Ω"_s : u"750 mV"_s);
    }
}

/// The sensitivities against differences of the result itself.
void TestSumsMetering::derivedByHand()
{
    QFETCH(Derived, kind);
    QFETCH(QString, first);
    QFETCH(QString, second);
    const Quantity a = *Quantity::parse(first);
    const Quantity b = *Quantity::parse(second);
    const auto result = [&](double da, double db) {
        const auto made = derivedReading(kind, {Quantity(a.value() + da, a.measure()), 0, HUGE_VAL, {}},
                                         {Quantity(b.value() + db, b.measure()), 0, HUGE_VAL, {}});
        return made->value.value() * made->value.measure().factor();
    };
    const double ua = 1e-4 * a.value();
    const double ub = 2e-4 * b.value();
    const double byA = (result(ua, 0) - result(-ua, 0)) / 2;
    const double byB = (result(0, ub) - result(0, -ub)) / 2;
    const auto made = derivedReading(kind, {a, ua, HUGE_VAL, {}}, {b, ub, HUGE_VAL, {}}, 0.5);
    wantOk(made);
    const double wanted = std::sqrt(byA * byA + byB * byB + byA * byB);
    QVERIFY(near(made->sum.standard * made->value.measure().factor() / wanted, 1, 1e-5));
}

void TestSumsMetering::derivedRefusals()
{
    const auto refused = [](Derived kind, const char *a, const char *b, double r = 0) {
        return refusal(derivedReading(kind, {quantity(a), 0, HUGE_VAL, {}}, {quantity(b), 0, HUGE_VAL, {}}, r));
    };
    QVERIFY(refused(Derived::Current, "1 A", "1 Ω").contains(u"volts and ohms"_s));
    QVERIFY(refused(Derived::Power, "1 V", "0 Ω").contains(u"more than 0"_s));
    QVERIFY(refused(Derived::Ratio, "1 V", "1 A").contains(u"do not compare"_s));
    QVERIFY(refused(Derived::Gain, "-1 V", "1 V").contains(u"above 0"_s));
    QVERIFY(refused(Derived::Ratio, "1 V", "0 V").contains(u"above 0"_s));
    QVERIFY(refused(Derived::Ratio, "1 V", "1 V", 2).contains(u"correlation"_s));
    QVERIFY(!refused(Derived::Ratio, "OL V", "1 V").isEmpty());
}

void TestSumsMetering::sums_data()
{
    figureColumns();
    // U22 by itself, and with three readings whose mean deviates by 0.1 / sqrt 3 (by hand).
    figure("U22", "budget|values=120.0 V|meter=0.7% + 2 x 0.1 V", "combined", 0.600444, 1e-6);
    figure("U22 repeats", "budget|values=119.9; 120.0; 120.1 V|meter=0.7% + 2 x 0.1 V", "combined",
           std::hypot(0.600444, 0.1 / std::sqrt(3)), 1e-6);
    figure("U22 repeats", "budget|values=119.9; 120.0; 120.1 V|meter=0.7% + 2 x 0.1 V", "value", 120, 1e-12);
    figure("U21", "budget|values=0.928571 V|meter=14 ppm + 2 uV|terms=12e-6", "combined", 14.8e-6, 0.3e-6);
    figure("one of its own", "budget|values=5|terms=0.3:rect,0.4", "combined", std::hypot(0.3 / std::sqrt(3), 0.4), 1e-12);
    // O01 with U95 of 1 % and 5 %, by hand.
    figure("O01", "derived|kind=current|first=10 mV|first_u=0.1|second=0.22 Ω|second_u=0.011", "value", 45.4545, 1e-4);
    figure("O01", "derived|kind=current|first=10 mV|first_u=0.1|second=0.22 Ω|second_u=0.011", "expanded",
           45.4545 * std::hypot(0.01, 0.05), 1e-4);
    figure("balance", "derived|kind=balance|first=98 mV|second=100 mV", "value", 20 * std::log10(0.98), 1e-9);
}

QTEST_GUILESS_MAIN(TestSumsMetering)
#include "test_sums_metering.moc"
