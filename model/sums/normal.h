#pragma once

namespace ts {

/// The factor between standard uncertainty and the half width that holds 95 % under the normal law: Φ⁻¹(0.975).
inline constexpr double coverage95 = 1.959963984540054;

/// Φ(z), the chance that a standard normal variable is at most z; right in both tails (by erfc).
[[nodiscard]] double normalCdf(double z);

/// Φ⁻¹(p): the z that a standard normal variable stays below with chance p. −∞ at 0, +∞ at 1, NaN outside [0, 1].
/// Good to about 1e-15: the start is Abramowitz and Stegun 26.2.23, sharpened by Halley steps on erfc.
[[nodiscard]] double normalInverse(double p);

} // namespace ts
