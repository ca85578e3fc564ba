#pragma once

#include "model/records/description.h"
#include "model/records/known_cause.h"
#include "model/records/known_check.h"

namespace ts {

/// How a known check comes out if a known cause is the one.
struct KnownMark : Record<KnownMark> {
    Id<ModelNotes> modelNotes;
    Id<KnownCheck> check;
    Id<KnownCause> cause;
    double abnormalIf = 0.95;
    double abnormalIfNot = 0.05;

    bool operator==(const KnownMark &) const = default;

    static constexpr auto table = "known_mark";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownMark::modelNotes).required();
        fields("check", &KnownMark::check).required();
        fields("cause", &KnownMark::cause).required();
        fields("abnormal_if", &KnownMark::abnormalIf);
        fields("abnormal_if_not", &KnownMark::abnormalIfNot);
    }
};

} // namespace ts
