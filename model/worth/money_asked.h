#pragma once

#include "model/desk/desk.h"
#include "model/money/unit_money.h"

namespace ts {

/// What of the rest of the workbook the money of a unit is worked out from; read once, good for every unit of its category.
struct MoneyAround {
    QList<Comparable> others; ///< comparables of its model and category, whoever's they are
    QList<PastUnit> past;     ///< the owner's closed units
};

/// Reads it. Refused where the workbook cannot be read.
[[nodiscard]] Expected<MoneyAround> moneyAround(Desk &desk, const Unit &unit);

/// All that the money of a unit is worked out from, read from the workbook.
[[nodiscard]] Expected<MoneyQuestion> moneyQuestion(Desk &desk, const UnitFile &file, const BenchFile &bench,
                                                    const QDateTime &now);

} // namespace ts
