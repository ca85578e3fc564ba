#pragma once

#include "model/records/unit_file.h"
#include "model/sums/verdict.h"

namespace ts {

/// All that was read in one place of a unit, under the same conditions.
struct PointRow {
    Id<TestPoint> point; ///< null: read without a test point of its own
    QString name;
    QString conditions;
    Limit wanted;          ///< the point's; without a point that of the last reading
    QString source;
    QList<Reading> found;  ///< as found, oldest first
    QList<Reading> after;  ///< during work and as it leaves, oldest first

    [[nodiscard]] bool unread() const { return found.isEmpty() && after.isEmpty(); }
    /// The newest of all; nullptr where there is none. It speaks for the place, as in standing().
    [[nodiscard]] const Reading *latest() const;
    /// Of the newest reading; NoLimit without one.
    [[nodiscard]] Verdict verdict() const { return latest() ? verdictOf(*latest()) : Verdict::NoLimit; }
    /// The id of its point, else of its first reading: what a page knows the row by.
    [[nodiscard]] QUuid key() const;
};

/// The test points of a unit in their order, then what was read elsewhere in order of first reading. A reading that names a point
/// without referring to it counts as the point's where it names no other conditions. Readings of soaks count as their point's.
[[nodiscard]] QList<PointRow> pointRows(const UnitFile &file);

} // namespace ts
