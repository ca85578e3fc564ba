#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// The clock ran on a unit from one instant to another.
struct ClockSpan : Record<ClockSpan> {
    Id<Unit> unit;
    QDateTime startedAt;
    QDateTime endedAt; ///< null while it runs
    std::optional<int> countedMinutes; ///< where the owner corrected it
    QString note;

    bool operator==(const ClockSpan &) const = default;

    static constexpr auto table = "clock_span";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &ClockSpan::unit).required();
        fields("started_at", &ClockSpan::startedAt).required();
        fields("ended_at", &ClockSpan::endedAt);
        fields("counted_minutes", &ClockSpan::countedMinutes);
        fields("note", &ClockSpan::note);
    }
};

} // namespace ts
