// What is typed wrongly: the right exit status, one sentence on standard error that names what is wrong, nothing on standard
// output, and nothing changed.
#include "tests/child.h"
#include "tests/program.h"
#include "tests/refusal_rows.h"
#include "tests/workbooks.h"

#include <QImage>

#include <sys/stat.h>

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

namespace {

constexpr int refused = 1;
constexpr int misused = 2;

/// The words of a line; those in quotation marks hold spaces, or nothing.
QStringList wordsOf(const QString &line)
{
    static const QRegularExpression word(u"\"([^\"]*)\"|(\\S+)"_s);
    QStringList words;
    for (auto found = word.globalMatch(line); found.hasNext();) {
        const auto each = found.next();
        words << (each.capturedLength(2) > 0 ? each.captured(2) : each.captured(1));
    }
    return words;
}

} // namespace

class TestCliRefusals : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    QString m_folder;
    QByteArray m_whole; ///< the sound workbook

    [[nodiscard]] QString at(const QString &name) const { return m_folder + u'/' + name; }

    /// What stands in the folder, with the hash of each file.
    [[nodiscard]] QMap<QString, QString> state() const
    {
        QMap<QString, QString> all;
        for (const QFileInfo &file : QDir(m_folder).entryInfoList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot))
            if (!file.fileName().endsWith(u"-shm"_s)) // SQLite's own; it comes and goes with reading
                all.insert(file.fileName(), file.isFile() ? sha256(contents(file.filePath())) : QString());
        return all;
    }

    /// "BOOK" and "@name" in a line become paths.
    [[nodiscard]] QStringList placed(const QStringList &words) const
    {
        QStringList list;
        for (const QString &word : words)
            list << (word == u"BOOK"_s ? at(u"book.turnscrew"_s) : word.startsWith(u'@') ? at(word.mid(1)) : word);
        return list;
    }

    static void checkRefusal(const Answer &answer, int status, const QString &piece)
    {
        QVERIFY2(answer.status == status, answer.told().constData());
        QVERIFY2(answer.out.isEmpty(), answer.told().constData());
        QVERIFY2(answer.err.count(u'\n') == 1 && answer.err.endsWith(u".\n"_s), answer.told().constData());
        QVERIFY2(answer.err.contains(piece), answer.told().constData());
        for (const QChar c : answer.err)
            QVERIFY2(c == u'\n' || c.category() != QChar::Other_Control, answer.told().constData());
    }

