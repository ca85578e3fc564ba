#include "model/jot/test_point_of.h"

#include "model/jot/likeness.h"

namespace ts {

const TestPoint *testPointOf(const UnitFile &file, const QString &name, const QString &conditions)
{
    const QString key = nameKey(name);
    const QString under = nameKey(conditions);
    const TestPoint *best = nullptr;
    int bestRank = 0;
    for (const TestPoint &point : file.all<TestPoint>()) {
        if (nameKey(point.name) != key)
            continue;
        const QString own = nameKey(point.conditions);
        int rank = 0;
        if (own == under)
            rank = 3;
        else if (under.isEmpty() || (!own.isEmpty() && (own.contains(under) || under.contains(own))))
            rank = 2;
        else if (own.isEmpty())
            rank = 1;
        if (rank > bestRank) {
            best = &point;
            bestRank = rank;
        }
    }
    return best;
}

const Reading *lastReadingOf(const UnitFile &file, const QString &name)
{
    const QString key = nameKey(name);
    return newest(file.all<Reading>(), [&](const Reading &reading) { return nameKey(reading.name) == key; });
}

} // namespace ts
