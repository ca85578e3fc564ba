#pragma once

#include "model/store/book_address.h"

namespace ts {

/// What can be told of a workbook file before SQLite sees it.
/// Refuses what is missing, a folder, unreadable, empty, cut off, or no database at all.
[[nodiscard]] Expected<void> checkBookFile(const BookAddress &address);
/// Makes the new, empty file; never over anything that is there.
Expected<void> claimBookFile(const BookAddress &address);
/// Removes a file that was claimed, with what SQLite put beside it.
void removeBookFile(const QString &file);

/// How a file can be opened here.
enum class BookAccess {
    Writable,
    ReadOnly, ///< but its folder is not, so readers and a writer elsewhere can meet
    Still     ///< neither it nor anything beside it can be written by us, and nobody has it open for writing
};
[[nodiscard]] BookAccess bookAccess(const QString &file);

} // namespace ts
