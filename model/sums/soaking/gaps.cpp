#include "model/sums/soaking/gaps.h"

#include "model/sums/hours.h"

#include <QLocale>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr qint64 leastGap = 5 * 60; // seconds; nobody asks about less

/// An answer stands in the soak's own text as a line of this form; all other lines are what somebody typed.
QString answerKey(const SoakGap &gap)
{
    return toStored(gap.from) + u" to "_s + toStored(gap.to) + u": "_s;
}

bool isAnswer(const QString &line)
{
    static const QRegularExpression form(u"^[0-9T:.Z-]+ to [0-9T:.Z-]+: (powered|off)$"_s);
    return form.match(line).hasMatch();
}

QStringList linesOf(const Soak &soak)
{
    return soak.interruptions.split(u'\n', Qt::SkipEmptyParts);
}

/// Seconds between readings beyond which there is a gap.
qint64 longest(const Soak &soak, const QList<QDateTime> &times)
{
    if (soak.intervalMinutes && *soak.intervalMinutes > 0)
        return std::max(leastGap, 120LL * *soak.intervalMinutes);
    QList<qint64> steps;
    for (qsizetype i = 1; i < times.size(); ++i)
        steps << times.at(i - 1).secsTo(times.at(i));
    if (steps.isEmpty())
        return std::numeric_limits<qint64>::max(); // one reading has no usual distance
    std::nth_element(steps.begin(), steps.begin() + steps.size() / 2, steps.end());
    return std::max(leastGap, 3 * steps.at(steps.size() / 2));
}

} // namespace

QList<SoakGap> soakGaps(const Soak &soak, const QList<QDateTime> &times, const QDateTime &now)
{
    if (times.isEmpty())
        return {};
    const qint64 most = longest(soak, times);
    const bool running = !soak.endedAt.isValid();
    QList<SoakGap> gaps;
    const auto look = [&](const QDateTime &from, const QDateTime &to, bool open) {
        if (from.secsTo(to) > most)
            gaps << SoakGap{from, to, open, {}};
    };
    look(soak.startedAt, times.first(), false);
    for (qsizetype i = 1; i < times.size(); ++i)
        look(times.at(i - 1), times.at(i), false);
    look(times.last(), running ? now : soak.endedAt, running);
    for (SoakGap &gap : gaps)
        for (const QString &line : linesOf(soak))
            if (isAnswer(line) && line.startsWith(answerKey(gap)))
                gap.powered = line.endsWith(u"powered"_s);
    return gaps;
}

Soak answered(Soak soak, const SoakGap &gap, bool powered)
{
    const QString key = answerKey(gap);
    QStringList lines = linesOf(soak);
    lines.removeIf([&key](const QString &line) { return line.startsWith(key); });
    lines << key + (powered ? u"powered"_s : u"off"_s);
    soak.interruptions = lines.join(u'\n');
    return soak;
}

int soakMinutes(const Soak &soak, const QList<SoakGap> &gaps, const QDateTime &now)
{
    qint64 seconds = soak.startedAt.secsTo(soak.endedAt.isValid() ? soak.endedAt : now);
    for (const SoakGap &gap : gaps)
        if (gap.powered && !*gap.powered)
            seconds -= gap.from.secsTo(gap.to);
    return static_cast<int>(std::max<qint64>(0, seconds) / 60);
}

QStringList gapWords(const Soak &soak, const QList<SoakGap> &gaps)
{
    QStringList words;
    for (const QString &line : linesOf(soak))
        if (!isAnswer(line))
            words << line;
    const QLocale english(QLocale::English);
    const auto when = [&](const QDateTime &at) { return english.toString(at.toLocalTime(), u"d MMM HH:mm"_s); };
    for (const SoakGap &gap : gaps) {
        const QString answer = !gap.powered   ? u"was it powered all that time?"_s
                               : *gap.powered ? u"powered all the time"_s
                                              : u"not powered"_s;
        words << u"no reading from %1 to %2 (%3): %4"_s.arg(when(gap.from), when(gap.to),
                                                            durationText(static_cast<int>(gap.from.secsTo(gap.to) / 60)), answer);
    }
    return words;
}

QDateTime nextDue(const Soak &soak, const QDateTime &lastReading)
{
    if (soak.endedAt.isValid() || !soak.intervalMinutes || *soak.intervalMinutes <= 0)
        return {};
    return (lastReading.isValid() ? lastReading : soak.startedAt).addSecs(60LL * *soak.intervalMinutes);
}

} // namespace ts
