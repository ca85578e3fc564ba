#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// weighting for the command line and the page of sums: A, ITU-R 468 and flutter, by model/values/weighting.h.
[[nodiscard]] Sum weightingSum();

} // namespace ts
