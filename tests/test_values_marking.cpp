#include "model/values/lettercode.h"
#include "tests/testing.h"

#include <QFile>
#include <QRandomGenerator>
#include <QRegularExpression>

#include <cmath>

using namespace ts;
using ts::testing::refusal;

class TestValuesMarking : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void valuesOfTheStandard_data();
    void valuesOfTheStandard();
    void tolerancesAgainstTheTable();
    void toleranceOfACode_data();
    void toleranceOfACode();
    void smallCapacitorsHavePicofarads();
    void unevenLettersHaveTwoSides();
    void threeFiguresAndALetter();
    void markingsThatAreNoneAreRefused_data();
    void markingsThatAreNoneAreRefused();
    void randomTextNeverBecomesRubbish();
};

void TestValuesMarking::valuesOfTheStandard_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("symbol");
    QTest::addColumn<double>("base");
    const auto row = [](const char *code, const char *symbol, double base) {
        QTest::newRow(code) << QString::fromUtf8(code) << QString::fromUtf8(symbol) << base;
    };
    // IEC 60062 in ../shared/checks/02_value_cases.csv. E30, verified:
    row("R47", "Ω", 0.47);
    row("4R7", "Ω", 4.7);
    row("470R", "Ω", 470);
    row("4K7", "Ω", 4700);
    row("47K", "Ω", 47000);
    row("47K3", "Ω", 47300);
    row("470K", "Ω", 470000);
    row("4M7", "Ω", 4.7e6);
    // E31, verified:
    row("2K2", "Ω", 2200);
    row("1M0", "Ω", 1e6);
    // E32: 2n2 verified, the rest of the row from memory (they follow from the SI prefixes all the same)
    row("2n2", "F", 2.2e-9);
    row("4n7", "F", 4.7e-9);
    row("p33", "F", 0.33e-12);
    row("33p2", "F", 33.2e-12);
    row("2u2", "F", 2.2e-6);
    row("470n", "F", 470e-9);
    // E34, verified (tolerances below):
    row("473J", "F", 47e-9);
    row("105K", "F", 1e-6);
    // E35, from memory: 9 is × 0.1 and 8 is × 0.01
    row("109", "F", 1.0e-12);
    row("229", "F", 2.2e-12);
    row("108", "F", 0.10e-12);
    // the same rules applied: small letters are habit, the micro sign has two code points
    row("4k7", "Ω", 4700);
    row("2µ2", "F", 2.2e-6);
    row("2\u03bc2", "F", 2.2e-6);
    row("4m7", "F", 4.7e-3);
    row("1G5", "Ω", 1.5e9);
    row("0R", "Ω", 0);
    row(" 4K7 ", "Ω", 4700);
    row("104", "F", 100e-9);
}

void TestValuesMarking::valuesOfTheStandard()
{
    QFETCH(const QString, code);
    QFETCH(const QString, symbol);
    QFETCH(const double, base);
    const auto marking = decodeMarking(code);
    QVERIFY2(marking.ok(), qPrintable(refusal(marking)));
    QCOMPARE(marking->value.measure().symbol(), symbol);
    QVERIFY2(marking->value.base() == base, qPrintable(QString::number(marking->value.base(), 'g', 17)));
}

void TestValuesMarking::tolerancesAgainstTheTable()
{
    const QString folder = ts::testing::sharedFolder();
    QFile file(folder + QStringLiteral("/checks/02_tolerance_letters.csv"));
    if (folder.isEmpty() || !file.open(QIODevice::ReadOnly))
        QSKIP("the published check values are not beside the project");
    int verified = 0;
    for (const QByteArray &line : file.readAll().split('\n').mid(1)) {
        const QStringList cells = QString::fromUtf8(line).split(QLatin1Char(','));
        if (cells.size() < 3 || cells[1].contains(QLatin1String("pF")))
            continue;
        // 4K7 with the letter: a resistor, so that no letter means picofarads
        const auto marking = decodeMarking(QStringLiteral("4K7") + cells[0]);
        QVERIFY2(marking.ok(), qPrintable(cells[0]));
        const QString meaning = cells[1].section(QLatin1Char(' '), 0, 0); // "5", "-20/+80"
        const double high = meaning.section(QLatin1Char('/'), -1).toDouble();
        QCOMPARE(*marking->tolerancePercent, high);
        QCOMPARE(marking->toleranceLowPercent.has_value(), meaning.contains(QLatin1Char('/')));
        if (marking->toleranceLowPercent) {
            QCOMPARE(*marking->toleranceLowPercent, meaning.section(QLatin1Char('/'), 0, 0).toDouble());
            QCOMPARE(*marking->toleranceHighPercent, high);
        }
        verified += cells[2] == QLatin1String("verified") ? 1 : 0; // the others are from memory and gate nothing alone
    }
    QVERIFY(verified >= 6);
}

