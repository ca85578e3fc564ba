#pragma once

#include "model/paper/restoration_facts.h"
#include "model/records/unit_file.h"

namespace ts {

/// One row for each test point and condition, in the order of the points, then of first reading: the first reading as found
/// beside the last as it leaves; the last during work only where none was taken as it leaves. Readings of soaks are not in it.
[[nodiscard]] QList<RestorationFacts::Measured> measuredFacts(const UnitFile &file, const BenchFile &bench);

/// The soaks with their running time, interruptions, extremes and the worst verdict.
[[nodiscard]] QList<RestorationFacts::Soaked> soakedFacts(const UnitFile &file, const QDateTime &now);

} // namespace ts
