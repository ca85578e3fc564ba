#include "model/exchange/csv_reader.h"
#include "model/exchange/csv_writer.h"
#include "model/exchange/open_repair.h"
#include "model/exchange/read_open_repair.h"
#include "model/exchange/write_open_repair.h"
#include "model/records/stage_move.h"
#include "tests/testing.h"

#include <QBuffer>
#include <QElapsedTimer>
#include <QFile>

using namespace ts;

namespace {

QByteArray contents(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

template <class R>
QList<R> added(const Change &change)
{
    QList<R> records;
    for (const ChangeItem &item : change.items())
        if (item.kind == &description<R>())
            records << *description<R>().fromRow(*item.after);
    return records;
}

/// The records of a change as the standard's file would have them, in their order.
QByteArray written(const Change &change, const RepairProvider &provider = {})
{
    QHash<QUuid, SourceRecord> sources;
    for (const SourceRecord &source : added<SourceRecord>(change))
        sources.insert(source.unit.value, source);
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    CsvWriter csv(buffer, CsvFor::Standard);
    csv.row(openrepair::columns());
    for (const Unit &unit : added<Unit>(change))
        csv.row(openRepairRow({unit, sources.value(unit.id.value), {}, {}}, provider));
    csv.flush();
    return buffer.data();
}

const auto header = QByteArrayLiteral("id,product_category,repair_status,event_date,problem\n");

} // namespace

class TestExchangeOpenRepair : public QObject {
    Q_OBJECT
    SetClock m_clock{QDateTime(QDate(2026, 11, 25), QTime(12, 0), Qt::UTC)};
    IdMaker m_ids{m_clock, 7};

    Expected<Imported> read(const QByteArray &file, const QSet<QString> &known = {})
    {
        QBuffer buffer;
        buffer.setData(file);
        buffer.open(QIODevice::ReadOnly);
        Maker maker(m_ids);
        return readOpenRepair(buffer, QStringLiteral("Cannot import a.csv"), known, maker);
    }
    static QByteArray smallFile() { return contents(QStringLiteral(SOURCE_DIR "/tests/data/open_repair_small.csv")); }

private Q_SLOTS:
    void theSmallFile()
    {
        const auto imported = read(smallFile());
        testing::wantOk(imported);
        QVERIFY(imported->problems.isEmpty());
        QVERIFY2(imported->warnings.isEmpty(), qPrintable(imported->warnings.lines().join(QLatin1Char('\n'))));
        QCOMPARE(imported->added, 12);
        for (const ChangeItem &item : imported->change.items())
            testing::wantOk(item.kind->reads(*item.after));
        QHash<QString, Unit> units;
        for (const Unit &unit : added<Unit>(imported->change))
            units.insert(unit.sourceId, unit);
        QHash<QUuid, StageMove> moves;
        for (const StageMove &move : added<StageMove>(imported->change))
            moves.insert(move.unit.value, move);
        const auto unit = [&](const char *id) { return units.value(QString::fromLatin1(id)); };
        const auto because = [&](const char *id) { return moves.value(unit(id).id.value).because; };

        QCOMPARE(unit("mend_1").name, QStringLiteral("Turntable"));
        QCOMPARE(unit("mend_1").category, Category::Turntable);
        QCOMPARE(unit("mend_1").kind, UnitKind::Owners);
        QCOMPARE(unit("mend_1").stage, Stage::Shelved);
        QCOMPARE(unit("mend_1").claim, QStringLiteral("Turntable runs slow, then stops"));
        QCOMPARE(unit("mend_1").at, QDateTime(QDate(2019, 5, 4), QTime(0, 0), Qt::UTC));
        QCOMPARE(unit("mend_1").stageSince, unit("mend_1").at);
        QVERIFY(unit("mend_1").maker.isEmpty());
        QVERIFY(!unit("mend_1").year);

        QCOMPARE(unit("mend_2").category, Category::DiscPlayer);
        QCOMPARE(unit("mend_2").name, QStringLiteral("Cd player"));
        QCOMPARE(unit("mend_2").maker, QStringLiteral("Hallowell"));
        QCOMPARE(unit("mend_2").year, 1994);
        QCOMPARE(unit("mend_2").yearBasis, QStringLiteral("said to be 25 years old"));
        QCOMPARE(unit("mend_2").stage, Stage::Closed);
        QCOMPARE(unit("mend_2").outcome, Outcome::ReturnedToOwner);
        QCOMPARE(unit("mend_2").claim, QStringLiteral("Says \"no disc\", cleaned the lens"));

        QCOMPARE(unit("mend_3").category, Category::CassetteDeck); // only the problem text says so
        QCOMPARE(unit("mend_3").stage, Stage::Held);
        QCOMPARE(unit("mend_3").heldBecause, QStringLiteral("was left repairable on 2019-06-01"));
        QCOMPARE(because("mend_3"), unit("mend_3").heldBecause);
        QCOMPARE(because("mend_8"), QStringLiteral("was left repairable on 2020-01-18: Spare parts not available"));

        QCOMPARE(unit("mend_4").outcome, Outcome::Scrapped);
        QCOMPARE(unit("mend_4").year, 1971);
        QCOMPARE(because("mend_4"), QStringLiteral("Product too worn out")); // both wordings are one
        QCOMPARE(because("mend_5"), because("mend_4"));
        QCOMPARE(because("mend_6"), QStringLiteral("No way to open product"));
        QCOMPARE(because("mend_7"), because("mend_6"));
        QCOMPARE(because("mend_12"), QStringLiteral("given up, no reason recorded"));

        QCOMPARE(unit("mend_5").category, Category::Radio);
        QCOMPARE(unit("mend_5").name, QStringLiteral("Portable Radio"));
        QCOMPARE(unit("mend_6").category, Category::OldComputer);
        QCOMPARE(unit("mend_6").claim, QStringLiteral("Won't start\nBeeps twice"));
        QCOMPARE(unit("mend_7").category, Category::Other); // three things in one
        QCOMPARE(unit("mend_8").category, Category::GameConsole);
        QCOMPARE(unit("mend_9").category, Category::ReelRecorder);
        QCOMPARE(unit("mend_10").category, Category::Loudspeaker);
        QCOMPARE(unit("mend_11").category, Category::AmplifierReceiver);
        QCOMPARE(unit("mend_11").year, 2019); // half a year old in February 2020
        QCOMPARE(unit("mend_12").category, Category::Other);
    }

