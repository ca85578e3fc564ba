#pragma once

#include "model/store/book_address.h"
#include "model/store/book_file.h"

#include <QVariant>

#include <functional>
#include <memory>
#include <optional>

namespace ts {

/// What an engine says when it fails.
struct SqlFailure {
    QString code; ///< SQLite's result code, or the SQLSTATE
    QString text;
    bool lost = false; ///< the session is no more
};

/// One prepared statement, to be run with other values as often as wanted. While it is run it is its own row.
class Statement {
public:
    virtual ~Statement() = default;
    /// Begins with these values; answers whether it could.
    virtual bool start(const QVariantList &values) = 0;
    /// Goes to the next row; false after the last one, and where something failed.
    virtual bool next() = 0;
    [[nodiscard]] virtual int columns() const = 0;
    [[nodiscard]] virtual QVariant value(int column) const = 0;
    /// How many rows were changed.
    [[nodiscard]] virtual qint64 changed() const = 0;
    /// Lets go of the rows, so that nothing is kept waiting for them.
    virtual void finish() = 0;
    [[nodiscard]] const std::optional<SqlFailure> &failure() const { return m_failure; }

protected:
    std::optional<SqlFailure> m_failure;
};

/// What Connection needs of an engine: one open database of one thread.
class Session {
public:
    virtual ~Session() = default;
    /// Runs one statement without values and without rows.
    [[nodiscard]] virtual std::optional<SqlFailure> plain(const QString &sql) = 0;
    /// Nothing, and the failure, where the statement cannot be prepared.
    [[nodiscard]] virtual std::unique_ptr<Statement> prepare(const QString &sql, SqlFailure &failure) = 0;
    /// Whether the engine is still there, as far as can be told without asking it.
    [[nodiscard]] virtual bool alive() const { return true; }
    /// Calls back when another session says that it changed the workbook.
    virtual void listen(const std::function<void()> &) {}
};

/// A session with the file, or the failure. `milliseconds`: how long one waits for another that writes.
[[nodiscard]] std::unique_ptr<Session> openFile(const QString &file, BookAccess access, int milliseconds, SqlFailure &failure);
/// A session with the server's database, or the failure.
[[nodiscard]] std::unique_ptr<Session> openServer(const BookAddress &address, int milliseconds, SqlFailure &failure);

} // namespace ts
