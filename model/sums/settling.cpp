#include "model/sums/settling.h"

#include "model/sums/meter_spec.h"
#include "model/values/number.h"

#include <algorithm>
#include <cmath>

namespace ts {

std::optional<Settling> settling(const Reading &reading, const BenchFile &bench)
{
    const auto judged = judge(reading);
    if (!judged || judged->verdict != Verdict::TooCloseToCall || !reading.value || reading.value->sense() == Sense::OverRange)
        return std::nullopt;
    Settling found;
    found.measure = judged->measure;
    double nearest = HUGE_VAL;
    for (const auto &bound : {judged->low, judged->high})
        if (bound)
            nearest = std::min(nearest, std::abs(withoutBinaryDust(judged->value - *bound, std::max(std::abs(judged->value), std::abs(*bound)))));
    if (!(nearest > 0) || !std::isfinite(nearest))
        return std::nullopt;
    found.needed95 = nearest;
    const Quantity value(judged->value, judged->measure);
    for (const Meter &meter : bench.all<Meter>()) {
        std::optional<MeterChoice> best;
        for (const MeterRange &range : bench.all<MeterRange>()) {
            if (range.meter != meter.id || meter.removed || range.removed)
                continue;
            const auto unit = Measure::parse(range.measure);
            const auto there = unit ? value.in(*unit) : Expected<Quantity>(unit.trouble());
            if (!there || (range.fullScale > 0 && std::abs(there->value()) > range.fullScale))
                continue;
            const auto spec = MeterSpec::of(range);
            const auto spread = spec ? spec->expanded95(value) : Expected<double>(spec.trouble());
            if (spread && *spread < nearest && (!best || *spread < best->uncertainty95))
                best = MeterChoice{meter, range, *spread};
        }
        if (best)
            found.meters << *best;
    }
    std::stable_sort(found.meters.begin(), found.meters.end(), [](const MeterChoice &a, const MeterChoice &b) { return a.uncertainty95 < b.uncertainty95; });
    return found;
}

} // namespace ts
