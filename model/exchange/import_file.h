#pragma once

#include "model/desk/desk.h"

#include <QHash>

namespace ts {

struct ImportOptions {
    bool dryRun = false;         ///< look only
    QHash<QString, QString> map; ///< a list's own column name -> ours; "-" leaves it out
};

/// What an import did, or would have done.
struct ImportReport {
    qint64 added = 0;
    qint64 skipped = 0;   ///< already there
    QStringList problems; ///< by line; where there is one, nothing was imported and `added` is 0
    QStringList warnings; ///< by line; taken in all the same
    QString sentence;     ///< "7673 units imported from repairs.csv"

    [[nodiscard]] bool refused() const { return !problems.isEmpty(); }
};

/// Takes a file in, whole or not at all, as one change that one undo takes back. `kind` is one of importKinds(). Refused with a
/// Trouble where the file cannot be read as such a file at all; with a report of problems by line where some of its lines are
/// wrong.
[[nodiscard]] Expected<ImportReport> importFile(Desk &desk, const QString &file, const QString &kind,
                                                const ImportOptions &options = {}, const Progress &progress = {});

} // namespace ts
