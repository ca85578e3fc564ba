#pragma once

#include "model/desk/rack_row.h"

class QIODevice;

namespace ts {

/// Writes the rack as a list for a spreadsheet: one row a unit, in the order of the tags.
/// `rows` are the rack's figures for the same units.
void writeUnits(QIODevice &device, const QList<Unit> &units, const QList<RackRow> &rows);

} // namespace ts
