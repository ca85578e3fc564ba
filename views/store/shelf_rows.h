#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/sums/parts/part_search.h"
#include "views/widgets/grid_row.h"

namespace ts {

/// The columns of the shelf: a part a row.
enum class ShelfColumn { Name, Kind, Rating, Left, Minimum, Each, Place, Supplier };
[[nodiscard]] QList<GridColumn> shelfColumns();
/// The parts that are looked for, by kind and name: first what is found surely, then what does not say all that is asked. `shortOnly`:
/// those alone of which too little is left. At the foot the row that adds one.
[[nodiscard]] QList<GridRow> shelfRows(const QList<Part> &parts, const QList<Batch> &batches, const PartWish &wish, bool shortOnly);
/// The part with what was typed in one of its columns.
[[nodiscard]] Expected<Part> editedPart(const Part &before, ShelfColumn column, const QString &typed);
/// "10 × capacitor 100 µF 63 V at 0.12 in drawer C3": a part with its kind and rating, and its first batch.
[[nodiscard]] Expected<Change> storedPart(const QString &line, const Currency &currency, QDate today, Maker maker, QUuid &id);

/// The attributes of a part, a row each: those of its kind, and what else is recorded.
[[nodiscard]] QList<GridColumn> ratingColumns();
[[nodiscard]] QList<GridRow> ratingRows(const Part &part);
/// The part with one attribute as typed.
[[nodiscard]] Expected<Part> ratedPart(const Part &before, const QString &key, const QString &typed);

} // namespace ts
