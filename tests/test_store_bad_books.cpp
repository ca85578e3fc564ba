// Everything that may be given as a workbook file and is none, or is not well: one sentence each, and nothing is changed.
#include "tests/child.h"
#include "tests/workbooks.h"

#include <sqlite3.h>

#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>

using namespace ts;
using namespace ts::testing;

namespace {

QByteArray read(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void write(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(bytes) != bytes.size())
        qFatal("%s cannot be written", qPrintable(path));
}

Expected<void> addNote(OpenDesk &desk, const QString &text)
{
    Unit unit = desk->maker().fresh<Unit>();
    unit.name = text;
    const auto done = desk->apply(Change(QStringLiteral("Took in ") + text).add(unit));
    return done ? Expected<void>() : Expected<void>(done.trouble());
}

/// A workbook of some pages, closed.
void makeBook(const QString &book, int units = 60)
{
    OpenDesk desk;
    wantOk(desk.create(book));
    for (int i = 0; i < units; ++i)
        wantOk(addNote(desk, QStringLiteral("Unit %1 ").arg(i) + QStringLiteral("x").repeated(300)));
}

/// What happens to a workbook that can be read and not written: what is read, then how writing is refused.
void tellOfReadOnly(const QString &book, const Child::Say &say)
{
    OpenDesk desk;
    if (const auto opened = desk.open(book); !opened)
        return say(opened.trouble().sentence().toUtf8());
    const auto rack = desk->rack();
    const auto sound = desk->verify();
    const auto found = desk->search(QStringLiteral("unit"));
    say(rack && sound && found ? QByteArray::number(rack->size()) + ' ' + QByteArray::number(sound->size()) + ' ' + QByteArray::number(found->size())
                               : QByteArray("not read"));
    say(refusal(addNote(desk, QStringLiteral("late"))).toUtf8());
    say(refusal(desk->undo()).toUtf8());
}

bool ownMounts(const QString &folder, const char *size)
{
    const QByteArray options = QByteArray("size=") + size;
    return ::unshare(CLONE_NEWNS) == 0 && ::mount(nullptr, "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0
        && ::mount("tmpfs", qPrintable(folder), "tmpfs", 0, options.constData()) == 0;
}

} // namespace

class TestStoreBadBooks : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    QByteArray m_whole; ///< a sound workbook

    // A folder that others may come into, too.
    static std::unique_ptr<QTemporaryDir> openFolder()
    {
        auto folder = std::make_unique<QTemporaryDir>();
        ::chmod(qPrintable(folder->path()), 0755);
        return folder;
    }

