#pragma once

#include "model/money/ways_out.h"

namespace ts {

/// Why one way out leads, and what would have to come for another to lead.
struct TurningPoint {
    QString why;
    QString whenItChanges;
};

/// Where finishing leads: the cause that would end that, with what its fix would have to cost, else the price or the hours. Where
/// another leads: the price from which finishing would.
[[nodiscard]] TurningPoint turningPoint(const WaysOut &ways, const Forecast &finish, const ForecastTerms &terms,
                                        const MoneySettings &settings);

} // namespace ts
