#pragma once

#include "model/desk/desk.h"
#include "model/money/overviews.h"

namespace ts {

/// The overviews of a whole workbook. Refused where it cannot be read.
[[nodiscard]] Expected<Overviews> readOverviews(Desk &desk, const QDate &today);

} // namespace ts
