#include "model/sums/weighted_sample.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace ts {

WeightedSample::WeightedSample(const QList<Weighted> &values)
{
    double sum = 0;
    for (const Weighted &each : values)
        if (std::isfinite(each.value) && std::isfinite(each.weight) && each.weight > 0) {
            m_values << each;
            sum += each.weight;
        }
    std::stable_sort(m_values.begin(), m_values.end(), [](const Weighted &a, const Weighted &b) { return a.value < b.value; });
    double squares = 0;
    for (Weighted &each : m_values) {
        each.weight /= sum;
        squares += each.weight * each.weight;
    }
    if (!m_values.isEmpty())
        m_effective = 1 / squares;
}

double WeightedSample::quantile(double p) const
{
    if (m_values.isEmpty() || !(p >= 0 && p <= 1))
        return std::numeric_limits<double>::quiet_NaN();
    // Each value is laid out as a stretch as long as its weight; the quantile is the mean over a window one value wide whose
    // place is type 8's position h = 1/3 + (n + 1/3) p, from (h − 1)/n to h/n.
    const double h = std::clamp(1.0 / 3 + (m_effective + 1.0 / 3) * p, 1.0, m_effective);
    double reached = 0;
    double before = 0;
    double sum = 0;
    for (const Weighted &each : m_values) {
        reached += each.weight;
        const double share = std::clamp(reached * m_effective - (h - 1), 0.0, 1.0);
        sum += (share - before) * each.value;
        before = share;
    }
    // The weights add up to 1 but for rounding; what is missing of the window belongs to the last value.
    return sum + (1 - before) * m_values.last().value;
}

double WeightedSample::mean() const
{
    if (m_values.isEmpty())
        return std::numeric_limits<double>::quiet_NaN();
    double sum = 0;
    for (const Weighted &each : m_values)
        sum += each.weight * each.value;
    return sum;
}

double WeightedSample::deviation() const
{
    if (m_values.size() < 2)
        return 0;
    const double middle = mean();
    double sum = 0;
    for (const Weighted &each : m_values)
        sum += each.weight * (each.value - middle) * (each.value - middle);
    const double left = 1 - 1 / m_effective;
    return left > 0 ? std::sqrt(sum / left) : 0;
}

double WeightedSample::bandwidth() const
{
    if (m_values.size() < 2)
        return 0;
    double width = deviation();
    if (const double quarters = (quantile(0.75) - quantile(0.25)) / 1.34; quarters > 0)
        width = std::min(width, quarters);
    return 0.9 * width * std::pow(m_effective, -0.2);
}

double WeightedSample::density(double x, double width) const
{
    double sum = 0;
    for (const Weighted &each : m_values) {
        const double z = (x - each.value) / width;
        sum += each.weight * std::exp(-0.5 * z * z);
    }
    return sum / (width * std::sqrt(2 * std::numbers::pi));
}

} // namespace ts
