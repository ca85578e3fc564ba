#pragma once

#include "model/records/unit_file.h"
#include "model/sums/statistics/line_fit.h"

namespace ts {

enum class SoakVerdict { TooFew, Steady, Drifting, Out };

template <>
struct Words<SoakVerdict> {
    static constexpr std::array list{std::pair{SoakVerdict::TooFew, "too_few"}, std::pair{SoakVerdict::Steady, "steady"},
                                     std::pair{SoakVerdict::Drifting, "drifting"}, std::pair{SoakVerdict::Out, "out"}};
};

/// One reading of a soak, in the soak's measure.
struct SoakPoint {
    double hours = 0; ///< since the soak was started
    double value = 0;
    bool operator==(const SoakPoint &) const = default;
};

/// How a value went while a unit ran for hours.
struct SoakCourse {
    Id<Soak> soak;
    Measure measure;           ///< of the first reading; readings in another prefix are brought to it
    QList<SoakPoint> points;   ///< oldest first; what is over range or of another measure is left out
    int leftOut = 0;
    std::optional<double> low; ///< of what is wanted, in `measure`
    std::optional<double> high;
    std::optional<LineFit> fit; ///< value over hours; from three readings on
    SoakVerdict verdict = SoakVerdict::TooFew;

    // Drift in `measure` an hour and the 95 % interval around it.
    [[nodiscard]] std::optional<double> drift() const { return fit ? std::optional(fit->slope) : std::nullopt; }
    [[nodiscard]] std::optional<double> driftLow() const { return fit && fit->slopeHalf95 ? std::optional(fit->slope - *fit->slopeHalf95) : std::nullopt; }
    [[nodiscard]] std::optional<double> driftHigh() const { return fit && fit->slopeHalf95 ? std::optional(fit->slope + *fit->slopeHalf95) : std::nullopt; }
};

/// Out where a reading is outside what is wanted (by its own uncertainty, judge()); else drifting where the 95 % interval of the drift, by
/// least squares and the t law with n − 2 degrees of freedom, does not hold zero; else steady. Too few below three readings.
[[nodiscard]] SoakCourse soakCourse(const UnitFile &file, const Soak &soak);

} // namespace ts
