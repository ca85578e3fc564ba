// How values read in three locales. Expected forms by CLDR as Qt carries it (decimal sign and group of en_GB, de_DE, fr_CH).
#include "tests/testing.h"
#include "views/widgets/locale_text.h"

#include <QtTest>

using namespace ts;

class TestViewLocale : public QObject {
    Q_OBJECT
    static Money pounds(qint64 minor) { return {minor, *Currency::parse(u"GBP")}; }

private Q_SLOTS:
    void cleanup() { QLocale::setDefault(QLocale::c()); }

    void britain()
    {
        QLocale::setDefault(QLocale(QStringLiteral("en_GB")));
        QCOMPARE(shown::money(pounds(123450)), QStringLiteral("£1,234.50"));
        QCOMPARE(shown::money(pounds(-5)), QStringLiteral("−£0.05"));
        QCOMPARE(shown::moneyRound(pounds(7850)), QStringLiteral("£79"));
        QCOMPARE(shown::amount(pounds(840)), QStringLiteral("8.40"));
        QCOMPARE(shown::day({2026, 11, 19}), QStringLiteral("19 Nov"));
        QCOMPARE(shown::day({2025, 11, 19}, {2026, 1, 1}), QStringLiteral("19 Nov 2025"));
        QCOMPARE(shown::dayLong({2026, 11, 19}, {2026, 1, 1}), QStringLiteral("Thursday, 19 November"));
        QCOMPARE(shown::dayLong({2025, 11, 19}, {2026, 1, 1}), QStringLiteral("Wednesday, 19 November 2025"));
        QCOMPARE(shown::duration(175), QStringLiteral("2 h 55 m"));
        QCOMPARE(shown::percent(0.583), QStringLiteral("58 %"));
        QCOMPARE(shown::number(11.92), QStringLiteral("11.92"));
    }

    void germany()
    {
        QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
        QCOMPARE(shown::amount({123450, *Currency::parse(u"EUR")}), QStringLiteral("1.234,50"));
        QCOMPARE(shown::day({2026, 11, 19}), QStringLiteral("19. Nov."));
        QCOMPARE(shown::dayLong({2026, 11, 19}, {2026, 1, 1}), QStringLiteral("Donnerstag, 19. November"));
        QCOMPARE(shown::number(11.92), QStringLiteral("11,92"));
        QCOMPARE(shown::parseMoney(QStringLiteral("1.234,50"), *Currency::parse(u"EUR"))->minor(), 123450);
        QCOMPARE(shown::parseMoney(QStringLiteral("8,40"), *Currency::parse(u"EUR"))->minor(), 840);
    }

    void yenHasNoDecimals()
    {
        QLocale::setDefault(QLocale(QStringLiteral("en_GB")));
        QCOMPARE(shown::amount({1234, *Currency::parse(u"JPY")}), QStringLiteral("1,234"));
        QCOMPARE(shown::moneyRound({1234, *Currency::parse(u"JPY")}).right(5), QStringLiteral("1,234"));
    }
};

QTEST_MAIN(TestViewLocale)
#include "test_view_locale.moc"
