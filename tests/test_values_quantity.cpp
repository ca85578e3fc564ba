#include "model/values/quantity.h"
#include "tests/testing.h"

#include <QRandomGenerator>
#include <QRegularExpression>

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

class TestValuesQuantity : public QObject {
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
    void valuesAreRead_data();
    void valuesAreRead();
    void markingCodeOfTheStandard_data();
    void markingCodeOfTheStandard();
    void valuesThatAreNoneAreRefused_data();
    void valuesThatAreNoneAreRefused();
    void changesPrefixWithoutDust();
    void randomTextNeverBecomesRubbish();
};

void TestValuesQuantity::measuresAreRead_data()
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

void TestValuesQuantity::measuresAreRead()
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

void TestValuesQuantity::prefixesAreThoseOfTheStandard_data()
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

void TestValuesQuantity::prefixesAreThoseOfTheStandard()
{
    QFETCH(const QString, prefix);
    QFETCH(const double, factor);
    for (const QString &symbol : {QStringLiteral("V"), QStringLiteral("A"), QStringLiteral("W"), QStringLiteral("Ω"), QStringLiteral("F"),
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

void TestValuesQuantity::measuresThatAreNoneAreRefused_data()
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

void TestValuesQuantity::measuresThatAreNoneAreRefused()
{
    QFETCH(const QString, text);
    const auto read = Measure::parse(text);
    QVERIFY(!read.ok());
    QVERIFY(refusal(read).endsWith(QLatin1Char('.')));
    QVERIFY(!refusal(read).contains(QLatin1Char('\n')));
}

void TestValuesQuantity::onlyOneSymbolCompares()
{
    QVERIFY(measure(QStringLiteral("mV")).comparableWith(measure(QStringLiteral("kV"))));
    QVERIFY(!measure(QStringLiteral("V")).comparableWith(measure(QStringLiteral("Hz"))));
    QVERIFY(!measure(QStringLiteral("V")).comparableWith(measure(QStringLiteral("VA"))));
    QVERIFY(!measure(QStringLiteral("V")).comparableWith(measure(QStringLiteral("Vpp"))));
    QVERIFY(!measure(QStringLiteral("g")).comparableWith(measure(QStringLiteral("gf·cm"))));
    QVERIFY(!measure(QStringLiteral("dB")).comparableWith(measure(QStringLiteral("dBu"))));
    QVERIFY(!Measure().comparableWith(measure(QStringLiteral("V"))));
}

void TestValuesQuantity::numbersAreRead_data()
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

void TestValuesQuantity::numbersAreRead()
{
    QFETCH(const QString, text);
    QFETCH(const double, value);
    const auto read = parseNumber(text);
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(*read, value);
}

void TestValuesQuantity::numbersThatAreNoneAreRefused_data()
{
    QTest::addColumn<QString>("text");
    for (const char *text : {"", "x", "-", ".", "1.2.3", "1,234.5", "1 234", "12 V", "0x10", "nan", "NAN", "inf", "-inf", "Infinity", "∞", "1e", "1e999",
                             "1e-999", "4k7", "١٢", "1_000", "--1", "e5"})
        QTest::newRow(*text ? text : "nothing") << QString::fromUtf8(text);
}

void TestValuesQuantity::numbersThatAreNoneAreRefused()
{
    QFETCH(const QString, text);
    const auto read = parseNumber(text);
    QVERIFY(!read.ok());
    QVERIFY(refusal(read).contains(text));
}

void TestValuesQuantity::numberTextIsShortestAndReadsBack()
{
    QCOMPARE(numberText(0.4), QStringLiteral("0.4"));
    QCOMPARE(numberText(1200), QStringLiteral("1200"));
    QCOMPARE(numberText(2.5e-7), QStringLiteral("2.5e-07"));
    QCOMPARE(numberText(0.1 + 0.2), QStringLiteral("0.30000000000000004"));
    QCOMPARE(numberText(1e6), QStringLiteral("1000000"));
    QCOMPARE(numberText(-0.0), QStringLiteral("0"));
    QCOMPARE(numberText(std::numeric_limits<double>::quiet_NaN()), QString());
    QRandomGenerator random(754);
    for (int i = 0; i < 20'000; ++i) {
        const double value = (random.generateDouble() - 0.5) * std::pow(10.0, random.bounded(-90, 90));
        QCOMPARE(parseNumber(numberText(value)).value(), value);
    }
}

void TestValuesQuantity::valuesAreRead_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("expected");
    QTest::addColumn<QString>("shown");
    QTest::addColumn<double>("base");
    const auto row = [](const char *text, const char *expected, const char *shown, double base) {
        QTest::newRow(qPrintable(QString::fromUtf8("%1 [%2]").arg(QString::fromUtf8(text), QString::fromUtf8(expected))))
            << QString::fromUtf8(text) << QString::fromUtf8(expected) << QString::fromUtf8(shown) << base;
    };
    row("11.92 V", "", "11.92 V", 11.92);
    row("11,92V", "", "11.92 V", 11.92);
    row("-23,5mV", "", "-23.5 mV", -0.0235);
    row("96 mV", "", "96 mV", 0.096);
    row("12.0 V", "", "12 V", 12);
    row("12 volts", "", "12 V", 12);
    row("47 gf.cm", "", "47 gf·cm", 47);
    row("200 MΩ", "", "200 MΩ", 2e8);
    row("200 Mohm", "", "200 MΩ", 2e8);
    row("1e3 Hz", "", "1000 Hz", 1000);
    row("0.12 %", "", "0.12 %", 0.12);
    row("3 x", "", "3 x", 3);
    row("about 12 V", "", "about 12 V", 12);
    row("~12V", "", "about 12 V", 12);
    row("ca. 12 V", "", "about 12 V", 12);
    row("< 0.1 %", "", "< 0.1 %", 0.1);
    row("<= 0.1 %", "", "< 0.1 %", 0.1);
    row("> 200 MΩ", "", "> 200 MΩ", 2e8);
    row("OL", "", "over range", 0);
    row("ol MΩ", "", "over range MΩ", 0);
    row("OL", "kΩ", "over range kΩ", 0);
    // a bare number is in what was expected, prefix and all
    row("96", "mV", "96 mV", 0.096);
    row("12", "", "12", 12);
    // a lone prefix takes the symbol that was expected
    row("100n", "F", "100 nF", 1e-7);
    row("100 n", "µF", "100 nF", 1e-7);
    row("5m", "V", "5 mV", 0.005);
    row("47K", "Ω", "47 kΩ", 47000);
    row("100n", "", "100 n", 1e-7);
    row("47k", "%", "47 k", 47000); // not kilo per cent
    // but a metre and a kelvin stay what they are
    row("5 m", "V", "5 m", 5);
    row("5m", "", "5 m", 5);
    row("300 K", "Ω", "300 K", 300);
    row("3V3", "", "3.3 V", 3.3);
    row("-4k7", "Ω", "-4.7 kΩ", -4700);
    row("4k7Ω", "", "4.7 kΩ", 4700);
    row("about 4k7", "Ω", "about 4.7 kΩ", 4700);
    row("4m7", "", "0.0047", 0.0047); // thousandths of no unit: "4.7 m" would read back as metres
}

void TestValuesQuantity::valuesAreRead()
{
    QFETCH(const QString, text);
    QFETCH(const QString, expected);
    QFETCH(const QString, shown);
    QFETCH(const double, base);
    const auto read = Quantity::parse(text, measure(expected));
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(read->text(), shown);
    QVERIFY2(read->base() == base, qPrintable(QString::number(read->base(), 'g', 17))); // to the last bit
    QCOMPARE(Quantity::parse(shown).value(), *read);
}

void TestValuesQuantity::markingCodeOfTheStandard_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("expected");
    QTest::addColumn<double>("base");
    // IEC 60062 letter code, ../shared/checks/02_value_cases.csv rows E30 and E31 (verified), E32 (2n2 verified, the others
    // of that row from memory)
    const auto row = [](const char *code, const char *expected, double base) {
        QTest::newRow(code) << QString::fromLatin1(code) << QString::fromUtf8(expected) << base;
    };
    row("R47", "Ω", 0.47);
    row("4R7", "Ω", 4.7);
    row("470R", "Ω", 470);
    row("4K7", "Ω", 4700);
    row("47K", "Ω", 47000);
    row("47K3", "Ω", 47300);
    row("470K", "Ω", 470000);
    row("4M7", "Ω", 4.7e6);
    row("2K2", "Ω", 2200);
    row("1M0", "Ω", 1e6);
    row("2n2", "F", 2.2e-9);
    row("4n7", "F", 4.7e-9);
    row("p33", "F", 0.33e-12);
    row("33p2", "F", 33.2e-12);
    row("2u2", "F", 2.2e-6);
    row("470n", "F", 470e-9);
}

void TestValuesQuantity::markingCodeOfTheStandard()
{
    QFETCH(const QString, code);
    QFETCH(const QString, expected);
    QFETCH(const double, base);
    const auto read = Quantity::parse(code, measure(expected));
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(read->measure().symbol(), expected);
    QCOMPARE(read->base(), base);
}

void TestValuesQuantity::valuesThatAreNoneAreRefused_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *text, const char *says) {
        QTest::newRow(*text ? text : "nothing") << QString::fromUtf8(text) << QString::fromUtf8(says);
    };
    row("", "No value");
    row("V", "does not begin with a figure");
    row("rubbish", "does not begin with a figure");
    row("12 V DC", "\"DC\"");
    row("12 V 5%", "\"5%\"");
    row("12 €", "\"€\"");
    row("5 5", "second number");
    row("1.2.3 V", "one decimal sign");
    row("1,234.5 V", "part the thousands");
    row("78x4x0.6", "size of something");
    row("--5 V", "does not begin");
    row("nan V", "does not begin");
    row("inf", "does not begin");
    row("12 nan", "no measure");
    row("1e999 V", "too large");
    row("1e-999 V", "too small");
    row("1e120 V", "size");
    row("4k7 V DC", "\"V DC\"");
    row("4R7 F", "\"F\"");
    row("<", "does not begin");
    row("about", "does not begin");
    row("0x1F", "size of something");
    row("12 <b>", "<");
    row("١٢ V", "does not begin");
}

