#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// three-point: an estimate in three points.
[[nodiscard]] Sum threePointSum();
/// margin-tax: tax on the margin of one second-hand item.
[[nodiscard]] Sum marginTaxSum();
/// break-even: the least price that covers the costs after a channel's fees.
[[nodiscard]] Sum breakEvenSum();
/// bid: the highest sensible bid, own hours in and without.
[[nodiscard]] Sum bidSum();
/// apportion: a sum shared out to the last minor unit.
[[nodiscard]] Sum apportionSum();

} // namespace ts
