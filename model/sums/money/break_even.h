#pragma once

#include "model/sums/fees.h"

namespace ts {

/// The least item price, in whole minor units, at which a sale covers the costs:
/// the smallest P >= 0 with P + carriageCharged − fees(P) − costs >= 0. Exact to the minor unit for any rules: tiers, jumps up
/// and down, caps, minimums, reductions and roundings; where a dearer tier makes the net fall below zero again further up, this
/// is still the first price that covers. `taxOnTop` is charged on item and carriage and passed on; it matters only to rules
/// on a base with tax. Costs hold everything, carriage and packing out included. Refuses rates that together take all there is
/// where no low price covers, and a tax below zero.
[[nodiscard]] Expected<Money> breakEven(const Money &costs, const QList<FeeRule> &rules, const Money &carriageCharged = {},
                                        const Rate &taxOnTop = {}, Promotion promotion = Promotion::Counted);

} // namespace ts
