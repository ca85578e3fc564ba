#include "model/values/money.h"
#include "tests/testing.h"

#include <QRandomGenerator>
#include <QRegularExpression>

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

} // namespace

class TestValuesMoney : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void currenciesHaveTheDecimalsOfTheStandard_data();
    void currenciesHaveTheDecimalsOfTheStandard();
    void strangeCurrenciesAreRefused();
    void signsNameCurrencies();
    void sumsAreRead_data();
    void sumsAreRead();
    void rubbishIsRefusedByName_data();
    void rubbishIsRefusedByName();
    void whatIsShownReadsBack();
    void addsOneCurrency();
    void randomTextNeverBecomesRubbish();
};

void TestValuesMoney::currenciesHaveTheDecimalsOfTheStandard_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<int>("decimals");
    // ISO 4217, list one, column "Mnr unt"
    for (const char *code :
         {"GBP", "EUR", "USD", "CHF", "SEK", "NOK", "DKK", "PLN", "CZK", "HUF", "AUD", "CAD", "NZD", "ZAR", "INR", "TRY", "BRL"})
        QTest::newRow(code) << QString::fromLatin1(code) << 2;
    for (const char *code :
         {"JPY", "KRW", "ISK", "CLP", "VND", "XAF", "XOF", "XPF", "PYG", "UGX", "VUV", "BIF", "DJF", "GNF", "KMF", "RWF", "UYI"})
        QTest::newRow(code) << QString::fromLatin1(code) << 0;
    for (const char *code : {"KWD", "BHD", "OMR", "JOD", "TND", "LYD", "IQD"})
        QTest::newRow(code) << QString::fromLatin1(code) << 3;
    QTest::newRow("CLF") << QStringLiteral("CLF") << 4;
    QTest::newRow("UYW") << QStringLiteral("UYW") << 4;
}

void TestValuesMoney::currenciesHaveTheDecimalsOfTheStandard()
{
    QFETCH(const QString, code);
    QFETCH(const int, decimals);
    const auto read = Currency::parse(code.toLower());
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(read->code(), code);
    QCOMPARE(read->decimals(), decimals);
}

void TestValuesMoney::strangeCurrenciesAreRefused()
{
    for (const QString &text :
         {QStringLiteral("ZZZ"), QStringLiteral("XXX"), QStringLiteral("quid"), QStringLiteral("G P"), QStringLiteral("#"),
          QStringLiteral("GB"), QStringLiteral("P G"), QStringLiteral("ЕUR")}) { // the last begins with a Cyrillic letter
        const auto read = Currency::parse(text);
        QVERIFY2(!read.ok(), qPrintable(text));
        QVERIFY2(refusal(read).contains(text), qPrintable(refusal(read)));
    }
    QVERIFY(!Currency::parse(u"").ok());
}

void TestValuesMoney::signsNameCurrencies()
{
    QCOMPARE(Currency::parse(u"£")->code(), QStringLiteral("GBP"));
    QCOMPARE(Currency::parse(u"€")->code(), QStringLiteral("EUR"));
    QCOMPARE(Currency::parse(u"$")->code(), QStringLiteral("USD"));
    QCOMPARE(currency("GBP").sign(), QStringLiteral("£"));
    QCOMPARE(currency("PLN").sign(), QStringLiteral("PLN\u00a0"));
    QCOMPARE(Currency().sign(), QString());
    // The dollar sign is shared: where the books are in another dollar it means that one.
    QCOMPARE(Money::parse(u"$5", currency("AUD"))->currency(), currency("AUD"));
    QCOMPARE(Money::parse(u"$5", currency("GBP"))->currency(), currency("USD"));
}

void TestValuesMoney::sumsAreRead_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("fallback");
    QTest::addColumn<qint64>("minor");
    QTest::addColumn<QString>("code");
    const auto row = [](const char *text, const char *fallback, qint64 minor, const char *code) {
        QTest::newRow(text) << QString::fromUtf8(text) << QString::fromLatin1(fallback) << minor << QString::fromLatin1(code);
    };
    row("30", "GBP", 3000, "GBP");
    row("8.40", "GBP", 840, "GBP");
    row("8,40", "GBP", 840, "GBP");
    row("8.4", "GBP", 840, "GBP");
    row("£8.40", "EUR", 840, "GBP");
    row("8.40 GBP", "EUR", 840, "GBP");
    row("gbp 8.40", "EUR", 840, "GBP");
    row("8.40€", "GBP", 840, "EUR");
    row("£8.40 GBP", "EUR", 840, "GBP");
    row("-3", "GBP", -300, "GBP");
    row("\u22123", "GBP", -300, "GBP");
    row("-£8.40", "GBP", -840, "GBP");
    row("£-8.40", "GBP", -840, "GBP");
    row("1 234,50", "EUR", 123450, "EUR");
    row("1,234.50", "GBP", 123450, "GBP");
    row("1.234,50", "EUR", 123450, "EUR");
    row("1'234.50", "CHF", 123450, "CHF");
    row("1,234,567", "GBP", 123456700, "GBP");
    row(".50", "GBP", 50, "GBP");
    row("0", "GBP", 0, "GBP");
    row("007.10", "GBP", 710, "GBP");
    row("1500", "JPY", 1500, "JPY");
    row("1,500", "JPY", 1500, "JPY");
    row("1.234", "KWD", 1234, "KWD");
    row("9000000000000000", "JPY", 9'000'000'000'000'000, "JPY");
}

