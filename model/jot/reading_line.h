#pragma once

#include "model/records/reading.h"

#include <optional>

namespace ts {

/// A line of a reading, taken apart but not yet understood: NAME [@ CONDITIONS] = VALUE [± U95] and then in any order
/// want LIMIT, found / during / after, with METER, at CONDITIONS.
struct ReadingLine {
    QString name; ///< all before the equals sign
    QString value;
    QString spread; ///< what follows ± behind the value
    QString want;
    bool wants = false; ///< the word "want" stands there
    QString meter;
    QString conditions; ///< those behind the value
    std::optional<Phase> phase;
};

/// Nothing where the line has no equals sign of its own (">=" is none) or no name before it.
[[nodiscard]] std::optional<ReadingLine> splitReading(const QString &line);

/// The name without the conditions that follow an @ in it ("out L @ 315 Hz"), and those conditions.
struct NamedUnder {
    QString name;
    QString conditions;
};
[[nodiscard]] NamedUnder splitName(const QString &name);

} // namespace ts
