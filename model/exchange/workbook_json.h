#pragma once

#include "model/exchange/imported.h"
#include "model/records/setting.h"

#include <functional>

class QIODevice;

namespace ts {

/// The rows of one kind, from wherever they are kept.
using RowsOf = std::function<Expected<QList<Row>>(const Kind &)>;

/// Writes the whole workbook as one JSON document: {format, version, records: {table: [object]}}, one record a line, without the
/// bytes of photos and papers. Answers how many records were written.
[[nodiscard]] Expected<qint64> writeWorkbookJson(QIODevice &device, const RowsOf &rowsOf);

/// Reads such a document for an empty workbook; every record keeps its id. Photos and papers are left out, for their bytes are
/// not in it. A setting that is in `settings` already is changed, not doubled. Refuses what is no such document; a record that
/// cannot be read, stands twice, or refers to one that is not there is a problem by kind and place.
[[nodiscard]] Expected<Imported> readWorkbookJson(QIODevice &device, const QString &did, const QList<Setting> &settings);

} // namespace ts
