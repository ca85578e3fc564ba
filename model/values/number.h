#pragma once

#include "model/values/quantity.h"

namespace ts {

/// How many characters from the start of the text make a number that parseNumber reads; 0 where none stands there.
[[nodiscard]] qsizetype numberLength(QStringView text);

/// value × 10^places, done on the decimal figures: 96 shifted by -3 is exactly the number that "0.096" reads as.
/// A multiplication would miss it by the last bit, and a reading exactly on its limit would count as outside.
[[nodiscard]] double shiftDecimal(double value, int places);

/// The value rounded to 14 significant figures of `scale`, the largest number that went into it: takes away what binary
/// arithmetic added (12 V less 5 % is 11.4, not 11.399999999999999) and nothing that a meter could show.
[[nodiscard]] double withoutBinaryDust(double value, double scale);

} // namespace ts
