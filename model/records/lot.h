#pragma once

#include "model/records/description.h"
#include "model/records/contact.h"

namespace ts {

enum class LotMethod { ByValue, Equal, ByWeight, ByValueLessCost, AllOnTheGood };

template <>
struct Words<LotMethod> {
    static constexpr std::array list{std::pair{LotMethod::ByValue, "by_value"},
                                     std::pair{LotMethod::Equal, "equal"},
                                     std::pair{LotMethod::ByWeight, "by_weight"},
                                     std::pair{LotMethod::ByValueLessCost, "by_value_less_cost"},
                                     std::pair{LotMethod::AllOnTheGood, "all_on_the_good"}};
};

/// Several units bought for one price.
struct Lot : Record<Lot> {
    QString name;
    std::optional<Money> price;
    std::optional<Money> carriage; ///< apportioned by the same key, apart from the price
    LotMethod method = LotMethod::ByValue; ///< fixed at purchase
    QString reason; ///< why that method is fair here
    QDate boughtOn;
    Id<Contact> seller;

    bool operator==(const Lot &) const = default;

    static constexpr auto table = "lot";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("name", &Lot::name).required().searched();
        fields("price", &Lot::price);
        fields("carriage", &Lot::carriage);
        fields("method", &Lot::method);
        fields("reason", &Lot::reason).searched();
        fields("bought_on", &Lot::boughtOn);
        fields("seller", &Lot::seller);
    }
};

} // namespace ts
