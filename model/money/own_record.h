#pragma once

#include "model/records/past_unit.h"

namespace ts {

/// What the owner's own closed units say of an estimate: the factor it is to be taken by, and how many units say so.
struct OwnFactor {
    double factor = 1;
    double plain = 1; ///< the middle of the ratios themselves, before doubt is taken off
    int count = 0;
    bool used = false; ///< too few units are shown, not used
    QString why;
};

/// A share of the owner's own units, drawn towards a starting value while there are few.
struct OwnShare {
    double share = 0;
    int times = 0;
    int count = 0;
    QString why;
};

/// The owner's record against what was expected.
struct OwnRecord {
    OwnFactor hours;               ///< hours taken against hours planned
    OwnFactor price;               ///< price fetched against the plan's likely one
    OwnShare repaired;             ///< sold, kept or handed back working, out of all closed; starting value: `startChance`
    OwnShare returned;             ///< came back, out of all sold; starting value: `startReturns`
    std::optional<int> daysToSell; ///< the middle of the days from offered to sold, of at least three
    int sold = 0;
};

/// From closed units, those of the category where at least five of it tell, else all. A factor is the middle of the ratios, drawn
/// towards 1 as n/(n + 5) of its logarithm, and used from three units on; a share is (k + 10 s)/(n + 10), s the starting value
/// (the weight of about ten like cases; trade practice). Both are choices of ours, shown with their counts.
[[nodiscard]] OwnRecord ownRecord(const QList<PastUnit> &past, Category category, double startChance, double startReturns);

/// The share of units of a category that volunteers put right on the day, and of how many: counted from the open repair records
/// of eight networks, 2019 to 2025 (Open Repair Alliance; the day's time limit pulls it down). The mean of all kinds for a
/// category that was not counted.
struct BaseRate {
    int put = 0;
    int of = 0;
    [[nodiscard]] double share() const { return of > 0 ? static_cast<double>(put) / of : 0.53; }
};
[[nodiscard]] BaseRate baseRate(Category category);

} // namespace ts
