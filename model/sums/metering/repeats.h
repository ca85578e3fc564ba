#pragma once

#include "model/values/quantity.h"

#include <QList>

namespace ts {

/// Readings of one value, parted by semicolons: "11.92; 11.93; 11.91 V". A bare number takes the unit behind the last, else
/// `expected`. Refuses what is no value, naming it, and units that do not compare.
[[nodiscard]] Expected<QList<Quantity>> repeatedReadings(const QString &text, const Measure &expected = {});

/// The readings as a record keeps them: "11.92; 11.93; 11.91", in the unit of the first.
[[nodiscard]] QString repeatsText(const QList<Quantity> &repeats);

} // namespace ts
