#pragma once

#include "model/desk/desk.h"

namespace ts {

/// Whether the workbook holds any money, so that its currency is fixed.
[[nodiscard]] Expected<bool> moneyIsRecorded(Desk &desk);

} // namespace ts
