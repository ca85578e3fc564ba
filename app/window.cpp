#include "app/window.h"

#include "app/demo_book.h"
#include "app/invocation.h"
#include "model/store/store.h"
#include "views/frame/main_window.h"
#include "views/settings/language.h"
#include "views/settings/memory.h"
#include "views/style/style.h"
#include "views/widgets/calm_wheel.h"

#include <QApplication>
#include <QIcon>

#include <list>
#include <mutex>

namespace ts {

namespace {

bool hasDisplay()
{
    for (const auto *name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (!qEnvironmentVariableIsEmpty(name))
            return true;
    return false;
}

/// Opens desks for the window and for the threads beside it, each with a maker of ids of its own.
class Desks {
public:
    [[nodiscard]] Expected<std::unique_ptr<Desk>> open(const QString &book) { return through(&Store::open, book); }
    [[nodiscard]] Expected<std::unique_ptr<Desk>> create(const QString &book) { return through(&Store::create, book); }

private:
    using Door = Expected<std::unique_ptr<Store>> (*)(const BookAddress &, const QDateTime &, const QString &);
    [[nodiscard]] Expected<std::unique_ptr<Desk>> through(Door door, const QString &book)
    {
        const auto address = BookAddress::parse(book);
        if (!address)
            return address.trouble();
        auto store = door(*address, m_clock.now(), Invocation::who());
        if (!store)
            return store.trouble();
        const std::lock_guard lock(m_mutex);
        return std::make_unique<Desk>(*std::move(store), m_ids.emplace_back(m_clock));
    }

    SystemClock m_clock;
    std::mutex m_mutex;
    std::list<IdMaker> m_ids; // as long as the program runs; the desks refer to them
};

} // namespace

int runWindow(int &argc, char **argv)
{
    if (!hasDisplay())
        return static_cast<int>(Invocation({}).refuse(
            Trouble{QStringLiteral("There is no display to open the window on"), {}, QStringLiteral("turnscrew --help lists what works without one")}));
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("turnscrew"));
    QApplication::setDesktopFileName(QStringLiteral("turnscrew"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icon/turnscrew.svg")));
    CalmWheel calm;
    application.installEventFilter(&calm);
    Memory memory;
    const Language language(memory.language());
    Style style(application);
    style.setScheme(memory.scheme());
    style.setTextPercent(memory.textPercent());
    style.setLargeType(memory.largeType());
    Desks desks;
    const Doors doors{.open = [&desks](const QString &book) { return desks.open(book); },
                      .create = [&desks](const QString &book) { return desks.create(book); },
                      .demo = [&desks](const QString &book) -> Expected<std::unique_ptr<Desk>> {
                          if (const auto made = makeDemoBook(book, {}); !made)
                              return made.trouble();
                          return desks.open(book);
                      }};
    MainWindow window(doors, style, memory);
    const QString book = QCoreApplication::arguments().value(1);
    if (!book.isEmpty())
        window.openBook(book); // says in the window why not, and offers another
    window.show();
    return QApplication::exec();
}

} // namespace ts
