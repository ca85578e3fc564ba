#pragma once

#include "model/records/kind.h"
#include "model/values/clock.h"
#include "model/values/id.h"
#include "model/values/limit.h"
#include "model/values/words.h"

#include <QDate>
#include <QDateTime>

#include <optional>
#include <type_traits>

namespace ts {

/// How one C++ type stands in one column. `get` answers whether the stored value made sense.
template <class T>
struct Codec;

template <>
struct Codec<QString> {
    static constexpr FieldType type = FieldType::Text;
    static constexpr bool nullable = false;
    static QVariant put(const QString &value) { return value.isNull() ? QStringLiteral("") : value; }
    static bool get(const QVariant &stored, QString &value)
    {
        value = stored.toString();
        return true;
    }
};

template <class T>
    requires(std::is_integral_v<T> && !std::is_same_v<T, bool>)
struct Codec<T> {
    static constexpr FieldType type = FieldType::Integer;
    static constexpr bool nullable = false;
    static QVariant put(T value) { return QVariant(static_cast<qlonglong>(value)); }
    static bool get(const QVariant &stored, T &value)
    {
        bool ok = false;
        value = static_cast<T>(stored.toLongLong(&ok));
        return ok;
    }
};

template <>
struct Codec<double> {
    static constexpr FieldType type = FieldType::Real;
    static constexpr bool nullable = false;
    static QVariant put(double value) { return value; }
    static bool get(const QVariant &stored, double &value)
    {
        bool ok = false;
        value = stored.toDouble(&ok);
        return ok;
    }
};

template <>
struct Codec<bool> {
    static constexpr FieldType type = FieldType::Bool;
    static constexpr bool nullable = false;
    static QVariant put(bool value) { return QVariant(static_cast<qlonglong>(value)); }
    static bool get(const QVariant &stored, bool &value)
    {
        bool ok = false;
        value = stored.toLongLong(&ok) != 0;
        return ok;
    }
};

template <>
struct Codec<QDateTime> {
    static constexpr FieldType type = FieldType::Time;
    static constexpr bool nullable = true;
    static QVariant put(const QDateTime &value) { return value.isValid() ? QVariant(toStored(value)) : QVariant(); }
    static bool get(const QVariant &stored, QDateTime &value)
    {
        value = stored.isNull() ? QDateTime() : instantFromStored(stored.toString());
        return stored.isNull() || value.isValid();
    }
};

template <>
struct Codec<QDate> {
    static constexpr FieldType type = FieldType::Date;
    static constexpr bool nullable = true;
    static QVariant put(QDate value) { return value.isValid() ? QVariant(value.toString(Qt::ISODate)) : QVariant(); }
    static bool get(const QVariant &stored, QDate &value)
    {
        value = stored.isNull() ? QDate() : QDate::fromString(stored.toString(), Qt::ISODate);
        return stored.isNull() || value.isValid();
    }
};

template <class E>
    requires std::is_enum_v<E>
struct Codec<E> {
    static constexpr FieldType type = FieldType::Word;
    static constexpr bool nullable = false;
    static QVariant put(E value) { return toWord(value); }
    static bool get(const QVariant &stored, E &value)
    {
        const auto found = fromWord<E>(stored.toString());
        if (found)
            value = *found;
        return found.has_value();
    }
};

template <class R>
struct Codec<Id<R>> {
    static constexpr FieldType type = FieldType::Ref;
    static constexpr bool nullable = true;
    static QVariant put(const Id<R> &id) { return id.isNull() ? QVariant() : QVariant(id.text()); }
    static bool get(const QVariant &stored, Id<R> &id)
    {
        id = stored.isNull() ? Id<R>{} : Id<R>::fromText(stored.toString());
        return stored.isNull() || !id.isNull();
    }
};

template <>
struct Codec<Limit> {
    static constexpr FieldType type = FieldType::Text;
    static constexpr bool nullable = false;
    static QVariant put(const Limit &limit) { return limit.isNone() ? QStringLiteral("") : limit.text(); }
    static bool get(const QVariant &stored, Limit &limit)
    {
        const QString text = stored.toString();
        if (text.isEmpty()) {
            limit = Limit();
            return true;
        }
        auto parsed = Limit::parse(text);
        if (parsed)
            limit = *std::move(parsed);
        return parsed.ok();
    }
};

template <class T>
struct Codec<std::optional<T>> {
    static constexpr FieldType type = Codec<T>::type;
    static constexpr bool nullable = true;
    static QVariant put(const std::optional<T> &value) { return value ? Codec<T>::put(*value) : QVariant(); }
    static bool get(const QVariant &stored, std::optional<T> &value)
    {
        value.reset();
        if (stored.isNull())
            return true;
        T inner{};
        if (!Codec<T>::get(stored, inner))
            return false;
        value = inner;
        return true;
    }
};

} // namespace ts
