// The Money page: the plan edited in the table, sales written down by a line, and what the page then says.
#include "tests/window_under_test.h"
#include "views/money/comparables_card.h"
#include "views/money/cost_model.h"
#include "views/money/money_page.h"
#include "views/money/plan_edit.h"
#include "views/widgets/notice_bar.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTreeWidget>

using namespace ts;
using namespace ts::testing;

class TestViewMoney : public QObject {
    Q_OBJECT
    Workbooks m_books;

private Q_SLOTS:
    void minutesAreReadAsPeopleWriteThem_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<int>("minutes"); // -1: refused
        const auto row = [](const char *typed, int minutes) { QTest::newRow(typed) << QString::fromUtf8(typed) << minutes; };
        row("4 h 30 m", 270);
        row("4h30", 270);
        row("4:30", 270);
        row("90", 90);
        row("90 min", 90);
        row("1.5 h", 90);
        row("1,5 h", 90);
        row("2 h", 120);
        row("", -1);
        row("soon", -1);
        row("-5", -1);
        row("99999999", -1);
    }
    void minutesAreReadAsPeopleWriteThem()
    {
        QFETCH(QString, typed);
        QFETCH(int, minutes);
        const auto read = minutesTyped(typed);
        QCOMPARE(read ? *read : -1, minutes);
    }

    void aSaleIsReadFromALine()
    {
        SetClock clock(QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC));
        IdMaker ids(clock, 1);
        Maker maker(ids);
        const Currency pounds = *Currency::parse(u"GBP");
        Unit unit;
        unit.makerModel = QStringLiteral("KD-7");
        const auto read = [&](const char *line) { return comparableTyped(QString::fromUtf8(line), unit, pounds, {2026, 11, 25}, maker); };
        const auto sale = read("118.00 27 Sep working, measured");
        QVERIFY(sale);
        QCOMPARE(sale->price->minor(), 11800);
        QCOMPARE(sale->soldOn, QDate(2026, 9, 27));
        QCOMPARE(sale->working, std::optional(true));
        QCOMPARE(sale->condition, QStringLiteral("measured"));
        QCOMPARE(sale->makerModel, QStringLiteral("KD-7"));
        QCOMPARE(read("31 24 Dec not working")->soldOn, QDate(2025, 12, 24)); // not yet this year
        QCOMPARE(read("31 not working")->working, std::optional(false));
        QVERIFY(read("asking £95 mint")->asking);
        QCOMPARE(read("£64 2026-06-21")->soldOn, QDate(2026, 6, 21));
        QVERIFY(!read("cheap"));
        QVERIFY(!read("0"));
        QVERIFY(!read(""));
    }

    void planAndSalesChangeWhatIsShown()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        WindowUnderTest window(*desk);
        auto *page = window.open<MoneyPage>(PageKey::Money);
        auto *table = page->findChild<QTableView *>();
        auto *model = qobject_cast<CostModel *>(table->model());
        const QAbstractItemModelTester tester(model, QAbstractItemModelTester::FailureReportingMode::QtTest);
        const auto rowOf = [&](const QString &text) {
            for (int row = 0; row < model->rowCount(); ++row)
                if (model->index(row, CostModel::What).data().toString().startsWith(text))
                    return row;
            return -1;
        };
        const auto edit = [&](const QString &row, const QString &typed) {
            table->setCurrentIndex(model->index(rowOf(row), CostModel::Planned));
            table->edit(table->currentIndex());
            auto *editor = table->findChild<QLineEdit *>();
            QVERIFY(editor);
            editor->selectAll();
            QTest::keyClicks(editor, typed);
            QTest::keyClick(editor, Qt::Key_Return);
            QTRY_VERIFY(!table->findChild<QLineEdit *>()); // committed when the editor has gone
        };
        edit(QStringLiteral("Parts"), QStringLiteral("12"));
        QCOMPARE(window.work().file().all<Plan>().size(), 1);
        QCOMPARE(window.work().file().all<Plan>().first().parts->minor(), 1200);
        edit(QStringLiteral("Your hours"), QStringLiteral("4 h 30 m"));
        QCOMPARE(window.work().file().all<Plan>().first().minutes, std::optional(270));
        edit(QStringLiteral("Parts"), QStringLiteral("twelve"));
        QCOMPARE(window.work().file().all<Plan>().first().parts->minor(), 1200);
        QVERIFY(!window.workspace().notice()->text().isEmpty());

        auto *line = page->findChild<ComparablesCard *>()->findChild<QLineEdit *>();
        auto *list = page->findChild<ComparablesCard *>()->findChild<QTreeWidget *>();
        for (const auto *typed : {"100 1 Nov working", "120 2 Nov working", "110 3 Nov working"}) {
            QTest::keyClicks(line, QString::fromLatin1(typed));
            QTest::keyClick(line, Qt::Key_Return);
            QVERIFY(line->text().isEmpty());
        }
        QCOMPARE(list->topLevelItemCount(), 3);
        QCOMPARE(list->topLevelItem(0)->text(2), QStringLiteral("working"));
        for (const char *typed : {"112 4 Nov working, lid scratched", "31 5 Nov not working", "asking 140 measured"}) {
            QTest::keyClicks(line, QString::fromLatin1(typed));
            QTest::keyClick(line, Qt::Key_Return);
        }
        const auto condition = [list](const char *price) {
            const auto found = list->findItems(QString::fromLatin1(price), Qt::MatchContains);
            return found.isEmpty() ? QStringLiteral("none") : found.first()->text(2);
        };
        QCOMPARE(condition("112.00"), QStringLiteral("working, lid scratched"));
        QCOMPARE(condition("140.00"), QStringLiteral("measured"));
        QStringList words;
        for (const auto *label : page->findChild<ComparablesCard *>()->findChildren<QLabel *>())
            words << label->text();
        QVERIFY(words.join(QLatin1Char(' ')).contains(QLatin1String("what sellers hope for, not what was paid")));
        for (int column : {0, 3}) // level with the words of their row
            QVERIFY(list->topLevelItem(0)->textAlignment(column) & Qt::AlignVCenter);
        QVERIFY(!model->index(rowOf(QStringLiteral("Resale")), CostModel::ToDate).data().toString().isEmpty());
        window.workspace().activateWindow();
        list->setFocus();
        QTRY_VERIFY(list->hasFocus());
        list->setCurrentItem(list->topLevelItem(0));
        QTest::keyClick(list, Qt::Key_Delete);
        QCOMPARE(window.work().file().all<Comparable>().size(), 5);
        window.work().undo();
        QCOMPARE(window.work().file().all<Comparable>().size(), 6);
        QCOMPARE(unnamedControls(window.workspace()), QStringList());
        Q_UNUSED(unit)
    }
};

QTEST_MAIN(TestViewMoney)
#include "test_view_money.moc"
