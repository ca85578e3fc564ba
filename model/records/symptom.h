#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

enum class SymptomState { Open, Cleared };

template <>
struct Words<SymptomState> {
    static constexpr std::array list{std::pair{SymptomState::Open, "open"},
                                     std::pair{SymptomState::Cleared, "cleared"}};
};

/// What was really seen, and under which conditions.
struct Symptom : Record<Symptom> {
    Id<Unit> unit;
    QString text;
    QString conditions;
    SymptomState state = SymptomState::Open;
    QDateTime clearedAt;

    bool operator==(const Symptom &) const = default;

    static constexpr auto table = "symptom";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Symptom::unit).required();
        fields("text", &Symptom::text).required().searched();
        fields("conditions", &Symptom::conditions).searched();
        fields("state", &Symptom::state);
        fields("cleared_at", &Symptom::clearedAt);
    }
};

} // namespace ts
