#pragma once

#include "model/money/forecast_terms.h"
#include "model/sums/money/bid.h"

namespace ts {

/// One figure that a bid rests on, and what it does to the bid.
struct BidInfluence {
    QString what;   ///< "chance of repair"
    QString likely; ///< as counted: "62 %"
    QString worse;  ///< as it might be: "47 %"
    QString better;
    Money bidWorse; ///< own hours in
    Money bidBetter;
    QString why; ///< where the figure comes from
    [[nodiscard]] Money swing() const { return bidBetter - bidWorse; }
};

/// The highest sensible bid for a unit, on one page.
struct ScoutedBid {
    Currency currency;
    BidTerms terms;
    HighestBid bid;                 ///< own hours in, without, and by the back of the envelope
    QList<BidInfluence> influences; ///< what it rests on most comes first
    QString why;                    ///< "Bid no more than £31: …"
    QString restsOn;                ///< "It rests most on the price: £74 to £96 moves it from £21 to £39."
    QStringList remarks;            ///< what is a starting value or missing, one sentence each
};

/// Works it out. Price: the middle of what it should fetch, 1 in 4 either way. Chance: the plan's, else the owner's record drawn
/// towards the share that volunteers put right in its category. Costs: the plan's parts (or the mean of the fixes of the likely
/// causes), carriage in, overhead. Hours: the plan's with those of selling, or the fixes'. Salvage: what it fetches as it stands
/// after fees and carriage, or the plan's value of its parts, whichever is more. Refuses where nothing says what it fetches or
/// how long it takes.
[[nodiscard]] Expected<ScoutedBid> scoutedBid(const MoneyQuestion &asked, const Resale &resale, const Resale &asItStands,
                                              const OwnRecord &record, const MoneySettings &settings);

} // namespace ts
