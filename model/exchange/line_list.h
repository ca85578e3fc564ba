#pragma once

#include <QStringList>

namespace ts {

/// What was found wrong or odd in a file, by line: the first twenty, and how many more there are.
class LineList {
public:
    static constexpr qsizetype most = 20;

    /// Line 0 is the file as a whole.
    void add(qint64 line, const QString &text)
    {
        if (m_lines.size() < most)
            m_lines << (line > 0 ? QStringLiteral("line %1: %2").arg(line).arg(text) : text);
        else
            ++m_more;
    }
    [[nodiscard]] bool isEmpty() const { return m_lines.isEmpty(); }
    [[nodiscard]] QStringList lines() const
    {
        return m_more == 0 ? m_lines : m_lines + QStringList{QStringLiteral("and %1 more").arg(m_more)};
    }

private:
    QStringList m_lines;
    qint64 m_more = 0;
};

} // namespace ts
