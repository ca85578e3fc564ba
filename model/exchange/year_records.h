#pragma once

#include "model/desk/desk.h"
#include "model/money/year_books.h"
#include "model/sums/cost_sheet.h"

namespace ts {

/// All that the books of any year are made from.
[[nodiscard]] Expected<BooksInput> readBooks(Desk &desk);

/// The cost sheet of one unit as it stands.
struct UnitCosts {
    int tag = 0;
    QString name;
    QString stage;
    CostSheet sheet;
};
/// Those of every unit in a year's stock book, by tag. `progress` is told how many are read and may stop it.
[[nodiscard]] Expected<QList<UnitCosts>> readCostSheets(Desk &desk, const YearBooks &books, const Progress &progress = {});

} // namespace ts
