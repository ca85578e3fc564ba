#include "model/exchange/csv_reader.h"
#include "model/exchange/csv_writer.h"
#include "tests/testing.h"

#include <QBuffer>

using namespace ts;

namespace {

/// All records, or the refusal as the only cell of the last one.
QList<QStringList> readAll(const QByteArray &bytes, CsvFor reader = CsvFor::Spreadsheet)
{
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    CsvReader csv(buffer, QStringLiteral("Cannot import a.csv"), reader);
    QList<QStringList> records;
    while (true) {
        const auto more = csv.next();
        if (!more)
            return records << QStringList{more.trouble().sentence()};
        if (!*more)
            return records;
        records << csv.cells();
    }
}

QByteArray written(const QList<QStringList> &rows, CsvFor reader = CsvFor::Spreadsheet)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    CsvWriter csv(buffer, reader);
    for (const QStringList &row : rows)
        csv.row(row);
    csv.flush();
    return buffer.data();
}

QStringList list(const char *bars)
{
    return QString::fromUtf8(bars).split(QLatin1Char('|'));
}

/// Endless letters after a header: a file that must not be read to its end.
class Endless : public QIODevice {
public:
    explicit Endless(QByteArray start) : m_start(std::move(start)) { open(QIODevice::ReadOnly | QIODevice::Unbuffered); }
    qint64 given = 0;
    bool isSequential() const override { return true; }
    bool atEnd() const override { return false; }

protected:
    qint64 readData(char *data, qint64 most) override
    {
        const qint64 count = m_start.isEmpty() ? most : std::min<qint64>(most, m_start.size());
        if (m_start.isEmpty())
            std::fill_n(data, count, 'x');
        else
            std::copy_n(m_start.constData(), count, data);
        m_start.remove(0, m_start.isEmpty() ? 0 : count);
        given += count;
        return count;
    }
    qint64 writeData(const char *, qint64) override { return -1; }

private:
    QByteArray m_start;
};

} // namespace

class TestExchangeCsv : public QObject {
    Q_OBJECT
private Q_SLOTS:
    // RFC 4180, section 2, rules 1 to 7, each with its own example; the rules that follow are this program's.
    void readsTheRfcExamples_data()
    {
        QTest::addColumn<QByteArray>("file");
        QTest::addColumn<QList<QStringList>>("records");
        const QList<QStringList> two{list("aaa|bbb|ccc"), list("zzz|yyy|xxx")};
        QTest::newRow("1 line breaks") << QByteArray("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") << two;
        QTest::newRow("2 no last line break") << QByteArray("aaa,bbb,ccc\r\nzzz,yyy,xxx") << two;
        QTest::newRow("4 spaces belong to the cell")
            << QByteArray("aaa, bbb,ccc \r\n") << QList<QStringList>{list("aaa| bbb|ccc ")};
        QTest::newRow("5 quoted") << QByteArray("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") << two;
        QTest::newRow("6 line break inside") << QByteArray("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx")
                                             << QList<QStringList>{list("aaa|b\r\nbb|ccc"), list("zzz|yyy|xxx")};
        QTest::newRow("7 quotation mark inside")
            << QByteArray("\"aaa\",\"b\"\"bb\",\"ccc\"") << QList<QStringList>{list("aaa|b\"bb|ccc")};
        QTest::newRow("LF") << QByteArray("aaa,bbb,ccc\nzzz,yyy,xxx\n") << two;
        QTest::newRow("CR") << QByteArray("aaa,bbb,ccc\rzzz,yyy,xxx\r") << two;
        QTest::newRow("byte order mark") << QByteArray("\xEF\xBB\xBF"
                                                       "aaa,bbb,ccc\nzzz,yyy,xxx")
                                         << two;
        QTest::newRow("mark alone") << QByteArray("\xEF\xBB\xBF") << QList<QStringList>{};
        QTest::newRow("semicolons") << QByteArray("aaa;bbb;ccc\nzzz;yyy;xxx") << two;
        QTest::newRow("semicolons, commas in the text")
            << QByteArray("aaa;\"b,b\";ccc\n1,5;2,5;3,5") << QList<QStringList>{list("aaa|b,b|ccc"), list("1,5|2,5|3,5")};
        QTest::newRow("tabs") << QByteArray("aaa\tbbb\tccc\nzzz\tyyy\txxx") << two;
        QTest::newRow("one column") << QByteArray("aaa\nbbb\n") << QList<QStringList>{list("aaa"), list("bbb")};
        QTest::newRow("empty cells") << QByteArray("a,,\n,,\n") << QList<QStringList>{list("a||"), list("||")};
        QTest::newRow("blank lines are none")
            << QByteArray("\n\na,b\r\n\r\n1,2\n\n") << QList<QStringList>{list("a|b"), list("1|2")};
        QTest::newRow("a quoted empty cell is a record") << QByteArray("a\n\"\"\n") << QList<QStringList>{list("a"), list("")};
        QTest::newRow("inches") << QByteArray("a,b\n12\" woofer,8\"") << QList<QStringList>{list("a|b"), list("12\" woofer|8\"")};
        QTest::newRow("other scripts") << QByteArray("a,b\nΩ µ,日本\n") << QList<QStringList>{list("a|b"), list("Ω µ|日本")};
        QTest::newRow("nothing") << QByteArray() << QList<QStringList>{};
    }
    void readsTheRfcExamples()
    {
        QFETCH(QByteArray, file);
        QFETCH(QList<QStringList>, records);
        QCOMPARE(readAll(file), records);
    }

