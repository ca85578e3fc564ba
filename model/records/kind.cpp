#include "model/records/kind.h"

#include "model/values/money.h"

#include <cmath>
#include <utility>

namespace ts {

Kind::Kind(QString table, QString noun) : m_table(std::move(table)), m_noun(std::move(noun)) {}

void Kind::addField(FieldInfo info, Access access)
{
    m_access.push_back(access);
    if (info.name == QLatin1String("unit") && info.refersTo == QLatin1String("unit"))
        m_unitColumn = static_cast<int>(m_fields.size());
    QVariant blank;
    if (!info.nullable) {
        switch (info.type) {
        case FieldType::Integer:
        case FieldType::Minor:
        case FieldType::Bool:
            blank = QVariant(0LL);
            break;
        case FieldType::Real:
            blank = 0.0;
            break;
        case FieldType::Word:
            blank = info.words.value(0);
            break;
        default:
            blank = QStringLiteral("");
        }
    }
    m_blank << blank;
    m_fields << std::move(info);
}

Row Kind::rowOf(const void *record) const
{
    Row row;
    row.reserve(m_fields.size());
    for (const Access &access : m_access)
        row << access.put(static_cast<const char *>(record) + access.offset);
    return row;
}

Expected<void> Kind::fill(const Row &row, void *record) const
{
    for (size_t i = 0; i < m_access.size(); ++i) {
        const auto column = static_cast<qsizetype>(i);
        if (!m_access[i].get(row.at(column), static_cast<char *>(record) + m_access[i].offset))
            return Trouble{QStringLiteral("Cannot read %1 %2").arg(m_noun, row.at(idColumn).toString()),
                           QStringLiteral("\"%1\" is no %2").arg(row.at(column).toString(), m_fields.at(column).name),
                           QStringLiteral("run turnscrew verify on the workbook")};
    }
    return {};
}

int Kind::column(QStringView name) const
{
    for (qsizetype i = 0; i < m_fields.size(); ++i)
        if (m_fields.at(i).name == name)
            return static_cast<int>(i);
    return -1;
}

QUuid Kind::unit(const Row &row) const
{
    if (m_table == QLatin1String("unit"))
        return id(row);
    return m_unitColumn < 0 ? QUuid() : QUuid::fromString(row.at(m_unitColumn).toString());
}

bool Kind::sameContent(const Row &a, const Row &b)
{
    if (a.size() != b.size())
        return false;
    for (qsizetype i = 0; i < a.size(); ++i)
        if (i != versionColumn && a.at(i) != b.at(i))
            return false;
    return true;
}

namespace {

bool fits(const FieldInfo &field, const QVariant &value)
{
    switch (field.type) {
    case FieldType::Integer:
    case FieldType::Minor:
    case FieldType::Bool:
        return value.typeId() == QMetaType::LongLong;
    case FieldType::Real:
        return value.typeId() == QMetaType::Double && std::isfinite(value.toDouble());
    case FieldType::Word:
        return field.words.contains(value.toString());
    default:
        return value.typeId() == QMetaType::QString;
    }
}

} // namespace

Expected<void> Kind::check(const Row &row) const
{
    const auto refuse = [this](const FieldInfo &field, const QString &why) {
        return Trouble{QStringLiteral("This %1 cannot be recorded").arg(m_noun),
                       QStringLiteral("its %1 %2").arg(QString(field.name).replace(QLatin1Char('_'), QLatin1Char(' ')), why), {}};
    };
    if (row.size() != m_fields.size())
        return Trouble{QStringLiteral("This %1 cannot be recorded").arg(m_noun), QStringLiteral("it has the wrong number of fields"), {}};
    for (qsizetype i = 0; i < row.size(); ++i) {
        const FieldInfo &field = m_fields.at(i);
        const QVariant &value = row.at(i);
        if (value.isNull()) {
            if (field.required || !field.nullable)
                return refuse(field, QStringLiteral("is missing"));
            continue;
        }
        if (!fits(field, value))
            return refuse(field, QStringLiteral("cannot be \"%1\"").arg(value.toString()));
        if (value.typeId() == QMetaType::QString) {
            const QString text = value.toString();
            if (field.required && text.trimmed().isEmpty())
                return refuse(field, QStringLiteral("is missing"));
            if (text.contains(QChar(0)))
                return refuse(field, QStringLiteral("contains a NUL character"));
        }
    }
    return {};
}

QString Kind::searchText(const Row &row) const
{
    QStringList texts;
    for (qsizetype i = 0; i < m_fields.size(); ++i) {
        const QString text = row.at(i).toString();
        if (!m_fields.at(i).searched || text.isEmpty())
            continue;
        texts << text;
        if (m_fields.at(i).type == FieldType::Integer && text.size() < 4)
            texts << text.rightJustified(4, QLatin1Char('0'));
    }
    return texts.join(QLatin1Char('\n'));
}

QJsonObject Kind::toJson(const Row &row) const
{
    QJsonObject object;
    for (qsizetype i = 0; i < m_fields.size(); ++i) {
        const FieldInfo &field = m_fields.at(i);
        const QVariant &value = row.at(i);
        if (i == versionColumn || value.isNull() || value == m_blank.at(i))
            continue;
        if (field.type == FieldType::Minor) {
            const auto currency = Currency::parse(row.at(i + 1).toString());
            object.insert(field.name, Money(value.toLongLong(), currency ? *currency : Currency()).decimal());
        } else if (field.type == FieldType::Bool) {
            object.insert(field.name, value.toLongLong() != 0);
        } else {
            object.insert(field.name, QJsonValue::fromVariant(value));
        }
    }
    return object;
}

Expected<Row> Kind::fromJson(const QJsonObject &object) const
{
    const QString did = QStringLiteral("Cannot read this %1").arg(m_noun);
    Row row = m_blank;
    for (auto it = object.begin(); it != object.end(); ++it) {
        const int index = column(it.key());
        if (index < 0)
            return Trouble{did, QStringLiteral("\"%1\" is not one of its fields").arg(it.key()), {}};
        const FieldInfo &field = m_fields.at(index);
        const QJsonValue value = it.value();
        if (value.isNull())
            continue;
        QVariant stored;
        switch (field.type) {
        case FieldType::Minor: {
            const auto currency = Currency::parse(object.value(m_fields.at(index + 1).name).toString());
            const auto money = Money::parse(value.toString(), currency ? *currency : Currency());
            if (!money)
                return Trouble{did, field.name + QStringLiteral(": ") + money.trouble().sentence(), {}};
            stored = static_cast<qlonglong>(money->minor());
            break;
        }
        case FieldType::Bool:
            stored = static_cast<qlonglong>(value.toBool());
            break;
        case FieldType::Integer:
            if (value.isDouble())
                stored = static_cast<qlonglong>(value.toInteger());
            break;
        case FieldType::Real:
            if (value.isDouble())
                stored = value.toDouble();
            break;
        default:
            if (value.isString())
                stored = value.toString();
        }
        if (stored.isNull())
            return Trouble{did, QStringLiteral("its %1 has the wrong type").arg(field.name), {}};
        row[index] = stored;
    }
    return row;
}

Row Kind::blank() const
{
    return m_blank;
}

} // namespace ts
