#pragma once

#include "model/values/expected.h"

#include <QList>

namespace ts {

/// A suspect, and what it takes to settle it by its own check or repair.
struct SuspectCost {
    double weight = 0; ///< how likely against the others, 0 or more
    double minutes = 0;
};

/// In which order to settle suspects.
struct CheckOrder {
    QList<qsizetype> order;     ///< places in the list that was given, first to settle first
    double expectedMinutes = 0; ///< until the guilty one is settled, it included
};

/// The order of least expected minutes where just one suspect is guilty and each is settled for certain by itself: by minutes
/// over weight (the p/c rule of sequential diagnosis, Kalagnanam and Henrion, arXiv 1304.2362). The last suspect is not taken as
/// proven: it is paid for like the others. Ties go to the cheaper, then to the one entered first. Refuses an empty list, weights
/// and minutes below 0 or not finite, and weights that are all 0.
[[nodiscard]] Expected<CheckOrder> checkOrder(const QList<SuspectCost> &suspects);

/// The expected minutes of settling them in a given order.
[[nodiscard]] double expectedMinutes(const QList<SuspectCost> &suspects, const QList<qsizetype> &order);

} // namespace ts
