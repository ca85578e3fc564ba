#pragma once

#include "model/store/session.h"

namespace ts {

/// The engine's own reason, first line only, without its codes.
[[nodiscard]] QString plainReason(const SqlFailure &failure);
/// What a database error means to the person at the bench: locked, full, read-only, damaged, gone away …
[[nodiscard]] Trouble sqlTrouble(const SqlFailure &failure, const BookAddress &address);
[[nodiscard]] Trouble goneTrouble(const BookAddress &address);

} // namespace ts
