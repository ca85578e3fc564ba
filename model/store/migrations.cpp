#include "model/store/migrations.h"

#include "model/store/file_copy.h"
#include "model/store/transaction.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

constexpr int applicationId = 0x54534357; // "TSCW", in SQLite's header field for it

// All steps in one transaction: a failure in the third leaves the workbook at the first. Answers false, with nothing done, where
// the workbook no longer stands at `step`: another program was quicker.
Expected<bool> runAll(Connection &connection, const QList<Migration> &migrations, int step)
{
    auto transaction = Transaction::begin(connection);
    if (!transaction)
        return transaction.trouble();
    const auto stands = schemaStep(connection);
    if (!stands)
        return stands.trouble();
    if (stands->value_or(0) != step)
        return false;
    for (const Migration &migration : migrations)
        for (const QString &statement : migration.statements)
            if (auto done = connection.plain(statement); !done)
                return done.trouble();
    const Migration &last = migrations.last();
    const auto put = [&connection](const QString &name, int value) {
        return connection.run(QStringLiteral("INSERT INTO workbook (name, value) VALUES (?, ?) "
                                             "ON CONFLICT (name) DO UPDATE SET value = excluded.value"),
                              {name, QString::number(value)});
    };
    if (auto done = put(QStringLiteral("schema"), last.number); !done)
        return done.trouble();
    if (auto done = put(QStringLiteral("least_program"), last.leastProgram); !done)
        return done.trouble();
    if (!connection.isPostgres()) {
        if (auto done = connection.plain(QStringLiteral("PRAGMA user_version = %1").arg(last.number)); !done)
            return done.trouble();
        if (auto done = connection.plain(QStringLiteral("PRAGMA application_id = %1").arg(applicationId)); !done)
            return done.trouble();
    }
    if (auto done = (*transaction)->commit(); !done)
        return done.trouble();
    return true;
}

Expected<QString> copyBefore(Connection &connection, int step, const QDateTime &now)
{
    // The copy is built anew and may come out sound where the workbook is not; a damaged one is left for its backups.
    const auto sound = connection.value(QStringLiteral("PRAGMA quick_check"));
    if (!sound)
        return sound.trouble();
    if (sound->toString() != QLatin1String("ok"))
        return Trouble{QStringLiteral("the workbook is damaged"), {}, QStringLiteral("turnscrew verify says what is wrong")};
    const QFileInfo info(connection.address().file);
    const QString stamp = now.toUTC().toString(QStringLiteral("yyyyMMdd-HHmmss"));
    const QString copy = info.dir().filePath(QStringLiteral("%1.before-step-%2-%3.turnscrew").arg(info.completeBaseName()).arg(step).arg(stamp));
    if (auto done = copyChecked(connection, copy); !done)
        return done.trouble();
    return copy;
}

} // namespace

Expected<Migration> readMigration(int number, const QString &text, bool postgres)
{
    static const QRegularExpression marker(QStringLiteral("^-- ;;[ ]*(sqlite|postgres|)[ ]*$"));
    static const QRegularExpression least(QStringLiteral("^-- least-program: ([0-9]+)$"));
    Migration migration{number, number, {}};
    QString statement;
    bool ours = true;
    const auto finish = [&] {
        if (ours && !statement.trimmed().isEmpty())
            migration.statements << statement.trimmed();
        statement.clear();
    };
    const auto lines = text.split(QLatin1Char('\n'));
    for (const QString &line : lines) {
        if (const auto match = least.match(line); match.hasMatch()) {
            migration.leastProgram = match.captured(1).toInt();
        } else if (const auto part = marker.match(line); part.hasMatch()) {
            finish();
            ours = part.captured(1).isEmpty() || (part.captured(1) == QLatin1String("postgres")) == postgres;
        } else if (!line.trimmed().startsWith(QLatin1String("--"))) {
            statement += line + QLatin1Char('\n');
        }
    }
    finish();
    if (migration.statements.isEmpty())
        return Trouble{QStringLiteral("Cannot read migration %1").arg(number), QStringLiteral("it has no statement"), {}};
    return migration;
}

