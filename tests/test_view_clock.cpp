// The clock: started and stopped, never two at once, running on through a restart, and asked about after time that nobody was there.
#include "model/sums/hours.h"
#include "tests/window_under_test.h"
#include "views/clock/clock_box.h"
#include "views/clock/running_clock.h"
#include "views/widgets/answers_bar.h"

using namespace ts;
using namespace ts::testing;

class TestViewClock : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    QTemporaryDir m_folder;
    OpenDesk m_desk;
    QString m_book;
    Unit m_deck;
    Unit m_tuner;

    int minutes(const Unit &unit) { return hoursOf(*m_desk->unitFile(unit.id), m_desk.clock.now()).minutes(); }
    int running() { return static_cast<int>(m_desk->list<ClockSpan>(QStringLiteral("ended_at"), QVariant()).value().size()); }

private Q_SLOTS:
    void init()
    {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        m_book = m_books.fresh(QStringLiteral("sqlite"));
        m_desk.desk.reset();
        wantOk(m_desk.create(m_book));
        m_desk.clock.set(QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC));
        m_deck = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7"));
        m_tuner = benchUnit(*m_desk, QStringLiteral("Tarrick T-9"));
    }

    void startsAndStops()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        ClockBox *box = window.workspace().clock();
        QVERIFY(buttonWith(*box, QStringLiteral("Start clock")));
        box->toggle();
        QCOMPARE(running(), 1);
        for (int i = 0; i < 47; ++i) { // somebody is there all the while
            m_desk.clock.advance(60);
            box->clock().tick();
        }
        m_desk.clock.advance(12);
        QTRY_VERIFY(buttonWith(*box, QStringLiteral("0001 · 0:47:12")));
        QTest::mouseClick(buttonWith(*box, QStringLiteral("Stop clock")), Qt::LeftButton);
        QCOMPARE(running(), 0);
        QCOMPARE(minutes(m_deck), 47);
        QCOMPARE(m_desk->undoSentence()->value(), QStringLiteral("Clock stopped for 0001 after 0 h 47 m"));
        window.work().undo(); // it was not meant: it runs on
        QCOMPARE(running(), 1);
        QVERIFY(buttonWith(*box, QStringLiteral("Stop clock")));
    }

    void startingOneStopsTheOther()
    {
        WindowUnderTest window(*m_desk);
        ClockBox *box = window.workspace().clock();
        window.work().takeInHand(m_deck.id);
        box->toggle();
        m_desk.clock.advance(60);
        box->clock().tick();
        m_desk.clock.advance(60);
        window.work().takeInHand(m_tuner.id);
        box->toggle();
        QCOMPARE(running(), 1);
        QVERIFY(box->clock().runsFor(m_tuner.id));
        QCOMPARE(minutes(m_deck), 2);
        window.work().takeInHand(m_deck.id);
        QTest::mouseClick(buttonWith(*box, QStringLiteral("0002")), Qt::LeftButton); // the tag leads to its unit
        QCOMPARE(window.work().file().unit.id, m_tuner.id);
        box->toggle();
        QCOMPARE(running(), 0);
    }

    void runsOnThroughAQuickRestart()
    {
        {
            WindowUnderTest window(*m_desk);
            window.work().takeInHand(m_deck.id);
            window.workspace().clock()->toggle();
        }
        m_desk.clock.advance(90);
        WindowUnderTest window(*m_desk);
        ClockBox *box = window.workspace().clock();
        QTRY_VERIFY(box->clock().runsFor(m_deck.id));
        QVERIFY(!box->question()->isAsking());
        QTRY_VERIFY(buttonWith(*box, QStringLiteral("0:01:30")));
    }

    void afterAGapItAsksWhatCounts_data()
    {
        QTest::addColumn<QString>("answer");
        QTest::addColumn<int>("minutes");
        QTest::addColumn<int>("running");
        // Ran 10 minutes with somebody there, 50 without.
        QTest::newRow("until last seen") << QStringLiteral("Until") << 10 << 0;
        QTest::newRow("nothing") << QStringLiteral("Nothing") << 0 << 0;
        QTest::newRow("all") << QStringLiteral("All of it") << 60 << 1;
    }
    void afterAGapItAsksWhatCounts()
    {
        QFETCH(QString, answer);
        Memory memory(m_folder.filePath(QStringLiteral("memory-%1.ini").arg(answer.left(3))));
        {
            WindowUnderTest window(*m_desk, &memory);
            window.work().takeInHand(m_deck.id);
            window.workspace().clock()->toggle();
            for (int i = 0; i < 10; ++i) {
                m_desk.clock.advance(60);
                window.workspace().clock()->clock().tick();
            }
        } // the program is gone, as by a crash
        m_desk.clock.advance(50 * 60);
        WindowUnderTest window(*m_desk, &memory);
        AnswersBar *question = window.workspace().clock()->question();
        QTRY_VERIFY(question->isAsking());
        QVERIFY2(question->question().contains(QLatin1String("0 h 50 m")), qPrintable(question->question()));
        window.workspace().clock()->toggle(); // F9 does not pass it by
        QCOMPARE(running(), 1);
        QVERIFY(question->isAsking());
        QTest::mouseClick(buttonWith(*question, answer), Qt::LeftButton);
        QVERIFY(!question->isAsking());
        QTEST(running(), "running");
        QTEST(minutes(m_deck), "minutes");
    }

    void sleepIsAGapToo()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        ClockBox *box = window.workspace().clock();
        box->toggle();
        m_desk.clock.advance(60);
        box->clock().tick();
        m_desk.clock.advance(3600); // the lid was shut
        box->clock().tick();
        QVERIFY(box->question()->isAsking());
        QTest::keyClick(buttonWith(*box->question(), QStringLiteral("Until")), Qt::Key_Escape); // changes least: it runs on
        QVERIFY(!box->question()->isAsking());
        QCOMPARE(running(), 1);
        box->clock().tick();
        QVERIFY(!box->question()->isAsking());
    }

    void aClockSetBackGivesNoTime()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        ClockBox *box = window.workspace().clock();
        box->toggle();
        m_desk.clock.advance(-3600);
        box->clock().tick();
        QVERIFY(!box->question()->isAsking());
        QCOMPARE(box->clock().seconds(), 0);
        box->toggle();
        QCOMPARE(running(), 0);
        QCOMPARE(minutes(m_deck), 0);
    }

    void whereNothingIsRememberedTheJournalTells()
    {
        ClockSpan span = m_desk->maker().fresh<ClockSpan>(); // started on another computer
        span.unit = m_deck.id;
        span.startedAt = m_desk.clock.now();
        wantOk(m_desk->apply(Change(QStringLiteral("Clock")).add(span)));
        m_desk.clock.advance(20 * 60);
        Note note = m_desk->maker().fresh<Note>();
        note.unit = m_deck.id;
        note.text = QStringLiteral("still here");
        wantOk(m_desk->apply(Change(QStringLiteral("Note")).add(note)));
        m_desk.clock.advance(3600);
        WindowUnderTest window(*m_desk);
        QTRY_VERIFY(window.workspace().clock()->question()->isAsking());
        QTest::mouseClick(buttonWith(*window.workspace().clock()->question(), QStringLiteral("Until")), Qt::LeftButton);
        QCOMPARE(minutes(m_deck), 20);
    }

    void anotherWindowsClockIsSeen()
    {
        WindowUnderTest window(*m_desk);
        OpenDesk other;
        wantOk(other.open(m_book));
        ClockSpan span = other->maker().fresh<ClockSpan>();
        span.unit = m_tuner.id;
        span.startedAt = m_desk.clock.now();
        wantOk(other->apply(Change(QStringLiteral("Clock")).add(span)));
        QTRY_VERIFY_WITH_TIMEOUT(window.workspace().clock()->clock().runsFor(m_tuner.id), 2000);
    }
};

QTEST_MAIN(TestViewClock)
#include "test_view_clock.moc"
