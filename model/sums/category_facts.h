#pragma once

#include "model/records/unit.h"

#include <QStringList>

namespace ts {

/// Hazards that a category can hold (trade knowledge; the wording of each is in cautions.cpp).
enum class Hazard {
    Mains,
    StoredCharge,
    SwitchingPrimary,
    PictureTube,
    Laser,
    Lithium,
    ValveHighTension,
    LiveChassis,
    Lifting,
    OldMaterials,
    TestGearPrecaution
};

/// Something that is tried before a unit of the category is handed over.
struct AcceptanceArea {
    QString name;      ///< "record and erase"
    QStringList words; ///< a proof or a reading as it leaves that has a word beginning with one of these is about it
};

/// Parts of limited life, worth a line where no record says that they were renewed.
struct WornParts {
    QString name;            ///< "Belts"
    QStringList words;       ///< a fitted need or a renewing step that has a word beginning with one of these renews them
    bool byPosition = false; ///< capacitors: positions such as C214 count too
};

struct CategoryFacts {
    bool mainsPowered = true; ///< where its plate says nothing
    bool soaked = true;       ///< running it for hours tells something
    QList<Hazard> hazards;
    QList<AcceptanceArea> acceptance;
    QList<WornParts> worn;
};

/// What is known of a category. Common practice of the trade; no standard lists these.
[[nodiscard]] CategoryFacts factsOf(Category category);

/// Whether a unit runs from the mains: by its protection class (III does not) and plate, else as its category usually does.
[[nodiscard]] bool mainsPowered(const Unit &unit);

} // namespace ts
