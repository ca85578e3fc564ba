#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// Where work on a unit stopped; one of a unit.
struct LeftOff : Record<LeftOff> {
    Id<Unit> unit;
    QString whereAt;
    QString next;
    QString loose; ///< loose things beside the teardown items
    QString doNotPower; ///< why it must not be powered; empty: it may

    bool operator==(const LeftOff &) const = default;

    static constexpr auto table = "left_off";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &LeftOff::unit).required();
        fields("where_at", &LeftOff::whereAt).searched();
        fields("next", &LeftOff::next).searched();
        fields("loose", &LeftOff::loose).searched();
        fields("do_not_power", &LeftOff::doNotPower).searched();
    }
};

} // namespace ts
