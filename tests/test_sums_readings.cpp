// What the page of readings is made from: the rows of test points, what would settle a close call, how a soak went.
#include "model/sums/meter_spec.h"
#include "model/sums/point_rows.h"
#include "model/sums/metering/good_enough.h"
#include "model/sums/soak_course.h"
#include "tests/testing.h"

#include <cmath>

using namespace ts;

namespace {

const QDateTime start(QDate(2026, 11, 22), QTime(10, 0), Qt::UTC);

class Bench {
public:
    UnitFile file;
    BenchFile bench;

    TestPoint &point(const QString &name, const QString &wanted, int position)
    {
        TestPoint point;
        point.id = Id<TestPoint>{QUuid::createUuid()};
        point.at = start;
        point.name = name;
        point.wanted = Limit::parse(wanted).value();
        point.position = position;
        file.all<TestPoint>() << point;
        return file.all<TestPoint>().last();
    }
    Reading &reading(const QString &name, const QString &value, Phase phase, int minute)
    {
        Reading reading;
        reading.id = Id<Reading>{QUuid::createUuid()};
        reading.at = start.addSecs(60LL * minute);
        reading.name = name;
        reading.value = Quantity::parse(value).value();
        reading.phase = phase;
        file.all<Reading>() << reading;
        return file.all<Reading>().last();
    }
    Meter meter(const QString &name, const QList<MeterRange> &ranges)
    {
        Meter meter;
        meter.id = Id<Meter>{QUuid::createUuid()};
        meter.name = name;
        bench.all<Meter>() << meter;
        for (MeterRange range : ranges) {
            range.id = Id<MeterRange>{QUuid::createUuid()};
            range.meter = meter.id;
            bench.all<MeterRange>() << range;
        }
        return meter;
    }
    static MeterRange volts(double fullScale, double resolution, double percent, double counts)
    {
        MeterRange range;
        range.measure = QStringLiteral("V");
        range.fullScale = fullScale;
        range.resolution = resolution;
        range.percentOfReading = percent;
        range.counts = counts;
        return range;
    }
};

} // namespace

