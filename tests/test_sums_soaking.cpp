// Soaks: drift and its interval, verdicts, gaps, and rows thinned for a chart.
#include "model/sums/soaking/soak_report.h"
#include "model/sums/soaking/thinning.h"
#include "model/sums/statistics/line_fit.h"
#include "model/sums/statistics/theil_sen.h"
#include "tests/testing.h"

#include <cmath>
#include <random>

using namespace ts;
using namespace ts::testing;
using namespace Qt::StringLiterals;

namespace {

const QDateTime start({2026, 11, 25}, {18, 0}, Qt::UTC);

struct Bench {
    UnitFile file;
    Soak soak;

    Bench()
    {
        soak.id = Id<Soak>{QUuid::createUuid()};
        soak.name = u"offset"_s;
        soak.startedAt = start;
        file.all<Soak>() << soak;
    }
    void read(const QString &name, double minutes, const QString &value)
    {
        Reading reading;
        reading.id = Id<Reading>{QUuid::createUuid()};
        reading.at = start.addMSecs(std::llround(minutes * 60'000));
        reading.name = name;
        reading.value = *Quantity::parse(value);
        reading.soak = soak.id;
        file.all<Reading>() << reading;
    }
    [[nodiscard]] SoakReport report(const QDateTime &now = start.addSecs(6 * 3600)) const { return soakReport(file, soak, now); }
};

} // namespace

class TestSumsSoaking : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void driftIsTheLine()
    {
        // Hollander and Wolfe, example 9.1, as hours (../shared/checks 08, H05): least squares -0.057 an hour; the interval by
        // the t law of three degrees of freedom, 3.1824 (JCGM 100, table G.2), and the slope's standard deviation 0.0161142.
        const QList<double> hours{1, 2, 3, 4, 5};
        const QList<double> values{1.26, 1.27, 1.12, 1.16, 1.03};
        const auto drift = driftOf(hours, values);
        wantOk(drift);
        QVERIFY(std::abs(drift->perHour + 0.057) < 1e-12 && !drift->robust);
        QVERIFY(std::abs(drift->high - drift->low - 2 * 3.1824 * 0.0161142) < 1e-5);
        // Sen's interval on the same: z sqrt(5 4 15 / 18) = 8.002, so ranks 1 and 10 of the ten slopes of H02.
        const auto interval = theilSenInterval(hours, values, -0.05625);
        QVERIFY(std::abs(interval.low + 0.15) < 1e-12 && std::abs(interval.high - 0.04) < 1e-12);
        QVERIFY(!driftOf({1, 2}, {1, 2}).ok() && !driftOf({1, 1, 1}, {1, 2, 3}).ok());
    }

    void outliersDoNotPull()
    {
        std::mt19937 dice(3);
        std::normal_distribution<double> noise(0, 0.01);
        QList<double> hours;
        QList<double> values;
        for (int i = 0; i < 200; ++i) {
            hours << i / 20.0;
            values << 5 + 0.1 * hours.last() + noise(dice) + (i == 190 || i == 195 ? -30.0 : 0.0);
        }
        const auto drift = driftOf(hours, values);
        wantOk(drift);
        QVERIFY(drift->robust && drift->outliers == 2);
        QVERIFY(drift->low < 0.1 && drift->high > 0.1 && std::abs(drift->perHour - 0.1) < 0.002);
        QVERIFY(fitLine(hours, values)->slope < 0); // what least squares would have said
    }

    /// The interval holds the true slope as often as it says: 95 % of a thousand rows, by the binomial law within 2.5 %.
    void intervalsHoldWhatTheySay()
    {
        std::mt19937 dice(11);
        std::normal_distribution<double> noise(0, 1);
        int plain = 0;
        int sens = 0;
        for (int row = 0; row < 1000; ++row) {
            QList<double> x;
            QList<double> y;
            for (int i = 0; i < 20; ++i) {
                x << i;
                y << 3 + 0.5 * i + noise(dice);
            }
            const auto fit = fitLine(x, y);
            plain += std::abs(fit->slope - 0.5) <= *fit->slopeHalf95 ? 1 : 0;
            const auto interval = theilSenInterval(x, y, 0.5);
            sens += interval.low <= 0.5 && interval.high >= 0.5 ? 1 : 0;
        }
        QVERIFY2(std::abs(plain - 950) <= 25 && std::abs(sens - 950) <= 25, qPrintable(u"%1 and %2"_s.arg(plain).arg(sens)));
    }

