#pragma once

#include "model/records/unit_file.h"

#include <QJsonArray>

// What JSON shows of an absent fact: null, never an empty text and never 0.
namespace ts {

[[nodiscard]] inline QJsonValue textOrNull(const QString &text)
{
    return text.isEmpty() ? QJsonValue() : QJsonValue(text);
}

[[nodiscard]] inline QJsonValue timeOrNull(const QDateTime &at)
{
    return textOrNull(toStored(at));
}

template <class T>
[[nodiscard]] QJsonValue numberOrNull(const std::optional<T> &number)
{
    return number ? QJsonValue(*number) : QJsonValue();
}

[[nodiscard]] inline QJsonValue moneyOrNull(const std::optional<Money> &money)
{
    return money ? QJsonValue(money->decimal()) : QJsonValue();
}

template <class E>
[[nodiscard]] QJsonValue wordOrNull(const std::optional<E> &value)
{
    return value ? QJsonValue(toWord(*value)) : QJsonValue();
}

/// A list of objects, one of each record of a kind.
template <class R, class Make>
[[nodiscard]] QJsonArray each(const UnitFile &file, Make make)
{
    QJsonArray list;
    for (const R &record : file.all<R>())
        list << make(record);
    return list;
}

} // namespace ts
