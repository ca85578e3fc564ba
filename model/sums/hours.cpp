#include "model/sums/hours.h"

#include <algorithm>

namespace ts {

namespace {

/// A span of the clock, in milliseconds.
struct Stretch {
    qint64 from;
    qint64 to;
    const ClockSpan *span;
};

QList<Stretch> stretchesOf(const UnitFile &file, const QDateTime &now)
{
    QList<Stretch> stretches;
    for (const ClockSpan &span : file.all<ClockSpan>()) {
        if (span.removed || !span.startedAt.isValid())
            continue;
        const qint64 from = span.startedAt.toMSecsSinceEpoch();
        const qint64 to = (span.endedAt.isValid() ? span.endedAt : now).toMSecsSinceEpoch();
        stretches.append({from, std::max(from, to), &span});
    }
    std::sort(stretches.begin(), stretches.end(),
              [](const Stretch &a, const Stretch &b) { return a.from != b.from ? a.from < b.from : a.span->id < b.span->id; });
    return stretches;
}

bool within(const QList<Stretch> &stretches, const QDateTime &when)
{
    const qint64 at = when.toMSecsSinceEpoch();
    return std::any_of(stretches.cbegin(), stretches.cend(), [at](const Stretch &each) { return each.from <= at && at <= each.to; });
}

} // namespace

QList<TimePiece> timePieces(const UnitFile &file, const QDateTime &now)
{
    const QList<Stretch> stretches = stretchesOf(file, now);
    QList<TimePiece> pieces;
    qint64 latest = stretches.isEmpty() ? 0 : stretches.first().from;
    for (const Stretch &stretch : stretches) {
        TimePiece piece{QDateTime::fromMSecsSinceEpoch(stretch.to, Qt::UTC)};
        if (stretch.span->countedMinutes)
            piece.minutes = *stretch.span->countedMinutes;
        else
            piece.ms = std::max<qint64>(0, stretch.to - std::max(stretch.from, latest));
        pieces << piece;
        latest = std::max(latest, stretch.to);
    }
    for (const Step &step : file.all<Step>()) {
        if (step.removed || !step.minutes)
            continue;
        if (!within(stretches, step.at))
            pieces << TimePiece{step.at, 0, *step.minutes, true};
    }
    return pieces;
}

bool withinClock(const UnitFile &file, const QDateTime &at)
{
    return within(stretchesOf(file, at), at);
}

Hours hoursOf(const UnitFile &file, const QDateTime &now)
{
    Hours hours;
    qint64 clockedMs = 0;
    for (const TimePiece &piece : timePieces(file, now)) {
        clockedMs += piece.ms;
        (piece.ofStep ? hours.besides : hours.clocked) += piece.minutes;
    }
    hours.clocked += wholeMinutes(clockedMs);
    for (const ClockSpan &span : file.all<ClockSpan>()) {
        if (span.removed || !span.startedAt.isValid() || span.endedAt.isValid())
            continue;
        hours.running = true;
        if (!hours.runningSince.isValid() || hours.runningSince < span.startedAt)
            hours.runningSince = span.startedAt;
    }
    return hours;
}

QString durationText(int minutes)
{
    const int whole = std::abs(minutes);
    return QStringLiteral("%1%2 h %3 m")
        .arg(minutes < 0 ? QStringLiteral("−") : QString())
        .arg(whole / 60)
        .arg(whole % 60, 2, 10, QLatin1Char('0'));
}

} // namespace ts
