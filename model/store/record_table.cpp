#include "model/store/record_table.h"

namespace ts {

namespace {

QString quoted(const QString &name)
{
    return QLatin1Char('"') + name + QLatin1Char('"');
}

// The two engines hand numbers out in different types; a row has one for each field type.
QVariant normal(const FieldInfo &field, const QVariant &value)
{
    if (value.isNull())
        return {};
    switch (field.type) {
    case FieldType::Integer:
    case FieldType::Minor:
    case FieldType::Bool:
        return QVariant(value.toLongLong());
    case FieldType::Real:
        return value.toDouble();
    default:
        return value.toString();
    }
}

} // namespace

RecordTable::RecordTable(Connection &connection, const Kind &kind) : m_connection(connection), m_kind(kind)
{
    QStringList names;
    QStringList marks;
    QStringList taken;
    QStringList set;
    for (const FieldInfo &field : kind.fields()) {
        names << quoted(field.name);
        marks << QStringLiteral("?");
        if (field.name != QLatin1String("id")) {
            taken << QStringLiteral("%1 = excluded.%1").arg(quoted(field.name));
            set << quoted(field.name) + QStringLiteral(" = ?");
        }
    }
    const QString table = quoted(kind.table());
    m_columns = names.join(QLatin1Char(','));
    m_insert = QStringLiteral("INSERT INTO %1 (%2) VALUES (%3) ON CONFLICT (\"id\") DO UPDATE SET %4 WHERE %1.\"removed\" = 1")
                   .arg(table, m_columns, marks.join(QLatin1Char(',')), taken.join(QLatin1Char(',')));
    m_update = QStringLiteral("UPDATE %1 SET %2 WHERE \"id\" = ? AND \"version\" = ?").arg(table, set.join(QLatin1Char(',')));
}

Row RecordTable::read(const Statement &query) const
{
    Row row;
    const auto &fields = m_kind.fields();
    row.reserve(fields.size());
    for (int i = 0; i < fields.size(); ++i)
        row << normal(fields.at(i), query.value(i));
    return row;
}

Expected<std::optional<Row>> RecordTable::get(const QUuid &id)
{
    std::optional<Row> found;
    const auto done = m_connection.forEach(QStringLiteral("SELECT %1 FROM %2 WHERE \"id\" = ?").arg(m_columns, quoted(m_kind.table())),
                                           {id.toString(QUuid::WithoutBraces)}, [&](const Statement &query) {
                                               found = read(query);
                                               return false;
                                           });
    if (!done)
        return done.trouble();
    return found;
}

Expected<QList<Row>> RecordTable::list(const QString &column, const QVariant &value)
{
    QList<Row> rows;
    if (!column.isEmpty() && m_kind.column(column) < 0)
        return Trouble{QStringLiteral("Cannot list these records"), QStringLiteral("a %1 has no %2").arg(m_kind.noun(), column), {}};
    const bool bound = !column.isEmpty() && !value.isNull();
    const QString where = column.isEmpty() ? QString() : QStringLiteral(" AND %1 %2").arg(quoted(column), bound ? QStringLiteral("= ?") : QStringLiteral("IS NULL"));
    const auto done = m_connection.forEach(
        QStringLiteral("SELECT %1 FROM %2 WHERE \"removed\" = 0%3 ORDER BY \"at\", \"id\"").arg(m_columns, quoted(m_kind.table()), where),
        bound ? QVariantList{value} : QVariantList(), [&](const Statement &query) {
            rows << read(query);
            return true;
        });
    if (!done)
        return done.trouble();
    return rows;
}

Expected<void> RecordTable::forEach(const std::function<bool(const Row &)> &each)
{
    return m_connection.forEach(QStringLiteral("SELECT %1 FROM %2 ORDER BY \"at\", \"id\"").arg(m_columns, quoted(m_kind.table())), {},
                                [&](const Statement &query) { return each(read(query)); });
}

Expected<void> RecordTable::insert(Row &row)
{
    const qint64 version = row.at(Kind::versionColumn).toLongLong() + 1;
    row[Kind::versionColumn] = QVariant(static_cast<qlonglong>(version));
    const auto changed = m_connection.run(m_insert, row);
    if (!changed)
        return changed.trouble();
    if (*changed != 1)
        return Trouble{QStringLiteral("Cannot record this %1").arg(m_kind.noun()), QStringLiteral("one of the same id is in the workbook already"), {}};
    return {};
}

Expected<bool> RecordTable::update(Row &row)
{
    const QVariant before = row.at(Kind::versionColumn);
    row[Kind::versionColumn] = QVariant(before.toLongLong() + 1);
    QVariantList values = row;
    const QVariant id = values.takeFirst();
    values << id << before;
    const auto changed = m_connection.run(m_update, values);
    if (!changed)
        return changed.trouble();
    return *changed == 1;
}

Expected<qint64> RecordTable::count()
{
    const auto value = m_connection.value(QStringLiteral("SELECT count(*) FROM %1 WHERE \"removed\" = 0").arg(quoted(m_kind.table())));
    if (!value)
        return value.trouble();
    return value->toLongLong();
}

} // namespace ts
