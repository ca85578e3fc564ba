#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// What can be done with a unit from here on.
enum class WayOut { FinishAndSell, SellAsItStands, BreakForParts, ReturnToSeller, Stop };

template <>
struct Words<WayOut> {
    static constexpr std::array list{std::pair{WayOut::FinishAndSell, "finish_and_sell"},
                                     std::pair{WayOut::SellAsItStands, "sell_as_it_stands"},
                                     std::pair{WayOut::BreakForParts, "break_for_parts"},
                                     std::pair{WayOut::ReturnToSeller, "return_to_seller"},
                                     std::pair{WayOut::Stop, "stop"}};
};

/// Why the question was put.
enum class Asked { Triage, FullHour, NewPart, NewUnknown, ByHand };

template <>
struct Words<Asked> {
    static constexpr std::array list{std::pair{Asked::Triage, "triage"},
                                     std::pair{Asked::FullHour, "full_hour"},
                                     std::pair{Asked::NewPart, "new_part"},
                                     std::pair{Asked::NewUnknown, "new_unknown"},
                                     std::pair{Asked::ByHand, "by_hand"}};
};

/// Which way out was chosen, why, and the figures that it was chosen by.
struct Decision : Record<Decision> {
    Id<Unit> unit;
    WayOut way = WayOut::FinishAndSell;
    Asked asked = Asked::Triage;
    QString reason;
    QString figures; ///< the ways out as they stood, a line each
    int minutes = 0; ///< hours to date at the time

    bool operator==(const Decision &) const = default;

    static constexpr auto table = "decision";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Decision::unit).required();
        fields("way", &Decision::way);
        fields("asked", &Decision::asked);
        fields("reason", &Decision::reason).searched();
        fields("figures", &Decision::figures);
        fields("minutes", &Decision::minutes);
    }
};

} // namespace ts
