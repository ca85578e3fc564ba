#pragma once

#include "model/values/money.h"

namespace ts {

/// Tax on the margin of second-hand goods (Directive 2006/112/EC, articles 312 to 325, one item at a time): what a return asks
/// for. Not tax advice; the rate is the owner's to set.
struct MarginTax {
    Money margin; ///< sold less bought, below zero where it was sold at a loss
    Money tax; ///< the part of the margin that is tax: margin × rate / (100 % + rate), half up to the minor unit; 0 for a loss
    Money saleLessTax; ///< what the return shows as sales
    bool operator==(const MarginTax &) const = default;
};

/// Of one item. Bought is what the seller got and nothing else (parts and repairs do not raise it); sold is all that the buyer
/// paid, carriage included.
[[nodiscard]] MarginTax marginTax(const Money &bought, const Money &sold, const Rate &rate);

/// Of an item that may not be sold under the scheme (bought on an invoice that shows tax): the tax within the whole price.
[[nodiscard]] MarginTax wholePriceTax(const Money &sold, const Rate &rate);

/// Of a period under global accounting, where the law allows it: purchases and sales are put together, and a margin below zero is
/// carried on (HMRC Notice 718, from memory).
struct GlobalMargin {
    MarginTax tax;
    Money carriedOn; ///< taken off the next period's margin, zero or more
};
[[nodiscard]] GlobalMargin globalMargin(const Money &purchases, const Money &sales, const Money &carried, const Rate &rate);

} // namespace ts
