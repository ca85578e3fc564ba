#pragma once

#include "model/sums/cost_sheet.h"

#include <QHash>

namespace ts {

/// The cost sheet's third column: each line as it will stand when the unit is finished and sold, if what is known today holds.
struct Completion {
    QHash<CostKey, Money> lines; ///< no entry where a line is not known
    int minutes = 0;             ///< the larger of planned and worked; as worked once the unit is closed
    QString why;                 ///< what the column rests on, in a sentence
};

/// Costs: as they are to date, and parts that are needed but not ordered yet; consumables and outside work at least as planned;
/// the overhead of the minutes still to come. Resale, fees and carriage as the sheet has them to date. A likely
/// value with its spread is the forecast's, not this column's.
[[nodiscard]] Completion atCompletion(const CostSheet &sheet, const UnitFile &file, const BenchFile &bench);

} // namespace ts