void TestValuesQuantity::valuesThatAreNoneAreRefused()
{
    QFETCH(const QString, text);
    QFETCH(const QString, says);
    const auto read = Quantity::parse(text);
    QVERIFY2(!read.ok(), read ? qPrintable(read->text()) : "");
    QVERIFY2(refusal(read).contains(says), qPrintable(refusal(read)));
    QVERIFY(refusal(read).endsWith(QLatin1Char('.')));
}

void TestValuesQuantity::changesPrefixWithoutDust()
{
    const Quantity reading(96, measure(QStringLiteral("mV")));
    const auto volts = reading.in(measure(QStringLiteral("V")));
    QVERIFY(volts.ok());
    QVERIFY(volts->value() == 0.096); // 96 * 0.001 is 0.096000000000000002 only by luck; 4.7 below is not lucky
    QVERIFY(Quantity(4.7, measure(QStringLiteral("µF"))).in(measure(QStringLiteral("nF")))->value() == 4700.0);
    QVERIFY(Quantity(4.35, measure(QStringLiteral("mA"))).base() == 0.00435);
    QCOMPARE(Quantity(5, measure(QStringLiteral("V")), Sense::Below).in(measure(QStringLiteral("mV")))->text(), QStringLiteral("< 5000 mV"));
    const auto refused = reading.in(measure(QStringLiteral("Hz")));
    QVERIFY(!refused.ok());
    QVERIFY2(refusal(refused).contains(QStringLiteral("\"mV\" and \"Hz\"")), qPrintable(refusal(refused)));
}

