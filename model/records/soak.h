#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// Readings at intervals over hours while the unit runs.
struct Soak : Record<Soak> {
    Id<Unit> unit;
    QString name;
    Limit wanted;
    QDateTime startedAt;
    QDateTime endedAt;
    std::optional<int> intervalMinutes;
    QString conditions;
    QString interruptions;

    bool operator==(const Soak &) const = default;

    static constexpr auto table = "soak";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Soak::unit).required();
        fields("name", &Soak::name).required().searched();
        fields("wanted", &Soak::wanted);
        fields("started_at", &Soak::startedAt).required();
        fields("ended_at", &Soak::endedAt);
        fields("interval_minutes", &Soak::intervalMinutes);
        fields("conditions", &Soak::conditions).searched();
        fields("interruptions", &Soak::interruptions).searched();
    }
};

} // namespace ts
