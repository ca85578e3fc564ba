#pragma once

namespace ts {

/// The chance that a t-distributed variable with `dof` degrees of freedom lies within ± t; dof above 0, infinite for the normal
/// law.
[[nodiscard]] double studentCoverage(double t, double dof);

/// The k that holds `coverage` (0 to 1) of the t law within ± k: 2.92078 for 0.99 and 16. Good to about 1e-12 for dof ≥ 1.
/// JCGM 100:2008, annex G, table G.2.
[[nodiscard]] double studentFactor(double coverage, double dof);

} // namespace ts
