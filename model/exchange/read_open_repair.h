#pragma once

#include "model/exchange/imported.h"
#include "model/records/maker.h"

#include <QSet>

class QIODevice;

namespace ts {

/// Reads a file in the Open Repair Data Standard (comma-separated, version 0.3, older wordings too). Each record becomes an
/// owner's unit with the stage that its status says, a stage move, and a SourceRecord with every column as it was written. An id
/// that is in `known` is skipped. Unknown words of category, status and barrier are warnings, their text is kept; a wrong date,
/// year or age, a missing id, and an id that stands twice with different content are problems, by line.
[[nodiscard]] Expected<Imported> readOpenRepair(QIODevice &device, const QString &did, const QSet<QString> &known, Maker &maker);

} // namespace ts
