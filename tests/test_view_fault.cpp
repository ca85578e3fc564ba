// The fault board over a real workbook, by keys alone.
#include "tests/grid_under_test.h"
#include "tests/page_under_test.h"
#include "views/fault/fault_page.h"
#include "views/fault/fault_rows.h"
#include "views/fault/next_card.h"
#include "views/fault/symptom_choice.h"
#include "views/widgets/ask_line.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QScrollBar>
#include <QSet>

using namespace ts;
using namespace ts::testing;

class TestViewFault : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static int column(CauseColumn c) { return static_cast<int>(c); }

    struct OnPage : PageUnderTest<FaultPage> {
        GridView *causes;
        GridView *checks;

        explicit OnPage(const QString &book, const QString &symptomText = QStringLiteral("left channel weak"))
            : PageUnderTest(book, PageKey::FaultFinding), causes(page->causes()), checks(page->checks())
        {
            if (!symptomText.isEmpty())
                addSymptom(symptomText);
        }
        Id<Symptom> addSymptom(const QString &text)
        {
            Symptom symptom = desk->maker().fresh<Symptom>();
            symptom.unit = unit.id;
            symptom.text = text;
            window->work().record(Change(QStringLiteral("Symptom")).add(symptom));
            return symptom.id;
        }
        void addRow(GridView *grid, const QString &text)
        {
            grid->editAdding();
            type(text);
            press(Qt::Key_Return);
            press(Qt::Key_Escape);
        }
        void answer(const QString &text)
        {
            QVERIFY(page->asking()->isVisible());
            QCOMPARE(QApplication::focusWidget(), page->asking()->field());
            page->asking()->field()->selectAll();
            type(text);
            press(Qt::Key_Return);
        }
        [[nodiscard]] double now(const QString &cause) const
        {
            for (const BoardCause &each : page->board().causes)
                if (each.text == cause)
                    return each.now;
            return -1;
        }
        [[nodiscard]] int mark(const QString &cause) const
        {
            for (int i = 0; i < checks->rows().columnCount(); ++i)
                if (checks->rows().columns().at(i).tip == cause)
                    return i;
            return -1;
        }
    };

