// SQLite, opened by Qt's driver. Statements are run through the driver's own handle (QSqlDriver::handle): the driver describes every
// column anew each time a statement is run and takes texts by a detour over UTF-16, which made loading a unit two and a half
// times as slow as it needs to be.
#include "model/store/session.h"

#include <QSet>
#include <QSqlDatabase>
#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>

#include <sqlite3.h>

#include <atomic>

namespace ts {

namespace {

SqlFailure failureOf(sqlite3 *database)
{
    return {QString::number(sqlite3_extended_errcode(database)), QString::fromUtf8(sqlite3_errmsg(database)), false};
}

/// The statements of one session that are not let go of yet; the session and its statements share it, since either may go first.
/// SQLite's own list is of no use here: the search index keeps statements in it that are its own to let go of.
using Held = QSet<sqlite3_stmt *>;

class FileStatement final : public Statement {
public:
    FileStatement(sqlite3 *database, sqlite3_stmt *statement, std::shared_ptr<Held> held)
        : m_database(database), m_statement(statement), m_held(std::move(held))
    {
        m_held->insert(m_statement);
    }
    ~FileStatement() override
    {
        if (m_held->remove(m_statement)) // else the session has let go of it
            sqlite3_finalize(m_statement);
    }

    bool start(const QVariantList &values) override
    {
        sqlite3_reset(m_statement);
        m_failure.reset();
        m_texts.clear();
        m_texts.reserve(values.size()); // what is bound must stay where it is
        int code = sqlite3_bind_parameter_count(m_statement) == values.size() ? SQLITE_OK : SQLITE_RANGE;
        for (qsizetype i = 0; i < values.size() && code == SQLITE_OK; ++i)
            code = bind(static_cast<int>(i) + 1, values.at(i));
        if (code != SQLITE_OK)
            m_failure = SqlFailure{QString::number(code), QString::fromUtf8(sqlite3_errstr(code)), false};
        return code == SQLITE_OK;
    }
    bool next() override
    {
        const int code = sqlite3_step(m_statement);
        if (code != SQLITE_ROW && code != SQLITE_DONE)
            m_failure = failureOf(m_database);
        return code == SQLITE_ROW;
    }
    [[nodiscard]] int columns() const override { return sqlite3_column_count(m_statement); }
    [[nodiscard]] QVariant value(int column) const override
    {
        switch (sqlite3_column_type(m_statement, column)) {
        case SQLITE_INTEGER:
            return QVariant(static_cast<qlonglong>(sqlite3_column_int64(m_statement, column)));
        case SQLITE_FLOAT:
            return sqlite3_column_double(m_statement, column);
        case SQLITE_TEXT: {
            const auto *text = reinterpret_cast<const char *>(sqlite3_column_text(m_statement, column));
            const int length = sqlite3_column_bytes(m_statement, column);
            return length == 0 ? QStringLiteral("") : QString::fromUtf8(text, length); // a text that is empty is not null
        }
        case SQLITE_BLOB:
            return QByteArray(static_cast<const char *>(sqlite3_column_blob(m_statement, column)), sqlite3_column_bytes(m_statement, column));
        default:
            return {};
        }
    }
    [[nodiscard]] qint64 changed() const override { return sqlite3_changes(m_database); }
    void finish() override { sqlite3_reset(m_statement); }

private:
    int bind(int at, const QVariant &value)
    {
        if (value.isNull())
            return sqlite3_bind_null(m_statement, at);
        switch (value.typeId()) {
        case QMetaType::Bool:
        case QMetaType::Int:
        case QMetaType::LongLong:
            return sqlite3_bind_int64(m_statement, at, value.toLongLong());
        case QMetaType::Double:
            return sqlite3_bind_double(m_statement, at, value.toDouble());
        case QMetaType::QByteArray:
            m_texts << value.toByteArray();
            return sqlite3_bind_blob64(m_statement, at, m_texts.last().constData(), static_cast<sqlite3_uint64>(m_texts.last().size()), SQLITE_STATIC);
        default:
            m_texts << value.toString().toUtf8();
            return sqlite3_bind_text64(m_statement, at, m_texts.last().constData(), static_cast<sqlite3_uint64>(m_texts.last().size()), SQLITE_STATIC, SQLITE_UTF8);
        }
    }

