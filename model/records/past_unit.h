#pragma once

#include "model/records/plan.h"
#include "model/records/unit.h"

namespace ts {

/// What became of a unit that is closed: what sums over the owner's own record are made from.
struct PastUnit {
    Id<Unit> unit;
    int tag = 0;
    QString name;
    Category category = Category::Other;
    Outcome outcome = Outcome::Sold;
    std::optional<int> plannedMinutes;
    int minutes = 0;
    std::optional<Money> plannedResale; ///< the plan's likely one, in the bench's currency
    std::optional<Money> soldFor;       ///< in the bench's currency
    Money spent;
    QDate boughtOn;
    QDate offeredOn; ///< as it came to Offered
    QDate soldOn;
    bool cameBack = false; ///< money was given back after the sale
};

} // namespace ts
