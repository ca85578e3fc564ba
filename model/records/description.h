#pragma once

#include "model/records/codec.h"
#include "model/values/money.h"
#include "model/values/quantity.h"

#include <functional>
#include <vector>

namespace ts {

/// What every record carries. The id is given by whoever makes the record (Maker), the version by the store.
template <class R>
struct Record {
    Id<R> id;
    qint64 version = 0;
    QDateTime at;         ///< when it was recorded, UTC
    bool removed = false; ///< out of sight, never gone
    bool operator==(const Record &) const = default;
};

template <>
struct Words<Sense> {
    static constexpr std::array list{std::pair{Sense::Plain, "plain"}, std::pair{Sense::About, "about"}, std::pair{Sense::Below, "below"},
                                     std::pair{Sense::Above, "above"}, std::pair{Sense::OverRange, "over_range"}};
};

template <class R>
class Fields;

/// The one description of record type R: its table and its columns, each with the way in and out of the struct.
template <class R>
class Description final : public Kind {
public:
    Description() : Kind(QString::fromLatin1(R::table), QString::fromLatin1(R::table).replace(QLatin1Char('_'), QLatin1Char(' ')))
    {
        Fields<R> fields(*this);
        fields("id", &R::id).required();
        fields("version", &R::version);
        fields("at", &R::at).required();
        fields("removed", &R::removed);
        R::describe(fields);
    }

    [[nodiscard]] Row toRow(const R &record) const
    {
        Row row;
        row.reserve(m_fields.size());
        for (const Access &access : m_access)
            row << access.put(record);
        return row;
    }

    /// The record of a row; a column that makes no sense is refused by table, id and column.
    [[nodiscard]] Expected<R> fromRow(const Row &row) const
    {
        R record;
        for (size_t i = 0; i < m_access.size(); ++i) {
            const auto column = static_cast<qsizetype>(i);
            if (!m_access[i].get(row.at(column), record))
                return Trouble{QStringLiteral("Cannot read %1 %2").arg(m_noun, row.at(idColumn).toString()),
                               QStringLiteral("\"%1\" is no %2").arg(row.at(column).toString(), m_fields.at(column).name),
                               QStringLiteral("run turnscrew verify on the workbook")};
        }
        return record;
    }

    [[nodiscard]] Expected<void> reads(const Row &row) const override
    {
        if (auto checked = check(row); !checked)
            return checked;
        const auto record = fromRow(row);
        return record ? Expected<void>() : Expected<void>(record.trouble());
    }

private:
    friend class Fields<R>;
    struct Access {
        std::function<QVariant(const R &)> put;
        std::function<bool(const QVariant &, R &)> get;
    };
    void add(FieldInfo info, Access access)
    {
        addField(std::move(info));
        m_access.push_back(std::move(access));
    }
    FieldInfo &last() { return m_fields.last(); }
    std::vector<Access> m_access;
};

/// Collects the fields in R::describe: fields("text", &Symptom::text).required().searched().
template <class R>
class Fields {
public:
    explicit Fields(Description<R> &description) : m_description(description) {}

    template <class Owner, class T>
    Fields &operator()(const char *name, T Owner::*member)
    {
        FieldInfo info{QString::fromLatin1(name), Codec<T>::type, Codec<T>::nullable, false, false, words<T>(), refersTo<T>()};
        m_description.add(std::move(info), {[member](const R &r) { return Codec<T>::put(r.*member); },
                                            [member](const QVariant &v, R &r) { return Codec<T>::get(v, r.*member); }});
        return *this;
    }

    /// Money stands in two columns: name (minor units) and name_currency.
    template <class Owner>
    Fields &operator()(const char *name, std::optional<Money> Owner::*member)
    {
        const QString text = QString::fromLatin1(name);
        m_description.add({text, FieldType::Minor, true, false, false, {}, {}},
                          {[member](const R &r) { return r.*member ? QVariant(static_cast<qlonglong>((r.*member)->minor())) : QVariant(); },
                           [member](const QVariant &v, R &r) {
                               (r.*member).reset();
                               if (!v.isNull())
                                   r.*member = Money(v.toLongLong(), {});
                               return true;
                           }});
        m_description.add({text + QStringLiteral("_currency"), FieldType::Text, false, false, false, {}, {}},
                          {[member](const R &r) { return QVariant(r.*member ? (r.*member)->currency().code() + QStringLiteral("") : QStringLiteral("")); },
                           [member](const QVariant &v, R &r) {
                               if (!(r.*member) || v.toString().isEmpty())
                                   return true;
                               const auto currency = Currency::parse(v.toString());
                               if (currency)
                                   r.*member = Money((r.*member)->minor(), *currency);
                               return currency.ok();
                           }});
        return *this;
    }

    /// A quantity stands in three columns: name, name_unit and name_sense.
    template <class Owner>
    Fields &operator()(const char *name, std::optional<Quantity> Owner::*member)
    {
        const QString text = QString::fromLatin1(name);
        m_description.add({text, FieldType::Real, true, false, false, {}, {}},
                          {[member](const R &r) { return r.*member ? QVariant((r.*member)->value()) : QVariant(); },
                           [member](const QVariant &v, R &r) {
                               (r.*member).reset();
                               if (!v.isNull())
                                   r.*member = Quantity(v.toDouble(), {});
                               return true;
                           }});
        m_description.add({text + QStringLiteral("_unit"), FieldType::Text, false, false, false, {}, {}},
                          {[member](const R &r) { return QVariant(r.*member ? (r.*member)->measure().text() + QStringLiteral("") : QStringLiteral("")); },
                           [member](const QVariant &v, R &r) {
                               if (!(r.*member) || v.toString().isEmpty())
                                   return true;
                               const auto measure = Measure::parse(v.toString());
                               if (measure)
                                   r.*member = Quantity((r.*member)->value(), *measure);
                               return measure.ok();
                           }});
        m_description.add({text + QStringLiteral("_sense"), FieldType::Word, true, false, false, allWords<Sense>(), {}},
                          {[member](const R &r) { return r.*member ? QVariant(toWord((r.*member)->sense())) : QVariant(); },
                           [member](const QVariant &v, R &r) {
                               const auto sense = fromWord<Sense>(v.toString());
                               if ((r.*member) && sense)
                                   r.*member = Quantity((r.*member)->value(), (r.*member)->measure(), *sense);
                               return v.isNull() || sense.has_value();
                           }});
        return *this;
    }

    Fields &required()
    {
        m_description.last().required = true;
        return *this;
    }
    Fields &searched()
    {
        m_description.last().searched = true;
        return *this;
    }

private:
    template <class T>
    static QStringList words()
    {
        if constexpr (std::is_enum_v<T>)
            return allWords<T>();
        else if constexpr (requires { typename T::value_type; requires std::is_enum_v<typename T::value_type>; })
            return allWords<typename T::value_type>();
        else
            return {};
    }
    template <class T>
    static QString refersTo()
    {
        return refersToOf(static_cast<T *>(nullptr));
    }
    template <class Other>
    static QString refersToOf(Id<Other> *)
    {
        if constexpr (std::is_same_v<Other, R>)
            return {}; // the id itself, or a reference to its own kind: the store does not follow it
        else
            return QString::fromLatin1(Other::table);
    }
    static QString refersToOf(void *) { return {}; }

    Description<R> &m_description;
};

/// The description of R; defined once for each kind in all_records.cpp.
template <class R>
[[nodiscard]] const Description<R> &description();

} // namespace ts
