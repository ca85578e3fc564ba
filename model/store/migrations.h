#pragma once

#include "model/store/connection.h"

#include <QDateTime>

namespace ts {

/// One numbered step of the schema. A program that knows only up to N opens a workbook at a higher step where every
/// step above N says that a program knowing `leastProgram` <= N can still use it.
struct Migration {
    int number = 0;
    int leastProgram = 0;
    QStringList statements; ///< those for the engine it was read for
};

/// What became of a workbook's schema when it was opened.
enum class MigrationOutcome {
    UpToDate,
    Upgraded,
    NewerReadable, ///< made by a newer program, still fit for this one
    NewerRefused,  ///< made by a newer program, not fit for this one; not touched
    Failed         ///< the upgrade failed and was rolled back; not touched
};

struct MigrationReport {
    MigrationOutcome outcome = MigrationOutcome::UpToDate;
    QString copy;      ///< the checked copy that was made before an upgrade
    Trouble trouble{}; ///< of the last two outcomes
};

/// The migrations that this program carries (resources /store/migrations/NNNN_name.sql), in order, for an engine.
/// A file is parted by lines "-- ;;" (every engine), "-- ;; sqlite" or "-- ;; postgres"; a line "-- least-program: N" may stand in it.
[[nodiscard]] Expected<QList<Migration>> carriedMigrations(bool postgres);
/// Reads one migration file's text.
[[nodiscard]] Expected<Migration> readMigration(int number, const QString &text, bool postgres);

/// Brings a workbook to the last of `migrations` in one transaction, after a checked copy where it had a schema
/// already. `now` dates the copy.
[[nodiscard]] MigrationReport migrate(Connection &connection, const QList<Migration> &migrations, const QDateTime &now);

/// The step a workbook stands at: 0 for an empty database, nothing where it is no workbook at all.
[[nodiscard]] Expected<std::optional<int>> schemaStep(Connection &connection);

} // namespace ts
