#pragma once

#include "model/values/quantity.h"

namespace ts {

/// An uncertainty to two significant figures (JCGM 100:2008, 7.2.6), rounded away from zero so that it never looks better than
/// it is: "0.046". Empty for 0, below it, and what is not finite.
[[nodiscard]] QString uncertaintyFigures(double uncertainty);
/// The same with its unit: "0.046 V".
[[nodiscard]] QString uncertaintyWithUnit(double uncertainty, const Measure &measure);

} // namespace ts
