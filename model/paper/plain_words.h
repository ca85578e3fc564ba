#pragma once

#include <QString>

namespace ts {

/// A person's text as paper may carry it: trimmed, without control characters and without the bidirectional embeddings,
/// overrides and isolates (Unicode UAX #9) that would turn the text around it; line breaks stay.
[[nodiscard]] QString plainText(const QString &text);

/// Plain text without those clauses that claim care without saying what was done: "Fully serviced, new belt." becomes
/// "new belt.", "tested" becomes nothing. A clause that says anything else as well is kept whole.
[[nodiscard]] QString withoutBareClaims(const QString &text);

/// The text between first-strong isolate marks where it has right-to-left letters, so that it leaves the order of what
/// is joined to it alone; as it is otherwise.
[[nodiscard]] QString isolated(const QString &text);

} // namespace ts
