// The books of a year: what went out and came in, the stock book with the margin of each item, and the spreadsheet as another program reads it.
#include "model/exchange/export_file.h"
#include "model/exchange/year_files.h"
#include "tests/workbooks.h"

#include <QBuffer>
#include <QProcess>
#include <QtTest>

using namespace ts;
using namespace ts::testing;

namespace {

Money pounds(const char *sum)
{
    return Money::parse(QString::fromLatin1(sum), Currency::parse(QStringLiteral("GBP")).value()).value();
}

/// Records with ids and days of their own.
struct Books {
    BooksInput input;
    Books() { input.currency = Currency::parse(QStringLiteral("GBP")).value(); }
    Unit &unit(int tag, Stage stage, const char *closed = nullptr)
    {
        Unit unit;
        unit.id = Id<Unit>{QUuid::createUuid()};
        unit.tag = tag;
        unit.name = QStringLiteral("Unit %1").arg(tag);
        unit.stage = stage;
        unit.at = QDateTime(QDate(2025, 1, 1), QTime(12, 0), QTimeZone::utc());
        if (closed)
            unit.stageSince = QDateTime(QDate::fromString(QString::fromLatin1(closed), Qt::ISODate), QTime(12, 0), QTimeZone::utc());
        input.units << unit;
        return input.units.last();
    }
    void spend(const Unit &unit, SpendKind kind, Flow flow, const char *sum, const char *day)
    {
        Spend spend;
        spend.unit = unit.id;
        spend.kind = kind;
        spend.flow = flow;
        spend.text = QStringLiteral("=1+1"); // as somebody might type it
        spend.amount = pounds(sum);
        spend.paidOn = QDate::fromString(QString::fromLatin1(day), Qt::ISODate);
        input.spends << spend;
    }
    void sold(const Unit &unit, const char *bought, const char *sold, const char *boughtOn, const char *soldOn)
    {
        spend(unit, SpendKind::Purchase, Flow::Out, bought, boughtOn);
        spend(unit, SpendKind::Sale, Flow::In, sold, soldOn);
    }
};

} // namespace

