#pragma once

#include "model/desk/desk.h"
#include "views/widgets/grid_row.h"

namespace ts {

enum class BatchColumn { Pieces, Left, Each, Bought, Supplier, Place, Donor, Tested };
[[nodiscard]] QList<GridColumn> batchColumns();
/// The batches of a part, oldest first, and the row that adds one. `tags`: of the donors.
[[nodiscard]] QList<GridRow> batchRows(const QList<Batch> &batches, const QHash<Id<Unit>, int> &tags, QDate today);
/// The batch with what was typed in one of its columns. A donor is named by its tag, and a batch takes no more of what it cost than is
/// left on it.
[[nodiscard]] Expected<Batch> editedBatch(const Batch &before, BatchColumn column, const QString &typed, Desk &desk, const Currency &currency, QDate today);
/// "10 at 0.12", "2 at 4.00 from 0022", "10 from Tern Street": pieces, each, and a donor's tag or a supplier.
[[nodiscard]] Expected<Batch> typedBatch(const QString &line, Batch fresh, Desk &desk, const Currency &currency, QDate today);

} // namespace ts