    void theSmallFileGoesOutByteForByte()
    {
        const auto imported = read(smallFile());
        testing::wantOk(imported);
        QCOMPARE(written(imported->change), smallFile());
    }

    void theSameFileAgainAddsNothing()
    {
        QSet<QString> known;
        for (const Unit &unit : added<Unit>(read(smallFile())->change))
            known.insert(unit.sourceId);
        const auto again = read(smallFile(), known);
        testing::wantOk(again);
        QCOMPARE(again->added, 0);
        QCOMPARE(again->skipped, 12);
        QVERIFY(again->change.isEmpty());
    }

    void unknownWordsAreNamedByLineAndKept()
    {
        const auto imported =
            read("id,product_category,product_category_id,repair_status,repair_barrier_if_end_of_life,event_date,problem,mood\n"
                 "a1,Toaster,31,Fixed,,2020-01-01,x,glad\n"
                 "a2,Flux bench,77,Mended,,2020-01-01,x,\n"
                 "a3,Toaster,13,END OF LIFE,Cosmic rays,2020-01-01,x,\n");
        testing::wantOk(imported);
        QVERIFY(imported->problems.isEmpty());
        QCOMPARE(imported->added, 3);
        const QStringList lines = imported->warnings.lines();
        QCOMPARE(lines.size(), 5);
        QVERIFY(lines.at(0).startsWith(QStringLiteral("line 1: the column \"mood\"")));
        QVERIFY(lines.at(1).startsWith(QStringLiteral("line 3: product_category \"Flux bench\"")));
        QVERIFY(lines.at(2).startsWith(QStringLiteral("line 3: repair_status \"Mended\"")));
        QVERIFY(
            lines.at(3).startsWith(QStringLiteral("line 4: product_category_id \"13\" is not that of \"Toaster\", which is 31")));
        QVERIFY(lines.at(4).startsWith(QStringLiteral("line 4: repair_barrier_if_end_of_life \"Cosmic rays\"")));
        const auto sources = added<SourceRecord>(imported->change);
        QCOMPARE(sources.at(1).productCategory, QStringLiteral("Flux bench"));
        QCOMPARE(sources.at(1).repairStatus, QStringLiteral("Mended"));
        QCOMPARE(added<Unit>(imported->change).at(1).stage, Stage::Shelved);
        QCOMPARE(added<Unit>(imported->change).at(1).name, QStringLiteral("Flux bench"));
        QCOMPARE(added<StageMove>(imported->change).at(1).because, QStringLiteral("Cosmic rays"));
    }

