// Processes that are killed, and processes that work side by side: what was acknowledged is there.
#include "model/jot/jot.h"
#include "tests/child.h"
#include "tests/workbooks.h"

#include <QProcess>
#include <QRandomGenerator>

#include <thread>

using namespace ts;
using namespace ts::testing;

namespace {

/// Jots `lines` into unit 1 one by one as the command line does, and says each line when it is recorded.
void jotAll(const QString &book, const QString &who, const QStringList &lines, const Child::Say &say)
{
    OpenDesk desk;
    if (const auto opened = desk.open(book, who); !opened)
        return say("! " + opened.trouble().sentence().toUtf8());
    const auto unit = desk->unitByTag(1);
    Maker maker = desk->maker();
    for (const QString &line : lines) {
        const auto file = desk->unitFile(*unit);
        const auto bench = desk->benchFile();
        if (!file || !bench)
            return say("! not read");
        const auto jotted = jot(line, *file, *bench, maker);
        const auto applied = jotted ? desk->apply(jotted->change) : Expected<Change>(jotted.trouble());
        say(applied ? line.toUtf8() : "! " + applied.trouble().sentence().toUtf8());
        desk.clock.advance(1);
    }
}

/// Lines of all sorts, each with a word of its own.
QStringList manyLines(const QString &mark, int count)
{
    const QStringList kinds{QStringLiteral("%1 = 11.92 V want 12 V 5%"), QStringLiteral("saw %1 hums"), QStringLiteral("did cleaned %1 20m"),
                            QStringLiteral("fitted %1 idler tyre 1.20"), QStringLiteral("paid %1 carriage 8.40"), QStringLiteral("plain words on %1")};
    QStringList lines;
    for (int i = 0; i < count; ++i)
        lines << kinds.at(i % kinds.size()).arg(QStringLiteral("%1n%2z").arg(mark).arg(i));
    return lines;
}

/// The word of its own in a line said.
QString wordOf(const QString &line)
{
    static const QRegularExpression word(QStringLiteral("\\b[a-z]+\\d*n\\d+z\\b"));
    return word.match(line).captured();
}

QStringList missing(Desk &desk, const QStringList &said)
{
    QStringList gone;
    for (const QString &line : said) {
        const auto found = desk.search(wordOf(line));
        if (!found || found->isEmpty())
            gone << line;
    }
    return gone;
}

Expected<QString> bookWithOneUnit(Workbooks &books, const QString &engine)
{
    const QString book = books.fresh(engine);
    OpenDesk desk;
    if (auto made = desk.create(book); !made)
        return made.trouble();
    Unit unit = desk->maker().fresh<Unit>();
    unit.name = QStringLiteral("Radio");
    const auto applied = desk->apply(Change(QStringLiteral("Took in")).add(unit));
    return applied ? Expected<QString>(book) : Expected<QString>(applied.trouble());
}

} // namespace

