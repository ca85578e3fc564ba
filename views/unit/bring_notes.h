#pragma once

#include "model/faults/model_learning.h"

class QPushButton;
class QWidget;

namespace ts {

class Workplace;

/// Brings what the notes on the unit's model say onto it, in one action; says why where there is nothing to bring.
void bringNotes(Workplace &work, const NotesWish &wish);
/// A button that does so.
[[nodiscard]] QPushButton *notesButton(const QString &text, Workplace &work, const NotesWish &wish, QWidget *parent);

} // namespace ts
