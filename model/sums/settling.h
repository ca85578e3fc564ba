#pragma once

#include "model/records/unit_file.h"
#include "model/sums/verdict.h"

namespace ts {

/// A range of one of the bench's meters.
struct MeterChoice {
    Meter meter;
    MeterRange range;
    double uncertainty95 = 0; ///< of the value in that range, in the value's measure
};

/// What it would take to say whether a value that is too close to call is within.
struct Settling {
    double needed95 = 0;        ///< an uncertainty below this would do if the value reads the same, in `measure`
    Measure measure;
    QList<MeterChoice> meters; ///< of the bench that have it, best first, one range of each
};

/// Nothing where the reading is not too close to call, or where it stands right on its limit, which no meter settles. The needed
/// uncertainty is the distance to the nearest limit: the decision rule of judge() turned around.
[[nodiscard]] std::optional<Settling> settling(const Reading &reading, const BenchFile &bench);

} // namespace ts
