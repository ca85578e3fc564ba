#pragma once

#include "model/desk/desk.h"

namespace ts {

struct ExportReport {
    qint64 written = 0; ///< units, or records for json
    QString sentence;   ///< "16 units written to rack.csv"
};

/// Writes the workbook's units or all its records to a file, which appears whole or not at all; an existing file is replaced, but
/// never a workbook. `kind` is one of exportKinds(); `model` ("Maker Model") narrows model-notes to that one.
[[nodiscard]] Expected<ExportReport> exportFile(Desk &desk, const QString &kind, const QString &file, const QString &model = {});

} // namespace ts
