#pragma once

#include "model/values/expected.h"

#include <QList>

namespace ts {

/// Mean, spread and lag-1 autocorrelation of a row of numbers.
struct Spread {
    qsizetype n = 0;
    double mean = 0;
    std::optional<double> sd;   ///< with n − 1; nothing for one number
    std::optional<double> lag1; ///< Σ d(i) d(i+1) / Σ d(i)²; nothing where all numbers are the same
    bool operator==(const Spread &) const = default;
};

/// Refuses an empty row and numbers that are not finite. Two passes with compensated sums: stable where one-pass sums of squares
/// lose every digit (NIST StRD NumAcc3). Definitions of NIST StRD, univariate summary statistics.
[[nodiscard]] Expected<Spread> spreadOf(const QList<double> &values);

/// The middle of a row: the mean of the two middle ones where their number is even. Refuses an empty row.
[[nodiscard]] Expected<double> medianOf(QList<double> values);

} // namespace ts
