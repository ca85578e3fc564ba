#pragma once

#include "model/records/all_records.h"
#include "model/values/clock.h"

#include <QHash>
#include <QRandomGenerator>

namespace ts::testing {

/// Makes rows of any kind with every field filled, from the descriptions alone: a field added to a kind is generated
/// without touching this. The same seed gives the same rows.
class GeneratedRows {
public:
    explicit GeneratedRows(quint32 seed) : m_random(seed) {}

    /// A row that passes Kind::reads. `unit` owns it where the kind has a unit; other references go to ids in `known`
    /// (table, ids; also "sha256"), or to nothing where there are none.
    [[nodiscard]] Row row(const Kind &kind, const QString &id, const QString &unit, const QHash<QString, QStringList> &known)
    {
        Row row = kind.blank();
        for (int i = 0; i < row.size(); ++i)
            row[i] = value(kind.fields().at(i), known);
        row[Kind::idColumn] = id;
        row[Kind::versionColumn] = QVariant(0LL);
        row[Kind::removedColumn] = QVariant(0LL);
        if (kind.unitColumn() >= 0)
            row[kind.unitColumn()] = unit;
        if (const int tag = kind.column(u"tag"); tag >= 0)
            row[tag] = QVariant(0LL); // the store gives it
        for (int i = 1; i < row.size(); ++i) {
            const QString &name = kind.fields().at(i).name;
            if (name.endsWith(QLatin1String("_currency")) && kind.fields().at(i - 1).type == FieldType::Minor)
                row[i] = pick<QString>({QStringLiteral("GBP"), QStringLiteral("EUR"), QStringLiteral("JPY"), QStringLiteral("KWD")});
            if (name.endsWith(QLatin1String("_unit")) && kind.fields().at(i - 1).type == FieldType::Real)
                row[i] = pick<QString>({QStringLiteral("V"), QStringLiteral("mV"), QStringLiteral("kΩ"), QStringLiteral("%"), QStringLiteral("gf·cm")});
        }
        return row;
    }

    /// Letters of several scripts, marks that mean something elsewhere, and line breaks; never blank.
    [[nodiscard]] QString text()
    {
        static const QStringList words{QStringLiteral("capstan"), QStringLiteral("Größe"), QStringLiteral("水"), QStringLiteral("CN2.4"),
                                       QStringLiteral("\"quoted\""), QStringLiteral("it's"), QStringLiteral("a;b"), QStringLiteral("<b>&"),
                                       QStringLiteral("=1+1"), QStringLiteral("100%"), QStringLiteral("line\nbreak"), QStringLiteral("tab\there"),
                                       QStringLiteral("\\n"), QStringLiteral("?"), QStringLiteral("$1"), QStringLiteral(":name"),
                                       QStringLiteral("\u202eleft"), QStringLiteral("\U0001F50A"), QStringLiteral("--"), QStringLiteral("\u00a0x")};
        QString text = words.at(below(static_cast<int>(words.size())));
        for (int more = below(4); more > 0; --more)
            text += QLatin1Char(' ') + words.at(below(static_cast<int>(words.size())));
        return text;
    }

    int below(int limit) { return static_cast<int>(m_random.bounded(limit)); }
    template <class T>
    T pick(const QList<T> &from) { return from.at(below(static_cast<int>(from.size()))); }
    QRandomGenerator &random() { return m_random; }

private:
    QVariant value(const FieldInfo &field, const QHash<QString, QStringList> &known)
    {
        switch (field.type) {
        case FieldType::Integer:
            return QVariant(static_cast<qlonglong>(1 + below(2'000'000'000)));
        case FieldType::Minor:
            return QVariant(static_cast<qlonglong>(m_random.bounded(1'000'000'000'000LL)) - 500'000'000'000LL);
        case FieldType::Real: {
            static const QList<double> hard{0.1 + 0.2, 1.0 / 3, -1e-300, 4.9e-324, 1.7976931348623157e308, 11.92, 1e15 + 0.3, -273.15};
            return pick(hard);
        }
        case FieldType::Bool:
            return QVariant(1LL);
        case FieldType::Time:
            return toStored(QDateTime({2026, 1, 1}, {0, 0}, Qt::UTC).addMSecs(m_random.bounded(40'000'000'000LL)));
        case FieldType::Date:
            return QDate(1950, 1, 1).addDays(below(40'000)).toString(Qt::ISODate);
        case FieldType::Word:
            return pick(field.words);
        case FieldType::Ref: {
            const QStringList ids = known.value(field.refersTo);
            return ids.isEmpty() ? QVariant() : QVariant(pick(ids));
        }
        case FieldType::Text:
            break;
        }
        if (field.name == QLatin1String("sha256") && known.contains(field.name)) // bytes that are really kept
            return pick(known.value(field.name));
        if (field.name == QLatin1String("wanted")) // the one text that is read as something: a limit
            return pick<QString>({QStringLiteral("12 V 5%"), QStringLiteral("35 to 65 gf·cm"), QStringLiteral("<= 0.12 %"), QStringLiteral("")});
        return text();
    }

    QRandomGenerator m_random;
};

} // namespace ts::testing