void TestValuesMoney::sumsAreRead()
{
    QFETCH(const QString, text);
    QFETCH(const QString, fallback);
    QFETCH(const qint64, minor);
    QFETCH(const QString, code);
    const auto read = Money::parse(text, *Currency::parse(fallback));
    QVERIFY2(read.ok(), qPrintable(refusal(read)));
    QCOMPARE(read->minor(), minor);
    QCOMPARE(read->currency().code(), code);
}

void TestValuesMoney::rubbishIsRefusedByName_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("fallback");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *text, const char *fallback, const char *says) {
        QTest::newRow(*text ? text : "nothing")
            << QString::fromUtf8(text) << QString::fromLatin1(fallback) << QString::fromUtf8(says);
    };
    row("", "GBP", "No sum");
    row("abc", "GBP", "no figures");
    row("£", "GBP", "no figures");
    row("30 quid", "GBP", "\"quid\"");
    row("8.4x0", "GBP", "\"x\"");
    row("8.405", "GBP", "thousands or decimals");
    row("1,234", "GBP", "thousands or decimals");
    row("5.000", "EUR", "thousands or decimals");
    row("0.125", "GBP", "more than 2 decimals");
    row("8.4051", "GBP", "more than 2 decimals");
    row("1.5", "JPY", "no smaller part");
    row("£5 EUR", "GBP", "two currencies");
    row("12,34,567.00", "GBP", "threes");
    row("1 23", "GBP", "threes");
    row("8.", "GBP", "missing");
    row("--3", "GBP", "\"-\"");
    row("-£-3", "GBP", "\"-\"");
    row("1e3", "GBP", "\"e\"");
    row("nan", "GBP", "no figures");
    row("99999999999999999999", "GBP", "too large");
    row("9000000000000001", "JPY", "too large");
    row("٣٠", "GBP", "no figures"); // digits of another script are not guessed at
}

void TestValuesMoney::rubbishIsRefusedByName()
{
    QFETCH(const QString, text);
    QFETCH(const QString, fallback);
    QFETCH(const QString, says);
    const auto read = Money::parse(text, *Currency::parse(fallback));
    QVERIFY(!read.ok());
    QVERIFY2(refusal(read).contains(says), qPrintable(refusal(read)));
    QVERIFY(refusal(read).endsWith(QLatin1Char('.')));
}

void TestValuesMoney::whatIsShownReadsBack()
{
    QCOMPARE(pounds(840).decimal(), QStringLiteral("8.40"));
    QCOMPARE(pounds(-5).decimal(), QStringLiteral("-0.05"));
    QCOMPARE(pounds(840).display(), QStringLiteral("£8.40"));
    QCOMPARE(pounds(-840).display(), QStringLiteral("-£8.40"));
    QCOMPARE(Money(1234, currency("KWD")).decimal(), QStringLiteral("1.234"));
    QCOMPARE(Money(1234, currency("JPY")).display(), QStringLiteral("¥1234"));
    QRandomGenerator random(4217);
    for (int i = 0; i < 2000; ++i) {
        for (const char *code : {"GBP", "JPY", "KWD", "PLN", "CLF"}) {
            const Money money(random.bounded(qint64{-9'000'000'000'000'000}, qint64{9'000'000'000'000'000}), currency(code));
            QCOMPARE(Money::parse(money.decimal(), currency(code)).value(), money);
            QCOMPARE(Money::parse(money.display(), currency("EUR")).value(), money);
        }
    }
}

void TestValuesMoney::addsOneCurrency()
{
    QCOMPARE(pounds(840) + pounds(60), pounds(900));
    QCOMPARE(pounds(840) - pounds(900), pounds(-60));
    QCOMPARE(Money() + pounds(60), pounds(60));
    QCOMPARE(pounds(60) - Money(), pounds(60));
    QCOMPARE(pounds(120).times(3), pounds(360));
    Money total;
    for (int i = 0; i < 10; ++i)
        total += pounds(10); // ten times ten pence is a pound, which a double misses
    QCOMPARE(total, pounds(100));
}

void TestValuesMoney::randomTextNeverBecomesRubbish()
{
    const QString alphabet = QStringLiteral("0123456789012345678900..,,--+ \u00a0'£€$GBPEURJPYgbp%eE\u2212x\n\t\u0663");
    QRandomGenerator random(20'000);
    int taken = 0;
    for (int i = 0; i < 20'000; ++i) {
        QString text;
        for (int n = random.bounded(0, 12); n > 0; --n)
            text += alphabet[random.bounded(static_cast<int>(alphabet.size()))];
        const auto money = Money::parse(text, currency("GBP"));
        if (money) {
            ++taken;
            QVERIFY2(text.contains(QRegularExpression(QStringLiteral("[0-9]"))), qPrintable(text));
            QCOMPARE(Money::parse(money->decimal(), money->currency()).value(), *money);
            QCOMPARE(Money::parse(money->display(), currency("EUR")).value(), *money);
        } else {
            QVERIFY(refusal(money).endsWith(QLatin1Char('.')));
            QVERIFY(!refusal(money).contains(QLatin1Char('\n')));
        }
        if (const auto rate = Rate::parse(text))
            QCOMPARE(Rate::parse(rate->percent()).value(), *rate);
        if (const auto read = Currency::parse(text))
            QCOMPARE(Currency::parse(read->code()).value(), *read);
    }
    QVERIFY2(taken > 1000, qPrintable(QString::number(taken))); // else the strings never reached the parser's depth
}

QTEST_GUILESS_MAIN(TestValuesMoney)
#include "test_values_money.moc"
