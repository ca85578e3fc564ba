// The whole job in the real window, by keyboard: a unit taken in, ten lines jotted, a photo, a proof, the buyer's sheet; undone,
// and found again after a restart. And nobody is kept in a control: Tab walks every page and comes back.
#include "tests/media_samples.h"
#include "tests/window_under_test.h"
#include "views/handover/handover_page.h"
#include "views/log/jot_bar.h"
#include "views/log/jot_line.h"
#include "views/log/log_page.h"
#include "views/photos/photo_desk.h"
#include "views/proving/proving_page.h"
#include "views/widgets/ask.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/notice_bar.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

#include <list>

using namespace ts;
using namespace ts::testing;

namespace {

/// Presses a key of the menu: the action that has it as its shortcut.
bool pressShortcut(MainWindow &window, const QKeySequence &keys)
{
    for (QAction *menu : window.menuBar()->actions())
        for (QAction *action : menu->menu()->actions())
            if (action->shortcut() == keys && action->isEnabled()) {
                action->trigger();
                return true;
            }
    return false;
}

void type(QWidget *at, const QString &text)
{
    QTest::keyClicks(at, text);
}

} // namespace

class TestViewMainJob : public QObject {
    Q_OBJECT
    Workbooks m_books;
    SetClock m_clock{QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC)};
    std::list<IdMaker> m_ids;
    std::unique_ptr<Style> m_style;

    Doors doors()
    {
        const auto through = [this](bool make, const QString &book) -> Expected<std::unique_ptr<Desk>> {
            const auto address = BookAddress::parse(book);
            if (!address)
                return address.trouble();
            auto store = make ? Store::create(*address, m_clock.now(), QStringLiteral("tester")) : Store::open(*address, m_clock.now(), QStringLiteral("tester"));
            if (!store)
                return store.trouble();
            return std::make_unique<Desk>(*std::move(store), m_ids.emplace_back(m_clock));
        };
        return {.open = [through](const QString &book) { return through(false, book); },
                .create = [through](const QString &book) { return through(true, book); },
                .demo = [through](const QString &book) { return through(true, book); }};
    }

