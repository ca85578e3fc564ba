#pragma once

#include "model/sums/timeline.h"
#include "views/widgets/pill.h"

namespace ts {

/// What kinds of entries stand together: by these the log is filtered.
enum class Lane { Stages, Faults, Readings, Work, Teardown, Parts, Money, Photos, Proofs, Notes };
inline constexpr int laneCount = static_cast<int>(Lane::Notes) + 1;

[[nodiscard]] Lane laneOf(EventKind what);
[[nodiscard]] QString laneName(Lane lane);

/// The round mark of an entry: a sign, or an icon of the theme, in the colour of a tone.
struct LaneMark {
    QString sign;
    QString icon;
    Tone tone = Tone::Neutral;
    bool operator==(const LaneMark &) const = default;
};

/// One row of the log: the heading of a day, or an entry; photos that follow each other are one.
struct LogEntry {
    QString key; ///< the same for the same row after something was recorded
    QDate day;
    bool isDay = false;
    QList<Event> events; ///< one; the photos' where it is several
    LaneMark mark;
    QString time;
    QString headline;
    QString figures; ///< before the detail, in the fixed-width face
    QString detail;
    QString right; ///< hours and money
    std::optional<Verdict> verdict;
    QStringList photos; ///< by SHA-256
    bool operator==(const LogEntry &) const = default;

    [[nodiscard]] EventKind what() const { return events.isEmpty() ? EventKind::Note : events.first().what; }
    [[nodiscard]] Lane lane() const { return laneOf(what()); }
};

} // namespace ts
