#pragma once

#include <QDir>
#include <QProcess>
#include <QTemporaryDir>

#include <unistd.h>

namespace ts::testing {

/// A PostgreSQL server of one test's own, to be stopped under its feet. It listens on a socket in a temporary folder alone.
class Server {
public:
    /// Whether a server's programs are installed.
    [[nodiscard]] static bool installed() { return !programs().isEmpty(); }

    Server()
    {
        if (::geteuid() == 0) // PostgreSQL refuses to run as root
            run(QStringLiteral("/bin/chown"), {account(), m_folder.path()}, false);
        QFile::setPermissions(m_folder.path(), QFile::Permissions(0x7755));
        m_made = run(programs() + QStringLiteral("/initdb"), {QStringLiteral("-D"), data(), QStringLiteral("-U"), QStringLiteral("turnscrew"), QStringLiteral("-A"),
                                                            QStringLiteral("trust"), QStringLiteral("-E"), QStringLiteral("UTF8"), QStringLiteral("--no-sync"),
                                                            QStringLiteral("--locale=C.UTF-8")});
    }
    ~Server() { stop(QStringLiteral("immediate")); }
    Server(const Server &) = delete;
    Server &operator=(const Server &) = delete;

    [[nodiscard]] bool start()
    {
        return m_made
            && run(programs() + QStringLiteral("/pg_ctl"),
                   {QStringLiteral("-D"), data(), QStringLiteral("-l"), m_folder.filePath(QStringLiteral("log")), QStringLiteral("-w"), QStringLiteral("-o"),
                    QStringLiteral("-c listen_addresses='' -c unix_socket_directories='%1'").arg(m_folder.path()), QStringLiteral("start")});
    }
    /// "fast" says good-bye to the sessions, "immediate" is as good as pulling the plug.
    bool stop(const QString &how)
    {
        return run(programs() + QStringLiteral("/pg_ctl"), {QStringLiteral("-D"), data(), QStringLiteral("-m"), how, QStringLiteral("-w"), QStringLiteral("stop")});
    }
    [[nodiscard]] QString address() const { return QStringLiteral("postgresql:///postgres?user=turnscrew&host=") + m_folder.path(); }

private:
    [[nodiscard]] QString data() const { return m_folder.filePath(QStringLiteral("data")); }
    [[nodiscard]] static QString account() { return QDir(QStringLiteral("/var/lib/postgresql")).exists() ? QStringLiteral("postgres") : QStringLiteral("nobody"); }
    [[nodiscard]] static QString programs()
    {
        const QDir versions(QStringLiteral("/usr/lib/postgresql"));
        const auto names = versions.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::Reversed);
        for (const QString &name : names)
            if (QFile::exists(versions.filePath(name + QStringLiteral("/bin/initdb"))))
                return versions.filePath(name + QStringLiteral("/bin"));
        return {};
    }
    static bool run(const QString &program, const QStringList &arguments, bool asServer = true)
    {
        QProcess process;
        process.setWorkingDirectory(QStringLiteral("/"));
        process.setStandardOutputFile(QProcess::nullDevice());
        process.setStandardErrorFile(QProcess::nullDevice());
        if (asServer && ::geteuid() == 0)
            process.start(QStringLiteral("runuser"), QStringList{QStringLiteral("-u"), account(), QStringLiteral("--"), program} + arguments);
        else
            process.start(program, arguments);
        return process.waitForFinished(60'000) && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
    }

    QTemporaryDir m_folder;
    bool m_made = false;
};

} // namespace ts::testing
