#pragma once

#include "model/records/description.h"
#include "model/records/channel.h"
#include "model/records/unit.h"

namespace ts {

/// What was expected at purchase, and what else could be done with the unit.
struct Plan : Record<Plan> {
    Id<Unit> unit;
    std::optional<int> minutes;
    std::optional<Money> parts;
    std::optional<Money> resaleLow;
    std::optional<Money> resaleLikely;
    std::optional<Money> resaleHigh;
    std::optional<Money> carriageOut;
    std::optional<Money> packing;
    Id<Channel> channel;
    QString note;
    std::optional<int> minutesLow; ///< hardly less than this
    std::optional<int> minutesHigh; ///< hardly more
    std::optional<Money> partsLow;
    std::optional<Money> partsHigh;
    std::optional<double> chance; ///< of full repair, 0 to 1
    std::optional<Money> carriageCharged; ///< what the buyer pays for carriage
    std::optional<Money> carriageIn; ///< to get it here, while it is scouted
    std::optional<int> daysToSell;
    std::optional<Money> partsValue; ///< what its parts fetch or save, broken up
    std::optional<int> breakingMinutes;
    QDate returnUntil; ///< the seller takes it back until then
    std::optional<Money> returnRefund;
    std::optional<Money> returnCost; ///< carriage back and packing

    bool operator==(const Plan &) const = default;

    static constexpr auto table = "plan";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Plan::unit).required();
        fields("minutes", &Plan::minutes);
        fields("parts", &Plan::parts);
        fields("resale_low", &Plan::resaleLow);
        fields("resale_likely", &Plan::resaleLikely);
        fields("resale_high", &Plan::resaleHigh);
        fields("carriage_out", &Plan::carriageOut);
        fields("packing", &Plan::packing);
        fields("channel", &Plan::channel);
        fields("note", &Plan::note).searched();
        fields("minutes_low", &Plan::minutesLow);
        fields("minutes_high", &Plan::minutesHigh);
        fields("parts_low", &Plan::partsLow);
        fields("parts_high", &Plan::partsHigh);
        fields("chance", &Plan::chance);
        fields("carriage_charged", &Plan::carriageCharged);
        fields("carriage_in", &Plan::carriageIn);
        fields("days_to_sell", &Plan::daysToSell);
        fields("parts_value", &Plan::partsValue);
        fields("breaking_minutes", &Plan::breakingMinutes);
        fields("return_until", &Plan::returnUntil);
        fields("return_refund", &Plan::returnRefund);
        fields("return_cost", &Plan::returnCost);
    }
};

} // namespace ts
