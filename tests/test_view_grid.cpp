// The table that the pages of a unit are edited in: its model under Qt's own tester, and its keys.
#include "tests/grid_under_test.h"
#include "views/style/style.h"
#include "views/widgets/typed.h"

#include <QAbstractItemModelTester>
#include <QMenu>
#include <QRandomGenerator>
#include <QSignalSpy>

using namespace ts;
using namespace ts::testing;

class TestViewGrid : public QObject {
    Q_OBJECT
private:
    static QUuid key(int number) { return QUuid(static_cast<uint>(number), 1, 2, 3, 4, 5, 6, 7, 8, 9, 10); }

    static GridRow record(int number, const QString &text, const QString &second = {})
    {
        GridRow row;
        row.key = key(number);
        GridCell word = typedCell(QStringLiteral("open"), QStringLiteral("open"));
        word.pill = Tone::Neutral;
        row.cells = {typedCell(text), typedCell(second), word};
        return row;
    }

    static GridRow adding()
    {
        GridRow row;
        row.kind = GridRowKind::Adding;
        row.name = QStringLiteral("new");
        row.cells = {typedCell(QStringLiteral("Add one"), {})};
        return row;
    }

    static GridRow group(const QString &name)
    {
        GridRow row;
        row.kind = GridRowKind::Group;
        row.name = name;
        row.cells = {shownCell(name)};
        return row;
    }

    static QList<GridColumn> columns()
    {
        return {{.title = QStringLiteral("Thing"), .stretch = 1},
                {.title = QStringLiteral("Value"), .down = true},
                {.title = QStringLiteral("State"), .choices = {{QStringLiteral("open"), QStringLiteral("open"), u'o'}, {QStringLiteral("shut"), QStringLiteral("shut"), u's'}}}};
    }

    /// A grid over a list that it edits.
    struct Bench {
        Style style{*qobject_cast<QApplication *>(QCoreApplication::instance())};
        GridView grid{style, QStringLiteral("Things"), TestViewGrid::columns()};
        QList<GridRow> rows;
        bool refuses = false;
        int commits = 0;

