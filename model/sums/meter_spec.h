#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// What a meter's data sheet promises: a share of the reading plus a fixed part. The true value lies within ± that.
class MeterSpec {
public:
    MeterSpec() = default;
    /// Reads terms joined by "+": "0.5% + 2 x 0.01 V", "0.5% + 0.1% of 40 V", "8 ppm + 0.3 uV", "0.7 % + 2 counts of 0.1 V",
    /// "0.05 V", "1% of reading". % and ppm without "of" are of the reading. A leading ± is allowed. Refuses rubbish, negative
    /// terms, fixed parts of different measures, a share of 100 % or more, and a bare "2 counts" that does not say of what.
    [[nodiscard]] static Expected<MeterSpec> parse(QStringView text);
    /// Of one range of a meter; `kelvinOutside` is how far the bench is outside the temperature the sheet holds for.
    /// Refuses a range whose measure cannot be read or whose figures are negative.
    [[nodiscard]] static Expected<MeterSpec> of(const MeterRange &range, double kelvinOutside = 0);

    [[nodiscard]] double shareOfReading() const { return m_share; } ///< 0.005 for 0.5 %
    [[nodiscard]] double fixedPart() const { return m_fixed; }      ///< in measure()
    [[nodiscard]] const Measure &measure() const { return m_measure; }

    /// Half width a of the promised interval, in the value's measure. Refuses another measure and over range.
    [[nodiscard]] Expected<double> halfWidth(const Quantity &value) const;
    /// u = a / √3: nothing but the bounds is known (JCGM 100:2008, 4.3.7).
    [[nodiscard]] Expected<double> standardUncertainty(const Quantity &value) const;
    /// U95 = 1.959964 u (normal coverage, infinitely many degrees of freedom), in the value's measure.
    [[nodiscard]] Expected<double> expanded95(const Quantity &value) const;
    bool operator==(const MeterSpec &) const = default;

private:
    double m_share = 0;
    double m_fixed = 0;
    Measure m_measure;
};

/// The smallest range of a meter that holds the value: |value| up to full scale, same measure. A range without full scale comes
/// last. Refuses a meter without such a range, naming it.
[[nodiscard]] Expected<MeterRange> rangeFor(const BenchFile &bench, const Id<Meter> &meter, const Quantity &value);
/// U95 of a value taken with a meter, in the value's measure, by its smallest sufficient range.
[[nodiscard]] Expected<double> uncertaintyOf(const BenchFile &bench, const Id<Meter> &meter, const Quantity &value);
/// The meter of that name (case and surrounding spaces aside; else the only one whose name contains it), or nullptr.
[[nodiscard]] const Meter *meterNamed(const BenchFile &bench, const QString &name);

} // namespace ts
