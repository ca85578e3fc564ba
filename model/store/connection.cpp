#include "model/store/connection.h"

#include "model/store/sql_trouble.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <QUrl>

#include <atomic>

namespace ts {

namespace {

constexpr int busyMilliseconds = 8000;

QString nextName()
{
    static std::atomic<int> count{0}; // Qt wants a name for each connection; nothing else hangs on it
    return QStringLiteral("workbook-%1").arg(count++);
}

Expected<void> checkFile(const BookAddress &address, Connection::Mode mode)
{
    const QFileInfo info(address.file);
    const QString did = QStringLiteral("Cannot open %1").arg(address.display());
    if (mode == Connection::Mode::Create) {
        const QString make = QStringLiteral("Cannot make %1").arg(address.display());
        if (info.exists() || info.isSymLink())
            return Trouble{make, QStringLiteral("there is a file of that name already"), QStringLiteral("choose another name")};
        if (!info.dir().exists())
            return Trouble{make, QStringLiteral("the folder %1 does not exist").arg(info.dir().path()), {}};
        return {};
    }
    if (!info.exists())
        return Trouble{did, QStringLiteral("there is no such file"), QStringLiteral("make one with: turnscrew new")};
    if (info.isDir())
        return Trouble{did, QStringLiteral("it is a folder"), QStringLiteral("name the workbook file in it")};
    QFile file(address.file);
    if (!file.open(QIODevice::ReadOnly))
        return Trouble{did, QStringLiteral("it may not be read (%1)").arg(file.errorString()), {}};
    if (file.size() == 0)
        return Trouble{did, QStringLiteral("the file is empty"), QStringLiteral("take it from a backup, or make a new one")};
    if (file.read(16) != QByteArrayLiteral("SQLite format 3\0"))
        return Trouble{did, QStringLiteral("it is not a Turnscrew workbook"), {}};
    return {};
}

} // namespace

Connection::Connection(BookAddress address, QString name)
    : m_address(std::move(address)), m_name(std::move(name)),
      m_database(QSqlDatabase::addDatabase(isPostgres() ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE"), m_name))
{
}

Connection::~Connection()
{
    m_statements.clear();
    m_failed.clear();
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Expected<std::unique_ptr<Connection>> Connection::open(const BookAddress &address, Mode mode)
{
    if (address.engine == BookAddress::Engine::Sqlite)
        if (auto checked = checkFile(address, mode); !checked)
            return checked.trouble();
    std::unique_ptr<Connection> connection(new Connection(address, nextName()));
    if (auto ready = connection->setUp(mode); !ready)
        return ready.trouble();
    return connection;
}

Expected<void> Connection::setUp(Mode mode)
{
    if (!m_database.isValid())
        return Trouble{QStringLiteral("Cannot open %1").arg(m_address.display()), QStringLiteral("Qt's %1 driver is not installed").arg(pick("SQLite", "PostgreSQL")),
                       QStringLiteral("install %1").arg(pick("libqt6sql6-sqlite", "libqt6sql6-psql"))};
    if (isPostgres()) {
        m_database.setHostName(m_address.host);
        m_database.setPort(m_address.port);
        m_database.setDatabaseName(m_address.database);
        m_database.setUserName(m_address.user);
        m_database.setConnectOptions(m_address.options.isEmpty() ? QStringLiteral("connect_timeout=10")
                                                                 : m_address.options + QStringLiteral(";connect_timeout=10"));
        if (!m_database.open())
            return Trouble{QStringLiteral("Cannot reach %1").arg(m_address.display()), plainReason(m_database.lastError()),
                           QStringLiteral("see that the server runs and that you may use it")};
        return plain(QStringLiteral("SET client_min_messages = error")); // notices would go to standard error
    }
    QUrl url = QUrl::fromLocalFile(m_address.file);
    url.setQuery(mode == Mode::Create ? QStringLiteral("mode=rwc") : QStringLiteral("mode=rw"));
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
    if (mode == Mode::Create)
        return plain(QStringLiteral("PRAGMA journal_mode = WAL"));
    return {};
}

Expected<QSqlQuery *> Connection::prepared(const QString &sql, const QVariantList &values)
{
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
    while ((*query)->next())
        if (!each(**query))
            break;
    const QSqlError error = (*query)->lastError();
    (*query)->finish();
    if (error.isValid())
        return trouble(error);
    return {};
}

Expected<QList<Row>> Connection::rows(const QString &sql, const QVariantList &values)
{
    QList<Row> found;
    const auto done = forEach(sql, values, [&found](const QSqlQuery &query) {
        Row row;
        const int columns = static_cast<int>(query.record().count());
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
    QSqlQuery query(m_database);
    if (!query.exec(sql))
        return trouble(query.lastError());
    return {};
}

QString Connection::pick(const char *sqlite, const char *postgres) const
{
    return QString::fromLatin1(isPostgres() ? postgres : sqlite);
}

QString Connection::minutesBetween(const QString &from, const QString &to) const
{
    return pick("((julianday(%2) - julianday(%1)) * 1440.0)", "(extract(epoch FROM ((%2)::timestamptz - (%1)::timestamptz)) / 60.0)").arg(from, to);
}

void Connection::listen(std::function<void()> changed)
{
    if (!isPostgres() || !m_database.driver()->subscribeToNotification(QStringLiteral("turnscrew_changed")))
        return;
    QObject::connect(m_database.driver(), &QSqlDriver::notification, m_database.driver(),
                     [told = std::move(changed)](const QString &, QSqlDriver::NotificationSource source, const QVariant &) {
                         if (source != QSqlDriver::SelfSource)
                             told();
                     });
}

qint64 Connection::dataVersion()
{
    if (isPostgres())
        return 0;
    const auto version = value(QStringLiteral("PRAGMA data_version"));
    return version ? version->toLongLong() : 0;
}

Trouble Connection::trouble(const QSqlError &error) const
{
    return sqlTrouble(error, m_address);
}

Expected<std::unique_ptr<Transaction>> Transaction::begin(Connection &connection)
{
    // IMMEDIATE and the advisory lock both make one writer wait for the other, so journal numbers ascend in order of commit.
    if (auto begun = connection.plain(connection.pick("BEGIN IMMEDIATE", "BEGIN")); !begun)
        return begun.trouble();
    std::unique_ptr<Transaction> transaction(new Transaction(connection));
    if (connection.isPostgres())
        if (auto locked = connection.plain(QStringLiteral("SELECT pg_advisory_xact_lock(1414746947)")); !locked)
            return locked.trouble();
    return transaction;
}

Transaction::~Transaction()
{
    if (!m_open)
        return;
    (void)m_connection.plain(QStringLiteral("ROLLBACK"));
    m_connection.dropFailed();
}

Expected<void> Transaction::commit()
{
    auto done = m_connection.plain(QStringLiteral("COMMIT"));
    if (done) {
        m_open = false;
        m_connection.dropFailed();
    }
    return done;
}

} // namespace ts
