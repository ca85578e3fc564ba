#include "model/exchange/csv_reader.h"

#include <QIODevice>
#include <QUtf8StringView>

namespace ts {

namespace {

QString asUtf8()
{
    return QStringLiteral("save it as CSV in UTF-8 and import it again");
}

} // namespace

CsvReader::CsvReader(QIODevice &device, QString did, CsvFor reader) : m_device(device), m_did(std::move(did)), m_reader(reader) {}

Trouble CsvReader::refuse(qint64 line, const QString &wrong, const QString &todo) const
{
    return Trouble{m_did, QStringLiteral("line %1: %2").arg(line).arg(wrong), todo};
}

CsvReader::Fill CsvReader::fill()
{
    m_chunk.resize(65536);
    const qint64 got = m_device.read(m_chunk.data(), m_chunk.size());
    m_chunk.resize(got > 0 ? got : 0);
    m_pos = 0;
    if (got < 0 && !m_device.atEnd()) {
        m_wrong = m_device.errorString();
        return Fill::Failed;
    }
    if (!m_started && got > 0) {
        m_started = true;
        if (m_chunk.startsWith("\xFF\xFE") || m_chunk.startsWith("\xFE\xFF")) {
            m_wrong = QStringLiteral("the text is in UTF-16");
            m_todo = asUtf8();
            return Fill::Failed;
        }
        if (m_chunk.startsWith("\xEF\xBB\xBF"))
            m_pos = 3;
        chooseSeparator();
        return m_pos < m_chunk.size() ? Fill::Some : fill();
    }
    return got > 0 ? Fill::Some : Fill::End;
}

void CsvReader::chooseSeparator()
{
    qsizetype commas = 0;
    qsizetype semicolons = 0;
    qsizetype tabs = 0;
    bool quoted = false;
    for (qsizetype i = m_pos; i < m_chunk.size(); ++i) {
        const char c = m_chunk.at(i);
        if (c == '"')
            quoted = !quoted;
        else if (!quoted && (c == '\n' || c == '\r'))
            break;
        else if (!quoted && c == ',')
            ++commas;
        else if (!quoted && c == ';')
            ++semicolons;
        else if (!quoted && c == '\t')
            ++tabs;
    }
    if (semicolons > commas && semicolons >= tabs)
        m_separator = ';';
    else if (tabs > commas)
        m_separator = '\t';
}

bool CsvReader::closeCell()
{
    if (!QUtf8StringView(m_cell).isValidUtf8()) {
        m_wrong = QStringLiteral("the text is not UTF-8");
        m_todo = asUtf8();
        return false;
    }
    if (m_cells.size() == mostColumns) {
        m_wrong = QStringLiteral("there are more than %1 columns").arg(mostColumns);
        return false;
    }
    m_cells << restored(QString::fromUtf8(m_cell), m_reader);
    m_cell.resize(0);
    return true;
}

/// Closes the record's last cell and says whether it was no blank line.
bool CsvReader::closeRecord()
{
    return m_cells.size() > 1 || !m_cells.constFirst().isEmpty() || m_wasQuoted;
}

Expected<bool> CsvReader::endOfFile(At at)
{
    if (at == At::Quoted)
        return refuse(m_quoteLine, QStringLiteral("a quotation mark is opened and never closed"),
                      QStringLiteral("the file may be cut off; look at that line"));
    if (at == At::CellStart && m_cells.isEmpty())
        return false;
    if (!closeCell())
        return refuse(m_recordLine, m_wrong, m_todo);
    return closeRecord();
}

Expected<bool> CsvReader::next()
{
    m_cells.clear();
    m_cell.resize(0);
    m_wasQuoted = false;
    m_recordLine = m_line;
    At at = At::CellStart;
    while (true) {
        if (m_pos >= m_chunk.size()) {
            const Fill filled = fill();
            if (filled == Fill::Failed)
                return refuse(m_line, m_wrong, m_todo);
            if (filled == Fill::End)
                return endOfFile(at);
        }
        const char c = m_chunk.at(m_pos++);
        if (m_afterCr) {
            m_afterCr = false;
            if (c == '\n')
                continue;
        }
        if (c == '\0')
            return refuse(m_line, QStringLiteral("there is a NUL character"),
                          QStringLiteral("this is no plain text; ") + asUtf8());
        if (at == At::Quoted) {
            if (c == '"') {
                at = At::AfterQuote;
                continue;
            }
            m_line += c == '\n' ? 1 : 0;
        } else if (at == At::AfterQuote && c == '"') {
            at = At::Quoted; // "" inside quotation marks is one of them
        } else if (at == At::CellStart && c == '"') {
            at = At::Quoted;
            m_wasQuoted = true;
            m_quoteLine = m_line;
            continue;
        } else if (c == m_separator) {
            if (!closeCell())
                return refuse(m_line, m_wrong, m_todo);
            at = At::CellStart;
            continue;
        } else if (c == '\n' || c == '\r') {
            m_afterCr = c == '\r';
            if (!closeCell())
                return refuse(m_line, m_wrong, m_todo);
            ++m_line;
            if (closeRecord())
                return true;
            m_cells.clear(); // a blank line
            m_recordLine = m_line;
            at = At::CellStart;
            continue;
        } else if (at == At::AfterQuote) {
            return refuse(m_line, QStringLiteral("text follows a closing quotation mark"),
                          QStringLiteral("write a quotation mark inside a cell twice"));
        } else {
            at = At::Plain; // a quotation mark in the middle of a plain cell stands for itself: 12" woofer
        }
        if (m_cell.size() >= longestCell)
            return refuse(at == At::Quoted ? m_quoteLine : m_line, QStringLiteral("a cell is longer than 1 MiB"),
                          QStringLiteral("a quotation mark may be missing; look at that line"));
        m_cell += c;
    }
}

} // namespace ts
