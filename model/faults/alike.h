#pragma once

#include <QString>

namespace ts {

/// How much two texts speak of the same thing, 0 to 1: the share of their telling words (three letters and more, a plural's s
/// aside) that both have; 1 where they read the same, case and spaces aside.
[[nodiscard]] double sharedWords(const QString &a, const QString &b);

/// Whether they are taken for the same: half of their words are shared, or all words of the shorter stand in the other.
[[nodiscard]] bool alike(const QString &a, const QString &b);

} // namespace ts