class TestSumsReadings : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void rowsFollowTheOrderOfThePoints()
    {
        Bench at;
        at.point(QStringLiteral("Rail"), QStringLiteral("12 V 5%"), 2);
        at.point(QStringLiteral("Logic"), QStringLiteral("5 V 5%"), 1);
        at.reading(QStringLiteral("idle"), QStringLiteral("10 mV"), Phase::AsFound, 0);
        at.reading(QStringLiteral(" rail"), QStringLiteral("11.92 V"), Phase::AsFound, 1); // by name alone
        at.reading(QStringLiteral("Rail"), QStringLiteral("11.95 V"), Phase::DuringWork, 3);
        at.reading(QStringLiteral("Rail"), QStringLiteral("11.93 V"), Phase::AsItLeaves, 9);
        const QList<PointRow> rows = pointRows(at.file);
        QCOMPARE(rows.size(), 3);
        QCOMPARE(rows.at(0).name, QStringLiteral("Logic"));
        QVERIFY(rows.at(0).unread());
        QCOMPARE(rows.at(0).key(), rows.at(0).point.value);
        QCOMPARE(rows.at(1).name, QStringLiteral("Rail"));
        QCOMPARE(rows.at(1).found.size(), 1);
        QCOMPARE(rows.at(1).after.size(), 2);
        QCOMPARE(rows.at(1).latest()->value->value(), 11.93);
        QCOMPARE(rows.at(2).name, QStringLiteral("idle"));
        QVERIFY(rows.at(2).point.isNull());
        QCOMPARE(rows.at(2).key(), rows.at(2).found.first().id.value);
    }

    void pointsOfOneNameAreToldApartByTheirConditions()
    {
        Bench at;
        at.point(QStringLiteral("Level"), QStringLiteral("387 mV 2dB"), 1).conditions = QStringLiteral("315 Hz");
        at.point(QStringLiteral("Level"), QStringLiteral("300 mV 3dB"), 2).conditions = QStringLiteral("10 kHz");
        at.reading(QStringLiteral("level"), QStringLiteral("290 mV"), Phase::AsFound, 1).conditions = QStringLiteral("10 kHz");
        at.reading(QStringLiteral("level"), QStringLiteral("100 mV"), Phase::AsFound, 2).conditions = QStringLiteral("1 kHz");
        const QList<PointRow> rows = pointRows(at.file);
        QCOMPARE(rows.size(), 3);
        QVERIFY(rows.at(0).unread());
        QCOMPARE(rows.at(1).found.size(), 1);
        QCOMPARE(rows.at(2).conditions, QStringLiteral("1 kHz"));
    }

    void theNewestReadingSpeaks()
    {
        Bench at;
        at.point(QStringLiteral("Rail"), QStringLiteral("12 V 5%"), 1);
        at.reading(QStringLiteral("Rail"), QStringLiteral("12 V"), Phase::DuringWork, 5).wanted = at.file.all<TestPoint>().first().wanted;
        at.reading(QStringLiteral("Rail"), QStringLiteral("3 V"), Phase::AsFound, 9).wanted = at.file.all<TestPoint>().first().wanted;
        QCOMPARE(pointRows(at.file).first().verdict(), Verdict::Outside);
    }

    void whatWouldSettleACloseCall()
    {
        // JCGM 100:2008, 4.3.7: half width a taken as rectangular, u = a / sqrt 3; times 1.959964 for 95 %.
        // Hand meter on its 40 V range: a = 0.5 % of 4.76 + 2 x 0.01 V = 0.0438 V, U = 0.0495622 V: too wide, 4.76 is 0.01 V from 4.75.
        // Bench meter on 5 V: a = 0.02 % of 4.76 + 2 x 0.001 V = 0.002952 V, U = 0.0033404 V: good enough. Its 50 V range (a = 0.020952 V,
        // U = 0.0237091 V) is not, and 0.5 V does not hold the value.
        Bench at;
        const Meter hand = at.meter(QStringLiteral("hand meter"), {Bench::volts(40, 0.01, 0.5, 2)});
        const Meter bench = at.meter(QStringLiteral("bench meter"), {Bench::volts(50, 0.01, 0.02, 2), Bench::volts(5, 0.001, 0.02, 2), Bench::volts(0.5, 0.0001, 0.02, 2)});
        Reading &reading = at.reading(QStringLiteral("Logic"), QStringLiteral("4.76 V"), Phase::AsFound, 0);
        reading.wanted = Limit::parse(QStringLiteral("5 V 5%")).value();
        reading.uncertainty = uncertaintyOf(at.bench, hand.id, *reading.value).value();
        QVERIFY(std::abs(*reading.uncertainty - 0.0438 / std::sqrt(3.0) * 1.959964) < 1e-7);
        QCOMPARE(verdictOf(reading), Verdict::TooCloseToCall);
        const QDate day(2026, 11, 25);
        const auto settled = whatWouldSettle(*reading.value, reading.wanted, at.bench, day);
        QVERIFY(settled);
        QVERIFY(std::abs(settled->needed - 0.01) < 1e-12);
        QCOMPARE(settled->good.size(), 1);
        QCOMPARE(settled->good.first().name, bench.name);
        QCOMPARE(settled->good.first().range, QStringLiteral("5 V range"));
        QVERIFY(std::abs(settled->good.first().uncertainty95 - 0.002952 / std::sqrt(3.0) * 1.959964) < 1e-7);

        reading.value = Quantity::parse(QStringLiteral("4.75 V")).value(); // right on the limit
        QCOMPARE(whatWouldSettle(*reading.value, reading.wanted, at.bench, day)->needed, 0.0);
    }

    void driftOfASoakAsCertified()
    {
        // NIST StRD, Norris.dat, certified: slope 1.00211681802045 with standard deviation 0.429796848199937E-03 from 36 points;
        // t(0.975, 34) = 2.032 (NIST/SEMATECH e-Handbook, 1.3.6.7.2). Here x are hours and y volts.
        const std::pair<double, double> norris[] = {
            {0.2, 0.1}, {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2}, {226.5, 228.1}, {666.3, 668.5}, {996.3, 998.5}, {448.6,
            449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3}, {0.6, 0.1}, {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9},
            {11.6, 10.8}, {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3}, {0.3, 0.6}, {556.8,
            557.6}, {339.1, 339.3}, {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9}, {11.1, 10.2}, {118.3, 117.6}, {229.2, 228.9}, {669.1,
            668.4}, {448.9, 449.2}, {0.5, 0.2}};
        Bench at;
        Soak soak;
        soak.id = Id<Soak>{QUuid::createUuid()};
        soak.startedAt = start;
        for (const auto &[x, y] : norris) {
            Reading &reading = at.reading(QStringLiteral("rail"), QStringLiteral("0 V"), Phase::DuringWork, 0);
            reading.at = start.addMSecs(std::llround(x * 3'600'000));
            reading.value = Quantity(y, Measure::parse(QStringLiteral("V")).value());
            reading.soak = soak.id;
        }
        const SoakCourse course = soakCourse(at.file, soak);
        QCOMPARE(course.points.size(), 36);
        QVERIFY(std::abs(*course.drift() / 1.00211681802045 - 1) < 1e-9);
        const double half = 0.429796848199937e-3 * 2.032;
        QVERIFY(std::abs(*course.driftLow() - (1.00211681802045 - half)) < 1e-6);
        QVERIFY(std::abs(*course.driftHigh() - (1.00211681802045 + half)) < 1e-6);
        QCOMPARE(course.verdict, SoakVerdict::Drifting);
        soak.wanted = Limit::parse(QStringLiteral("<= 900 V")).value();
        QCOMPARE(soakCourse(at.file, soak).verdict, SoakVerdict::Out);
        QCOMPARE(*soakCourse(at.file, soak).high, 900.0);
    }

    void aSoakIsSteadyUntilItsDriftIsSure()
    {
        Bench at;
        Soak soak;
        soak.id = Id<Soak>{QUuid::createUuid()};
        soak.startedAt = start;
        const auto add = [&](const QString &value, int minute) { at.reading(QStringLiteral("motor"), value, Phase::DuringWork, minute).soak = soak.id; };
        add(QStringLiteral("75 mA"), 0);
        add(QStringLiteral("0.073 A"), 30);
        QCOMPARE(soakCourse(at.file, soak).verdict, SoakVerdict::TooFew);
        add(QStringLiteral("76 mA"), 60);
        add(QStringLiteral("OL"), 90);
        const SoakCourse course = soakCourse(at.file, soak);
        QCOMPARE(course.points.size(), 3);
        QCOMPARE(course.points.at(1), (SoakPoint{0.5, 73.0})); // in the first reading's prefix
        QCOMPARE(course.leftOut, 1);
        QCOMPARE(course.verdict, SoakVerdict::Steady);
        QVERIFY(*course.driftLow() < 0 && *course.driftHigh() > 0);
        QCOMPARE(soakCourse(UnitFile(), soak).verdict, SoakVerdict::TooFew);
    }
};

QTEST_GUILESS_MAIN(TestSumsReadings)
#include "test_sums_readings.moc"
