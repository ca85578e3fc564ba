#pragma once

#include "model/records/columns.h"

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

    [[nodiscard]] Row toRow(const R &record) const { return rowOf(&record); }

    /// The record of a row; a column that makes no sense is refused by table, id and column.
    [[nodiscard]] Expected<R> fromRow(const Row &row) const
    {
        R record;
        if (auto filled = fill(row, &record); !filled)
            return filled.trouble();
        return record;
    }

    [[nodiscard]] Expected<void> reads(const Row &row) const override
    {
        if (auto checked = check(row); !checked)
            return checked;
        R record;
        return fill(row, &record);
    }

private:
    friend class Fields<R>;
    FieldInfo &last() { return m_fields.last(); }
};

namespace detail {

template <class T>
QVariant put(const void *place)
{
    return Codec<T>::put(*static_cast<const T *>(place));
}

template <class T>
bool get(const QVariant &stored, void *place)
{
    return Codec<T>::get(stored, *static_cast<T *>(place));
}

template <class T>
QStringList wordsOf()
{
    if constexpr (std::is_enum_v<T>)
        return allWords<T>();
    else if constexpr (requires { typename T::value_type; requires std::is_enum_v<typename T::value_type>; })
        return allWords<typename T::value_type>();
    else
        return {};
}

template <class T>
struct RefersTo {
    template <class Owner>
    static QString table()
    {
        return {};
    }
};
template <class Other>
struct RefersTo<Id<Other>> {
    template <class Owner>
    static QString table()
    {
        if constexpr (std::is_same_v<Other, Owner>)
            return {}; // the id itself
        else
            return QString::fromLatin1(Other::table);
    }
};

} // namespace detail

/// Collects the fields in R::describe: fields("text", &Symptom::text).required().searched().
template <class R>
class Fields {
public:
    explicit Fields(Description<R> &description) : m_description(description) {}

    template <class Owner, class T>
    Fields &operator()(const char *name, T Owner::*member)
    {
        const auto offset = offsetOf(member);
        if constexpr (requires { Columns<T>::list; }) {
            for (const auto &column : Columns<T>::list)
                m_description.addField({QString::fromLatin1(name) + QLatin1String(column.suffix), column.type, column.nullable, false, false,
                                        column.type == FieldType::Word ? allWords<Sense>() : QStringList(), {}},
                                       {offset, column.put, column.get});
        } else {
            m_description.addField({QString::fromLatin1(name), Codec<T>::type, Codec<T>::nullable, false, false, detail::wordsOf<T>(),
                                    detail::RefersTo<T>::template table<R>()},
                                   {offset, detail::put<T>, detail::get<T>});
        }
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
    template <class Owner, class T>
    static std::ptrdiff_t offsetOf(T Owner::*member)
    {
        static const R sample{};
        return reinterpret_cast<const char *>(&(sample.*member)) - reinterpret_cast<const char *>(&sample);
    }

    Description<R> &m_description;
};

/// The description of R; defined once for each kind in all_records.cpp.
template <class R>
[[nodiscard]] const Description<R> &description();

} // namespace ts
