#include "model/sums/hours.h"
#include "tests/testing.h"

using namespace ts;

namespace {

QDateTime at(int hour, int minute, int second = 0)
{
    return QDateTime(QDate(2026, 11, 25), QTime(hour, minute, second), Qt::UTC);
}

/// Ids that ascend, as the program's own do.
template <class R>
Id<R> nextId()
{
    static quint16 count = 0;
    return Id<R>{QUuid(0x019aa000u, ++count, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1)};
}

template <class R>
R &added(UnitFile &file, const QDateTime &when = at(10, 0))
{
    R record;
    record.id = nextId<R>();
    record.at = when;
    file.all<R>() << record;
    return file.all<R>().last();
}

void span(UnitFile &file, const QDateTime &from, const QDateTime &to, std::optional<int> counted = {})
{
    auto &record = added<ClockSpan>(file, from);
    record.startedAt = from;
    record.endedAt = to;
    record.countedMinutes = counted;
}

void step(UnitFile &file, const QDateTime &when, std::optional<int> minutes)
{
    auto &record = added<Step>(file, when);
    record.text = QStringLiteral("cleaned");
    record.minutes = minutes;
}

} // namespace

class TestSumsHours : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void hoursOfSpans();
    void hoursOfSteps();
    void hoursOverlapping();
    void durations();
};

void TestSumsHours::hoursOfSpans()
{
    UnitFile file;
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 0);
    span(file, at(9, 0), at(9, 47, 12));
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 47);
    span(file, at(10, 0), at(10, 0, 18)); // 47 m 12 s + 18 s: half a minute goes up, once for the sum
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 48);
    span(file, at(11, 0), at(11, 30), 10); // corrected to 10
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 58);
    span(file, at(11, 45), {});
    const Hours hours = hoursOf(file, at(12, 0));
    QCOMPARE(hours.minutes(), 73);
    QVERIFY(hours.running);
    QCOMPARE(hours.runningSince, at(11, 45));
    file.all<ClockSpan>().last().removed = true;
    QVERIFY(!hoursOf(file, at(12, 0)).running);
    span(file, at(9, 0), at(8, 0)); // ends before it starts
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 58);
    span(file, at(13, 0), {}); // starts after now: another computer's clock is ahead
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 58);
}

void TestSumsHours::hoursOfSteps()
{
    UnitFile file;
    span(file, at(9, 0), at(9, 30));
    step(file, at(9, 10), 20); // while the clock ran
    step(file, at(9, 30), 20); // at its very end: still in it
    step(file, at(9, 31), 15); // after it
    step(file, at(10, 0), {}); // no minutes
    const Hours hours = hoursOf(file, at(12, 0));
    QCOMPARE(hours.clocked, 30);
    QCOMPARE(hours.besides, 15);
    file.all<Step>()[2].removed = true;
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 30);
    span(file, at(11, 0), {});
    step(file, at(11, 59), 40); // while it still runs
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 90);
    const QList<Step> &steps = file.all<Step>();
    QVERIFY(withinClock(file, steps.at(0).at) && withinClock(file, steps.at(1).at));
    QVERIFY(!withinClock(file, steps.at(2).at));
    QVERIFY(withinClock(file, steps.last().at));
}

void TestSumsHours::hoursOverlapping()
{
    UnitFile file;
    span(file, at(9, 0), at(10, 0));
    span(file, at(9, 30), at(10, 15)); // 15 more
    span(file, at(9, 40), at(9, 50));  // inside: nothing more
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 75);
    span(file, at(10, 10), at(10, 20), 3); // counted by hand
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 78);
    span(file, at(10, 15), at(10, 25)); // 5 beyond the corrected one
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 83);
    // The order in which they were recorded does not matter.
    std::reverse(file.all<ClockSpan>().begin(), file.all<ClockSpan>().end());
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 83);
}

void TestSumsHours::durations()
{
    QCOMPARE(durationText(175), QStringLiteral("2 h 55 m"));
    QCOMPARE(durationText(5), QStringLiteral("0 h 05 m"));
    QCOMPARE(durationText(0), QStringLiteral("0 h 00 m"));
}

QTEST_GUILESS_MAIN(TestSumsHours)
#include "test_sums_hours.moc"