private Q_SLOTS:
    void aSymptomIsSaidWhereThereIsNone()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")), {});
        QPushButton *say = OnPage::button(on.page, QStringLiteral("Say what was seen"));
        QVERIFY(say);
        say->click();
        on.answer(QStringLiteral("dead"));
        QCOMPARE(on.file().all<Symptom>().size(), 1);
        QVERIFY(on.causes->isVisible());
        QVERIFY(!on.page->asking()->isVisible());
        on.window->work().undo();
        QVERIFY(on.file().all<Symptom>().isEmpty());
    }

    void likelihoodsFollowWhatIsRecorded()
    {
        // Bayes by hand: weights 60 % and 30 %, something else keeps the 10 % that are left. The check is abnormal with 0.95 if it is the lead, else
        // with 0.05. Abnormal: 0.57 : 0.015 : 0.005 of 0.59, so the lead stands at 96.6 %. Normal: 0.03 : 0.285 : 0.095 of 0.41: 7.3 %.
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addRow(on.causes, QStringLiteral("head lead 60%"));
        on.addRow(on.causes, QStringLiteral("worn head 30%"));
        on.addRow(on.checks, QStringLiteral("wiggle the leads 3m"));
        QCOMPARE(on.file().all<Check>().first().minutes, std::optional(3));
        QVERIFY(std::abs(on.now(QStringLiteral("head lead")) - 0.6) < 1e-9);

        stand(on.checks, 0, on.mark(QStringLiteral("head lead")));
        press(Qt::Key_Space);
        QCOMPARE(on.file().all<Bearing>().size(), 1);
        QCOMPARE(reads(on.checks, 0, on.mark(QStringLiteral("head lead"))), QStringLiteral("●"));
        stand(on.checks, 0, on.checks->rows().columnCount() - 1);
        type(QStringLiteral("a"));
        QVERIFY(std::abs(on.now(QStringLiteral("head lead")) - 0.57 / 0.59) < 1e-9);
        type(QStringLiteral("n"));
        QVERIFY(std::abs(on.now(QStringLiteral("head lead")) - 0.03 / 0.41) < 1e-9);
        press(Qt::Key_E, Qt::ControlModifier);
        on.answer(QStringLiteral("no change"));
        QCOMPARE(on.file().all<Check>().first().result, QStringLiteral("no change"));
        stand(on.checks, 0, on.checks->rows().columnCount() - 1);
        type(QStringLiteral("d"));
        QVERIFY(std::abs(on.now(QStringLiteral("head lead")) - 0.6) < 1e-9);
        on.window->work().undo(); // the outcome is back, and all that followed from it
        QVERIFY(std::abs(on.now(QStringLiteral("head lead")) - 0.03 / 0.41) < 1e-9);
        stand(on.checks, 0, on.mark(QStringLiteral("head lead")));
        press(Qt::Key_Space);
        QVERIFY(on.file().all<Bearing>().isEmpty());
    }

    void headsOfTheMarksAreAllDifferent()
    {
        QCOMPARE(markHeads({QStringLiteral("belt worn"), QStringLiteral("belt slipped off"), QStringLiteral("motor dry"), QStringLiteral("C214 open"), QStringLiteral("coupling C215 open")}),
                 (QStringList{QStringLiteral("belt\nworn"), QStringLiteral("belt\nslipped"), QStringLiteral("motor"), QStringLiteral("C214"), QStringLiteral("C215")}));
        const QStringList same = markHeads({QStringLiteral("belt"), QStringLiteral("belt"), QStringLiteral("belt")});
        QCOMPARE(QSet<QString>(same.begin(), same.end()).size(), 3);
    }

    // What the check is and how it came out are seen wherever the marks are scrolled to.
    void theCheckAndItsOutcomeStayInSight()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        for (int i = 1; i <= 14; ++i)
            on.addRow(on.causes, QStringLiteral("C%1 leaky").arg(200 + i));
        on.addRow(on.checks, QStringLiteral("measure the rail 3m"));
        const int last = on.checks->rows().columnCount() - 1;
        const auto rect = [&](int column) { return on.checks->visualRect(on.checks->rows().index(0, column)); };
        QVERIFY(on.checks->horizontalScrollBar()->maximum() > 0);
        for (int column = 0; column <= last; ++column) {
            stand(on.checks, 0, column);
            QCOMPARE(rect(0).left(), 0);
            QCOMPARE(rect(last).right() + 1, on.checks->viewport()->width());
            QVERIFY(column < 2 || column == last || (rect(column).left() >= rect(1).right() && rect(column).right() < rect(last).left())); // not below what is pinned
            QCOMPARE(on.checks->indexAt(rect(column).center()).column(), column);
        }
        on.checks->horizontalScrollBar()->setValue(on.checks->horizontalScrollBar()->maximum());
        stand(on.checks, 0, 0);
        press(Qt::Key_F2);
        QVERIFY(openField());
        QVERIFY(openField()->geometry().left() <= 1 && openField()->isVisible()); // where its cell is seen
        press(Qt::Key_Escape);
        on.checks->grab();
    }

    void whereNoCausesAreKnownTheListIsOfferedInThePage()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")), QStringLiteral("zzzz qqqq"));
        on.page->bringInUsual();
        QVERIFY(on.page->choice()->question().contains(QLatin1String("zzzz qqqq")));
        QVERIFY(on.file().all<Cause>().isEmpty());
        const auto answers = on.page->choice()->findChildren<QPushButton *>();
        QVERIFY(answers.size() > 2);
        QVERIFY(on.page->choice()->isAncestorOf(QApplication::focusWidget()));
        press(Qt::Key_Escape);
        QVERIFY(on.page->choice()->isHidden());
        OnPage::button(on.page, QStringLiteral("From the list…"))->click();
        QCoreApplication::processEvents();
        QVERIFY(on.page->choice()->isVisible());
        on.page->choice()->findChildren<QPushButton *>().last()->setFocus();
        qobject_cast<QPushButton *>(QApplication::focusWidget())->click(); // none of these
        QVERIFY(on.page->choice()->isHidden());
        on.page->bringInUsual();
        on.page->choice()->findChildren<QPushButton *>().first()->click();
        QVERIFY(on.page->choice()->isHidden());
        QVERIFY(!on.file().all<Cause>().isEmpty());
        on.window->work().undo();
        QVERIFY(on.file().all<Cause>().isEmpty());
    }

    void howSureAMarkIsCanBeSaid()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addRow(on.causes, QStringLiteral("head lead 60%"));
        on.addRow(on.checks, QStringLiteral("wiggle the leads 3m"));
        stand(on.checks, 0, on.mark(QStringLiteral("head lead")));
        press(Qt::Key_E, Qt::ControlModifier);
        on.answer(QStringLiteral("often"));
        QVERIFY(on.notice().contains(QLatin1String("two percentages")));
        QVERIFY(on.page->asking()->isVisible());
        on.answer(QStringLiteral("80 10"));
        QCOMPARE(on.file().all<Bearing>().size(), 1);
        QCOMPARE(on.file().all<Bearing>().first().abnormalIf, 0.8);
        QCOMPARE(on.file().all<Bearing>().first().abnormalIfNot, 0.1);
    }

    void causesAreRuledOutAndConfirmedWithTheReason()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addRow(on.causes, QStringLiteral("coupling capacitor 50%"));
        on.addRow(on.causes, QStringLiteral("trimmer dirty 30%"));
        stand(on.causes, rowReading(on.causes, QStringLiteral("coupling capacitor")), column(CauseColumn::State));
        type(QStringLiteral("r"));
        on.answer(QStringLiteral("3.3 u, 0.4 ohm"));
        QCOMPARE(on.file().all<Cause>().first().state, CauseState::RuledOut);
        QCOMPARE(on.file().all<Cause>().first().reason, QStringLiteral("3.3 u, 0.4 ohm"));
        QCOMPARE(on.now(QStringLiteral("coupling capacitor")), 0.0);
        const int row = rowReading(on.causes, QStringLiteral("coupling capacitor"));
        QVERIFY(on.causes->rows().cell(on.causes->rows().index(row, 0)).struck);
        stand(on.causes, row, column(CauseColumn::State));
        type(QStringLiteral("c"));
        press(Qt::Key_Escape); // thought better of
        QCOMPARE(on.file().all<Cause>().first().state, CauseState::RuledOut);
        stand(on.causes, row, column(CauseColumn::State));
        type(QStringLiteral("o"));
        QCOMPARE(on.file().all<Cause>().first().state, CauseState::Open);
        stand(on.causes, rowReading(on.causes, QStringLiteral("trimmer dirty")), column(CauseColumn::State));
        type(QStringLiteral("c"));
        on.answer({});
        QVERIFY(on.page->board().closed());
        QVERIFY(on.page->nextCard()->shown().isEmpty());
    }

    void whatItTakesToPutRightIsTypedInAnyOrder_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<int>("minutes");
        QTest::addColumn<QString>("cost");
        QTest::addColumn<double>("odds");
        QTest::newRow("all") << QStringLiteral("55m 28 80%") << 55 << QStringLiteral("28.00") << 0.8;
        QTest::newRow("as shown") << QStringLiteral("55 m · £28.00 · 80 %") << 55 << QStringLiteral("28.00") << 0.8;
        QTest::newRow("hours") << QStringLiteral("28 1h20") << 80 << QStringLiteral("28.00") << -1.0;
        QTest::newRow("price") << QStringLiteral("0.40") << -1 << QStringLiteral("0.40") << -1.0;
        QTest::newRow("nothing") << QString() << -1 << QString() << -1.0;
        QTest::newRow("rubbish") << QStringLiteral("soon") << -2 << QString() << -1.0;
        QTest::newRow("too sure") << QStringLiteral("120%") << -2 << QString() << -1.0;
    }

    void whatItTakesToPutRightIsTypedInAnyOrder()
    {
        QFETCH(QString, typed);
        QFETCH(int, minutes);
        QFETCH(QString, cost);
        QFETCH(double, odds);
        const auto right = parsePutRight(typed, Currency::parse(QStringLiteral("GBP")).value());
        QCOMPARE(right.ok(), minutes != -2);
        if (!right)
            return;
        QCOMPARE(right->minutes.value_or(-1), minutes);
        QCOMPARE(right->cost ? right->cost->decimal() : QString(), cost);
        QCOMPARE(right->odds.value_or(-1), odds);
    }

    void whatToCheckNextFollowsTheBoard()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addRow(on.causes, QStringLiteral("head lead 60%"));
        on.addRow(on.causes, QStringLiteral("worn head 30%"));
        stand(on.causes, 0, column(CauseColumn::PutRight));
        type(QStringLiteral("20m"));
        press(Qt::Key_Return);
        on.addRow(on.checks, QStringLiteral("wiggle the leads 3m"));
        stand(on.checks, 0, on.mark(QStringLiteral("head lead")));
        press(Qt::Key_Space);
        QVERIFY2(on.page->nextCard()->shown().contains(QStringLiteral("wiggle the leads")), qPrintable(on.page->nextCard()->shown().join(QLatin1Char('|'))));
        QPushButton *go = OnPage::button(on.page->nextCard(), QStringLiteral("Say how it came out"));
        QVERIFY(go);
        go->click();
        QCOMPARE(QApplication::focusWidget(), on.checks);
        QWidget *words = QApplication::activePopupWidget(); // the choice is open
        QVERIFY(words);
        QTest::keyClicks(words, QStringLiteral("n"));
        QVERIFY(!QApplication::activePopupWidget());
        QCOMPARE(on.file().all<Check>().first().cameOut, CameOut::Normal);
    }

    void firstPowerIsNotTickedBlind()
    {
        // A unit from the mains that was never powered owes the steps of first power; each is said with what it showed.
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addRow(on.causes, QStringLiteral("head lead 60%"));
        const QString first = on.page->nextCard()->shown().first();
        QPushButton *inOrder = OnPage::button(on.page->nextCard(), QStringLiteral("In order"));
        QVERIFY(inOrder);
        inOrder->click();
        press(Qt::Key_Return);
        QVERIFY(on.notice().contains(QLatin1String("blind")));
        QVERIFY(on.file().all<Check>().isEmpty());
        on.answer(QStringLiteral("230 V 50 Hz, as here"));
        QCOMPARE(on.file().all<Check>().size(), 1);
        QCOMPARE(on.file().all<Check>().first().cameOut, CameOut::Normal);
        QVERIFY(on.page->nextCard()->shown().first() != first);
    }

    void usualCausesComeInOneAction()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")), QStringLiteral("chews tape"));
        const auto before = on.file().all<Cause>().size();
        on.page->bringInUsual();
        QVERIFY2(on.file().all<Cause>().size() >= before + 3, qPrintable(on.notice()));
        QVERIFY(on.file().all<Check>().size() >= 2);
        const QAbstractItemModelTester causes(&on.causes->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        const QAbstractItemModelTester checks(&on.checks->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        on.window->work().undo();
        QCOMPARE(on.file().all<Cause>().size(), before);
        on.window->work().redo();
        QVERIFY(!on.page->nextCard()->shown().isEmpty());
        const QStringList unnamed = unnamedControls(*on.page);
        QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(QStringLiteral(", "))));
    }

    void eachSymptomHasItsBoard()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.addRow(on.causes, QStringLiteral("head lead 60%"));
        const Id<Symptom> other = on.addSymptom(QStringLiteral("hums"));
        on.page->chooseSymptom(other);
        QCOMPARE(rowReading(on.causes, QStringLiteral("head lead")), -1);
        on.addRow(on.causes, QStringLiteral("filter capacitor"));
        QCOMPARE(on.file().all<Cause>().last().symptom, other);
        on.page->reveal(QStringLiteral("cause"), on.file().all<Cause>().first().id.value);
        QVERIFY(rowReading(on.causes, QStringLiteral("head lead")) >= 0);
        stand(on.causes, rowReading(on.causes, QStringLiteral("head lead")), 0);
        press(Qt::Key_Delete);
        QCOMPARE(on.file().all<Cause>().size(), 1);
    }

    void twoBenchesOnOneBoard()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OnPage on(book);
        on.addRow(on.causes, QStringLiteral("head lead 60%"));
        on.causes->editAdding();
        type(QStringLiteral("worn "));
        OpenDesk other;
        wantOk(other.open(book));
        Cause theirs = other->maker().fresh<Cause>();
        theirs.unit = on.unit.id;
        theirs.symptom = on.page->board().symptom;
        theirs.text = QStringLiteral("from the other bench");
        wantOk(other->apply(Change(QStringLiteral("Cause")).add(theirs)));
        QTRY_VERIFY_WITH_TIMEOUT(rowReading(on.causes, QStringLiteral("from the other bench")) >= 0, 2000);
        QVERIFY(openField());
        type(QStringLiteral("head"));
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        QVERIFY(rowReading(on.causes, QStringLiteral("worn head")) >= 0);
    }
};

QTEST_MAIN(TestViewFault)
#include "test_view_fault.moc"
