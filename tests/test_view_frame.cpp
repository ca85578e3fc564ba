// The window around the workbook: first start, opening and leaving, backups, lists in and out, history.
#include "model/desk/dated_backup.h"
#include "tests/window_under_test.h"
#include "views/frame/first_start.h"
#include "views/frame/long_work.h"
#include "views/places/exchange_place.h"
#include "views/places/history_place.h"
#include "views/settings/setting_field.h"
#include "views/widgets/ask.h"
#include "views/widgets/notice_bar.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTreeView>

#include <list>

using namespace ts;
using namespace ts::testing;

namespace {

QPushButton *buttonNamed(QWidget &parent, const QString &text)
{
    for (auto *button : parent.findChildren<QPushButton *>())
        if (button->text() == text)
            return button;
    return nullptr;
}

} // namespace

class TestViewFrame : public QObject {
    Q_OBJECT
    Workbooks m_books;
    SetClock m_clock{QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC)};
    std::list<IdMaker> m_ids;
    std::unique_ptr<Style> m_style;

    Expected<std::unique_ptr<Desk>> through(bool make, const QString &book)
    {
        const auto address = BookAddress::parse(book);
        if (!address)
            return address.trouble();
        auto store = make ? Store::create(*address, m_clock.now(), QStringLiteral("tester")) : Store::open(*address, m_clock.now(), QStringLiteral("tester"));
        if (!store)
            return store.trouble();
        return std::make_unique<Desk>(*std::move(store), m_ids.emplace_back(m_clock));
    }
    Doors doors()
    {
        const auto make = [this](const QString &book) { return through(true, book); };
        return {.open = [this](const QString &book) { return through(false, book); }, .create = make, .demo = make};
    }

