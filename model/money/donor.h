#pragma once

#include "model/records/batch.h"
#include "model/sums/spent.h"

namespace ts {

/// How the cost of a donor stands: what it came to, what moved into its parts, what is left on it.
struct Donor {
    Money cost;
    Money moved;
    Money left;              ///< never below zero: parts can take no more than it cost
    bool writtenOff = false; ///< it is closed as broken for parts or scrapped, so what is left is a loss
    QString why;
};
[[nodiscard]] Donor donorOf(const UnitFile &file, const QList<Batch> &batches, const Currency &bench);

/// What one lot of like parts may take of a donor's cost: their worth, but no more than is left. Whole minor units each, so what
/// does not come out even stays on the donor.
struct TakenCost {
    Money each;
    Money moved; ///< each × quantity
    Money left;
};
/// Refuses a quantity below 1 and a worth below zero or in another currency.
[[nodiscard]] Expected<TakenCost> takeFromDonor(const Money &left, const Money &worthEach, int quantity);

} // namespace ts
