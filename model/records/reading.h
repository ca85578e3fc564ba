#pragma once

#include "model/records/description.h"
#include "model/records/meter.h"
#include "model/records/soak.h"
#include "model/records/test_point.h"
#include "model/records/unit.h"

namespace ts {

enum class Phase { AsFound, DuringWork, AsItLeaves };

template <>
struct Words<Phase> {
    static constexpr std::array list{std::pair{Phase::AsFound, "as_found"},
                                     std::pair{Phase::DuringWork, "during_work"},
                                     std::pair{Phase::AsItLeaves, "as_it_leaves"}};
};

/// A value taken at a test point.
struct Reading : Record<Reading> {
    Id<Unit> unit;
    Id<TestPoint> point;
    QString name; ///< the test point as typed
    std::optional<Quantity> value;
    Limit wanted; ///< as it stood when the reading was taken
    std::optional<double> uncertainty; ///< 95 %, in the unit of the value
    Phase phase = Phase::DuringWork;
    Id<Meter> meter;
    QString meterName;
    QString conditions;
    Id<Soak> soak;

    bool operator==(const Reading &) const = default;

    static constexpr auto table = "reading";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Reading::unit).required();
        fields("point", &Reading::point);
        fields("name", &Reading::name).required().searched();
        fields("value", &Reading::value);
        fields("wanted", &Reading::wanted);
        fields("uncertainty", &Reading::uncertainty);
        fields("phase", &Reading::phase);
        fields("meter", &Reading::meter);
        fields("meter_name", &Reading::meterName).searched();
        fields("conditions", &Reading::conditions).searched();
        fields("soak", &Reading::soak);
    }
};

} // namespace ts
