#include "app/commands.h"

#ifdef TURNSCREW_VIEWS
#include "app/window.h"
#endif

#include <QGuiApplication>

#include <cstring>

using namespace ts;

namespace {

void printHelp(Invocation &invocation)
{
    QTextStream &out = invocation.out();
    out << "turnscrew [BOOK]\n    opens the window\n";
    for (const Command &command : commands())
        out << "turnscrew " << command.name << ' ' << command.usage << "\n    " << command.says << '\n';
    out << "\nBOOK is a file, or postgresql://… for a shared workbook. Exit status: 0 done, 1 refused, 2 wrong usage.\n"
           "Where work can hurt, local codes and licensed practice come first.\n";
    out.flush();
}

const Command *commandNamed(const char *name)
{
    for (const Command &command : commands())
        if (command.name == QLatin1String(name))
            return &command;
    return nullptr;
}

// What goes wrong reaches the person as one sentence (Trouble); the libraries' own remarks would only stand in its way.
void leaveUnsaid(QtMsgType, const QMessageLogContext &, const QString &) {}

int runCommand(const Command &command, int &argc, char **argv)
{
    if (qEnvironmentVariableIsEmpty("TURNSCREW_TRACE"))
        qInstallMessageHandler(leaveUnsaid);
    std::unique_ptr<QCoreApplication> application;
    if (command.draws) {
        qputenv("QT_QPA_PLATFORM", "offscreen"); // commands draw on paper, never on a screen
        application = std::make_unique<QGuiApplication>(argc, argv);
    } else {
        application = std::make_unique<QCoreApplication>(argc, argv);
    }
    const QStringList arguments = QCoreApplication::arguments().mid(2);
    Invocation invocation(arguments);
    if (arguments.contains(QLatin1String("--help")) && command.name != QLatin1String("jot")) {
        invocation.out() << "turnscrew " << command.name << ' ' << command.usage << "\n    " << command.says << '\n';
        return 0;
    }
    return static_cast<int>(command.run(invocation));
}

} // namespace

int main(int argc, char **argv)
{
    QCoreApplication::setApplicationName(QStringLiteral("turnscrew"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TURNSCREW_VERSION));
    if (argc > 1) {
        if (const Command *command = commandNamed(argv[1]))
            return runCommand(*command, argc, argv);
        if (std::strcmp(argv[1], "--help") == 0 || std::strcmp(argv[1], "-h") == 0 || std::strcmp(argv[1], "help") == 0) {
            const QCoreApplication application(argc, argv);
            Invocation invocation({});
            printHelp(invocation);
            return 0;
        }
        if (std::strcmp(argv[1], "--version") == 0) {
            const QCoreApplication application(argc, argv);
            Invocation invocation({});
            invocation.out() << "turnscrew " TURNSCREW_VERSION "\n";
            return 0;
        }
        if (argc > 2 || argv[1][0] == '-') {
            const QCoreApplication application(argc, argv);
            Invocation invocation({});
            return static_cast<int>(invocation.misuse(QStringLiteral("turnscrew has no command \"%1\"; turnscrew --help lists them.").arg(QString::fromLocal8Bit(argv[1]))));
        }
    }
#ifdef TURNSCREW_VIEWS
    return runWindow(argc, argv);
#else
    const QCoreApplication application(argc, argv);
    Invocation invocation({});
    return static_cast<int>(invocation.misuse(QStringLiteral("This turnscrew was built without its window; turnscrew --help lists the commands.")));
#endif
}
