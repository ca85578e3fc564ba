#pragma once

#include "model/money/donor.h"

namespace ts {

/// Where all the money that was paid out stands. It is all somewhere: paid is the sum of the others.
struct MoneyPlaces {
    Money paid;       ///< out, less refunds: spends, parts bought for a unit, batches bought for the store
    Money onUnits;    ///< on units, their share of the store's parts counted
    Money inStock;    ///< batches that are left in the store, at cost
    Money overhead;   ///< on the bench as a whole
    Money writtenOff; ///< left on donors that are closed
    Money astray;     ///< taken out of the store at a cost that no unit bears: a part used up, lost, or counted at another price
    bool operator==(const MoneyPlaces &) const = default;
};

/// From all units, the spends of the bench as a whole, and the store's batches; sums in another currency without a rate stay out.
/// A need of a batch is paid by the batch, or by the donor that it came from; any other need that is ordered, here or fitted is
/// paid by itself.
[[nodiscard]] MoneyPlaces moneyPlaces(const QList<UnitFile> &units, const QList<Spend> &ofBench, const QList<Batch> &batches,
                                      const Currency &bench);

} // namespace ts
