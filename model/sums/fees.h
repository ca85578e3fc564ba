#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// What a sale takes from the buyer, in one currency.
struct Takings {
    Money item;
    Money carriage; ///< as charged to the buyer
    Money tax;      ///< shown on top, if any
};

struct Fee {
    QString name;
    Money amount;
    bool operator==(const Fee &) const = default;
};

struct Fees {
    QList<Fee> lines; ///< one of each rule that applies, in the rules' order
    Money total;      ///< exactly their sum
    bool operator==(const Fees &) const = default;
};

/// The rules of a channel that hold on a day (valid_from and valid_to inclusive, empty is open), in order of time recorded.
[[nodiscard]] QList<FeeRule> rulesOn(const BenchFile &bench, const Id<Channel> &channel, const QDate &day);
/// The channel that break-even is worked out for: the plan's, else the one that the setting "channel" names, else nullptr.
[[nodiscard]] const Channel *channelFor(const UnitFile &file, const BenchFile &bench);
/// "12.8 % + 0.30", "3 % of item and carriage": the rules in a few words.
[[nodiscard]] QString feeText(const QList<FeeRule> &rules);

/// The fees of a sale. Each rule: rate × the part of its base between tier_from and tier_to (half up to the minor unit), plus
/// fixed, not under minimum, not over cap. A rule whose tier_from is above zero and not exceeded costs nothing, its
/// fixed part and minimum included. Refuses a rule with money of another currency than the sale, by name.
[[nodiscard]] Expected<Fees> feesOf(const QList<FeeRule> &rules, const Takings &takings);

/// The least item price, in whole minor units, at which a sale covers the costs:
/// the smallest P >= 0 with P + carriageCharged − fees(P) − costs >= 0. Exact to the minor unit with tiers, jumps, caps and
/// roundings; where a dearer tier makes the net fall below zero again further up, this is still the first price that
/// covers. `taxOnTop` is charged on item and carriage and passed on; it matters only to rules on a base with tax.
/// Costs hold everything, carriage and packing out included. Refuses rates that together take all there is (100 % or
/// more without cap or end, where no low price covers), and a tiered rule whose entry goes against its rate.
[[nodiscard]] Expected<Money> breakEven(const Money &costs, const QList<FeeRule> &rules, const Money &carriageCharged = {},
                                        const Rate &taxOnTop = {});

} // namespace ts
