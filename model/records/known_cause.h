#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"

namespace ts {

/// A cause that units of a model are known for.
struct KnownCause : Record<KnownCause> {
    Id<ModelNotes> modelNotes;
    QString symptom; ///< as it shows
    QString text;
    std::optional<double> weight; ///< 0 to 1, against the others of its symptom
    std::optional<int> fixMinutes;
    std::optional<Money> fixCost;
    std::optional<double> fixOdds; ///< chance that the fix can be had, 0 to 1
    QString note;                  ///< how it was put right, what to look out for

    bool operator==(const KnownCause &) const = default;

    static constexpr auto table = "known_cause";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownCause::modelNotes).required();
        fields("symptom", &KnownCause::symptom).searched();
        fields("text", &KnownCause::text).required().searched();
        fields("weight", &KnownCause::weight);
        fields("fix_minutes", &KnownCause::fixMinutes);
        fields("fix_cost", &KnownCause::fixCost);
        fields("fix_odds", &KnownCause::fixOdds);
        fields("note", &KnownCause::note).searched();
    }
};

} // namespace ts
