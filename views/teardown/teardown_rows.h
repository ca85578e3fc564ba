#pragma once

#include "model/records/unit_file.h"
#include "views/widgets/grid_row.h"

namespace ts {

/// In which direction one reads what came off.
enum class TeardownWay { Apart, Back };
enum class TeardownColumn { Number, What, Fasteners, KeptIn };
/// What else is known of one item, a row each.
enum class TeardownDetail { Count, Connectors, Springs, Marks, Caution };

[[nodiscard]] QList<GridColumn> teardownColumns(TeardownWay way);
/// Taking apart: all items in their order, ticked where they are off (or were). Putting back: those that came off, last first, ticked
/// where they are back.
[[nodiscard]] QList<GridRow> teardownRows(const UnitFile &file, TeardownWay way);

[[nodiscard]] QList<GridColumn> detailColumns();
[[nodiscard]] QList<GridRow> detailRows(const TeardownItem &item);

/// The items of a unit in the order in which they come off.
[[nodiscard]] QList<TeardownItem> inOrder(const UnitFile &file);

[[nodiscard]] Expected<TeardownItem> editedItem(const TeardownItem &before, TeardownColumn column, const QString &typed);
[[nodiscard]] Expected<TeardownItem> editedDetail(const TeardownItem &before, TeardownDetail detail, const QString &typed);
/// The item ticked or not, reading that way: off and on, or back and off again.
[[nodiscard]] TeardownItem tickedItem(const TeardownItem &before, TeardownWay way, bool ticked, const QDateTime &now);

} // namespace ts
