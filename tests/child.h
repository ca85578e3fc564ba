#pragma once

#include <QByteArray>
#include <QList>

#include <csignal>
#include <functional>
#include <sys/wait.h>
#include <unistd.h>

namespace ts::testing {

/// A piece of work in a process of its own, with a pipe back. It is forked, so no workbook may be open here at that moment
/// that the work opens too: SQLite's locks do not outlive a fork.
class Child {
public:
    using Say = std::function<void(const QByteArray &)>;

    explicit Child(const std::function<void(const Say &)> &work)
    {
        int ends[2];
        if (::pipe(ends) != 0)
            qFatal("no pipe");
        m_pid = ::fork();
        if (m_pid == 0) {
            ::close(ends[0]);
            work([&ends](const QByteArray &line) {
                const QByteArray whole = line + '\n';
                if (::write(ends[1], whole.constData(), static_cast<size_t>(whole.size())) != whole.size())
                    ::_exit(1);
            });
            ::_exit(0);
        }
        ::close(ends[1]);
        m_from = ends[0];
    }
    ~Child()
    {
        kill();
        ::close(m_from);
    }
    Child(const Child &) = delete;
    Child &operator=(const Child &) = delete;

    /// The next line; empty when there will be no more.
    [[nodiscard]] QByteArray line()
    {
        QByteArray line;
        char c = 0;
        while (::read(m_from, &c, 1) == 1 && c != '\n')
            line += c;
        return line;
    }
    /// All lines up to its end.
    [[nodiscard]] QList<QByteArray> lines()
    {
        QList<QByteArray> all;
        for (QByteArray next = line(); !next.isEmpty(); next = line())
            all << next;
        return all;
    }
    /// kill -9, now.
    void kill()
    {
        if (m_pid <= 0)
            return;
        ::kill(m_pid, SIGKILL);
        ::waitpid(m_pid, nullptr, 0);
        m_pid = 0;
    }

private:
    pid_t m_pid = 0;
    int m_from = -1;
};

} // namespace ts::testing
