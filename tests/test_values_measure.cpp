#include "model/values/quantity.h"
#include "tests/testing.h"

#include <QRandomGenerator>

#include <cmath>
#include <limits>

using namespace ts;
using ts::testing::refusal;

namespace {

Measure measure(const QString &text)
{
    return text.isEmpty() ? Measure() : *Measure::parse(text);
}

} // namespace

class TestValuesMeasure : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void measuresAreRead_data();
    void measuresAreRead();
    void prefixesAreThoseOfTheStandard_data();
    void prefixesAreThoseOfTheStandard();
    void measuresThatAreNoneAreRefused_data();
    void measuresThatAreNoneAreRefused();
    void onlyOneSymbolCompares();
    void numbersAreRead_data();
    void numbersAreRead();
    void numbersThatAreNoneAreRefused_data();
    void numbersThatAreNoneAreRefused();
    void numberTextIsShortestAndReadsBack();
};

void TestValuesMeasure::measuresAreRead_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("symbol");
    QTest::addColumn<int>("exponent");
    QTest::addColumn<QString>("shown");
    const auto row = [](const char *text, const char *symbol, int exponent, const char *shown) {
        QTest::newRow(text) << QString::fromUtf8(text) << QString::fromUtf8(symbol) << exponent << QString::fromUtf8(shown);
    };
    row("V", "V", 0, "V");
    row("mV", "V", -3, "mV");
    row("mv", "V", -3, "mV");
    row("uF", "F", -6, "µF");
    row("µF", "F", -6, "µF");
    row("\u03bcF", "F", -6, "\u00b5F"); // Greek mu becomes the micro sign
    row("Ω", "Ω", 0, "\u03a9");
    row("\u2126", "Ω", 0, "\u03a9"); // the ohm sign becomes the Greek letter
    row("R", "Ω", 0, "Ω");
    row("ohms", "Ω", 0, "Ω");
    row("kR", "Ω", 3, "kΩ");
    row("KΩ", "Ω", 3, "kΩ");
    row("Mohm", "Ω", 6, "MΩ");
    row("mΩ", "Ω", -3, "mΩ");
    row("GΩ", "Ω", 9, "GΩ");
    row("khz", "Hz", 3, "kHz");
    row("MHz", "Hz", 6, "MHz");
    row("m", "m", 0, "m");
    row("mm", "m", -3, "mm");
    row("cm", "m", -2, "cm");
    row("s", "s", 0, "s");
    row("ms", "s", -3, "ms");
    row("g", "g", 0, "g");
    row("kg", "g", 3, "kg");
    row("Pa", "Pa", 0, "Pa");
    row("var", "var", 0, "var");
    row("mbar", "bar", -3, "mbar");
    row("K", "K", 0, "K");
    row("VA", "VA", 0, "VA");
    row("mVpp", "Vpp", -3, "mVpp");
    row("Vp-p", "Vpp", 0, "Vpp");
    row("mN·m", "N·m", -3, "mN·m");
    row("mNm", "N·m", -3, "mN·m");
    row("cN.m", "N·m", -2, "cN·m");
    row("gf·cm", "gf·cm", 0, "gf·cm");
    row("gf.cm", "gf·cm", 0, "gf·cm");
    row("gf*cm", "gf·cm", 0, "gf·cm");
    row("gf\u22c5cm", "gf·cm", 0, "gf·cm");
    row("gfcm", "gf·cm", 0, "gf·cm");
    row("%", "%", 0, "%");
    row("dB", "dB", 0, "dB"); // not deci-B
    row("db", "dB", 0, "dB");
    row("dBu", "dBu", 0, "dBu");
    row("dBV", "dBV", 0, "dBV"); // not deci-anything
    row("dV", "dV", 0, "dV");
    row("cs", "cs", 0, "cs");
    row("rpm", "rpm", 0, "rpm");
    row("min", "min", 0, "min");
    row("h", "h", 0, "h");
    row("°C", "°C", 0, "°C");
    row("ppm", "ppm", 0, "ppm");
    row("x", "x", 0, "x");
    row("turns", "turns", 0, "turns");
    row("mV/s", "mV/s", 0, "mV/s");
    row("cm²", "cm²", 0, "cm²");
    row("k", "", 3, "k");
    row("u", "", -6, "µ");
}