    void whatIsWrongIsNamedByLine_data()
    {
        QTest::addColumn<QByteArray>("file");
        QTest::addColumn<QString>("says");
        QTest::newRow("no id") << header + "a,Toaster,Fixed,2020-01-01,x\n,Toaster,Fixed,2020-01-01,x\n"
                               << QStringLiteral("line 3: the id is missing");
        QTest::newRow("no date") << header + "a,Toaster,Fixed,,x\n" << QStringLiteral("line 2: event_date \"\" is no date");
        QTest::newRow("bad date") << header + "a,Toaster,Fixed,2020-13-01,x\n"
                                  << QStringLiteral("line 2: event_date \"2020-13-01\" is no date");
        QTest::newRow("other date") << header + "a,Toaster,Fixed,1/2/2020,x\n"
                                    << QStringLiteral("line 2: event_date \"1/2/2020\" is no date");
        QTest::newRow("future") << header + "a,Toaster,Fixed,2031-01-01,x\n"
                                << QStringLiteral("line 2: event_date \"2031-01-01\" lies in the future");
        QTest::newRow("twice") << header + "a,Toaster,Fixed,2020-01-01,x\na,Toaster,Fixed,2020-01-01,y\n"
                               << QStringLiteral("line 3: the id \"a\" stands already on line 2");
        QTest::newRow("columns") << header + "a,Toaster,Fixed,2020-01-01,x,y\n"
                                 << QStringLiteral("line 2: the number of columns is 6, the header has 5");
        const QByteArray years = "id,product_category,repair_status,event_date,problem,year_of_manufacture,product_age\n";
        QTest::newRow("year") << years + "a,Toaster,Fixed,2020-01-01,x,old,\n"
                              << QStringLiteral("line 2: year_of_manufacture \"old\" is no year");
        QTest::newRow("early year") << years + "a,Toaster,Fixed,2020-01-01,x,20,\n"
                                    << QStringLiteral("line 2: year_of_manufacture \"20\" is no year");
        QTest::newRow("late year") << years + "a,Toaster,Fixed,2020-01-01,x,2022,\n"
                                   << QStringLiteral("line 2: year_of_manufacture \"2022\" is after the event");
        QTest::newRow("age") << years + "a,Toaster,Fixed,2020-01-01,x,,-1\n"
                             << QStringLiteral("line 2: product_age \"-1\" is no age in years");
        QTest::newRow("no number") << years + "a,Toaster,Fixed,2020-01-01,x,,nan\n"
                                   << QStringLiteral("line 2: product_age \"nan\" is no age in years");
    }
    void whatIsWrongIsNamedByLine()
    {
        QFETCH(QByteArray, file);
        QFETCH(QString, says);
        const auto imported = read(file);
        testing::wantOk(imported);
        QCOMPARE(imported->problems.lines().size(), 1);
        const QString line = imported->problems.lines().constFirst();
        QVERIFY2(line.startsWith(says), qPrintable(line));
    }

    void anotherFileIsRefused()
    {
        QVERIFY(testing::refusal(read("name,paid\nA,3\n"))
                    .startsWith(QStringLiteral("Cannot import a.csv: the header has no id, product_category, repair_status, "
                                               "event_date, problem; the columns found are \"name\", \"paid\"")));
        QVERIFY(testing::refusal(read("")).contains(QStringLiteral("the file is empty")));
        QVERIFY(testing::refusal(read(header + "a,Toaster,Fixed,2020-01-01,caf\xE9\n"))
                    .contains(QStringLiteral("line 2: the text is not UTF-8")));
    }

    void theSameRecordTwiceInOneFileCountsOnce()
    {
        const auto imported = read(header + "a,Toaster,Fixed,2020-01-01,x\na,Toaster,Fixed,2020-01-01,x\n");
        testing::wantOk(imported);
        QCOMPARE(imported->added, 1);
        QCOMPARE(imported->skipped, 1);
        QVERIFY(imported->warnings.lines().constFirst().contains(QStringLiteral("line 2")));
    }

