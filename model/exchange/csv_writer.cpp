#include "model/exchange/csv_writer.h"

#include <QIODevice>

namespace ts {

void CsvWriter::row(const QStringList &cells)
{
    for (qsizetype i = 0; i < cells.size(); ++i) {
        if (i > 0)
            m_buffer += ',';
        QByteArray cell = defused(cells.at(i), m_reader).toUtf8();
        const bool quoted = cell.contains(',') || cell.contains('"') || cell.contains('\n') || cell.contains('\r') ||
                            (cells.size() == 1 && cell.isEmpty()); // a blank line would be no row
        if (!quoted) {
            m_buffer += cell;
            continue;
        }
        m_buffer += '"';
        m_buffer += cell.replace("\"", "\"\"");
        m_buffer += '"';
    }
    m_buffer += "\r\n";
    if (m_buffer.size() > 65536)
        flush();
}

void CsvWriter::flush()
{
    m_device.write(m_buffer);
    m_buffer.clear();
}

} // namespace ts