void TestValuesMeasure::measuresAreRead()
{
    QFETCH(const QString, text);
    QFETCH(const QString, symbol);
    QFETCH(const int, exponent);
    QFETCH(const QString, shown);
    const auto read = Measure::parse(text);
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(read->symbol(), symbol);
    QCOMPARE(read->exponent(), exponent);
    QCOMPARE(read->text(), shown);
    QCOMPARE(Measure::parse(read->text()).value(), *read);
}

void TestValuesMeasure::prefixesAreThoseOfTheStandard_data()
{
    QTest::addColumn<QString>("prefix");
    QTest::addColumn<double>("factor");
    // SI Brochure (BIPM, 9th edition), table 7
    QTest::newRow("pico") << QStringLiteral("p") << 1e-12;
    QTest::newRow("nano") << QStringLiteral("n") << 1e-9;
    QTest::newRow("micro") << QStringLiteral("µ") << 1e-6;
    QTest::newRow("milli") << QStringLiteral("m") << 1e-3;
    QTest::newRow("kilo") << QStringLiteral("k") << 1e3;
    QTest::newRow("mega") << QStringLiteral("M") << 1e6;
    QTest::newRow("giga") << QStringLiteral("G") << 1e9;
    QTest::newRow("tera") << QStringLiteral("T") << 1e12;
}

void TestValuesMeasure::prefixesAreThoseOfTheStandard()
{
    QFETCH(const QString, prefix);
    QFETCH(const double, factor);
    for (const QString &symbol :
         {QStringLiteral("V"), QStringLiteral("A"), QStringLiteral("W"), QStringLiteral("Ω"), QStringLiteral("F"),
          QStringLiteral("H"), QStringLiteral("Hz"), QStringLiteral("s"), QStringLiteral("m"), QStringLiteral("g"),
          QStringLiteral("N"), QStringLiteral("Pa"), QStringLiteral("VA"), QStringLiteral("K"), QStringLiteral("bar"),
          QStringLiteral("var"), QStringLiteral("lx")}) {
        const Measure read = measure(prefix + symbol);
        QCOMPARE(read.symbol(), symbol);
        QCOMPARE(read.factor(), factor);
        QCOMPARE(Quantity(1, read).base(), factor);
        QCOMPARE(read.text(), prefix + symbol);
    }
}

void TestValuesMeasure::measuresThatAreNoneAreRefused_data()
{
    QTest::addColumn<QString>("text");
    QTest::newRow("nothing") << QString();
    QTest::newRow("spaces") << QStringLiteral("  ");
    QTest::newRow("figure first") << QStringLiteral("5V");
    QTest::newRow("two words") << QStringLiteral("V DC");
    QTest::newRow("control sign") << QStringLiteral("V\u0007");
    QTest::newRow("line break inside") << QStringLiteral("V\nA");
    QTest::newRow("too long") << QStringLiteral("abcdefghijklmnopq");
    QTest::newRow("a dimension") << QStringLiteral("x4x0.6");
    QTest::newRow("markup") << QStringLiteral("<b>");
    QTest::newRow("over range") << QStringLiteral("OL");
    QTest::newRow("no number") << QStringLiteral("NaN");
    QTest::newRow("half a surrogate") << QString(QChar(0xd83d));
    QTest::newRow("broken off") << QStringLiteral("gf.");
}

void TestValuesMeasure::measuresThatAreNoneAreRefused()
{
    QFETCH(const QString, text);
    const auto read = Measure::parse(text);
    QVERIFY(!read.ok());
    QVERIFY(refusal(read).endsWith(QLatin1Char('.')));
    QVERIFY(!refusal(read).contains(QLatin1Char('\n')));
}

