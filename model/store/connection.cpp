#include "model/store/connection.h"

#include "model/store/sql_trouble.h"

#include <QFileInfo>
#include <QAbstractEventDispatcher>
#include <QLibrary>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <QThread>
#include <QUrl>

#include <atomic>

namespace ts {

namespace {

constexpr int busyMilliseconds = 8000;

// libpq prints what a server says unasked ("terminating connection …") on standard error, where only our own sentence belongs.
// The driver has loaded libpq; its headers are not needed for one function.
void silence(const QSqlDriver &driver)
{
    using Say = void (*)(void *, const char *);
    using Set = Say (*)(void *, Say, void *);
    const QVariant handle = driver.handle();
    const auto set = reinterpret_cast<Set>(QLibrary::resolve(QStringLiteral("pq"), 5, "PQsetNoticeProcessor"));
    const QByteArrayView type(handle.typeName());
    if (set && (type == "pg_conn*" || type == "PGconn*"))
        set(*static_cast<void *const *>(handle.constData()), [](void *, const char *) {}, nullptr);
}

QString nextName()
{
    static std::atomic<int> count{0}; // Qt wants a name for each connection; nothing else hangs on it
    return QStringLiteral("workbook-%1").arg(count++);
}

} // namespace

Connection::Connection(BookAddress address, QString name)
    : m_address(std::move(address)), m_name(std::move(name)),
      m_database(QSqlDatabase::addDatabase(isPostgres() ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE"), m_name))
{
}

Connection::~Connection()
{
    drop();
}

// The driver goes first: a statement that outlives it has nothing to take leave of.
void Connection::drop()
{
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
    m_statements.clear();
    m_failed.clear();
}

Expected<std::unique_ptr<Connection>> Connection::open(const BookAddress &address, Mode mode)
{
    const bool file = address.engine == BookAddress::Engine::Sqlite;
    if (file)
        if (auto checked = mode == Mode::Create ? claimBookFile(address) : checkBookFile(address); !checked)
            return checked.trouble();
    std::unique_ptr<Connection> connection(new Connection(address, nextName()));
    if (auto ready = connection->setUp(mode); !ready) {
        connection.reset();
        if (file && mode == Mode::Create) // it was claimed, so it is ours to remove
            removeBookFile(address.file);
        return ready.trouble();
    }
    return connection;
}

Expected<void> Connection::setUp(Mode mode)
{
    if (!m_database.isValid())
        return Trouble{QStringLiteral("Cannot open %1").arg(m_address.display()), QStringLiteral("Qt's %1 driver is not installed").arg(pick("SQLite", "PostgreSQL")),
                       QStringLiteral("install %1").arg(pick("libqt6sql6-sqlite", "libqt6sql6-psql"))};
    if (isPostgres())
        return setUpServer();
    if (auto done = setUpFile(); !done || mode != Mode::Create)
        return done;
    return plain(QStringLiteral("PRAGMA journal_mode = WAL"));
}

Expected<void> Connection::setUpServer()
{
    m_database.setHostName(m_address.host);
    m_database.setPort(m_address.port);
    m_database.setDatabaseName(m_address.database);
    m_database.setUserName(m_address.user);
    m_database.setConnectOptions(m_address.options.isEmpty() ? QStringLiteral("connect_timeout=10")
                                                             : m_address.options + QStringLiteral(";connect_timeout=10"));
    if (!m_database.open())
        return Trouble{QStringLiteral("Cannot reach %1").arg(m_address.display()), plainReason(m_database.lastError()),
                       QStringLiteral("see that the server runs and that you may use it")};
    silence(*m_database.driver());
    return plain(QStringLiteral("SET lock_timeout = %1").arg(busyMilliseconds));
}

Expected<void> Connection::setUpFile()
{
    m_access = bookAccess(m_address.file);
    QUrl url = QUrl::fromLocalFile(m_address.file);
    // A plain open would make an empty file. A file that nobody can write needs no locks, and could not have them: they are files too.
    url.setQuery(m_access == BookAccess::Writable   ? QStringLiteral("mode=rw")
                 : m_access == BookAccess::ReadOnly ? QStringLiteral("mode=ro")
                                                    : QStringLiteral("mode=ro&immutable=1"));
    m_database.setDatabaseName(url.toString(QUrl::FullyEncoded));
    m_database.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busyMilliseconds));
    if (!m_database.open())
        return trouble(m_database.lastError());
    const QStringList session{QStringLiteral("PRAGMA foreign_keys = ON"), QStringLiteral("PRAGMA trusted_schema = OFF"),
                              QStringLiteral("PRAGMA synchronous = FULL"), QStringLiteral("PRAGMA cache_size = -32768"),
                              QStringLiteral("PRAGMA temp_store = MEMORY")};
    for (const QString &pragma : session)
        if (auto done = plain(pragma); !done)
            return done;
    return {};
}

// The driver sees a server go, even while nothing is asked of it.
void Connection::noteLoss()
{
    if (!isPostgres() || m_database.isOpen())
        return;
    m_lost = true;
    m_database.close(); // nothing may wait on its socket any more
}

Expected<void> Connection::ready()
{
    if (!m_lost)
        noteLoss();
    if (!m_lost)
        return {};
    if (m_held > 0) // what was begun in the old session cannot go on in a new one
        return goneTrouble(m_address);
    drop();
    m_database = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), m_name);
    m_lost = false;
    auto done = setUp(Mode::Existing);
    m_lost = !done;
    if (done)
        subscribe();
    return done;
}

