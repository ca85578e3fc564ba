#pragma once

#include <QString>

namespace ts {

/// How names are compared: lower case, no white space. "Line out  L" and "lineout l" are one name.
[[nodiscard]] QString nameKey(QStringView text);
/// Whether a character turns the writing direction: the bidirectional controls of Unicode, annex 9.
[[nodiscard]] bool turnsDirection(QChar c);

} // namespace ts
