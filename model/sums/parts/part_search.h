#pragma once

#include "model/records/batch.h"
#include "model/sums/parts/rating.h"

namespace ts {

/// One thing that is asked of a part: an attribute between two bounds (in its base unit), or of one word.
struct PartCondition {
    QString key;                ///< of the kind's field; empty: any attribute of this measure
    std::optional<double> low;  ///< inclusive, without prefix: 63 V is 63, 4 mm is 0.004
    std::optional<double> high;
    QString symbol = {};        ///< "V", "m", "F"
    QString word = {};          ///< of a field of words
    QString shown = {};         ///< "voltage at least 63 V"
};

/// What is looked for in the store.
struct PartWish {
    const PartKind *kind = nullptr;
    QList<PartCondition> conditions;
    QStringList words; ///< each stands somewhere in the part: name, rating, place, supplier, note
    [[nodiscard]] QString text() const; ///< how the line was understood: "capacitor · voltage at least 63 V · diameter at most 10 mm"
};

/// Reads a line: `capacitor 1000u >=63V d<=10mm`, `belt 78 mm ± 2 mm`, `belt 76..80mm`, `fuse T 315 mA`, `drawer C3`. A condition is
/// an attribute (or none, where the measure tells it), a sign (>= <= > < = ± ..) and an amount; "at least" and "at most" are signs,
/// too. A plain amount asks for the same within 1 %. Refuses an amount that cannot be read or is of another measure.
[[nodiscard]] Expected<PartWish> readPartWish(const QString &line);

enum class Match { Yes, NotSaid, No };

/// How far a part is what is looked for. NotSaid: nothing speaks against it, but what is asked for is not all recorded.
struct PartMatch {
    Match match = Match::No;
    QStringList notSaid; ///< the attributes that are missing
};
[[nodiscard]] PartMatch matches(const Part &part, const PartWish &wish);

/// How much of a part is left, in all its batches.
[[nodiscard]] int leftOf(const Id<Part> &part, const QList<Batch> &batches);

/// A part of which there is less than is to be kept at least.
struct ShortPart {
    Part part;
    int left = 0;
    int missing = 0; ///< at least 1
};
/// All of them, what is missing most of first (as a share of what is to be kept).
[[nodiscard]] QList<ShortPart> belowMinimum(const QList<Part> &parts, const QList<Batch> &batches);

} // namespace ts
