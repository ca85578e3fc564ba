// The window over a real workbook, driven as a person would: choose a unit, type a line, undo, see another's change.
#include "tests/workbooks.h"
#include "views/main_window.h"
#include "views/rack_model.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMenuBar>
#include <QTextBrowser>

using namespace ts;
using namespace ts::testing;

class TestViewWindow : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static void addUnits(Desk &desk, int count)
    {
        Change change(QStringLiteral("Units"));
        for (int i = 0; i < count; ++i) {
            Unit unit = desk.maker().fresh<Unit>();
            unit.name = QStringLiteral("Unit <b>%1</b>").arg(i);
            unit.stage = Stage::Bench;
            unit.stageSince = unit.at;
            change.add(unit);
        }
        wantOk(desk.apply(change));
    }

private Q_SLOTS:
    void theRackIsASoundModelAndLoadsByPage()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addUnits(*desk, 450);
        RackModel rack(*desk);
        rack.reload();
        QVERIFY(rack.rowCount() > 0 && rack.rowCount() < 450);
        const QAbstractItemModelTester tester(&rack, QAbstractItemModelTester::FailureReportingMode::QtTest); // it fetches, too
        while (rack.canFetchMore({}))
            rack.fetchMore({});
        QCOMPARE(rack.rowCount(), 450);
        QSet<int> tags;
        for (int row = 0; row < rack.rowCount(); ++row)
            tags << rack.index(row).data(RackModel::Tag).toInt();
        QCOMPARE(tags.size(), 450);
    }

    void jotsUndoesAndSeesAnother()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OpenDesk desk;
        wantOk(desk.create(book));
        addUnits(*desk, 2);
        MainWindow window(*desk);
        window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&window));
        auto *line = window.findChild<QLineEdit *>();
        auto *log = window.findChild<QTextBrowser *>(QStringLiteral("log"));
        QVERIFY(line && log);
        QVERIFY2(log->toPlainText().contains(QLatin1String("Unit <b>")), qPrintable(log->toPlainText())); // escaped, so seen as typed

        QTest::keyClicks(line, QStringLiteral("CN2.4 = 11.92 V want 12 V 5%"));
        QVERIFY(window.findChild<QLabel *>()->text().contains(QLatin1String("within")));
        QTest::keyClick(line, Qt::Key_Return);
        QVERIFY(line->text().isEmpty());
        QVERIFY(log->toPlainText().contains(QLatin1String("CN2.4")));
        for (QAction *action : window.menuBar()->actions().first()->menu()->actions())
            if (action->shortcut() == QKeySequence(QKeySequence::Undo))
                action->trigger();
        QVERIFY(!log->toPlainText().contains(QLatin1String("CN2.4")));

        OpenDesk other; // another program on the same file
        wantOk(other.open(book));
        const auto unit = desk->rack()->first().id;
        Note note = other->maker().fresh<Note>();
        note.unit = unit;
        note.text = QStringLiteral("from the other window");
        wantOk(other->apply(Change(QStringLiteral("Note")).add(note)));
        QTRY_VERIFY_WITH_TIMEOUT(log->toPlainText().contains(QLatin1String("from the other window")), 2000);
    }

    void everyControlHasAName()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addUnits(*desk, 1);
        MainWindow window(*desk);
        window.show();
        const auto widgets = window.findChildren<QWidget *>();
        int walked = 0;
        for (const QWidget *widget : widgets) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || qobject_cast<const QMenuBar *>(widget))
                continue;
            ++walked;
            QVERIFY2(!widget->accessibleName().isEmpty(), widget->metaObject()->className());
        }
        QVERIFY(walked >= 4);
    }
};

QTEST_MAIN(TestViewWindow)
#include "test_view_window.moc"
