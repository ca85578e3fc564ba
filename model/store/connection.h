#pragma once

#include "model/records/kind.h"
#include "model/store/session.h"

#include <unordered_map>
#include <vector>

namespace ts {

/// One database session, of one thread. All SQL of the program goes through here, with values bound, never pasted in.
/// Statements are prepared once and kept. When a server goes away, the call that notices it is refused, and the next one
/// outside of a transaction opens the session again.
class Connection {
public:
    enum class Mode { Existing, Create };

    /// Opens a file (Existing never creates one, Create never opens one) or a server's database and sets the session up.
    [[nodiscard]] static Expected<std::unique_ptr<Connection>> open(const BookAddress &address, Mode mode);
    ~Connection();

    [[nodiscard]] bool isPostgres() const { return m_address.engine == BookAddress::Engine::Postgres; }
    [[nodiscard]] const BookAddress &address() const { return m_address; }
    /// A file that may not be written here (SQLite).
    [[nodiscard]] bool isReadOnly() const { return m_access != BookAccess::Writable; }
    /// The server went away and the session was not opened again yet.
    [[nodiscard]] bool isLost() const { return m_lost; }

    /// Runs a statement; answers how many rows it changed.
    Expected<qint64> run(const QString &sql, const QVariantList &values = {});
    /// All rows of a query, columns as the engine gave them.
    [[nodiscard]] Expected<QList<Row>> rows(const QString &sql, const QVariantList &values = {});
    /// Calls `each` for every row until it answers false; rows are not kept.
    Expected<void> forEach(const QString &sql, const QVariantList &values, const std::function<bool(const Statement &)> &each);
    /// The first column of the first row, or a null value where there is no row.
    [[nodiscard]] Expected<QVariant> value(const QString &sql, const QVariantList &values = {});
    /// Runs a statement that cannot be prepared (BEGIN, PRAGMA, CREATE …).
    Expected<void> plain(const QString &sql);

    /// What one engine says instead of the other. The only place, beside migration files, where the engines differ.
    [[nodiscard]] QString pick(const char *sqlite, const char *postgres) const;
    /// SQL for the whole milliseconds from one stored instant to another, so that spans add up exactly.
    [[nodiscard]] QString milliseconds(const QString &from, const QString &to) const;

    /// Calls back when another session says that it changed the workbook (PostgreSQL; SQLite is polled by dataVersion).
    void listen(std::function<void()> changed);
    /// A number that moves when another session changed the file (SQLite); always 0 on PostgreSQL.
    [[nodiscard]] qint64 dataVersion();

private:
    explicit Connection(BookAddress address) : m_address(std::move(address)) {}
    Expected<void> setUpServer();
    Expected<void> setUpFile();
    Expected<void> ready(); ///< opens a lost session again
    void drop();
    Expected<Statement *> started(const QString &sql, const QVariantList &values);
    Trouble refuse(const QString &sql, const SqlFailure &failure);
    [[nodiscard]] Trouble trouble(const SqlFailure &failure);

    BookAddress m_address;
    std::unique_ptr<Session> m_session;
    std::function<void()> m_changed;
    BookAccess m_access = BookAccess::Writable;
    bool m_lost = false;
    friend class Transaction;
    int m_held = 0; ///< transactions and readings under way, which end with the session
    std::unordered_map<QString, std::unique_ptr<Statement>> m_statements;
    std::vector<std::unique_ptr<Statement>> m_failed;
};

} // namespace ts