void TestValuesMarking::toleranceOfACode_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<double>("percent");
    // ../shared/checks/02_tolerance_letters.csv, verified rows; 473J and 105K are row E34 of 02_value_cases.csv
    QTest::newRow("473J") << QStringLiteral("473J") << 5.0;
    QTest::newRow("105K") << QStringLiteral("105K") << 10.0;
    QTest::newRow("2R2J") << QStringLiteral("2R2J") << 5.0;
    QTest::newRow("4K7F") << QStringLiteral("4K7F") << 1.0;
    QTest::newRow("4K7K") << QStringLiteral("4K7K") << 10.0;
    QTest::newRow("47KK") << QStringLiteral("47KK") << 10.0;
    QTest::newRow("1M0M") << QStringLiteral("1M0M") << 20.0;
    QTest::newRow("470RG") << QStringLiteral("470RG") << 2.0;
    QTest::newRow("470nK") << QStringLiteral("470nK") << 10.0;
    QTest::newRow("33p2J") << QStringLiteral("33p2J") << 5.0;
    QTest::newRow("104Z") << QStringLiteral("104Z") << 80.0; // the larger side
    QTest::newRow("470KJ") << QStringLiteral("470KJ") << 5.0;
}

void TestValuesMarking::toleranceOfACode()
{
    QFETCH(const QString, code);
    QFETCH(const double, percent);
    const auto marking = decodeMarking(code);
    QVERIFY2(marking.ok(), qPrintable(refusal(marking)));
    QCOMPARE(*marking->tolerancePercent, percent);
    QVERIFY(!decodeMarking(QStringLiteral("4K7"))->tolerancePercent);
}

void TestValuesMarking::smallCapacitorsHavePicofarads()
{
    // Under 10 pF the letters B to G are picofarads (02_tolerance_letters.csv; C and D verified): 0.25 pF of 5 pF is 5 %
    QCOMPARE(*decodeMarking(u"5p0C")->tolerancePercent, 5.0);
    QCOMPARE(*decodeMarking(u"5p0D")->tolerancePercent, 10.0);
    QCOMPARE(*decodeMarking(u"509C")->tolerancePercent, 5.0);
    QCOMPARE(*decodeMarking(u"9p9D")->tolerancePercent, 5.0505050505051);
    QCOMPARE(*decodeMarking(u"10pD")->tolerancePercent, 0.5);  // not under 10 pF
    QCOMPARE(*decodeMarking(u"5p0J")->tolerancePercent, 5.0);  // J is always per cent
    QCOMPARE(*decodeMarking(u"5R0C")->tolerancePercent, 0.25); // and so is everything on a resistor
}

void TestValuesMarking::unevenLettersHaveTwoSides()
{
    // Z: -20/+80 %, verified row of 02_tolerance_letters.csv
    const auto marking = decodeMarking(u"104Z");
    QCOMPARE(*marking->toleranceLowPercent, -20.0);
    QCOMPARE(*marking->toleranceHighPercent, 80.0);
    QVERIFY(!decodeMarking(u"104J")->toleranceLowPercent);
}

