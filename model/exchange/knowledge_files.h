#pragma once

#include "model/desk/desk.h"
#include "model/exchange/imported.h"

#include <QIODevice>

namespace ts {

/// Model notes from a file: what the workbook's notes on the same maker and model do not have yet, or notes of their own.
[[nodiscard]] Expected<Imported> readNotesFile(Desk &desk, QIODevice &device, const QString &did);
/// Everything known of all models (or of the one that reads "Maker Model", case aside); refused where there is none. Answers how
/// many.
[[nodiscard]] Expected<qint64> writeNotesFile(Desk &desk, QIODevice &device, const QString &model = {});

/// Tables of usual causes from a file: kept in the workbook, each in place of the one of its category.
[[nodiscard]] Expected<Imported> readTablesFile(Desk &desk, QIODevice &device, const QString &did);
/// The tables in force, of all categories. Answers how many.
[[nodiscard]] Expected<qint64> writeTablesFile(Desk &desk, QIODevice &device);

} // namespace ts
