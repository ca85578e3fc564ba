#include "views/log/log_rows.h"

#include "model/sums/acceptance.h"
#include "model/sums/spent.h"
#include "views/log/log_words.h"
#include "views/widgets/locale_text.h"

#include <algorithm>

namespace ts {

namespace {

/// The local day an event stands under. A spend or a proof of a named day stands under that, whatever its instant is here.
QDate dayOf(const Event &event, const UnitFile &file)
{
    if (event.what == EventKind::Bought || event.what == EventKind::Spend)
        if (const Spend *spend = file.find(Id<Spend>{event.record}); spend && paidAt(*spend) != spend->at)
            return spend->paidOn;
    if (event.what == EventKind::Proof)
        if (const Proof *proof = file.find(Id<Proof>{event.record}); proof && triedAt(*proof) != proof->at)
            return proof->doneOn;
    return event.at.toLocalTime().date();
}

QString keyOf(const Event &event)
{
    return QStringLiteral("%1 %2%3").arg(toWord(event.what), event.record.toString(QUuid::WithoutBraces), event.later ? QStringLiteral(" later") : QString());
}

} // namespace

QList<LogEntry> logRows(const UnitFile &file, const BenchFile &bench, QDate today, const QSet<Lane> &only)
{
    LogWords words(file, bench, today);
    QList<LogEntry> entries;
    QList<Event> photos; // that follow each other
    QDate photoDay;
    const auto put = [&entries](LogEntry entry, const Event &first, QDate day) {
        entry.key = keyOf(first);
        entry.day = day;
        entries << std::move(entry);
    };
    const auto putPhotos = [&] {
        if (!photos.isEmpty())
            put(words.saidTogether(photos), photos.first(), photoDay);
        photos.clear();
    };
    for (const Event &event : timeline(file, bench)) {
        const QDate day = dayOf(event, file);
        if (event.what == EventKind::Photo) {
            if (day != photoDay)
                putPhotos();
            photoDay = day;
            photos << event;
            continue;
        }
        putPhotos();
        LogEntry entry = words.said(event); // also where it is not shown: a later reading says what this one was
        put(std::move(entry), event, day);
    }
    putPhotos();
    std::stable_sort(entries.begin(), entries.end(), [](const LogEntry &a, const LogEntry &b) { return a.day < b.day; });

    QList<LogEntry> rows;
    rows.reserve(entries.size() * 2);
    QDate day;
    for (const LogEntry &entry : entries) {
        if (!only.isEmpty() && !only.contains(entry.lane()))
            continue;
        if (entry.day != day) {
            day = entry.day;
            LogEntry heading;
            heading.isDay = true;
            heading.day = day;
            heading.key = day.toString(Qt::ISODate);
            heading.headline = day == today ? LogWords::tr("Today") : day == today.addDays(-1) ? LogWords::tr("Yesterday") : shown::dayLong(day, today);
            rows << heading;
        }
        rows << entry;
    }
    return rows;
}

QList<Lane> lanesOf(const UnitFile &file, const BenchFile &bench)
{
    QSet<Lane> there;
    for (const Event &event : timeline(file, bench))
        there << laneOf(event.what);
    QList<Lane> lanes;
    for (int i = 0; i < laneCount; ++i)
        if (there.contains(static_cast<Lane>(i)))
            lanes << static_cast<Lane>(i);
    return lanes;
}

} // namespace ts
