#include "model/money/draw_table.h"

#include "model/sums/normal.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ts {

namespace {

/// The chances of staying below each of evenly spaced places from 0 to 1.
using Shares = std::vector<double>;

/// The beta distribution's, by Gauss-Legendre with three points a cell; it only has to be good to a table's step.
Shares betaShares(double alpha, double beta, int cells)
{
    constexpr double node = 0.7745966692414834; // √(3/5)
    const auto density = [&](double x) { return std::exp((alpha - 1) * std::log(x) + (beta - 1) * std::log1p(-x)); };
    Shares shares{0};
    const double half = 0.5 / cells;
    for (int i = 0; i < cells; ++i) {
        const double middle = (2 * i + 1) * half;
        const double cell = 5 * density(middle - half * node) + 8 * density(middle) + 5 * density(middle + half * node);
        shares.push_back(shares.back() + cell);
    }
    for (double &share : shares)
        share /= shares.back() > 0 ? shares[static_cast<std::size_t>(cells)] : 1;
    return shares;
}

/// The quantiles at even chances, of a distribution over evenly spaced places from low to high.
std::vector<double> quantiles(const Shares &shares, double low, double high, int steps)
{
    const double cell = (high - low) / static_cast<double>(shares.size() - 1);
    std::vector<double> values;
    values.reserve(static_cast<std::size_t>(steps) + 2);
    std::size_t at = 0;
    for (int i = 0; i <= steps; ++i) {
        const double wanted = static_cast<double>(i) / steps;
        while (at + 2 < shares.size() && shares[at + 1] < wanted)
            ++at;
        const double rise = shares[at + 1] - shares[at];
        const double part = rise > 0 ? std::clamp((wanted - shares[at]) / rise, 0.0, 1.0) : 0.0;
        values.push_back(low + cell * (static_cast<double>(at) + part));
    }
    values.push_back(values.back());
    return values;
}

} // namespace

DrawTable::DrawTable(double sure) : m_values(steps + 2, sure) {}

DrawTable DrawTable::of(const ThreePoint &points)
{
    if (points.isSure())
        return DrawTable(points.likely);
    DrawTable made;
    made.m_values = quantiles(betaShares(*points.alpha(), *points.beta(), 2 * steps), points.low, points.high, steps);
    return made;
}

DrawTable DrawTable::of(double low, double high, const std::function<double(double)> &share)
{
    if (!(high > low))
        return DrawTable(low);
    Shares shares;
    for (int i = 0; i <= steps; ++i)
        shares.push_back(share(low + (high - low) * i / steps));
    shares.front() = 0;
    shares.back() = 1;
    DrawTable made;
    made.m_values = quantiles(shares, low, high, steps);
    return made;
}

DrawTable DrawTable::of(const WeightedSample &sample, double width)
{
    if (sample.isEmpty() || !(width > 0))
        return DrawTable(sample.isEmpty() ? 0 : sample.quantile(0.5));
    constexpr double reach = 4; // beyond four widths a kernel has 0.00003 left
    const double low = std::max(0.0, sample.values().first().value - reach * width);
    const double high = sample.values().last().value + reach * width;
    const auto share = [&](double x) {
        double sum = 0;
        for (const Weighted &each : sample.values()) {
            const double z = (x - each.value) / width;
            sum += z > reach ? each.weight : z < -reach ? 0 : each.weight * normalCdf(z);
        }
        return sum;
    };
    // What the kernels have below zero belongs to nobody: the rest stands for all.
    const double lost = low > 0 ? 0 : share(0);
    return of(low, high, [&](double x) { return (share(x) - lost) / (1 - lost); });
}

DrawTable DrawTable::times(double factor) const
{
    DrawTable made = *this;
    for (double &value : made.m_values)
        value *= factor;
    return made;
}

double DrawTable::mean() const
{
    const double inner = std::accumulate(m_values.begin() + 1, m_values.begin() + steps, 0.0);
    return (inner + (m_values[0] + m_values[steps]) / 2) / steps;
}

} // namespace ts
