#pragma once

#include "model/records/change.h"

#include <QString>

namespace ts {

/// What one jotted line amounts to: shown under the line while it is typed, applied when it is entered.
struct Jotted {
    QString what;    ///< the kind word: reading, symptom, cause, check, step, part, spend, teardown, left off, stage, proof, note
    QString badge;   ///< the kind and how it stands: "reading, outside"
    QString preview; ///< one plain sentence of what will be recorded
    QString question; ///< to be asked once before recording; empty where nothing is strange
    Change change;    ///< its sentence and its items, ready for Desk::apply; empty where the line changes nothing
};

} // namespace ts
