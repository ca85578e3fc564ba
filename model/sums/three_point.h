#pragma once

#include "model/values/expected.h"

namespace ts {

/// An estimate in three points: hardly less, most likely, hardly more; read as a beta distribution between the ends (beta-PERT
/// with lambda 4: Malcolm and others, Operations Research 7, 1959; Vose, Risk Analysis).
struct ThreePoint {
    double low = 0;
    double likely = 0;
    double high = 0;

    /// Refuses points that are not in order, or not finite.
    [[nodiscard]] static Expected<ThreePoint> of(double low, double likely, double high);
    /// One value that is sure.
    [[nodiscard]] static ThreePoint sure(double value) { return {value, value, value}; }

    [[nodiscard]] bool isSure() const { return !(high > low); }
    /// (low + 4 likely + high) / 6.
    [[nodiscard]] double mean() const;
    /// √((mean − low)(high − mean) / 7): that of the beta distribution itself, not (high − low)/6.
    [[nodiscard]] double deviation() const;
    [[nodiscard]] std::optional<double> alpha() const; ///< 1 + 4 (likely − low)/(high − low); none where it is sure
    [[nodiscard]] std::optional<double> beta() const;  ///< 1 + 4 (high − likely)/(high − low)
    /// What it stays below with chance p.
    [[nodiscard]] double quantile(double p) const;
    /// All three points times a factor above 0.
    [[nodiscard]] ThreePoint times(double factor) const { return {low * factor, likely * factor, high * factor}; }
    bool operator==(const ThreePoint &) const = default;
};

} // namespace ts
