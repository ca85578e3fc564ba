#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/sums/cost_sheet.h"

namespace ts {

/// What of a unit's plan can be typed.
enum class PlanField {
    Minutes,
    MinutesLow,
    MinutesHigh,
    Parts,
    PartsLow,
    PartsHigh,
    Resale,
    ResaleLow,
    ResaleHigh,
    CarriageOut,
    Packing,
    CarriageCharged,
    CarriageIn,
    Chance,
    DaysToSell,
    PartsValue,
    BreakingMinutes,
    ReturnUntil,
    ReturnRefund,
    ReturnCost
};

/// The unit's plan with one field set to what was typed, a new plan where there is none. Empty unsets it. Money, minutes ("4 h 30 m",
/// "4:30"), a share, days or a day, by the field. Refused where it cannot be read.
[[nodiscard]] Expected<Plan> planTyped(const UnitFile &file, const BenchFile &bench, PlanField field, const QString &typed, const QDate &today, Maker &maker);
/// The same for a line of the cost sheet (parts, carriage out, resale, hours).
[[nodiscard]] Expected<Plan> planTyped(const UnitFile &file, const BenchFile &bench, CostKey key, const QString &typed, Maker &maker);
/// How a field of the unit's plan reads, for editing; empty where it is not set.
[[nodiscard]] QString planText(const UnitFile &file, PlanField field);
/// The change that gives the unit this plan in place of the one it has; empty where they are equal.
[[nodiscard]] Change planChange(const UnitFile &file, const Plan &plan, const QString &typed);
/// The change that sets one line of the cost sheet's plan from what was typed.
[[nodiscard]] Expected<Change> planWith(const UnitFile &file, const BenchFile &bench, CostKey key, const QString &typed, Maker &maker);
/// Minutes of "4 h 30 m", "4h30", "4:30", "90 m", "90", "1.5 h"; refused below zero, past 10,000 hours, and what is none of these.
[[nodiscard]] Expected<int> minutesTyped(const QString &typed);

} // namespace ts
