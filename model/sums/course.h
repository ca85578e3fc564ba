#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// How far a unit had come at an instant.
struct CoursePoint {
    QDateTime at; ///< UTC
    int minutes = 0;
    Money spent; ///< in the bench's currency
    bool operator==(const CoursePoint &) const = default;
};

/// Hours and money over time: a point for each instant at which one of them changed, oldest first, each with the sums to date. The
/// last one has the minutes of `hoursOf` and the total of `spentOn`. A spend counts from its day (midnight UTC where that is not the
/// day of recording), a need from when it was ordered, or came, or was fitted, whichever it is now.
[[nodiscard]] QList<CoursePoint> courseOf(const UnitFile &file, const Currency &bench, const QDateTime &now);

} // namespace ts
