#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// A straight line through points by least squares, with what it can say of itself.
struct LineFit {
    qsizetype n = 0;
    double slope = 0;
    double intercept = 0;
    double r2 = 0;                ///< share of the variation that the line explains; 1 where all y are the same
    double regressionSquares = 0; ///< sum of squares, 1 degree of freedom
    double residualSquares = 0;   ///< sum of squares, n − 2 degrees of freedom
    double correlation = 0;       ///< of slope and intercept
    // Nothing for two points, which leave no degree of freedom:
    std::optional<double> residualSd;
    std::optional<double> slopeSd;
    std::optional<double> interceptSd;
    std::optional<double> slopeHalf95; ///< half width that holds the slope with 95 %, by the t law with n − 2

    /// The line at x.
    [[nodiscard]] double at(double x) const { return intercept + slope * x; }
};

/// Fits y to x. Compensated sums about the means: the certified digits of NIST StRD Norris to twelve figures. Refuses rows of
/// different length, fewer than two points, x that are all the same, and numbers that are not finite.
[[nodiscard]] Expected<LineFit> fitLine(const QList<double> &x, const QList<double> &y);

/// line-fit for the command line and the page of sums.
[[nodiscard]] Sum lineFitSum();

} // namespace ts
