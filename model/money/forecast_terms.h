#pragma once

#include "model/money/forecast.h"
#include "model/money/money_question.h"
#include "model/sums/cost_sheet.h"
#include "model/sums/money_settings.h"

namespace ts {

/// What a forecast of a unit rests on, gathered from its records.
struct ForecastBasis {
    ForecastTerms terms;
    bool resaleKnown = false; ///< there are sales, or a plan says what it fetches; without either there is no forecast
    QStringList sentences;    ///< where each figure comes from, one sentence each, starting values named as such
};

/// Gathers it. Minutes to come: the plan's three points less what was worked, or the fixes of the causes still open, whichever is
/// more, with the minutes of selling. Parts: needs that are priced and not ordered, and the fixes' costs. Causes and their
/// likelihoods: the boards of fault-finding; a confirmed cause of an open symptom is sure. Where no spread was entered, minutes
/// of a plan run from 0.7 to 2 times, of a fix from 0.6 to 2.2 times, costs from 0.8 to 1.5 times the likely figure (starting
/// values of ours). The owner's record scales minutes and prices.
[[nodiscard]] ForecastBasis forecastBasis(const MoneyQuestion &asked, const CostSheet &sheet, const Resale &resale,
                                          const Resale &asItStands, const OwnRecord &record, const MoneySettings &settings);

/// The unit's plan, or nullptr.
[[nodiscard]] const Plan *planOf(const UnitFile &file);

} // namespace ts
