// First power and electrical safety on the proving page, by keys.
#include "model/records/settings.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/power_ladder.h"
#include "tests/grid_under_test.h"
#include "tests/page_under_test.h"
#include "views/proving/first_power_view.h"
#include "views/proving/power_aids.h"
#include "views/proving/proving_page.h"
#include "views/proving/safety_view.h"
#include "views/proving/tried_grid.h"
#include "views/standing/standing_pane.h"

#include <QAbstractItemModelTester>
#include <QComboBox>

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

class TestViewFirstPower : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    static constexpr int found = 1;

    struct OnPage : PageUnderTest<ProvingPage> {
        OnPage(const QString &book, ProvingPage::Part part) : PageUnderTest(book, PageKey::Proving)
        {
            set(settings::worker, u"R. M."_s);
            set(settings::mains, u"230 V 50 Hz"_s);
            page->showPart(part);
            page->focusFirst();
        }
        void set(const QString &name, const QString &value) { window->work().record(window->work().settingChange(name, value)); }
        [[nodiscard]] const QList<Rung> &rungs() const { return all<Rung>(); }
        [[nodiscard]] QString flag() const { return all<LeftOff>().isEmpty() ? QString() : all<LeftOff>().last().doNotPower; }
    };
    static void typeIn(const QString &text)
    {
        QTRY_VERIFY(openField());
        openField()->setText(text);
        press(Qt::Key_Return);
        QCoreApplication::processEvents();
    }