Expected<QList<Migration>> carriedMigrations(bool postgres)
{
    QList<Migration> migrations;
    const QDir folder(QStringLiteral(":/store/migrations"));
    const auto files = folder.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name);
    for (const QString &name : files) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            return Trouble{QStringLiteral("Cannot read migration %1").arg(name), file.errorString(), {}};
        auto migration = readMigration(name.left(4).toInt(), QString::fromUtf8(file.readAll()), postgres);
        if (!migration)
            return migration.trouble();
        migrations << *std::move(migration);
    }
    return migrations;
}

Expected<std::optional<int>> schemaStep(Connection &connection)
{
    const auto tables = connection.value(connection.pick("SELECT count(*) FROM sqlite_master WHERE type = 'table'",
                                                         "SELECT count(*) FROM pg_tables WHERE schemaname = current_schema()"));
    if (!tables)
        return tables.trouble();
    const auto marked = connection.value(connection.pick("SELECT count(*) FROM sqlite_master WHERE type = 'table' AND name IN ('workbook', 'journal_item', 'kept')",
                                                         "SELECT count(*) FROM pg_tables WHERE schemaname = current_schema() AND tablename IN ('workbook', 'journal_item', 'kept')"));
    if (!marked)
        return marked.trouble();
    bool ours = marked->toInt() == 3;
    if (ours && !connection.isPostgres()) {
        const auto application = connection.value(QStringLiteral("PRAGMA application_id"));
        if (!application)
            return application.trouble();
        ours = application->toInt() == applicationId;
    }
    if (!ours)
        return tables->toInt() == 0 && connection.isPostgres() ? std::optional<int>(0) : std::optional<int>();
    const auto step = connection.value(QStringLiteral("SELECT value FROM workbook WHERE name = 'schema'"));
    if (!step)
        return step.trouble();
    return std::optional<int>(step->toString().toInt());
}

MigrationReport migrate(Connection &connection, const QList<Migration> &migrations, const QDateTime &now)
{
    const int known = migrations.isEmpty() ? 0 : migrations.last().number;
    const auto read = schemaStep(connection);
    if (!read)
        return {MigrationOutcome::Failed, {}, read.trouble()};
    const int step = read->value_or(0);
    if (step == known)
        return {};
    const QString name = connection.address().display();
    if (step > known) {
        const auto least = connection.value(QStringLiteral("SELECT value FROM workbook WHERE name = 'least_program'"));
        if (!least)
            return {MigrationOutcome::Failed, {}, least.trouble()};
        if (least->toString().toInt() <= known)
            return {MigrationOutcome::NewerReadable, {}, {}};
        return {MigrationOutcome::NewerRefused, {},
                Trouble{QStringLiteral("Cannot open %1").arg(name), QStringLiteral("it was made by a newer Turnscrew"),
                        QStringLiteral("update the program; the workbook was not touched")}};
    }
    MigrationReport report{MigrationOutcome::Upgraded, {}, {}};
    const auto failed = [&](const Trouble &why) {
        QString reason = why.sentence();
        reason.chop(1);
        return MigrationReport{MigrationOutcome::Failed, report.copy,
                               Trouble{QStringLiteral("Cannot bring %1 up to date").arg(name), reason, QStringLiteral("it was left as it was")}};
    };
    if (step > 0 && !connection.isPostgres()) { // PostgreSQL rolls schema changes back whole, and its owner makes its backups
        auto copy = copyBefore(connection, step, now);
        if (!copy)
            return failed(copy.trouble());
        report.copy = *copy;
    }
    QList<Migration> pending;
    for (const Migration &migration : migrations)
        if (migration.number > step)
            pending << migration;
    const auto done = runAll(connection, pending, step);
    if (!done)
        return failed(done.trouble());
    return *done ? report : migrate(connection, migrations, now);
}

} // namespace ts
