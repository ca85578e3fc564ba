#pragma once

#include "model/store/book_address.h"

namespace ts {

/// Removes a workbook that this program has just made and could not finish: the file with what stands beside it, or a shared
/// workbook's tables, all or none; the database itself stays, empty as it was found. Refused where there is no workbook.
Expected<void> discardNewBook(const BookAddress &address);

} // namespace ts
