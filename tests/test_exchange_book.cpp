// Files into workbooks and out again, on every engine.
#include "model/exchange/export_file.h"
#include "model/exchange/import_file.h"
#include "tests/workbooks.h"

#include <QDir>
#include <QElapsedTimer>

#include <csignal>
#include <sys/resource.h>

using namespace ts;
using namespace ts::testing;

namespace {

const auto repairData = QStringLiteral("open-repair-data");

QByteArray contents(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class TestExchangeBook : public QObject {
    Q_OBJECT
    Workbooks m_books;
    QString m_small = QStringLiteral(SOURCE_DIR "/tests/data/open_repair_small.csv");

    QString file(const QString &name, const QByteArray &bytes)
    {
        QFile made(m_books.path(name));
        if (made.open(QIODevice::WriteOnly))
            made.write(bytes);
        return made.fileName();
    }

private Q_SLOTS:
    void repairRecordsInAndOut_data() { engineRows(); }
    void repairRecordsInAndOut()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        QList<qint64> steps;
        const auto first = importFile(*desk, m_small, repairData, {}, [&](qint64 done, qint64) {
            steps << done;
            return true;
        });
        wantOk(first);
        QCOMPARE(first->problems, QStringList());
        QCOMPARE(first->added, 12);
        QCOMPARE(first->sentence, QStringLiteral("12 units imported from open_repair_small.csv"));
        QVERIFY(!steps.isEmpty());
        QCOMPARE(*desk->count(description<Unit>()), 12);
        QCOMPARE(desk->get(*desk->unitByTag(1))->sourceId, QStringLiteral("mend_1"));
        QCOMPARE(desk->get(*desk->unitByTag(12))->sourceId, QStringLiteral("mend_12"));

        const auto again = importFile(*desk, m_small, repairData);
        wantOk(again);
        QCOMPARE(again->added, 0);
        QCOMPARE(again->skipped, 12);
        QCOMPARE(desk->journal()->size(), 1);

        const QString out = m_books.path(QStringLiteral("out.csv"));
        const auto report = exportFile(*desk, repairData, out);
        wantOk(report);
        QCOMPARE(report->written, 12);
        QCOMPARE(contents(out), contents(m_small));
        wantOk(desk->verify());
        QCOMPARE(*desk->verify(), QStringList());

        wantOk(desk->undo());
        QCOMPARE(*desk->count(description<Unit>()), 0);
        wantOk(desk->redo());
        QCOMPARE(*desk->count(description<Unit>()), 12);
    }

    void aDryRunChangesNothing()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        ImportOptions look;
        look.dryRun = true;
        const auto report = importFile(*desk, m_small, repairData, look);
        wantOk(report);
        QCOMPARE(report->added, 12);
        QCOMPARE(report->sentence, QStringLiteral("12 units would be imported from open_repair_small.csv"));
        QCOMPARE(*desk->count(description<Unit>()), 0);
    }

