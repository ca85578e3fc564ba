// PostgreSQL, by Qt's driver.
#include "model/store/session.h"

#include <QAbstractEventDispatcher>
#include <QLibrary>
#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QThread>

#include <atomic>

namespace ts {

namespace {

// SQLSTATE classes, from PostgreSQL's appendix of error codes: 08 is the connection, 57P the operator's intervention.
SqlFailure failureOf(const QSqlError &error)
{
    const QString code = error.nativeErrorCode();
    const QString text = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    const bool lost = code.startsWith(QLatin1String("08")) || code.startsWith(QLatin1String("57P")) || error.type() == QSqlError::ConnectionError
        || (code.isEmpty() && text.contains(QLatin1String("connection")));
    return {code, text, lost};
}

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

class ServerStatement final : public Statement {
public:
    explicit ServerStatement(const QSqlDatabase &database) : m_query(database) { m_query.setForwardOnly(true); }
    bool prepare(const QString &sql) { return m_query.prepare(sql); }
    [[nodiscard]] QSqlError error() const { return m_query.lastError(); }

    bool start(const QVariantList &values) override
    {
        m_failure.reset();
        for (qsizetype i = 0; i < values.size(); ++i)
            m_query.bindValue(static_cast<int>(i), values.at(i));
        if (m_query.exec())
            return true;
        m_failure = failureOf(m_query.lastError());
        m_query.finish();
        return false;
    }
    bool next() override
    {
        if (m_query.next())
            return true;
        if (m_query.lastError().isValid())
            m_failure = failureOf(m_query.lastError());
        return false;
    }
    [[nodiscard]] int columns() const override { return static_cast<int>(m_query.record().count()); }
    [[nodiscard]] QVariant value(int column) const override { return m_query.value(column); }
    [[nodiscard]] qint64 changed() const override { return m_query.numRowsAffected(); }
    void finish() override { m_query.finish(); }

private:
    QSqlQuery m_query;
};

class ServerSession final : public Session {
public:
    ServerSession() : m_name(nextName()), m_database(QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), m_name)) {}
    // The driver goes before the statements: one that outlives it has nothing to take leave of.
    ~ServerSession() override
    {
        m_database = QSqlDatabase();
        QSqlDatabase::removeDatabase(m_name);
    }

    [[nodiscard]] std::optional<SqlFailure> open(const BookAddress &address)
    {
        if (!m_database.isValid())
            return SqlFailure{{}, QStringLiteral("Qt's PostgreSQL driver (libqt6sql6-psql) is not installed"), true};
        m_database.setHostName(address.host);
        m_database.setPort(address.port);
        m_database.setDatabaseName(address.database);
        m_database.setUserName(address.user);
        const QString patience = QStringLiteral("connect_timeout=10");
        m_database.setConnectOptions(address.options.isEmpty() ? patience : address.options + QLatin1Char(';') + patience);
        if (!m_database.open())
            return failureOf(m_database.lastError());
        silence(*m_database.driver());
        return std::nullopt;
    }
    std::optional<SqlFailure> plain(const QString &sql) override
    {
        QSqlQuery query(m_database);
        if (!query.exec(sql))
            return failureOf(query.lastError());
        return std::nullopt;
    }
    std::unique_ptr<Statement> prepare(const QString &sql, SqlFailure &failure) override
    {
        auto statement = std::make_unique<ServerStatement>(m_database);
        if (statement->prepare(sql))
            return statement;
        failure = failureOf(statement->error());
        return nullptr;
    }
    [[nodiscard]] bool alive() const override { return m_database.isOpen(); }
    void listen(const std::function<void()> &changed) override
    {
        QSqlDriver *driver = m_database.driver();
        if (!driver->subscribeToNotification(QStringLiteral("turnscrew_changed")))
            return;
        QObject::connect(driver, &QSqlDriver::notification, driver, [changed](const QString &, QSqlDriver::NotificationSource source, const QVariant &) {
            if (source != QSqlDriver::SelfSource)
                changed();
        });
        // The driver closes the socket of a dead session but goes on waiting on it, unless it is told before the next wait.
        const auto *dispatcher = QThread::currentThread()->eventDispatcher();
        if (!dispatcher)
            return;
        const auto look = [this] {
            if (!alive())
                m_database.close();
        };
        QObject::connect(dispatcher, &QAbstractEventDispatcher::aboutToBlock, driver, look);
        QObject::connect(dispatcher, &QAbstractEventDispatcher::awake, driver, look);
    }

private:
    QString m_name;
    QSqlDatabase m_database;
};

} // namespace

std::unique_ptr<Session> openServer(const BookAddress &address, int milliseconds, SqlFailure &failure)
{
    auto session = std::make_unique<ServerSession>();
    auto failed = session->open(address);
    if (!failed)
        failed = session->plain(QStringLiteral("SET lock_timeout = %1").arg(milliseconds));
    if (!failed)
        return session;
    failure = *failed;
    return nullptr;
}

} // namespace ts
