#pragma once

#include "model/desk/desk.h"

namespace ts {

/// Copies of a workbook under its name and the date, the oldest of them dropped.
struct BackupPlan {
    QString folder;
    QString name;  ///< of the workbook, without folder and ending: "bench"
    int keep = 10; ///< copies that stay, this one among them
};

/// The plan for a workbook's file or address in a folder.
[[nodiscard]] BackupPlan backupPlan(const QString &book, const QString &folder);
/// The copies that are there, newest first, as full paths; files of other names are not among them.
[[nodiscard]] QStringList datedBackups(const BackupPlan &plan);
/// Makes a checked copy named after the workbook and `now` ("bench 2026-11-25 18.30.05.turnscrew") and then drops the oldest beyond
/// `keep`. Answers its path. Refused where the folder cannot be made or the copy is not sound; then nothing is dropped.
[[nodiscard]] Expected<QString> makeDatedBackup(Desk &desk, const BackupPlan &plan, const QDateTime &now);

} // namespace ts
