#include "app/commands.h"

#ifdef TURNSCREW_VIEWS
#include "app/window.h"
#endif

#include <QGuiApplication>
#include <QStringDecoder>

#include <functional>

using namespace ts;

namespace {

Exit printHelp(Invocation &invocation)
{
    QTextStream &out = invocation.out();
    out << "turnscrew [BOOK]\n    opens the window\n";
    for (const Command &command : commands())
        out << "turnscrew " << command.name << ' ' << command.usage << "\n    " << command.says << '\n';
    out << "\nBOOK is a file, or postgresql://… for a shared workbook. Exit status: 0 done, 1 refused, 2 wrong usage.\n"
           "Where work can hurt, local codes and licensed practice come first.\n";
    return Exit::Done;
}

Exit printVersion(Invocation &invocation)
{
    invocation.out() << "turnscrew " TURNSCREW_VERSION "\n";
    return Exit::Done;
}

const Command *commandNamed(const QString &name)
{
    for (const Command &command : commands())
        if (command.name == name)
            return &command;
    return nullptr;
}

// What goes wrong reaches the person as one sentence (Trouble); the libraries' own remarks would only stand in its way.
void leaveUnsaid(QtMsgType, const QMessageLogContext &, const QString &) {}

/// What was typed after the program's name. Read before Qt is there: it would take away the arguments that it knows itself, and
/// turn into question marks what is no text.
Expected<QStringList> wordsOf(int argc, char **argv)
{
    QStringList words;
    for (int i = 1; i < argc; ++i) {
        QStringDecoder decoder(QStringConverter::Utf8, QStringConverter::Flag::Stateless); // half a character is none
        const QString word = decoder(argv[i]);
        if (decoder.hasError())
            return Trouble{QStringLiteral("Argument %1 is no text in UTF-8").arg(i), {}, QStringLiteral("type it again")};
        words << word;
    }
    return words;
}

/// A run without a command.
int runPlain(int argc, char **argv, const std::function<Exit(Invocation &)> &say)
{
    const QCoreApplication application(argc, argv);
    Invocation invocation({});
    const Exit exit = say(invocation);
    return static_cast<int>(invocation.finish(exit));
}

int runCommand(const Command &command, const QStringList &arguments, int argc, char **argv)
{
    std::unique_ptr<QCoreApplication> application;
    if (command.draws) {
        qputenv("QT_QPA_PLATFORM", "offscreen"); // commands draw on paper, never on a screen
        application = std::make_unique<QGuiApplication>(argc, argv);
    } else {
        application = std::make_unique<QCoreApplication>(argc, argv);
    }
    Invocation invocation(arguments, command.name, command.usage);
    // A line to jot may hold any word.
    const QString help = QStringLiteral("--help");
    if (command.name == QLatin1String("jot") ? arguments == QStringList{help} : arguments.contains(help)) {
        invocation.out() << "turnscrew " << command.name << ' ' << command.usage << "\n    " << command.says << '\n';
        return static_cast<int>(invocation.finish(Exit::Done));
    }
    const Exit exit = command.run(invocation);
    return static_cast<int>(invocation.finish(exit));
}

} // namespace

int main(int argc, char **argv)
{
    QCoreApplication::setApplicationName(QStringLiteral("turnscrew"));
    QCoreApplication::setApplicationVersion(QStringLiteral(TURNSCREW_VERSION));
    if (qEnvironmentVariableIsEmpty("TURNSCREW_TRACE"))
        qInstallMessageHandler(leaveUnsaid);
    const auto words = wordsOf(argc, argv);
    if (!words)
        return runPlain(argc, argv, [&](Invocation &run) { return run.refuse(words.trouble()); });
    const QString first = words->value(0);
    if (const Command *command = commandNamed(first))
        return runCommand(*command, words->mid(1), argc, argv);
    if (first == QLatin1String("--help") || first == QLatin1String("-h") || first == QLatin1String("help"))
        return runPlain(argc, argv, printHelp);
    if (first == QLatin1String("--version"))
        return runPlain(argc, argv, printVersion);
    if (words->size() > 1 || first.startsWith(QLatin1Char('-')))
        return runPlain(argc, argv, [&](Invocation &run) {
            return run.misuse(QStringLiteral("turnscrew has no command \"%1\"; turnscrew --help lists them.").arg(first));
        });
#ifdef TURNSCREW_VIEWS
    qInstallMessageHandler(nullptr); // a window has no other place for what the libraries have to say
    return runWindow(argc, argv);
#else
    return runPlain(argc, argv, [](Invocation &run) {
        return run.misuse(QStringLiteral("This turnscrew was built without its window; turnscrew --help lists the commands."));
    });
#endif
}