    void refusesByLine_data()
    {
        QTest::addColumn<QByteArray>("file");
        QTest::addColumn<QString>("says");
        QTest::newRow("Latin-1") << QByteArray("a,b\n1,2\ncaf\xE9,3\n")
                                 << QStringLiteral("line 3: the text is not UTF-8; save it as CSV in UTF-8");
        QTest::newRow("cut in a character") << QByteArray("a\n\xE2\x82") << QStringLiteral("line 2: the text is not UTF-8");
        QTest::newRow("surrogate written as UTF-8")
            << QByteArray("a\n\xED\xA0\x80\n") << QStringLiteral("line 2: the text is not UTF-8");
        QTest::newRow("UTF-16") << QByteArray("\xFF\xFE"
                                              "a\0,\0b\0",
                                              8)
                                << QStringLiteral("line 1: the text is in UTF-16; save it as CSV in UTF-8");
        QTest::newRow("UTF-16 without mark") << QByteArray("a\0,\0b\0", 6) << QStringLiteral("line 1: there is a NUL character");
        QTest::newRow("NUL") << QByteArray("a,b\n1,2\n1,x\0y\n", 14) << QStringLiteral("line 3: there is a NUL character");
        QTest::newRow("NUL in quotation marks")
            << QByteArray("a\n\"x\n\0\"\n", 8) << QStringLiteral("line 3: there is a NUL character");
        QTest::newRow("never closed") << QByteArray("a,b\n1,2\n3,\"open\n5,6\n7,8\n")
                                      << QStringLiteral("line 3: a quotation mark is opened and never closed");
        QTest::newRow("text after the closing one")
            << QByteArray("a\n\"b\"c\n") << QStringLiteral("line 2: text follows a closing quotation mark");
        QTest::newRow("too many columns") << QByteArray("a\n" + QByteArray(5000, ',') + "\n")
                                          << QStringLiteral("line 2: there are more than 1000 columns");
    }
    void refusesByLine()
    {
        QFETCH(QByteArray, file);
        QFETCH(QString, says);
        const auto records = readAll(file);
        QVERIFY(!records.isEmpty());
        const QString sentence = records.constLast().constFirst();
        QVERIFY2(sentence.startsWith(QStringLiteral("Cannot import a.csv: ") + says), qPrintable(sentence));
    }

    void countsLines()
    {
        QBuffer buffer;
        buffer.setData("a,b\r\n\"1\n1\",2\r\n\r\n3,4\n5,6");
        buffer.open(QIODevice::ReadOnly);
        CsvReader csv(buffer, QStringLiteral("x"));
        QList<qint64> lines;
        for (auto more = csv.next(); more && *more; more = csv.next())
            lines << csv.line();
        QCOMPARE(lines, (QList<qint64>{1, 2, 5, 6}));
    }

