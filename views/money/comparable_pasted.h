#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// What several lines at once bring.
struct PastedSales {
    Change change;
    int added = 0;
    int there = 0; ///< lines that say what is written down already
};

/// The sales of a pasted text or a file: a list with a header (comma, semicolon or tab; the columns of the list of comparables), or one
/// sale a line as it would be typed ("118.00 27 Sep working, measured"), its cells parted by tabs, semicolons or commas. They are put on
/// this unit, model and category. Refused as a whole where a line cannot be read, by its number.
[[nodiscard]] Expected<PastedSales> salesPasted(const QString &text, const UnitFile &file, const BenchFile &bench, const QDate &today, Maker &maker);

} // namespace ts
