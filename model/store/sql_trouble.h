#pragma once

#include "model/store/book_address.h"

class QSqlError;

namespace ts {

/// The engine's own reason, first line only, without its codes.
[[nodiscard]] QString plainReason(const QSqlError &error);
/// What a database error means to the person at the bench: locked, full, read-only, damaged, gone away …
[[nodiscard]] Trouble sqlTrouble(const QSqlError &error, const BookAddress &address);

} // namespace ts
