#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// What was measured to order a belt by.
enum class BeltFrom { Path, OldBelt };

/// How long a new belt should be inside, in the unit of what was measured. Advice, common practice of the trade.
struct BeltLength {
    double length = 0;
    double shortest = 0; ///< 10 % shorter than what was measured
    double longest = 0;  ///< 4 % shorter than the path, 4.2 % than the old belt, which has stretched
};

/// `shorterPercent` is by how much the new belt is to be shorter: 5 % by habit, 6 % for square belts by a string round the path.
[[nodiscard]] BeltLength beltLength(double measured, BeltFrom from, double shorterPercent);

/// Metres of tape that pass in so many seconds at a speed in metres a second.
[[nodiscard]] double tapeMetres(double metresPerSecond, double seconds);
/// A tape speed in metres a second: "4.76 cm/s", "1 7/8 in/s", "7 1/2", a bare number being inches a second.
[[nodiscard]] Expected<double> tapeSpeed(const QString &text);

/// belt and tape-length for the command line and the page of sums.
[[nodiscard]] Sum beltSum();
[[nodiscard]] Sum tapeLengthSum();

} // namespace ts
