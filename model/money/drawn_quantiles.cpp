#include "model/money/drawn_quantiles.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

constexpr std::size_t buckets = 4096;

/// A place in the order of the draws, from 0, and what stands there once it is found.
struct Wanted {
    std::size_t place = 0;
    std::size_t bucket = 0;
    std::size_t before = 0; ///< how many draws lie in buckets below
    double value = 0;
};

} // namespace

std::array<double, 3> tenthMiddleNinth(const std::vector<double> &values)
{
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const double from = *least;
    const double scale = *most > from ? (buckets - 1) / (*most - from) : 0;
    if (scale <= 0 || !std::isfinite(scale))
        return {from, from, from};
    const auto bucketOf = [&](double value) { return static_cast<std::size_t>((value - from) * scale); };
    std::vector<std::size_t> counts(buckets, 0);
    for (const double value : values)
        ++counts[bucketOf(value)];

    // Two places for each quantile: type 8 lies between neighbours.
    const auto n = static_cast<double>(values.size());
    std::array<Wanted, 6> wanted;
    std::array<double, 3> parts;
    constexpr std::array ps{0.1, 0.5, 0.9};
    for (std::size_t i = 0; i < ps.size(); ++i) {
        const double h = std::clamp(1.0 / 3 + (n + 1.0 / 3) * ps[i], 1.0, n);
        parts[i] = h - std::floor(h);
        wanted[2 * i].place = static_cast<std::size_t>(h) - 1;
        wanted[2 * i + 1].place = std::min(values.size() - 1, static_cast<std::size_t>(h));
    }
    for (Wanted &each : wanted)
        while (each.before + counts[each.bucket] <= each.place)
            each.before += counts[each.bucket++];
    std::vector<bool> looked(buckets, false);
    for (const Wanted &each : wanted)
        looked[each.bucket] = true;
    std::vector<double> near;
    for (const double value : values)
        if (looked[bucketOf(value)])
            near.push_back(value);
    std::sort(near.begin(), near.end());
    for (Wanted &each : wanted) {
        const auto first =
            std::partition_point(near.begin(), near.end(), [&](double value) { return bucketOf(value) < each.bucket; });
        each.value = *(first + static_cast<std::ptrdiff_t>(each.place - each.before));
    }
    std::array<double, 3> made;
    for (std::size_t i = 0; i < made.size(); ++i)
        made[i] = wanted[2 * i].value + parts[i] * (wanted[2 * i + 1].value - wanted[2 * i].value);
    return made;
}

} // namespace ts
