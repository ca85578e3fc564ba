#pragma once

#include "model/jot/jotting.h"
#include "model/jot/reading_line.h"
#include "model/values/expected.h"

namespace ts {

/// A value with its limit, uncertainty and meter, before it belongs anywhere.
struct TakenReading {
    Reading reading;
    int repeats = 0;    ///< of which it is the mean; 0 where it is one
    QString meterWords; ///< of the meter, for a preview; empty where none is named
};

/// Understands what stands in the line: the value in `usual` where it names no unit, the line's own limit before `wants`, the uncertainty
/// that was typed before the meter's. The trouble's `did` says what is no value, limit or uncertainty.
[[nodiscard]] Expected<TakenReading> takeReading(const Jotting &jotting, const ReadingLine &line, const Measure &usual, const Limit &wants);

} // namespace ts
