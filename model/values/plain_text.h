#pragma once

#include "model/values/expected.h"

namespace ts {

// How long a typed text may be.
inline constexpr qsizetype shortText = 300;
inline constexpr qsizetype longText = 4000;

/// A text for a record: line breaks folded, none around it. Refuses control characters and more than `most` characters; `what` is
/// what the sentence calls it ("The caption").
[[nodiscard]] Expected<QString> plainText(const QString &given, const QString &what, qsizetype most = longText);
/// The same line by line: an address and terms have lines.
[[nodiscard]] Expected<QString> plainLines(const QString &given, const QString &what, qsizetype most = longText);

} // namespace ts
