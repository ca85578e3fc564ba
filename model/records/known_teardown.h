#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"

namespace ts {

/// What comes off a model, in order.
struct KnownTeardown : Record<KnownTeardown> {
    Id<ModelNotes> modelNotes;
    int position = 0; ///< order in which it comes off
    QString what;
    QString fasteners;
    std::optional<int> fastenerCount;
    QString connectors; ///< ways, key side, colours
    QString springs;    ///< springs and washers
    QString marks;      ///< to make before an adjustment is moved
    QString caution;

    bool operator==(const KnownTeardown &) const = default;

    static constexpr auto table = "known_teardown";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownTeardown::modelNotes).required();
        fields("position", &KnownTeardown::position);
        fields("what", &KnownTeardown::what).required().searched();
        fields("fasteners", &KnownTeardown::fasteners).searched();
        fields("fastener_count", &KnownTeardown::fastenerCount);
        fields("connectors", &KnownTeardown::connectors).searched();
        fields("springs", &KnownTeardown::springs).searched();
        fields("marks", &KnownTeardown::marks).searched();
        fields("caution", &KnownTeardown::caution).searched();
    }
};

} // namespace ts
