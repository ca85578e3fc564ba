#include "app/window.h"

#include "app/invocation.h"
#include "views/main_window.h"
#include "views/style.h"

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
    Invocation early({});
    if (argc < 2)
        return static_cast<int>(early.misuse(QStringLiteral("Name a workbook to open: turnscrew BOOK. A first one to look at: turnscrew demo BOOK.")));
    if (!hasDisplay())
        return static_cast<int>(early.refuse(Trouble{QStringLiteral("There is no display to open the window on"), {}, QStringLiteral("turnscrew --help lists what works without one")}));
    QApplication application(argc, argv);
    applyStyle(application);
    Invocation run(QCoreApplication::arguments().mid(1));
    auto desk = run.open(run.arguments().value(0));
    if (!desk)
        return static_cast<int>(run.refuse(desk.trouble()));
    MainWindow window(**desk);
    window.show();
    return QApplication::exec();
}

} // namespace ts
