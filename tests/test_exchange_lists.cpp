#include "model/exchange/read_comparables.h"
#include "model/exchange/read_units.h"
#include "model/exchange/write_units.h"
#include "tests/testing.h"

#include <QBuffer>

using namespace ts;

namespace {

QDateTime noon()
{
    return QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC);
}

/// The records of one kind that a change adds.
template <class R>
QList<R> added(const Change &change)
{
    QList<R> records;
    for (const ChangeItem &item : change.items())
        if (item.kind == &description<R>() && !item.before && item.after)
            records << *description<R>().fromRow(*item.after);
    return records;
}

} // namespace

class TestExchangeLists : public QObject {
    Q_OBJECT
    SetClock m_clock{noon()};
    IdMaker m_ids{m_clock, 7};
    BenchFile m_bench;

    Expected<Imported> units(const QByteArray &file, const QHash<QString, QString> &map = {}, const QSet<QString> &known = {})
    {
        QBuffer buffer;
        buffer.setData(file);
        buffer.open(QIODevice::ReadOnly);
        Maker maker(m_ids);
        auto read = readUnits(buffer, QStringLiteral("Cannot import a.csv"), m_bench, known, map, maker);
        checkRows(read);
        return read;
    }
    Expected<Imported> sales(const QByteArray &file, const QList<Comparable> &known = {}, const QHash<int, Id<Unit>> &tags = {})
    {
        QBuffer buffer;
        buffer.setData(file);
        buffer.open(QIODevice::ReadOnly);
        Maker maker(m_ids);
        auto read = readComparables(buffer, QStringLiteral("Cannot import a.csv"), m_bench, known, tags, {}, maker);
        checkRows(read);
        return read;
    }
    /// Whatever was read can be recorded.
    static void checkRows(const Expected<Imported> &read)
    {
        if (read)
            for (const ChangeItem &item : read->change.items())
                testing::wantOk(item.kind->reads(*item.after));
    }

private Q_SLOTS:
    void aFullRow()
    {
        const auto read = units("Item;Brand;Model no.;Type;S/N;Fault;Price paid (GBP);Postage;Date "
                                "bought;Voltage;Class;Shelf;Year;Status;Purpose;Their ID;Notes\n"
                                "Cassette deck;Hallowell;KD-7;cassette deck;123;\"Eats tape; \"\"dead\"\"\";1.234,50;8,40;28 Nov "
                                "2025;230 V 50 Hz;II;B2;1984;bench;to keep;x1;knob missing\n");
        testing::wantOk(read);
        QVERIFY2(read->problems.isEmpty(), qPrintable(read->problems.lines().join(QLatin1Char('\n'))));
        QCOMPARE(read->added, 1);
        const Unit unit = added<Unit>(read->change).value(0);
        QCOMPARE(unit.name, QStringLiteral("Cassette deck"));
        QCOMPARE(unit.maker, QStringLiteral("Hallowell"));
        QCOMPARE(unit.makerModel, QStringLiteral("KD-7"));
        QCOMPARE(unit.category, Category::CassetteDeck);
        QCOMPARE(unit.serial, QStringLiteral("123"));
        QCOMPARE(unit.claim, QStringLiteral("Eats tape; \"dead\""));
        QCOMPARE(unit.mains, QStringLiteral("230 V 50 Hz"));
        QCOMPARE(unit.protectionClass, ProtectionClass::II);
        QCOMPARE(unit.place, QStringLiteral("B2"));
        QCOMPARE(unit.year, 1984);
        QCOMPARE(unit.stage, Stage::Bench);
        QCOMPARE(unit.kind, UnitKind::ToKeep);
        QCOMPARE(unit.sourceId, QStringLiteral("x1"));
        QCOMPARE(unit.tag, 0);
        const auto spends = added<Spend>(read->change);
        QCOMPARE(spends.size(), 2);
        QCOMPARE(spends.at(0).kind, SpendKind::Purchase);
        QCOMPARE(spends.at(0).amount->minor(), 123450);
        QCOMPARE(spends.at(0).amount->currency().code(), QStringLiteral("GBP"));
        QCOMPARE(spends.at(0).paidOn, QDate(2025, 11, 28));
        QCOMPARE(spends.at(1).kind, SpendKind::CarriageIn);
        QCOMPARE(spends.at(1).amount->minor(), 840);
        QCOMPARE(spends.at(1).unit, unit.id);
        const auto moves = added<StageMove>(read->change);
        QCOMPARE(moves.size(), 1);
        QCOMPARE(moves.at(0).toStage, Stage::Bench);
        QCOMPARE(added<Note>(read->change).value(0).text, QStringLiteral("knob missing"));
    }

