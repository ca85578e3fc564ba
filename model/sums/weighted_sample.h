#pragma once

#include <QList>

namespace ts {

/// A value and how much it counts; only the proportions of the weights matter.
struct Weighted {
    double value = 0;
    double weight = 1;
    bool operator==(const Weighted &) const = default;
};

/// Values that do not count the same, in order of size. What has no weight, or no finite value, is left out.
class WeightedSample {
public:
    WeightedSample() = default;
    explicit WeightedSample(const QList<Weighted> &values);

    [[nodiscard]] bool isEmpty() const { return m_values.isEmpty(); }
    /// In ascending order, weights adding up to 1.
    [[nodiscard]] const QList<Weighted> &values() const { return m_values; }
    /// How many values of equal weight tell as much: (Σw)² / Σw² (Kish, Survey Sampling, 1965). 0 for none.
    [[nodiscard]] double effectiveNumber() const { return m_effective; }
    /// The value that a share p of the population stays below: type 8 of Hyndman and Fan (The American Statistician 50, 1996)
    /// in the weighted form of Akinshin (Weighted quantile estimators, arXiv:2304.07265); with equal weights exactly type 8.
    /// NaN for an empty sample or p outside 0 to 1.
    [[nodiscard]] double quantile(double p) const;
    [[nodiscard]] double mean() const; ///< NaN for an empty sample
    /// Standard deviation, unbiased for weights of reliability; with equal weights that with n − 1. 0 for a single value.
    [[nodiscard]] double deviation() const;
    /// Width of the kernel by Silverman's rule of thumb (Density Estimation, 1986, eq. 3.31):
    /// 0.9 × min(deviation, interquartile range / 1.34) × n^(−1/5), n the effective number. 0 where all values are the same.
    [[nodiscard]] double bandwidth() const;
    /// Gaussian kernel estimate of the density at x, for a width above 0.
    [[nodiscard]] double density(double x, double width) const;

private:
    QList<Weighted> m_values;
    double m_effective = 0;
};

} // namespace ts
