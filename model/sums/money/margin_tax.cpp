#include "model/sums/money/margin_tax.h"

#include <algorithm>

namespace ts {

namespace {

/// The tax that is in a sum: sum × rate / (1 + rate).
Money taxWithin(const Money &sum, const Rate &rate)
{
    const Money zero(0, sum.currency());
    return sum.minor() <= 0 ? zero : sum.scaled(rate.millionths(), 1'000'000 + rate.millionths(), Rounding::HalfUp);
}

} // namespace

MarginTax marginTax(const Money &bought, const Money &sold, const Rate &rate)
{
    const Money margin = sold - bought;
    const Money tax = taxWithin(margin, rate);
    return {margin, tax, sold - tax};
}

MarginTax wholePriceTax(const Money &sold, const Rate &rate)
{
    const Money tax = taxWithin(sold, rate);
    return {sold, tax, sold - tax};
}

GlobalMargin globalMargin(const Money &purchases, const Money &sales, const Money &carried, const Rate &rate)
{
    const MarginTax made = marginTax(purchases + carried, sales, rate);
    const Money zero(0, made.margin.currency());
    return {made, std::max(zero, -made.margin)};
}

} // namespace ts
