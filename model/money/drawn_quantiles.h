#pragma once

#include <array>
#include <vector>

namespace ts {

/// The values below which 1 in 10, half, and 9 in 10 of many finite draws lie: quantiles of type 8 (Hyndman and Fan, 1996),
/// exact, without sorting: draws are counted into buckets first, and only the buckets that hold a quantile are looked into. The
/// list must not be empty.
[[nodiscard]] std::array<double, 3> tenthMiddleNinth(const std::vector<double> &values);

} // namespace ts
