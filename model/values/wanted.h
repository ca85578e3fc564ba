#pragma once

#include "model/values/quantity.h"

#include <functional>

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
/// How the parts of a limit read in one place: the only differences that there may be in how it is spelled.
struct WantedForm {
    std::function<QString(double)> number;
    std::function<QString(const Quantity &)> quantity;
    QString band;    ///< "%1 to %2"
    QString atMost;  ///< "up to %1"
    QString atLeast; ///< "at least %1"
};
/// For people, with the numbers and words of that form: "12 V ± 5 %", "0 dB ± 2 dB" around zero.
[[nodiscard]] QString spelled(const Wanted &wanted, const WantedForm &form);
/// The same in English and with plain decimals.
[[nodiscard]] QString display(const Wanted &wanted);

} // namespace ts
