#pragma once

#include <QDateTime>
#include <QList>
#include <QString>

namespace ts {

/// A mark on an axis of time.
struct TimeTick {
    QDateTime at; ///< local time
    QString label;
};

/// Round times between the two, ends included: at most five, of whole hours or quarters, days, weeks or months, each with a label of its
/// own. Days that are not of `today`'s year show theirs.
[[nodiscard]] QList<TimeTick> timeTicks(const QDateTime &from, const QDateTime &to, const QDate &today);

} // namespace ts
