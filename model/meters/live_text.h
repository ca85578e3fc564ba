#pragma once

#include "model/meters/live_meter.h"

namespace ts {

/// A live value as somebody would type it: with as many figures as the meter gave, in the prefix of `like` where that is of the same
/// symbol, else in the one that reads well; "OL" over range. A meter that does not say what it measures is taken to give the base
/// unit of `like` (SCPI's own rule: values are in base units). Refuses another unit than `like`, and a figure without any.
[[nodiscard]] Expected<QString> liveText(const LiveReading &reading, const Measure &like);

} // namespace ts