    static QString refusedToOpen(const QString &book)
    {
        OpenDesk desk;
        return refusal(desk.open(book));
    }

private Q_SLOTS:
    void initTestCase()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        makeBook(book);
        m_whole = read(book);
        QVERIFY(m_whole.size() > 300'000);
    }
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral("."))); }

    void isRefused_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("why");
        const auto cut = [this](qsizetype size) { return m_whole.first(size); };
        QTest::newRow("empty") << QByteArray() << QStringLiteral("empty");
        QTest::newRow("text") << QByteArray("tag,name\n1,deck\n") << QStringLiteral("not a Turnscrew workbook");
        QTest::newRow("one letter") << QByteArray("x") << QStringLiteral("not a Turnscrew workbook");
        QTest::newRow("picture") << QByteArray("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16).append(QByteArray(5000, '\7')) << QStringLiteral("not a Turnscrew workbook");
        QTest::newRow("zeros") << QByteArray(8192, '\0') << QStringLiteral("not a Turnscrew workbook");
        QTest::newRow("cut in its first word") << cut(9) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut after its first word") << cut(16) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut in the header") << cut(60) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut after the header") << cut(100) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut in the first page") << cut(2000) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut after the first page") << cut(4096) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut in the middle") << cut(m_whole.size() / 2) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut a page short") << cut(m_whole.size() - 4096) << QStringLiteral("end of the file is missing");
        QTest::newRow("cut a byte short") << cut(m_whole.size() - 1) << QStringLiteral("end of the file is missing");
        QByteArray noSchema = m_whole;
        noSchema.replace(100, 3996, QByteArray(3996, '\x55'));
        QTest::newRow("first page overwritten") << noSchema << QStringLiteral("damaged");
        QByteArray badPage = m_whole;
        badPage.replace(16, 2, QByteArray("\3\3"));
        QTest::newRow("impossible page size") << badPage << QStringLiteral("it is not a Turnscrew workbook");
    }
    void isRefused()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, why);
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        write(book, bytes);
        const QString sentence = refusedToOpen(book);
        QVERIFY2(sentence.contains(why), qPrintable(sentence));
        QVERIFY2(sentence.startsWith(QStringLiteral("Cannot ")) && sentence.contains(QFileInfo(book).fileName()), qPrintable(sentence));
        QCOMPARE(read(book), bytes);
        QCOMPARE(QDir(QFileInfo(book).path()).entryList({QFileInfo(book).fileName() + QStringLiteral("*")}).size(), 1);
        OpenDesk desk;
        QVERIFY(refusal(desk.create(book)).contains(QLatin1String("already"))); // nor is anything made over it
        QCOMPARE(read(book), bytes);
    }

    void whatIsNoFileIsRefused()
    {
        const QString missing = m_books.path(QStringLiteral("missing.turnscrew"));
        QVERIFY(refusedToOpen(missing).contains(QLatin1String("no such file")));
        QVERIFY(!QFile::exists(missing));
        QVERIFY(refusedToOpen(m_books.path(QStringLiteral("."))).contains(QLatin1String("folder")));
        QVERIFY(refusedToOpen(QStringLiteral("/dev/null")).contains(QLatin1String("no ordinary file")));
        QVERIFY(!BookAddress::parse(QStringLiteral("  ")));
        QVERIFY(!BookAddress::parse(QStringLiteral("a") + QChar(0)));
        OpenDesk desk;
        QVERIFY(refusal(desk.create(m_books.path(QStringLiteral("no/such/folder/book.turnscrew")))).contains(QLatin1String("does not exist")));
    }

    void oddNamesAreFine()
    {
        for (const QString &name : {QStringLiteral("a b?mode=memory&x#y%20.turnscrew"), QStringLiteral("Größe 水.turnscrew"), QStringLiteral("it's;.turnscrew")}) {
            const QString book = m_books.path(name);
            makeBook(book, 1);
            QVERIFY(QFile::exists(book));
            QCOMPARE(refusedToOpen(book), QString());
        }
    }

    void anotherProgramsDatabaseIsLeftAlone()
    {
        for (const bool sameTables : {false, true}) {
            const QString file = m_books.fresh(QStringLiteral("sqlite"));
            sqlite3 *database = nullptr;
            QCOMPARE(sqlite3_open(qPrintable(file), &database), SQLITE_OK);
            QCOMPARE(sqlite3_exec(database, sameTables ? "CREATE TABLE workbook (name, value); CREATE TABLE journal_item (a); CREATE TABLE kept (a)"
                                                       : "CREATE TABLE book (name)", nullptr, nullptr, nullptr), SQLITE_OK);
            QCOMPARE(sqlite3_close(database), SQLITE_OK);
            const QByteArray before = read(file);
            const QString sentence = refusedToOpen(file);
            QVERIFY2(sentence.contains(QLatin1String("not a Turnscrew workbook")), qPrintable(sentence));
            QCOMPARE(read(file), before);
            QVERIFY(!QFile::exists(file + QStringLiteral("-wal")));
        }
    }

    void verifySaysWhatIsDamaged()
    {
        // Every fourth page in turn, so that tables, indexes and free pages all are hit; a page that is not noticed must be free.
        int noticed = 0;
        const qsizetype pages = m_whole.size() / 4096;
        for (qsizetype page = 2; page < pages; page += 4) {
            const QString book = m_books.fresh(QStringLiteral("sqlite"));
            QByteArray bytes = m_whole;
            bytes.replace(page * 4096, 4096, QByteArray(4096, '\x5a'));
            write(book, bytes);
            OpenDesk desk;
            const auto opened = desk.open(book);
            const auto lines = opened ? desk->verify() : opened.trouble();
            if (!lines) {
                QVERIFY2(lines.trouble().sentence().contains(QLatin1String("damaged")), qPrintable(lines.trouble().sentence()));
                ++noticed;
            } else if (!lines->isEmpty()) {
                QVERIFY2(lines->join(QLatin1Char('\n')).contains(QLatin1String("damaged")), qPrintable(lines->join(QLatin1Char('\n'))));
                ++noticed;
            }
        }
        QVERIFY2(noticed == (pages + 1) / 4, qPrintable(QStringLiteral("%1 of %2").arg(noticed).arg((pages + 1) / 4)));
    }

    void verifySaysWhatWasPutInByHand()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        makeBook(book, 3);
        {
            const auto connection = Connection::open(*BookAddress::parse(book), Connection::Mode::Existing);
            wantOk(connection);
            wantOk((*connection)->plain(QStringLiteral("PRAGMA foreign_keys = OFF")));
            for (const char *sql : {"UPDATE \"unit\" SET \"stage\" = 'nowhere' WHERE \"tag\" = 1", "UPDATE \"unit\" SET \"stage_since\" = 'yesterday' WHERE \"tag\" = 2",
                                    "UPDATE counter SET value = 2 WHERE name = 'tag'", "DELETE FROM search_entry WHERE number = 3",
                                    "INSERT INTO kept (sha256, bytes) VALUES ('00ff', x'00')",
                                    "INSERT INTO \"note\" (\"id\", \"at\", \"unit\", \"kind\") VALUES ('018f', '2026-11-25T09:00:00.000Z', 'astray', 'note')"})
                wantOk((*connection)->plain(QString::fromLatin1(sql)));
        }
        OpenDesk desk;
        wantOk(desk.open(book));
        const auto lines = desk->verify();
        wantOk(lines);
        const QString all = lines->join(QLatin1Char('\n'));
        for (const char *said : {"nowhere", "yesterday", "above the last one", "search index", "Search knows", "00ff", "note refers to a unit"})
            QVERIFY2(all.contains(QLatin1String(said)), qPrintable(QLatin1String(said) + QStringLiteral(" is not in:\n") + all));
    }

    void aLockedOneGetsOneSentenceInTime()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        makeBook(book, 2);
        Child other([&](const Child::Say &say) {
            const auto connection = Connection::open(*BookAddress::parse(book), Connection::Mode::Existing);
            say(connection && (*connection)->plain(QStringLiteral("BEGIN EXCLUSIVE")) ? "held" : "not held");
            ::pause();
        });
        QCOMPARE(other.line(), QByteArray("held"));
        OpenDesk desk;
        wantOk(desk.open(book)); // reading goes on
        QCOMPARE(desk->rack()->size(), 2);
        QElapsedTimer timer;
        timer.start();
        const QString sentence = refusal(addNote(desk, QStringLiteral("late")));
        QVERIFY2(sentence.contains(QLatin1String("another program is writing to it")), qPrintable(sentence));
        QVERIFY(timer.elapsed() > 5000 && timer.elapsed() < 12000);
        other.kill();
        wantOk(addNote(desk, QStringLiteral("now"))); // the lock went with the process that held it
        QCOMPARE(desk->rack()->size(), 3);
        QCOMPARE(*desk->verify(), QStringList());
    }

    void aReadOnlyOneIsReadAndNotWritten_data()
    {
        QTest::addColumn<QString>("how");
        QTest::newRow("on a read-only disk") << QStringLiteral("disk");
        QTest::newRow("file and folder of someone else") << QStringLiteral("folder");
        QTest::newRow("file of someone else") << QStringLiteral("file");
    }
    void aReadOnlyOneIsReadAndNotWritten()
    {
        QFETCH(QString, how);
        const auto folder = openFolder();
        const QString book = folder->filePath(QStringLiteral("book.turnscrew"));
        if (how != QLatin1String("disk")) {
            makeBook(book, 3);
            ::chmod(qPrintable(book), 0444);
            ::chmod(qPrintable(folder->path()), how == QLatin1String("file") ? 0777 : 0555);
        }
        Child reader([&](const Child::Say &say) {
            if (how == QLatin1String("disk")) {
                if (!ownMounts(folder->path(), "8m"))
                    return say("cannot");
                makeBook(book, 3);
                if (::mount(nullptr, qPrintable(folder->path()), nullptr, MS_REMOUNT | MS_RDONLY, nullptr) != 0)
                    return say("cannot");
            } else if (::geteuid() == 0 && ::setuid(65534) != 0) { // permissions do not bind root
                return say("cannot");
            }
            tellOfReadOnly(book, say);
        });
        const auto said = reader.lines();
        ::chmod(qPrintable(folder->path()), 0755);
        if (said == QList<QByteArray>{"cannot"})
            QSKIP("this needs the right to mount");
        QCOMPARE(said.size(), 3);
        QCOMPARE(said.at(0), QByteArray("3 0 3"));
        QCOMPARE(said.at(1), QByteArray("Cannot use book.turnscrew: it is read-only; copy it to a place where you may write."));
        QCOMPARE(said.at(2), said.at(1));
    }

    void aReadOnlyOneThatWasNotClosedIsNotReadHalf()
    {
        const auto folder = openFolder();
        const QString book = folder->filePath(QStringLiteral("book.turnscrew"));
        Child writer([&](const Child::Say &say) {
            OpenDesk desk;
            if (desk.create(book) && addNote(desk, QStringLiteral("only in the log")))
                say("written");
            ::pause();
        });
        QCOMPARE(writer.line(), QByteArray("written"));
        writer.kill();
        QVERIFY(QFileInfo(book + QStringLiteral("-wal")).size() > 0);
        QVERIFY(QFile::remove(book + QStringLiteral("-shm")));
        ::chmod(qPrintable(folder->path()), 0555);
        Child reader([&](const Child::Say &say) {
            if (::geteuid() == 0 && ::setuid(65534) != 0)
                return say("cannot");
            tellOfReadOnly(book, say);
        });
        const auto said = reader.lines();
        ::chmod(qPrintable(folder->path()), 0755);
        if (said == QList<QByteArray>{"cannot"})
            QSKIP("this needs another account");
        QCOMPARE(said.size(), 1);
        QVERIFY2(said.first().contains("was not closed"), said.first().constData());
        OpenDesk desk; // where it may be written it is whole
        wantOk(desk.open(book));
        QCOMPARE(desk->rack()->size(), 1);
    }

    void aFullDiskLosesNothing_data()
    {
        QTest::addColumn<bool>("limit");
        QTest::newRow("a small disk") << false;
        QTest::newRow("files may not grow") << true;
    }
    void aFullDiskLosesNothing()
    {
        QFETCH(bool, limit);
        const auto folder = openFolder();
        const QString book = folder->filePath(QStringLiteral("book.turnscrew"));
        Child writer([&](const Child::Say &say) {
            const QString filler = folder->filePath(QStringLiteral("filler"));
            rlimit room{3'000'000, RLIM_INFINITY};
            if (!limit && !ownMounts(folder->path(), "4m"))
                return say("cannot");
            if (limit)
                ::signal(SIGXFSZ, SIG_IGN); // a write beyond the limit then fails instead of ending the process
            else
                write(filler, QByteArray(400'000, 'x'));
            OpenDesk desk;
            if (!desk.create(book))
                return say("not made");
            if (limit)
                ::setrlimit(RLIMIT_FSIZE, &room);
            QString sentence;
            int taken = 0;
            while (taken < 5000 && sentence.isEmpty()) {
                sentence = refusal(addNote(desk, QStringLiteral("Unit ") + QStringLiteral("y").repeated(2000)));
                taken += sentence.isEmpty() ? 1 : 0;
            }
            say(sentence.toUtf8());
            say(QByteArray::number(taken > 20 ? desk->rack()->size() - taken : -1));
            room.rlim_cur = RLIM_INFINITY;
            if (limit)
                ::setrlimit(RLIMIT_FSIZE, &room);
            else
                QFile::remove(filler);
            say(refusal(addNote(desk, QStringLiteral("room again"))).toUtf8() + '.');
            const auto sound = desk->verify();
            say((sound ? sound->join(QLatin1Char(' ')) : sound.trouble().sentence()).toUtf8() + '.');
            desk.desk.reset();
            OpenDesk again;
            say(again.open(book) ? QByteArray::number(again->rack()->size() - taken) : "not opened");
        });
        const auto said = writer.lines();
        if (said == QList<QByteArray>{"cannot"})
            QSKIP("this needs the right to mount");
        QCOMPARE(said.size(), 5);
        QCOMPARE(said.at(0), limit ? QByteArray("Cannot use book.turnscrew: the disk gave a read or write error; copy the file to another disk and run turnscrew verify.")
                                   : QByteArray("Cannot use book.turnscrew: the disk is full; nothing was changed; make room and try again."));
        QCOMPARE(said.at(1), QByteArray("0")); // what was acknowledged is there, what was refused is not
        QCOMPARE(said.at(2), QByteArray("."));
        QCOMPARE(said.at(3), QByteArray("."));
        QCOMPARE(said.at(4), QByteArray("1"));
    }

    void twoWhoMakeItAtOnce()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        std::vector<std::unique_ptr<Child>> makers;
        for (int i = 0; i < 6; ++i)
            makers.push_back(std::make_unique<Child>([&](const Child::Say &say) {
                OpenDesk desk;
                const auto made = desk.create(book);
                say(made ? "made" : made.trouble().wrong.toUtf8());
            }));
        int made = 0;
        for (const auto &maker : makers) {
            const QByteArray said = maker->line();
            made += said == "made";
            QVERIFY2(said == "made" || said.contains("already"), said.constData());
        }
        QCOMPARE(made, 1);
        QCOMPARE(refusedToOpen(book), QString());
    }
};

QTEST_GUILESS_MAIN(TestStoreBadBooks)
#include "test_store_bad_books.moc"
