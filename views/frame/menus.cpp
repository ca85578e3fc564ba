#include "views/frame/menus.h"

#include "views/clock/clock_box.h"
#include "views/frame/main_window.h"
#include "views/frame/strip.h"
#include "views/frame/workspace.h"
#include "views/photos/photo_desk.h"
#include "views/log/log_page.h"
#include "views/rack/rack_pane.h"
#include "views/places/parts_store_place.h"
#include "views/settings/memory.h"
#include "views/store/write_paper.h"
#include "views/style/style.h"
#include "views/unit/unit_pane.h"
#include "views/widgets/stage_names.h"

#include <QActionGroup>
#include <QApplication>
#include <QMenuBar>
#include <QMessageBox>

namespace ts {

Menus::Menus(MainWindow &window, Workspace *workspace) : QObject(workspace ? static_cast<QObject *>(workspace) : &window), m_window(window), m_workspace(workspace)
{
    QMenuBar *bar = window.menuBar();
    bar->clear();
    makeWorkbook(bar->addMenu(tr("&Workbook")));
    if (m_workspace) {
        makeUnit(bar->addMenu(tr("&Unit")));
        makeBench(bar->addMenu(tr("&Bench")));
        makeMoney(bar->addMenu(tr("&Money")));
        makePaper(bar->addMenu(tr("&Paper")));
    }
    makeView(bar->addMenu(tr("&View")));
    makeHelp(bar->addMenu(tr("&Help")));
}

void Menus::makeWorkbook(QMenu *menu)
{
    menu->addAction(tr("&New…"), QKeySequence::New, &m_window, &MainWindow::newDialog);
    menu->addAction(tr("&Open…"), QKeySequence::Open, &m_window, &MainWindow::openDialog);
    if (const QStringList books = m_window.memory().recentBooks(); !books.isEmpty()) {
        auto *recent = menu->addMenu(tr("Opened &before"));
        for (const QString &book : books)
            recent->addAction(QString(book).replace(QLatin1Char('&'), QLatin1String("&&")), this, [this, book] {
                // The menu goes with the workbook that is left.
                QMetaObject::invokeMethod(&m_window, [window = &m_window, book] { window->openBook(book); }, Qt::QueuedConnection);
            });
    }
    menu->addAction(tr("Look at the &demo"), &m_window, &MainWindow::demoDialog);
    if (m_workspace) {
        menu->addSeparator();
        m_undo = menu->addAction(m_window.style().icon(QStringLiteral("edit-undo")), tr("&Undo"), QKeySequence::Undo, &m_workspace->work(), &Workplace::undo);
        m_redo = menu->addAction(m_window.style().icon(QStringLiteral("edit-redo")), tr("&Redo"), QKeySequence::Redo, &m_workspace->work(), &Workplace::redo);
        connect(&m_workspace->work(), &Workplace::journalChanged, this, &Menus::refreshUndo);
        refreshUndo();
        menu->addAction(tr("&History"), QKeySequence(Qt::CTRL | Qt::Key_H), this, [this] { m_workspace->showPlace(PlaceKey::History); });
        menu->addSeparator();
        menu->addAction(tr("Lists &in and out"), QKeySequence(Qt::CTRL | Qt::Key_I), this, [this] { m_workspace->showPlace(PlaceKey::Exchange); });
        menu->addAction(tr("Make a &backup now"), QKeySequence(Qt::CTRL | Qt::Key_B), &m_window, &MainWindow::backUp);
        menu->addAction(tr("Look whether it is &sound"), this, [this] {
            m_workspace->work().startWork(tr("Looking through the workbook"), [](Desk &desk, const Progress &) -> Expected<QString> {
                const auto found = desk.verify();
                if (!found)
                    return found.trouble();
                return found->isEmpty() ? Expected<QString>(tr("%1 is sound.").arg(desk.name()))
                                        : Trouble{tr("%1 is not sound").arg(desk.name()), found->join(QStringLiteral("; ")), tr("keep it and open the newest backup")};
            });
        });
        menu->addAction(tr("Se&ttings"), QKeySequence(Qt::CTRL | Qt::Key_Comma), this, [this] { m_workspace->showPlace(PlaceKey::Settings); });
        menu->addSeparator();
        menu->addAction(tr("&Close workbook"), QKeySequence::Close, &m_window, &MainWindow::closeBook);
    }
    menu->addSeparator();
    menu->addAction(tr("&Leave Turnscrew"), QKeySequence::Quit, &m_window, &QWidget::close);
}

void Menus::refreshUndo()
{
    const auto show = [](QAction *action, const QString &word, const Expected<std::optional<QString>> &sentence) {
        const bool there = sentence && sentence->has_value();
        action->setEnabled(there);
        QString said = there ? **sentence : QString();
        if (said.size() > 60)
            said = said.left(58) + QStringLiteral("…");
        action->setText(there ? tr("%1: %2").arg(word, said.replace(QLatin1Char('&'), QLatin1String("&&"))) : word);
    };
    show(m_undo, tr("&Undo"), m_workspace->work().desk().undoSentence());
    show(m_redo, tr("&Redo"), m_workspace->work().desk().redoSentence());
}

void Menus::makeUnit(QMenu *menu)
{
    menu->addAction(tr("&Take in a unit…"), QKeySequence(Qt::CTRL | Qt::Key_T), m_workspace, &Workspace::takeIn);
    menu->addAction(tr("&Find anything"), QKeySequence(Qt::CTRL | Qt::Key_K), m_workspace->strip(), &Strip::focusFind);
    menu->addAction(tr("&Narrow the rack"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_F), m_workspace->rackPane(), &RackPane::focusFilter);
    menu->addSeparator();
    menu->addAction(tr("The unit’s &details"), QKeySequence(Qt::CTRL | Qt::Key_D), this, [this] {
        m_workspace->showPlace(PlaceKey::Units);
        m_workspace->unitPane()->toggleDetails();
    });
    QMenu *stages = menu->addMenu(tr("Move to &stage"));
    for (const auto &[stage, word] : Words<Stage>::list)
        stages->addAction(shown::stage(stage), QKeySequence(QStringLiteral("Alt+%1").arg(static_cast<int>(stage) + 1)), this, [this, stage = stage] {
            m_workspace->showPlace(PlaceKey::Units);
            m_workspace->unitPane()->askStage(stage);
        });
    menu->addSeparator();
    menu->addAction(tr("&Photos"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), this, [this] { m_workspace->showPlace(PlaceKey::Photos); });
    menu->addAction(tr("&Add photos…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A), m_workspace->photos(), &PhotoDesk::chooseFiles);
    menu->addAction(tr("&Watched folder…"), m_workspace->photos(), &PhotoDesk::chooseWatchedFolder);
    menu->addAction(tr("Tag &label…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L), this, [this] { writeLabels(m_workspace->work(), m_workspace, false); });
    menu->addAction(tr("P&rint the tag label…"), this, [this] { printLabel(m_workspace->work(), m_workspace); });
    auto *boxes = menu->addMenu(tr("Labels of several &boxes"));
    for (int count = 2; count <= 6; ++count)
        boxes->addAction(tr("%1 boxes…").arg(count), this, [this, count] { writeLabels(m_workspace->work(), m_workspace, false, count); });
    menu->addAction(tr("Bag labels of what is &off…"), this, [this] { writeLabels(m_workspace->work(), m_workspace, true); });
    menu->addAction(tr("&Move log entries to another unit…"), QKeySequence(Qt::CTRL | Qt::Key_M), this, [this] {
        m_workspace->showPlace(PlaceKey::Units);
        if (auto *log = qobject_cast<LogPage *>(m_workspace->unitPane()->page(m_workspace->unitPane()->currentPage())))
            log->askWhereTo();
        else
            m_workspace->unitPane()->showPage(PageKey::Log); // where they can be chosen
    });
    menu->addSeparator();
    menu->addAction(tr("N&ext tag"), QKeySequence(Qt::ALT | Qt::Key_Down), m_workspace->rackPane(), [this] { m_workspace->rackPane()->step(1); });
    menu->addAction(tr("&Previous tag"), QKeySequence(Qt::ALT | Qt::Key_Up), m_workspace->rackPane(), [this] { m_workspace->rackPane()->step(-1); });
}

void Menus::makeBench(QMenu *menu)
{
    menu->addAction(tr("What to &order"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O), this, [this] {
        m_workspace->showPlace(PlaceKey::PartsStore);
        if (auto *store = m_workspace->findChild<PartsStorePlace *>())
            store->showOrder(true);
    });
    menu->addAction(tr("Start or stop the &clock"), QKeySequence(Qt::Key_F9), m_workspace->clock(), &ClockBox::toggle);
    menu->addAction(tr("Bench &sums"), QKeySequence(Qt::Key_F8), this, [this] { m_workspace->showPlace(PlaceKey::Sums); });
    menu->addAction(tr("Bench &today: what to work on next"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D), this, [this] { m_workspace->showPlace(PlaceKey::BenchToday); });
}

void Menus::makeMoney(QMenu *menu)
{
    menu->addAction(tr("&Cost against resale"), this, [this] { m_workspace->unitPane()->showPage(PageKey::Money); });
    menu->addAction(tr("&Ledger"), this, [this] { m_workspace->showPlace(PlaceKey::Ledger); });
}

void Menus::makePaper(QMenu *menu)
{
    menu->addAction(tr("&Restoration sheet"), QKeySequence::Print, this, [this] { m_workspace->unitPane()->showPage(PageKey::Handover); });
    menu->addAction(tr("&Order list of this unit…"), this, [this] {
        if (m_workspace->work().hasUnit())
            writeOrderList(m_workspace->work(), m_workspace, &m_workspace->work().file().unit);
    });
    menu->addAction(tr("Order list of &all units…"), this, [this] { writeOrderList(m_workspace->work(), m_workspace, nullptr); });
}

void Menus::makeView(QMenu *menu)
{
    if (m_workspace) {
        for (int i = 0; i <= static_cast<int>(PageKey::Handover); ++i) {
            const auto key = static_cast<PageKey>(i);
            menu->addAction(UnitPane::pageName(key), QKeySequence(QStringLiteral("Ctrl+%1").arg(i + 1)), this, [this, key] {
                m_workspace->showPlace(PlaceKey::Units);
                m_workspace->unitPane()->showPage(key);
            });
        }
        menu->addSeparator();
        for (const auto place : {PlaceKey::Units, PlaceKey::ModelNotes, PlaceKey::PartsStore, PlaceKey::Ledger, PlaceKey::Overview})
            menu->addAction(Strip::placeName(place), this, [this, place] { m_workspace->showPlace(place); });
        menu->addSeparator();
    }
    auto *schemes = new QActionGroup(this);
    const auto scheme = [&](const QString &name, Scheme value) {
        auto *action = menu->addAction(name, this, [this, value] { m_window.setScheme(value); });
        action->setCheckable(true);
        action->setChecked(m_window.style().scheme() == value);
        schemes->addAction(action);
    };
    scheme(tr("Colours of the &system"), Scheme::FollowSystem);
    scheme(tr("&Light"), Scheme::Light);
    scheme(tr("&Dark"), Scheme::Dark);
    menu->addSeparator();
    menu->addAction(tr("L&arger text"), QKeySequence::ZoomIn, this, [this] { m_window.setTextPercent(m_window.style().textPercent() + 10); });
    menu->addAction(tr("S&maller text"), QKeySequence::ZoomOut, this, [this] { m_window.setTextPercent(m_window.style().textPercent() - 10); });
    auto *large = menu->addAction(tr("Large type for the &bench"), QKeySequence(Qt::CTRL | Qt::Key_L), &m_window, &MainWindow::setLargeType);
    large->setCheckable(true);
    large->setChecked(m_window.style().largeType());
    menu->addAction(tr("&Usual text size"), QKeySequence(Qt::CTRL | Qt::Key_0), this, [this] { m_window.setTextPercent(100); });
}

void Menus::makeHelp(QMenu *menu)
{
    if (m_workspace)
        menu->addAction(tr("&What is this page for?"), QKeySequence(Qt::Key_F1), m_workspace, &Workspace::explain);
    menu->addAction(tr("&About Turnscrew"), this, [this] {
        QMessageBox::about(&m_window, tr("About Turnscrew"),
                           tr("<b>Turnscrew %1</b><p>The workbook of a restorer of used electronics.</p><p>Free software under the GNU General Public License, version 3 or later. "
                              "It comes without any warranty. What it says about safety reminds you; your local codes and licensed practice come first.</p>")
                               .arg(QStringLiteral(TURNSCREW_VERSION)));
    });
}

} // namespace ts
