#pragma once

#include "model/store/book_address.h"

class QSqlError;

namespace ts {

/// The engine's own reason, first line only, without its codes.
[[nodiscard]] QString plainReason(const QSqlError &error);
/// What a database error means to the person at the bench: locked, full, read-only, damaged, gone away …
[[nodiscard]] Trouble sqlTrouble(const QSqlError &error, const BookAddress &address);
/// Whether the error says that the server's session is no more.
[[nodiscard]] bool isGone(const QSqlError &error, const BookAddress &address);
[[nodiscard]] Trouble goneTrouble(const BookAddress &address);

} // namespace ts
