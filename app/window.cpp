#include "app/window.h"

#include "app/demo_book.h"
#include "app/invocation.h"
#include "views/frame/main_window.h"
#include "views/settings/memory.h"
#include "views/style/style.h"

#include <QApplication>

namespace ts {

namespace {

bool hasDisplay()
{
    for (const auto *name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (!qEnvironmentVariableIsEmpty(name))
            return true;
    return false;
}

} // namespace

int runWindow(int &argc, char **argv)
{
    if (!hasDisplay())
        return static_cast<int>(Invocation({}).refuse(
            Trouble{QStringLiteral("There is no display to open the window on"), {}, QStringLiteral("turnscrew --help lists what works without one")}));
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("turnscrew"));
    QApplication::setDesktopFileName(QStringLiteral("turnscrew"));
    Invocation run(QCoreApplication::arguments().mid(1));
    Memory memory;
    Style style(application);
    style.setScheme(memory.scheme());
    style.setTextPercent(memory.textPercent());
    const Doors doors{.open = [&run](const QString &book) { return run.open(book); },
                      .create = [&run](const QString &book) { return run.create(book); },
                      .demo = [&run](const QString &book) -> Expected<std::unique_ptr<Desk>> {
                          if (const auto made = makeDemoBook(book, {}); !made)
                              return made.trouble();
                          return run.open(book);
                      }};
    MainWindow window(doors, style, memory);
    const QString book = run.arguments().value(0);
    if (!book.isEmpty())
        window.openBook(book); // says in the window why not, and offers another
    window.show();
    return QApplication::exec();
}

} // namespace ts
