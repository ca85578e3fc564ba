#pragma once

#include "model/records/description.h"
#include "model/records/cause.h"
#include "model/records/check.h"
#include "model/records/unit.h"

namespace ts {

/// How a check comes out if a cause is the one.
struct Bearing : Record<Bearing> {
    Id<Unit> unit;
    Id<Check> check;
    Id<Cause> cause;
    double abnormalIf = 0.95; ///< chance of abnormal if this is the cause
    double abnormalIfNot = 0.05; ///< chance of abnormal otherwise

    bool operator==(const Bearing &) const = default;

    static constexpr auto table = "bearing";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Bearing::unit).required();
        fields("check", &Bearing::check).required();
        fields("cause", &Bearing::cause).required();
        fields("abnormal_if", &Bearing::abnormalIf);
        fields("abnormal_if_not", &Bearing::abnormalIfNot);
    }
};

} // namespace ts
