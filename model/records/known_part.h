#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"

namespace ts {

/// A part of a model, by where it sits and what it has to be.
struct KnownPart : Record<KnownPart> {
    Id<ModelNotes> modelNotes;
    QString position; ///< "C214", "capstan"
    QString text;
    QString rating; ///< attributes as "key value" lines
    int quantity = 1;
    QString note;

    bool operator==(const KnownPart &) const = default;

    static constexpr auto table = "known_part";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownPart::modelNotes).required();
        fields("position", &KnownPart::position).searched();
        fields("text", &KnownPart::text).required().searched();
        fields("rating", &KnownPart::rating).searched();
        fields("quantity", &KnownPart::quantity);
        fields("note", &KnownPart::note).searched();
    }
};

} // namespace ts
