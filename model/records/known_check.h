#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"

namespace ts {

/// A check that tells causes of a model apart.
struct KnownCheck : Record<KnownCheck> {
    Id<ModelNotes> modelNotes;
    QString symptom;
    QString text;
    std::optional<int> minutes;
    QString wanted; ///< what a good unit shows

    bool operator==(const KnownCheck &) const = default;

    static constexpr auto table = "known_check";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownCheck::modelNotes).required();
        fields("symptom", &KnownCheck::symptom).searched();
        fields("text", &KnownCheck::text).required().searched();
        fields("minutes", &KnownCheck::minutes);
        fields("wanted", &KnownCheck::wanted).searched();
    }
};

} // namespace ts
