#pragma once

#include <QString>

namespace ts {

/// Who a CSV file is for, which says what in it would be run.
enum class CsvFor {
    Spreadsheet, ///< every cell that starts like a formula is defused, plain numbers excepted
    Standard     ///< a data standard: plain prose after a leading + or - stands as it is, for it can call nothing
};

/// Whether a spreadsheet would take the cell as a formula: it starts with = + - @, a tab, a carriage return or a line feed
/// (OWASP, "CSV Injection"), or a full-width form of the four signs. Plain numbers such as "-3.5" are none.
[[nodiscard]] bool wouldRun(QStringView cell, CsvFor reader);
/// The cell as it is safe to write: an apostrophe before what would run, and before an apostrophe that would be taken for ours.
[[nodiscard]] QString defused(const QString &cell, CsvFor reader);
/// Takes back exactly what defused() put in: restored(defused(x)) is x for every text.
[[nodiscard]] QString restored(const QString &cell, CsvFor reader);

} // namespace ts
