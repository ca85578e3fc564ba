#pragma once

#include "model/records/meter.h"

namespace ts {

/// Whether the meter's calibration was due before that day; false where no date is kept.
[[nodiscard]] bool calibrationOverdue(const Meter &meter, const QDate &day);
/// "calibration was due on 2026-01-31", or nothing where it is not overdue: it stands beside every reading and on the sheet.
[[nodiscard]] QString overdueWords(const Meter &meter, const QDate &day);

/// How many kelvins a bench at so many °C is outside 18 to 28 °C, which most data sheets hold for (common practice).
[[nodiscard]] double kelvinOutside(std::optional<double> celsius);

} // namespace ts
