// "As it stands": its lines say what is recorded and lead to their pages; where the unit was left off is changed in place; and it is offered
// to note that when the unit is put down.
#include "model/records/stage_change.h"
#include "tests/window_under_test.h"
#include "views/clock/clock_box.h"
#include "views/clock/running_clock.h"
#include "views/standing/edit_line.h"
#include "views/standing/left_off_box.h"
#include "views/standing/leaving_bar.h"
#include "views/standing/stand_line.h"
#include "views/standing/standing_pane.h"
#include "views/widgets/answers_bar.h"

#include <QLabel>
#include <QLineEdit>

using namespace ts;
using namespace ts::testing;

class TestViewStanding : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    OpenDesk m_desk;
    Unit m_deck;
    Unit m_tuner;

    // Whatever page is shown: not each leaves room for it.
    static StandingPane *pane(WindowUnderTest &window)
    {
        auto *found = window.workspace().findChild<StandingPane *>();
        found->show();
        return found;
    }
    static StandLine *line(WindowUnderTest &window, const QString &label)
    {
        for (StandLine *each : pane(window)->findChildren<StandLine *>())
            if (each->label() == label && !each->isHidden())
                return each;
        return nullptr;
    }
    static QString valueOf(WindowUnderTest &window, const QString &label)
    {
        StandLine *found = line(window, label);
        return found ? found->value() : QStringLiteral("(no line)");
    }
    template <class R>
    R fresh()
    {
        R record = m_desk->maker().fresh<R>();
        record.unit = m_deck.id;
        return record;
    }

