#pragma once

#include "model/money/draw_table.h"
#include "model/sums/fees.h"

namespace ts {

/// A cause that may be at work, and what putting it right takes.
struct CauseWeight {
    QString text;
    double likelihood = 0; ///< among those of its symptom, which are drawn one at a time
    ThreePoint minutes;
    ThreePoint cost; ///< in minor units
    double odds = 1; ///< chance that the fix can be had
};

/// A symptom that is open: one of its causes is at work.
struct OpenSymptom {
    QString text;
    QList<CauseWeight> causes; ///< their likelihoods are brought to 1 in all
};

/// All that a forecast is drawn from; sums in minor units of one currency. Plain figures, so that a page can change one and ask
/// again.
struct ForecastTerms {
    Currency currency;
    ThreePoint minutesLeft; ///< to come beside the fixes: putting back, proving, offering
    ThreePoint partsLeft;   ///< to be bought beside the fixes
    QList<OpenSymptom> symptoms;
    DrawTable resale;     ///< of a working one, without carriage
    DrawTable asItStands; ///< of one that could not be repaired
    double chance = 1;    ///< of full repair, beside the odds of each fix
    FeeSchedule fees;
    double carriageCharged = 0; ///< to the buyer
    double carriageOut = 0;
    double packing = 0;
    double returnsRate = 0; ///< share of sales that come back, 0 to 1
    double returnsDrop = 0; ///< share of the price that one loses which came back
    double overheadPerMinute = 0;
    qint64 marginTaxRate = 0; ///< millionths; 0: no such scheme
    double bought = 0;        ///< for the margin
    double spent = 0;         ///< to date; it is sunk
    double minutesToDate = 0;
    ThreePoint daysToSell;
    double daysHeld = 0;
    double minutesPerDay = 0; ///< at the bench, on average; 0: work takes no days
    double waitingDays = 0;   ///< for parts, before work goes on
    double capitalPerDay = 0; ///< what a minor unit costs a day that is tied up
};

/// 1 in 10 stays below low, half below middle, 9 in 10 below high.
struct Spread {
    double low = 0;
    double middle = 0;
    double high = 0;
    double mean = 0;
    bool operator==(const Spread &) const = default;
};

/// What it comes to if one cause is at work.
struct CauseOutcome {
    QString symptom;
    QString text;
    double likelihood = 0;
    double meanNet = 0; ///< of the draws in which it was the one
    double meanMinutes = 0;
    double meanCost = 0;
    bool operator==(const CauseOutcome &) const = default;
};

/// What 100,000 draws come to. From here on, and in all.
struct Forecast {
    int draws = 0;
    Spread net;     ///< from here on: money in less all that is still to be paid; nothing that is spent already
    Spread profit;  ///< in all: net less what is spent
    Spread perHour; ///< profit for an hour, all hours of the unit counted
    Spread minutes; ///< to come
    Spread parts;   ///< to come
    Spread days;    ///< from purchase to sale
    Spread price;   ///< that it fetches
    double meanFees = 0;
    double meanReturns = 0;
    double meanTax = 0;
    double meanOverhead = 0;
    double chanceOfLoss = 0; ///< that the profit is below zero
    double chanceRepaired = 0;
    double capitalDays = 0; ///< mean of money × days tied up, minor units × days
    QList<CauseOutcome> causes;
    bool operator==(const Forecast &) const = default;
};

struct ForecastOptions {
    int draws = 100'000;
    quint64 seed = 1;
    int threads = 1; ///< the answer is the same with any number
};

/// Draws what could come of it. Each draw takes a price, minutes, parts, one cause of each open symptom with its fix, whether the
/// fix could be had, whether the sale came back, days; fees are those of the rules on the price drawn. The same terms and seed
/// give the same answer, to the last bit, on any number of threads.
[[nodiscard]] Forecast forecastOf(const ForecastTerms &terms, const ForecastOptions &options = {});

} // namespace ts
