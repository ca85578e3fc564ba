#pragma once

#include "model/exchange/csv_cell.h"
#include "model/values/expected.h"

#include <QByteArray>
#include <QStringList>

class QIODevice;

namespace ts {

/// Reads comma-separated values record by record (RFC 4180), holding no more than one record. Takes CRLF, LF and CR line ends,
/// a byte order mark, and a comma, semicolon or tab, whichever stands most often in the header line. Cells that were defused on
/// the way out are restored. Refuses, by line: what is not UTF-8, a NUL, a cell over longestCell, a quotation mark that is not
/// closed.
class CsvReader {
public:
    static constexpr qsizetype longestCell = 1 << 20; ///< bytes; a photo does not belong into a list
    static constexpr qsizetype mostColumns = 1000;

    /// `did` opens every refusal: "Cannot import units.csv".
    CsvReader(QIODevice &device, QString did, CsvFor reader = CsvFor::Spreadsheet);

    /// Goes to the next record that is not a blank line; false at the end.
    [[nodiscard]] Expected<bool> next();
    [[nodiscard]] const QStringList &cells() const { return m_cells; }
    [[nodiscard]] qint64 line() const { return m_recordLine; } ///< on which the record began, from 1
    [[nodiscard]] QChar separator() const { return QLatin1Char(m_separator); }

private:
    enum class At { CellStart, Plain, Quoted, AfterQuote };
    enum class Fill { Some, End, Failed };
    Fill fill();
    void chooseSeparator();
    [[nodiscard]] bool closeCell();
    [[nodiscard]] bool closeRecord();
    [[nodiscard]] Trouble refuse(qint64 line, const QString &wrong, const QString &todo = {}) const;
    [[nodiscard]] Expected<bool> endOfFile(At at);

    QIODevice &m_device;
    QString m_did;
    CsvFor m_reader;
    QByteArray m_chunk;
    qsizetype m_pos = 0;
    QByteArray m_cell;
    QStringList m_cells;
    char m_separator = ',';
    bool m_started = false;
    bool m_afterCr = false;
    bool m_wasQuoted = false;
    qint64 m_line = 1;
    qint64 m_recordLine = 1;
    qint64 m_quoteLine = 1;
    QString m_wrong; ///< why closeCell or fill failed
    QString m_todo;
};

} // namespace ts
