#include "model/sums/clock_change.h"

#include "model/records/tag_text.h"
#include "model/sums/hours.h"

#include <algorithm>

namespace ts {

namespace {

QString ran(const ClockSpan &span, const QDateTime &until)
{
    return durationText(static_cast<int>((std::max<qint64>(0, span.startedAt.msecsTo(until)) + 30'000) / 60'000));
}

void end(Change &change, const QList<ClockSpan> &running, const QDateTime &at)
{
    for (const ClockSpan &span : running) {
        ClockSpan ended = span;
        ended.endedAt = std::max(at, span.startedAt); // a clock that was set back gives no time, not less than none
        change.edit(span, ended);
    }
}

} // namespace

Change startClock(const Unit &unit, const QList<ClockSpan> &running, Maker &maker)
{
    Change change(QStringLiteral("Clock started for %1").arg(tagText(unit.tag)));
    QList<ClockSpan> others;
    bool runs = false;
    for (const ClockSpan &span : running) {
        runs = runs || span.unit == unit.id;
        if (span.unit != unit.id)
            others << span;
    }
    end(change, others, maker.now());
    if (runs)
        return change;
    ClockSpan span = maker.fresh<ClockSpan>();
    span.unit = unit.id;
    span.startedAt = maker.now();
    return change.add(span);
}

Change stopClock(int tag, const QList<ClockSpan> &running, Maker &maker)
{
    Change change(running.isEmpty() ? QString() : QStringLiteral("Clock stopped for %1 after %2").arg(tagText(tag), ran(running.last(), maker.now())));
    end(change, running, maker.now());
    return change;
}

Change endClock(int tag, const ClockSpan &span, const QDateTime &lastSeen, CountAs count)
{
    ClockSpan ended = span;
    ended.endedAt = std::max(lastSeen, span.startedAt);
    if (count == CountAs::Nothing)
        ended.countedMinutes = 0;
    const QString counted = count == CountAs::Nothing ? QStringLiteral("nothing") : ran(span, ended.endedAt);
    return Change(QStringLiteral("Clock stopped for %1, counted %2").arg(tagText(tag), counted)).edit(span, ended);
}

} // namespace ts