private Q_SLOTS:
    void initTestCase() { m_style = std::make_unique<Style>(*qobject_cast<QApplication *>(QCoreApplication::instance())); }

    void fromTakingInToTheSheet()
    {
        const QString book = m_books.path(QStringLiteral("bench.turnscrew"));
        const QString sheet = m_books.path(QStringLiteral("sheet.html"));
        Memory memory(m_books.path(QStringLiteral("memory.ini")));
        int recorded = 0;
        {
            MainWindow window(doors(), *m_style, memory);
            window.resize(1440, 900);
            window.show();
            QVERIFY(QTest::qWaitForWindowExposed(&window));
            ask::answerFor(&window, [&](const QString &title) { return title.contains(QLatin1String("workbook")) ? book : sheet; });
            window.newDialog();
            QVERIFY(window.workspace());
            Workplace &work = window.workspace()->work();
            window.activateWindow();

            // Take in: a name that names its category, too; Enter; Enter opens it.
            QVERIFY(pressShortcut(window, QKeySequence(Qt::CTRL | Qt::Key_T)));
            type(window.focusWidget(), QStringLiteral("Pellworth KD-7 cassette deck"));
            QTest::keyClick(window.focusWidget(), Qt::Key_Return);
            QTest::keyClick(window.focusWidget(), Qt::Key_Return);
            QVERIFY(work.hasUnit());
            QCOMPARE(work.file().unit.tag, 1);
            QCOMPARE(work.file().unit.category, Category::CassetteDeck);
            QVERIFY(work.file().all<Proof>().size() > 5); // its category's

            QVERIFY(pressShortcut(window, QKeySequence(QStringLiteral("Ctrl+1"))));
            auto *log = qobject_cast<LogPage *>(window.workspace()->unitPane()->page(PageKey::Log));
            for (const auto *line : {"saw take-up reel stops after a few seconds", "take-up torque = 14 gf.cm want 35..65 found", "think clutch felt glazed 40%",
                                     "off lid 5 screws M3x8 tray A1", "did cleaned and re-greased the take-up clutch 20m", "fitted idler tyre 1.20", "was clutch felt",
                                     "take-up torque = 47 gf.cm want 35..65 after", "cleared take-up reel stops", "back lid"}) {
                m_clock.advance(60);
                type(log->jotBar()->line(), QString::fromLatin1(line));
                QTest::keyClick(log->jotBar()->line(), Qt::Key_Return);
                QVERIFY2(log->jotBar()->line()->text().isEmpty(), line);
                ++recorded;
            }
            QCOMPARE(work.file().all<Reading>().size(), 2);
            QCOMPARE(work.file().all<Symptom>().first().state, SymptomState::Cleared);
            QCOMPARE(work.file().all<TeardownItem>().first().state, TeardownState::Back);

            // A photo, as if it had been dropped.
            QFile picture(m_books.path(QStringLiteral("arrived.png")));
            QImage image(64, 48, QImage::Format_RGB32);
            image.fill(Qt::darkGray);
            QVERIFY(image.save(picture.fileName()));
            window.workspace()->findChild<PhotoDesk *>()->bring(photoFiles({picture.fileName()}));
            QTRY_COMPARE_WITH_TIMEOUT(work.file().all<Photo>().size(), 1, 10000);

            // A proof, by its key.
            QVERIFY(pressShortcut(window, QKeySequence(QStringLiteral("Ctrl+6"))));
            auto *proving = qobject_cast<ProvingPage *>(window.workspace()->unitPane()->page(PageKey::Proving));
            proving->table()->setFocus();
            proving->table()->setCurrentIndex(proving->table()->model()->index(1, 0));
            type(proving->table(), QStringLiteral("p"));
            const auto passed = [&] {
                int count = 0;
                for (const Proof &proof : work.file().all<Proof>())
                    count += proof.cameOut == ProofOutcome::Passed ? 1 : 0;
                return count;
            };
            QCOMPARE(passed(), 1);

            // The sheet.
            QVERIFY(pressShortcut(window, QKeySequence(QStringLiteral("Ctrl+8"))));
            qobject_cast<HandoverPage *>(window.workspace()->unitPane()->page(PageKey::Handover))->writeWebPage();
            QFile written(sheet);
            QVERIFY(written.open(QIODevice::ReadOnly));
            const QByteArray html = written.readAll();
            QVERIFY(html.contains("Pellworth KD-7 cassette deck"));
            QVERIFY(html.contains("47"));
            QTRY_COMPARE(work.file().all<Paper>().size(), 1);
            QVERIFY2(window.workspace()->notice()->text().isEmpty(), qPrintable(window.workspace()->notice()->text()));
            window.close();
        }
        // After a restart everything is there, and the last change can still be taken back, and done again.
        MainWindow window(doors(), *m_style, memory);
        window.show();
        QVERIFY(window.openBook(book));
        Workplace &work = window.workspace()->work();
        QVERIFY(work.hasUnit());
        QCOMPARE(work.file().all<Reading>().size(), 2);
        QCOMPARE(work.file().all<Paper>().size(), 1);
        QVERIFY(pressShortcut(window, QKeySequence::Undo));
        QVERIFY(work.file().all<Paper>().isEmpty());
        QVERIFY(pressShortcut(window, QKeySequence::Undo)); // the proof
        QVERIFY(pressShortcut(window, QKeySequence::Redo));
        QVERIFY(pressShortcut(window, QKeySequence::Redo));
        QCOMPARE(work.file().all<Paper>().size(), 1);
        QVERIFY(work.desk().verify()->isEmpty());
        QCOMPARE(recorded, 10);
    }

    void noShortcutMeansTwoThings()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.path(QStringLiteral("keys.turnscrew"))));
        Memory memory(m_books.path(QStringLiteral("keys.ini")));
        MainWindow window(doors(), *m_style, memory);
        QVERIFY(window.openBook(m_books.path(QStringLiteral("keys.turnscrew"))));
        QHash<QString, QString> taken;
        for (QAction *menu : window.menuBar()->actions())
            for (QAction *action : menu->menu()->actions())
                for (const QKeySequence &keys : action->shortcuts()) {
                    QVERIFY2(!taken.contains(keys.toString()), qPrintable(keys.toString() + QStringLiteral(": ") + taken.value(keys.toString()) + QStringLiteral(" and ") + action->text()));
                    taken.insert(keys.toString(), action->text());
                }
        QVERIFY(taken.size() > 15);
    }

    void tabWalksEveryPageAndKeepsNobody()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        benchUnit(*desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        WindowUnderTest window(*desk);
        window.workspace().activateWindow();
        for (int key = 0; key <= static_cast<int>(PageKey::Handover); ++key) {
            window.workspace().unitPane()->showPage(static_cast<PageKey>(key));
            QWidget *first = window.workspace().window()->focusWidget();
            QVERIFY(first);
            QTest::keyClick(first, Qt::Key_Tab);
            QWidget *start = window.workspace().window()->focusWidget();
            QSet<QWidget *> seen;
            bool back = false;
            for (int i = 0; i < 300 && !back; ++i) {
                QWidget *at = window.workspace().window()->focusWidget();
                QVERIFY(at);
                QTest::keyClick(at, Qt::Key_Tab);
                QWidget *next = window.workspace().window()->focusWidget();
                seen << next;
                back = next == start && seen.size() > 3;
            }
            QVERIFY2(back, qPrintable(UnitPane::pageName(static_cast<PageKey>(key)) + QStringLiteral(" keeps the keyboard")));
        }
    }
};

QTEST_MAIN(TestViewMainJob)
#include "test_view_main_job.moc"