    sqlite3 *m_database;
    sqlite3_stmt *m_statement;
    std::shared_ptr<Held> m_held;
    QByteArrayList m_texts;
};

QString nextFileName()
{
    static std::atomic<int> count{0}; // Qt wants a name for each connection; nothing else hangs on it
    return QStringLiteral("file-%1").arg(count++);
}

class FileSession final : public Session {
public:
    FileSession() : m_name(nextFileName()), m_qt(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name)) {}
    ~FileSession() override
    {
        // Statements may outlive the session, but SQLite does not close a file that has one.
        for (sqlite3_stmt *left : std::exchange(*m_held, {}))
            sqlite3_finalize(left);
        m_qt.close();
        m_qt = QSqlDatabase();
        QSqlDatabase::removeDatabase(m_name);
    }

    [[nodiscard]] std::optional<SqlFailure> open(const QString &url, bool writable, int milliseconds)
    {
        if (!m_qt.isValid())
            return SqlFailure{{}, QStringLiteral("Qt's SQLite driver (libqt6sql6-sqlite) is not installed"), false};
        m_qt.setDatabaseName(url);
        m_qt.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1%2").arg(milliseconds)
                                   .arg(writable ? QString() : QStringLiteral(";QSQLITE_OPEN_READONLY")));
        if (!m_qt.open())
            return SqlFailure{m_qt.lastError().nativeErrorCode(), m_qt.lastError().databaseText(), false};
        const QVariant handle = m_qt.driver()->handle();
        if (qstrcmp(handle.typeName(), "sqlite3*") != 0)
            return SqlFailure{{}, QStringLiteral("Qt's SQLite driver is not of the kind expected"), false};
        m_database = *static_cast<sqlite3 *const *>(handle.constData());
        return std::nullopt;
    }

    std::optional<SqlFailure> plain(const QString &sql) override
    {
        if (sqlite3_exec(m_database, sql.toUtf8().constData(), nullptr, nullptr, nullptr) != SQLITE_OK)
            return failureOf(m_database);
        return std::nullopt;
    }
    std::unique_ptr<Statement> prepare(const QString &sql, SqlFailure &failure) override
    {
        const QByteArray text = sql.toUtf8();
        sqlite3_stmt *statement = nullptr;
        if (sqlite3_prepare_v3(m_database, text.constData(), static_cast<int>(text.size()), SQLITE_PREPARE_PERSISTENT, &statement, nullptr) == SQLITE_OK)
            return std::make_unique<FileStatement>(m_database, statement, m_held);
        failure = failureOf(m_database);
        return nullptr;
    }

private:
    QString m_name;
    QSqlDatabase m_qt;
    sqlite3 *m_database = nullptr;
    std::shared_ptr<Held> m_held = std::make_shared<Held>();
};

} // namespace

std::unique_ptr<Session> openFile(const QString &file, BookAccess access, int milliseconds, SqlFailure &failure)
{
    // A plain open would make an empty file. A file that nobody can write needs no locks, and could not have them: they are files too.
    QUrl url = QUrl::fromLocalFile(file);
    if (access == BookAccess::Still)
        url.setQuery(QStringLiteral("immutable=1"));
    else if (access == BookAccess::Writable)
        url.setQuery(QStringLiteral("mode=rw"));
    auto session = std::make_unique<FileSession>();
    const auto failed = session->open(url.toString(QUrl::FullyEncoded), access == BookAccess::Writable, milliseconds);
    if (!failed)
        return session;
    failure = *failed;
    return nullptr;
}

} // namespace ts
