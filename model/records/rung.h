#pragma once

#include "model/records/description.h"
#include "model/records/meter.h"
#include "model/records/unit.h"

namespace ts {

/// A step of the ladder before and at first power.
enum class PowerStep { Plate, Lead, Fuse, Inside, Emptied, Primary, Metal, Earth, Drained, Filter, Output, Supply, Valves, Reforming, Isolation, Lamp, Rails, Offset, Heat, Direct };

template <>
struct Words<PowerStep> {
    static constexpr std::array list{std::pair{PowerStep::Plate, "plate"},
                                     std::pair{PowerStep::Lead, "lead"},
                                     std::pair{PowerStep::Fuse, "fuse"},
                                     std::pair{PowerStep::Inside, "inside"},
                                     std::pair{PowerStep::Emptied, "emptied"},
                                     std::pair{PowerStep::Primary, "primary"},
                                     std::pair{PowerStep::Metal, "metal"},
                                     std::pair{PowerStep::Earth, "earth"},
                                     std::pair{PowerStep::Drained, "drained"},
                                     std::pair{PowerStep::Filter, "filter"},
                                     std::pair{PowerStep::Output, "output"},
                                     std::pair{PowerStep::Supply, "supply"},
                                     std::pair{PowerStep::Valves, "valves"},
                                     std::pair{PowerStep::Reforming, "reforming"},
                                     std::pair{PowerStep::Isolation, "isolation"},
                                     std::pair{PowerStep::Lamp, "lamp"},
                                     std::pair{PowerStep::Rails, "rails"},
                                     std::pair{PowerStep::Offset, "offset"},
                                     std::pair{PowerStep::Heat, "heat"},
                                     std::pair{PowerStep::Direct, "direct"}};
};

enum class RungOutcome { Pass, Stop, NotApplicable };

template <>
struct Words<RungOutcome> {
    static constexpr std::array list{std::pair{RungOutcome::Pass, "pass"},
                                     std::pair{RungOutcome::Stop, "stop"},
                                     std::pair{RungOutcome::NotApplicable, "not_applicable"}};
};

/// One try of a step of the first-power ladder; the newest of its step counts, the others stay as evidence.
struct Rung : Record<Rung> {
    Id<Unit> unit;
    PowerStep step = PowerStep::Plate;
    RungOutcome cameOut = RungOutcome::Pass;
    QString saw;                       ///< what was seen, or the marking that was read
    QString asked;                     ///< what it was held against where that is no limit: the plate's fuse, the bench's mains
    std::optional<Quantity> value;
    Limit wanted;                      ///< as it stood when the value was taken
    std::optional<double> uncertainty; ///< 95 %, in the unit of the value
    Id<Meter> meter;
    QString meterName;
    QString initials;

    bool operator==(const Rung &) const = default;

    static constexpr auto table = "rung";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Rung::unit).required();
        fields("step", &Rung::step);
        fields("came_out", &Rung::cameOut);
        fields("saw", &Rung::saw).searched();
        fields("asked", &Rung::asked);
        fields("value", &Rung::value);
        fields("wanted", &Rung::wanted);
        fields("uncertainty", &Rung::uncertainty);
        fields("meter", &Rung::meter);
        fields("meter_name", &Rung::meterName);
        fields("initials", &Rung::initials);
    }
};

} // namespace ts
