#pragma once

#include "model/records/description.h"
#include "model/records/channel.h"
#include "model/records/unit.h"

namespace ts {

/// What was expected at purchase.
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
    }
};

} // namespace ts
