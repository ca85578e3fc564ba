#pragma once

#include "views/workplace.h"

class QWidget;

namespace ts {

/// Asks where to, writes the order list (of one unit, or of all where `unit` is nullptr) and keeps it.
void writeOrderList(Workplace &work, QWidget *parent, const Unit *unit);

/// The same for labels of the unit in hand: its own, or with `bags` those of what is off..
void writeLabels(Workplace &work, QWidget *parent, bool bags, int boxes = 1);
/// Prints the tag label of the unit in hand on a printer of the system, one to one.
void printLabel(Workplace &work, QWidget *parent);

} // namespace ts
