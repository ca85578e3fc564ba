#pragma once

#include "views/log/log_entry.h"

#include <QSet>

namespace ts {

/// The rows of a unit's log: a heading for each day and its entries, oldest first; of some lanes alone, or of all where none
/// is named. Photos that follow each other on a day are one row.
[[nodiscard]] QList<LogEntry> logRows(const UnitFile &file, const BenchFile &bench, QDate today, const QSet<Lane> &only);
/// The lanes that the unit has entries of, in their order.
[[nodiscard]] QList<Lane> lanesOf(const UnitFile &file, const BenchFile &bench);

} // namespace ts
