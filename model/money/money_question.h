#pragma once

#include "model/money/own_record.h"
#include "model/records/unit_file.h"

namespace ts {

/// All that the money of one unit is worked out from, as plain copies.
struct MoneyQuestion {
    UnitFile file;
    BenchFile bench;
    QList<Comparable> others; ///< comparables of no unit or of other units; those that are not like it are passed over
    QList<PastUnit> past;     ///< the owner's closed units
    QDateTime now;
};

} // namespace ts
