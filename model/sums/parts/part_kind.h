#pragma once

#include "model/values/quantity.h"

#include <QList>
#include <QStringList>

namespace ts {

/// How what a part is rated for compares with what is needed.
enum class RatingRule {
    Same,    ///< the same, within `percent`
    AtLeast, ///< that much or more: a voltage
    AtMost,  ///< that much or less: a diameter
    Remark   ///< said for whoever looks; decides nothing
};

/// One attribute of a kind of part.
struct RatingField {
    QString key;            ///< as it is stored and shown: "inner circumference"
    QStringList shorter;    ///< other ways to type it: "d"
    QString measure = {};   ///< what it is usually given in: "mm"; empty: a word
    RatingRule rule = RatingRule::Remark;
    double percent = 1;     ///< how far the same may be off, of a number
    QStringList words = {}; ///< what a word can be, where there is a list
    [[nodiscard]] bool isWord() const { return measure.isEmpty(); }
    [[nodiscard]] bool isCalled(QStringView name) const;
};

/// What tells one part of a kind from another.
struct PartKind {
    QString name;        ///< "electrolytic"
    QStringList names;   ///< other words for it: "bulb"
    QString family;      ///< "capacitor": what a search for the family finds, too
    QList<RatingField> fields;
    QStringList sizes = {}; ///< which fields "78x4x0.6" names, in order
    [[nodiscard]] const RatingField *field(QStringView wanted) const; ///< by key or shorter name; nullptr: none
};

/// Every kind, each described once: the attributes that an order line must be able to hold (trade notes of the project, 2.13).
[[nodiscard]] const QList<PartKind> &partKinds();
/// The kind of that name or other word, case aside; nullptr where none is called so.
[[nodiscard]] const PartKind *partKindNamed(QStringView name);
/// The kind that a text names: its longest name that stands in it as whole words, plural or not; nullptr where none does.
[[nodiscard]] const PartKind *partKindIn(const QString &text);
/// Whether a part of kind `of` is one where `wanted` is looked for: itself, or its family.
[[nodiscard]] bool isOfKind(const PartKind &of, const PartKind &wanted);

} // namespace ts
