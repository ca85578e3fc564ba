// The window on a large workbook: how long until it can be used beside an empty window, a unit opened, the rack scrolled, a key in
// Find, and how much memory. One process is started anew for each cold start; the rest is measured in this one.
#include "model/store/store.h"
#include "tests/bench/timing.h"
#include "views/frame/main_window.h"
#include "views/frame/strip.h"
#include "views/frame/workspace.h"
#include "views/rack/rack_pane.h"
#include "views/settings/memory.h"
#include "views/style/style.h"
#include "views/unit/unit_pane.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QListView>
#include <QPainter>
#include <QProcess>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTextStream>

using namespace ts;

namespace {

// What a frame lasts on a screen of 60 pictures a second.
constexpr double frameMs = 1000.0 / 60;

/// A window that says when it was first painted.
class EmptyWindow : public QWidget {
public:
    bool painted = false;

protected:
    void paintEvent(QPaintEvent *) override { painted = true; }
};

double residentMiB()
{
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly))
        return 0;
    for (const QByteArray &line : status.readAll().split('\n'))
        if (line.startsWith("VmRSS:"))
            return line.mid(6).trimmed().split(' ').first().toDouble() / 1024;
    return 0;
}

void untilIdle()
{
    // Twice, since what a paint asks for comes after it.
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
}

int runEmpty()
{
    EmptyWindow window;
    window.resize(1440, 900);
    window.show();
    while (!window.painted)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QTextStream(stdout) << residentMiB() << '\n';
    return 0;
}

struct Opened {
    SystemClock clock;
    IdMaker ids{clock};
    QTemporaryDir own;
    Memory memory{own.filePath(QStringLiteral("memory.ini"))};
    Style style;
    std::unique_ptr<MainWindow> window;

    Opened(QApplication &application, const QString &book) : style(application)
    {
        const auto open = [this](const QString &name) -> Expected<std::unique_ptr<Desk>> {
            auto store = Store::open(*BookAddress::parse(name), clock.now(), QStringLiteral("bench"));
            if (!store)
                return store.trouble();
            return std::make_unique<Desk>(*std::move(store), ids);
        };
        window = std::make_unique<MainWindow>(Doors{.open = open, .create = open, .demo = open}, style, memory);
        window->resize(1440, 900);
        window->openBook(book);
        window->show();
        untilIdle();
    }
};

int runWhole(QApplication &application, const QString &book)
{
    const Opened opened(application, book);
    if (!opened.window->workspace() || !opened.window->workspace()->work().hasUnit())
        return 1;
    QTextStream(stdout) << residentMiB() << '\n';
    return 0;
}

double lastMiB = 0;

void start(const QStringList &arguments)
{
    QProcess process;
    process.start(QCoreApplication::applicationFilePath(), arguments);
    process.waitForFinished(60000);
    lastMiB = process.readAllStandardOutput().trimmed().toDouble();
    if (process.exitCode() != 0)
        QTextStream(stderr) << "a start failed: " << process.readAllStandardError() << '\n';
}

} // namespace

int main(int argc, char **argv)
{
    QApplication application(argc, argv);
    const QStringList given = QCoreApplication::arguments();
    if (given.value(1) == QLatin1String("--empty"))
        return runEmpty();
    if (given.value(1) == QLatin1String("--whole"))
        return runWhole(application, given.value(2));
    const QString book = given.value(1);
    if (book.isEmpty()) {
        QTextStream(stderr) << "bench_window BOOK\n";
        return 2;
    }

    bench::Table table;
    double empty = 0;
    double whole = 0;
    const auto starts = bench::medians(
        7,
        [&] {
            start({QStringLiteral("--whole"), book});
            whole = lastMiB;
        },
        [&] {
            start({QStringLiteral("--empty")});
            empty = lastMiB;
        });
    table.add(QStringLiteral("cold start to a window that can be used"), starts, 2, QStringLiteral("an empty window"));

    Opened opened(application, book);
    Workspace &workspace = *opened.window->workspace();
    const auto rack = workspace.work().desk().rack({});
    if (!rack || rack->size() < 100)
        return 1;
    qsizetype next = 0;
    const double open = bench::median(60, [&] {
        workspace.work().takeInHand(rack->at((next += 37) % rack->size()).id);
        untilIdle();
    });
    table.add(QStringLiteral("opening a unit, painted (floor: one frame)"), {open, frameMs}, 2, QStringLiteral("one frame"));
    auto *view = workspace.rackPane()->findChild<QAbstractItemView *>();
    int at = 0;
    const double scroll = bench::median(200, [&] {
        view->verticalScrollBar()->setValue(at += 90);
        view->viewport()->repaint();
    });
    table.add(QStringLiteral("a step down the rack, painted"), {scroll, frameMs}, 1, QStringLiteral("one frame"));
    const QStringList words{QStringLiteral("b"), QStringLiteral("be"), QStringLiteral("bel"), QStringLiteral("belt"), QStringLiteral("idl"), QStringLiteral("42")};
    int key = 0;
    const double find = bench::median(60, [&] { (void)workspace.work().desk().search(words.at(key++ % words.size())); });
    table.add(QStringLiteral("a key in Find, its answer"), {find, frameMs}, 1, QStringLiteral("one frame"));
    table.remark(QStringLiteral("Resident memory after the start: %1 MiB; an empty window %2 MiB. Aim: under 200 MiB.").arg(whole, 0, 'f', 0).arg(empty, 0, 'f', 0));
    table.print();
    return 0;
}
