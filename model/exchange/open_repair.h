#pragma once

#include "model/records/source_record.h"
#include "model/records/unit.h"

#include <QStringList>

namespace ts::openrepair {

// The Open Repair Data Standard, version 0.3 (The Open Repair Alliance, December 2021): its columns, its words, and what they are
// here.

/// The fourteen columns in the order in which the standard's files have them.
[[nodiscard]] const QStringList &columns();
/// Those without which a record means nothing.
[[nodiscard]] const QStringList &requiredColumns();

enum class Status { Unknown, Fixed, Repairable, EndOfLife };
[[nodiscard]] std::optional<Status> status(const QString &word); ///< any case
[[nodiscard]] QString word(Status status);

/// The standard's wording of a reason for giving up; also of the wordings of older releases ("Item too worn out"). Empty where it
/// is none.
[[nodiscard]] QString barrier(const QString &text);

/// The standard's number of a product category (1 to 40); 0 where it is none. Blanks around a slash and case do not count.
[[nodiscard]] int categoryNumber(const QString &productCategory);

/// What the item is, where the words are clear: the standard's category, else the last part of the partner's, else, for a hi-fi
/// separate, what the problem text begins with. Combined units ("CD/radio/cassette player") and everything else are Other.
[[nodiscard]] Category category(const QString &productCategory, const QString &partnerCategory, const QString &problem);
/// A short name out of the record's own words: the last part of the partner's category, else the standard's.
[[nodiscard]] QString itemName(const QString &productCategory, const QString &partnerCategory);

/// Where a unit stands that came with such a status.
struct Place {
    Stage stage = Stage::Shelved;
    std::optional<Outcome> outcome;
    bool operator==(const Place &) const = default;
};
[[nodiscard]] Place place(Status status);

/// The standard's category for one of ours, and its number.
struct ProductCategory {
    QString name;
    int number = 0;
};
[[nodiscard]] ProductCategory productCategory(Category category);

/// The year made: as written, else the year of the event less the age. The basis says which; both empty where neither was given.
struct Made {
    std::optional<int> year;
    QString basis;
};
[[nodiscard]] Made made(const SourceRecord &source);
/// The maker that the record names; empty for the standard's "Unknown".
[[nodiscard]] QString maker(const SourceRecord &source);

} // namespace ts::openrepair
