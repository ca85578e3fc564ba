// The proving page over a real workbook, one key a line.
#include "model/records/settings.h"
#include "model/sums/acceptance.h"
#include "model/sums/stage_rules.h"
#include "tests/grid_under_test.h"
#include "tests/page_under_test.h"
#include "views/proving/proof_rows.h"
#include "views/proving/proving_page.h"
#include "views/widgets/empty_place.h"

#include <QAbstractItemModelTester>

using namespace ts;
using namespace ts::testing;

class TestViewProving : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static int column(ProofColumn c) { return static_cast<int>(c); }

    struct OnPage : PageUnderTest<ProvingPage> {
        GridView *table;
        explicit OnPage(const QString &book) : PageUnderTest(book, PageKey::Proving), table(page->table())
        {
            window->work().record(window->work().settingChange(settings::worker, QStringLiteral("R. M.")));
        }
        [[nodiscard]] const QList<Proof> &proofs() const { return all<Proof>(); }
        [[nodiscard]] const Proof &reading(const QString &text) const
        {
            static const Proof none;
            for (const Proof &proof : proofs())
                if (proof.text == text)
                    return proof;
            return none;
        }
    };

private Q_SLOTS:
    void theListOfTheCategoryComesInOneAction()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        auto *none = on.page->findChild<EmptyPlace *>();
        QVERIFY(none->isVisible());
        Q_EMIT none->actionWanted();
        QCOMPARE(on.proofs().size(), acceptanceFor(on.window->work().file().unit).size());
        QVERIFY(on.table->isVisible());
        const QAbstractItemModelTester tester(&on.table->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        on.window->work().undo();
        QVERIFY(on.proofs().isEmpty());
        QVERIFY(none->isVisible());
        on.window->work().redo();
        QVERIFY(rowReading(on.table, QStringLiteral("Counter and pause")) > 0);
    }

    void oneKeyALine()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        Q_EMIT on.page->findChild<EmptyPlace *>()->actionWanted();
        QCOMPARE(QApplication::focusWidget(), on.table); // and the place is on its first line
        QCOMPARE(on.table->currentIndex().row(), 1);
        const QString first = reads(on.table, 1, 0);
        const QString second = reads(on.table, 2, 0);
        const QString third = reads(on.table, 3, 0);
        QVERIFY(on.page->keysLine().contains(QLatin1String("goes on to the next")));
        type(QStringLiteral("p"));
        QCOMPARE(on.table->currentIndex().row(), 2); // and it is said
        QCOMPARE(on.page->keysLine(), QStringLiteral("%1: passed. Now at: %2").arg(first, second));
        type(QStringLiteral("n"));
        QCOMPARE(on.page->keysLine(), QStringLiteral("%1: not applicable. Now at: %2").arg(second, third));
        type(QStringLiteral("F"));
        QCOMPARE(on.page->keysLine(), QStringLiteral("%1: failed. Say what was found.").arg(third));
        QCOMPARE(on.reading(first).cameOut, ProofOutcome::Passed);
        QCOMPARE(on.reading(first).initials, QStringLiteral("R. M."));
        QCOMPARE(on.reading(first).doneOn, on.window->work().today());
        QCOMPARE(on.reading(second).cameOut, ProofOutcome::NotApplicable);
        QCOMPARE(on.reading(third).cameOut, ProofOutcome::Failed);
        QVERIFY(openField()); // what was found
        type(QStringLiteral("stops after ten seconds"));
        press(Qt::Key_Return);
        QCOMPARE(on.reading(third).result, QStringLiteral("stops after ten seconds"));
        QVERIFY(on.page->inTheWayText().contains(third));
        stand(on.table, 3, 0);
        type(QStringLiteral("t"));
        QCOMPARE(on.reading(third).cameOut, ProofOutcome::NotTested);
        QVERIFY(!on.reading(third).doneOn.isValid());
        QVERIFY(on.page->inTheWayText().isEmpty());
        stand(on.table, 1, column(ProofColumn::Result)); // from anywhere in the row
        type(QStringLiteral("f"));
        QCOMPARE(on.reading(first).cameOut, ProofOutcome::Failed);
        press(Qt::Key_Escape);
    }

    void aFailedProofKeepsItFromReadyUnlessOverruled()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        Proof proof = on.desk->maker().fresh<Proof>();
        proof.unit = on.window->work().file().unit.id;
        proof.text = QStringLiteral("erase");
        proof.cameOut = ProofOutcome::Failed;
        QVERIFY(on.window->work().record(Change(QStringLiteral("Proof")).add(proof)));
        Maker maker = on.desk->maker();
        const auto move = [&](const QString &because) { return ruledStageChange(on.window->work().file(), {.stage = Stage::Ready, .because = because}, maker); };
        QVERIFY(!on.window->work().record(move({})));
        QVERIFY(on.notice().contains(QLatin1String("erase")));
        QCOMPARE(on.window->work().file().unit.stage, Stage::Bench);
        QVERIFY(on.window->work().record(move(QStringLiteral("sold as playing only"))));
        QCOMPARE(on.window->work().file().unit.stage, Stage::Ready);
    }

    void instrumentAndRuleSetAreTypedOnce()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        Q_EMIT on.page->findChild<EmptyPlace *>()->actionWanted();
        const QString first = QStringLiteral("Insulation at 500 V DC: live and neutral together to touchable metal");
        const QString second = QStringLiteral("Touch current at every metal part that can be touched");
        const auto put = [&](ProofColumn c, const QString &text) {
            stand(on.table, rowReading(on.table, first), column(c));
            press(Qt::Key_F2);
            type(text);
            press(Qt::Key_Return);
        };
        stand(on.table, rowReading(on.table, first), 0);
        type(QStringLiteral("p"));
        put(ProofColumn::Instrument, QStringLiteral("insulation tester"));
        put(ProofColumn::RuleSet, QStringLiteral("EN 50678"));
        put(ProofColumn::Result, QStringLiteral("over 200 M"));
        stand(on.table, rowReading(on.table, second), 0);
        type(QStringLiteral("p"));
        QCOMPARE(on.reading(second).instrument, QStringLiteral("insulation tester"));
        QCOMPARE(on.reading(second).ruleSet, QStringLiteral("EN 50678"));
        QVERIFY(on.reading(second).result.isEmpty());
        put(ProofColumn::Done, QStringLiteral("sometime"));
        QVERIFY(on.notice().contains(QLatin1String("no day")));
        press(Qt::Key_Escape);
    }

    void linesAreAddedAndTakenOff()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        Q_EMIT on.page->findChild<EmptyPlace *>()->actionWanted();
        const auto before = on.proofs().size();
        on.table->editAdding(toWord(ProofKind::Cosmetic));
        type(QStringLiteral("no smell of smoke"));
        press(Qt::Key_Return);
        press(Qt::Key_Escape);
        QCOMPARE(on.proofs().size(), before + 1);
        QCOMPARE(on.proofs().last().kind, ProofKind::Cosmetic);
        stand(on.table, rowReading(on.table, QStringLiteral("no smell of smoke")), 0);
        press(Qt::Key_Delete);
        QCOMPARE(on.proofs().size(), before);
        const QStringList unnamed = unnamedControls(*on.page);
        QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(QStringLiteral(", "))));
    }
};

QTEST_MAIN(TestViewProving)
#include "test_view_proving.moc"
