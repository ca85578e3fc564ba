#pragma once

#include "model/values/quantity.h"

namespace ts {

/// What the amounts of a limit are to each other.
enum class Shape { Aim, Band, AtMost, AtLeast, Relative, Absolute, Decibels };

/// A limit as it was put: one or two amounts and what they are to each other.
struct Wanted {
    Shape shape = Shape::Aim;
    Quantity first;  ///< the aim, the lower end, or the only end
    Quantity second; ///< the upper end or the tolerance; in "%", "ppm", "dB" or the measure of the aim
};

/// Reads what Limit::parse reads, without working out its ends. The Trouble has no first part: Limit names the text.
[[nodiscard]] Expected<Wanted> readWanted(QStringView text, const Measure &expected);
/// The canonical jot form, "12 V 5%"; readWanted takes it back as the same.
[[nodiscard]] QString jotted(const Wanted &wanted);
/// For people: "12 V ± 5 %".
[[nodiscard]] QString display(const Wanted &wanted);

} // namespace ts