void TestValuesQuantity::randomTextNeverBecomesRubbish()
{
    const QString alphabet = QStringLiteral("0123456789012345678900..,-+e \u2212RkKMmunpµ\u03bcΩ\u2126VAFHzs%~<>=OLabout·*/xd°C²\t\n\"'&<\u0663\u0000");
    const QList<Measure> wanted{Measure(), measure(QStringLiteral("mV")), measure(QStringLiteral("Ω")), measure(QStringLiteral("m")),
                                measure(QStringLiteral("%")), measure(QStringLiteral("K"))};
    QRandomGenerator random(60'062);
    int taken = 0;
    for (int i = 0; i < 20'000; ++i) {
        QString text;
        for (int n = random.bounded(0, 10); n > 0; --n)
            text += alphabet[random.bounded(static_cast<int>(alphabet.size()))];
        if (const auto read = Measure::parse(text))
            QVERIFY2(Measure::parse(read->text()).value() == *read, qPrintable(text));
        else
            QVERIFY(!refusal(read).contains(QLatin1Char('\n')));
        if (const auto number = parseNumber(text)) {
            QVERIFY(std::isfinite(*number));
            QCOMPARE(parseNumber(numberText(*number)).value(), *number);
        }
        for (const Measure &expected : wanted) {
            const auto read = Quantity::parse(text, expected);
            if (!read) {
                QVERIFY(refusal(read).endsWith(QLatin1Char('.')));
                QVERIFY(!refusal(read).contains(QLatin1Char('\n')));
                continue;
            }
            ++taken;
            QVERIFY2(std::isfinite(read->value()) && std::isfinite(read->base()), qPrintable(text));
            // every value has a figure in what was typed: none comes from nowhere
            QVERIFY2(read->sense() == Sense::OverRange || text.contains(QRegularExpression(QStringLiteral("[0-9]"))), qPrintable(text));
            const auto again = Quantity::parse(read->text());
            QVERIFY2(again.ok() && *again == *read, qPrintable(text + QStringLiteral(" -> ") + read->text()));
        }
    }
    QVERIFY2(taken > 5000, qPrintable(QString::number(taken))); // else the strings never reached the parser's depth
}

QTEST_GUILESS_MAIN(TestValuesQuantity)
#include "test_values_quantity.moc"
