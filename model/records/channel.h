#pragma once

#include "model/records/description.h"

namespace ts {

/// A place to sell.
struct Channel : Record<Channel> {
    QString name;
    QString note;

    bool operator==(const Channel &) const = default;

    static constexpr auto table = "channel";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("name", &Channel::name).required().searched();
        fields("note", &Channel::note).searched();
    }
};

} // namespace ts
