#pragma once

namespace ts {

/// The chance that a beta-distributed share stays at or below x: the regularized incomplete beta function I_x(alpha, beta) by
/// its continued fraction (NIST Digital Library of Mathematical Functions, 8.17.22). Good to about 1e-14; alpha, beta > 0.
[[nodiscard]] double betaCdf(double alpha, double beta, double x);

/// The share that a beta-distributed one stays below with chance p; 0 and 1 at the ends.
[[nodiscard]] double betaQuantile(double alpha, double beta, double p);

} // namespace ts