    void aBareRow()
    {
        const auto read = units("maker,model\nHallowell,TR-2\n");
        testing::wantOk(read);
        QVERIFY(read->problems.isEmpty());
        const Unit unit = added<Unit>(read->change).value(0);
        QCOMPARE(unit.name, QStringLiteral("Hallowell TR-2"));
        QCOMPARE(unit.category, Category::Other);
        QCOMPARE(unit.stage, Stage::Shelved);
        QCOMPARE(unit.stageSince, noon());
        QVERIFY(added<Spend>(read->change).isEmpty());
    }

    void theMapNamesColumns()
    {
        const QHash<QString, QString> map{{QStringLiteral("Bezeichnung"), QStringLiteral("name")},
                                          {QStringLiteral("Farbe"), QStringLiteral("-")}};
        const auto read = units("Bezeichnung,Farbe\nTuner,black\n", map);
        testing::wantOk(read);
        QCOMPARE(added<Unit>(read->change).value(0).name, QStringLiteral("Tuner"));
        QVERIFY(testing::refusal(units("Titel\nTuner\n", map)).contains(QStringLiteral("not in the file")));
        QVERIFY(testing::refusal(units("a\nTuner\n", {{QStringLiteral("a"), QStringLiteral("colour")}}))
                    .contains(QStringLiteral("\"colour\" that is not known")));
    }

    void aWrongHeaderIsRefusedWhole_data()
    {
        QTest::addColumn<QByteArray>("file");
        QTest::addColumn<QString>("says");
        QTest::newRow("stranger") << QByteArray("name,colour\nA,red\n")
                                  << QStringLiteral(
                                         "the column \"colour\" is not known; the columns found are \"name\", \"colour\"");
        QTest::newRow("no name") << QByteArray("category,paid\nradio,3\n") << QStringLiteral("no column says what the unit is");
        QTest::newRow("twice") << QByteArray("name,item\nA,B\n") << QStringLiteral("\"name\" and \"item\" are both the name");
        QTest::newRow("a row as header") << QByteArray("Radio,12.00\nTuner,13.00\n")
                                         << QStringLiteral("the columns \"Radio\", \"12.00\" are not known");
        QTest::newRow("empty") << QByteArray() << QStringLiteral("the file is empty");
    }
    void aWrongHeaderIsRefusedWhole()
    {
        QFETCH(QByteArray, file);
        QFETCH(QString, says);
        const QString sentence = testing::refusal(units(file));
        QVERIFY2(sentence.startsWith(QStringLiteral("Cannot import a.csv: ") + says), qPrintable(sentence));
    }

