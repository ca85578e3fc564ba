#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// What a unit of a lot is apportioned by; what a method does not need may be left out.
struct LotUnit {
    Id<Unit> unit;
    QString name;
    double value = 0;    ///< as found, in minor units
    double weight = 0;   ///< in any unit, the same for all
    double restored = 0; ///< what it would fetch restored, in minor units
    double cost = 0;     ///< to get it there
    bool good = true;    ///< carries a share where all is put on the good ones
};

struct LotShare {
    Id<Unit> unit;
    Money price;
    Money carriage; ///< by the same key, but apart: it is no part of a margin scheme's purchase price
    QString why;    ///< "150 of 240 by value"
    bool operator==(const LotShare &) const = default;
};

/// Shares a lot's price and its carriage out by the lot's method, exact to the minor unit (largest remainder, ties to the
/// earlier). By value as found; equal; by weight; by restored value less the cost to complete (never below zero); all on the good
/// ones, by value where one is known, the rest at zero. Tax guidance asks for fair and reasonable shares that add up to the
/// price, and names no method (HMRC VATMARG13100). Refused by name: a lot without a price, units that the method has no figure
/// for.
[[nodiscard]] Expected<QList<LotShare>> lotShares(const Lot &lot, const QList<LotUnit> &units);

/// The shares as purchases and carriage on the units, in one change. Fixed at purchase: refused without the reason why the method
/// is fair, and where shares were recorded already (`known`: spends of the units and the bench).
[[nodiscard]] Expected<Change> shareOutLot(const Lot &lot, const QList<LotShare> &shares, const QList<Spend> &known,
                                           Maker &maker);

/// "by value as found"; the words for people.
[[nodiscard]] QString methodText(LotMethod method);

} // namespace ts
