#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// How a sum, its keys and what comes out read on the screen.
[[nodiscard]] QString sumTitle(const Sum &sum);      ///< "Idle current"
[[nodiscard]] QString sumGroup(const QString &name); ///< "Markings and values"
[[nodiscard]] QString keyTitle(const QString &name); ///< "error_percent" gives "Error percent"
/// A value with its unit, in a prefix that reads well: 0.0123 in "A" gives "12.3 mA". "none" for null.
[[nodiscard]] QString sumValue(const SumKey &key, const QJsonValue &value);
/// The same in one line for the log: "Discharge: capacitance 10 mF, …: time 137 s, energy 10.6 J".
[[nodiscard]] QString sumLine(const Sum &sum, const SumInput &given, const SumOutput &out);

} // namespace ts