    void wrongCellsAreNamedByLineAndColumn_data()
    {
        QTest::addColumn<QByteArray>("file");
        QTest::addColumn<QString>("says");
        QTest::newRow("number") << QByteArray("name,Price\nA,twelve\n") << QStringLiteral("line 2: \"Price\": \"twelve\"");
        QTest::newRow("two decimals too many")
            << QByteArray("name,paid\nA,1.2345\n") << QStringLiteral("line 2: \"paid\": \"1.2345\"");
        QTest::newRow("below zero") << QByteArray("name,paid\nA,-3\n")
                                    << QStringLiteral("line 2: \"paid\": \"-3\" is below zero");
        QTest::newRow("currency") << QByteArray("name,paid,currency\nA,3,QQQ\n") << QStringLiteral("line 2: \"currency\": ");
        QTest::newRow("date") << QByteArray("name,bought on\nA,2026-02-30\n")
                              << QStringLiteral("line 2: \"bought on\": \"2026-02-30\" is no date");
        QTest::newRow("day or month") << QByteArray("name,bought on\nA,03/04/2026\n")
                                      << QStringLiteral("line 2: \"bought on\": \"03/04/2026\" is no date");
        QTest::newRow("category") << QByteArray("name,category\nA,radio\nB,fridge\n")
                                  << QStringLiteral("line 3: \"category\": \"fridge\" is no category");
        QTest::newRow("stage") << QByteArray("name,stage\nA,lost\n") << QStringLiteral("line 2: \"stage\": \"lost\" is no stage");
        QTest::newRow("year") << QByteArray("name,year\nA,1683\n")
                              << QStringLiteral("line 2: \"year\": \"1683\" is no whole number from 1850 to 2027");
        QTest::newRow("class") << QByteArray("name,class\nA,IV\n")
                               << QStringLiteral("line 2: \"class\": \"IV\" is no protection class");
        QTest::newRow("no outcome") << QByteArray("name,stage\nA,closed\n")
                                    << QStringLiteral("line 2: \"outcome\": a closed unit needs an outcome");
        QTest::newRow("no reason") << QByteArray("name,stage\nA,held\n")
                                   << QStringLiteral("line 2: \"because\": a held unit needs a reason");
        QTest::newRow("outcome too early") << QByteArray("name,stage,outcome\nA,bench,sold\n")
                                           << QStringLiteral("line 2: \"outcome\": only a closed unit");
        QTest::newRow("no name") << QByteArray("name,claim\n ,hums\n")
                                 << QStringLiteral("line 2: the unit has neither name nor model");
        QTest::newRow("too few") << QByteArray("name,claim\n\"A\n\"\"B\"\"\",hums\nC\n")
                                 << QStringLiteral("line 4: the number of columns is 1, the header has 2");
        QTest::newRow("too many") << QByteArray("name\nA,B\n")
                                  << QStringLiteral("line 2: the number of columns is 2, the header has 1");
        QTest::newRow("id twice") << QByteArray("name,id\nA,7\nB,7\n")
                                  << QStringLiteral("line 3: \"id\": it stands already on line 2");
    }
    void wrongCellsAreNamedByLineAndColumn()
    {
        QFETCH(QByteArray, file);
        QFETCH(QString, says);
        const auto read = units(file);
        testing::wantOk(read);
        const QString first = read->problems.lines().value(0);
        QVERIFY2(first.startsWith(says), qPrintable(first));
        QCOMPARE(read->problems.lines().size(), 1);
    }

    void manyProblemsAreCutShort()
    {
        QByteArray file("name,paid\n");
        for (int i = 0; i < 57; ++i)
            file += "A,x\n";
        const auto read = units(file);
        testing::wantOk(read);
        QCOMPARE(read->problems.lines().size(), 21);
        QCOMPARE(read->problems.lines().constLast(), QStringLiteral("and 37 more"));
    }

    void whatIsThereIsSkipped()
    {
        const auto read = units("name,source id\nA,7\nB,8\n", {}, {QStringLiteral("7")});
        testing::wantOk(read);
        QCOMPARE(read->skipped, 1);
        QCOMPARE(added<Unit>(read->change).value(0).name, QStringLiteral("B"));
        QVERIFY(read->warnings.isEmpty());
        QVERIFY(units("name\nA\n")->warnings.lines().constFirst().contains(QStringLiteral("second time")));
    }

