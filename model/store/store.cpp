#include "model/store/store.h"

#include "model/records/all_records.h"
#include "model/store/file_copy.h"
#include "model/store/transaction.h"

#include <QCryptographicHash>
#include <QFileInfo>

namespace ts {

Store::Store(std::unique_ptr<Connection> connection, const QString &who)
    : m_connection(std::move(connection)), m_search(*m_connection), m_journal(*m_connection, who)
{
}

Expected<std::unique_ptr<Store>> Store::open(const BookAddress &address, const QDateTime &now, const QString &who)
{
    auto connection = Connection::open(address, Connection::Mode::Existing);
    if (!connection)
        return connection.trouble();
    const auto step = schemaStep(**connection);
    if (!step)
        return step.trouble();
    const QString did = QStringLiteral("Cannot open %1").arg(address.display());
    if (!*step)
        return Trouble{did, QStringLiteral("it is not a Turnscrew workbook"), {}};
    if (**step == 0)
        return Trouble{did, QStringLiteral("there is no workbook in it yet"), QStringLiteral("make one with: turnscrew new")};
    const auto migrations = carriedMigrations((*connection)->isPostgres());
    if (!migrations)
        return migrations.trouble();
    std::unique_ptr<Store> store(new Store(*std::move(connection), who));
    store->logAhead();
    store->m_migration = migrate(*store->m_connection, *migrations, now);
    if (store->m_migration.outcome == MigrationOutcome::NewerRefused || store->m_migration.outcome == MigrationOutcome::Failed)
        return store->m_migration.trouble;
    return store;
}

// A copy made by SQLite comes without the write-ahead log, and readers would wait for writers. Where it cannot be had it works without.
void Store::logAhead()
{
    if (m_connection->isPostgres() || m_connection->isReadOnly())
        return;
    const auto mode = m_connection->value(QStringLiteral("PRAGMA journal_mode"));
    if (mode && mode->toString() != QLatin1String("wal"))
        (void)m_connection->plain(QStringLiteral("PRAGMA journal_mode = WAL"));
}

Expected<std::unique_ptr<Store>> Store::create(const BookAddress &address, const QDateTime &now, const QString &who)
{
    const bool file = address.engine == BookAddress::Engine::Sqlite;
    auto connection = Connection::open(address, Connection::Mode::Create);
    if (!connection)
        return connection.trouble();
    const Trouble taken{QStringLiteral("Cannot make a workbook in %1").arg(address.display()), QStringLiteral("there is something in it already"),
                        QStringLiteral("use an empty database")};
    if (!file) {
        const auto step = schemaStep(**connection);
        if (!step)
            return step.trouble();
        if (*step != 0)
            return taken;
    }
    const auto migrations = carriedMigrations((*connection)->isPostgres());
    if (!migrations)
        return migrations.trouble();
    std::unique_ptr<Store> store(new Store(*std::move(connection), who));
    store->m_migration = migrate(*store->m_connection, *migrations, now);
    if (store->m_migration.outcome == MigrationOutcome::UpToDate) // someone else made it at the same moment
        return taken;
    if (store->m_migration.outcome != MigrationOutcome::Upgraded) {
        const Trouble why = store->m_migration.trouble;
        store.reset();
        if (file) // what was begun was ours alone
            removeBookFile(address.file);
        return why;
    }
    return store;
}

RecordTable &Store::table(const Kind &kind)
{
    auto &table = m_tables[&kind];
    if (!table)
        table = std::make_unique<RecordTable>(*m_connection, kind);
    return *table;
}

Expected<qint64> Store::nextNumber(const QString &counter)
{
    const auto number = m_connection->value(QStringLiteral("INSERT INTO counter (name, value) VALUES (?, 1) "
                                                           "ON CONFLICT (name) DO UPDATE SET value = counter.value + 1 RETURNING value"), {counter});
    if (!number)
        return number.trouble();
    return number->toLongLong();
}

Expected<void> Store::raiseNumber(const QString &counter, qint64 atLeast)
{
    const auto done = m_connection->run(QStringLiteral("INSERT INTO counter (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = "
                                                       "CASE WHEN counter.value < excluded.value THEN excluded.value ELSE counter.value END"),
                                        {counter, atLeast});
    return done ? Expected<void>() : Expected<void>(done.trouble());
}

// Tags, paper numbers and editions are given inside the transaction: none twice, and no gap when it is rolled back.
Expected<void> Store::fillNumbers(const Kind &kind, Row &row)
{
    const auto fill = [&](int column, const QString &counter) -> Expected<void> {
        const qint64 asked = row.at(column).toLongLong();
        if (asked > 0)
            return raiseNumber(counter, asked);
        const auto number = nextNumber(counter);
        if (!number)
            return number.trouble();
        row[column] = QVariant(static_cast<qlonglong>(*number));
        return {};
    };
    if (kind.table() == QLatin1String("unit"))
        return fill(kind.column(u"tag"), QStringLiteral("tag"));
    if (kind.table() == QLatin1String("paper")) {
        const QString paper = row.at(kind.column(u"kind")).toString();
        if (auto done = fill(kind.column(u"number"), QStringLiteral("paper ") + paper); !done)
            return done;
        return fill(kind.column(u"edition"), QStringLiteral("paper %1 of %2").arg(paper, row.at(kind.column(u"unit")).toString()));
    }
    return {};
}

Expected<void> Store::applyItem(ChangeItem &item)
{
    const Kind &kind = *item.kind;
    if (item.after && !item.before)
        if (auto filled = fillNumbers(kind, *item.after); !filled)
            return filled;
    Row row = item.after ? *item.after : *item.before;
    if (!item.after)
        row[Kind::removedColumn] = QVariant(1LL);
    if (item.before)
        row[Kind::versionColumn] = item.before->at(Kind::versionColumn);
    if (auto sound = kind.check(row); !sound)
        return sound;
    if (!item.before) {
        if (auto done = table(kind).insert(row); !done)
            return done;
    } else {
        const auto done = table(kind).update(row);
        if (!done)
            return done.trouble();
        if (!*done)
            return Trouble{QStringLiteral("This %1 was not changed").arg(kind.noun()), QStringLiteral("it was changed by someone else meanwhile"),
                           QStringLiteral("look at it again and repeat what you want")};
    }
    if (item.after)
        item.after = row;
    return m_search.put(kind, row, !item.before);
}

Expected<Change> Store::commit(const Change &change, const QDateTime &at, const Progress &progress)
{
    if (change.isEmpty())
        return change;
    auto transaction = Transaction::begin(*m_connection);
    if (!transaction)
        return transaction.trouble();
    Change applied(change.sentence());
    const qint64 total = change.items().size();
    for (ChangeItem item : change.items()) {
        if (auto done = applyItem(item); !done)
            return done.trouble();
        applied.addItem(std::move(item));
        if (progress && applied.items().size() % 256 == 0 && !progress(applied.items().size(), total))
            return Trouble{QStringLiteral("Stopped"), QStringLiteral("nothing was changed"), {}};
    }
    if (auto done = finish(**transaction, applied, at); !done)
        return done.trouble();
    if (progress)
        progress(total, total);
    return applied;
}

// Journal line, word to the others, commit.
Expected<void> Store::finish(Transaction &transaction, const Change &applied, const QDateTime &at)
{
    if (auto written = m_journal.write(applied, applied.sentence(), at, 0); !written)
        return written.trouble();
    if (m_connection->isPostgres())
        if (auto told = m_connection->plain(QStringLiteral("NOTIFY turnscrew_changed")); !told)
            return told.trouble();
    return transaction.commit();
}

// The number stands on the paper itself, so nobody else may take it while the paper is being made: a part of a second.
Expected<Paper> Store::commitPaper(Paper paper, const QString &sentence, const QDateTime &at, const PaperMaker &make)
{
    auto transaction = Transaction::begin(*m_connection);
    if (!transaction)
        return transaction.trouble();
    const Kind &kind = description<Paper>();
    Row row = description<Paper>().toRow(paper);
    if (auto filled = fillNumbers(kind, row); !filled)
        return filled.trouble();
    auto numbered = description<Paper>().fromRow(row);
    if (!numbered)
        return numbered.trouble();
    const Expected<QByteArray> bytes = make(*numbered);
    if (!bytes)
        return bytes.trouble();
    const auto sha256 = keep(*bytes, {});
    if (!sha256)
        return sha256.trouble();
    numbered->sha256 = *sha256;
    Change applied(sentence);
    ChangeItem item{&kind, std::nullopt, description<Paper>().toRow(*numbered)};
    if (auto done = applyItem(item); !done)
        return done.trouble();
    numbered = description<Paper>().fromRow(*item.after);
    applied.addItem(std::move(item));
    if (auto done = finish(**transaction, applied, at); !done)
        return done.trouble();
    return numbered;
}

Expected<QString> Store::undo(const QDateTime &at)
{
    return takeBack(false, at);
}

Expected<QString> Store::redo(const QDateTime &at)
{
    return takeBack(true, at);
}

Expected<QString> Store::takeBack(bool again, const QDateTime &at)
{
    auto transaction = Transaction::begin(*m_connection);
    if (!transaction)
        return transaction.trouble();
    const auto found = again ? m_journal.redoable() : m_journal.undoable();
    if (!found)
        return found.trouble();
    if (!*found)
        return Trouble{again ? QStringLiteral("There is nothing to do again") : QStringLiteral("There is nothing to undo"), {}, {}};
    const JournalEntry &entry = **found;
    auto recorded = m_journal.change(entry);
    if (!recorded)
        return recorded.trouble();
    const Change wanted = again ? *recorded : recorded->reversed();
    Change applied(entry.sentence);
    for (const ChangeItem &item : wanted.items()) {
        const QUuid id = Kind::id(item.after ? *item.after : *item.before);
        const auto current = table(*item.kind).get(id);
        if (!current)
            return current.trouble();
        // The stored row must still be what the change left behind: equal where it left one, out of sight where it removed it.
        const bool asLeft = *current && (item.before ? Kind::sameContent(**current, *item.before) : Kind::removed(**current));
        if (!asLeft)
            return Trouble{(again ? QStringLiteral("Cannot do again: ") : QStringLiteral("Cannot undo: ")) + entry.sentence,
                           QStringLiteral("the %1 was changed since").arg(item.kind->noun()), {}};
        ChangeItem now{item.kind, **current, item.after};
        if (auto done = applyItem(now); !done)
            return done.trouble();
        applied.addItem(std::move(now));
    }
    const QString line = (again ? QStringLiteral("Done again: ") : QStringLiteral("Undone: ")) + entry.sentence;
    if (auto written = m_journal.write(applied, line, at, entry.number); !written)
        return written.trouble();
    if (auto set = m_journal.setState(entry.number, again ? JournalEntry::Done : JournalEntry::Undone); !set)
        return set.trouble();
    if (m_connection->isPostgres())
        if (auto told = m_connection->plain(QStringLiteral("NOTIFY turnscrew_changed")); !told)
            return told.trouble();
    if (auto done = (*transaction)->commit(); !done)
        return done.trouble();
    return entry.sentence;
}

Expected<QString> Store::keep(const QByteArray &bytes, const QByteArray &thumbnail)
{
    const QString sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
    const auto done = m_connection->run(QStringLiteral("INSERT INTO kept (sha256, bytes, thumbnail) VALUES (?, ?, ?) ON CONFLICT (sha256) DO NOTHING"),
                                        {sha256, bytes, thumbnail.isEmpty() ? QVariant(QMetaType(QMetaType::QByteArray)) : QVariant(thumbnail)});
    if (!done)
        return done.trouble();
    return sha256;
}

Expected<QByteArray> Store::kept(const QString &sha256, bool thumbnail)
{
    const auto found = m_connection->value(thumbnail ? QStringLiteral("SELECT thumbnail FROM kept WHERE sha256 = ?")
                                                     : QStringLiteral("SELECT bytes FROM kept WHERE sha256 = ?"), {sha256});
    if (!found)
        return found.trouble();
    if (found->isNull())
        return Trouble{QStringLiteral("This photo or paper is not in the workbook"), sha256.left(12), QStringLiteral("run turnscrew verify")};
    return found->toByteArray();
}

Expected<void> Store::copyRows(Store &target)
{
    auto transaction = Transaction::begin(*target.m_connection);
    if (!transaction)
        return transaction.trouble();
    const QStringList plainTables{QStringLiteral("counter"), QStringLiteral("journal"), QStringLiteral("journal_item"), QStringLiteral("kept")};
    const QStringList columns{QStringLiteral("name, value"), QStringLiteral("number, at, who, sentence, takes_back, state"),
                              QStringLiteral("journal, position, kind, record, unit, before, after"), QStringLiteral("sha256, bytes, thumbnail")};
    std::optional<Trouble> trouble;
    for (const Kind *kind : allKinds()) {
        const auto done = table(*kind).forEach([&](const Row &stored) {
            Row row = stored;
            row[Kind::versionColumn] = QVariant(row.at(Kind::versionColumn).toLongLong() - 1); // insert counts it up again
            auto put = target.table(*kind).insert(row);
            if (put)
                put = target.m_search.put(*kind, row, true);
            if (!put)
                trouble = put.trouble();
            return put.ok();
        });
        if (!done || trouble)
            return trouble ? *trouble : done.trouble();
    }
    for (qsizetype i = 0; i < plainTables.size(); ++i) {
        const QString &names = columns.at(i);
        const QString marks = QStringLiteral("?, ").repeated(names.count(QLatin1Char(','))) + QLatin1Char('?');
        const auto done = m_connection->forEach(QStringLiteral("SELECT %1 FROM %2").arg(names, plainTables.at(i)), {}, [&](const Statement &query) {
            QVariantList values;
            for (int c = 0; c <= names.count(QLatin1Char(',')); ++c)
                values << query.value(c);
            const auto put = target.m_connection->run(QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)").arg(plainTables.at(i), names, marks), values);
            if (!put)
                trouble = put.trouble();
            return put.ok();
        });
        if (!done || trouble)
            return trouble ? *trouble : done.trouble();
    }
    return (*transaction)->commit();
}

Expected<void> Store::backup(const QString &file, const QDateTime &now)
{
    if (!m_connection->isPostgres())
        return copyChecked(*m_connection, file);
    BookAddress address;
    address.file = QFileInfo(file).absoluteFilePath();
    auto copy = create(address, now, QString());
    if (!copy)
        return copy.trouble();
    auto moment = Transaction::begin(*m_connection, Transaction::Use::Reading);
    if (!moment)
        return moment.trouble();
    auto done = copyRows(**copy);
    copy->reset();
    if (!done)
        removeBookFile(address.file);
    return done;
}

} // namespace ts
