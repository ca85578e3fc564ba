#include "model/exchange/whole_file.h"

#include <cerrno>

namespace ts {

WholeFile::WholeFile(const QString &file) : m_file(file) {}

bool WholeFile::start()
{
    if (m_file.open(QIODevice::WriteOnly | QIODevice::Unbuffered))
        return open(QIODevice::WriteOnly | QIODevice::Unbuffered);
    setErrorString(m_file.errorString());
    return false;
}

qint64 WholeFile::writeData(const char *data, qint64 size)
{
    m_buffer.append(data, size);
    if (m_buffer.size() > 65536)
        flush();
    return m_failed ? -1 : size;
}

void WholeFile::flush()
{
    if (!m_failed && !m_buffer.isEmpty()) {
        errno = 0;
        if (m_file.write(m_buffer) != m_buffer.size()) {
            m_failed = true;
            setErrorString(errno != 0 ? qt_error_string(errno) : QStringLiteral("the disk is full"));
        }
    }
    m_buffer.clear();
}

bool WholeFile::commit()
{
    flush();
    close();
    if (m_failed) {
        m_file.cancelWriting();
        m_file.commit(); // takes the copy away
        return false;
    }
    if (m_file.commit())
        return true;
    setErrorString(m_file.errorString());
    return false;
}

} // namespace ts