void TestValuesMeasure::onlyOneSymbolCompares()
{
    QVERIFY(measure(QStringLiteral("mV")).comparableWith(measure(QStringLiteral("kV"))));
    QVERIFY(!measure(QStringLiteral("V")).comparableWith(measure(QStringLiteral("Hz"))));
    QVERIFY(!measure(QStringLiteral("V")).comparableWith(measure(QStringLiteral("VA"))));
    QVERIFY(!measure(QStringLiteral("V")).comparableWith(measure(QStringLiteral("Vpp"))));
    QVERIFY(!measure(QStringLiteral("g")).comparableWith(measure(QStringLiteral("gf·cm"))));
    QVERIFY(!measure(QStringLiteral("dB")).comparableWith(measure(QStringLiteral("dBu"))));
    QVERIFY(!Measure().comparableWith(measure(QStringLiteral("V"))));
}

void TestValuesMeasure::numbersAreRead_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<double>("value");
    QTest::newRow("whole") << QStringLiteral("12") << 12.0;
    QTest::newRow("point") << QStringLiteral("11.92") << 11.92;
    QTest::newRow("comma") << QStringLiteral("11,92") << 11.92;
    QTest::newRow("minus") << QStringLiteral("-0.5") << -0.5;
    QTest::newRow("typographic minus") << QStringLiteral("\u22120.5") << -0.5;
    QTest::newRow("plus") << QStringLiteral("+3") << 3.0;
    QTest::newRow("no whole part") << QStringLiteral(".5") << 0.5;
    QTest::newRow("exponent") << QStringLiteral("1e3") << 1000.0;
    QTest::newRow("small exponent") << QStringLiteral("2,5E-07") << 2.5e-7;
    QTest::newRow("around") << QStringLiteral(" 7 ") << 7.0;
    QTest::newRow("zero") << QStringLiteral("0.00") << 0.0;
    QTest::newRow("zero of any size") << QStringLiteral("0e-999") << 0.0;
}

void TestValuesMeasure::numbersAreRead()
{
    QFETCH(const QString, text);
    QFETCH(const double, value);
    const auto read = parseNumber(text);
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(*read, value);
}

void TestValuesMeasure::numbersThatAreNoneAreRefused_data()
{
    QTest::addColumn<QString>("text");
    for (const char *text : {"",     "x",        "-", ".",  "1.2.3", "1,234.5", "1 234", "12 V", "0x10",  "nan", "NAN", "inf",
                             "-inf", "Infinity", "∞", "1e", "1e999", "1e-999",  "4k7",   "١٢",   "1_000", "--1", "e5"})
        QTest::newRow(*text ? text : "nothing") << QString::fromUtf8(text);
}

void TestValuesMeasure::numbersThatAreNoneAreRefused()
{
    QFETCH(const QString, text);
    const auto read = parseNumber(text);
    QVERIFY(!read.ok());
    QVERIFY(refusal(read).contains(text));
}

void TestValuesMeasure::numberTextIsShortestAndReadsBack()
{
    QCOMPARE(numberText(0.4), QStringLiteral("0.4"));
    QCOMPARE(numberText(1200), QStringLiteral("1200"));
    QCOMPARE(numberText(2.5e-7), QStringLiteral("2.5e-07"));
    QCOMPARE(numberText(0.1 + 0.2), QStringLiteral("0.30000000000000004"));
    QCOMPARE(numberText(1e6), QStringLiteral("1000000"));
    QCOMPARE(numberText(-0.0), QStringLiteral("0"));
    QVERIFY(!std::signbit(*parseNumber(u"-0.0"))); // there is one nothing
    QCOMPARE(numberText(std::numeric_limits<double>::quiet_NaN()), QString());
    QRandomGenerator random(754);
    for (int i = 0; i < 20'000; ++i) {
        const double value = (random.generateDouble() - 0.5) * std::pow(10.0, random.bounded(-90, 90));
        QCOMPARE(parseNumber(numberText(value)).value(), value);
    }
}

QTEST_GUILESS_MAIN(TestValuesMeasure)
#include "test_values_measure.moc"
