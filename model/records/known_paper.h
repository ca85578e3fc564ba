#pragma once

#include "model/records/description.h"
#include "model/records/model_notes.h"

namespace ts {

/// A service paper of a model: kept in the workbook, or a link.
struct KnownPaper : Record<KnownPaper> {
    Id<ModelNotes> modelNotes;
    QString title;
    QString link;
    QString sha256; ///< of the bytes kept; empty: a link alone
    QString format; ///< "pdf"

    bool operator==(const KnownPaper &) const = default;

    static constexpr auto table = "known_paper";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("model_notes", &KnownPaper::modelNotes).required();
        fields("title", &KnownPaper::title).required().searched();
        fields("link", &KnownPaper::link).searched();
        fields("sha256", &KnownPaper::sha256);
        fields("format", &KnownPaper::format);
    }
};

} // namespace ts
