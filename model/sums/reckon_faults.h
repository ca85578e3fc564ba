#pragma once

#include "model/sums/reckon.h"

namespace ts {

// Sums of fault-finding.
[[nodiscard]] Sum bayesSum();
[[nodiscard]] Sum checkOrderSum();

} // namespace ts
