#pragma once

#include "model/values/expected.h"

#include <QDate>

namespace ts {

// What people write into the cells of a list. Each refusal names the text and says what would do.

/// "2026-11-28", "28 Nov 2026", "28 November 2026", "28.11.2026". Refuses "11/28/2026": nobody can tell day from month there.
[[nodiscard]] Expected<QDate> dayFromCell(const QString &text);
/// yes, no, y, n, true, false, 1, 0.
[[nodiscard]] Expected<bool> yesNoFromCell(const QString &text);
/// A whole number from low to high.
[[nodiscard]] Expected<int> wholeFromCell(const QString &text, int low, int high);

} // namespace ts
