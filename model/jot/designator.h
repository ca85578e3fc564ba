#pragma once

#include <QString>

namespace ts {

/// A place on a circuit board as its print names it (C214, R12, IC3, TR5), in capitals; empty where the piece is none. X1 to X3
/// are classes of interference capacitors (IEC 60384-14) and no places; M3 is a screw.
[[nodiscard]] QString designator(const QString &piece);
/// All places named in a text, in order, joined by ", ".
[[nodiscard]] QString designatorsIn(const QString &text);

/// The places that a text begins with, and what follows them.
struct Placed {
    QString position; ///< "C214, C215"
    int places = 0;
    QString rest;
};
[[nodiscard]] Placed takePlaces(const QString &text);

} // namespace ts
