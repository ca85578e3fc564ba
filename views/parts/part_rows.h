#pragma once

#include "model/records/need.h"
#include "model/sums/need_totals.h"
#include "views/widgets/grid_row.h"

namespace ts {

/// The columns of the parts page.
enum class PartColumn { Part, Quantity, Each, Sum, State, Position, OldValue, Supplier, Due };

[[nodiscard]] QList<GridColumn> partColumns();
/// The needs of a unit under their states, each with what it comes to, and at the foot the row that adds one.
[[nodiscard]] QList<GridRow> partRows(const UnitFile &file, const Currency &bench, QDate today);

/// "needed", "fitted", as people read it.
[[nodiscard]] QString needStateText(NeedState state);
/// "3 lines · £12.40 · 1 without a price"; empty where there is none.
[[nodiscard]] QString needTotalText(const NeedTotal &total);

/// The need with what was typed in one of its columns; refused in one sentence where it makes no sense.
[[nodiscard]] Expected<Need> editedNeed(const Need &before, PartColumn column, const QString &typed, const Currency &bench, const QDateTime &now);
/// The same need in another state, from now on.
[[nodiscard]] Need movedNeed(const Need &before, NeedState state, const QDateTime &now);

} // namespace ts