private Q_SLOTS:
    void stepsByKeys()
    {
        OnPage on(m_books.fresh(u"sqlite"_s), ProvingPage::Part::FirstPower);
        GridView *table = on.page->firstPower()->table();
        const QAbstractItemModelTester tester(&table->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        QCOMPARE(QApplication::focusWidget(), table);
        QCOMPARE(table->rows().rowCount(), ladderSteps(on.file().unit).size());
        // The plate: Enter opens the field, its words decide.
        press(Qt::Key_Return);
        typeIn(u"230 V 50 Hz"_s);
        QCOMPARE(on.rungs().size(), 1);
        QCOMPARE(on.rungs().first().cameOut, RungOutcome::Pass);
        QCOMPARE(on.rungs().first().initials, u"R. M."_s);
        // P on a step without words asks for them, and ticks nothing.
        stand(table, 1, found);
        type(u"p"_s);
        QTRY_VERIFY(openField());
        QCOMPARE(on.rungs().size(), 1);
        press(Qt::Key_Return);
        QCOMPARE(on.rungs().size(), 1);
        stand(table, 1, found);
        type(u"p"_s);
        typeIn(u"sound from end to end"_s);
        QCOMPARE(on.rungs().size(), 2);
        on.window->work().undo();
        QCOMPARE(on.rungs().size(), 1);
    }

    void aStopFlagsAndOnlyAHandLiftsIt()
    {
        OnPage on(m_books.fresh(u"sqlite"_s), ProvingPage::Part::FirstPower);
        FirstPowerView *view = on.page->firstPower();
        GridView *table = view->table();
        QVERIFY(view->flagText().isEmpty());
        const int lead = 1;
        stand(table, lead, found);
        type(u"s"_s);
        typeIn(u"bare wire at the plug"_s);
        QCOMPARE(on.rungs().size(), 1);
        QCOMPARE(on.rungs().first().cameOut, RungOutcome::Stop);
        QVERIFY(on.flag().contains(u"bare wire at the plug"_s));
        QVERIFY(view->flagText().contains(u"bare wire at the plug"_s));
        QVERIFY(!on.page->inTheWayText().isEmpty());
        // Passed later, the flag stands.
        stand(table, lead, found);
        press(Qt::Key_Return);
        typeIn(u"new lead fitted"_s);
        QCOMPARE(on.rungs().last().cameOut, RungOutcome::Pass);
        QVERIFY(!on.flag().isEmpty());
        view->safeButton()->click();
        QVERIFY(on.flag().isEmpty());
        QVERIFY(view->flagText().isEmpty());
        on.window->work().undo();
        QVERIFY(!view->flagText().isEmpty());
    }

    void aValueDecides()
    {
        OnPage on(m_books.fresh(u"sqlite"_s), ProvingPage::Part::FirstPower);
        GridView *table = on.page->firstPower()->table();
        const int primary = rowReading(table, u"Resistance across the plug with the switch on"_s);
        QVERIFY(primary > 0);
        stand(table, primary, found);
        press(Qt::Key_Return);
        typeIn(u"looks fine"_s);
        QVERIFY(on.rungs().isEmpty());
        QVERIFY(!on.notice().isEmpty());
        stand(table, primary, found);
        press(Qt::Key_Return);
        typeIn(u"0.2"_s);
        QCOMPARE(on.rungs().size(), 1);
        QCOMPARE(on.rungs().first().cameOut, RungOutcome::Stop);
        QCOMPARE(on.rungs().first().value->text(), u"0.2 Ω"_s);
        // Not applicable asks for its reason, too.
        stand(table, primary, found);
        type(u"n"_s);
        typeIn(u"switch-mode supply"_s);
        QCOMPARE(on.rungs().last().cameOut, RungOutcome::NotApplicable);
    }

    void draining()
    {
        // ../shared/checks 06_discharge_cases.csv X07: 450 V, 100 Ω/V: 45 kΩ, 4.5 W; ln(450 / 5) × 4.5 s = 20.2 s.
        const QString words = drainingWords(u"100 µF 450 V"_s);
        for (const QString &part : {u"45 kΩ"_s, u"4.5 W"_s, u"20.2 s"_s})
            QVERIFY2(QString(words).replace(QChar(0x00A0), u' ').contains(part), qPrintable(words));
        QVERIFY(drainingWords(u"lots"_s).startsWith(u"Write"_s));
        const QString lamp = QString(lampWords(u"30 W"_s, u"230 V 50 Hz"_s)).replace(QChar(0x00A0), u' ');
        QVERIFY2(lamp.contains(u"40 or 60 W"_s) && lamp.contains(u"261 mA"_s), qPrintable(lamp)); // 60 W / 230 V
        QVERIFY(lampWords(u"30 W"_s, {}).contains(u"not set"_s));
    }

    void safetyByKeys()
    {
        OnPage on(m_books.fresh(u"sqlite"_s), ProvingPage::Part::Safety);
        SafetyView *view = on.page->safety();
        GridView *table = view->table();
        const QAbstractItemModelTester tester(&table->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        // Without its class there is no limit and nothing is passed.
        const QString insulation = safetyTestText(SafetyTest::Insulation);
        stand(table, rowReading(table, insulation), 2);
        press(Qt::Key_Return);
        typeIn(u"200 MΩ"_s);
        QVERIFY2(on.notice().contains(u"protection class"_s), qPrintable(on.notice()));
        QVERIFY(on.all<Proof>().isEmpty());
        press(Qt::Key_Escape);
        view->protectionClass()->setCurrentIndex(2);
        Q_EMIT view->protectionClass()->activated(2);
        QCOMPARE(on.file().unit.protectionClass, ProtectionClass::II);
        QCOMPARE(rowReading(table, safetyTestText(SafetyTest::Earth)), -1);
        view->instrument()->setText(u"tester 3"_s);
        stand(table, rowReading(table, insulation), 2);
        press(Qt::Key_Return);
        typeIn(u"200 MΩ"_s);
        QCOMPARE(on.all<Proof>().size(), 1);
        QCOMPARE(on.all<Proof>().first().cameOut, ProofOutcome::Passed);
        QCOMPARE(on.all<Proof>().first().instrument, u"tester 3"_s);
        QCOMPARE(on.all<Proof>().first().ruleSet, rulesName(SafetyRules::En50678));
        // The 4th edition's touch current is stricter: the same figure fails by it (S11, S15).
        const QString touch = safetyTestText(SafetyTest::TouchCurrent);
        view->rules()->setCurrentIndex(1);
        Q_EMIT view->rules()->activated(1);
        QCOMPARE(on.window->work().bench().setting(settings::safetyRules), u"iet_4"_s);
        stand(table, rowReading(table, touch), 2);
        press(Qt::Key_Return);
        typeIn(u"0.3 mA"_s);
        QCOMPARE(on.all<Proof>().last().cameOut, ProofOutcome::Failed);
        QCOMPARE(failedSafety(on.file()).size(), 1);
        // Looked at: passed with words only.
        stand(table, 0, 2);
        type(u"p"_s);
        QTRY_VERIFY(openField());
        press(Qt::Key_Return);
        QCOMPARE(on.all<Proof>().size(), 2);
        stand(table, 0, 2);
        type(u"p"_s);
        typeIn(u"plug and lead whole"_s);
        QCOMPARE(on.all<Proof>().size(), 3);
        const QStringList unnamed = unnamedControls(*on.page);
        QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(u", "_s)));
    }
};

QTEST_MAIN(TestViewFirstPower)
#include "test_view_first_power.moc"