    void aLongCellEndsTheReading_data()
    {
        QTest::addColumn<QByteArray>("start");
        QTest::newRow("plain") << QByteArray("a,b\n1,");
        QTest::newRow("quoted") << QByteArray("a,b\n1,\"");
        QTest::newRow("header") << QByteArray("a");
    }
    void aLongCellEndsTheReading()
    {
        QFETCH(QByteArray, start);
        Endless device(start);
        CsvReader csv(device, QStringLiteral("Cannot import a.csv"));
        auto more = csv.next();
        if (more)
            more = csv.next();
        QVERIFY(!more);
        QVERIFY(more.trouble().sentence().contains(QStringLiteral("longer than 1 MiB")));
        QVERIFY2(device.given < 2 * CsvReader::longestCell, "the rest of the file must not be read");
    }

    void aCellOfJustUnderOneMebibyteIsRead()
    {
        const QByteArray cell(CsvReader::longestCell, 'y');
        const auto records = readAll("a,b\n1," + cell + "\n");
        QCOMPARE(records.size(), 2);
        QCOMPARE(records.at(1).at(1).size(), cell.size());
    }

    // What a spreadsheet runs: OWASP, "CSV Injection": cells that begin with = + - @, tab, carriage return.
    void defusesWhatWouldRun_data()
    {
        QTest::addColumn<QString>("cell");
        QTest::addColumn<bool>("list");     // in a list for a spreadsheet
        QTest::addColumn<bool>("standard"); // in open repair data
        const auto row = [](const char *cell, bool inList, bool inStandard) {
            QTest::newRow(cell) << QString::fromUtf8(cell) << inList << inStandard;
        };
        row("=cmd|' /C calc'!A0", true, true);
        row("=1+1", true, true);
        row("=", true, true);
        row("@SUM(A1:A9)", true, true);
        row("+cmd|' /C calc'!A0", true, true);
        row("-2+3+cmd|' /C calc'!A0", true, true);
        row("-HYPERLINK(\"x\")", true, true);
        row("\t=1+1", true, true);
        row("\r=1+1", true, true);
        row("\n=1+1", true, true);
        row("\uFF1D1+1", true, true);
        row("-1+1", true, true);
        row("-Bad capacitors renewed. -Switch was loose.", true, false);
        row("+5", false, false);
        row("-3.50", false, false);
        row("-3,5", false, false);
        row("-1e-3", false, false);
        row("--3", true, true);
        row("12 V - 5 V", false, false);
        row("a=b", false, false);
        row("'quoted'", false, false);
        row(" =1", false, false);
        row("", false, false);
    }
    void defusesWhatWouldRun()
    {
        QFETCH(QString, cell);
        QFETCH(bool, list);
        QFETCH(bool, standard);
        for (const auto &[reader, runs] : {std::pair{CsvFor::Spreadsheet, list}, std::pair{CsvFor::Standard, standard}}) {
            QCOMPARE(wouldRun(cell, reader), runs);
            QCOMPARE(defused(cell, reader), runs ? QLatin1Char('\'') + cell : cell);
        }
    }

    void everyCellComesBack()
    {
        const QList<QStringList> rows{
            list("one|two|three"),
            {QStringLiteral("=1+1"), QStringLiteral("'=1+1"), QStringLiteral("''=1+1")},
            {QStringLiteral("'"), QStringLiteral("''"), QStringLiteral("'text'")},
            {QStringLiteral("a,b"), QStringLiteral("a\"b"), QStringLiteral("a\r\nb")},
            {QStringLiteral("\ttab"), QStringLiteral("\rreturn"), QStringLiteral("-x")},
            {QStringLiteral("<script>alert(1)</script>"), QString::fromUtf8("\u202Eabc\u200F"), QStringLiteral("@a")},
            {QString(), QString(), QString()},
        };
        for (const CsvFor reader : {CsvFor::Spreadsheet, CsvFor::Standard}) {
            const QByteArray bytes = written(rows, reader);
            const auto again = readAll(bytes, reader);
            QCOMPARE(again, rows);
            for (const QStringList &record : readAll("x\n" + bytes, reader))
                QVERIFY(!record.isEmpty());
        }
    }

    void writesWhatTheRfcAsks()
    {
        QCOMPARE(written({list("a|b,c|d\"e|"), {QStringLiteral("=1"), QStringLiteral("-2"), QStringLiteral("x\ny"), QString()}}),
                 QByteArray("a,\"b,c\",\"d\"\"e\",\r\n'=1,-2,\"x\ny\",\r\n"));
    }
};

QTEST_GUILESS_MAIN(TestExchangeCsv)
#include "test_exchange_csv.moc"
