#include "views/log/time_ticks.h"

#include "views/widgets/locale_text.h"

namespace ts {

namespace {

constexpr int most = 5; // labels that have room side by side

enum class Every { Minutes, Days, Months };

/// The first round day at or after this one: days are counted so that every seventh is a Monday, months so that every twelfth is January.
QDate roundDay(const QDate &day, Every step, int length)
{
    if (step == Every::Days) {
        const qint64 over = day.toJulianDay() % length; // Julian day 0 was a Monday
        return over == 0 ? day : day.addDays(length - over);
    }
    QDate first(day.year(), day.month(), 1);
    first = first < day ? first.addMonths(1) : first;
    const int over = (first.year() * 12 + first.month() - 1) % length;
    return over == 0 ? first : first.addMonths(length - over);
}

/// The round times of one step; too many of them are not gone through to the end.
QList<QDateTime> timesOf(const QDateTime &from, const QDateTime &to, Every step, int length)
{
    QList<QDateTime> times;
    const auto take = [&](const QDateTime &at) {
        if (at >= from && at <= to)
            times << at;
    };
    if (step == Every::Minutes) {
        for (QDate day = from.date(); day <= to.date() && times.size() <= most; day = day.addDays(1))
            for (int minute = 0; minute < 24 * 60; minute += length) {
                const QTime time(minute / 60, minute % 60);
                if (const QDateTime at(day, time); at.time() == time) // not one that the clocks leap over
                    take(at);
            }
        return times;
    }
    for (QDate day = roundDay(from.date(), step, length); day <= to.date() && times.size() <= most; day = step == Every::Days ? day.addDays(length) : day.addMonths(length))
        take(day.startOfDay());
    return times;
}

} // namespace

QList<TimeTick> timeTicks(const QDateTime &from, const QDateTime &to, const QDate &today)
{
    static constexpr std::pair<Every, int> steps[]{{Every::Minutes, 15}, {Every::Minutes, 30}, {Every::Minutes, 60}, {Every::Minutes, 120}, {Every::Minutes, 180},
                                                  {Every::Minutes, 360}, {Every::Minutes, 720}, {Every::Days, 1},    {Every::Days, 2},      {Every::Days, 3},
                                                  {Every::Days, 7},      {Every::Days, 14},     {Every::Months, 1},  {Every::Months, 2},    {Every::Months, 3},
                                                  {Every::Months, 6},    {Every::Months, 12},   {Every::Months, 24}, {Every::Months, 60},   {Every::Months, 240}};
    const QDateTime begin = from.toLocalTime();
    const QDateTime end = to.toLocalTime();
    QList<TimeTick> ticks;
    for (const auto &[step, length] : steps) {
        const QList<QDateTime> times = timesOf(begin, end, step, length);
        if (times.size() > most)
            continue;
        const bool oneDay = begin.date() == end.date();
        for (const QDateTime &at : times) {
            const bool midnight = at == at.date().startOfDay();
            ticks << TimeTick{at, oneDay ? shown::time(at) : midnight ? shown::day(at.date(), today) : shown::dayAndTime(at)};
        }
        break;
    }
    return ticks;
}

} // namespace ts
