#pragma once

#include "model/records/kind.h"
#include "model/store/book_address.h"

#include <QSqlDatabase>
#include <QSqlQuery>

#include <functional>
#include <memory>
#include <unordered_map>
#include <vector>

namespace ts {

/// One database session, of one thread. All SQL of the program goes through here, with values bound, never pasted in.
/// Statements are prepared once and kept.
class Connection {
public:
    enum class Mode { Existing, Create };

    /// Opens a file (Existing never creates one, Create never opens one) or a server's database and sets the session up.
    [[nodiscard]] static Expected<std::unique_ptr<Connection>> open(const BookAddress &address, Mode mode);
    ~Connection();

    [[nodiscard]] bool isPostgres() const { return m_address.engine == BookAddress::Engine::Postgres; }
    [[nodiscard]] const BookAddress &address() const { return m_address; }

    /// Runs a statement; answers how many rows it changed.
    Expected<qint64> run(const QString &sql, const QVariantList &values = {});
    /// All rows of a query, columns as the engine gave them.
    [[nodiscard]] Expected<QList<Row>> rows(const QString &sql, const QVariantList &values = {});
    /// Calls `each` for every row until it answers false; rows are not kept.
    Expected<void> forEach(const QString &sql, const QVariantList &values, const std::function<bool(const QSqlQuery &)> &each);
    /// The first column of the first row, or a null value where there is no row.
    [[nodiscard]] Expected<QVariant> value(const QString &sql, const QVariantList &values = {});
    /// Runs a statement that cannot be prepared (BEGIN, PRAGMA, CREATE …).
    Expected<void> plain(const QString &sql);

    /// What one engine says instead of the other. The only place, beside migration files, where the engines differ.
    [[nodiscard]] QString pick(const char *sqlite, const char *postgres) const;
    /// SQL for the minutes between two stored instants.
    [[nodiscard]] QString minutesBetween(const QString &from, const QString &to) const;

    /// Calls back when another session says that it changed the workbook (PostgreSQL; SQLite is polled by dataVersion).
    void listen(std::function<void()> changed);
    /// A number that moves when another session changed the file (SQLite); always 0 on PostgreSQL.
    [[nodiscard]] qint64 dataVersion();

private:
    Connection(BookAddress address, QString name);
    Expected<void> setUp(Mode mode);
    Expected<QSqlQuery *> prepared(const QString &sql, const QVariantList &values);
    [[nodiscard]] Trouble trouble(const QSqlError &error) const;

    BookAddress m_address;
    QString m_name;
    QSqlDatabase m_database;
    friend class Transaction;
    void dropFailed() { m_failed.clear(); }
    std::unordered_map<QString, std::unique_ptr<QSqlQuery>> m_statements;
    std::vector<std::unique_ptr<QSqlQuery>> m_failed;
};

/// Everything between begin and commit, or nothing: rolls back when it goes without commit.
class Transaction {
public:
    [[nodiscard]] static Expected<std::unique_ptr<Transaction>> begin(Connection &connection);
    ~Transaction();
    /// Done only where this answers ok.
    Expected<void> commit();

private:
    explicit Transaction(Connection &connection) : m_connection(connection) {}
    Connection &m_connection;
    bool m_open = true;
};

} // namespace ts
