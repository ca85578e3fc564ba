#pragma once

#include "model/records/description.h"
#include "model/records/channel.h"

namespace ts {

enum class FeeBase { Item, ItemAndCarriage, ItemCarriageAndTax };

template <>
struct Words<FeeBase> {
    static constexpr std::array list{std::pair{FeeBase::Item, "item"},
                                     std::pair{FeeBase::ItemAndCarriage, "item_and_carriage"},
                                     std::pair{FeeBase::ItemCarriageAndTax, "item_carriage_and_tax"}};
};

/// What a fee is taken for; promotion is due only where the sale came through it.
enum class FeeKind { Commission, Listing, Promotion, Payment, Other };

template <>
struct Words<FeeKind> {
    static constexpr std::array list{std::pair{FeeKind::Commission, "commission"},
                                     std::pair{FeeKind::Listing, "listing"},
                                     std::pair{FeeKind::Promotion, "promotion"},
                                     std::pair{FeeKind::Payment, "payment"},
                                     std::pair{FeeKind::Other, "other"}};
};

/// One dated rule of a channel: rate on a base within a tier, a fixed part, bounds.
struct FeeRule : Record<FeeRule> {
    Id<Channel> channel;
    QString name;
    QDate validFrom;
    QDate validTo;
    FeeBase base = FeeBase::Item;
    qint64 rate = 0; ///< millionths: 12.8 % is 128000
    std::optional<Money> tierFrom; ///< the rate holds for the part of the base above this
    std::optional<Money> tierTo; ///< and up to this
    std::optional<Money> fixed; ///< per sale
    std::optional<Money> minimum;
    std::optional<Money> cap;
    FeeKind kind = FeeKind::Commission;
    bool givenBack = false; ///< where the buyer sends the unit back

    bool operator==(const FeeRule &) const = default;

    static constexpr auto table = "fee_rule";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("channel", &FeeRule::channel).required();
        fields("name", &FeeRule::name).required();
        fields("valid_from", &FeeRule::validFrom);
        fields("valid_to", &FeeRule::validTo);
        fields("base", &FeeRule::base);
        fields("rate", &FeeRule::rate);
        fields("tier_from", &FeeRule::tierFrom);
        fields("tier_to", &FeeRule::tierTo);
        fields("fixed", &FeeRule::fixed);
        fields("minimum", &FeeRule::minimum);
        fields("cap", &FeeRule::cap);
        fields("kind", &FeeRule::kind);
        fields("given_back", &FeeRule::givenBack);
    }
};

} // namespace ts
