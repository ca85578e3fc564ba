#pragma once

#include "model/records/past_unit.h"

namespace ts {

/// A unit that is not closed, for the overviews.
struct OpenUnit {
    Stage stage = Stage::Shelved;
    Money spent;
    int minutes = 0;
    QDate since;      ///< taken in
    QDate stageSince;
};

/// One bar of an overview, and its row in the table beside.
struct OverviewRow {
    QString key; ///< a stored word, a cause, "2026-03"; of ages the days they reach to, empty for what is older
    int units = 0;
    Money money;              ///< tied up, or earned
    int minutes = 0;          ///< taken
    int plannedMinutes = 0;   ///< of the units that had a plan; 0: none had
    int minutesOfPlanned = 0; ///< taken on those
    std::optional<double> days; ///< the middle one, from purchase to sale; or the longest in a stage
    std::optional<Money> perHour; ///< earned, for each hour taken
    bool operator==(const OverviewRow &) const = default;
};

/// How the bench does. Money is in its currency; a sum without a rate is in none of them.
struct Overviews {
    QList<OverviewRow> stages;     ///< money tied up by stage, all stages but closed, in their order
    QList<OverviewRow> ages;       ///< money tied up by how long ago it was taken in
    QList<OverviewRow> categories; ///< of the sold units: earned, earned per hour, hours planned and taken, days to the sale; most units first
    QList<OverviewRow> causes;     ///< confirmed causes by how often, most first; at most 20
    QList<OverviewRow> months;     ///< earned by month of sale, oldest first, without gaps
};

/// Earned is what came in for a unit less all that was spent on it; hours are not in it. `causes` are the texts of confirmed causes, of one
/// unit each.
[[nodiscard]] Overviews overviews(const QList<OpenUnit> &open, const QList<PastUnit> &past, const QStringList &causes, const QDate &today);

} // namespace ts
