#pragma once

#include "model/money/scouted_bid.h"
#include "model/money/ways_out.h"

namespace ts {

/// All that the money page of one unit shows, worked out together so that its figures agree.
struct UnitMoney {
    CostSheet sheet;
    Resale resale;       ///< what it should fetch, working
    Resale asItStands;   ///< what ones that do not work fetch
    OwnRecord record;    ///< the owner's closed units against what was expected
    ForecastBasis basis; ///< what the forecast rests on; its terms can be changed and asked again
    std::optional<Forecast>
        forecast; ///< none where nothing says what it fetches, once it is sold, and for an owner's unit or one to keep
    WaysOut ways;
    std::optional<ScoutedBid> bid; ///< of a scouted unit
    QString bidMissing;            ///< why a scouted unit has no bid yet
    QString why;                   ///< the forecast in a sentence: what it comes to, and the chance of a loss
};

/// Works it all out: a few milliseconds, of which the draws take most. Plain data in and out, so it can be done beside the
/// window.
[[nodiscard]] UnitMoney unitMoney(const MoneyQuestion &asked, const ForecastOptions &options = {});

/// The forecast in a sentence.
[[nodiscard]] QString forecastText(const Forecast &forecast, const Currency &currency);

} // namespace ts
