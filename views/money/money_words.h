#pragma once

#include "model/money/forecast_rests.h"
#include "model/money/ways_out.h"

namespace ts::shown {

/// A sum that was drawn, in whole units: what is uncertain by pounds is not said to the penny.
[[nodiscard]] QString drawn(double minor, const Currency &currency);
/// "Finish and sell".
[[nodiscard]] QString way(WayOut way);
/// Why the ways out are worth a look: "a new part".
[[nodiscard]] QString asked(Asked asked);
/// "It rests most on the price: £74 to £118 moves it from £12 to £48."
[[nodiscard]] QString rest(const ForecastRest &rest, const Currency &currency);

} // namespace ts::shown
