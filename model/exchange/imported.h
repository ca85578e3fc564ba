#pragma once

#include "model/exchange/line_list.h"
#include "model/records/change.h"

namespace ts {

/// What a file would bring into the workbook, before anything is done.
struct Imported {
    Change change;
    qint64 added = 0;   ///< units, comparables or records that the change brings
    qint64 skipped = 0; ///< already there
    LineList problems;  ///< where there is one, nothing is imported
    LineList warnings;  ///< taken in, but look at it
};

} // namespace ts
