// Pictures of every page of the demo workbook, for looking at and for the README: shots FOLDER [light|dark] [WIDTHxHEIGHT] [PERCENT].
// The clock stands at the demo's last evening, so the same pictures come out each time.
#include "model/demo/demo.h"
#include "model/store/store.h"
#include "views/frame/main_window.h"
#include "views/frame/workspace.h"
#include "views/settings/memory.h"
#include "views/style/style.h"
#include "views/unit/unit_pane.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTextStream>

using namespace ts;

namespace {

void settle(int ms)
{
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < ms)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

QString slug(QString name)
{
    return name.toLower().replace(QLatin1Char(' '), QLatin1Char('-'));
}

int failed(const QString &why)
{
    QTextStream(stderr) << why << '\n';
    return 1;
}

} // namespace

int main(int argc, char **argv)
{
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("turnscrew"));
    const QStringList given = QCoreApplication::arguments();
    const QDir folder(given.value(1, QStringLiteral(".")));
    const bool dark = given.value(2) == QLatin1String("dark");
    const QStringList size = given.value(3, QStringLiteral("1440x900")).split(QLatin1Char('x'));
    if (!folder.mkpath(QStringLiteral(".")))
        return failed(QStringLiteral("Cannot make ") + folder.path());

    const QTemporaryDir own;
    const QString book = own.filePath(QStringLiteral("demo.turnscrew"));
    SetClock clock(QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC));
    IdMaker ids(clock, 1);
    const auto address = BookAddress::parse(book);
    auto store = Store::create(*address, clock.now(), QStringLiteral("demo"));
    if (!store)
        return failed(store.trouble().sentence());
    auto desk = std::make_unique<Desk>(*std::move(store), ids);
    if (auto played = playDemo(*desk, clock); !played)
        return failed(played.trouble().sentence());
    clock.set(QDateTime({2026, 11, 25}, {15, 5}, Qt::UTC));

    QLocale::setDefault(QLocale(QStringLiteral("en_GB")));
    Memory memory(own.filePath(QStringLiteral("memory.ini")));
    Style style(application);
    style.setScheme(dark ? Scheme::Dark : Scheme::Light);
    style.setTextPercent(given.value(4, QStringLiteral("100")).toInt());
    const auto closed = [](const QString &) -> Expected<std::unique_ptr<Desk>> { return Trouble{QStringLiteral("No workbook is made here"), {}, {}}; };
    const auto again = [&clock](const QString &name) -> Expected<std::unique_ptr<Desk>> {
        static IdMaker others(clock, 2);
        auto opened = Store::open(*BookAddress::parse(name), clock.now(), QStringLiteral("demo"));
        if (!opened)
            return opened.trouble();
        return std::make_unique<Desk>(*std::move(opened), others);
    };
    MainWindow window({.open = again, .create = closed, .demo = closed}, style, memory);
    window.resize(size.value(0).toInt(), size.value(1).toInt());
    window.show();
    const QString mark = QStringLiteral("%1-%2").arg(dark ? QStringLiteral("dark") : QStringLiteral("light"), size.value(0));
    int taken = 0;
    const auto take = [&](const QString &name) {
        settle(450);
        if (window.grab().save(folder.filePath(name + QLatin1Char('-') + mark + QStringLiteral(".png"))))
            ++taken;
    };
    take(QStringLiteral("first-start"));
    window.setDesk(std::move(desk), book);
    Workspace *workspace = window.workspace();
    if (const auto unit = workspace->work().desk().unitByTag(42))
        workspace->work().takeInHand(*unit);
    for (int key = 0; key <= static_cast<int>(PageKey::Details); ++key) {
        workspace->unitPane()->showPage(static_cast<PageKey>(key));
        take(slug(UnitPane::pageName(static_cast<PageKey>(key))));
    }
    const QList<std::pair<PlaceKey, QString>> places{{PlaceKey::ModelNotes, QStringLiteral("model-notes")}, {PlaceKey::PartsStore, QStringLiteral("parts-store")},
                                                    {PlaceKey::Ledger, QStringLiteral("ledger")},          {PlaceKey::Overview, QStringLiteral("overview")},
                                                    {PlaceKey::History, QStringLiteral("history")},        {PlaceKey::Exchange, QStringLiteral("lists")},
                                                    {PlaceKey::Settings, QStringLiteral("settings")}};
    for (const auto &[place, name] : places) {
        workspace->showPlace(place);
        take(name);
    }
    workspace->takeIn();
    take(QStringLiteral("take-in"));
    QTextStream(stdout) << taken << " pictures in " << folder.path() << '\n';
    return taken > 0 ? 0 : 1;
}
