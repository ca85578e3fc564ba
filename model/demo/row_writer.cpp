#include "model/demo/row_writer.h"

#include "model/records/all_records.h"

namespace ts {

namespace {

/// The column that people call a record by.
int namingColumn(const Kind &kind)
{
    for (const auto *name : {"text", "name", "what", "caption", "maker_model"})
        if (const int column = kind.column(QString::fromLatin1(name)); column >= 0)
            return column;
    return -1;
}

} // namespace

QJsonObject namedCells(const QJsonArray &row, std::initializer_list<const char *> names)
{
    QJsonObject fields;
    qsizetype i = 0;
    for (const char *name : names) {
        if (i < row.size() && !row.at(i).isNull())
            fields.insert(QString::fromLatin1(name), row.at(i));
        ++i;
    }
    return fields;
}

QString RowWriter::naming(const Kind &kind, const Row &row)
{
    const int column = namingColumn(kind);
    return column < 0 ? kind.noun() : row.at(column).toString();
}

Expected<Row> RowWriter::named(const Kind &kind, const QString &text, const Id<Unit> &unit)
{
    bool isTag = false;
    const int tag = text.toInt(&isTag);
    if (kind.table() == QLatin1String("unit") && isTag) {
        const auto id = m_desk.unitByTag(tag);
        return id ? m_desk.getRow(kind, id->value) : Expected<Row>(id.trouble());
    }
    const bool ofUnit = kind.unitColumn() >= 0 && !unit.isNull();
    const auto rows = ofUnit ? m_desk.listRows(kind, QStringLiteral("unit"), unit.text()) : m_desk.listRows(kind);
    if (!rows)
        return rows.trouble();
    const int column = namingColumn(kind);
    for (auto row = rows->crbegin(); row != rows->crend(); ++row)
        if (column >= 0 && row->at(column).toString().contains(text, Qt::CaseInsensitive))
            return *row;
    return Trouble{QStringLiteral("There is no %1 \"%2\"").arg(kind.noun(), text), {}, {}};
}

Expected<QJsonObject> RowWriter::spelledOut(const Kind &kind, QJsonObject fields, const Id<Unit> &unit)
{
    const auto bench = m_desk.benchFile();
    if (!bench)
        return bench.trouble();
    for (const FieldInfo &field : kind.fields()) {
        const QJsonValue value = fields.value(field.name);
        if (!value.isString() || (field.type == FieldType::Text && !field.name.endsWith(QLatin1String("_currency"))))
            continue;
        const QString text = value.toString();
        if (field.type == FieldType::Ref && Id<Unit>::fromText(text).isNull()) {
            const auto row = named(*kindNamed(field.refersTo), text, unit);
            if (!row)
                return row.trouble();
            fields.insert(field.name, Kind::id(*row).toString(QUuid::WithoutBraces));
        } else if (field.type == FieldType::Minor && !fields.contains(field.name + QLatin1String("_currency"))) {
            fields.insert(field.name + QLatin1String("_currency"), bench->currency().code());
        } else if (field.type == FieldType::Time) {
            fields.insert(field.name, toStored(QDateTime::fromString(text, Qt::ISODate)));
        }
    }
    return fields;
}

Expected<Row> RowWriter::fresh(const Kind &kind, QJsonObject fields, const Id<Unit> &unit)
{
    const Note made = m_desk.maker().fresh<Note>(); // for its id and instant; the kind is the row's
    if (kind.unitColumn() >= 0 && kind.table() != QLatin1String("unit") && !unit.isNull())
        fields.insert(QLatin1String("unit"), unit.text());
    auto spelled = spelledOut(kind, fields, unit);
    if (!spelled)
        return spelled.trouble();
    spelled->insert(QLatin1String("id"), made.id.text());
    spelled->insert(QLatin1String("at"), toStored(made.at));
    return kind.fromJson(*spelled);
}

Expected<Row> RowWriter::with(const Kind &kind, const Row &row, const QJsonObject &fields)
{
    const auto spelled = spelledOut(kind, fields, Id<Unit>{kind.unit(row)});
    if (!spelled)
        return spelled.trouble();
    QJsonObject all = kind.toJson(row);
    for (auto it = spelled->begin(); it != spelled->end(); ++it)
        all.insert(it.key(), it.value());
    auto after = kind.fromJson(all);
    if (after)
        (*after)[Kind::versionColumn] = row.at(Kind::versionColumn);
    return after;
}

} // namespace ts