    void verdicts()
    {
        Bench steady;
        Bench drifting;
        for (int i = 0; i < 30; ++i) {
            const double wobble = (i * 7 % 5 - 2) / 10.0;
            steady.read(u"offset L"_s, 10 * i, u"%1 mV"_s.arg(12 + wobble));
            drifting.read(u"offset L"_s, 10 * i, u"%1 mV"_s.arg(12 + wobble + 0.2 * i));
        }
        QCOMPARE(*steady.report().verdict, SoakVerdict::Steady);
        const SoakReport report = drifting.report();
        QCOMPARE(*report.verdict, SoakVerdict::Drifting);
        QCOMPARE(report.readings, 30);
        QVERIFY(std::abs(report.series.first().drift->perHour - 1.2) < 0.05); // 0.2 mV in ten minutes
        QVERIFY2(report.words.first().contains(u"drifting"_s), qPrintable(report.words.first()));
        drifting.soak.wanted = *Limit::parse(u"<= 15 mV"_s);
        QCOMPARE(*drifting.report().verdict, SoakVerdict::Out);
        drifting.soak.wanted = *Limit::parse(u"<= 30 mV"_s);
        QCOMPARE(*drifting.report().verdict, SoakVerdict::Drifting);
        Bench flat;
        for (int i = 0; i < 5; ++i)
            flat.read(u"rail"_s, 10 * i, u"12.1 V"_s);
        QCOMPARE(*flat.report().verdict, SoakVerdict::Steady);
        Bench few;
        few.read(u"rail"_s, 0, u"12 V"_s);
        QVERIFY(!few.report().verdict && few.report().readings == 1 && !Bench().report().verdict);
        few.soak.wanted = *Limit::parse(u"12 V 1%"_s);
        few.read(u"rail"_s, 10, u"14 V"_s);
        QCOMPARE(*few.report().verdict, SoakVerdict::Out); // one reading outside is enough
    }

    void severalAtOnce()
    {
        Bench bench;
        for (int i = 0; i < 20; ++i) {
            bench.read(u"rail"_s, 10 * i, u"%1 V"_s.arg(12 + (i % 2) / 100.0));
            bench.read(u"heat sink"_s, 10 * i + 1, u"%1 °C"_s.arg(30 + i));
        }
        bench.read(u"Rail"_s, 200, u"12010 mV"_s);
        bench.read(u"rail"_s, 201, u"OL"_s);
        const SoakReport report = bench.report();
        QCOMPARE(report.series.size(), 2);
        QVERIFY(report.series.at(0).values.size() == 21 && report.series.at(0).overRange == 1);
        QVERIFY(std::abs(report.series.at(0).values.last() - 12.01) < 1e-12);
        QCOMPARE(*report.series.at(0).verdict, SoakVerdict::Steady);
        QCOMPARE(report.telling, 1); // the verdict is of what drifts
        QVERIFY(std::abs(report.series.at(1).drift->perHour - 6) < 1e-9);
    }

    void gapsAreFoundAndAnswered()
    {
        Bench bench;
        bench.soak.intervalMinutes = 10;
        for (const int minute : {0, 10, 21, 200, 210, 220})
            bench.read(u"rail"_s, minute, u"12 V"_s);
        SoakReport report = bench.report(start.addSecs(225 * 60));
        QCOMPARE(report.gaps.size(), 1);
        QCOMPARE(report.gaps.first().from, start.addSecs(21 * 60));
        QCOMPARE(report.gaps.first().to, start.addSecs(200 * 60));
        QVERIFY(!report.gaps.first().powered && !report.gaps.first().open);
        QCOMPARE(report.minutes, 225);
        QVERIFY2(report.words.last().endsWith(u"was it powered all that time?"_s), qPrintable(report.words.last()));
        bench.soak.interruptions = u"moved to the shelf"_s;
        const SoakGap gap = report.gaps.first();
        bench.soak = answered(bench.soak, gap, false);
        report = bench.report(start.addSecs(225 * 60));
        QCOMPARE(report.gaps.first().powered, std::optional(false));
        QCOMPARE(report.minutes, 225 - 179);
        QVERIFY(report.words.contains(u"moved to the shelf"_s));
        bench.soak = answered(bench.soak, gap, true);
        QCOMPARE(bench.soak.interruptions.count(u'\n'), 1); // the later answer stands in the place of the first
        QCOMPARE(bench.report(start.addSecs(225 * 60)).minutes, 225);
        // Killed and looked at again in the morning: the gap is still open.
        const SoakReport late = bench.report(start.addSecs(900 * 60));
        QVERIFY(late.gaps.size() == 2 && late.gaps.last().open && late.gaps.last().to == start.addSecs(900 * 60));
        bench.soak.endedAt = start.addSecs(230 * 60);
        QCOMPARE(bench.report(start.addSecs(900 * 60)).gaps.size(), 1);
        QCOMPARE(bench.report(start.addSecs(900 * 60)).minutes, 230);
    }

