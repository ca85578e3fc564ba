#include "views/frame/main_window.h"

#include "model/desk/dated_backup.h"
#include "views/frame/first_start.h"
#include "views/frame/menus.h"
#include "views/frame/workspace.h"
#include "views/settings/memory.h"
#include "views/style/style.h"
#include "views/widgets/ask.h"
#include "views/widgets/notice_bar.h"

#include <QCloseEvent>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace ts {

MainWindow::MainWindow(Doors doors, Style &style, Memory &memory) : m_doors(std::move(doors)), m_style(style), m_memory(memory)
{
    setMinimumSize(1000, 640);
    resize(1440, 900);
    restoreGeometry(m_memory.state(QStringLiteral("window")));
    showFirstStart();
}

MainWindow::~MainWindow() = default;

void MainWindow::showFirstStart()
{
    m_firstStart = new FirstStart;
    connect(m_firstStart, &FirstStart::newWanted, this, &MainWindow::newDialog);
    connect(m_firstStart, &FirstStart::openWanted, this, &MainWindow::openDialog);
    connect(m_firstStart, &FirstStart::demoWanted, this, &MainWindow::demoDialog);
    connect(m_firstStart, &FirstStart::bookWanted, this, &MainWindow::openBook, Qt::QueuedConnection);
    m_firstStart->setRecent(m_memory.recentBooks());
    setCentralWidget(m_firstStart);
    setWindowTitle(tr("Turnscrew"));
    new Menus(*this, nullptr);
}

void MainWindow::setDesk(std::unique_ptr<Desk> desk, const QString &book)
{
    leaveBook();
    m_firstStart = nullptr;
    m_workspace = new Workspace(*desk, m_style, [this, book] { return m_doors.open(book); });
    m_workspace->work().setMemory(&m_memory);
    setCentralWidget(m_workspace); // drops what was shown before
    m_desk = std::move(desk);
    m_book = book;
    m_workspace->restoreLayout(m_memory.state(QStringLiteral("panes")));
    m_memory.addRecentBook(book);
    setWindowTitle(tr("%1 · Turnscrew").arg(m_desk->name()));
    new Menus(*this, m_workspace);
}

bool MainWindow::through(const Doors::Open &door, const QString &book)
{
    auto desk = door(book);
    if (!desk) {
        refuse(desk.trouble().sentence());
        return false;
    }
    setDesk(*std::move(desk), book);
    return true;
}

bool MainWindow::openBook(const QString &book)
{
    return through(m_doors.open, book);
}

void MainWindow::refuse(const QString &sentence)
{
    if (m_workspace)
        m_workspace->notice()->refuse(sentence);
    else
        m_firstStart->notice()->refuse(sentence);
}

void MainWindow::newDialog()
{
    const QString book = ask::newFile(this, tr("A new workbook"), QDir::home().filePath(tr("bench") + QStringLiteral(".turnscrew")), tr("Workbooks (*.turnscrew)"));
    if (!book.isEmpty())
        through(m_doors.create, book);
}

void MainWindow::openDialog()
{
    const QString book = ask::existingFile(this, tr("Open a workbook"), QDir::homePath(), tr("Workbooks (*.turnscrew);;All files (*)"));
    if (!book.isEmpty())
        openBook(book);
}

void MainWindow::demoDialog()
{
    // One that is there may hold somebody's tries and is opened as they left it.
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    const QString book = folder.filePath(QStringLiteral("demo.turnscrew"));
    if (QFileInfo::exists(book)) {
        openBook(book);
        return;
    }
    if (!folder.mkpath(QStringLiteral("."))) {
        refuse(Trouble{tr("The demo workbook was not made"), tr("the folder %1 cannot be made").arg(folder.path()), {}}.sentence());
        return;
    }
    through(m_doors.demo, book);
}

void MainWindow::leaveBook()
{
    if (!m_workspace)
        return;
    m_workspace->commitEdits();
    m_memory.setState(QStringLiteral("panes"), m_workspace->layoutState());
    backUpOnLeaving();
    delete takeCentralWidget();
    m_workspace = nullptr;
    m_desk.reset();
}

QString MainWindow::backupFolder() const
{
    const QString chosen = m_memory.backupFolder();
    if (!chosen.isEmpty())
        return chosen;
    // Beside the workbook; a shared one has no folder, so its copies go to the user's own.
    return m_desk->isShared() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/backups")
                              : QFileInfo(m_book).absolutePath() + QStringLiteral("/turnscrew-backups");
}

void MainWindow::backUp()
{
    const BackupPlan plan = backupPlan(m_book, backupFolder());
    m_workspace->work().startWork(tr("Making a backup"), [plan, now = m_workspace->work().now()](Desk &desk, const Progress &) -> Expected<QString> {
        const auto file = makeDatedBackup(desk, plan, now);
        return file ? Expected<QString>(tr("A backup was made and checked: %1").arg(*file)) : file.trouble();
    });
}

// A workbook in which nothing was done since it was opened has its copy already.
void MainWindow::backUpOnLeaving()
{
    m_workspace->longWork()->finish();
    if (!m_workspace->work().hasRecorded())
        return;
    const auto file = makeDatedBackup(*m_desk, backupPlan(m_book, backupFolder()), m_workspace->work().now());
    if (!file)
        m_leftUnsaid = file.trouble().sentence();
}

void MainWindow::closeBook()
{
    if (m_workspace && !m_workspace->mayClose([this] { closeBook(); }))
        return;
    // The menu that asked for it belongs to the workbook that goes away.
    QMetaObject::invokeMethod(
        this,
        [this] {
            leaveBook();
            showFirstStart();
            if (!m_leftUnsaid.isEmpty())
                refuse(std::exchange(m_leftUnsaid, {}));
        },
        Qt::QueuedConnection);
}

void MainWindow::setScheme(Scheme scheme)
{
    m_style.setScheme(scheme);
    m_memory.setScheme(scheme);
}

void MainWindow::setTextPercent(int percent)
{
    m_style.setTextPercent(percent);
    m_memory.setTextPercent(m_style.textPercent());
}

void MainWindow::setLargeType(bool large)
{
    m_style.setLargeType(large);
    m_memory.setLargeType(large);
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    // Later, because the answer's own button goes away with the window.
    if (m_workspace && !m_workspace->mayClose([this] { QMetaObject::invokeMethod(this, &QWidget::close, Qt::QueuedConnection); })) {
        event->ignore();
        return;
    }
    m_memory.setState(QStringLiteral("window"), saveGeometry());
    // Out of sight at once: the copy that is made on leaving takes its time where there are many photos.
    hide();
    leaveBook();
    event->accept();
    if (m_leftUnsaid.isEmpty())
        return;
    // Once more, to say that there is no copy; the next time it closes.
    event->ignore();
    showFirstStart();
    refuse(std::exchange(m_leftUnsaid, {}));
    show();
}

} // namespace ts