class TestCrash : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral("."))); }

    void killedTwentyTimesInTheMiddle_data() { engineRows(); }
    void killedTwentyTimesInTheMiddle()
    {
        QFETCH(QString, engine);
        const auto book = bookWithOneUnit(m_books, engine);
        wantOk(book);
        QRandomGenerator random(20);
        QStringList all;
        for (int round = 0; round < 20; ++round) {
            const QStringList lines = manyLines(QStringLiteral("k%1").arg(round), 200);
            QStringList said;
            {
                Child child([&](const Child::Say &say) { jotAll(*book, QStringLiteral("tester"), lines, say); });
                const int least = random.bounded(60);
                while (said.size() <= least) {
                    said << QString::fromUtf8(child.line());
                    QVERIFY2(!said.last().isEmpty() && !said.last().startsWith(QLatin1Char('!')), qPrintable(said.last()));
                }
                std::this_thread::sleep_for(std::chrono::microseconds(random.bounded(8000))); // anywhere within a jot
                child.kill();
                for (const QByteArray &late : child.lines())
                    said << QString::fromUtf8(late);
            }
            QVERIFY(said.size() < lines.size());
            all += said;
            OpenDesk desk;
            wantOk(desk.open(*book));
            if (desk->isShared()) // the server may still be finishing what the dead process had asked for
                QTRY_COMPARE(*desk->verify(), QStringList());
            QCOMPARE(*desk->verify(), QStringList());
            QCOMPARE(missing(*desk, said), QStringList());
            // At most the one that was under way is there beside them, and that one whole.
            const auto journal = desk->journal({}, 10'000);
            const qsizetype unsaid = journal->size() - 1 - all.size();
            QVERIFY2(unsaid >= 0 && unsaid <= round + 1, qPrintable(QString::number(unsaid)));
        }
        OpenDesk desk;
        wantOk(desk.open(*book));
        QCOMPARE(missing(*desk, all), QStringList());
        wantOk(desk->undo());
    }

    void sideBySideNothingIsLost_data() { engineRows(); }
    void sideBySideNothingIsLost()
    {
        QFETCH(QString, engine);
        const auto book = bookWithOneUnit(m_books, engine);
        wantOk(book);
        std::vector<std::unique_ptr<Child>> children;
        for (const char *who : {"a", "b", "c"})
            children.push_back(std::make_unique<Child>([&book, who](const Child::Say &say) {
                jotAll(*book, QLatin1String(who), manyLines(QLatin1String(who), 60), say);
            }));
        QStringList said;
        for (const auto &child : children)
            for (const QByteArray &line : child->lines())
                said << QString::fromUtf8(line);
        QCOMPARE(said.filter(QLatin1String("!")), QStringList());
        QCOMPARE(said.size(), 180);
        OpenDesk desk;
        wantOk(desk.open(*book));
        QCOMPARE(missing(*desk, said), QStringList());
        const auto journal = desk->journal({}, 10'000);
        QCOMPARE(journal->size(), 181);
        QHash<QString, int> of;
        for (const JournalLine &line : *journal)
            ++of[line.who];
        QCOMPARE(of.value(QStringLiteral("b")), 60);
        QCOMPARE(*desk->verify(), QStringList());
    }

    void programsSideBySide_data() { engineRows(); }
    void programsSideBySide()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        const auto turnscrew = [](const QStringList &arguments) {
            auto process = std::make_unique<QProcess>();
            process->start(programFile(), arguments);
            return process;
        };
        const auto ends = [](QProcess &process) {
            return process.waitForFinished(60'000) && process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1;
        };
        QCOMPARE(ends(*turnscrew({QStringLiteral("new"), book})), 0);
        const auto taken = turnscrew({QStringLiteral("take-in"), book, QStringLiteral("--name"), QStringLiteral("Radio"), QStringLiteral("--category"), QStringLiteral("radio")});
        QCOMPARE(ends(*taken), 0);
        QVERIFY(taken->readAllStandardOutput().contains("0001"));
        QStringList said;
        for (int i = 0; i < 12; ++i) {
            std::vector<std::unique_ptr<QProcess>> pair;
            QStringList lines;
            for (const char *who : {"p", "q", "r"}) {
                lines << manyLines(QLatin1String(who), 12).at(i);
                pair.push_back(turnscrew({QStringLiteral("jot"), book, QStringLiteral("0001"), lines.last()}));
            }
            if (i == 5)
                pair.at(1)->kill();
            for (size_t each = 0; each < pair.size(); ++each) {
                const int code = ends(*pair.at(each));
                if (code == 0)
                    said << lines.at(static_cast<qsizetype>(each));
                else
                    QVERIFY2(i == 5 && each == 1, pair.at(each)->readAllStandardError().constData());
            }
        }
        QVERIFY(said.size() >= 35);
        const auto verified = turnscrew({QStringLiteral("verify"), book});
        QVERIFY2(ends(*verified) == 0, (verified->readAllStandardOutput() + verified->readAllStandardError()).constData());
        OpenDesk desk;
        wantOk(desk.open(book));
        QCOMPARE(missing(*desk, said), QStringList());
    }
};

QTEST_GUILESS_MAIN(TestCrash)
#include "test_crash.moc"
