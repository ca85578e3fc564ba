// Hours and money over time: its end is held against the sums that the pages show, its way against figures added up by hand.
#include "model/sums/course.h"
#include "model/sums/hours.h"
#include "model/sums/spent.h"
#include "tests/log_desk.h"

using namespace ts;
using namespace ts::testing;

class TestSumsCourse : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void growsAsItWasRecorded();
    void endsWhereTheSumsDo();
};

void TestSumsCourse::growsAsItWasRecorded()
{
    LogDesk log;
    QVERIFY(courseOf(log.file(log.one), log.bench().currency(), log.desk.clock.now()).isEmpty());
    Spend bought;
    bought.text = QStringLiteral("bought");
    bought.kind = SpendKind::Purchase;
    bought.amount = *Money::parse(u"30.00", log.bench().currency());
    bought.paidOn = QDate(2026, 11, 19);
    log.add(bought, log.one);
    log.put(log.one, "paid carriage 8.40");
    log.put(log.one, "did cleaned the source switch 20m");
    log.put(log.one, "need belt 2.50"); // not spent yet
    log.put(log.one, "fitted idler tyre 1.20");
    log.put(log.one, "did fitted the tyre 15m");
    const auto course = courseOf(log.file(log.one), log.bench().currency(), log.desk.clock.now());
    QStringList told;
    for (const CoursePoint &point : course)
        told << QStringLiteral("%1 %2 %3").arg(point.at.toString(QStringLiteral("dd hh:mm"))).arg(point.minutes).arg(point.spent.decimal());
    // 30.00 on the 19th, + 8.40, then 20 minutes, + 1.20, + 15 minutes
    QCOMPARE(told.size(), 5);
    QCOMPARE(told.first(), QStringLiteral("19 00:00 0 30.00"));
    QVERIFY(told.at(1).endsWith(QLatin1String(" 0 38.40")));
    QVERIFY(told.at(2).endsWith(QLatin1String(" 20 38.40")));
    QVERIFY(told.at(3).endsWith(QLatin1String(" 20 39.60")));
    QVERIFY(told.at(4).endsWith(QLatin1String(" 35 39.60")));
}

void TestSumsCourse::endsWhereTheSumsDo()
{
    LogDesk log;
    for (const char *line : {"paid carriage 8.40", "got refund carriage 2.10", "did cleaned it 20m", "fitted belt 2.50", "ordered head 14.00"})
        log.put(log.one, line);
    const QDateTime start = log.desk.clock.now();
    // Overlapping, corrected, and running spans; a step inside of one that must not count twice.
    const QList<std::pair<int, int>> spans{{0, 3'000}, {1'500, 4'021}, {9'000, 9'029}};
    for (const auto &[from, to] : spans) {
        ClockSpan span;
        span.startedAt = start.addSecs(from);
        span.endedAt = start.addSecs(to);
        log.add(span, log.one);
    }
    ClockSpan counted;
    counted.startedAt = start.addSecs(20'000);
    counted.endedAt = start.addSecs(90'000);
    counted.countedMinutes = 35;
    log.add(counted, log.one);
    ClockSpan running;
    running.startedAt = start.addSecs(95'000);
    log.add(running, log.one);
    const QDateTime now = start.addSecs(96'850);
    const UnitFile file = log.file(log.one);
    const Currency bench = log.bench().currency();
    const auto course = courseOf(file, bench, now);
    QCOMPARE(course.last().minutes, hoursOf(file, now).minutes());
    QCOMPARE(course.last().spent, spentOn(file, bench).total);
    for (qsizetype i = 1; i < course.size(); ++i) {
        QVERIFY(course.at(i - 1).at < course.at(i).at);
        QVERIFY(course.at(i - 1).minutes <= course.at(i).minutes);
    }
    // 4021 s + 29 s + 1850 s by the clock is 98 min 20 s; + 35 counted + 20 of the step before any of them
    QCOMPARE(course.last().minutes, 98 + 35 + 20);
}

QTEST_GUILESS_MAIN(TestSumsCourse)
#include "test_sums_course.moc"
