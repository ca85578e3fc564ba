#include "model/store/connection.h"

#include "model/store/sql_trouble.h"

#include <QFileInfo>

namespace ts {

namespace {
constexpr int busyMilliseconds = 8000;
constexpr int cannotOpen = 14; // SQLite's result code
}

Connection::~Connection()
{
    drop();
}

void Connection::drop()
{
    m_session.reset();
    m_statements.clear();
    m_failed.clear();
}

Expected<std::unique_ptr<Connection>> Connection::open(const BookAddress &address, Mode mode)
{
    std::unique_ptr<Connection> connection(new Connection(address));
    if (connection->isPostgres()) {
        if (auto done = connection->setUpServer(); !done)
            return done.trouble();
        return connection;
    }
    if (auto checked = mode == Mode::Create ? claimBookFile(address) : checkBookFile(address); !checked)
        return checked.trouble();
    auto done = connection->setUpFile();
    if (done && mode == Mode::Create)
        done = connection->plain(QStringLiteral("PRAGMA journal_mode = WAL"));
    if (done)
        return connection;
    connection.reset();
    if (mode == Mode::Create) // it was claimed, so it is ours to remove
        removeBookFile(address.file);
    return done.trouble();
}

Expected<void> Connection::setUpServer()
{
    SqlFailure failure;
    m_session = openServer(m_address, busyMilliseconds, failure);
    if (m_session)
        return {};
    return Trouble{QStringLiteral("Cannot reach %1").arg(m_address.display()), plainReason(failure), QStringLiteral("see that the server runs and that you may use it")};
}

Expected<void> Connection::setUpFile()
{
    SqlFailure failure;
    m_access = bookAccess(m_address.file);
    m_session = openFile(m_address.file, m_access, busyMilliseconds, failure);
    if (!m_session)
        return trouble(failure);
    const QStringList session{QStringLiteral("PRAGMA foreign_keys = ON"), QStringLiteral("PRAGMA trusted_schema = OFF"),
                              QStringLiteral("PRAGMA synchronous = FULL"), QStringLiteral("PRAGMA cache_size = -32768"),
                              QStringLiteral("PRAGMA temp_store = MEMORY")};
    for (const QString &pragma : session)
        if (auto done = plain(pragma); !done)
            return done;
    return {};
}

Expected<void> Connection::ready()
{
    m_lost = m_lost || !m_session || !m_session->alive();
    if (!m_lost)
        return {};
    if (m_held > 0) // what was begun in the old session cannot go on in a new one
        return goneTrouble(m_address);
    drop();
    if (auto again = setUpServer(); !again)
        return again;
    m_lost = false;
    if (m_changed)
        m_session->listen(m_changed);
    return {};
}

Trouble Connection::refuse(const QString &sql, const SqlFailure &failure)
{
    const auto statement = m_statements.find(sql);
    m_failed.push_back(std::move(statement->second)); // PostgreSQL lets go of it only when the failed transaction is over
    m_statements.erase(statement);
    return trouble(failure);
}

Expected<Statement *> Connection::started(const QString &sql, const QVariantList &values)
{
    if (auto usable = ready(); !usable)
        return usable.trouble();
    auto statement = m_statements.find(sql);
    if (statement == m_statements.end()) {
        SqlFailure failure;
        auto fresh = m_session->prepare(sql, failure);
        if (!fresh)
            return trouble(failure);
        statement = m_statements.emplace(sql, std::move(fresh)).first;
    }
    if (!statement->second->start(values))
        return refuse(sql, *statement->second->failure());
    return statement->second.get();
}

Expected<void> Connection::forEach(const QString &sql, const QVariantList &values, const std::function<bool(const Statement &)> &each)
{
    const auto statement = started(sql, values);
    if (!statement)
        return statement.trouble();
    ++m_held;
    while ((*statement)->next())
        if (!each(**statement))
            break;
    --m_held;
    (*statement)->finish();
    if ((*statement)->failure())
        return refuse(sql, *(*statement)->failure());
    return {};
}

Expected<qint64> Connection::run(const QString &sql, const QVariantList &values)
{
    const auto statement = started(sql, values);
    if (!statement)
        return statement.trouble();
    while ((*statement)->next()) { }
    const qint64 changed = (*statement)->changed();
    (*statement)->finish();
    if ((*statement)->failure())
        return refuse(sql, *(*statement)->failure());
    return changed;
}

Expected<QList<Row>> Connection::rows(const QString &sql, const QVariantList &values)
{
    QList<Row> found;
    int columns = -1;
    const auto done = forEach(sql, values, [&found, &columns](const Statement &statement) {
        if (columns < 0)
            columns = statement.columns();
        Row row;
        row.reserve(columns);
        for (int i = 0; i < columns; ++i)
            row << statement.value(i);
        found << std::move(row);
        return true;
    });
    if (!done)
        return done.trouble();
    return found;
}

Expected<QVariant> Connection::value(const QString &sql, const QVariantList &values)
{
    std::optional<QVariant> found;
    // All is run to the end: an INSERT that answers its number is done only then.
    const auto done = forEach(sql, values, [&found](const Statement &statement) {
        if (!found)
            found = statement.value(0);
        return true;
    });
    if (!done)
        return done.trouble();
    return found.value_or(QVariant());
}

Expected<void> Connection::plain(const QString &sql)
{
    if (auto usable = ready(); !usable)
        return usable;
    const auto failure = m_session->plain(sql);
    return failure ? Expected<void>(trouble(*failure)) : Expected<void>();
}

QString Connection::pick(const char *sqlite, const char *postgres) const
{
    return QString::fromLatin1(isPostgres() ? postgres : sqlite);
}

QString Connection::milliseconds(const QString &from, const QString &to) const
{
    return pick("CAST(ROUND((julianday(%2) - julianday(%1)) * 86400000.0) AS BIGINT)",
                "CAST(ROUND(extract(epoch FROM ((%2)::timestamptz - (%1)::timestamptz)) * 1000) AS BIGINT)").arg(from, to);
}

void Connection::listen(std::function<void()> changed)
{
    m_changed = std::move(changed);
    if (m_session && !m_lost)
        m_session->listen(m_changed);
}

qint64 Connection::dataVersion()
{
    if (isPostgres())
        return 0;
    const auto version = value(QStringLiteral("PRAGMA data_version"));
    return version ? version->toLongLong() : 0;
}

Trouble Connection::trouble(const SqlFailure &failure)
{
    m_lost = m_lost || failure.lost;
    const Trouble why = sqlTrouble(failure, m_address);
    if (m_access == BookAccess::ReadOnly && (failure.code.toInt() & 0xff) == cannotOpen && QFileInfo(m_address.file + QStringLiteral("-wal")).size() > 0)
        return Trouble{why.did, QStringLiteral("it is read-only and was not closed properly, so a part of it is in the file beside it"),
                       QStringLiteral("copy both to a place where you may write")};
    return why;
}

} // namespace ts
