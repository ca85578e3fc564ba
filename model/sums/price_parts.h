#pragma once

#include "model/sums/cost_sheet.h"

namespace ts {

/// What part of a resale price goes where.
enum class PriceShare { Bought, Work, Fees, Carriage, Yours, Short };

struct PricePart {
    PriceShare share = PriceShare::Bought;
    Money money;
    bool operator==(const PricePart &) const = default;
};

/// Where the resale of a cost sheet goes, to date: bought (with carriage in), what was put into it (parts, consumables, outside work,
/// overhead, other, refunds), fees, carriage and packing out, and what is left, in this order, without empty parts. The parts
/// add up to the resale; where it does not cover the costs the last part is Short, and the parts before it add up to the
/// resale and that. Empty without a resale.
[[nodiscard]] QList<PricePart> priceParts(const CostSheet &sheet);

} // namespace ts
