#pragma once

#include "model/store/connection.h"

namespace ts {

/// Copies an open SQLite workbook whole into a new file, opens the copy and checks it; an unsound copy is removed and
/// refused, an existing file is never written over.
Expected<void> copyChecked(Connection &connection, const QString &file);

} // namespace ts
