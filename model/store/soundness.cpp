#include "model/store/soundness.h"

#include "model/records/all_records.h"
#include "model/store/transaction.h"

#include <QCryptographicHash>

namespace ts {

namespace {

constexpr qsizetype mostLines = 100;

Expected<void> checkEngine(Connection &connection, QStringList &lines)
{
    if (connection.isPostgres())
        return {};
    const auto integrity = connection.rows(QStringLiteral("PRAGMA integrity_check(20)"));
    if (!integrity)
        return integrity.trouble();
    for (const Row &row : *integrity)
        if (row.value(0).toString() != QLatin1String("ok"))
            lines << QStringLiteral("The file is damaged: %1.").arg(row.value(0).toString());
    const auto references = connection.rows(QStringLiteral("PRAGMA foreign_key_check"));
    if (!references)
        return references.trouble();
    for (const Row &row : *references)
        lines << QStringLiteral("A %1 refers to a %2 that is not there.").arg(row.value(0).toString(), row.value(2).toString());
    return {};
}

// FTS5 compares its index with the entries; it does so by a statement that counts as a write.
Expected<void> checkSearch(Connection &connection, QStringList &lines)
{
    if (connection.isPostgres() || connection.isReadOnly())
        return {};
    auto turn = Transaction::begin(connection);
    if (!turn)
        return turn.trouble();
    if (!connection.plain(QStringLiteral("INSERT INTO search (search, rank) VALUES ('integrity-check', 1)")))
        lines << QStringLiteral("The search index does not agree with the records.");
    return {};
}

Expected<void> checkRecords(Store &store, QStringList &lines)
{
    for (const Kind *kind : allKinds()) {
        qint64 searched = 0;
        const auto done = store.table(*kind).forEach([&](const Row &row) {
            if (const auto read = kind->reads(row); !read && lines.size() < mostLines)
                lines << QStringLiteral("%1 %2: %3").arg(kind->noun(), row.at(Kind::idColumn).toString(), read.trouble().sentence());
            if (!Kind::removed(row) && !SearchIndex::folded(kind->searchText(row)).isEmpty())
                ++searched;
            return lines.size() < mostLines;
        });
        if (!done)
            return done;
        const auto found = store.connection().value(QStringLiteral("SELECT count(*) FROM search_entry WHERE kind = ?"), {kind->table()});
        if (!found)
            return found.trouble();
        if (found->toLongLong() != searched)
            lines << QStringLiteral("Search knows %1 records of kind %2, the workbook has %3.").arg(found->toLongLong()).arg(kind->noun()).arg(searched);
    }
    return {};
}

Expected<void> checkKept(Store &store, QStringList &lines)
{
    const auto done = store.connection().forEach(QStringLiteral("SELECT sha256, bytes FROM kept"), {}, [&](const Statement &query) {
        const QString stated = query.value(0).toString();
        const auto bytes = query.value(1).toByteArray();
        if (QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex()) != stated)
            lines << QStringLiteral("The kept photo or paper %1 is not what was put in.").arg(stated.left(12));
        return lines.size() < mostLines;
    });
    if (!done)
        return done;
    for (const auto *table : {"photo", "paper"}) {
        const auto missing = store.connection().rows(
            QStringLiteral("SELECT \"id\", \"sha256\" FROM \"%1\" WHERE \"removed\" = 0 AND \"sha256\" NOT IN (SELECT sha256 FROM kept)").arg(QLatin1String(table)));
        if (!missing)
            return missing.trouble();
        for (const Row &row : *missing)
            lines << QStringLiteral("The bytes of %1 %2 are not in the workbook.").arg(QLatin1String(table), row.value(0).toString());
    }
    return {};
}

Expected<void> checkJournal(Store &store, QStringList &lines)
{
    const auto done = store.connection().forEach(QStringLiteral("SELECT kind, record, after FROM journal_item"), {}, [&](const Statement &query) {
        if (!kindNamed(query.value(0).toString()))
            lines << QStringLiteral("The journal names an unknown kind \"%1\".").arg(query.value(0).toString());
        return lines.size() < mostLines;
    });
    if (!done)
        return done;
    const auto tags = store.connection().value(QStringLiteral("SELECT count(*) FROM \"unit\" WHERE \"tag\" > COALESCE((SELECT value FROM counter WHERE name = 'tag'), 0)"));
    if (!tags)
        return tags.trouble();
    if (tags->toLongLong() > 0)
        lines << QStringLiteral("%1 units have a tag above the last one given.").arg(tags->toLongLong());
    return {};
}

} // namespace

Expected<QStringList> unsoundness(Store &store)
{
    QStringList lines;
    Connection &connection = store.connection();
    if (auto done = checkSearch(connection, lines); !done)
        return done.trouble();
    auto moment = Transaction::begin(connection, Transaction::Use::Reading);
    if (!moment)
        return moment.trouble();
    if (auto done = checkEngine(connection, lines); !done)
        return done.trouble();
    for (const auto check : {checkRecords, checkKept, checkJournal}) {
        const auto done = check(store, lines);
        if (!done && lines.isEmpty())
            return done.trouble();
        if (!done) { // a damaged file cannot be read on; what was found so far is worth telling
            lines << done.trouble().sentence();
            break;
        }
    }
    return lines.mid(0, mostLines);
}

} // namespace ts
