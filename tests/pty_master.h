#pragma once

// The far end of a serial line without hardware: a pseudo-terminal (openpty, 4.3BSD and glibc), whose near end a program opens like any
// serial device.
#include <QIODevice>
#include <QSocketNotifier>

#include <cerrno>
#include <fcntl.h>
#include <memory>
#include <pty.h>
#include <termios.h>
#include <unistd.h>

namespace ts::testing {

class PtyMaster : public QIODevice {
public:
    PtyMaster()
    {
        char name[128] = {};
        int slave = -1;
        if (openpty(&m_master, &slave, name, nullptr, nullptr) != 0)
            return;
        termios raw{};
        tcgetattr(slave, &raw);
        cfmakeraw(&raw); // nothing of the terminal comes between the two ends
        tcsetattr(slave, TCSANOW, &raw);
        m_slave = slave;
        m_name = QString::fromLocal8Bit(name);
        fcntl(m_master, F_SETFL, fcntl(m_master, F_GETFL) | O_NONBLOCK);
        m_notifier = std::make_unique<QSocketNotifier>(m_master, QSocketNotifier::Read);
        connect(m_notifier.get(), &QSocketNotifier::activated, this, [this] { takeBytes(); });
        open(QIODevice::ReadWrite | QIODevice::Unbuffered);
    }
    ~PtyMaster() override
    {
        pull();
        QIODevice::close();
    }
    /// What the program opens: "/dev/pts/4".
    [[nodiscard]] QString name() const { return m_name; }
    /// The cable is pulled.
    void pull()
    {
        m_notifier.reset();
        for (int *end : {&m_slave, &m_master})
            if (*end >= 0)
                ::close(std::exchange(*end, -1));
    }
    [[nodiscard]] bool isSequential() const override { return true; }
    [[nodiscard]] qint64 bytesAvailable() const override { return m_bytes.size() + QIODevice::bytesAvailable(); }

protected:
    qint64 readData(char *to, qint64 most) override
    {
        const auto count = std::min<qint64>(most, m_bytes.size());
        std::copy_n(m_bytes.constData(), count, to);
        m_bytes.remove(0, count);
        return count;
    }
    qint64 writeData(const char *from, qint64 count) override { return m_master < 0 ? -1 : ::write(m_master, from, static_cast<size_t>(count)); }

private:
    void takeBytes()
    {
        char bytes[512];
        const auto count = ::read(m_master, bytes, sizeof bytes);
        if (count <= 0)
            return;
        m_bytes.append(bytes, count);
        Q_EMIT readyRead();
    }
    int m_master = -1;
    int m_slave = -1;
    QString m_name;
    QByteArray m_bytes;
    std::unique_ptr<QSocketNotifier> m_notifier;
};

} // namespace ts::testing