    void whatTheWorkbookKnowsBetterGoesOut()
    {
        const auto imported = read(smallFile());
        Unit unit = added<Unit>(imported->change).at(2); // mend_3: Repairable, 2019-06-01
        const SourceRecord source = added<SourceRecord>(imported->change).at(2);
        const auto cells = [&](const QStringList &open = {}, const QString &because = {}) {
            return openRepairRow({unit, source, open, because}, {});
        };
        enum { Category_ = 4, Brand = 6, Year = 7, Age = 8, Status = 9, Barrier = 10, EventDate = 12, Problem = 13 };
        QCOMPARE(cells().at(Status), QStringLiteral("Repairable"));

        unit.claim = QStringLiteral("Eats tape in play");
        QCOMPARE(cells().at(Problem), unit.claim);
        QCOMPARE(cells().at(Category_), QStringLiteral("Hi-Fi separates"));
        QCOMPARE(cells().at(EventDate), QStringLiteral("2019-06-01"));

        unit.stage = Stage::Closed;
        unit.outcome = Outcome::ReturnedToOwner;
        unit.stageSince = QDateTime(QDate(2026, 11, 20), QTime(18, 0), Qt::UTC);
        QCOMPARE(cells().at(Status), QStringLiteral("Fixed"));
        QCOMPARE(cells().at(EventDate), QStringLiteral("2026-11-20"));
        QCOMPARE(cells({QStringLiteral("hums")}).at(Status), QStringLiteral("Repairable"));

        unit.outcome = Outcome::BrokenForParts;
        QCOMPARE(cells({}, QStringLiteral("spare parts too expensive")).at(Barrier), QStringLiteral("Spare parts too expensive"));
        QCOMPARE(cells({}, QStringLiteral("had enough")).at(Barrier), QString());
        QCOMPARE(cells().at(Status), QStringLiteral("End of life"));

        unit.year = 1984;
        unit.maker = QStringLiteral("Hallowell");
        unit.category = Category::Radio;
        QCOMPARE(cells().at(Year), QStringLiteral("1984"));
        QCOMPARE(cells().at(Age), QStringLiteral("42"));
        QCOMPARE(cells().at(Brand), QStringLiteral("Hallowell"));
        QCOMPARE(cells().at(Category_), QStringLiteral("Portable radio"));
    }

    void ownUnitsGoOutToo()
    {
        Maker maker(m_ids);
        Unit unit = maker.fresh<Unit>();
        unit.tag = 42;
        unit.name = QStringLiteral("Pellworth KD-7 cassette deck");
        unit.maker = QStringLiteral("Pellworth");
        unit.category = Category::CassetteDeck;
        unit.stage = Stage::Offered;
        unit.stageSince = QDateTime(QDate(2026, 11, 20), QTime(18, 0), Qt::UTC);
        unit.year = 1984;
        unit.claim = QStringLiteral("=cmd()");
        const RepairProvider bench{QStringLiteral("Lanternhill Bench"), QStringLiteral("GBR")};
        QCOMPARE(openRepairRow({unit, {}, {}, {}}, bench),
                 QStringLiteral("turnscrew_0042|Lanternhill Bench|GBR|Cassette deck|Hi-Fi "
                                "separates|13|Pellworth|1984|42|Fixed|||2026-11-20|=cmd()")
                     .split(QLatin1Char('|')));
        unit.claim.clear();
        QCOMPARE(openRepairRow({unit, {}, {QStringLiteral("hums"), QStringLiteral("no display")}, {}}, bench).constLast(),
                 QStringLiteral("hums; no display"));
    }

    // 7,673 published records; ../shared/ords/README.md says where they come from.
    void theRealFile()
    {
        const QString folder = testing::sharedFolder();
        const QByteArray file =
            folder.isEmpty() ? QByteArray() : contents(folder + QStringLiteral("/ords/audio_and_home_electronics.csv"));
        if (file.isEmpty())
            QSKIP("the real records are not beside the project");
        QElapsedTimer timer;
        timer.start();
        const auto imported = read(file);
        qInfo("read and planned in %lld ms", timer.elapsed());
        testing::wantOk(imported);
        QCOMPARE(imported->added, 7673);
        QVERIFY(imported->problems.isEmpty());
        QVERIFY2(imported->warnings.isEmpty(), qPrintable(imported->warnings.lines().join(QLatin1Char('\n'))));
        for (const ChangeItem &item : imported->change.items())
            testing::wantOk(item.kind->reads(*item.after));
        QCOMPARE(written(imported->change), file);
        // Counted from the file itself by repair_status.
        QHash<Stage, int> stages;
        QHash<Category, int> categories;
        for (const Unit &unit : added<Unit>(imported->change)) {
            ++stages[unit.stage];
            ++categories[unit.category];
        }
        QCOMPARE(stages.value(Stage::Closed), 3664 + 1628);
        QCOMPARE(stages.value(Stage::Held), 1976);
        QCOMPARE(stages.value(Stage::Shelved), 405);
        QCOMPARE(categories.value(Category::Radio) >= 2173, true);
        QCOMPARE(categories.value(Category::OldComputer), 429);
        for (auto it = categories.begin(); it != categories.end(); ++it)
            qInfo("%s: %d", qPrintable(toWord(it.key())), it.value());
    }
};

QTEST_GUILESS_MAIN(TestExchangeOpenRepair)
#include "test_exchange_open_repair.moc"
