#pragma once

#include "model/records/unit_file.h"
#include "model/sums/verdict.h"

namespace ts {

/// How well one of the bench's meters could take a value.
struct MeterChoice {
    Id<Meter> meter;
    QString name;
    QString range;            ///< "4 V range"
    double uncertainty95 = 0; ///< in the unit of the value
    QString overdue;          ///< "calibration was due on 2026-01-31", or empty
};

/// What would settle a verdict that is too close to call.
struct Settling {
    double needed =
        0; ///< U95 in the unit of the value below which the verdict would be clear; 0 where the value stands on its limit
    QList<MeterChoice> good;   ///< meters and ranges that are good enough, best first
    QList<MeterChoice> others; ///< those that are not, best first
    QString sentence;          ///< for people
};

/// Every meter of the bench with a range for the value, the smallest sufficient range of each, best first. Meters whose
/// calibration is overdue on that day stand behind those that are not.
[[nodiscard]] QList<MeterChoice> metersFor(const BenchFile &bench, const Quantity &value, const QDate &day);

/// What would settle the value against its limit: it must be known better than its distance to the nearest limit. Refuses what
/// judge refuses, and a value without figure or a limit without ends.
[[nodiscard]] Expected<Settling> whatWouldSettle(const Quantity &value, const Limit &limit, const BenchFile &bench,
                                                 const QDate &day);

} // namespace ts
