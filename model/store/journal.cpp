#include "model/store/journal.h"

#include "model/records/all_records.h"

#include <QJsonDocument>

namespace ts {

namespace {

QVariant asText(const Kind &kind, const std::optional<Row> &row)
{
    if (!row)
        return {};
    return QString::fromUtf8(QJsonDocument(kind.toJson(*row)).toJson(QJsonDocument::Compact));
}

Expected<std::optional<Row>> fromText(const Kind &kind, const QVariant &text)
{
    if (text.isNull())
        return std::optional<Row>();
    auto row = kind.fromJson(QJsonDocument::fromJson(text.toString().toUtf8()).object());
    if (!row)
        return row.trouble();
    return std::optional<Row>(*std::move(row));
}

} // namespace

QString Journal::mine(const QString &prefix) const
{
    return m_connection.isPostgres() ? QStringLiteral(" AND %1who = ?").arg(prefix) : QString();
}

QVariantList Journal::mineValues() const
{
    return m_connection.isPostgres() ? QVariantList{m_who} : QVariantList();
}

Expected<qint64> Journal::write(const Change &change, const QString &sentence, const QDateTime &at, qint64 takesBack)
{
    if (takesBack == 0) {
        const auto passed = m_connection.run(QStringLiteral("UPDATE journal SET state = 2 WHERE state = 1") + mine(), mineValues());
        if (!passed)
            return passed.trouble();
    }
    const auto number = m_connection.value(QStringLiteral("INSERT INTO journal (at, who, sentence, takes_back) VALUES (?, ?, ?, ?) RETURNING number"),
                                           {toStored(at), m_who, sentence, takesBack == 0 ? QVariant() : QVariant(takesBack)});
    if (!number)
        return number.trouble();
    qlonglong position = 0;
    for (const ChangeItem &item : change.items()) {
        const Row &row = item.after ? *item.after : *item.before;
        const QUuid unit = item.kind->unit(row);
        const auto done = m_connection.run(
            QStringLiteral("INSERT INTO journal_item (journal, position, kind, record, unit, before, after) VALUES (?, ?, ?, ?, ?, ?, ?)"),
            {*number, position++, item.kind->table(), row.at(Kind::idColumn), unit.isNull() ? QVariant() : QVariant(unit.toString(QUuid::WithoutBraces)),
             asText(*item.kind, item.before), asText(*item.kind, item.after)});
        if (!done)
            return done.trouble();
    }
    return number->toLongLong();
}

Expected<void> Journal::setState(qint64 number, JournalEntry::State state)
{
    const auto done = m_connection.run(QStringLiteral("UPDATE journal SET state = ? WHERE number = ?"), {static_cast<int>(state), number});
    return done ? Expected<void>() : Expected<void>(done.trouble());
}

Expected<QList<JournalEntry>> Journal::entries(const QString &rest, const QVariantList &values)
{
    QList<JournalEntry> found;
    const auto done = m_connection.forEach(
        QStringLiteral("SELECT j.number, j.at, j.who, j.sentence, j.takes_back, j.state FROM journal j ") + rest, values, [&](const Statement &row) {
            found << JournalEntry{row.value(0).toLongLong(), instantFromStored(row.value(1).toString()), row.value(2).toString(),
                                  row.value(3).toString(), row.value(4).toLongLong(), static_cast<JournalEntry::State>(row.value(5).toInt())};
            return true;
        });
    if (!done)
        return done.trouble();
    return found;
}

Expected<std::optional<JournalEntry>> Journal::undoable()
{
    const auto found = entries(QStringLiteral("WHERE j.state = 0 AND j.takes_back IS NULL") + mine(QStringLiteral("j."))
                                   + QStringLiteral(" ORDER BY j.number DESC LIMIT 1"), mineValues());
    if (!found)
        return found.trouble();
    return found->isEmpty() ? std::optional<JournalEntry>() : std::optional(found->first());
}

Expected<std::optional<JournalEntry>> Journal::redoable()
{
    const auto found = entries(QStringLiteral("WHERE j.state = 1") + mine(QStringLiteral("j.")) + QStringLiteral(" ORDER BY j.number LIMIT 1"), mineValues());
    if (!found)
        return found.trouble();
    return found->isEmpty() ? std::optional<JournalEntry>() : std::optional(found->first());
}

Expected<Change> Journal::change(const JournalEntry &entry)
{
    Change change(entry.sentence);
    std::optional<Trouble> trouble;
    const auto done = m_connection.forEach(
        QStringLiteral("SELECT kind, before, after FROM journal_item WHERE journal = ? ORDER BY position"), {entry.number}, [&](const Statement &row) {
            const Kind *kind = kindNamed(row.value(0).toString());
            if (!kind) {
                trouble = Trouble{QStringLiteral("Cannot read journal line %1").arg(entry.number),
                                  QStringLiteral("\"%1\" is no kind of record that this program knows").arg(row.value(0).toString()), {}};
                return false;
            }
            auto before = fromText(*kind, row.value(1));
            auto after = fromText(*kind, row.value(2));
            if (!before || !after) {
                trouble = before ? after.trouble() : before.trouble();
                return false;
            }
            change.addItem({kind, *std::move(before), *std::move(after)});
            return true;
        });
    if (!done)
        return done.trouble();
    if (trouble)
        return *trouble;
    return change;
}

Expected<QList<JournalEntry>> Journal::lines(const QUuid &unit, int limit)
{
    if (unit.isNull())
        return entries(QStringLiteral("ORDER BY j.number DESC LIMIT ?"), {limit});
    return entries(QStringLiteral("WHERE j.number IN (SELECT i.journal FROM journal_item i WHERE i.unit = ?) ORDER BY j.number DESC LIMIT ?"),
                   {unit.toString(QUuid::WithoutBraces), limit});
}

Expected<QList<Journal::Touched>> Journal::touchedAfter(qint64 number, int limit)
{
    QList<Touched> touched;
    const auto done = m_connection.forEach(
        QStringLiteral("SELECT journal, kind, record, unit, before, after FROM journal_item WHERE journal > ? ORDER BY journal, position LIMIT ?"),
        {number, limit}, [&](const Statement &row) {
            const auto before = QJsonDocument::fromJson(row.value(4).toString().toUtf8()).object();
            const auto after = QJsonDocument::fromJson(row.value(5).toString().toUtf8()).object();
            QStringList fields;
            for (auto it = after.begin(); it != after.end(); ++it)
                if (before.value(it.key()) != it.value())
                    fields << it.key();
            for (auto it = before.begin(); it != before.end(); ++it)
                if (!after.contains(it.key()))
                    fields << it.key();
            touched << Touched{row.value(0).toLongLong(), row.value(1).toString(), QUuid::fromString(row.value(2).toString()),
                               QUuid::fromString(row.value(3).toString()), fields};
            return true;
        });
    if (!done)
        return done.trouble();
    return touched;
}

Expected<qint64> Journal::lastNumber()
{
    const auto number = m_connection.value(QStringLiteral("SELECT max(number) FROM journal"));
    if (!number)
        return number.trouble();
    return number->toLongLong();
}

} // namespace ts
