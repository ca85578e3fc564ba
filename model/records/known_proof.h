#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"
#include "model/records/proof.h"

namespace ts {

/// Something that units of a model are proved by before handover.
struct KnownProof : Record<KnownProof> {
    Id<ModelNotes> modelNotes;
    QString text;
    ProofKind kind = ProofKind::Function;
    int position = 0;

    bool operator==(const KnownProof &) const = default;

    static constexpr auto table = "known_proof";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownProof::modelNotes).required();
        fields("text", &KnownProof::text).required().searched();
        fields("kind", &KnownProof::kind);
        fields("position", &KnownProof::position);
    }
};

} // namespace ts
