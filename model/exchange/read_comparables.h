#pragma once

#include "model/exchange/imported.h"
#include "model/exchange/list_columns.h"
#include "model/records/comparable.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

class QIODevice;

namespace ts {

/// The columns that a list of comparables may have.
[[nodiscard]] const QList<KnownColumn> &comparableColumns();

/// Reads a list of sales with a header; the price must be there. `units` finds a unit by its tag. A row equal in everything to
/// one of `known` is skipped, as often as it is there. A bad number, date, word or tag is a problem, by line and column.
[[nodiscard]] Expected<Imported> readComparables(QIODevice &device, const QString &did, const BenchFile &bench,
                                                 const QList<Comparable> &known, const QHash<int, Id<Unit>> &units,
                                                 const QHash<QString, QString> &map, Maker &maker);

} // namespace ts