private Q_SLOTS:
    void init()
    {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        m_desk.desk.reset();
        wantOk(m_desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        m_tuner = benchUnit(*m_desk, QStringLiteral("Tarrick T-9"), Category::Tuner);
        m_deck = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7"));
        Symptom open = fresh<Symptom>();
        open.text = QStringLiteral("left channel weak");
        Symptom cleared = fresh<Symptom>();
        cleared.text = QStringLiteral("take-up slips");
        cleared.state = SymptomState::Cleared;
        Cause lead = fresh<Cause>();
        lead.symptom = open.id;
        lead.text = QStringLiteral("dry joint");
        lead.weight = 0.6;
        Need belt = fresh<Need>();
        belt.text = QStringLiteral("belt");
        belt.state = NeedState::Ordered;
        belt.due = QDate(2026, 11, 28);
        Step step = fresh<Step>();
        step.text = QStringLiteral("cleaned");
        step.minutes = 175;
        Plan plan = fresh<Plan>();
        plan.minutes = 270;
        plan.resaleLikely = Money(12000, *Currency::parse(u"GBP"));
        Spend bought = fresh<Spend>();
        bought.text = QStringLiteral("Bought");
        bought.kind = SpendKind::Purchase;
        bought.amount = Money(3840, *Currency::parse(u"GBP"));
        wantOk(m_desk->apply(Change(QStringLiteral("Records")).add(open).add(cleared).add(lead).add(belt).add(step).add(plan).add(bought)));
    }

    void theLinesSayWhatIsRecordedAndLeadThere()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        QCOMPARE(valueOf(window, QStringLiteral("Symptoms open")), QStringLiteral("1 of 2"));
        QCOMPARE(valueOf(window, QStringLiteral("Parts awaited")), QStringLiteral("1, due 28 Nov"));
        QCOMPARE(valueOf(window, QStringLiteral("Hours")), QStringLiteral("2 h 55 m of 4 h 30 m"));
        QCOMPARE(valueOf(window, QStringLiteral("Spent so far")), QStringLiteral("£38.40"));
        // By hand, without a channel's fees: 120.00 less 38.40.
        QCOMPARE(valueOf(window, QStringLiteral("Profit, your hours aside")), QStringLiteral("£81.60"));
        QVERIFY(valueOf(window, QStringLiteral("dry joint")).endsWith(QLatin1Char('%')));
        const auto leads = [&](const QString &label, PageKey page) {
            window.work().goTo(m_deck.id, PageKey::Log);
            StandLine *found = line(window, label);
            QVERIFY2(found, qPrintable(label));
            QTest::mouseClick(found, Qt::LeftButton);
            QCOMPARE(window.workspace().unitPane()->currentPage(), page);
        };
        leads(QStringLiteral("Symptoms open"), PageKey::FaultFinding);
        leads(QStringLiteral("Readings out of spec"), PageKey::Readings);
        leads(QStringLiteral("Parts awaited"), PageKey::Parts);
        leads(QStringLiteral("Spent so far"), PageKey::Money);
        leads(QStringLiteral("dry joint"), PageKey::FaultFinding);
        window.work().takeInHand(m_tuner.id);
        window.work().goTo(m_tuner.id, PageKey::Log);
        QCOMPARE(valueOf(window, QStringLiteral("Symptoms open")), QStringLiteral("none seen"));
        QVERIFY(!line(window, QStringLiteral("dry joint")));
    }

    void cautionsAreInTheWarningColour()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        QStringList warned;
        for (const QLabel *label : pane(window)->findChildren<QLabel *>())
            if (label->property("role") == QLatin1String("warning") && !label->isHidden())
                warned << label->text();
        QVERIFY(warned.join(QLatin1Char(' ')).contains(QLatin1String("unplug"), Qt::CaseInsensitive));
    }

    void leftOffIsChangedInPlace()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        window.work().goTo(m_deck.id, PageKey::Log);
        LeftOffBox *box = pane(window)->leftOff();
        EditLine *next = box->next();
        QVERIFY(!next->isEditing());
        next->begin();
        auto *field = next->findChild<QLineEdit *>();
        QTest::keyClicks(field, QStringLiteral("swap <b>head</b> leads"));
        // What comes from elsewhere meanwhile does not take away what is being typed.
        Note note = fresh<Note>();
        note.text = QStringLiteral("from the other window");
        wantOk(m_desk->apply(Change(QStringLiteral("Note")).add(note)));
        QTest::qWait(30);
        QCOMPARE(field->text(), QStringLiteral("swap <b>head</b> leads"));
        QTest::keyClick(field, Qt::Key_Return);
        QCOMPARE(window.work().file().all<LeftOff>().size(), 1);
        QCOMPARE(window.work().file().all<LeftOff>().first().next, QStringLiteral("swap <b>head</b> leads"));
        QCOMPARE(next->words(), QStringLiteral("Next: swap <b>head</b> leads"));
        next->begin();
        QTest::keyClicks(field, QStringLiteral("not this"));
        QTest::keyClick(field, Qt::Key_Escape);
        QCOMPARE(window.work().file().all<LeftOff>().first().next, QStringLiteral("swap <b>head</b> leads"));
        next->begin();
        QTest::keyClicks(field, QStringLiteral("fit the belt"));
        window.work().takeInHand(m_tuner.id); // another unit: what was typed is kept, for the unit it was typed for
        QCOMPARE(m_desk->unitFile(m_deck.id)->all<LeftOff>().first().next, QStringLiteral("fit the belt"));
        QVERIFY(m_desk->unitFile(m_tuner.id)->all<LeftOff>().isEmpty());
        window.work().takeInHand(m_deck.id);
        window.work().undo();
        QCOMPARE(next->words(), QStringLiteral("Next: swap <b>head</b> leads"));
    }

    void puttingAUnitDownOffersToNote()
    {
        TeardownItem lid = fresh<TeardownItem>();
        lid.what = QStringLiteral("lid");
        lid.fasteners = QStringLiteral("5 screws M3x8");
        lid.keptIn = QStringLiteral("tray A1");
        wantOk(m_desk->apply(Change(QStringLiteral("Off: lid")).add(lid)));
        WindowUnderTest window(*m_desk);
        AnswersBar *bar = window.workspace().findChild<LeavingBar *>()->bar();
        window.work().takeInHand(m_deck.id);
        window.work().takeInHand(m_tuner.id);
        QVERIFY(!bar->isAsking()); // it was only looked at
        window.work().takeInHand(m_deck.id);
        Step step = fresh<Step>();
        step.text = QStringLiteral("cleaned");
        QVERIFY(window.work().record(Change(QStringLiteral("Cleaned")).add(step)));
        window.work().takeInHand(m_tuner.id);
        QVERIFY(bar->isAsking());
        QVERIFY2(bar->question().contains(QLatin1String("5 screws")), qPrintable(bar->question()));
        auto *field = bar->findChild<QLineEdit *>();
        QTest::keyClicks(field, QStringLiteral("lid back on"));
        QTest::keyClick(field, Qt::Key_Return);
        QVERIFY(!bar->isAsking());
        QCOMPARE(m_desk->unitFile(m_deck.id)->all<LeftOff>().first().next, QStringLiteral("lid back on"));
        QCOMPARE(window.work().file().unit.id, m_tuner.id);
    }

    void closingAsksOnceAboutARunningClock()
    {
        WindowUnderTest window(*m_desk);
        window.work().takeInHand(m_deck.id);
        AnswersBar *bar = window.workspace().findChild<LeavingBar *>()->bar();
        int closed = 0;
        const auto close = [&] { ++closed; };
        QVERIFY(window.workspace().mayClose(close)); // nothing is open
        window.workspace().clock()->toggle();
        QVERIFY(!window.workspace().mayClose(close));
        QVERIFY(bar->isAsking());
        QVERIFY(window.workspace().mayClose(close)); // who insists is let go
        QTest::mouseClick(buttonWith(*bar, QStringLiteral("Stop")), Qt::LeftButton);
        QCOMPARE(closed, 1);
        QVERIFY(!window.workspace().clock()->clock().runs());
        QVERIFY(window.workspace().mayClose(close));
    }
};

QTEST_MAIN(TestViewStanding)
#include "test_view_standing.moc"
