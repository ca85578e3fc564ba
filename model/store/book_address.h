#pragma once

#include "model/values/expected.h"

namespace ts {

/// Where a workbook is: a file, or a database on a PostgreSQL server.
struct BookAddress {
    enum class Engine { Sqlite, Postgres };
    Engine engine = Engine::Sqlite;
    QString file; ///< SQLite: absolute path

    // PostgreSQL; what is empty is left to libpq (its service file, its environment, its password file).
    QString host;
    int port = -1;
    QString database;
    QString user;
    QString options; ///< other libpq keywords, "name=value;name=value"

    /// Reads BOOK as given on the command line: a path, or postgresql://[user@][host[:port]]/[database][?key=value&…].
    /// A password in the address is refused: it would be seen by others; libpq's password file is the place.
    [[nodiscard]] static Expected<BookAddress> parse(const QString &book);
    /// For people: the file's name, or the address without anything secret.
    [[nodiscard]] QString display() const;
};

} // namespace ts
