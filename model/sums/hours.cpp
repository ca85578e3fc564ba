#include "model/sums/hours.h"

#include <algorithm>

namespace ts {

Hours hoursOf(const UnitFile &file, const QDateTime &now)
{
    struct Stretch {
        qint64 from;
        qint64 to;
        const ClockSpan *span;
    };
    QList<Stretch> stretches;
    Hours hours;
    for (const ClockSpan &span : file.all<ClockSpan>()) {
        if (span.removed || !span.startedAt.isValid())
            continue;
        const qint64 from = span.startedAt.toMSecsSinceEpoch();
        const qint64 to = (span.endedAt.isValid() ? span.endedAt : now).toMSecsSinceEpoch();
        stretches.append({from, std::max(from, to), &span});
        if (!span.endedAt.isValid()) {
            hours.running = true;
            if (!hours.runningSince.isValid() || hours.runningSince < span.startedAt)
                hours.runningSince = span.startedAt;
        }
    }
    std::sort(stretches.begin(), stretches.end(),
              [](const Stretch &a, const Stretch &b) { return a.from != b.from ? a.from < b.from : a.span->id < b.span->id; });

    qint64 clockedMs = 0;
    qint64 counted = 0;
    qint64 latest = stretches.isEmpty() ? 0 : stretches.first().from;
    for (const Stretch &stretch : stretches) {
        if (stretch.span->countedMinutes)
            counted += *stretch.span->countedMinutes;
        else
            clockedMs += std::max<qint64>(0, stretch.to - std::max(stretch.from, latest));
        latest = std::max(latest, stretch.to);
    }
    hours.clocked = static_cast<int>((clockedMs + 30'000) / 60'000 + counted);

    for (const Step &step : file.all<Step>()) {
        if (step.removed || !step.minutes)
            continue;
        const qint64 at = step.at.toMSecsSinceEpoch();
        const bool whileRunning = std::any_of(stretches.cbegin(), stretches.cend(),
                                              [at](const Stretch &stretch) { return stretch.from <= at && at <= stretch.to; });
        if (!whileRunning)
            hours.besides += *step.minutes;
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
