#pragma once

#include "model/money/forecast_terms.h"
#include "model/records/change.h"
#include "model/records/decision.h"
#include "model/records/maker.h"

namespace ts {

/// One way out, from here on: what is spent already is in none of its figures.
struct WayFigures {
    WayOut way = WayOut::Stop;
    bool open = false; ///< can be taken, and there are figures for it
    Money low;         ///< 1 in 10 comes to less
    Money middle;
    Money high; ///< 9 in 10 come to less
    Money mean;
    int minutes = 0;              ///< own, to come, in the middle
    std::optional<Money> perHour; ///< the middle for each hour to come; none where it takes none
    Money afterHours;             ///< the mean less the hours at the owner's rate: what the ways are ranked by
    QString why;                  ///< what the figures rest on, or why it is not open
};

/// What could be done with a unit, side by side.
struct WaysOut {
    Currency currency;
    QList<WayFigures> ways;      ///< in the order of WayOut; empty where the question makes no sense (sold, an owner's, to keep)
    std::optional<WayOut> leads; ///< the one that is worth most after hours; none while finishing has no figures
    QString why;                 ///< "Finishing leads by £48 over breaking it for parts …"
    QString whenItChanges;       ///< "It stops leading if the head is the cause (27 %) and costs over £71."
    std::optional<Asked> due;    ///< the question is due now, and why
    QString dueBecause;

    [[nodiscard]] const WayFigures *of(WayOut way) const;
};

/// The ways out of a unit that is to be sold and is not closed. Finish and sell: the forecast. Sell as it stands: the sales of
/// ones that do not work, with the same fees, carriage and returns. Break for parts: the plan's value of the parts (0.55 to 1.6
/// times, starting values of ours), net of what selling them takes. Return to seller: the plan's refund less what sending costs,
/// until the day it names. Stop: nothing more in or out. They are ranked by the mean after own hours (from here on, is what is to
/// be had more than what else could be done; money and hours already spent do not enter).
[[nodiscard]] WaysOut waysOut(const MoneyQuestion &asked, const CostSheet &sheet, const ForecastBasis &basis,
                              const Forecast &finish, const MoneySettings &settings, const ForecastOptions &options = {});

/// Why the question should be put again, if it should: at triage (it came to the bench, or symptoms are seen), at each full hour, at each new part and each new unknown since
/// the last decision. Only for a unit to sell that is being worked on.
[[nodiscard]] std::optional<Asked> dueNow(const UnitFile &file, int minutes);

/// The decision with its figures, as a change for the desk.
[[nodiscard]] Change decide(const MoneyQuestion &asked, const WaysOut &ways, WayOut chosen, const QString &because, int minutes,
                            Maker &maker);

/// "Finish and sell"; the words for people.
[[nodiscard]] QString wayText(WayOut way);
/// "Asked at the full hour"; the words for people.
[[nodiscard]] QString askedText(Asked asked);

} // namespace ts
