#include "model/records/unit_rows.h"

#include <QSet>

namespace ts {

namespace {

/// References that may be empty, and yet make the record a part of what it refers to.
bool belongsBy(const Kind &kind, const FieldInfo &field)
{
    return (kind.table() == QLatin1String("reading") && field.name == QLatin1String("soak")) ||
           (kind.table() == QLatin1String("cause") && field.name == QLatin1String("symptom")) ||
           (kind.table() == QLatin1String("check") && field.name == QLatin1String("symptom"));
}

std::optional<RecordKey> referredTo(const FieldInfo &field, const QVariant &value)
{
    if (field.type != FieldType::Ref || value.toString().isEmpty())
        return std::nullopt;
    return RecordKey{kindNamed(field.refersTo), QUuid::fromString(value.toString())};
}

bool hangsOn(const QSet<RecordKey> &keys, const KindRow &each, Hanging how)
{
    const QList<FieldInfo> &fields = each.kind->fields();
    for (int i = 0; i < fields.size(); ++i) {
        if (i == each.kind->unitColumn() || !(fields.at(i).required || (how == Hanging::Belongs && belongsBy(*each.kind, fields.at(i)))))
            continue;
        if (const auto other = referredTo(fields.at(i), each.row.at(i)); other && keys.contains(*other))
            return true;
    }
    return false;
}

} // namespace

QList<KindRow> rowsOf(const UnitFile &file)
{
    QList<KindRow> rows;
    const auto take = [&rows]<class R>(const QList<R> &records) {
        for (const R &record : records)
            if (!record.removed)
                rows << KindRow{&description<R>(), description<R>().toRow(record)};
    };
    std::apply([&take](const auto &...lists) { (take(lists), ...); }, file.lists);
    return rows;
}

std::optional<Row> rowOf(const UnitFile &file, const RecordKey &key)
{
    if (key.kind == &description<Unit>())
        return file.unit.id.value == key.id ? std::optional(description<Unit>().toRow(file.unit)) : std::nullopt;
    std::optional<Row> found;
    const auto look = [&]<class R>(const QList<R> &records) {
        if (key.kind != &description<R>())
            return;
        for (const R &record : records)
            if (record.id.value == key.id && !record.removed)
                found = description<R>().toRow(record);
    };
    std::apply([&look](const auto &...lists) { (look(lists), ...); }, file.lists);
    return found;
}

QString callName(const Kind &kind, const Row &row)
{
    const QList<FieldInfo> &fields = kind.fields();
    for (int i = 0; i < fields.size(); ++i)
        if (fields.at(i).type == FieldType::Text && fields.at(i).searched && !row.at(i).toString().isEmpty())
            return row.at(i).toString().simplified();
    return {};
}

QList<KindRow> withWhatHangs(const QList<RecordKey> &named, const UnitFile &file, Hanging how)
{
    const QList<KindRow> all = rowsOf(file);
    QSet<RecordKey> keys(named.begin(), named.end());
    // What hangs may carry others in turn: a symptom its check, the check its bearings. Each round adds at least one, so it ends.
    for (bool more = true; more;) {
        more = false;
        for (const KindRow &each : all)
            if (!keys.contains(each.key()) && hangsOn(keys, each, how)) {
                keys << each.key();
                more = true;
            }
    }
    QList<KindRow> found;
    for (const KindRow &each : all)
        if (keys.contains(each.key()))
            found << each;
    return found;
}

QList<ChangeItem> lettingGo(const QList<RecordKey> &gone, const UnitFile &file)
{
    const QSet<RecordKey> keys(gone.begin(), gone.end());
    QList<ChangeItem> items;
    for (const KindRow &each : rowsOf(file)) {
        if (keys.contains(each.key()))
            continue;
        Row after = each.row;
        const QList<FieldInfo> &fields = each.kind->fields();
        for (int i = 0; i < fields.size(); ++i)
            if (const auto other = referredTo(fields.at(i), after.at(i)); other && keys.contains(*other) && !fields.at(i).required)
                after[i] = QVariant();
        if (after != each.row)
            items << ChangeItem{each.kind, each.row, after};
    }
    return items;
}

} // namespace ts
