#pragma once

#include "model/records/change.h"
#include "model/records/paper.h"
#include "model/store/connection.h"
#include "model/store/journal.h"
#include "model/store/migrations.h"
#include "model/store/record_table.h"
#include "model/store/search_index.h"

#include <functional>
#include <memory>
#include <unordered_map>

namespace ts {

class Transaction;

/// The database of one workbook: rows of every kind, the journal, search, kept bytes. The only place with SQL.
/// One thread; made and dropped there.
class Store {
public:
    using Progress = std::function<bool(qint64 done, qint64 total)>;
    using PaperMaker = std::function<Expected<QByteArray>(const Paper &numbered)>;

    /// Opens an existing workbook and brings it up to date. Refuses what is missing, empty, foreign, damaged, or too new.
    /// `now` dates the copy made before an upgrade; `who` stands in the journal.
    [[nodiscard]] static Expected<std::unique_ptr<Store>> open(const BookAddress &address, const QDateTime &now, const QString &who);
    /// Makes a new workbook; never over anything that is there.
    [[nodiscard]] static Expected<std::unique_ptr<Store>> create(const BookAddress &address, const QDateTime &now, const QString &who);

    [[nodiscard]] const MigrationReport &migration() const { return m_migration; }
    [[nodiscard]] Connection &connection() { return *m_connection; }
    [[nodiscard]] RecordTable &table(const Kind &kind);
    [[nodiscard]] SearchIndex &search() { return m_search; }
    [[nodiscard]] Journal &journal() { return m_journal; }

    /// Applies a change in one transaction with its journal line; answers it with versions, tags and numbers filled in.
    Expected<Change> commit(const Change &change, const QDateTime &at, const Progress &progress = {});
    /// Makes and records a paper in one transaction: hands out its number and edition, lets `make` write its bytes with them, keeps these
    /// and the record. Answers the paper as recorded; where `make` is refused no number is used up.
    Expected<Paper> commitPaper(Paper paper, const QString &sentence, const QDateTime &at, const PaperMaker &make);
    /// Takes the last change back, or does it again; answers its sentence. Refused where its records were changed since.
    Expected<QString> undo(const QDateTime &at);
    Expected<QString> redo(const QDateTime &at);

    // Bytes by SHA-256.
    Expected<QString> keep(const QByteArray &bytes, const QByteArray &thumbnail);
    [[nodiscard]] Expected<QByteArray> kept(const QString &sha256, bool thumbnail);

    /// Copies the workbook whole into a new, checked SQLite file.
    Expected<void> backup(const QString &file, const QDateTime &now);

private:
    Store(std::unique_ptr<Connection> connection, const QString &who);
    Expected<void> finish(Transaction &transaction, const Change &applied, const QDateTime &at);
    Expected<void> applyItem(ChangeItem &item);
    Expected<void> fillNumbers(const Kind &kind, Row &row);
    Expected<qint64> nextNumber(const QString &counter);
    Expected<void> raiseNumber(const QString &counter, qint64 atLeast);
    Expected<QString> takeBack(bool again, const QDateTime &at);
    void logAhead();
    Expected<void> copyRows(Store &target);

    std::unique_ptr<Connection> m_connection;
    std::unordered_map<const Kind *, std::unique_ptr<RecordTable>> m_tables;
    SearchIndex m_search;
    Journal m_journal;
    MigrationReport m_migration;
};

} // namespace ts
