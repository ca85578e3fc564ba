#pragma once

#include "model/values/expected.h"

#include <QList>

namespace ts {

/// A straight line that outliers do not pull.
struct RobustLine {
    double slope = 0;     ///< the median of the slopes of all pairs of points with different x
    double intercept = 0; ///< the median of y − slope · x
};

/// The Theil-Sen line (Hollander and Wolfe, Nonparametric Statistical Methods, 9.1). Exact for up to 1,500 points; for more the
/// slope is searched for by counting, to ten figures, in the order of n log² n. Refuses what fitLine refuses.
[[nodiscard]] Expected<RobustLine> theilSen(const QList<double> &x, const QList<double> &y);

/// The interval that holds the slope with 95 %: the slopes whose ranks are half of z √(n (n − 1)(2 n + 5) / 18) off the middle,
/// by the normal approximation of Kendall's statistic (Sen, JASA 63, 1968). Rows as theilSen takes them; `slope` is its.
struct SlopeInterval {
    double low = 0;
    double high = 0;
};
[[nodiscard]] SlopeInterval theilSenInterval(const QList<double> &x, const QList<double> &y, double slope);

/// The slopes of all pairs with different x, rising; for rows of a few hundred at most.
[[nodiscard]] QList<double> pairSlopes(const QList<double> &x, const QList<double> &y);

} // namespace ts
