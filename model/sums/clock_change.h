#pragma once

#include "model/records/change.h"
#include "model/records/clock_span.h"
#include "model/records/maker.h"

namespace ts {

/// How much of a span counts that ran on while nobody was there.
enum class CountAs { UntilLastSeen, Nothing };

/// Starts the clock of a unit and stops every other that runs, because one person works at one unit. Nothing where it runs already.
[[nodiscard]] Change startClock(const Unit &unit, const QList<ClockSpan> &running, Maker &maker);
/// Stops what runs. `tag` is that of the unit it runs for, for the sentence.
[[nodiscard]] Change stopClock(int tag, const QList<ClockSpan> &running, Maker &maker);
/// Ends a span at the instant when somebody was last seen there (not before it began); or keeps it and counts it as nothing.
[[nodiscard]] Change endClock(int tag, const ClockSpan &span, const QDateTime &lastSeen, CountAs count);

} // namespace ts