void TestValuesMarking::threeFiguresAndALetter()
{
    // 470K is row E30 and 105K row E34 of 02_value_cases.csv, both verified: one resistor, one capacitor, of the same shape.
    // That the third figure decides is our rule (common practice, no source).
    QCOMPARE(decodeMarking(u"470K")->value.measure().symbol(), QStringLiteral("Ω"));
    QVERIFY(!decodeMarking(u"470K")->tolerancePercent);
    QCOMPARE(decodeMarking(u"105K")->value.measure().symbol(), QStringLiteral("F"));
    QCOMPARE(decodeMarking(u"104M")->value.text(), QStringLiteral("100 nF"));
    QCOMPARE(decodeMarking(u"220M")->value.text(), QStringLiteral("220 MΩ"));
    QCOMPARE(decodeMarking(u"473J")->value.text(), QStringLiteral("47 nF"));
    QCOMPARE(decodeMarking(u"105K")->value.text(), QStringLiteral("1 µF"));
}

void TestValuesMarking::markingsThatAreNoneAreRefused_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *code, const char *says) {
        QTest::newRow(*code ? code : "nothing") << QString::fromUtf8(code) << QString::fromUtf8(says);
    };
    row("", "No marking");
    row("4X7", "\"X\"");
    row("4K7Y", "\"Y\"");
    row("4K7JJ", "\"J\"");
    row("4K7J5", "\"5\"");
    row("47", "three figures");
    row("4700", "three figures");
    row("R", "no figures");
    row("K", "no figures");
    row("000", "capacitor of nothing");
    row("0p0", "capacitor of nothing");
    row("0RJ", "no tolerance");
    row("-4K7", "\"-\"");
    row("4.7K", "\".\"");
    row("4 K7", "\" \"");
    row("12345R6789", "too many");
    row("resistor 4K7 ohm", "too long");
    row("٤K٧", "\"٤\"");
}

void TestValuesMarking::markingsThatAreNoneAreRefused()
{
    QFETCH(const QString, code);
    QFETCH(const QString, says);
    const auto marking = decodeMarking(code);
    QVERIFY2(!marking.ok(), marking ? qPrintable(marking->value.text()) : "");
    QVERIFY2(refusal(marking).contains(says), qPrintable(refusal(marking)));
    QVERIFY(refusal(marking).endsWith(QLatin1Char('.')));
}

void TestValuesMarking::randomTextNeverBecomesRubbish()
{
    const QString alphabet = QStringLiteral("01234567890123456789RKMGFpnuµmJZCkr ELXy.-\n");
    QRandomGenerator random(473);
    int taken = 0;
    for (int i = 0; i < 20'000; ++i) {
        QString code;
        for (int n = random.bounded(0, 7); n > 0; --n)
            code += alphabet[random.bounded(static_cast<int>(alphabet.size()))];
        const auto marking = decodeMarking(code);
        if (!marking) {
            QVERIFY(refusal(marking).endsWith(QLatin1Char('.')));
            QVERIFY(!refusal(marking).contains(QLatin1Char('\n')));
            continue;
        }
        ++taken;
        const Quantity &value = marking->value;
        QVERIFY2(std::isfinite(value.base()) && value.base() >= 0, qPrintable(code));
        QVERIFY2(value.measure().symbol() == u"Ω" || value.measure().symbol() == u"F", qPrintable(code));
        QVERIFY(!marking->tolerancePercent || (*marking->tolerancePercent > 0 && std::isfinite(*marking->tolerancePercent)));
        QVERIFY2(Quantity::parse(value.text()).value() == value, qPrintable(code));
        // the jot line reads the same code as the same value, where the code is one that it takes
        const auto jotted = Quantity::parse(code, value.measure());
        if (jotted && !marking->tolerancePercent && code.contains(QRegularExpression(QStringLiteral("[RKMGFpnuµmkr]"))) &&
            !code.contains(QLatin1Char('r')))
            QVERIFY2(jotted->base() == value.base(), qPrintable(code + QLatin1Char(' ') + jotted->text()));
    }
    QVERIFY2(taken > 500, qPrintable(QString::number(taken))); // else the strings never reached the decoder's depth
}

QTEST_GUILESS_MAIN(TestValuesMarking)
#include "test_values_marking.moc"
