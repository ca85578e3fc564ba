#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// The test points that came about with one of these readings, in one line, and have no reading beside these: what they are for is
/// gone when the readings go.
[[nodiscard]] QList<TestPoint> pointsMadeWith(const QList<Id<Reading>> &readings, const UnitFile &file);

} // namespace ts
