#pragma once

#include "model/records/description.h"
#include "model/records/meter.h"

namespace ts {

/// One range of a meter, with its accuracy as its data sheet states it.
struct MeterRange : Record<MeterRange> {
    Id<Meter> meter;
    QString measure; ///< "V"
    double fullScale = 0;
    double resolution = 0;
    double percentOfReading = 0;
    double percentOfRange = 0;
    double counts = 0;
    double percentPerKelvin = 0;

    bool operator==(const MeterRange &) const = default;

    static constexpr auto table = "meter_range";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("meter", &MeterRange::meter).required();
        fields("measure", &MeterRange::measure).required();
        fields("full_scale", &MeterRange::fullScale);
        fields("resolution", &MeterRange::resolution);
        fields("percent_of_reading", &MeterRange::percentOfReading);
        fields("percent_of_range", &MeterRange::percentOfRange);
        fields("counts", &MeterRange::counts);
        fields("percent_per_kelvin", &MeterRange::percentPerKelvin);
    }
};

} // namespace ts
