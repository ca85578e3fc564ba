#pragma once

#include <QString>

#include <optional>

namespace ts {

/// A grade of looks, from 0 (poor) to 4 (as new), by the first word of the text that names one: poor, fair, good, very good,
/// mint, and words like them. None where no word does. The words are common practice of the trade; no standard lists them.
[[nodiscard]] std::optional<int> looksGrade(const QString &text);

} // namespace ts
