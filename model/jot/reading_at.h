#pragma once

#include "model/jot/jotted.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"
#include "model/values/expected.h"

namespace ts {

/// A place that a value is typed at, so that its name need not be.
struct ReadAt {
    Id<TestPoint> point; ///< may be null
    QString name;
    QString conditions;
    Phase phase = Phase::AsFound; ///< where the line does not say another
    QString meter;                ///< where the line names none; may be empty
};

/// The reading of a value typed at a place: "11.92", "11.92 ± 0.04 V with hand meter", "< 0.1 %", "OL", "about 12". All that follows the
/// equals sign of a jotted line is understood, and a bare number has the unit of what is wanted or was last read there. Refused,
/// in one sentence, where no value can be read from it. `question` is as for a jotted line.
[[nodiscard]] Expected<Jotted> jotReadingAt(const ReadAt &at, const QString &typed, const UnitFile &file, const BenchFile &bench, Maker &maker);

} // namespace ts
