#include "tests/reckoned.h"

#include "model/sums/drive/belt.h"
#include "model/sums/drive/speed.h"

using namespace ts;
using namespace ts::testing;
using namespace Qt::StringLiterals;

/// Speeds, strobe rings, belts and tape against published figures (../shared/checks 04, 05, 11, 12 and traps, with their row
/// ids).
class TestSumsDrive : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void figures_data();
    void figures() { holdFigure(); }
    void tapeSpeeds_data();
    void tapeSpeeds();
    void traps();
    void refusals_data();
    void refusals();
};

void TestSumsDrive::figures_data()
{
    figureColumns();
    // Strobe rings, two flashes a mains cycle: P03, P04 (S-STROBE1, S-STROBE2), P05 computed.
    figure("P03 33", "strobe|speed=33 1/3|frequency=50", "true_speed", 33.3333, 0.005);
    figure("P03 45", "strobe|speed=45|frequency=60", "true_speed", 45, 0.005);
    figure("P03 78 60 Hz", "strobe|speed=78|frequency=60", "true_speed", 78.26, 0.005);
    figure("P03 78 50 Hz", "strobe|speed=78|frequency=50", "true_speed", 77.92, 0.005);
    figure("P04 33", "strobe|speed=33 1/3|frequency=50", "bars", 180);
    figure("P04 45", "strobe|speed=45|frequency=50", "bars", 133);
    figure("P04 45", "strobe|speed=45|frequency=50", "true_speed", 45.113, 0.0005);
    figure("P04 45", "strobe|speed=45|frequency=50", "error_percent", 0.25, 0.005);
    figure("P04 78", "strobe|speed=78|frequency=50", "bars", 77);
    figure("P04 78", "strobe|speed=78 rpm|frequency=50 Hz", "true_speed", 77.922, 0.0005);
    figure("P05 33", "strobe|speed=33|frequency=60", "bars", 216);
    figure("P05 45", "strobe|speed=45|frequency=60", "bars", 160);
    figure("P05 78", "strobe|speed=78|frequency=60", "bars", 92);
    figure("P05 78", "strobe|speed=78|frequency=60", "true_speed", 78.261, 0.0005);
    // Deviation of a test tone (D01, D08) and of a tachometer (O28), computed.
    figure("D08", "speed-error|nominal=3150|read=3181.5", "error_percent", 1.000, 1e-4);
    figure("D08", "speed-error|nominal=3150|read=3181.5", "cents", 17.226, 1e-3);
    figure("O28", "speed-error|nominal=2400|read=2388", "error_percent", -0.500, 1e-9);
    // A pulley for another mains frequency: O27, computed.
    figure("O27", "mains-speed|made_for=50|runs_on=60|pulley=10.0 mm", "pulley", 8.3333, 1e-4);
    figure("on 60 Hz", "mains-speed|made_for=50|runs_on=60|speed=33 1/3", "speed", 40, 1e-9); // 33 1/3 x 6 / 5
    figure("on 60 Hz", "mains-speed|made_for=50|runs_on=60", "error_percent", 20, 1e-9);
    // Tape that passes: P02, computed.
    figure("P02", "tape-length|speed=4.7625 cm/s|minutes=45", "length", 128.59, 0.01);
    figure("P02", "tape-length|speed=1 7/8 in/s|minutes=45", "length", 128.59, 0.01);
    // Belts, common practice: Y02, Y05 (S-BELT2), Y03 (S-BELT3), Y04 (5 % without a source).
    figure("Y02", "belt|path=100 mm|shorter=6", "length", 94);
    figure("Y03", "belt|old=12.0 in", "shortest", 10.8);
    figure("Y03", "belt|old=12.0 in", "longest", 11.5, 0.005);
    figure("Y04", "belt|path=250 mm", "length", 237.5);
    figure("Y05", "belt|path=250|shorter=6 %", "length", 235.0);
    // Y01: a new belt is shorter than the old one, which has stretched (S-BELT1).
    figure("Y01", "belt|old=100", "longest", 95.8, 1e-9);
}

void TestSumsDrive::tapeSpeeds_data()
{
    QTest::addColumn<double>("metresPerSecond");
    // P01 (S-IASA nominal speeds; an inch is 25.4 mm).
    QTest::newRow("15/16") << 0.0238125;
    QTest::newRow("1 7/8 in/s") << 0.047625;
    QTest::newRow("3 3/4 ips") << 0.09525;
    QTest::newRow("7 1/2") << 0.1905;
    QTest::newRow("15") << 0.381;
    QTest::newRow("30 in/s") << 0.762;
    QTest::newRow("4.76 cm/s") << 0.0476;
    QTest::newRow("0,1905 m/s") << 0.1905;
}

void TestSumsDrive::tapeSpeeds()
{
    QFETCH(double, metresPerSecond);
    const auto speed = tapeSpeed(QString::fromUtf8(QTest::currentDataTag()));
    wantOk(speed);
    QVERIFY2(std::abs(*speed - metresPerSecond) < 1e-15, qPrintable(QString::number(*speed, 'g', 17)));
}

void TestSumsDrive::traps()
{
    // TR15: ordinary lamps flash twice a cycle, so 180 bars 2 degrees apart at 33 1/3 on 50 Hz; the disc of 90 bars is drawn for
    // one flash.
    QCOMPARE(reckoned(u"strobe|speed=33 1/3|frequency=50"_s, u"degrees"_s).toDouble(), 2.0);
    QCOMPARE(reckoned(u"strobe|speed=33 1/3|frequency=50|flashes=1"_s, u"bars"_s).toInt(), 90);
    QCOMPARE(reckoned(u"strobe|speed=33 1/3|frequency=50|flashes=1"_s, u"degrees"_s).toDouble(), 4.0);
    // A belt's length is advice and says so.
    QVERIFY(reckoned(u"belt|path=250"_s, u"remark"_s).toString().contains(u"Advice"_s));
    QCOMPARE(reckoned(u"belt|old=12 in"_s, u"unit"_s).toString(), u"in"_s);
}

void TestSumsDrive::refusals_data()
{
    QTest::addColumn<QString>("call");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *call, const char *says) {
        QTest::newRow(call) << QString::fromUtf8(call) << QString::fromUtf8(says);
    };
    row("strobe|speed=0|frequency=50", "more than 0");
    row("strobe|speed=fast|frequency=50", "speed");
    row("strobe|speed=1e9|frequency=50", "no strobe ring");
    row("strobe|speed=33|frequency=50|flashes=3", "1 to 2");
    row("speed-error|nominal=0|read=3", "above 0");
    row("mains-speed|made_for=50|runs_on=60|pulley=wide", "diameter");
    row("belt", "either the path or the old belt");
    row("belt|path=1|old=1", "either the path or the old belt");
    row("belt|path=3 V", "no length");
    row("belt|path=250|shorter=40", "0 to 15");
    row("tape-length|speed=brisk|minutes=1", "tape speed");
    row("tape-length|speed=15/0|minutes=1", "tape speed");
}

void TestSumsDrive::refusals()
{
    QFETCH(QString, call);
    QFETCH(QString, says);
    const QString sentence = refusal(reckonLine(call));
    QVERIFY2(sentence.contains(says), qPrintable(sentence));
}

QTEST_GUILESS_MAIN(TestSumsDrive)
#include "test_sums_drive.moc"