private Q_SLOTS:
    void initTestCase() { m_style = std::make_unique<Style>(*qobject_cast<QApplication *>(QCoreApplication::instance())); }

    void theFirstStartOffersThreeThingsAndNothingElse()
    {
        Memory memory(m_books.path(QStringLiteral("first.ini")));
        MainWindow window(doors(), *m_style, memory);
        window.show();
        QVERIFY(!window.workspace());
        auto *first = window.findChild<FirstStart *>();
        QVERIFY(first);
        QCOMPARE(first->findChildren<QPushButton *>().size(), 4); // and "Put away" of the bar that says what went wrong
        const QString book = m_books.path(QStringLiteral("bench.turnscrew"));
        ask::answerFor(&window, [&](const QString &) { return book; });
        buttonNamed(window, QStringLiteral("New workbook…"))->click();
        QVERIFY(window.workspace());
        QVERIFY(window.windowTitle().startsWith(QLatin1String("bench.turnscrew")));
        QCOMPARE(memory.recentBooks(), QStringList{book});
        QCOMPARE(unnamedControls(window), QStringList());
    }

    void whatCannotBeOpenedIsSaidAndNothingIsLost()
    {
        Memory memory(m_books.path(QStringLiteral("refused.ini")));
        MainWindow window(doors(), *m_style, memory);
        window.show();
        const QString good = m_books.path(QStringLiteral("good.turnscrew"));
        QVERIFY(!window.openBook(m_books.path(QStringLiteral("nowhere.turnscrew"))));
        QVERIFY(!window.findChild<FirstStart *>()->notice()->text().isEmpty());
        QVERIFY(memory.recentBooks().isEmpty());
        { QVERIFY(through(true, good)); }
        QVERIFY(window.openBook(good));
        QFile foreign(m_books.path(QStringLiteral("notes.txt")));
        QVERIFY(foreign.open(QIODevice::WriteOnly));
        foreign.write("shopping list\n");
        foreign.close();
        QVERIFY(!window.openBook(foreign.fileName()));
        QVERIFY(!window.workspace()->notice()->text().isEmpty());
        QVERIFY(window.windowTitle().startsWith(QLatin1String("good"))); // still the one that was open
    }

    void leavingMakesACheckedCopyWhereSomethingWasDone()
    {
        Memory memory(m_books.path(QStringLiteral("backup.ini")));
        const QString folder = m_books.path(QStringLiteral("copies"));
        memory.setBackupFolder(folder);
        const QString book = m_books.path(QStringLiteral("work.turnscrew"));
        { QVERIFY(through(true, book)); }
        const BackupPlan plan = backupPlan(book, folder);
        {
            MainWindow window(doors(), *m_style, memory);
            QVERIFY(window.openBook(book));
            window.close();
        }
        QVERIFY(datedBackups(plan).isEmpty()); // nothing was done
        for (int i = 0; i < 12; ++i) {
            m_clock.advance(60);
            MainWindow window(doors(), *m_style, memory);
            QVERIFY(window.openBook(book));
            QVERIFY(window.workspace()->work().record(window.workspace()->work().settingChange(QStringLiteral("worker"), QString::number(i))));
            window.close();
        }
        const QStringList copies = datedBackups(plan);
        QCOMPARE(copies.size(), 10);
        const auto newest = through(false, copies.first());
        QVERIFY(newest);
        QCOMPARE((*newest)->benchFile()->setting(QStringLiteral("worker")), QStringLiteral("11"));
        QVERIFY((*newest)->verify()->isEmpty());
    }

    void theWindowIsGoneBeforeTheCopyIsMade()
    {
        Memory memory(m_books.path(QStringLiteral("gone.ini")));
        const QString folder = m_books.path(QStringLiteral("gone-copies"));
        memory.setBackupFolder(folder);
        const QString book = m_books.path(QStringLiteral("gone.turnscrew"));
        { QVERIFY(through(true, book)); }
        const BackupPlan plan = backupPlan(book, folder);
        const auto open = [&](MainWindow &window) {
            window.show();
            return window.openBook(book) && window.workspace()->work().record(window.workspace()->work().settingChange(QStringLiteral("worker"), folder));
        };
        {
            MainWindow window(doors(), *m_style, memory);
            QVERIFY(open(window));
            struct Hidden : QObject {
                std::function<void()> then;
                bool eventFilter(QObject *, QEvent *event) override
                {
                    if (event->type() == QEvent::Hide)
                        then();
                    return false;
                }
            } hidden;
            qsizetype copies = -1;
            hidden.then = [&] { copies = datedBackups(plan).size(); };
            window.installEventFilter(&hidden);
            QVERIFY(window.close());
            QCOMPARE(copies, 0); // none yet when it went out of sight
            QCOMPARE(datedBackups(plan).size(), 1);
            window.removeEventFilter(&hidden);
        }
        // Where no copy can be made the window comes back once to say so.
        QFile taken(m_books.path(QStringLiteral("no-folder")));
        QVERIFY(taken.open(QIODevice::WriteOnly));
        memory.setBackupFolder(taken.fileName());
        MainWindow window(doors(), *m_style, memory);
        window.show();
        QVERIFY(window.openBook(book));
        QVERIFY(window.workspace()->work().record(window.workspace()->work().settingChange(QStringLiteral("worker"), QStringLiteral("R. M."))));
        QVERIFY(!window.close());
        QVERIFY(window.isVisible() && !window.workspace());
        const QString said = qobject_cast<FirstStart *>(window.centralWidget())->notice()->text();
        QVERIFY2(said.contains(QStringLiteral("No backup was made")), qPrintable(said));
        QVERIFY(window.close());
        QVERIFY(!window.isVisible());
    }

    void theUnitIsMovedAndItsDetailsAreOpenedByKeys()
    {
        Memory memory(m_books.path(QStringLiteral("keys.ini")));
        MainWindow window(doors(), *m_style, memory);
        window.show();
        const QString book = m_books.path(QStringLiteral("keys.turnscrew"));
        {
            const auto desk = through(true, book);
            QVERIFY(desk);
            benchUnit(**desk, QStringLiteral("Pellworth KD-7"));
        }
        QVERIFY(window.openBook(book));
        const auto press = [&](const QKeySequence &key) {
            int found = 0;
            for (QAction *action : window.findChildren<QAction *>())
                if (action->shortcut() == key) {
                    ++found;
                    action->trigger();
                }
            return found;
        };
        Workplace &work = window.workspace()->work();
        QCOMPARE(press(QKeySequence(QStringLiteral("Alt+3"))), 1); // and of nothing else
        QCOMPARE(work.file().unit.stage, Stage::Shelved);
        QCOMPARE(press(QKeySequence(QStringLiteral("Alt+6"))), 1);
        QCOMPARE(work.file().unit.stage, Stage::Proving);
        window.workspace()->showPlace(PlaceKey::Ledger);
        QCOMPARE(press(QKeySequence(QStringLiteral("Ctrl+D"))), 1);
        QCOMPARE(window.workspace()->place(), PlaceKey::Units);
        QCOMPARE(window.workspace()->unitPane()->currentPage(), PageKey::Details);
        QCOMPARE(press(QKeySequence(QStringLiteral("Ctrl+D"))), 1);
        QCOMPARE(window.workspace()->unitPane()->currentPage(), PageKey::Log);
        // The card that F1 opens names them.
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        QCoreApplication::processEvents();
        press(QKeySequence(Qt::Key_F1));
        bool named = false;
        for (const QLabel *each : window.findChildren<QLabel *>())
            named = named || (each->isVisibleTo(&window) && each->text().contains(QLatin1String("Alt+1 to Alt+9")) && each->text().contains(QLatin1String("Ctrl+D")));
        QVERIFY(named);
    }

    void listsGoInBesideTheWindow()
    {
        Memory memory(m_books.path(QStringLiteral("lists.ini")));
        MainWindow window(doors(), *m_style, memory);
        window.show();
        const QString book = m_books.path(QStringLiteral("lists.turnscrew"));
        { QVERIFY(through(true, book)); }
        QVERIFY(window.openBook(book));
        Workspace *workspace = window.workspace();
        workspace->showPlace(PlaceKey::Exchange);
        auto *place = workspace->findChild<ExchangePlace *>();
        auto *kind = place->findChild<QComboBox *>();
        kind->setCurrentIndex(kind->findData(QStringLiteral("open-repair-data")));
        place->setFile(QStringLiteral(SOURCE_DIR "/tests/data/open_repair_small.csv"));
        const auto run = [&](const QString &button) {
            buttonNamed(*place, button)->click();
            QTRY_VERIFY_WITH_TIMEOUT(!workspace->longWork()->isBusy(), 20000);
        };
        run(QStringLiteral("Only look"));
        QCOMPARE(*workspace->work().desk().count(description<Unit>()), 0);
        run(QStringLiteral("Take in"));
        const qint64 units = *workspace->work().desk().count(description<Unit>());
        QVERIFY(units > 0);
        QTRY_VERIFY_WITH_TIMEOUT(workspace->work().hasUnit() || units > 0, 1000);
        run(QStringLiteral("Take in"));
        QCOMPARE(*workspace->work().desk().count(description<Unit>()), units); // the same file again adds nothing
        workspace->work().undo();
        QCOMPARE(*workspace->work().desk().count(description<Unit>()), 0);
        place->setFile(m_books.path(QStringLiteral("missing.csv")));
        run(QStringLiteral("Take in"));
        QTRY_VERIFY(!workspace->notice()->text().isEmpty());
    }

    void theHistoryTellsWhatWasDone()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        benchUnit(*desk, QStringLiteral("Tarrick T-9 tuner"));
        WindowUnderTest window(*desk);
        window.workspace().showPlace(PlaceKey::History);
        auto *view = window.workspace().findChild<HistoryPlace *>()->findChild<QTreeView *>();
        QCOMPARE(view->model()->rowCount(), 1);
        QVERIFY(window.work().record(window.work().settingChange(QStringLiteral("worker"), QStringLiteral("R. M."))));
        QTRY_COMPARE(view->model()->rowCount(), 2);
        window.work().undo();
        QTRY_VERIFY(view->model()->index(0, 2).data().toString().contains(QLatin1String("worker")));
        QCOMPARE(unnamedControls(window.workspace()), QStringList());
    }

    void aWrongSettingIsRefusedBesideIt()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        window.workspace().showPlace(PlaceKey::Settings);
        SettingField *rate = nullptr;
        for (auto *field : window.workspace().findChildren<SettingField *>())
            if (auto *line = field->findChild<QLineEdit *>(); line && line->accessibleName().startsWith(QLatin1String("What an hour")))
                rate = field;
        QVERIFY(rate);
        auto *line = rate->findChild<QLineEdit *>();
        QTest::keyClicks(line, QStringLiteral("dear"));
        QTest::keyClick(line, Qt::Key_Return);
        QVERIFY(window.work().bench().setting(QStringLiteral("hourly_rate")).isEmpty());
        line->selectAll();
        QTest::keyClicks(line, QStringLiteral("12.00"));
        QTest::keyClick(line, Qt::Key_Return);
        QCOMPARE(window.work().bench().setting(QStringLiteral("hourly_rate")), QStringLiteral("12.00"));
        QCOMPARE(unnamedControls(window.workspace()), QStringList());
    }
};

QTEST_MAIN(TestViewFrame)
#include "test_view_frame.moc"
