#pragma once

#include "model/desk/desk.h"

namespace ts {

struct ExportWish {
    QString model; ///< "Maker Model" narrows model-notes to that one
    int year = 0;  ///< of the books (xlsx, ledger-csv); 0: all years
};

struct ExportReport {
    qint64 written = 0; ///< units, or records for json
    QString sentence;   ///< "16 units written to rack.csv"
};

/// Writes the workbook's units or all its records to a file, which appears whole or not at all; an existing file is replaced, but
/// never a workbook. `kind` is one of exportKinds().
[[nodiscard]] Expected<ExportReport> exportFile(Desk &desk, const QString &kind, const QString &file, const ExportWish &wish = {});

} // namespace ts
