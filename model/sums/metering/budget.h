#pragma once

#include "model/sums/meter_spec.h"
#include "model/sums/statistics/uncertainty.h"

namespace ts {

/// One line of an uncertainty budget.
struct BudgetLine {
    QString text;        ///< in words: "bench meter, 40 V range: ± 0.044 V, a rectangle"
    double standard = 0; ///< standard uncertainty in the unit of the value
    double dof = std::numeric_limits<double>::infinity();
    double share = 0; ///< of the combined variance, 0 to 1
};

/// A value with how sure it is, and why.
struct Budget {
    Quantity value; ///< the mean where it was read several times
    QList<BudgetLine> lines;
    CombinedUncertainty sum; ///< in the unit of the value; expanded holds 95 %
    /// The budget for people, a line each, the result last: "together ± 0.05 V (95 %, k = 1.96)".
    [[nodiscard]] QStringList words() const;
};

/// Something the user adds: half width or standard uncertainty in the unit of the value.
struct OwnTerm {
    QString text;
    UncertaintyTerm term;
};

/// How a value was taken.
struct ReadingTaken {
    QList<Quantity> repeats;           ///< one or more, of comparable measures
    std::optional<MeterSpec> accuracy; ///< of the meter on its range; none: only repeats and own terms count
    QString meterText;                 ///< "bench meter, 40 V range"
    QList<OwnTerm> terms;
};

/// The budget of a value: the meter's accuracy as a rectangle (JCGM 100:2008, 4.3.7), the standard deviation of the mean of
/// repeat readings with n − 1 degrees of freedom (4.2.3), and the user's own terms, combined as a root sum of squares with the
/// effective degrees of freedom of Welch and Satterthwaite and k of the t law for 95 %. Refuses no readings, over range, "<" and
/// ">", measures that do not compare, and an accuracy of another measure.
[[nodiscard]] Expected<Budget> budgetOf(const ReadingTaken &taken);

/// The same with the meter's smallest range that holds the mean, at a bench of so many °C. A meter without such a range is
/// refused.
[[nodiscard]] Expected<Budget> budgetWith(const BenchFile &bench, const Id<Meter> &meter, const QList<Quantity> &repeats,
                                          std::optional<double> celsius = {}, const QList<OwnTerm> &terms = {});

/// "40 V range", "400 mV range" of 0.4 V; empty where the range has no full scale.
[[nodiscard]] QString rangeText(const MeterRange &range);

/// budget for the command line and the page of sums: repeat readings, a meter's data sheet, own terms.
[[nodiscard]] Sum budgetSum();

} // namespace ts
