#pragma once

#include "model/records/need.h"
#include "model/sums/parts/part_search.h"

namespace ts {

/// Whether a part of the store can go where another is needed.
enum class FitWord {
    Fits,      ///< all that is asked is recorded of the part, and is so
    LookFirst, ///< nothing speaks against it, but look: something is not recorded, or a little off
    DoesNot
};

struct PartFit {
    FitWord word = FitWord::DoesNot;
    QStringList why; ///< for what fits what is better or off; for what does not the first reason
};

/// Compares by the rules of the kind (part_kind.h): the same value, at least the voltage, at most the size. For capacitors beside:
/// within 20 %, the usual tolerance of an electrolytic (letter M of IEC 60062), is LookFirst; a safety class is never replaced by
/// another or by none. Common practice of the trade (trade notes of the project 2.13), no single source; safety parts as on the plate.
[[nodiscard]] PartFit fitOf(const ReadRating &part, const ReadRating &needed);

/// A part of which something is left, and how it fits a need.
struct ShelfPart {
    Part part;
    int left = 0;
    PartFit fit;
};

/// What of the shelf would fit the need: what fits surely first, then what is to be looked at, each with the most left first.
/// A need whose text says too little to compare (no kind, or a kind alone) finds nothing.
[[nodiscard]] QList<ShelfPart> shelfFor(const Need &need, const QList<Part> &parts, const QList<Batch> &batches);

} // namespace ts
