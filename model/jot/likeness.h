#pragma once

#include "model/jot/phrase.h"

#include <QList>

namespace ts {

/// How well a recorded text is named by what was typed, worst first.
enum class Likeness {
    None,
    Holds,     ///< every word of the recorded text stands in what was typed, which says more
    Words,     ///< every word typed begins a word of the recorded text
    Beginning, ///< the recorded text begins with what was typed
    Same
};

[[nodiscard]] Likeness likeness(const QString &typed, const QString &recorded);

/// The record that a typed text names, and how many others it names just as well.
template <class R>
struct Named {
    const R *record = nullptr;
    Likeness how = Likeness::None;
    int rivals = 0;
    explicit operator bool() const { return record != nullptr; }
};

/// The record among those that `fits` whose text is named best, at least as well as `least`; of equals the newest.
template <class R, class Fits>
[[nodiscard]] Named<R> bestNamed(const QList<R> &records, const QString &typed, QString R::*text, Fits fits,
                                 Likeness least = Likeness::Words)
{
    Named<R> best;
    for (const R &record : records) {
        if (!fits(record))
            continue;
        const Likeness how = likeness(typed, record.*text);
        if (how < least || how < best.how || how == Likeness::None)
            continue;
        best.rivals = how == best.how ? best.rivals + 1 : 0;
        best.record = &record;
        best.how = how;
    }
    return best;
}

/// The newest record that fits, or nullptr.
template <class R, class Fits>
[[nodiscard]] const R *newest(const QList<R> &records, Fits fits)
{
    for (auto it = records.crbegin(); it != records.crend(); ++it)
        if (fits(*it))
            return &*it;
    return nullptr;
}

} // namespace ts