    void whatIsDue()
    {
        Bench bench;
        bench.soak.intervalMinutes = 15;
        bench.file.all<Soak>() = {bench.soak};
        QVERIFY(dueSoaks(bench.file, start.addSecs(14 * 60)).isEmpty());
        QCOMPARE(dueSoaks(bench.file, start.addSecs(15 * 60)).size(), 1);
        bench.read(u"rail"_s, 12, u"12 V"_s);
        QVERIFY(dueSoaks(bench.file, start.addSecs(20 * 60)).isEmpty());
        QCOMPARE(nextDue(bench.soak, start.addSecs(12 * 60)), start.addSecs(27 * 60));
        bench.file.all<Soak>().first().endedAt = start.addSecs(60);
        QVERIFY(dueSoaks(bench.file, start.addSecs(90 * 60)).isEmpty());
    }

    /// Of each column of the chart the thinned row keeps the lowest and the highest, whatever the window.
    void thinningKeepsExtremes_data()
    {
        QTest::addColumn<int>("columns");
        QTest::addColumn<double>("from");
        QTest::addColumn<double>("to");
        QTest::newRow("all") << 800 << 0.0 << 100'000.0;
        QTest::newRow("a part") << 333 << 12'345.6 << 78'901.2;
        QTest::newRow("one column") << 1 << 0.0 << 100'000.0;
        QTest::newRow("beyond both ends") << 500 << -5e4 << 2e5;
    }
    void thinningKeepsExtremes()
    {
        QFETCH(int, columns);
        QFETCH(double, from);
        QFETCH(double, to);
        std::mt19937 dice(5);
        std::normal_distribution<double> noise(0, 1);
        QList<QPointF> points;
        for (int i = 0; i < 100'000; ++i)
            points << QPointF(i, std::sin(i / 4000.0) + 0.1 * noise(dice) + (i == 54'321 ? 50 : 0));
        const QList<QPointF> kept = thinned(points, from, to, columns);
        QVERIFY(kept.size() <= 4LL * columns + 2);
        QVERIFY(std::is_sorted(kept.begin(), kept.end(), [](const QPointF &a, const QPointF &b) { return a.x() < b.x(); }));
        QVERIFY(kept.contains(points.at(54'321)));
        const auto extremes = [&](const QList<QPointF> &row) {
            QHash<int, std::pair<double, double>> found;
            for (const QPointF &point : row)
                if (point.x() >= from && point.x() <= to) {
                    const int column = std::min(columns - 1, static_cast<int>((point.x() - from) * columns / (to - from)));
                    const auto before = found.value(column, {HUGE_VAL, -HUGE_VAL});
                    found.insert(column, {std::min(before.first, point.y()), std::max(before.second, point.y())});
                }
            return found;
        };
        QCOMPARE(extremes(kept), extremes(points));
    }
    void fewPointsAreKeptWhole()
    {
        const QList<QPointF> points{{0, 1}, {1, 5}, {2, 2}, {3, 9}};
        QCOMPARE(thinned(points, 0, 3, 100), points);
        QCOMPARE(thinned(points, 0.5, 1.5, 100), (QList<QPointF>{{0, 1}, {1, 5}, {2, 2}})); // one beyond on either side
        QVERIFY(thinned({}, 0, 1, 10).isEmpty());
        QCOMPARE(thinned(points, 2, 2, 10).size(), 3);
    }
};

QTEST_GUILESS_MAIN(TestSumsSoaking)
#include "test_sums_soaking.moc"
