#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// A unit as it comes in, with what is known of it then. Name and category are enough.
struct Arrival {
    Unit unit; ///< fresh; its owner and the time of its stage are filled in
    QString owner; ///< by name; a contact of that name is taken, else one is made
    std::optional<Money> paid;
    std::optional<Money> carriage;
    std::optional<int> minutesPlanned;
    std::optional<Money> resalePlanned;
    QList<TestPoint> points; ///< of a like unit, copied over as this unit's own
    QList<Proof> proofs; ///< what its category asks for before handover
};

/// The change that takes the unit in. Refused: no name, a stage that needs more than this (Held, Closed), a year that no unit can
/// be made in, money or minutes below zero.
[[nodiscard]] Expected<Change> takingIn(const Arrival &arrival, const BenchFile &bench, Maker &maker);

/// Whether a unit can have been made in that year, as of today.
[[nodiscard]] bool canBeMadeIn(int year, const QDate &today);

/// What a like unit hands on to one that comes in: name, maker, model, category, mains, protection class and test points. What is
/// this one's own (serial, claim, money, photos) is left alone.
void takeAfter(Arrival &arrival, const UnitFile &like);

} // namespace ts
