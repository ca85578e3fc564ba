#pragma once

#include "model/sums/verdict.h"

/// How what was measured reads on the screen, in the user's own locale.
namespace ts::shown {

[[nodiscard]] QString quantity(const Quantity &quantity); ///< "11.92 V", "about 12 V", "over range"
[[nodiscard]] QString limit(const Limit &limit);          ///< "12 V ± 5 %", "35 to 65 gf·cm", "at least 2 MΩ"
[[nodiscard]] QString verdict(Verdict verdict);           ///< "too close to call"
[[nodiscard]] QString phase(Phase phase);                 ///< "as found"
/// "± 0.04 V": two figures of an uncertainty are enough (JCGM 100:2008, 7.2.6).
[[nodiscard]] QString spread(double uncertainty95, const Measure &measure);
[[nodiscard]] QString withMeasure(double value, const Measure &measure);
/// With the SI prefix that reads well where the unit takes one: 0.0123 in "A" gives "12.3 mA" (SI Brochure, 9th edition, table 7).
[[nodiscard]] QString prefixed(double value, const QString &unit);
/// As `figures` significant figures, without needless zeros.
[[nodiscard]] double rounded(double value, int figures);

/// What a field begins with, so that it reads back as the same.
[[nodiscard]] QString toType(const Quantity &quantity);
[[nodiscard]] QString toType(const Limit &limit);

} // namespace ts::shown
