#pragma once

#include "model/money/forecast.h"

#include <optional>

namespace ts {

enum class Rest { Price, Hours, Parts, Cause, Chance };

/// One figure that a forecast rests on, as it may well be, and what the unit then comes to in the mean.
struct ForecastRest {
    Rest what = Rest::Price;
    QString worseCause; ///< of Cause: the two causes
    QString betterCause;
    double worse = 0; ///< price and parts: minor units; hours: minutes; a chance, or a cause's likelihood: 0 to 1
    double better = 0;
    double worth = 0;       ///< minor units: profit in all, less own hours to come
    double worthWorse = 0;  ///< the same if it is worse
    double worthBetter = 0; ///< the same if it is better
    [[nodiscard]] double swing() const { return worthBetter - worthWorse; }
};

/// What a forecast rests on, most first. Price, hours and parts are set to what 1 in 10 and 9 in 10 draws stay below, each alone
/// and hours and parts of the fixes with the rest; the chance of repair is taken 15 points either way, as for a bid (a starting
/// value of ours); the causes of a symptom are told apart as the forecast itself does. Own hours count at `perMinute` minor units.
[[nodiscard]] QList<ForecastRest> forecastRests(const ForecastTerms &terms, const Forecast &forecast, double perMinute,
                                                const ForecastOptions &options = {});

} // namespace ts
