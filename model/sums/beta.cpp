#include "model/sums/beta.h"

#include <cmath>
#include <limits>

namespace ts {

namespace {

/// The continued fraction of DLMF 8.17.22 by Lentz's method; quick where x < (alpha + 1) / (alpha + beta + 2).
double fraction(double alpha, double beta, double x)
{
    constexpr double tiny = 1e-300;
    const auto safe = [](double value) { return std::abs(value) < tiny ? tiny : value; };
    double c = 1;
    double d = 1 / safe(1 - (alpha + beta) * x / (alpha + 1));
    double result = d;
    for (int m = 1; m < 1000; ++m) {
        const double even = m * (beta - m) * x / ((alpha + 2 * m - 1) * (alpha + 2 * m));
        d = 1 / safe(1 + even * d);
        c = safe(1 + even / c);
        result *= d * c;
        const double odd = -(alpha + m) * (alpha + beta + m) * x / ((alpha + 2 * m) * (alpha + 2 * m + 1));
        d = 1 / safe(1 + odd * d);
        c = safe(1 + odd / c);
        result *= d * c;
        if (std::abs(d * c - 1) < std::numeric_limits<double>::epsilon())
            break;
    }
    return result;
}

} // namespace

double betaCdf(double alpha, double beta, double x)
{
    if (std::isnan(x))
        return x;
    if (x <= 0)
        return 0;
    if (x >= 1)
        return 1;
    if (x > (alpha + 1) / (alpha + beta + 2))
        return 1 - betaCdf(beta, alpha, 1 - x);
    const double front = std::exp(std::lgamma(alpha + beta) - std::lgamma(alpha) - std::lgamma(beta) + alpha * std::log(x) +
                                  beta * std::log1p(-x));
    return front * fraction(alpha, beta, x) / alpha;
}

double betaQuantile(double alpha, double beta, double p)
{
    if (std::isnan(p) || p < 0 || p > 1)
        return std::numeric_limits<double>::quiet_NaN();
    // Halving is slow and cannot go wrong; 60 halvings use up a double.
    double low = 0;
    double high = 1;
    for (int step = 0; step < 60 && low < high; ++step) {
        const double middle = (low + high) / 2;
        (betaCdf(alpha, beta, middle) < p ? low : high) = middle;
    }
    return p >= 1 ? 1 : (low + high) / 2;
}

} // namespace ts
