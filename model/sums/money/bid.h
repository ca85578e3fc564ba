#pragma once

#include "model/records/fee_rule.h"
#include "model/values/money.h"

namespace ts {

/// What a highest bid is worked out from; all sums in one currency.
struct BidTerms {
    Money price;          ///< what it fetches, repaired
    Money carriagePaid;   ///< by the buyer
    QList<FeeRule> rules; ///< of the channel
    Money carriage;       ///< own, out
    Money packing;
    Money returns;             ///< allowance for sales that come back
    qint64 chance = 1'000'000; ///< of full repair, in millionths
    Money salvage;             ///< what it is worth otherwise
    Money costs;               ///< everything to come but own hours: parts, consumables, carriage in, overhead
    double hours = 0;
    Money rate; ///< of an own hour
    Money gain; ///< wanted beside
    /// Tax within the margin as a fraction: rate/(1 + rate), 1/6 at 20 %. 0/1 where there is none.
    qint64 taxNumerator = 0;
    qint64 taxDenominator = 1;
    std::optional<Money> envelopeParts; ///< of the costs, what a quick guess counts; none: all of them
};

/// The three lines to put side by side: the gap between them is what a hurried bidder does not see.
struct HighestBid {
    Money fees;
    Money net;      ///< N: what a sale leaves: price + carriage paid − fees − carriage − packing − returns
    Money expected; ///< E = pN + (1 − p)V
    Money hoursCost;
    Money bid; ///< own hours in; below zero where even a gift would not pay
    Money withoutHours;
    Money backOfEnvelope; ///< price less the first rule's percentage of it, less costs (or less parts and gain, where parts are
                          ///< told apart)
    bool operator==(const HighestBid &) const = default;
};

/// B = [p(N − t(P + S)) + (1 − p)V − C − G] / (1 − pt), to the nearest minor unit; exact in between. With t = 0 that is E − C −
/// G. The form with tax takes the margin on price and carriage and does not set losses off (approximation of the trade's notes).
/// Refuses sums in several currencies, a chance outside 0 to 1 and a tax fraction outside 0 to below 1.
[[nodiscard]] Expected<HighestBid> highestBid(const BidTerms &terms);

} // namespace ts
