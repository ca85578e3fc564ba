// The Log driven as a person would: lines typed and recorded, entries edited, taken out and moved in place, filtered, recalled.
#include "model/sums/acceptance.h"
#include "tests/window_under_test.h"
#include "views/log/entry_form.h"
#include "views/log/jot_bar.h"
#include "views/log/jot_line.h"
#include "views/log/lane_chips.h"
#include "views/log/log_chart.h"
#include "views/log/log_model.h"
#include "views/log/log_page.h"
#include "views/log/log_view.h"
#include "views/log/move_bar.h"
#include "views/log/offer_list.h"
#include "views/log/time_ticks.h"
#include "views/widgets/notice_bar.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QDateTimeEdit>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>

using namespace ts;
using namespace ts::testing;

namespace {

/// A workbook with a unit in hand, its Log open.
struct OnLog {
    OpenDesk desk;
    Unit unit;
    std::unique_ptr<WindowUnderTest> window;
    LogPage *page = nullptr;

    explicit OnLog(Workbooks &books)
    {
        if (!desk.create(books.fresh(QStringLiteral("sqlite"))))
            return;
        unit = benchUnit(*desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        window = std::make_unique<WindowUnderTest>(*desk);
        page = window->open<LogPage>(PageKey::Log);
        window->workspace().activateWindow();
    }
    JotLine *line() { return page->jotBar()->line(); }
    void jot(const char *text)
    {
        line()->setFocus();
        QTest::keyClicks(line(), QString::fromUtf8(text));
        desk.clock.advance(60);
        QTest::keyClick(line(), Qt::Key_Return);
    }
    const UnitFile &file() { return window->work().file(); }
    template <class R>
    int rowOf(const R &record)
    {
        return page->model()->rowOfRecord(record.id.value);
    }
};

void put(QWidget *field, const QString &text)
{
    if (auto *line = qobject_cast<QLineEdit *>(field))
        line->setText(text);
    else if (auto *area = qobject_cast<QPlainTextEdit *>(field))
        area->setPlainText(text);
}

} // namespace

class TestViewLog : public QObject {
    Q_OBJECT
    Workbooks m_books;

private Q_SLOTS:
    // The rows of the table of what can be jotted, typed as they stand there.
    void tenLinesGoWhereTheyBelong()
    {
        OnLog on(m_books);
        QVERIFY(on.page);
        const QAbstractItemModelTester tester(on.page->model(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        on.jot("CN2.4 = 11.92 V want 12 V 5%");
        on.jot("insulation = 200 Mohm want >= 2 Mohm with insulation tester");
        on.jot("saw take-up reel stops after a few seconds");
        on.jot("think clutch felt glazed 40%");
        on.jot("did cleaned the source switch 20m");
        on.jot("need belt 78x4x0.6 2.50");
        on.jot("paid carriage 8.40");
        on.jot("off lid 5 screws M3x8 tray A1");
        on.jot("next fit the belt");
        on.jot("smells of warm dust");
        QCOMPARE(on.file().all<Reading>().size(), 2);
        QCOMPARE(on.file().all<Symptom>().size(), 1);
        QCOMPARE(on.file().all<Cause>().size(), 1);
        QCOMPARE(on.file().all<Cause>().first().symptom, on.file().all<Symptom>().first().id);
        QCOMPARE(on.file().all<Step>().first().minutes, std::optional(20));
        QCOMPARE(on.file().all<Need>().first().price->minor(), 250);
        QCOMPARE(on.file().all<Spend>().first().kind, SpendKind::CarriageIn);
        QCOMPARE(on.file().all<TeardownItem>().first().keptIn, QStringLiteral("tray A1"));
        QCOMPARE(on.file().all<LeftOff>().first().next, QStringLiteral("fit the belt"));
        QCOMPARE(on.file().all<Note>().first().text, QStringLiteral("smells of warm dust"));
        QVERIFY(on.rowOf(on.file().all<Reading>().first()) >= 0);
        QVERIFY(on.line()->text().isEmpty());
        for (int i = 0; i < 10; ++i)
            on.window->work().undo();
        QVERIFY(on.file().all<Reading>().isEmpty() && on.file().all<Note>().isEmpty());
    }

    void whatWillBeRecordedIsSaidAsItIsTyped()
    {
        OnLog on(m_books);
        QTest::keyClicks(on.line(), QStringLiteral("out L = 96 mV want 387 mV 2dB"));
        QCOMPARE(on.page->jotBar()->badge(), QStringLiteral("reading, outside"));
        QVERIFY(on.page->jotBar()->sentence().contains(QLatin1String("96 mV")));
        on.line()->clear();
        QTest::keyClicks(on.line(), QStringLiteral("<b>bold</b>"));
        QCOMPARE(on.page->jotBar()->badge(), QStringLiteral("note"));
        QVERIFY(on.page->jotBar()->sentence().contains(QLatin1String("<b>bold</b>"))); // as typed, not as markup
    }

    void aReadingTenTimesOffIsAskedAboutOnce()
    {
        OnLog on(m_books);
        on.jot("CN2.4 = 1.192 V want 12 V 5%");
        QVERIFY(on.file().all<Reading>().isEmpty());
        QCOMPARE(on.page->jotBar()->badge(), QStringLiteral("is it so?"));
        QTest::keyClick(on.line(), Qt::Key_Return);
        QCOMPARE(on.file().all<Reading>().size(), 1);
    }

    void tabCompletesAndLeavesWhereThereIsNothingTo()
    {
        OnLog on(m_books);
        on.jot("take-up torque = 47 gf.cm want 35..65");
        QTest::keyClicks(on.line(), QStringLiteral("take-"));
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QVERIFY2(on.line()->text().startsWith(QLatin1String("take-up torque"), Qt::CaseInsensitive), qPrintable(on.line()->text()));
        on.line()->clear();
        on.line()->setFocus();
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QVERIFY(!on.line()->hasFocus()); // nobody is kept in the line
    }

    void upBringsBackWhatWasRecorded()
    {
        OnLog on(m_books);
        on.jot("first note");
        on.jot("second note");
        QTest::keyClicks(on.line(), QStringLiteral("half"));
        QTest::keyClick(on.line(), Qt::Key_Up);
        QCOMPARE(on.line()->text(), QStringLiteral("second note"));
        QTest::keyClick(on.line(), Qt::Key_Up);
        QCOMPARE(on.line()->text(), QStringLiteral("first note"));
        QTest::keyClick(on.line(), Qt::Key_Down);
        QTest::keyClick(on.line(), Qt::Key_Down);
        QCOMPARE(on.line()->text(), QStringLiteral("half")); // what was being typed comes back
    }

    void whatIsBeingTypedStaysWithItsUnit()
    {
        OnLog on(m_books);
        const Unit other = benchUnit(*on.desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        QTest::keyClicks(on.line(), QStringLiteral("saw the relay"));
        on.window->work().takeInHand(other.id);
        QVERIFY(on.line()->text().isEmpty());
        on.window->work().takeInHand(on.unit.id);
        QCOMPARE(on.line()->text(), QStringLiteral("saw the relay"));
    }

    void anEntryIsEditedInItsPlace()
    {
        OnLog on(m_books);
        on.jot("did cleaned the source swich 20m");
        const Step before = on.file().all<Step>().first();
        on.page->edit(on.rowOf(before));
        QVERIFY(on.page->form());
        QWidget *text = on.page->form()->field(QStringLiteral("text"));
        QVERIFY(text);
        put(text, QStringLiteral("cleaned the source switch"));
        QTest::keyClick(text, Qt::Key_Return);
        QTRY_VERIFY(!on.page->form());
        QCOMPARE(on.file().all<Step>().first().text, QStringLiteral("cleaned the source switch"));
        on.window->work().undo();
        QCOMPARE(on.file().all<Step>().first().text, before.text);
        // Esc leaves it as it was.
        on.page->edit(on.rowOf(before));
        text = on.page->form()->field(QStringLiteral("text"));
        put(text, QStringLiteral("something else"));
        QTest::keyClick(text, Qt::Key_Escape);
        QTRY_VERIFY(!on.page->form());
        QCOMPARE(on.file().all<Step>().first().text, before.text);
    }

    void whatIsRefusedWhileEditingIsSaidThere()
    {
        OnLog on(m_books);
        on.jot("paid carriage 8.40");
        on.page->edit(on.rowOf(on.file().all<Spend>().first()));
        auto *amount = qobject_cast<QLineEdit *>(on.page->form()->field(QStringLiteral("amount")));
        QVERIFY(amount);
        amount->setText(QStringLiteral("dear"));
        QTest::keyClick(amount, Qt::Key_Return);
        QVERIFY(on.page->form());
        QVERIFY(!on.page->form()->trouble().isEmpty());
        QCOMPARE(on.file().all<Spend>().first().amount->minor(), 840);
    }

    void entriesAreTakenOutAndComeBack()
    {
        OnLog on(m_books);
        on.jot("smells of warm dust");
        const Note note = on.file().all<Note>().first();
        on.page->list()->choose(on.rowOf(note));
        on.page->list()->setFocus();
        QTest::keyClick(on.page->list(), Qt::Key_Delete);
        QVERIFY(on.file().all<Note>().isEmpty());
        QCOMPARE(on.page->model()->rowOfRecord(note.id.value), -1);
        on.window->work().undo();
        QVERIFY(on.rowOf(note) >= 0);
    }

    void entriesGoToTheUnitThatTheyBelongTo()
    {
        OnLog on(m_books);
        const Unit other = benchUnit(*on.desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        on.jot("CN2.4 = 11.92 V want 12 V 5%");
        on.page->list()->choose(on.rowOf(on.file().all<Reading>().first()));
        on.page->askWhereTo();
        QVERIFY(!on.page->moveBar()->isHidden());
        Q_EMIT on.page->moveBar()->chosen(other.id);
        QVERIFY(on.file().all<Reading>().isEmpty());
        const UnitFile there = *on.desk->unitFile(other.id);
        QCOMPARE(there.all<Reading>().size(), 1);
        QCOMPARE(there.all<Reading>().first().wanted.text(), QStringLiteral("12 V 5%"));
        on.window->work().undo();
        QCOMPARE(on.file().all<Reading>().size(), 1);
    }

    void chipsFilterByKind()
    {
        OnLog on(m_books);
        on.jot("saw hum");
        on.jot("CN2.4 = 11.92 V want 12 V 5%");
        const int all = on.page->model()->rowCount();
        const auto chip = on.page->chips()->findChildren<QPushButton *>();
        QVERIFY(chip.size() >= 3); // all, and one for each kind
        int fewer = 0;
        for (QPushButton *each : chip) {
            if (each->isHidden() || each == chip.first())
                continue;
            each->click();
            if (on.page->model()->rowCount() < all)
                ++fewer;
            on.page->chips()->clear();
            Q_EMIT on.page->chips()->changed();
        }
        QVERIFY(fewer >= 2);
        QCOMPARE(on.page->model()->rowCount(), all);
    }

    void typingOnThePageGoesIntoTheLine()
    {
        OnLog on(m_books);
        on.jot("a note");
        on.page->list()->setFocus();
        QTest::keyClicks(on.page, QStringLiteral("hum"));
        QVERIFY2(on.line()->text().endsWith(QLatin1String("um")), qPrintable(on.line()->text()));
    }

    void tabGoesThroughWhatFitsAndThenOn()
    {
        OnLog on(m_books);
        on.jot("saw hum from the left channel");
        on.jot("saw hiss from the left channel");
        QTest::keyClicks(on.line(), QStringLiteral("cleared left"));
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared hiss from the left channel")); // the newest first
        QVERIFY(on.line()->offerList()->isVisible());
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared hum from the left channel"));
        QTest::keyClick(on.line(), Qt::Key_Backtab);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared hiss from the left channel"));
        QTest::keyClick(on.line(), Qt::Key_Escape);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared left"));
        QVERIFY(!on.line()->offerList()->isVisible());
        // Round once: back at what was typed, and the next Tab leaves.
        for (int i = 0; i < 3; ++i)
            QTest::keyClick(on.line(), Qt::Key_Tab);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared left"));
        QVERIFY(on.line()->hasFocus());
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QVERIFY(!on.line()->hasFocus());
        // One that fits is taken, and the next Tab completes further.
        on.line()->setFocus();
        on.line()->clear();
        QTest::keyClicks(on.line(), QStringLiteral("clea"));
        QCOMPARE(on.line()->ghost(), QStringLiteral("red "));
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared "));
        QTest::keyClick(on.line(), Qt::Key_Tab);
        QCOMPARE(on.line()->text(), QStringLiteral("cleared hiss from the left channel"));
    }

    void whatIsRefusedOrEmptyIsNotRecorded()
    {
        OnLog on(m_books);
        const QString before = on.desk->journal()->first().sentence;
        for (const QString &line : {QStringLiteral("   "), QStringLiteral("saw a bell \a"), QStringLiteral("safe to power")}) {
            on.line()->setLine(line);
            QTest::keyClick(on.line(), Qt::Key_Return);
            QCOMPARE(on.desk->journal()->first().sentence, before);
            QCOMPARE(on.line()->text().trimmed(), line.trimmed()); // it stays, to be mended
        }
        QVERIFY2(on.page->jotBar()->sentence().contains(QLatin1String("Nothing to record")), qPrintable(on.page->jotBar()->sentence()));
        on.line()->setLine(QStringLiteral("saw a bell \a"));
        QVERIFY(on.page->jotBar()->sentence().contains(QLatin1String("control character")));
    }

    void theRowsSayWhatTheyAre()
    {
        OnLog on(m_books);
        on.jot("take-up torque = 14 gf.cm want 35..65 found");
        on.jot("take-up torque = 47 gf.cm after");
        on.jot("paid carriage 8.40");
        const LogEntry first = on.page->model()->entry(on.rowOf(on.file().all<Reading>().first()));
        const LogEntry second = on.page->model()->entry(on.rowOf(on.file().all<Reading>().last()));
        QCOMPARE(first.headline, QStringLiteral("Take-up torque"));
        QCOMPARE(first.verdict, Verdict::Outside);
        QCOMPARE(first.figures, QStringLiteral("14 gf·cm"));
        QCOMPARE(first.detail, QStringLiteral("wanted 35 to 65 gf·cm · as found"));
        QCOMPARE(second.verdict, Verdict::Within);
        QCOMPARE(second.detail, QStringLiteral("wanted 35 to 65 gf·cm · was 14 gf·cm · as it leaves"));
        QCOMPARE(on.page->model()->entry(on.rowOf(on.file().all<Spend>().last())).right, QStringLiteral("spent £8.40"));
        const QString heard = on.page->model()->index(on.rowOf(on.file().all<Reading>().first())).data(Qt::AccessibleTextRole).toString();
        QVERIFY2(heard.contains(QLatin1String("outside")) && heard.contains(QStringLiteral("14 gf·cm")), qPrintable(heard));
        QVERIFY(on.page->model()->entry(0).isDay);
        QVERIFY(!(on.page->model()->index(0).flags() & Qt::ItemIsSelectable));
    }

    void severalEntriesAreMovedByTheirTagAsOneChange()
    {
        OnLog on(m_books);
        const Unit other = benchUnit(*on.desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        for (const char *line : {"saw hum", "CN2.4 = 11.92 V want 12 V 5%", "did cleaned it 20m"})
            on.jot(line);
        on.page->list()->setFocus();
        QTest::keyClick(on.page->list(), Qt::Key_End);
        for (int i = 0; i < 2; ++i)
            QTest::keyClick(on.page->list(), Qt::Key_Up, Qt::ShiftModifier);
        QCOMPARE(on.page->list()->chosen().size(), 3);
        on.page->askWhereTo();
        auto *field = on.page->moveBar()->findChild<QLineEdit *>();
        QTest::keyClicks(field, QStringLiteral("%1").arg(other.tag, 4, 10, QLatin1Char('0')));
        QTest::keyClick(field, Qt::Key_Return);
        QVERIFY(on.page->moveBar()->isHidden());
        QVERIFY(on.file().all<Symptom>().isEmpty() && on.file().all<Reading>().isEmpty() && on.file().all<Step>().isEmpty());
        const UnitFile there = *on.desk->unitFile(other.id);
        QCOMPARE(there.all<Symptom>().size() + there.all<Reading>().size() + there.all<Step>().size(), 3);
        on.window->work().undo(); // all three at once
        QCOMPARE(on.file().all<Symptom>().size() + on.file().all<Reading>().size() + on.file().all<Step>().size(), 3);
        // What cannot be moved is refused, and stays.
        on.page->list()->choose(on.page->model()->rowOfRecord(on.unit.id.value));
        on.page->askWhereTo();
        Q_EMIT on.page->moveBar()->chosen(other.id);
        QVERIFY(on.window->workspace().notice()->text().contains(QLatin1String("stays with its unit")));
    }

    void minutesInTheClocksTimeAreSaidToBe()
    {
        OnLog on(m_books);
        on.jot("did cleaned it 20m");
        on.desk.clock.advance(60);
        ClockSpan span = on.desk->maker().fresh<ClockSpan>();
        span.unit = on.unit.id;
        span.startedAt = on.window->work().now();
        QVERIFY(on.window->work().record(Change(QStringLiteral("Clock")).add(span)));
        on.jot("did lubricated it 10m");
        const auto detail = [&](const Step &step) { return on.page->model()->entry(on.rowOf(step)).detail; };
        const QList<Step> steps = on.file().all<Step>();
        QVERIFY(!detail(steps.first()).contains(QLatin1String("clock")));
        QVERIFY(detail(steps.last()).contains(QLatin1String("not counted again")));
    }

    // Proofs that came with the category are not told before they are tried.
    void proofsStillToBeDoneAreNoEntries()
    {
        OnLog on(m_books);
        Maker maker = on.desk->maker();
        const int before = on.page->model()->rowCount();
        QVERIFY(on.window->work().record(bringAcceptance(on.file(), maker)));
        QVERIFY(on.file().all<Proof>().size() > 10);
        QCOMPARE(on.page->model()->rowCount(), before);
        QCOMPARE(on.page->chips()->chip(Lane::Proofs)->isHidden(), true);
        const Proof proof = on.file().all<Proof>().first();
        QVERIFY(on.window->work().record(Change(QStringLiteral("Proof")).edit(proof, provedAs(proof, ProofOutcome::Passed, on.window->work().today(), {}))));
        QVERIFY(on.rowOf(proof) >= 0);
    }

    // Marks of an axis of time: a few, all different, in order, within what is shown.
    void ticksOfTheChartAreRoundAndDistinct()
    {
        const QDateTime begin(QDate(2026, 11, 19), QTime(13, 7));
        for (const qint64 minutes : {60, 130, 400, 900, 1500, 2900, 4 * 1440, 9 * 1440, 33 * 1440, 100 * 1440, 400 * 1440, 3000 * 1440}) {
            const QDateTime end = begin.addSecs(minutes * 60);
            const QList<TimeTick> ticks = timeTicks(begin, end, begin.date());
            QVERIFY2(ticks.size() >= 2 && ticks.size() <= 5, qPrintable(QStringLiteral("%1 min: %2").arg(minutes).arg(ticks.size())));
            QSet<QString> labels;
            for (qsizetype i = 0; i < ticks.size(); ++i) {
                labels << ticks.at(i).label;
                QVERIFY(ticks.at(i).at >= begin && ticks.at(i).at <= end);
                QVERIFY(i == 0 || ticks.at(i - 1).at < ticks.at(i).at);
            }
            QCOMPARE(labels.size(), ticks.size());
        }
        const QList<TimeTick> days = timeTicks(begin, begin.addDays(3), begin.date()); // three midnights lie between
        QCOMPARE(days.size(), 3);
        QCOMPARE(days.first().at, QDate(2026, 11, 20).startOfDay());
        QCOMPARE(timeTicks(begin, begin.addDays(33), begin.date()).first().at.date().dayOfWeek(), 1); // weeks begin on Monday (ISO 8601)
    }

    void whatWasJustJottedIsSeenWhateverWasFiltered()
    {
        OnLog on(m_books);
        on.jot("saw hum");
        on.jot("CN2.4 = 11.92 V want 12 V 5%");
        on.page->chips()->chip(Lane::Faults)->click();
        QVERIFY(on.rowOf(on.file().all<Reading>().last()) < 0);
        on.jot("paid carriage 8.40");
        QVERIFY(on.rowOf(on.file().all<Spend>().last()) >= 0);
        QVERIFY(on.page->chips()->only().isEmpty());
        // The arrow keys go from chip to chip; Tab comes to one of them.
        on.page->chips()->chip(Lane::Faults)->setFocus();
        QTest::keyClick(on.page->chips()->chip(Lane::Faults), Qt::Key_Right);
        QVERIFY(on.page->chips()->chip(Lane::Readings)->hasFocus());
        QTest::keyClick(on.page->chips()->chip(Lane::Readings), Qt::Key_Space);
        QCOMPARE(on.page->chips()->only(), QSet<Lane>{Lane::Readings});
    }

    void aLongLogKeepsItsPlaceAndStaysQuick()
    {
        OnLog on(m_books);
        Change change(QStringLiteral("many"));
        for (int i = 0; i < 3000; ++i) {
            on.desk.clock.advance(600);
            Reading reading = on.desk->maker().fresh<Reading>();
            reading.unit = on.unit.id;
            reading.name = QStringLiteral("rail %1").arg(i % 40);
            reading.value = *Quantity::parse(u"11.92 V");
            reading.wanted = *Limit::parse(u"12 V 5%");
            reading.conditions = i % 10 == 0 ? QStringLiteral("with the lid off, the lamp bulb in series and the volume at a quarter, after an hour of warming up on the bench") : QString();
            change.add(reading);
        }
        QElapsedTimer timer;
        QVERIFY(on.window->work().record(change));
        QVERIFY(on.page->model()->rowCount() > 3000);
        LogView *list = on.page->list();
        QCOMPARE(list->verticalScrollBar()->value(), list->verticalScrollBar()->maximum()); // at the newest
        // Every height is the height that is painted: the last row ends where the range of the bar does.
        timer.start();
        for (int i = 0; i < 60; ++i) {
            list->verticalScrollBar()->setValue(list->verticalScrollBar()->maximum() / 60 * i);
            list->viewport()->repaint();
        }
        qInfo("60 screens of a log of 3,000 entries painted in %lld ms", timer.elapsed());
        QVERIFY(timer.elapsed() < 60 * 200); // many times what it takes, so that a busy computer does not fail it

        // Somebody else records while one reads further up: what is read stays where it is.
        list->verticalScrollBar()->setValue(list->verticalScrollBar()->maximum() / 2);
        const QModelIndex top = list->indexAt(QPoint(200, 10));
        const QString key = on.page->model()->entry(top.row()).key;
        const int y = list->visualRect(top).y();
        Note early = on.desk->maker().fresh<Note>();
        early.unit = on.unit.id;
        early.at = on.unit.at.addSecs(3600); // it stands far above
        early.text = QStringLiteral("found on the back of an envelope");
        QVERIFY(on.window->work().record(Change(QStringLiteral("Note")).add(early)));
        QCOMPARE(list->visualRect(on.page->model()->index(on.page->model()->rowOfKey(key))).y(), y);
        // Another unit and back: at the newest again.
        const Unit other = benchUnit(*on.desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        on.window->work().takeInHand(other.id);
        timer.start();
        on.window->work().takeInHand(on.unit.id);
        qInfo("the unit of 3,000 entries opened in %lld ms", timer.elapsed());
        QCOMPARE(list->verticalScrollBar()->value(), list->verticalScrollBar()->maximum());
        // What Home and the page keys come to is always an entry.
        list->setFocus();
        for (const auto key2 : {Qt::Key_Home, Qt::Key_PageDown, Qt::Key_PageDown, Qt::Key_PageUp, Qt::Key_End}) {
            QTest::keyClick(list, key2);
            QVERIFY(!on.page->model()->entry(list->currentIndex().row()).isDay);
        }
    }

    void largeTypeDoublesTheLine()
    {
        OnLog on(m_books);
        const int height = on.line()->fontMetrics().height();
        on.window->style().setLargeType(true);
        QCoreApplication::processEvents();
        QVERIFY2(qAbs(on.line()->fontMetrics().height() - 2 * height) <= 2, qPrintable(QStringLiteral("%1 %2").arg(height).arg(on.line()->fontMetrics().height())));
        on.window->style().setLargeType(false);
        QCOMPARE(on.line()->fontMetrics().height(), height);
    }

    void theChartIsFoldedAwayAndThatIsRemembered()
    {
        OnLog on(m_books);
        QVERIFY(on.page->chart()->isHidden()); // nothing to draw yet
        on.jot("paid carriage 8.40");
        on.jot("did cleaned it 30m");
        QVERIFY(!on.page->chart()->isHidden());
        QCOMPARE(on.page->chart()->hours().last().y(), 0.5);
        QCOMPARE(on.page->chart()->money().last().y(), 8.4);
        QTest::qWait(50); // it is drawn when the window has its turn
        const bool folded = on.page->chart()->isFolded();
        on.page->chart()->foldButton()->click();
        QCOMPARE(on.page->chart()->isFolded(), !folded);
        const QByteArray layout = on.window->workspace().layoutState();
        on.page->chart()->foldButton()->click();
        on.window->workspace().restoreLayout(layout);
        QCOMPARE(on.page->chart()->isFolded(), !folded);
    }

    void aTimeAndAChoiceAreEdited()
    {
        OnLog on(m_books);
        on.jot("CN2.4 = 11.92 V want 12 V 5%");
        const Reading before = on.file().all<Reading>().first();
        on.page->edit(on.rowOf(before));
        EntryForm *form = on.page->form();
        auto *phase = qobject_cast<QComboBox *>(form->field(QStringLiteral("phase")));
        phase->setCurrentIndex(phase->findData(QStringLiteral("as_it_leaves")));
        put(form->field(QStringLiteral("value")), QStringLiteral("10,9"));
        auto *when = qobject_cast<QDateTimeEdit *>(form->field(QStringLiteral("at")));
        when->setDateTime(when->dateTime().addDays(-1));
        QTest::keyClick(phase, Qt::Key_Return);
        QTRY_VERIFY(!on.page->form());
        const Reading after = on.file().all<Reading>().first();
        QCOMPARE(after.phase, Phase::AsItLeaves);
        QCOMPARE(after.value->text(), QStringLiteral("10.9 V"));
        QCOMPARE(after.at.toLocalTime().date(), before.at.toLocalTime().date().addDays(-1));
        QCOMPARE(on.page->model()->entry(on.rowOf(after)).verdict, Verdict::Outside);
        // Leaving the form by a click elsewhere keeps what was typed.
        on.page->edit(on.rowOf(after));
        put(on.page->form()->field(QStringLiteral("conditions")), QStringLiteral("lid off"));
        on.line()->setFocus();
        QTRY_VERIFY(!on.page->form());
        QCOMPARE(on.file().all<Reading>().first().conditions, QStringLiteral("lid off"));
    }

    void theSymptomThatALineIsForIsEdited()
    {
        OnLog on(m_books);
        on.jot("saw take-up reel stops");
        on.jot("saw left channel weak");
        const Id<Symptom> reel = on.file().all<Symptom>().first().id;
        const auto byItself = [&]<class R>(const char *line, const QList<R> &) {
            on.jot(line);
            QVERIFY2(on.file().all<R>().last().symptom == reel, line);
            on.page->edit(on.rowOf(on.file().all<R>().last()));
            auto *of = qobject_cast<QComboBox *>(on.page->form()->field(QStringLiteral("symptom")));
            QVERIFY2(of, line);
            QCOMPARE(of->currentText(), QStringLiteral("take-up reel stops"));
            QCOMPARE(of->currentData().toString(), reel.text());
            of->setCurrentIndex(0);
            QTest::keyClick(of, Qt::Key_Return);
            QTRY_VERIFY(!on.page->form());
            QVERIFY2(on.file().all<R>().last().symptom.isNull(), line);
        };
        byItself("did cleaned the clutch for reel stops 20m", on.file().all<Step>());
        byItself("think clutch felt glazed for reel stops", on.file().all<Cause>());
        byItself("check clutch torque for reel stops 5m", on.file().all<Check>());
        byItself("need clutch felt for reel stops 2.50", on.file().all<Need>());
    }

    void everyControlHasAName()
    {
        OnLog on(m_books);
        on.jot("a note");
        const QStringList unnamed = unnamedControls(on.window->workspace());
        QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(QStringLiteral(", "))));
    }
};

QTEST_MAIN(TestViewLog)
#include "test_view_log.moc"
