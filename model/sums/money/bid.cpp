#include "model/sums/money/bid.h"

#include "model/sums/fees.h"

#include <cmath>

namespace ts {

namespace {

constexpr qint64 million = 1'000'000;

__extension__ using Wide = __int128;

/// The nearest whole number to a fraction, halves away from zero.
qint64 nearest(Wide numerator, Wide denominator)
{
    const bool negative = numerator < 0;
    const Wide size = negative ? -numerator : numerator;
    const Wide whole = (2 * size + denominator) / (2 * denominator);
    return static_cast<qint64>(negative ? -whole : whole);
}

} // namespace

Expected<HighestBid> highestBid(const BidTerms &terms)
{
    const QString did = QStringLiteral("There is no highest bid");
    if (terms.chance < 0 || terms.chance > million)
        return Trouble{did, QStringLiteral("the chance of repair is not between 0 and 1"), {}};
    if (terms.taxNumerator < 0 || terms.taxDenominator <= 0 || terms.taxNumerator >= terms.taxDenominator)
        return Trouble{did, QStringLiteral("the tax fraction is not between 0 and 1"), QStringLiteral("at 20 % it is 1/6")};
    if (!(terms.hours >= 0 && terms.hours < 1e6))
        return Trouble{did, QStringLiteral("the hours make no sense"), {}};
    const auto schedule = FeeSchedule::of(terms.rules, {terms.price, terms.carriagePaid, terms.carriage, terms.packing,
                                                        terms.returns, terms.salvage, terms.costs, terms.rate, terms.gain});
    if (!schedule)
        return schedule.trouble();
    const Currency &currency = schedule->currency();
    const auto money = [&](qint64 minor) { return Money(minor, currency); };

    HighestBid made;
    made.fees = money(schedule->total(terms.price.minor(), terms.carriagePaid.minor()));
    const Money taken = terms.price + terms.carriagePaid;
    made.net = taken - made.fees - terms.carriage - terms.packing - terms.returns;
    const qint64 p = terms.chance;
    made.expected = money(nearest(Wide(p) * made.net.minor() + Wide(million - p) * terms.salvage.minor(), million));
    made.hoursCost = terms.rate.scaled(std::llround(terms.hours * 3600), 3600, Rounding::HalfUp);

    const Wide n = terms.taxNumerator;
    const Wide d = terms.taxDenominator;
    const auto bidFor = [&](const Money &costs) {
        const Wide numerator = p * (made.net.minor() * d - n * taken.minor()) + Wide(million - p) * terms.salvage.minor() * d -
                               (Wide(costs.minor()) + terms.gain.minor()) * million * d;
        return money(nearest(numerator, million * d - p * n));
    };
    made.bid = bidFor(terms.costs + made.hoursCost);
    made.withoutHours = bidFor(terms.costs);

    const qint64 rate = terms.rules.isEmpty() ? 0 : terms.rules.first().rate;
    const Money guessed = terms.envelopeParts ? *terms.envelopeParts + terms.gain : terms.costs;
    made.backOfEnvelope = money((terms.price - guessed).minor() - FeeSchedule::shareOf(rate, terms.price.minor()));
    return made;
}

} // namespace ts