        explicit Bench(const QList<GridRow> &given) : rows(given)
        {
            grid.setCommit([this](const GridRow &row, int column, const QString &typed) -> std::optional<QUuid> {
                ++commits;
                if (refuses)
                    return std::nullopt;
                QUuid landed = row.key;
                if (row.kind == GridRowKind::Adding) {
                    landed = key(100 + commits);
                    rows.insert(rows.size() - 1, record(100 + commits, typed));
                } else {
                    for (GridRow &each : rows)
                        if (each.key == row.key) {
                            each.cells[column].text = typed;
                            each.cells[column].edit = typed;
                        }
                }
                grid.setRows(rows);
                return landed;
            });
            grid.resize(500, 300);
            grid.setRows(rows);
            grid.show();
            grid.activateWindow();
            [[maybe_unused]] const bool active = QTest::qWaitForWindowActive(&grid);
            grid.setFocus();
        }
        ~Bench() { grid.hide(); }
    };

private Q_SLOTS:
    void rowsComeGoAndMoveSoundly()
    {
        GridModel model(columns());
        const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::QtTest);
        QRandomGenerator dice(7);
        for (int turn = 0; turn < 300; ++turn) {
            QList<int> numbers;
            for (int i = 0; i < 12; ++i)
                if (dice.bounded(3) > 0)
                    numbers.insert(dice.bounded(static_cast<int>(numbers.size()) + 1), i);
            QList<GridRow> rows{group(QStringLiteral("head"))};
            for (const int number : numbers)
                rows << record(number, QString::number(dice.bounded(4)));
            rows << adding();
            // What is followed by its place stays with its record, whatever else changes.
            QList<std::pair<QPersistentModelIndex, QUuid>> followed;
            for (int row = 0; row < model.rowCount(); ++row)
                if (!model.row(row).key.isNull())
                    followed << std::pair{QPersistentModelIndex(model.index(row, 1)), model.row(row).key};
            model.setRows(rows);
            QCOMPARE(model.rows(), rows);
            for (const auto &[index, was] : followed)
                QVERIFY(index.isValid() ? model.row(index.row()).key == was : model.rowOf(was) < 0);
        }
    }

    void enterGoesDownAColumnAndTabAlongARow()
    {
        Bench bench({group(QStringLiteral("head")), record(1, QStringLiteral("a")), record(2, QStringLiteral("b")), group(QStringLiteral("more")), record(3, QStringLiteral("c")), adding()});
        stand(&bench.grid, 1, 1);
        type(QStringLiteral("11"));
        press(Qt::Key_Return);
        type(QStringLiteral("22"));
        press(Qt::Key_Return);
        type(QStringLiteral("33"));
        press(Qt::Key_Return);
        QCOMPARE(reads(&bench.grid, 1, 1), QStringLiteral("11"));
        QCOMPARE(reads(&bench.grid, 2, 1), QStringLiteral("22"));
        QCOMPARE(reads(&bench.grid, 4, 1), QStringLiteral("33"));
        QVERIFY(!openField());

        stand(&bench.grid, 1, 0);
        type(QStringLiteral("z"));
        press(Qt::Key_Tab);
        QVERIFY(openField());
        QCOMPARE(bench.grid.currentIndex().column(), 1);
        press(Qt::Key_Tab); // nothing further in this row: no trap
        QVERIFY(!openField());
        QCOMPARE(QApplication::focusWidget(), &bench.grid);
    }

    void whatIsRefusedStaysOpenAndEscapeLeavesIt()
    {
        Bench bench({record(1, QStringLiteral("a")), adding()});
        bench.refuses = true;
        stand(&bench.grid, 0, 1);
        type(QStringLiteral("rubbish"));
        press(Qt::Key_Return);
        QVERIFY(openField());
        QCOMPARE(openField()->text(), QStringLiteral("rubbish"));
        QVERIFY(openField()->property("wrong").toBool());
        press(Qt::Key_Escape);
        QVERIFY(!openField());
        QCOMPARE(reads(&bench.grid, 0, 1), QString());
        QCOMPARE(bench.commits, 1);
    }

    void leavingAFieldCommitsIt()
    {
        Bench bench({record(1, QStringLiteral("a")), adding()});
        stand(&bench.grid, 0, 1);
        type(QStringLiteral("12"));
        QWidget other;
        QLineEdit field(&other);
        other.show();
        other.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&other));
        field.setFocus();
        QTRY_COMPARE(reads(&bench.grid, 0, 1), QStringLiteral("12"));
        QCOMPARE(bench.commits, 1);
    }

    void nothingTypedRecordsNothing()
    {
        Bench bench({record(1, QStringLiteral("a")), adding()});
        stand(&bench.grid, 0, 0);
        press(Qt::Key_F2);
        QVERIFY(openField());
        press(Qt::Key_Return);
        QCOMPARE(bench.commits, 0);
    }

    void theAddingRowAddsAndGoesOn()
    {
        Bench bench({record(1, QStringLiteral("a")), adding()});
        bench.grid.editAdding();
        type(QStringLiteral("new"));
        press(Qt::Key_Return);
        QCOMPARE(reads(&bench.grid, 1, 0), QStringLiteral("new"));
        QCOMPARE(bench.grid.currentIndex().row(), 1); // on in the row that was added
        QCOMPARE(bench.grid.currentIndex().column(), 1);
        QVERIFY(openField());
        press(Qt::Key_Escape);
        bench.grid.setAddsInARow(true);
        bench.grid.editAdding();
        type(QStringLiteral("x"));
        press(Qt::Key_Return);
        type(QStringLiteral("y"));
        press(Qt::Key_Return);
        QCOMPARE(reads(&bench.grid, 2, 0), QStringLiteral("x"));
        QCOMPARE(reads(&bench.grid, 3, 0), QStringLiteral("y"));
    }

    void wordsAreSetByLetterSpaceAndMenu()
    {
        Bench bench({record(1, QStringLiteral("a")), record(2, QStringLiteral("b"))});
        stand(&bench.grid, 0, 2);
        type(QStringLiteral("s"));
        QCOMPARE(reads(&bench.grid, 0, 2), QStringLiteral("shut"));
        press(Qt::Key_Space);
        QCOMPARE(reads(&bench.grid, 0, 2), QStringLiteral("open"));
        type(QStringLiteral("q")); // no word of that letter, and no field either
        QVERIFY(!openField());
        QMenu *menu = bench.grid.openChoices(bench.grid.currentIndex());
        QVERIFY(menu);
        QCOMPARE(menu->actions().size(), 2);
        menu->actions().at(1)->trigger();
        menu->close();
        QCOMPARE(reads(&bench.grid, 0, 2), QStringLiteral("shut"));
        QMenu *again = bench.grid.openChoices(bench.grid.currentIndex());
        QTest::keyClicks(again, QStringLiteral("O")); // a word's own letter, while the words are open
        QCOMPARE(reads(&bench.grid, 0, 2), QStringLiteral("open"));
        QVERIFY(!again->isVisible());
        bench.grid.setLetterColumn(2);
        stand(&bench.grid, 1, 0);
        type(QStringLiteral("s"));
        QCOMPARE(reads(&bench.grid, 1, 2), QStringLiteral("shut"));
    }

    void anothersChangeLeavesTypingAndPlaceAlone()
    {
        Bench bench({record(1, QStringLiteral("a")), record(2, QStringLiteral("b")), adding()});
        stand(&bench.grid, 1, 1);
        type(QStringLiteral("4"));
        bench.rows = {record(9, QStringLiteral("theirs")), record(2, QStringLiteral("b too")), adding()};
        bench.grid.setRows(bench.rows);
        type(QStringLiteral("2"));
        QVERIFY(openField());
        QCOMPARE(openField()->text(), QStringLiteral("42"));
        press(Qt::Key_Tab);
        QCOMPARE(bench.grid.currentKey(), key(2));
        QCOMPARE(reads(&bench.grid, 1, 1), QStringLiteral("42"));
        QCOMPARE(reads(&bench.grid, 1, 0), QStringLiteral("b too"));
        // The record in whose row the place is goes away: no place is left hanging.
        bench.rows = {record(9, QStringLiteral("theirs"))};
        bench.grid.setRows(bench.rows);
        QCOMPARE(bench.grid.currentKey(), key(9));
    }

    void itIsAsHighAsItsRows()
    {
        Bench bench({record(1, QStringLiteral("a"))});
        const int one = bench.grid.sizeHint().height();
        bench.rows << record(2, QStringLiteral("b")) << record(3, QStringLiteral("some words that go on for so long that they need a second line and a third one, too, in this narrow column"));
        bench.grid.setRows(bench.rows);
        QVERIFY(bench.grid.sizeHint().height() > one + 2 * bench.grid.rowHeight(0));
        QVERIFY(bench.grid.rowHeight(2) > bench.grid.rowHeight(0));
    }

    void whatIsTypedIsReadAsMeant()
    {
        const QDate today(2026, 11, 25); // a Wednesday
        QCOMPARE(typed::whole(QStringLiteral("12"), QStringLiteral("count"), 1, 20).value(), 12);
        for (const char *wrong : {"", "0", "21", "-3", "1.5", "many"})
            QVERIFY2(!typed::whole(QString::fromLatin1(wrong), QStringLiteral("count"), 1, 20), wrong);
        QVERIFY(!typed::wholeOrNone(QStringLiteral(" "), QStringLiteral("count"), 1, 20).value());
        QCOMPARE(*typed::shareOrNone(QStringLiteral("40 %"), QStringLiteral("share")).value(), 0.4);
        QCOMPARE(*typed::shareOrNone(QStringLiteral("12,5"), QStringLiteral("share")).value(), 0.125);
        QVERIFY(!typed::shareOrNone(QStringLiteral("101"), QStringLiteral("share")));
        QCOMPARE(typed::dayOrNone(QStringLiteral("28 Nov"), today).value(), QDate(2026, 11, 28));
        QCOMPARE(typed::dayOrNone(QStringLiteral("Friday"), today).value(), QDate(2026, 11, 27));
        QVERIFY(!typed::dayOrNone(QString(), today).value().isValid());
        QVERIFY(!typed::dayOrNone(QStringLiteral("soon"), today));
        QCOMPARE(*typed::minutesOrNone(QStringLiteral("20")).value(), 20);
        QCOMPARE(*typed::minutesOrNone(QStringLiteral("1h20")).value(), 80);
        QVERIFY(!typed::minutesOrNone(QStringLiteral("a while")));
    }
};

QTEST_MAIN(TestViewGrid)
#include "test_view_grid.moc"
