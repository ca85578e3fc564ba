#include "model/records/made_with.h"

namespace ts {

namespace {
constexpr qint64 oneLineMs = 2000; // both are made while one line is read; a person takes longer for two
}

QList<TestPoint> pointsMadeWith(const QList<Id<Reading>> &readings, const UnitFile &file)
{
    QList<TestPoint> found;
    for (const TestPoint &point : file.all<TestPoint>()) {
        bool made = false;
        bool others = false;
        for (const Reading &reading : file.all<Reading>()) {
            if (reading.removed || reading.point != point.id)
                continue;
            const bool among = readings.contains(reading.id);
            others |= !among;
            made |= among && std::abs(point.at.msecsTo(reading.at)) <= oneLineMs;
        }
        if (made && !others)
            found << point;
    }
    return found;
}

} // namespace ts
