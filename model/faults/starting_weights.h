#pragma once

#include "model/records/cause.h"

#include <QList>

namespace ts {

/// The likelihoods that causes start with, adding up to 1: typed weights as they are; what they leave of 1 is shared alike by the
/// causes without one and "something else". Where they leave too little, "something else" takes elseFloor and a cause without
/// weight half of that, and all are brought to 1. One for each cause, in their order, then one more for "something else" where
/// none of them is that.
[[nodiscard]] QList<double> startingWeights(const QList<Cause> &causes);

} // namespace ts
