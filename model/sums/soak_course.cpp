#include "model/sums/soak_course.h"

#include "model/sums/verdict.h"

#include <algorithm>

namespace ts {

namespace {

void setLimits(SoakCourse &course, const Limit &wanted)
{
    const auto same = wanted.in(course.measure);
    if (!same)
        return;
    course.low = same->low();
    course.high = same->high();
}

} // namespace

SoakCourse soakCourse(const UnitFile &file, const Soak &soak)
{
    SoakCourse course;
    course.soak = soak.id;
    QList<Reading> readings;
    for (const Reading &reading : file.all<Reading>())
        if (!reading.removed && reading.soak == soak.id && reading.value)
            readings << reading;
    std::stable_sort(readings.begin(), readings.end(), [](const Reading &a, const Reading &b) { return a.at < b.at; });

    bool out = false;
    bool any = false;
    Limit wanted = soak.wanted;
    for (const Reading &reading : readings) {
        const auto judged = judge(*reading.value, reading.wanted.isNone() ? soak.wanted : reading.wanted, reading.uncertainty);
        out = out || (judged && judged->verdict == Verdict::Outside);
        if (wanted.isNone())
            wanted = reading.wanted;
        if (!any && reading.value->sense() != Sense::OverRange) {
            course.measure = reading.value->measure();
            any = true;
        }
        const auto same = reading.value->in(course.measure);
        if (!any || reading.value->sense() == Sense::OverRange || !same) {
            ++course.leftOut;
            continue;
        }
        course.points << SoakPoint{static_cast<double>(soak.startedAt.msecsTo(reading.at)) / 3'600'000.0, same->value()};
    }
    setLimits(course, wanted);
    QList<double> hours;
    QList<double> values;
    for (const SoakPoint &point : course.points) {
        hours << point.hours;
        values << point.value;
    }
    if (course.points.size() >= 3)
        if (const auto fit = fitLine(hours, values))
            course.fit = *fit;
    if (out)
        course.verdict = SoakVerdict::Out;
    else if (course.driftLow())
        course.verdict = *course.driftLow() > 0 || *course.driftHigh() < 0 ? SoakVerdict::Drifting : SoakVerdict::Steady;
    return course;
}

} // namespace ts
