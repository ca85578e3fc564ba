#include "model/sums/statistics/student_t.h"

#include "model/sums/beta.h"
#include "model/sums/normal.h"

#include <cmath>
#include <numbers>

namespace ts {

namespace {

double density(double t, double dof)
{
    const double constant = std::lgamma((dof + 1) / 2) - std::lgamma(dof / 2) - 0.5 * std::log(dof * std::numbers::pi);
    return std::exp(constant - (dof + 1) / 2 * std::log1p(t * t / dof));
}

/// Abramowitz and Stegun, 26.7.5: the t law as the normal law with corrections in 1 / dof.
double start(double z, double dof)
{
    const double z2 = z * z;
    const double g1 = (z2 + 1) * z / 4;
    const double g2 = ((5 * z2 + 16) * z2 + 3) * z / 96;
    const double g3 = (((3 * z2 + 19) * z2 + 17) * z2 - 15) * z / 384;
    return z + (g1 + (g2 + g3 / dof) / dof) / dof;
}

} // namespace

double studentCoverage(double t, double dof)
{
    if (std::isinf(dof))
        return 1 - 2 * normalCdf(-std::abs(t));
    return betaCdf(0.5, dof / 2, t * t / (dof + t * t));
}

double studentFactor(double coverage, double dof)
{
    const double z = normalInverse((1 + coverage) / 2);
    if (std::isinf(dof) || dof > 1e7)
        return z;
    if (dof < 3) {
        const double share = betaQuantile(0.5, dof / 2, coverage);
        return std::sqrt(dof * share / (1 - share));
    }
    double t = start(z, dof);
    for (int step = 0; step < 6; ++step) {
        const double change = (studentCoverage(t, dof) - coverage) / (2 * density(t, dof));
        t -= change;
        if (std::abs(change) < 1e-13 * t)
            break;
    }
    return t;
}

} // namespace ts
