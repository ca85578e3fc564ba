#include "model/sums/course.h"

#include "model/sums/hours.h"
#include "model/sums/spent.h"

#include <algorithm>

namespace ts {

namespace {

struct Growth {
    QDateTime at;
    TimePiece time;
    Money money;
};

} // namespace

QList<CoursePoint> courseOf(const UnitFile &file, const Currency &bench, const QDateTime &now)
{
    QList<Growth> growths;
    for (const TimePiece &piece : timePieces(file, now))
        growths << Growth{piece.until, piece, {}};
    for (const Spend &spend : file.all<Spend>()) {
        const auto amount = inCurrency(spend, bench);
        if (spend.removed || !amount || spendSign(spend) == 0)
            continue;
        growths << Growth{paidAt(spend), {}, amount->times(spendSign(spend))};
    }
    for (const Need &need : file.all<Need>()) {
        const auto cost = inCurrency(need, bench);
        if (!need.removed && cost && need.state != NeedState::Needed)
            growths << Growth{need.stateSince.isValid() ? need.stateSince : need.at, {}, *cost};
    }
    std::stable_sort(growths.begin(), growths.end(), [](const Growth &a, const Growth &b) { return a.at < b.at; });

    QList<CoursePoint> course;
    qint64 ms = 0;
    int minutes = 0;
    Money spent(0, bench);
    for (const Growth &growth : growths) {
        ms += growth.time.ms;
        minutes += growth.time.minutes;
        spent += growth.money;
        const CoursePoint point{growth.at.toUTC(), wholeMinutes(ms) + minutes, spent};
        if (!course.isEmpty() && course.last().at == point.at)
            course.last() = point;
        else
            course << point;
    }
    return course;
}

} // namespace ts
