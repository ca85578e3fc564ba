// The Log driven as a person would: lines typed and recorded, entries edited, taken out and moved in place, filtered, recalled.
#include "tests/window_under_test.h"
#include "views/log/entry_form.h"
#include "views/log/jot_bar.h"
#include "views/log/jot_line.h"
#include "views/log/lane_chips.h"
#include "views/log/log_model.h"
#include "views/log/log_page.h"
#include "views/log/log_view.h"
#include "views/log/move_bar.h"
#include "views/widgets/notice_bar.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

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
