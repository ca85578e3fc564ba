#pragma once

#include "model/values/expected.h"

#include <QStringList>

#include <array>
#include <utility>

namespace ts {

/// The stored words of an enumeration. Specialise with
///   static constexpr std::array list{std::pair{E::First, "first"}, …};
/// Words are lower case with underscores; they are what the file, the JSON and the command line carry.
template <class E>
struct Words;

template <class E>
[[nodiscard]] QString toWord(E value)
{
    for (const auto &[each, word] : Words<E>::list)
        if (each == value)
            return QString::fromLatin1(word);
    return {};
}

/// The value that a word names, or nothing.
template <class E>
[[nodiscard]] std::optional<E> fromWord(QStringView word)
{
    for (const auto &[each, text] : Words<E>::list)
        if (word.compare(QLatin1String(text)) == 0)
            return each;
    return std::nullopt;
}

template <class E>
[[nodiscard]] QStringList allWords()
{
    QStringList words;
    for (const auto &[each, word] : Words<E>::list)
        words << QString::fromLatin1(word);
    return words;
}

/// fromWord with a sentence for the person who typed it: names the word and lists what is allowed.
template <class E>
[[nodiscard]] Expected<E> parseWord(const QString &word, const QString &what)
{
    if (const auto value = fromWord<E>(word.trimmed().toLower().replace(QLatin1Char('-'), QLatin1Char('_'))
                                           .replace(QLatin1Char(' '), QLatin1Char('_'))))
        return *value;
    return Trouble{QStringLiteral("\"%1\" is no %2").arg(word, what), {},
                   QStringLiteral("choose one of ") + allWords<E>().join(QStringLiteral(", "))};
}

} // namespace ts
