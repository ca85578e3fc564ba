#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// Bench time on one unit, in whole minutes.
struct Hours {
    int clocked = 0;        ///< by the clock
    int besides = 0;        ///< of steps recorded while the clock stood
    bool running = false;   ///< the clock is running now
    QDateTime runningSince; ///< of the latest span that runs
    [[nodiscard]] int minutes() const { return clocked + besides; }
    bool operator==(const Hours &) const = default;
};

/// A piece of bench time: by the clock to the millisecond, or whole minutes as the owner counted them or a step says.
struct TimePiece {
    QDateTime until; ///< when it was over; a running span's is `now`
    qint64 ms = 0;
    int minutes = 0;
    bool ofStep = false;
};
/// The pieces that the rule below adds up; overlaps are in the earlier one, steps within a span in none.
[[nodiscard]] QList<TimePiece> timePieces(const UnitFile &file, const QDateTime &now);
/// Whether the minutes of a step recorded at that time, and not later than now, are in the clock's already (rule 4 below).
[[nodiscard]] bool withinClock(const UnitFile &file, const QDateTime &at);
/// Milliseconds by the clock as whole minutes, half up.
[[nodiscard]] inline int wholeMinutes(qint64 ms)
{
    return static_cast<int>((ms + 30'000) / 60'000);
}

/// Minutes to date. The rule, the same as in SQL for the rack:
/// 1. Spans of the unit that are not removed, in order of started_at, then id. A span without ended_at runs until `now`.
///    A span that ends before it starts has no length.
/// 2. Each span gives the time after the latest end of all spans before it, so overlaps count once; where counted_minutes
///    is set it gives that number instead.
/// 3. Clocked = (milliseconds of the spans without counted_minutes, summed, to the nearest minute, half up) + counted minutes.
/// 4. Minutes of a step are added unless its `at` lies in a span, ends included (started_at <= at <= end).
[[nodiscard]] Hours hoursOf(const UnitFile &file, const QDateTime &now);

/// "2 h 55 m", "0 h 10 m".
[[nodiscard]] QString durationText(int minutes);

} // namespace ts
