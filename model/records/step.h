#pragma once

#include "model/records/description.h"
#include "model/records/symptom.h"
#include "model/records/unit.h"

namespace ts {

enum class StepKind { Clean, Lubricate, Adjust, Solder, Renew, Align, Investigate, Other };

template <>
struct Words<StepKind> {
    static constexpr std::array list{std::pair{StepKind::Clean, "clean"},
                                     std::pair{StepKind::Lubricate, "lubricate"},
                                     std::pair{StepKind::Adjust, "adjust"},
                                     std::pair{StepKind::Solder, "solder"},
                                     std::pair{StepKind::Renew, "renew"},
                                     std::pair{StepKind::Align, "align"},
                                     std::pair{StepKind::Investigate, "investigate"},
                                     std::pair{StepKind::Other, "other"}};
};

/// Work done.
struct Step : Record<Step> {
    Id<Unit> unit;
    Id<Symptom> symptom; ///< what it was for
    StepKind kind = StepKind::Other;
    QString text;
    std::optional<int> minutes;
    QString position;
    QString before; ///< value or setting before
    QString after;

    bool operator==(const Step &) const = default;

    static constexpr auto table = "step";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Step::unit).required();
        fields("symptom", &Step::symptom);
        fields("kind", &Step::kind);
        fields("text", &Step::text).required().searched();
        fields("minutes", &Step::minutes);
        fields("position", &Step::position).searched();
        fields("before", &Step::before);
        fields("after", &Step::after);
    }
};

} // namespace ts
