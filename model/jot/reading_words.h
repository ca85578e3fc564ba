#pragma once

#include "model/records/reading.h"
#include "model/sums/verdict.h"

namespace ts {

/// "Line out L: 96 mV, wanted 387 mV ± 2 dB, is 12.1 dB low".
[[nodiscard]] QString readingSentence(const Reading &reading);
/// How far off a value is that is outside, in the terms of its limit: "12.1 dB low", "8.3 % high", "21 gf·cm low". Empty where it
/// is not outside.
[[nodiscard]] QString howFarOff(const Reading &reading, const Judgement &judgement);
/// What is to be asked before a reading is recorded that is ten times off or of another measure than wanted; else empty.
[[nodiscard]] QString doubtAbout(const Reading &reading);
/// "as found", "during work", "as it leaves".
[[nodiscard]] QString phaseText(Phase phase);

} // namespace ts
