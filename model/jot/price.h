#pragma once

#include "model/jot/phrase.h"
#include "model/values/money.h"

namespace ts {

/// What counts as an amount: `Marked` needs two decimals ("2.50"), a currency beside it ("£3", "3 EUR") or "at 3"; `Any` takes a
/// bare "8" as well. "belt 78x4x0.6", "T 315 mA" and "10k pot" hold none.
enum class Amounts { Marked, Any };

/// The amount at the end of a text, in the bench's currency where none is written. "each", and "at" or "for" before it, go with
/// it. What stands before it may be empty only with `Any`.
[[nodiscard]] std::optional<Taken<Money>> takePrice(const QString &text, const Currency &bench, Amounts amounts);
/// The same at the beginning: "8.40 for carriage".
[[nodiscard]] std::optional<Taken<Money>> takeLeadingPrice(const QString &text, const Currency &bench, Amounts amounts);

} // namespace ts
