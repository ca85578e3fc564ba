#pragma once

#include "model/sums/reckon.h"

#include <limits>

namespace ts {

/// One contribution to an uncertainty: a half width or standard deviation with what makes a standard uncertainty of it.
struct UncertaintyTerm {
    double value = 0;
    double divisor = 1;     ///< √3 for a rectangle, √6 for a triangle, √2 for the arc sine, 1 for a standard uncertainty
    double sensitivity = 1; ///< how much the result changes with the contribution
    double dof = std::numeric_limits<double>::infinity();

    /// |sensitivity · value / divisor|.
    [[nodiscard]] double standard() const;
    bool operator==(const UncertaintyTerm &) const = default;
};

/// What the contributions come to.
struct CombinedUncertainty {
    double standard = 0;                                  ///< root sum of squares
    double dof = std::numeric_limits<double>::infinity(); ///< effective, by Welch and Satterthwaite
    double k = 0;        ///< of the t law at the next lower whole number of degrees of freedom (JCGM 100:2008, G.4.1)
    double expanded = 0; ///< k · standard
    bool operator==(const CombinedUncertainty &) const = default;
};

/// Combines independent contributions; `coverage` is what the expanded uncertainty holds. JCGM 100:2008, 5.1.2 and annex G.
[[nodiscard]] CombinedUncertainty combined(const QList<UncertaintyTerm> &terms, double coverage = 0.95);

/// Reads "value:divisor:sensitivity:dof", parts left out at the end being 1, 1 and infinite; the divisor also as one of
/// rectangular, triangular, arcsine and normal. Refuses rubbish, divisors and degrees of freedom not above 0, naming the term.
[[nodiscard]] Expected<UncertaintyTerm> parseTerm(const QString &text);

/// uncertainty for the command line and the page of sums.
[[nodiscard]] Sum uncertaintySum();

} // namespace ts
