#pragma once

#include "views/workplace.h"

namespace ts {

/// Which clock runs, as the workbook has it, and whether somebody was there all the while.
///
/// A span is stored when it starts, so the clock runs on through sleep, crash and restart. When somebody was last seen is remembered by
/// this computer and not in the workbook: there it would be a line of the journal every half minute, something to undo, and a change that
/// wakes every other window. Where this computer knows nothing of a span, the last thing recorded of the unit tells.
class RunningClock : public QObject {
    Q_OBJECT
public:
    explicit RunningClock(Workplace &workplace, QObject *parent = nullptr);

    [[nodiscard]] bool runs() const { return !m_running.isEmpty(); }
    [[nodiscard]] bool runsFor(const Id<Unit> &unit) const;
    [[nodiscard]] Id<Unit> unit() const { return runs() ? m_running.last().unit : Id<Unit>(); }
    [[nodiscard]] int tag() const { return m_tag; }
    [[nodiscard]] qint64 seconds() const; ///< that the newest span runs

    void toggle(); ///< stops the clock of the unit in hand; else starts it, and stops whatever other runs
    void stop();
    /// Looks whether time went by unseen; to be called now and then while the clock runs.
    void tick();
    void look(); ///< reads which clock runs

    /// Somebody was last seen then, and it is asked what counts.
    [[nodiscard]] bool isAsking() const { return m_asking; }
    [[nodiscard]] QDateTime lastSeen() const { return m_seen; }
    void countAll();
    void countUntilLastSeen();
    void countNothing();

Q_SIGNALS:
    void changed(); ///< another runs, or none
    void gapFound();

private:
    void seenNow(bool write);
    [[nodiscard]] QDateTime seenBefore(const ClockSpan &span) const;
    void endAll(bool counted);

    Workplace &m_work;
    QList<ClockSpan> m_running; ///< in order of starting; one but where two programs met
    int m_tag = 0;
    bool m_stale = false;
    bool m_asking = false;
    QDateTime m_seen;
    QDateTime m_written;
};

} // namespace ts
