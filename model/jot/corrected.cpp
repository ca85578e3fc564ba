#include "model/jot/corrected.h"

#include "model/jot/phrase.h"
#include "model/jot/test_point_of.h"
#include "model/records/made_with.h"
#include "model/sums/meter_spec.h"
#include "model/sums/verdict.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

/// The uncertainty of a reading whose value is another now.
std::optional<double> uncertaintyNow(const Reading &before, const Reading &after, const BenchFile &bench)
{
    if (after.uncertainty != before.uncertainty || !before.value || !after.value || *before.value == *after.value)
        return after.uncertainty;
    if (!after.uncertainty)
        return std::nullopt;
    const auto ofMeter = uncertaintyOf(bench, before.meter, *before.value);
    if (ofMeter && std::abs(*ofMeter - *before.uncertainty) <= 1e-9 * std::abs(*ofMeter)) {
        const auto again = uncertaintyOf(bench, before.meter, *after.value);
        return again ? std::optional(*again) : std::nullopt;
    }
    if (!before.value->measure().comparableWith(after.value->measure()))
        return std::nullopt;
    return *after.uncertainty * before.value->measure().factor() / after.value->measure().factor();
}

} // namespace

Expected<Change> corrected(const Reading &before, Reading after, const UnitFile &file, const BenchFile &bench, Maker &maker)
{
    const QString did = QStringLiteral("The reading was not changed");
    after.name = after.name.simplified();
    after.conditions = after.conditions.trimmed();
    if (after.name.isEmpty())
        return Trouble{did, QStringLiteral("it has no name"), QStringLiteral("say where it was taken")};
    after.uncertainty = uncertaintyNow(before, after, bench);
    if (const auto judged = judge(after); !judged)
        return Trouble{did, judged.trouble().did, judged.trouble().wrong};

    Change change(QStringLiteral("Corrected reading %1: %2").arg(shown(after.name), after.value ? after.value->text() : QStringLiteral("no value")));
    const bool elsewhere = nameKey(after.name) != nameKey(before.name) || nameKey(after.conditions) != nameKey(before.conditions);
    const TestPoint *point = file.find(before.point);
    const QList<TestPoint> own = pointsMadeWith({before.id}, file);
    const bool ownPoint = std::any_of(own.begin(), own.end(), [&](const TestPoint &each) { return each.id == before.point; });
    if (elsewhere) {
        const TestPoint *there = testPointOf(file, after.name, after.conditions);
        if (there && there->id == before.point)
            there = nullptr;
        if (ownPoint && !there) {
            TestPoint renamed = *point;
            renamed.name = after.name;
            renamed.conditions = after.conditions;
            renamed.wanted = after.wanted;
            change.edit(*point, renamed);
        } else if (there) {
            after.point = there->id;
            if (ownPoint)
                change.remove(*point);
        } else {
            after.point = {};
            if (!after.wanted.isNone()) {
                TestPoint fresh = maker.fresh<TestPoint>();
                fresh.unit = file.unit.id;
                fresh.name = after.name;
                fresh.conditions = after.conditions;
                fresh.wanted = after.wanted;
                for (const TestPoint &each : file.all<TestPoint>())
                    fresh.position = std::max(fresh.position, each.position);
                ++fresh.position;
                after.point = fresh.id;
                change.add(fresh);
            }
        }
    } else if (point && point->wanted == before.wanted && after.wanted != before.wanted) {
        TestPoint wanting = *point;
        wanting.wanted = after.wanted;
        change.edit(*point, wanting);
    }
    return change.edit(before, after);
}

} // namespace ts