    void ownListComesBack()
    {
        Maker maker(m_ids);
        Unit unit = maker.fresh<Unit>();
        unit.tag = 42;
        unit.name = QStringLiteral("=HYPERLINK(\"x\")");
        unit.claim = QStringLiteral("<script>\r\n\"hums\", then dies");
        unit.category = Category::Tuner;
        unit.stage = Stage::Closed;
        unit.outcome = Outcome::Kept;
        unit.stageSince = noon();
        unit.year = 1979;
        unit.protectionClass = ProtectionClass::I;
        RackRow row;
        row.id = unit.id;
        row.spent = Money(3840, *Currency::parse(u"GBP"));
        row.minutes = 95;
        QBuffer buffer;
        buffer.open(QIODevice::WriteOnly);
        writeUnits(buffer, {unit}, {row});
        QVERIFY(buffer.data().startsWith("tag,name,maker,model,category,kind,stage,since,outcome,serial,year,mains,class,claim,"
                                         "place,spent,currency,minutes,source_id\r\n"
                                         "0042,\"'=HYPERLINK(\"\"x\"\")\",,,tuner,to_sell,closed,2026-11-25,kept,,1979,,I,\"<"
                                         "script>\r\n\"\"hums\"\", then dies\",,38.40,GBP,95,\r\n"));
        const auto read = units(buffer.data());
        testing::wantOk(read);
        QVERIFY2(read->problems.isEmpty(), qPrintable(read->problems.lines().join(QLatin1Char('\n'))));
        const Unit again = added<Unit>(read->change).value(0);
        QCOMPARE(again.name, unit.name);
        QCOMPARE(again.claim, unit.claim);
        QCOMPARE(again.category, unit.category);
        QCOMPARE(again.stage, unit.stage);
        QCOMPARE(again.outcome, unit.outcome);
        QCOMPARE(again.year, unit.year);
        QCOMPARE(again.protectionClass, unit.protectionClass);
    }

    void comparables()
    {
        const QHash<int, Id<Unit>> tags{{42, m_ids.next<Unit>()}};
        const QByteArray file("maker,model,category,price,currency,date,condition,working,asking,carriage included,source,tag\n"
                              "Hallowell,KD-7,cassette_deck,120.00,EUR,2026-10-01,good,yes,sold,no,flea market,0042\n"
                              "Hallowell,KD-7,,85,,,,not working,asking,yes,,\n"
                              "Hallowell,KD-7,,85,,,,not working,asking,yes,,\n");
        const auto read = sales(file, {}, tags);
        testing::wantOk(read);
        QVERIFY2(read->problems.isEmpty(), qPrintable(read->problems.lines().join(QLatin1Char('\n'))));
        const auto list = added<Comparable>(read->change);
        QCOMPARE(list.size(), 3); // two equal sales are two sales
        QCOMPARE(list.at(0).price->minor(), 12000);
        QCOMPARE(list.at(0).price->currency().code(), QStringLiteral("EUR"));
        QCOMPARE(list.at(0).soldOn, QDate(2026, 10, 1));
        QCOMPARE(list.at(0).working, true);
        QCOMPARE(list.at(0).asking, false);
        QCOMPARE(list.at(0).unit, tags.value(42));
        QCOMPARE(list.at(1).price->currency().code(), QStringLiteral("GBP"));
        QCOMPARE(list.at(1).working, false);
        QVERIFY(list.at(1).asking && list.at(1).carriageIncluded);
        QVERIFY(list.at(1).unit.isNull());

        const auto again = sales(file, list, tags);
        testing::wantOk(again);
        QCOMPARE(again->added, 0);
        QCOMPARE(again->skipped, 3);
        QVERIFY(again->change.isEmpty());
    }

    void wrongComparables()
    {
        const auto read = sales("model,price,tag,working\nA,,1,yes\nB,3,77,yes\nC,3,,perhaps\nD,3,,\n");
        testing::wantOk(read);
        QCOMPARE(read->problems.lines(), (QStringList{QStringLiteral("line 2: \"price\": it is empty"),
                                                      QStringLiteral("line 2: \"tag\": there is no unit 0001"),
                                                      QStringLiteral("line 3: \"tag\": there is no unit 0077"),
                                                      QStringLiteral("line 4: \"working\": \"perhaps\" is neither yes nor no")}));
        QVERIFY(testing::refusal(sales("model\nA\n")).contains(QStringLiteral("no column says the price")));
    }
};

QTEST_GUILESS_MAIN(TestExchangeLists)
#include "test_exchange_lists.moc"