private Q_SLOTS:
    void initTestCase()
    {
        m_folder = m_books.path(u"place"_s);
        QVERIFY(QDir().mkpath(at(u"folder.pdf"_s)));
        const QString book = at(u"book.turnscrew"_s);
        TS_RUN(u"new"_s, book);
        TS_RUN(u"take-in"_s, book, u"--name"_s, u"Pellworth KD-7 cassette deck"_s, u"--category"_s, u"cassette_deck"_s,
               u"--paid"_s, u"30"_s);
        TS_RUN(u"jot"_s, book, u"1"_s, u"saw take-up reel stops"_s);
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"sheet.html"_s));
        m_whole = contents(book);

        write(at(u"empty.turnscrew"_s), {});
        write(at(u"foreign.turnscrew"_s), "tag,name\n1,deck\n");
        write(at(u"cut.turnscrew"_s), m_whole.first(m_whole.size() / 2));
        write(at(u"book.pdf"_s), m_whole);
        QVERIFY(QFile::link(at(u"book.pdf"_s), at(u"link.pdf"_s)));
        QVERIFY(::link(qPrintable(at(u"book.pdf"_s)), qPrintable(at(u"second.html"_s))) == 0);
        {
            write(at(u"newer.turnscrew"_s), m_whole);
            const auto connection = Connection::open(*BookAddress::parse(at(u"newer.turnscrew"_s)), Connection::Mode::Existing);
            wantOk(connection);
            wantOk((*connection)->plain(u"UPDATE workbook SET value = '999' WHERE name IN ('schema', 'least_program')"_s));
        }

        QImage picture(64, 48, QImage::Format_RGB32);
        picture.fill(Qt::darkGray);
        QVERIFY(picture.save(at(u"good.png"_s)));
        write(at(u"cut.png"_s), contents(at(u"good.png"_s)).chopped(30));
        write(at(u"text.jpg"_s), "no picture at all");
        write(at(u"empty.jpg"_s), {});
        // The head of a PNG of 50,000 by 50,000 (ISO/IEC 15948: IHDR holds width, height, depth and colour type).
        write(at(u"huge.png"_s), QByteArray::fromHex("89504e470d0a1a0a0000000d49484452"
                                                     "0000c350"
                                                     "0000c350"
                                                     "0802000000"
                                                     "00000000"));

        write(at(u"good.csv"_s), "name,category\nSet,radio\n");
        write(at(u"header.csv"_s), "colour,weight\nred,3\n");
        write(at(u"nul.csv"_s), QByteArray("name,category\nSe\0t,radio\n", 24));
        write(at(u"latin.csv"_s), "name,category\nD\xe9"
                                  "ck,radio\n");
        write(at(u"words.csv"_s), "name,category,paid\nSet,radio,3\nDeck,spaceship,4\nTuner,tuner,much\n");
    }
    void init()
    {
        QCOMPARE(sha256(contents(at(u"book.turnscrew"_s))), sha256(m_whole)); // after each test, whichever it was
    }

    void isRefused_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::addColumn<int>("status");
        QTest::addColumn<QString>("piece");
        const auto row = [](const QStringList &words, int status, const QString &piece) {
            QTest::addRow("%s", qPrintable(words.join(u' ').simplified().left(90))) << words << status << piece;
        };
        const auto rows = [&row](const QString &table, const QStringList &first = {}) {
            for (const QString &line : table.split(u'\n', Qt::SkipEmptyParts)) {
                const QStringList parts = line.split(u" -> "_s);
                if (parts.size() != 2)
                    continue;
                QStringList words = first + wordsOf(parts.first());
                row(words, parts.last().left(1).toInt(), parts.last().mid(2));
            }
        };
        rows(wholeRows);
        for (const auto *command : {"show", "verify", "undo", "redo", "set"})
            rows(bookRows, {QLatin1String(command)});
        rows(takeInRows);
        for (const auto *command : {"show BOOK T", "jot BOOK T note", "stage BOOK T bench", "photo BOOK T @good.png",
                                    "paper BOOK T restoration -o @new.pdf"}) {
            const QString line = QLatin1String(command);
            row(wordsOf(QString(line).replace(u'T', u"99"_s)), refused, u"no unit with tag 0099"_s);
            row(wordsOf(QString(line).replace(u'T', u"deck"_s)), refused, u"\"deck\" is no tag"_s);
            row(wordsOf(QString(line).replace(u'T', u"0"_s)), refused, u"\"0\" is no tag"_s);
        }
        rows(unitRows);
        rows(paperRows);
        rows(fileRows);
        rows(sumRows);

        // What a table of text cannot hold.
        const QStringList take{u"take-in"_s, u"BOOK"_s, u"--category"_s, u"radio"_s, u"--name"_s};
        row(take + QStringList{u" \t "_s}, refused, u"--name is empty"_s);
        row(take + QStringList{u"bell\u0007"_s}, refused, u"U+0007"_s);
        row(take + QStringList{u"\u001b[31mred"_s}, refused, u"U+001b"_s);
        row(take + QStringList{u"x"_s.repeated(301)}, refused, u"301 characters"_s);
        row(take + QStringList{u"Set"_s, u"--claim"_s, u"y"_s.repeated(4001)}, refused, u"4001 characters"_s);
        const QStringList jot{u"jot"_s, u"BOOK"_s, u"1"_s};
        row(jot + QStringList{u"a\u001bb"_s}, refused, u"U+001B"_s);
        row(jot + QStringList{u"two\nlines"_s}, refused, u"U+000A"_s);
        row(jot + QStringList{u"x"_s.repeated(5000)}, refused, u"5000 characters"_s);
    }
    void isRefused()
    {
        QFETCH(QStringList, words);
        QFETCH(int, status);
        QFETCH(QString, piece);
        const auto before = state();
        checkRefusal(program(placed(words)), status, piece);
        if (QTest::currentTestFailed())
            return;
        QCOMPARE(state(), before); // no file changed, none came, none went
    }

    void listsNameTheirLines()
    {
        const auto before = state();
        const Answer answer = program({u"import"_s, at(u"book.turnscrew"_s), at(u"words.csv"_s), u"--as"_s, u"units"_s});
        QVERIFY2(answer.status == refused && answer.out.isEmpty(), answer.told().constData());
        QVERIFY2(answer.err.contains(QRegularExpression(u"line 3: .*spaceship"_s)) &&
                     answer.err.contains(QRegularExpression(u"line 4: .*much"_s)),
                 answer.told().constData());
        QCOMPARE(state(), before);
    }

    void whatIsNoTextIsRefused()
    {
        const auto before = state();
        checkRefusal(
            shell(u"exec \"$0\" take-in \"$1\" --category radio --name \"$(printf 'bad\\377')\""_s, {at(u"book.turnscrew"_s)}),
            refused, u"Argument 6 is no text in UTF-8"_s);
        checkRefusal(shell(u"exec \"$0\" jot \"$1\" 1 \"$(printf 'half \\342\\202')\""_s, {at(u"book.turnscrew"_s)}), refused,
                     u"Argument 4 is no text in UTF-8"_s);
        QCOMPARE(state(), before);
    }

    void oneSentenceInAnyLocale()
    {
        checkRefusal(shell(u"LC_ALL=C exec \"$0\" mend x"_s), misused, u"no command"_s);
        checkRefusal(shell(u"LC_ALL=nowhere exec \"$0\" show \"$1\""_s, {at(u"none.turnscrew"_s)}), refused, u"no such file"_s);
    }

    void anAnswerThatIsNotTakenIsARefusal()
    {
        if (!QFile::exists(u"/dev/full"_s))
            QSKIP("there is no /dev/full here");
        const Answer answer = shell(u"exec \"$0\" show \"$1\" > /dev/full"_s, {at(u"book.turnscrew"_s)});
        checkRefusal(answer, refused, u"could not be written"_s);
    }

    void nothingToUndo()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"new"_s, book);
        checkRefusal(program({u"undo"_s, book}), refused, u"othing"_s);
    }

    // Read, and refused to write: somebody else's file in somebody else's folder.
    void aReadOnlyWorkbook()
    {
        const QString folder = m_books.path(u"locked"_s);
        QVERIFY(QDir().mkpath(folder));
        const QString book = folder + u"/book.turnscrew"_s;
        const QString anyones = m_books.path(u"anyones"_s); // a sheet could be written here
        const QString never = anyones + u"/never.pdf"_s;
        QVERIFY(QDir().mkpath(anyones));
        ::chmod(qPrintable(anyones), 0777);
        write(book, m_whole);
        ::chmod(qPrintable(m_books.path({})), 0755);
        ::chmod(qPrintable(m_folder), 0755);
        ::chmod(qPrintable(book), 0444);
        ::chmod(qPrintable(folder), 0555);
        Child other([&](const Child::Say &say) {
            if (::geteuid() == 0 && ::setuid(65534) != 0) // permissions do not bind root
                return say("cannot");
            if (::access(qPrintable(programFile()), X_OK) != 0)
                return say("cannot");
            qputenv("GCOV_PREFIX", anyones.toUtf8()); // a build that counts lines keeps its counts where this account may write
            say(QByteArray::number(program({u"show"_s, book}).status));
            const QList<QStringList> writing{{u"jot"_s, book, u"1"_s, u"saw hum"_s},
                                             {u"stage"_s, book, u"1"_s, u"bench"_s},
                                             {u"undo"_s, book},
                                             {u"set"_s, book, u"worker"_s, u"R. M."_s},
                                             {u"take-in"_s, book, u"--name"_s, u"Set"_s, u"--category"_s, u"radio"_s},
                                             {u"photo"_s, book, u"1"_s, at(u"good.png"_s)},
                                             {u"import"_s, book, at(u"good.csv"_s), u"--as"_s, u"units"_s},
                                             {u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, never}};
            for (const QStringList &words : writing) {
                const Answer answer = program(words);
                say(answer.status == refused && answer.err.count(u'\n') == 1 && answer.err.contains(u"read-only"_s)
                        ? QByteArray("refused")
                        : words.first().toUtf8() + ' ' + answer.told().simplified());
            }
            say(QFile::exists(never) ? "a sheet" : "no sheet");
        });
        const auto said = other.lines();
        ::chmod(qPrintable(folder), 0755);
        if (said == QList<QByteArray>{"cannot"})
            QSKIP("this needs another account that may run the program");
        QCOMPARE(said, (QList<QByteArray>{"0", "refused", "refused", "refused", "refused", "refused", "refused", "refused",
                                          "refused", "no sheet"}));
        QCOMPARE(contents(book), m_whole);
    }

    void aLockedWorkbook()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        write(book, m_whole);
        Child other([&](const Child::Say &say) {
            const auto connection = Connection::open(*BookAddress::parse(book), Connection::Mode::Existing);
            say(connection && (*connection)->plain(u"BEGIN EXCLUSIVE"_s) ? "held" : "not held");
            ::pause();
        });
        QCOMPARE(other.line(), QByteArray("held"));
        checkRefusal(program({u"jot"_s, book, u"1"_s, u"saw hum"_s}), refused, u"another program is writing to it"_s);
        other.kill();
        TS_RUN(u"jot"_s, book, u"1"_s, u"saw hum"_s);
        TS_RUN(u"verify"_s, book);
    }

    void cleanupTestCase()
    {
        const Answer answer = program({u"verify"_s, at(u"book.turnscrew"_s)});
        QVERIFY2(answer.status == 0, answer.told().constData());
    }
};

QTEST_GUILESS_MAIN(TestCliRefusals)
#include "test_cli_refusals.moc"
