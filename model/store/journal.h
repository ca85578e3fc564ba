#pragma once

#include "model/records/change.h"
#include "model/store/connection.h"

namespace ts {

/// One line of the journal as stored.
struct JournalEntry {
    enum State { Done = 0, Undone = 1, Passed = 2 }; ///< Passed: undone, and something else was done since
    qint64 number = 0;
    QDateTime at;
    QString who;
    QString sentence;
    qint64 takesBack = 0; ///< the number that this line undid or did again, or 0
    State state = Done;
};

/// Who did what, when, with every record before and after. Lines are only ever added.
class Journal {
public:
    /// `who` does the changes. In a shared workbook each one undoes their own.
    Journal(Connection &connection, QString who) : m_connection(connection), m_who(std::move(who)) {}

    /// Writes a change as it was applied and answers its number. A plain change (takesBack 0) ends what could be redone.
    Expected<qint64> write(const Change &change, const QString &sentence, const QDateTime &at, qint64 takesBack);
    Expected<void> setState(qint64 number, JournalEntry::State state);
    /// The newest plain line that is done; the oldest that is undone and may be redone.
    [[nodiscard]] Expected<std::optional<JournalEntry>> undoable();
    [[nodiscard]] Expected<std::optional<JournalEntry>> redoable();
    [[nodiscard]] Expected<Change> change(const JournalEntry &entry);
    /// Newest first; of one unit where `unit` is not null.
    [[nodiscard]] Expected<QList<JournalEntry>> lines(const QUuid &unit, int limit);
    /// What was changed after a number, for telling: kind, record, unit, and the names of the fields that differ.
    struct Touched {
        qint64 number = 0;
        QString kind;
        QUuid record;
        QUuid unit;
        QStringList fields;
    };
    [[nodiscard]] Expected<QList<Touched>> touchedAfter(qint64 number, int limit);
    [[nodiscard]] Expected<qint64> lastNumber();

private:
    [[nodiscard]] Expected<QList<JournalEntry>> entries(const QString &rest, const QVariantList &values);
    [[nodiscard]] QString mine(const QString &prefix = {}) const; ///< SQL that narrows to who, where the workbook is shared
    [[nodiscard]] QVariantList mineValues() const;
    Connection &m_connection;
    QString m_who;
};

} // namespace ts
