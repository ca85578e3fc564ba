#pragma once

#include "model/desk/desk.h"
#include "model/keeping/outgoing_sheet.h"
#include "model/paper/order_sheet.h"
#include "model/sums/parts/order_list.h"

namespace ts {

/// The order list of all waiting units as the workbook has it now, or of one alone. Of one alone the shelf serves it first.
[[nodiscard]] Expected<OrderList> readOrderList(Desk &desk, const Id<Unit> &unit = {});

/// Hands an order list over (outgoing_sheet.h): of one unit, or of the whole workbook where `unit` is nullptr. Refused where no part
/// is awaited. `now` is the list's date, in its own time zone.
[[nodiscard]] Expected<Paper> handOverOrder(Desk &desk, const Unit *unit, const BenchFile &bench, const QDateTime &now, const SheetWish &wish);

} // namespace ts
