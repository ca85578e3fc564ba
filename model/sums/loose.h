#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// So many things of one kind: 18 screws.
struct ThingCount {
    QString noun; ///< in the singular: "screw", "clip", "spring", "plug"
    int count = 0;
    bool operator==(const ThingCount &) const = default;
};

/// What lies loose while a unit is apart, and how far putting back has come.
struct Loose {
    QList<ThingCount> things; ///< of the items that are off, most first
    int count = 0;            ///< of all those things together
    int backCount = 0;        ///< of the items put back or left out for good
    int items = 0;            ///< items that are off
    int itemsBack = 0;        ///< put back
    int itemsLeftOut = 0;
    /// "18 screws, 1 clip, 1 spring, 2 plugs"; empty where nothing was counted.
    [[nodiscard]] QString text() const;
    [[nodiscard]] bool nothing() const { return items == 0; }
};

/// The small things of one teardown item by kind: what its fasteners, springs and connectors say, numbers as figures or words
/// ("5 × M3×8 black" are 5 screws, "1 E-clip 2 mm, two springs" 1 clip and 2 springs). Its own count holds for fasteners that
/// cannot be read. A connector whose number is not said is one plug.
[[nodiscard]] QList<ThingCount> thingsOf(const TeardownItem &item);

/// Counted live over a unit's teardown.
[[nodiscard]] Loose looseOf(const UnitFile &file);

/// "lid (5 screws), mechanism (3 screws)": the items that are off, for a sentence.
[[nodiscard]] QString looseItems(const UnitFile &file);

} // namespace ts
