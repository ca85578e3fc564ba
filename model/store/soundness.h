#pragma once

#include "model/store/store.h"

namespace ts {

/// Everything that is not as it should be, a line each; at most 100. Reads the whole workbook.
[[nodiscard]] Expected<QStringList> unsoundness(Store &store);

} // namespace ts
