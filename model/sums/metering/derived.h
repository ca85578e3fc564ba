#pragma once

#include "model/sums/metering/budget.h"
#include "model/values/words.h"

namespace ts {

/// A reading worked out from two others.
enum class Derived {
    Current, ///< drop over a resistor: U / R
    Power,   ///< volts over a load: U² / R
    Gain,    ///< 20 log10(out / in)
    Level,   ///< 20 log10(volts / reference)
    Ratio,   ///< left / right
    Balance  ///< left to right in decibels: 20 log10(left / right)
};

template <>
struct Words<Derived> {
    static constexpr std::array list{std::pair{Derived::Current, "current"}, std::pair{Derived::Power, "power"},
                                     std::pair{Derived::Gain, "gain"},       std::pair{Derived::Level, "level"},
                                     std::pair{Derived::Ratio, "ratio"},     std::pair{Derived::Balance, "balance"}};
};

/// One of the two, with its standard uncertainty in its own unit.
struct DerivedFrom {
    Quantity value;
    double standard = 0;
    double dof = std::numeric_limits<double>::infinity();
    QString name; ///< "drop over R12", for the budget
};

/// The result with its uncertainty, both inputs' shares carried through by their sensitivities and, where they are correlated
/// (two channels read with one range of one meter), the covariance term too. `correlation` is from −1 to 1. JCGM 100:2008, 5.1.2
/// and 5.2.2; with a correlation other than 0 the degrees of freedom are the smaller of the two, since Welch and Satterthwaite
/// holds for independent inputs alone. Refuses measures that do not belong, a resistance or reference not above 0, levels of
/// values not above 0.
[[nodiscard]] Expected<Budget> derivedReading(Derived kind, const DerivedFrom &first, const DerivedFrom &second,
                                              double correlation = 0);

/// Standard uncertainty of a function of several inputs: √(ΣΣ c_i c_j r_ij u_i u_j). JCGM 100:2008, equation 16.
[[nodiscard]] double propagated(const QList<double> &sensitivities, const QList<double> &standards,
                                const QList<QList<double>> &correlations);
/// Correlation of the means of two rows that were read together. JCGM 100:2008, 5.2.3; refuses rows of different length or under
/// two.
[[nodiscard]] Expected<double> correlationOfMeans(const QList<double> &a, const QList<double> &b);

/// derived for the command line and the page of sums.
[[nodiscard]] Sum derivedSum();

} // namespace ts