    void oneBadLineImportsNothing()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        QByteArray bytes = contents(m_small);
        bytes.replace("2020-01-18,Renewed belt", "18th of January,Renewed belt");
        const auto report = importFile(*desk, file(QStringLiteral("bad.csv"), bytes), repairData);
        wantOk(report);
        QVERIFY(report->refused());
        QCOMPARE(report->added, 0);
        QCOMPARE(report->problems.size(), 1);
        QVERIFY2(report->problems.constFirst().startsWith(QStringLiteral("line 11: event_date \"18th of January\"")),
                 qPrintable(report->problems.constFirst()));
        QCOMPARE(*desk->count(description<Unit>()), 0);
        QCOMPARE(desk->journal()->size(), 0);
    }

    void badFilesAreRefusedInOneSentence()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto says = [&](const QString &path, const QString &kind = QStringLiteral("units")) {
            return refusal(importFile(*desk, path, kind));
        };
        QCOMPARE(says(m_books.path(QStringLiteral("none.csv"))),
                 QStringLiteral("Cannot import none.csv: there is no such file."));
        QVERIFY(says(m_books.path(QString())).contains(QStringLiteral("it is a folder")));
        QCOMPARE(says(file(QStringLiteral("empty.csv"), {})), QStringLiteral("Cannot import empty.csv: the file is empty."));
        QVERIFY(says(file(QStringLiteral("nul.csv"), QByteArray("name\na\0b\n", 9)))
                    .contains(QStringLiteral("line 2: there is a NUL character")));
        QVERIFY(
            says(file(QStringLiteral("latin.csv"), "name\ncaf\xE9\n")).contains(QStringLiteral("line 2: the text is not UTF-8")));
        QVERIFY(says(file(QStringLiteral("huge.csv"), "name\n\"" + QByteArray(5 << 20, 'x')))
                    .contains(QStringLiteral("line 2: a cell is longer than 1 MiB")));
        QVERIFY(
            says(file(QStringLiteral("header.csv"), "nmae\nx\n")).contains(QStringLiteral("the column \"nmae\" is not known")));
        QVERIFY(says(m_small, QStringLiteral("parts")).contains(QStringLiteral("yet")));
        QVERIFY(says(m_small, QStringLiteral("json")).contains(QStringLiteral("this is no JSON")));
        QCOMPARE(*desk->count(description<Unit>()), 0);
    }

    void listsInAndOut_data() { engineRows(); }
    void listsInAndOut()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        const QString units = file(QStringLiteral("units.csv"), "name,category,paid,carriage,claim,source id\n"
                                                                "\"=HYPERLINK(\"\"x\"\")\",radio,30.00,8.40,<script>,a\n"
                                                                "Tuner,tuner,,,\u202Ehums,b\n");
        const auto report = importFile(*desk, units, QStringLiteral("units"));
        wantOk(report);
        QCOMPARE(report->problems, QStringList());
        QCOMPARE(report->added, 2);
        QCOMPARE(importFile(*desk, units, QStringLiteral("units"))->skipped, 2);

        const QString sales = file(QStringLiteral("sales.csv"), "model,price,date,tag\nKD-7,85.00,2026-10-01,2\n");
        QCOMPARE(importFile(*desk, sales, QStringLiteral("comparables"))->added, 1);
        QCOMPARE(importFile(*desk, sales, QStringLiteral("comparables"))->skipped, 1);
        QCOMPARE(desk->list<Comparable>()->constFirst().unit, *desk->unitByTag(2));

        const QString out = m_books.path(QStringLiteral("rack.csv"));
        wantOk(exportFile(*desk, QStringLiteral("csv"), out));
        QCOMPARE(contents(out),
                 QByteArray("tag,name,maker,model,category,kind,stage,since,outcome,serial,year,mains,class,claim,place,spent,"
                            "currency,minutes,source_id\r\n"
                            "0001,\"'=HYPERLINK(\"\"x\"\")\",,,radio,to_sell,shelved,2026-11-25,,,,,,<script>,,38.40,GBP,0,a\r\n"
                            "0002,Tuner,,,tuner,to_sell,shelved,2026-11-25,,,,,,\u202Ehums,,0.00,GBP,0,b\r\n"));
    }

    void aWholeWorkbookInAndOut_data() { engineRows(); }
    void aWholeWorkbookInAndOut()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        wantOk(importFile(*desk, m_small, repairData));
        const QString units = file(QStringLiteral("units.csv"), "name,paid,note\nTuner,30.00,knob missing\n");
        wantOk(importFile(*desk, units, QStringLiteral("units")));
        const QString out = m_books.path(QStringLiteral("book.json"));
        wantOk(exportFile(*desk, QStringLiteral("json"), out));

        OpenDesk other;
        wantOk(other.create(m_books.fresh(engine)));
        const auto report = importFile(*other, out, QStringLiteral("json"));
        wantOk(report);
        QCOMPARE(report->problems, QStringList());
        for (const Kind *kind : allKinds()) {
            const auto here = desk->listRows(*kind);
            const auto there = other->listRows(*kind);
            wantOk(here);
            wantOk(there);
            if (kind == &description<Setting>())
                continue; // each workbook has its own
            QCOMPARE(there->size(), here->size());
            for (qsizetype i = 0; i < here->size(); ++i)
                QVERIFY2(Kind::sameContent(here->at(i), there->at(i)), qPrintable(kind->table()));
        }
        // The next tag follows the highest.
        wantOk(importFile(*other, units, QStringLiteral("units")));
        wantOk(other->unitByTag(14));
        QVERIFY(refusal(importFile(*other, out, QStringLiteral("json"))).contains(QStringLiteral("has units already")));
        QCOMPARE(*other->verify(), QStringList());
    }

    void whatMustStayIsNotWrittenOver()
    {
        OpenDesk desk;
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        wantOk(desk.create(book));
        const auto says = [&](const QString &path) { return refusal(exportFile(*desk, QStringLiteral("csv"), path)); };
        QVERIFY(says(book).contains(QStringLiteral("it is a workbook")));
        QVERIFY(says(m_books.path(QString())).contains(QStringLiteral("it is a folder")));
        QVERIFY(says(QStringLiteral("/dev/null")).contains(QStringLiteral("it is no plain file")));
        QVERIFY(!says(m_books.path(QStringLiteral("no/such/folder.csv"))).isEmpty());
        QVERIFY(refusal(exportFile(*desk, QStringLiteral("ods"), m_books.path(QStringLiteral("x")))).contains(QStringLiteral("no such kind")));
        const QString old = file(QStringLiteral("old.csv"), "old");
        wantOk(exportFile(*desk, QStringLiteral("csv"), old));
        QVERIFY(contents(old).startsWith("tag,name"));
        QCOMPARE(*desk->verify(), QStringList());
    }

    void aFullDiskLeavesTheOldFile_data()
    {
        QTest::addColumn<QString>("kind");
        for (const QString &kind : {QStringLiteral("csv"), QStringLiteral("json"), repairData})
            QTest::newRow(qPrintable(kind)) << kind;
    }
    void aFullDiskLeavesTheOldFile()
    {
        QFETCH(QString, kind);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        wantOk(importFile(*desk, m_small, repairData));
        QDir().mkpath(m_books.path(QStringLiteral("full")));
        const QString old = file(QStringLiteral("full/old.csv"), "old");
        // No file may grow past 500 bytes: to the writer that is the same as a disk without room.
        rlimit before{};
        getrlimit(RLIMIT_FSIZE, &before);
        rlimit tight = before;
        tight.rlim_cur = 500;
        const auto handler = std::signal(SIGXFSZ, SIG_IGN);
        setrlimit(RLIMIT_FSIZE, &tight);
        const QString sentence = refusal(exportFile(*desk, kind, old));
        setrlimit(RLIMIT_FSIZE, &before);
        std::signal(SIGXFSZ, handler);
        QVERIFY2(sentence.startsWith(QStringLiteral("Cannot write old.csv: ")) && !sentence.contains(QStringLiteral("Unknown")),
                 qPrintable(sentence));
        QCOMPARE(contents(old), QByteArray("old"));
        QCOMPARE(QDir(m_books.path(QStringLiteral("full"))).entryList(QDir::Files | QDir::Hidden),
                 QStringList{QStringLiteral("old.csv")});
    }

    // 7,673 published records; ../shared/ords/README.md says where they come from.
    void theRealFile_data() { engineRows(); }
    void theRealFile()
    {
        QFETCH(QString, engine);
        const QString real =
            sharedFolder().isEmpty() ? QString() : sharedFolder() + QStringLiteral("/ords/audio_and_home_electronics.csv");
        if (real.isEmpty() || !QFile::exists(real))
            QSKIP("the real records are not beside the project");
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        QElapsedTimer timer;
        timer.start();
        const auto first = importFile(*desk, real, repairData);
        qInfo("imported in %lld ms", timer.elapsed());
        wantOk(first);
        QCOMPARE(first->problems, QStringList());
        QCOMPARE(first->added, 7673);
        timer.start();
        const auto again = importFile(*desk, real, repairData);
        qInfo("again in %lld ms", timer.elapsed());
        wantOk(again);
        QCOMPARE(again->added, 0);
        QCOMPARE(again->skipped, 7673);
        QCOMPARE(*desk->count(description<Unit>()), 7673);
        const QString out = m_books.path(QStringLiteral("real.csv"));
        timer.start();
        wantOk(exportFile(*desk, repairData, out));
        qInfo("exported in %lld ms", timer.elapsed());
        QVERIFY(contents(out) == contents(real));
        wantOk(desk->undo());
        QCOMPARE(*desk->count(description<Unit>()), 0);
    }
};

QTEST_GUILESS_MAIN(TestExchangeBook)
#include "test_exchange_book.moc"
