#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// break-even: the least price that covers the costs after a channel's fees.
[[nodiscard]] Sum breakEvenSum();

} // namespace ts
