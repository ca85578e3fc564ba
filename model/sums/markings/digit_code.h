#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// Ohms of a resistor's three or four figures: the last is a power of ten, so 472 is 4.7 kΩ and 1002 is 10 kΩ; 0, 00, 000 and
/// 0000 are links. Refuses anything else. IEC 60062:2016 (four figures: from memory).
[[nodiscard]] Expected<double> resistorDigits(QStringView text);

/// digit-code for the command line and the page of sums: figures on a resistor, or on a capacitor in picofarads.
[[nodiscard]] Sum digitCodeSum();

} // namespace ts
