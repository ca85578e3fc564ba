#include "model/sums/point_rows.h"

#include "model/values/name_key.h"

#include <algorithm>

namespace ts {

const Reading *PointRow::latest() const
{
    if (found.isEmpty())
        return after.isEmpty() ? nullptr : &after.last();
    if (after.isEmpty())
        return &found.last();
    return after.last().at < found.last().at ? &found.last() : &after.last();
}

QUuid PointRow::key() const
{
    if (!point.isNull())
        return point.value;
    if (unread())
        return {};
    if (found.isEmpty() || after.isEmpty())
        return found.isEmpty() ? after.first().id.value : found.first().id.value;
    return after.first().at < found.first().at ? after.first().id.value : found.first().id.value;
}

namespace {

/// The row that a reading belongs to: its point's, else that of the same name and conditions, else that of the name where the
/// reading says no conditions; nullptr where it needs one of its own.
PointRow *rowOf(QList<PointRow> &rows, const Reading &reading)
{
    for (PointRow &row : rows)
        if (!reading.point.isNull() && row.point == reading.point)
            return &row;
    const QString name = nameKey(reading.name);
    const QString under = nameKey(reading.conditions);
    PointRow *byName = nullptr;
    for (PointRow &row : rows) {
        if (nameKey(row.name) != name)
            continue;
        if (nameKey(row.conditions) == under)
            return &row;
        if (!byName && under.isEmpty())
            byName = &row;
    }
    return byName;
}

} // namespace

QList<PointRow> pointRows(const UnitFile &file)
{
    QList<PointRow> rows;
    for (const TestPoint &point : file.all<TestPoint>())
        if (!point.removed)
            rows << PointRow{point.id, point.name, point.conditions, point.wanted, point.source, {}, {}};
    std::stable_sort(rows.begin(), rows.end(), [&file](const PointRow &a, const PointRow &b) { return file.find(a.point)->position < file.find(b.point)->position; });

    QList<Reading> readings;
    for (const Reading &reading : file.all<Reading>())
        if (!reading.removed)
            readings << reading;
    std::stable_sort(readings.begin(), readings.end(), [](const Reading &a, const Reading &b) { return a.at < b.at; });
    for (const Reading &reading : readings) {
        PointRow *row = rowOf(rows, reading);
        if (!row) {
            rows << PointRow{{}, reading.name, reading.conditions, {}, {}, {}, {}};
            row = &rows.last();
        }
        (reading.phase == Phase::AsFound ? row->found : row->after) << reading;
        if (row->point.isNull() && !reading.wanted.isNone())
            row->wanted = reading.wanted;
    }
    return rows;
}

} // namespace ts
