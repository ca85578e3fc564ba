#pragma once

#include "model/sums/three_point.h"
#include "model/sums/weighted_sample.h"

#include <functional>
#include <vector>

namespace ts {

/// A distribution as a table of its quantiles, quick to draw from. Between the table's steps it is a straight line, so a draw is
/// off by less than a thousandth of the span but in the outermost thousandth.
class DrawTable {
public:
    DrawTable() : DrawTable(0) {}
    explicit DrawTable(double sure); ///< always the same value
    [[nodiscard]] static DrawTable of(const ThreePoint &points);
    /// The kernel estimate over a sample, nothing below zero. An empty sample gives 0.
    [[nodiscard]] static DrawTable of(const WeightedSample &sample, double width);
    /// By its distribution function between two ends, rising from 0 to 1 there.
    [[nodiscard]] static DrawTable of(double low, double high, const std::function<double(double)> &share);

    /// The value that a chance between 0 and 1 stands for.
    [[nodiscard]] double at(double chance) const
    {
        const double place = chance * steps;
        const auto step = static_cast<std::size_t>(place);
        const double from = m_values[step];
        return from + (m_values[step + 1] - from) * (place - static_cast<double>(step));
    }
    [[nodiscard]] double mean() const;
    /// All values times a factor above 0.
    [[nodiscard]] DrawTable times(double factor) const;

private:
    static constexpr int steps = 1024;
    std::vector<double> m_values; ///< at 0, 1/steps, …, 1, and the last once more
};

} // namespace ts
