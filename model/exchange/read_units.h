#pragma once

#include "model/exchange/imported.h"
#include "model/exchange/list_columns.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

#include <QSet>

class QIODevice;

namespace ts {

/// The columns that a list of units may have.
[[nodiscard]] const QList<KnownColumn> &unitColumns();

/// Reads a list of units with a header: each row becomes a unit with its stage move, what was paid and the carriage as spends,
/// and a note where there is one. A row whose source id is in `known` is skipped. A bad number, date or word is a problem, by
/// line and column.
[[nodiscard]] Expected<Imported> readUnits(QIODevice &device, const QString &did, const BenchFile &bench,
                                           const QSet<QString> &known, const QHash<QString, QString> &map, Maker &maker);

} // namespace ts