class TestMoneyYear : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void ratesHoldFromTheirDay()
    {
        // The standard rate of the United Kingdom: 15 % to the end of 2009, 17.5 % from 1 January 2010, 20 % from 4 January 2011 (HMRC, VAT rates).
        const auto rates = DatedRates::parse(QStringLiteral("20 from 2011-01-04; 15; 17,5 % from 2010-01-01"));
        QVERIFY(rates);
        QCOMPARE(rates->on(QDate(2009, 12, 31)), std::optional(Rate(150'000)));
        QCOMPARE(rates->on(QDate(2010, 1, 1)), std::optional(Rate(175'000)));
        QCOMPARE(rates->on(QDate(2011, 1, 3)), std::optional(Rate(175'000)));
        QCOMPARE(rates->on(QDate(2011, 1, 4)), std::optional(Rate(200'000)));
        QVERIFY(!DatedRates::parse(QStringLiteral("20 from 2011-01-04"))->on(QDate(2011, 1, 3)));
        QVERIFY(DatedRates::parse(QString())->isEmpty());
        for (const char *bad : {"a lot", "20 from yesterday", "120", "20; 17.5", "-3", "20 from 2011-02-30"})
            QVERIFY2(!DatedRates::parse(QString::fromLatin1(bad)), bad);
    }

    void theStockBookHasTheMarginOfEachItem()
    {
        Books at;
        at.input.rates = *DatedRates::parse(QStringLiteral("20"));
        at.unit(1, Stage::Closed, "2026-03-01").outcome = Outcome::Sold;
        at.unit(2, Stage::Closed, "2026-04-01").outcome = Outcome::Sold;
        at.unit(3, Stage::Bench);
        at.unit(4, Stage::Closed, "2025-05-01").outcome = Outcome::Sold;
        at.unit(5, Stage::Closed, "2027-02-01").outcome = Outcome::Sold;
        const QList<Unit> units = at.input.units;
        // VAT margin scheme guidance (gov.uk, "VAT margin schemes", worked example): bought 1,500, sold 2,000: margin 500, VAT 83.33; a loss
        // owes nothing.
        at.sold(units[0], "1500", "2000", "2026-01-10", "2026-03-01");
        at.sold(units[1], "120", "90", "2026-01-11", "2026-04-01");
        at.spend(units[1], SpendKind::Part, Flow::Out, "12.40", "2026-01-20");
        at.spend(units[2], SpendKind::Purchase, Flow::Out, "30", "2026-06-01");
        at.spend(units[2], SpendKind::CarriageIn, Flow::Out, "8.40", "2026-06-01");
        at.sold(units[3], "10", "50", "2025-02-01", "2025-05-01"); // gone before the year
        at.sold(units[4], "40", "100", "2026-12-01", "2027-02-01"); // sold after it
        const YearBooks books = yearBooks(2026, at.input);
        QCOMPARE(books.stock.size(), 4);
        QCOMPARE(books.stock[0].tag, 1);
        QCOMPARE(books.stock[0].margin->margin, pounds("500"));
        QCOMPARE(books.stock[0].margin->tax, pounds("83.33"));
        QCOMPARE(*books.stock[0].profit, pounds("416.67"));
        QCOMPARE(books.stock[1].margin->tax, pounds("0"));
        QCOMPARE(*books.stock[1].profit, pounds("-42.40")); // 90 − 120 − 12.40
        QVERIFY(!books.stock[2].sold && !books.stock[2].goneOn.isValid());
        QVERIFY(!books.stock[3].sold); // in stock at the year's end
        QCOMPARE(books.tax, pounds("83.33"));
        QCOMPARE(books.margin, pounds("500"));
        QCOMPARE(books.stockAtCost, pounds("78.40")); // 30 + 8.40 + 40
        // Every movement of the year, and none of another: 1500 + 120 + 12.40 + 30 + 8.40 + 40 out, 2000 + 90 in.
        QCOMPARE(books.out, pounds("1710.80"));
        QCOMPARE(books.in, pounds("2090"));
        QCOMPARE(yearBooks(0, at.input).out, pounds("1720.80"));
        Money byKind(0, at.input.currency);
        for (const auto &[kind, sum] : books.byKind)
            byKind += kind == SpendKind::Sale || kind == SpendKind::Deposit ? -sum : sum;
        QCOMPARE(byKind, books.out - books.in); // nothing falls between the kinds
    }

    void theSpreadsheetHoldsFormulasOfOursAndTextOfTheirs()
    {
        Books at;
        at.input.rates = *DatedRates::parse(QStringLiteral("20"));
        at.unit(1, Stage::Closed, "2026-03-01").name = QStringLiteral("=cmd()|' /C calc'!A0 <b>");
        const Unit unit = at.input.units.first();
        at.sold(unit, "1500", "2000", "2026-01-10", "2026-03-01");
        const auto bytes = yearSpreadsheet(yearBooks(2026, at.input), {}, QStringLiteral("Harbour Lane"));
        wantOk(bytes);
        const QString file = m_books.path(QStringLiteral("year.xlsx"));
        QFile out(file);
        QVERIFY(out.open(QIODevice::WriteOnly));
        out.write(*bytes);
        out.close();
        const auto part = [&file](const char *name) {
            QProcess unzip;
            unzip.start(QStringLiteral("unzip"), {QStringLiteral("-p"), file, QString::fromLatin1(name)});
            unzip.waitForFinished();
            return QString::fromUtf8(unzip.readAllStandardOutput());
        };
        const QString stock = part("xl/worksheets/sheet2.xml");
        QVERIFY2(stock.contains(QLatin1String("<f>MAX(0,J2-F2)</f><v>500</v>")), qPrintable(stock));
        QVERIFY(stock.contains(QLatin1String("<f>ROUND(L2*K2/(100+K2),2)</f><v>83.33")));
        QVERIFY(stock.contains(QLatin1String("<f>SUM(M2:M2)</f><v>83.33")));
        QCOMPARE(stock.count(QLatin1String("<f>")), 5); // margin, tax, left and two sums: nothing that was typed
        QCOMPARE(part("xl/worksheets/sheet1.xml").count(QLatin1String("<f>")), 2);
        const QString words = part("xl/sharedStrings.xml");
        QVERIFY(words.contains(QLatin1String("=cmd()|' /C calc'!A0 &lt;b&gt;")));
        QVERIFY(words.contains(QLatin1String("=1+1")));
        QVERIFY(words.contains(QLatin1String("no tax advice")));
    }

    void theYearIsWrittenFromAWorkbook()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        Unit unit = desk->maker().fresh<Unit>();
        unit.name = QStringLiteral("Deck");
        Spend bought = desk->maker().fresh<Spend>();
        bought.unit = unit.id;
        bought.kind = SpendKind::Purchase;
        bought.text = QStringLiteral("=2+5");
        bought.amount = pounds("30");
        bought.paidOn = QDate(2026, 5, 1);
        Setting currency = desk->maker().fresh<Setting>();
        currency.name = QStringLiteral("currency");
        currency.value = QStringLiteral("GBP");
        wantOk(desk->apply(Change(QStringLiteral("Unit")).add(unit).add(bought).add(currency)));
        const QString csv = m_books.path(QStringLiteral("year.csv"));
        wantOk(exportFile(*desk, QStringLiteral("ledger-csv"), csv, {.model = {}, .year = 2026}));
        QFile read(csv);
        QVERIFY(read.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(read.readAll());
        QVERIFY2(text.contains(QLatin1String("2026-05-01,1,Deck,'=2+5,,purchase,30.00,,GBP,30.00,GBP")), qPrintable(text));
        wantOk(exportFile(*desk, QStringLiteral("ledger-csv"), csv, {.model = {}, .year = 2025}));
        const QString sheet = m_books.path(QStringLiteral("all.xlsx"));
        wantOk(exportFile(*desk, QStringLiteral("xlsx"), sheet));
        QFile book(sheet);
        QVERIFY(book.open(QIODevice::ReadOnly));
        QCOMPARE(book.read(2), QByteArray("PK"));
    }
};

QTEST_GUILESS_MAIN(TestMoneyYear)
#include "test_money_year.moc"