Expected<QSqlQuery *> Connection::prepared(const QString &sql, const QVariantList &values)
{
    if (auto usable = ready(); !usable)
        return usable.trouble();
    auto &query = m_statements[sql];
    if (!query) {
        auto fresh = std::make_unique<QSqlQuery>(m_database);
        fresh->setForwardOnly(true);
        if (!fresh->prepare(sql)) {
            const Trouble why = trouble(fresh->lastError());
            m_statements.erase(sql);
            return why;
        }
        query = std::move(fresh);
    }
    for (qsizetype i = 0; i < values.size(); ++i)
        query->bindValue(static_cast<int>(i), values.at(i));
    if (!query->exec()) {
        const Trouble why = trouble(query->lastError());
        query->finish();
        m_failed.push_back(std::move(query)); // PostgreSQL lets go of it only when the failed transaction is over
        m_statements.erase(sql);
        return why;
    }
    return query.get();
}

Expected<qint64> Connection::run(const QString &sql, const QVariantList &values)
{
    const auto query = prepared(sql, values);
    if (!query)
        return query.trouble();
    const qint64 changed = (*query)->numRowsAffected();
    (*query)->finish();
    return changed;
}

Expected<void> Connection::forEach(const QString &sql, const QVariantList &values, const std::function<bool(const QSqlQuery &)> &each)
{
    const auto query = prepared(sql, values);
    if (!query)
        return query.trouble();
    ++m_held;
    while ((*query)->next())
        if (!each(**query))
            break;
    --m_held;
    const QSqlError error = (*query)->lastError();
    (*query)->finish();
    if (error.isValid())
        return trouble(error);
    return {};
}

Expected<QList<Row>> Connection::rows(const QString &sql, const QVariantList &values)
{
    QList<Row> found;
    int columns = -1;
    const auto done = forEach(sql, values, [&found, &columns](const QSqlQuery &query) {
        Row row;
        if (columns < 0)
            columns = static_cast<int>(query.record().count());
        row.reserve(columns);
        for (int i = 0; i < columns; ++i)
            row << query.value(i);
        found << std::move(row);
        return true;
    });
    if (!done)
        return done.trouble();
    return found;
}

Expected<QVariant> Connection::value(const QString &sql, const QVariantList &values)
{
    QVariant found;
    const auto done = forEach(sql, values, [&found](const QSqlQuery &query) {
        found = query.value(0);
        return false;
    });
    if (!done)
        return done.trouble();
    return found;
}

Expected<void> Connection::plain(const QString &sql)
{
    if (auto usable = ready(); !usable)
        return usable;
    QSqlQuery query(m_database);
    if (!query.exec(sql))
        return trouble(query.lastError());
    return {};
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
    subscribe();
}

void Connection::subscribe()
{
    if (!isPostgres() || !m_changed || !m_database.driver()->subscribeToNotification(QStringLiteral("turnscrew_changed")))
        return;
    QObject::connect(m_database.driver(), &QSqlDriver::notification, m_database.driver(),
                     [this](const QString &, QSqlDriver::NotificationSource source, const QVariant &) {
                         if (source != QSqlDriver::SelfSource)
                             m_changed();
                     });
    // The driver closes the socket of a dead session but goes on waiting on it, unless it is told before the next wait.
    const auto *dispatcher = QThread::currentThread()->eventDispatcher();
    if (!dispatcher)
        return;
    QObject::connect(dispatcher, &QAbstractEventDispatcher::aboutToBlock, m_database.driver(), [this] { noteLoss(); });
    QObject::connect(dispatcher, &QAbstractEventDispatcher::awake, m_database.driver(), [this] { noteLoss(); });
}

qint64 Connection::dataVersion()
{
    if (isPostgres())
        return 0;
    const auto version = value(QStringLiteral("PRAGMA data_version"));
    return version ? version->toLongLong() : 0;
}

Trouble Connection::trouble(const QSqlError &error)
{
    m_lost = m_lost || isGone(error, m_address);
    const Trouble why = sqlTrouble(error, m_address);
    if (isReadOnly() && !isPostgres() && QFileInfo(m_address.file + QStringLiteral("-wal")).size() > 0)
        return Trouble{why.did, QStringLiteral("it is read-only and was not closed properly, so a part of it is in the file beside it"),
                       QStringLiteral("copy both to a place where you may write")};
    return why;
}

} // namespace ts
