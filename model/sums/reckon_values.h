#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// letter-code: a marking by IEC 60062.
[[nodiscard]] Sum letterCodeSum();
/// spread: mean, standard deviation and lag-1 autocorrelation of values or of a column in a file.
[[nodiscard]] Sum spreadSum();

} // namespace ts
