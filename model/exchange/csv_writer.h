#pragma once

#include "model/exchange/csv_cell.h"

#include <QByteArray>
#include <QStringList>

class QIODevice;

namespace ts {

/// Writes comma-separated values as RFC 4180 has them, in UTF-8, each cell defused. A failed write is the device's to tell.
class CsvWriter {
public:
    CsvWriter(QIODevice &device, CsvFor reader) : m_device(device), m_reader(reader) {}
    ~CsvWriter() { flush(); }
    CsvWriter(const CsvWriter &) = delete;
    CsvWriter &operator=(const CsvWriter &) = delete;

    void row(const QStringList &cells);
    void flush();

private:
    QIODevice &m_device;
    CsvFor m_reader;
    QByteArray m_buffer;
};

} // namespace ts
