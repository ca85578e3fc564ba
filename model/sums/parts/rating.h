#pragma once

#include "model/records/part.h"
#include "model/sums/parts/part_kind.h"
#include "model/values/expected.h"

namespace ts {

/// One attribute of a part as it is kept: an amount, a word, or an amount with a word ("275 V" "AC").
struct RatingValue {
    QString key;
    std::optional<Quantity> amount = {};
    QString word = {};
    [[nodiscard]] QString text() const; ///< without the key: "275 V AC"
    bool operator==(const RatingValue &) const = default;
};

/// What a part is rated for. Kept in the record as lines "key amount" that read back as the same quantities.
struct Rating {
    QList<RatingValue> values;
    [[nodiscard]] const RatingValue *find(QStringView key) const;
    void put(const RatingValue &value); ///< in place of the one of its key; taken away where it says nothing
    [[nodiscard]] QString lines() const;
    bool operator==(const Rating &) const = default;
};

/// Reads the lines of a record. `kind` says which keys have two words; a line that it does not know is kept as it stands.
[[nodiscard]] Rating ratingOfLines(const QString &lines, const PartKind *kind);

/// What was typed for one attribute, checked: an amount in its own measure (a bare number takes it, "1000u" is 1000 µF), or a
/// word. Refused in one sentence where an amount is of another measure, below zero, about or over range.
[[nodiscard]] Expected<RatingValue> typedRating(const RatingField &field, const QString &typed);

/// What a text says of a part beside its kind: "belt 78x4x0.6", "capacitor 100 µF 63 V 105 °C 10x16", "fuse T 315 mA 5 x 20".
/// What was not understood is in `rest`, word by word, the kind's own name left out.
struct ReadRating {
    const PartKind *kind = nullptr;
    Rating rating;
    QStringList rest;
};
[[nodiscard]] ReadRating ratingInText(const QString &text, const PartKind *kind = nullptr);

/// A part of the store with everything that is known of it: its own lines first, then what its name says beside them.
[[nodiscard]] ReadRating ratingOfPart(const Part &part);

} // namespace ts
