#pragma once

#include "model/desk/rack_row.h"
#include "views/widgets/pill.h"

#include <QMetaType>

namespace ts {

/// What stands on a tag, ready to be painted.
struct TagWords {
    struct Mark {
        QString word;
        Tone tone = Tone::Neutral;
    };

    QString tag;    ///< "0042"
    QString name;
    QString matter; ///< what matters now: an open symptom, what it waits for, how long the soak runs
    QString days;   ///< "day 6", "due 28 Nov"
    QList<Mark> marks;
    QString spent;
    QString hours;
    [[nodiscard]] bool isEmpty() const { return tag.isEmpty(); }
    [[nodiscard]] QString spoken() const; ///< all of it, for a screen reader
};

/// The words of a unit's tag on the day of `now`.
[[nodiscard]] TagWords tagWords(const RackRow &row, const QDateTime &now);

} // namespace ts

Q_DECLARE_METATYPE(ts::TagWords)
