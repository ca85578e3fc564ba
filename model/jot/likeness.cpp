#include "model/jot/likeness.h"

#include <algorithm>

namespace ts {

Likeness likeness(const QString &typed, const QString &recorded)
{
    const QString typedKey = nameKey(typed);
    const QString recordedKey = nameKey(recorded);
    if (typedKey.isEmpty() || recordedKey.isEmpty())
        return Likeness::None;
    if (typedKey == recordedKey)
        return Likeness::Same;
    if (recordedKey.startsWith(typedKey))
        return Likeness::Beginning;
    const QStringList typedWords = wordsOf(typed);
    const QStringList recordedWords = wordsOf(recorded);
    if (typedWords.isEmpty() || recordedWords.isEmpty())
        return Likeness::None;
    if (std::all_of(typedWords.begin(), typedWords.end(), [&](const QString &word) {
            return std::any_of(recordedWords.begin(), recordedWords.end(),
                               [&](const QString &other) { return other.startsWith(word); });
        }))
        return Likeness::Words;
    if (std::all_of(recordedWords.begin(), recordedWords.end(), [&](const QString &word) { return typedWords.contains(word); }))
        return Likeness::Holds;
    return Likeness::None;
}

} // namespace ts
