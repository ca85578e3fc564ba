#include "model/values/limit.h"
#include "tests/testing.h"

#include <QRandomGenerator>

#include <cmath>

using namespace ts;
using ts::testing::refusal;

namespace {

using Maybe = std::optional<double>;

Measure measure(const QString &text)
{
    return text.isEmpty() ? Measure() : *Measure::parse(text);
}

} // namespace

Q_DECLARE_METATYPE(Maybe)

class TestValuesLimit : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void limitsAreRead_data();
    void limitsAreRead();
    void theEndItselfIsWithin_data();
    void theEndItselfIsWithin();
    void decibelsAreRatios();
    void limitsThatAreNoneAreRefused_data();
    void limitsThatAreNoneAreRefused();
    void standsInAnotherPrefix();
    void noneWantsNothing();
    void randomTextNeverBecomesRubbish();
};

void TestValuesLimit::limitsAreRead_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("expected");
    QTest::addColumn<Maybe>("low");
    QTest::addColumn<Maybe>("high");
    QTest::addColumn<Maybe>("nominal");
    QTest::addColumn<QString>("unit");
    QTest::addColumn<QString>("jotted");
    QTest::addColumn<QString>("shown");
    const auto row = [](const char *text, const char *expected, Maybe low, Maybe high, Maybe nominal, const char *unit,
                        const char *jotted, const char *shown) {
        QTest::newRow(text) << QString::fromUtf8(text) << QString::fromUtf8(expected) << low << high << nominal
                            << QString::fromUtf8(unit) << QString::fromUtf8(jotted) << QString::fromUtf8(shown);
    };
    // The forms of the jot line (product.md); the ends are sums in the head.
    row("12 V 5%", "", 11.4, 12.6, 12.0, "V", "12 V 5%", "12 V ± 5 %");
    row("±50 mV", "", -50.0, 50.0, {}, "mV", "-50..50 mV", "-50 to 50 mV");
    row("+/-0,5 V", "", -0.5, 0.5, {}, "V", "-0.5..0.5 V", "-0.5 to 0.5 V");
    row("12V5%", "", {}, {}, {}, "", "", ""); // run together it is no limit
    row("12 V ± 5 %", "", 11.4, 12.6, 12.0, "V", "12 V 5%", "12 V ± 5 %");
    row("12 V +- 5%", "", 11.4, 12.6, 12.0, "V", "12 V 5%", "12 V ± 5 %");
    row("12 V +/-5%", "", 11.4, 12.6, 12.0, "V", "12 V 5%", "12 V ± 5 %");
    row("12V 5 %", "", 11.4, 12.6, 12.0, "V", "12 V 5%", "12 V ± 5 %");
    row("12 V 0.5 V", "", 11.5, 12.5, 12.0, "V", "12 V 0.5 V", "12 V ± 0.5 V");
    row("12 V +-0.5 V", "", 11.5, 12.5, 12.0, "V", "12 V 0.5 V", "12 V ± 0.5 V");
    row("12 V 500 mV", "", 11.5, 12.5, 12.0, "V", "12 V 500 mV", "12 V ± 500 mV");
    row("12 ± 0.5 V", "", 11.5, 12.5, 12.0, "V", "12 V 0.5 V", "12 V ± 0.5 V");
    row("12 V ± 0,5", "", 11.5, 12.5, 12.0, "V", "12 V 0.5 V", "12 V ± 0.5 V");
    row("12 ± 0.5", "", 11.5, 12.5, 12.0, "", "12 ± 0.5", "12 ± 0.5");
    row("-23 V 10%", "", -25.3, -20.7, -23.0, "V", "-23 V 10%", "-23 V ± 10 %");
    row("35..65 gf.cm", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("35 to 65 gf.cm", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("35 gf.cm .. 65 gf.cm", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("35-65 gf.cm", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("35 - 65 gf.cm", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("35–65 gf.cm", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("35 gf.cm..65", "", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("-5..5 mV", "", -5.0, 5.0, {}, "mV", "-5..5 mV", "-5 to 5 mV");
    row("950 mV..1.1 V", "", 0.95, 1.1, {}, "V", "0.95..1.1 V", "0.95 to 1.1 V");
    row("0,5..1,5 V", "", 0.5, 1.5, {}, "V", "0.5..1.5 V", "0.5 to 1.5 V");
    row("<= 0.12 %", "", {}, 0.12, {}, "%", "<= 0.12 %", "up to 0.12 %");
    row("< 0.12 %", "", {}, 0.12, {}, "%", "<= 0.12 %", "up to 0.12 %");
    row("≤0.12%", "", {}, 0.12, {}, "%", "<= 0.12 %", "up to 0.12 %");
    row("up to 0.12 %", "", {}, 0.12, {}, "%", "<= 0.12 %", "up to 0.12 %");
    row(">= 2 MΩ", "", 2.0, {}, {}, "MΩ", ">= 2 MΩ", "at least 2 MΩ");
    row("> 2 Mohm", "", 2.0, {}, {}, "MΩ", ">= 2 MΩ", "at least 2 MΩ");
    row("at least 2 MΩ", "", 2.0, {}, {}, "MΩ", ">= 2 MΩ", "at least 2 MΩ");
    row("12 V", "", {}, {}, 12.0, "V", "12 V", "12 V");
    row("4k7 5%", "Ω", 4.465, 4.935, 4.7, "kΩ", "4.7 kΩ 5%", "4.7 kΩ ± 5 %");
    row("R47 10%", "", 0.423, 0.517, 0.47, "Ω", "0.47 Ω 10%", "0.47 Ω ± 10 %");
    // a limit without unit takes the one that was expected
    row("35..65", "gf.cm", 35.0, 65.0, {}, "gf·cm", "35..65 gf·cm", "35 to 65 gf·cm");
    row("12 5%", "V", 11.4, 12.6, 12.0, "V", "12 V 5%", "12 V ± 5 %");
    row("<= 5", "mA", {}, 5.0, {}, "mA", "<= 5 mA", "up to 5 mA");
    row(">= 2M", "kΩ", 2.0, {}, {}, "MΩ", ">= 2 MΩ", "at least 2 MΩ");
    // a tolerance in the measure of the value is points of it, not a share
    row("50 % 5 %", "", 45.0, 55.0, 50.0, "%", "50 % 5 %", "50 % ± 5 %");
    row("0 dB ± 2 dB", "", -2.0, 2.0, 0.0, "dB", "0 dB 2 dB", "0 dB ± 2 dB");
    row("4 dBu 1 dB", "", 3.0, 5.0, 4.0, "dBu", "4 dBu 1 dB", "4 dBu ± 1 dB");
    row("1 MHz 50 ppm", "", 0.99995, 1.00005, 1.0, "MHz", "1 MHz 50 ppm", "1 MHz ± 50 ppm");
}

void TestValuesLimit::limitsAreRead()
{
    QFETCH(const QString, text);
    QFETCH(const QString, expected);
    QFETCH(const Maybe, low);
    QFETCH(const Maybe, high);
    QFETCH(const Maybe, nominal);
    QFETCH(const QString, unit);
    QFETCH(const QString, jotted);
    QFETCH(const QString, shown);
    const auto limit = Limit::parse(text, measure(expected));
    if (jotted.isEmpty()) {
        QVERIFY(!limit.ok());
        return;
    }
    QVERIFY2(limit.ok(), qPrintable(refusal(limit)));
    // to the last bit: what a reading of the same figures reads as
    QCOMPARE(limit->low().has_value(), low.has_value());
    QCOMPARE(limit->high().has_value(), high.has_value());
    QVERIFY2(limit->low() == low, qPrintable(QString::number(limit->low().value_or(0), 'g', 17)));
    QVERIFY2(limit->high() == high, qPrintable(QString::number(limit->high().value_or(0), 'g', 17)));
    QVERIFY(limit->nominal() == nominal);
    QCOMPARE(limit->bounded(), low.has_value() || high.has_value());
    QCOMPARE(limit->measure().text(), unit);
    QCOMPARE(limit->text(), jotted);
    QCOMPARE(limit->display(), shown);
    QCOMPARE(Limit::parse(limit->text()).value(), *limit);
    QCOMPARE(Limit::parse(limit->display()).value(), *limit);
}

void TestValuesLimit::theEndItselfIsWithin_data()
{
    QTest::addColumn<QString>("limit");
    QTest::addColumn<QString>("low");
    QTest::addColumn<QString>("high");
    // ../shared/checks README, choice 2: limits are inclusive. Decimal sums, exact on paper.
    QTest::newRow("5 V") << QStringLiteral("5.00 V 5%") << QStringLiteral("4.75 V") << QStringLiteral("5.25 V");
    QTest::newRow("12 V") << QStringLiteral("12 V 10 %") << QStringLiteral("10.8 V") << QStringLiteral("13.2 V");
    QTest::newRow("3.3 V") << QStringLiteral("3.3 V 5%") << QStringLiteral("3.135 V") << QStringLiteral("3.465 V");
    QTest::newRow("tenths") << QStringLiteral("0.3 V 0.1 V") << QStringLiteral("0.2 V") << QStringLiteral("0.4 V");
    QTest::newRow("seven thousandths") << QStringLiteral("1.1 V 7%") << QStringLiteral("1.023 V") << QStringLiteral("1.177 V");
    QTest::newRow("47 nF ± 5 %, checks 02 row E34")
        << QStringLiteral("47 nF 5%") << QStringLiteral("44.65 nF") << QStringLiteral("49.35 nF");
    QTest::newRow("1 uF ± 10 %, checks 02 row E34")
        << QStringLiteral("1 uF 10%") << QStringLiteral("0.9 µF") << QStringLiteral("1.1 µF");
    QTest::newRow("mixed prefixes") << QStringLiteral("1.2 V 1 mV") << QStringLiteral("1.199 V") << QStringLiteral("1.201 V");
    QTest::newRow("typed in another prefix")
        << QStringLiteral("5 V 5%") << QStringLiteral("4750 mV") << QStringLiteral("5250 mV");
    QTest::newRow("nearly nothing left") << QStringLiteral("12 V 11.999 V") << QStringLiteral("1 mV")
                                         << QStringLiteral("23.999 V");
}

void TestValuesLimit::theEndItselfIsWithin()
{
    QFETCH(const QString, limit);
    QFETCH(const QString, low);
    QFETCH(const QString, high);
    const auto wanted = Limit::parse(limit);
    QVERIFY2(wanted.ok(), qPrintable(refusal(wanted)));
    QVERIFY(Quantity::parse(low)->in(wanted->measure())->value() == *wanted->low());
    QVERIFY(Quantity::parse(high)->in(wanted->measure())->value() == *wanted->high());
    // and the same where the limit is brought to the reading's prefix
    const auto moved = wanted->in(Quantity::parse(low)->measure());
    QVERIFY2(moved.ok(), qPrintable(refusal(moved)));
    QVERIFY(Quantity::parse(low)->value() == *moved->low());
}

void TestValuesLimit::decibelsAreRatios()
{
    // 20 lg 2 = 6.0206 dB, 20 lg 10 = 20 dB: the definition of the level of a field quantity, IEC 60027-3
    const auto twenty = Limit::parse(u"1 V 20 dB");
    QCOMPARE(*twenty->low(), 0.1);
    QCOMPARE(*twenty->high(), 10.0);
    const auto six = Limit::parse(u"1 V 6.020599913279624dB");
    QCOMPARE(*six->low(), 0.5);
    QCOMPARE(*six->high(), 2.0);
    // 10 lg 10 = 10 dB: the level of a power
    const auto power = Limit::parse(u"50 W 10 dB");
    QCOMPARE(*power->low(), 5.0);
    QCOMPARE(*power->high(), 500.0);
    // a negative voltage has its ends the other way round
    const auto negative = Limit::parse(u"-1 V 20 dB");
    QCOMPARE(*negative->low(), -10.0);
    QCOMPARE(*negative->high(), -0.1);
    // The jot line's own example; 10^(-2/20) and 10^(2/20) to 15 figures are from arbitrary-precision arithmetic (bc -l).
    const auto jotted = Limit::parse(u"387 mV 2dB");
    QVERIFY(std::abs(*jotted->low() - 387 * 0.794328234724282) < 1e-9);
    QVERIFY(std::abs(*jotted->high() - 387 * 1.258925411794167) < 1e-9);
    QCOMPARE(jotted->text(), QStringLiteral("387 mV 2dB"));
    QCOMPARE(jotted->display(), QStringLiteral("387 mV ± 2 dB"));
}

void TestValuesLimit::limitsThatAreNoneAreRefused_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *text, const char *says) {
        QTest::newRow(*text ? text : "nothing") << QString::fromUtf8(text) << QString::fromUtf8(says);
    };
    row("", "No limit");
    row("rubbish", "does not begin with a figure");
    row("65..35 V", "65 V is above 35 V");
    row("2 V..1500 mV", "is above");
    row("1 V..2 Hz", "\"V\" and \"Hz\"");
    row("..5 V", "missing");
    row("5..", "missing");
    row("12 V 0%", "tolerance of nothing");
    row("12 V ± 0 V", "tolerance of nothing");
    row("12 V -5%", "no sign of its own");
    row("12 V +5%", "no sign of its own");
    row("12 V ± -5%", "no sign of its own");
    row("12 V 5 Hz", "\"Hz\"");
    row("12 V 5", "write its unit");
    row("0 V 5%", "around zero");
    row("0 V 2 dB", "around zero");
    row("-10 dB 5%", "decibels");
    row("12 V 5% 3", "more than two");
    row("12 V or so", "\"or so\"");
    row("12 V ±", "missing");
    row("± 5 %", "missing");
    row("<=", "missing");
    row("<= rubbish", "does not begin");
    row("about 12 V", "not a definite value");
    row("<= about 5 V", "not a definite value");
    row("OL", "not a definite value");
    row("<= OL", "not a definite value");
    row("nan..5 V", "does not begin");
    row("12 V 9000 dB", "too wide");
    row("12 V 1e999%", "too large");
}

void TestValuesLimit::limitsThatAreNoneAreRefused()
{
    QFETCH(const QString, text);
    QFETCH(const QString, says);
    const auto limit = Limit::parse(text);
    QVERIFY2(!limit.ok(), limit ? qPrintable(limit->text()) : "");
    QVERIFY2(refusal(limit).contains(says), qPrintable(refusal(limit)));
    QVERIFY(refusal(limit).endsWith(QLatin1Char('.')));
}

void TestValuesLimit::standsInAnotherPrefix()
{
    const auto limit = Limit::parse(u"387 mV 2dB");
    const auto volts = limit->in(measure(QStringLiteral("V")));
    QVERIFY2(volts.ok(), qPrintable(refusal(volts)));
    QCOMPARE(volts->text(), QStringLiteral("0.387 V 2dB"));
    QVERIFY(volts->nominal() == 0.387);
    QCOMPARE(*volts->low(), *limit->low() / 1000);
    const auto band = Limit::parse(u"950..1050 mV")->in(measure(QStringLiteral("V")));
    QCOMPARE(band->text(), QStringLiteral("0.95..1.05 V"));
    QVERIFY(*band->low() == 0.95 && *band->high() == 1.05);
    QCOMPARE(Limit::parse(u"12 V 500 mV")->in(measure(QStringLiteral("mV")))->display(), QStringLiteral("12000 mV ± 500 mV"));
    QCOMPARE(Limit::parse(u">= 2 MΩ")->in(measure(QStringLiteral("kΩ")))->text(), QStringLiteral(">= 2000 kΩ"));
    const auto refused = limit->in(measure(QStringLiteral("Hz")));
    QVERIFY(!refused.ok());
    QVERIFY(refusal(refused).contains(QStringLiteral("Hz")));
}

void TestValuesLimit::noneWantsNothing()
{
    const Limit none;
    QVERIFY(none.isNone());
    QVERIFY(!none.bounded());
    QCOMPARE(none.display(), QString());
    QCOMPARE(none.text(), QString());
    QCOMPARE(none.in(measure(QStringLiteral("V"))).value(), none);
    QVERIFY(!Limit::parse(u"0 V")->isNone());
    QVERIFY(!Limit::parse(u"12 V")->bounded());
}

void TestValuesLimit::randomTextNeverBecomesRubbish()
{
    const QStringList pieces{
        QStringLiteral("12"),  QStringLiteral("0"),   QStringLiteral("4.7"),  QStringLiteral("0,5"),    QStringLiteral("-3"),
        QStringLiteral("1e9"), QStringLiteral("4k7"), QStringLiteral("9"),    QStringLiteral("5"),      QStringLiteral("35"),
        QStringLiteral("65"),  QStringLiteral("V"),   QStringLiteral("mV"),   QStringLiteral("%"),      QStringLiteral("dB"),
        QStringLiteral("ppm"), QStringLiteral("dBu"), QStringLiteral("MΩ"),   QStringLiteral("k"),      QStringLiteral("m"),
        QStringLiteral("W"),   QStringLiteral(".."),  QStringLiteral(" to "), QStringLiteral("±"),      QStringLiteral("+-"),
        QStringLiteral("<="),  QStringLiteral(">"),   QStringLiteral("-"),    QStringLiteral("up to "), QStringLiteral("about "),
        QStringLiteral("OL"),  QStringLiteral("x"),   QStringLiteral("."),    QStringLiteral("\n"),     QStringLiteral("…")};
    const QList<Measure> wanted{Measure(), measure(QStringLiteral("mV")), measure(QStringLiteral("kΩ")),
                                measure(QStringLiteral("%")), measure(QStringLiteral("dB"))};
    QRandomGenerator random(115);
    int taken = 0;
    for (int i = 0; i < 20'000; ++i) {
        QString text;
        for (int n = random.bounded(0, 7); n > 0; --n) {
            text += pieces[random.bounded(static_cast<int>(pieces.size()))];
            if (random.bounded(2))
                text += QLatin1Char(' ');
        }
        for (const Measure &expected : wanted) {
            const auto limit = Limit::parse(text, expected);
            if (!limit) {
                QVERIFY(refusal(limit).endsWith(QLatin1Char('.')));
                QVERIFY(!refusal(limit).contains(QLatin1Char('\n')));
                continue;
            }
            ++taken;
            QVERIFY(!limit->isNone());
            for (const auto &each : {limit->low(), limit->high(), limit->nominal()})
                QVERIFY2(!each || std::isfinite(*each), qPrintable(text));
            QVERIFY2(!limit->low() || !limit->high() || *limit->low() <= *limit->high(), qPrintable(text));
            if (limit->nominal() && limit->low())
                QVERIFY2(*limit->low() <= *limit->nominal() && *limit->nominal() <= *limit->high(), qPrintable(text));
            const auto again = Limit::parse(limit->text());
            QVERIFY2(again.ok() && *again == *limit, qPrintable(text + QStringLiteral(" -> ") + limit->text()));
            const auto shown = Limit::parse(limit->display());
            QVERIFY2(shown.ok() && *shown == *limit, qPrintable(text + QStringLiteral(" -> ") + limit->display()));
        }
    }
    QVERIFY2(taken > 5000, qPrintable(QString::number(taken))); // else the strings never reached the parser's depth
}

QTEST_GUILESS_MAIN(TestValuesLimit)
#include "test_values_limit.moc"
