#include "jot_bench.h"
#include "model/sums/stage_rules.h"
#include "model/sums/standing.h"

using namespace ts;
using ts::testing::JotBench;

/// What lies loose, counted; the rule that nothing becomes Ready with something forgotten. No published source: counts are worked
/// by hand.
class TestSumsLoose : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void things_data();
    void things();
    void live();
    void readyOnlyWhole();
    void leftOutByName();
};

void TestSumsLoose::things_data()
{
    QTest::addColumn<QString>("what");
    QTest::addColumn<QString>("fasteners");
    QTest::addColumn<QString>("springs");
    QTest::addColumn<QString>("connectors");
    QTest::addColumn<int>("count");
    QTest::addColumn<QString>("said");
    const QString no;
    QTest::newRow("thread with times") << "Lid"
                                       << "5 × M3×8 black, one not original" << no << no << 0 << "5 screws";
    QTest::newRow("screws") << "Lid"
                            << "5 screws M3x8" << no << no << 5 << "5 screws";
    QTest::newRow("two kinds") << "Front panel"
                               << "4 × M3×6, 2 clips below" << no << no << 0 << "4 screws, 2 clips";
    QTest::newRow("with and") << "Plate"
                              << "four long screws and two nuts" << no << no << 0 << "4 screws, 2 nuts";
    QTest::newRow("washers that go with them") << "Mechanism"
                                               << "3 × M2.6×10 with washers" << no << no << 0 << "3 screws";
    QTest::newRow("springs") << "Take-up clutch" << no << "1 E-clip 2 mm, 1 spring" << no << 0 << "1 clip, 1 spring";
    QTest::newRow("a plug by its name") << "Head lead plug CN5" << no << no << "red wire to pin 1" << 0 << "1 plug";
    QTest::newRow("a ribbon") << "CN2, 6-way ribbon to main board" << no << no << no << 0 << "1 plug";
    QTest::newRow("counted plugs") << "Main board" << no << no << "3 plugs CN1 to CN3" << 0 << "3 plugs";
    QTest::newRow("count alone") << "Lid"
                                 << "odd ones" << no << no << 7 << "7 screws";
    QTest::newRow("more than the text says") << "Lid"
                                             << "2 bolts" << no << no << 5 << "5 bolts";
    QTest::newRow("a size is no count") << "Foot"
                                        << "M3x8" << no << no << 0 << "";
    QTest::newRow("nothing") << "Lid" << no << no << no << 0 << "";
}

void TestSumsLoose::things()
{
    QFETCH(QString, what);
    QFETCH(QString, fasteners);
    QFETCH(QString, springs);
    QFETCH(QString, connectors);
    QFETCH(int, count);
    QFETCH(QString, said);
    TeardownItem item;
    item.what = what;
    item.fasteners = fasteners;
    item.springs = springs;
    item.connectors = connectors;
    if (count > 0)
        item.fastenerCount = count;
    Loose loose;
    loose.things = thingsOf(item);
    QCOMPARE(loose.text(), said);
}

void TestSumsLoose::live()
{
    JotBench bench;
    bench.put(QStringLiteral("off lid 5 screws M3x8 tray A1"));
    bench.put(QStringLiteral("off mechanism 3 screws M2.6x10 1 spring tray A4"));
    QCOMPARE(standing(bench.file, bench.bench).counted.text(), QStringLiteral("8 screws, 1 spring"));
    bench.put(QStringLiteral("back mechanism"));
    const Loose loose = looseOf(bench.file);
    QCOMPARE(loose.text(), QStringLiteral("5 screws"));
    QCOMPARE(loose.count, 5);
    QCOMPARE(loose.backCount, 4);
    QCOMPARE(loose.items, 1);
    QCOMPARE(loose.itemsBack, 1);
    bench.put(QStringLiteral("back lid"));
    QVERIFY(looseOf(bench.file).nothing());
    QCOMPARE(looseOf(bench.file).text(), QString());
}

void TestSumsLoose::readyOnlyWhole()
{
    JotBench bench;
    bench.put(QStringLiteral("off lid 5 screws M3x8"));
    for (const Stage stage : {Stage::Ready, Stage::Offered}) {
        const QString said = testing::refusal(ruledStageChange(bench.file, {.stage = stage}, bench.maker()));
        QVERIFY2(said.contains(QStringLiteral("still off: lid (5 screws)")), qPrintable(said));
    }
    testing::wantOk(ruledStageChange(bench.file, {.stage = Stage::Proving}, bench.maker()));
    bench.put(QStringLiteral("back lid"));
    testing::wantOk(ruledStageChange(bench.file, {.stage = Stage::Ready}, bench.maker()));
}

void TestSumsLoose::leftOutByName()
{
    JotBench bench;
    bench.put(QStringLiteral("off shipping bracket 2 screws M4x10"));
    const auto change =
        ruledStageChange(bench.file, {.stage = Stage::Ready, .because = QStringLiteral("not needed any more")}, bench.maker());
    testing::wantOk(change);
    QCOMPARE(change->sentence(),
             QStringLiteral("Moved 0042 to Ready: not needed any more; left out: shipping bracket (2 screws); no electrical-safety proof is on record"));
    bench.apply(*change);
    QCOMPARE(bench.file.unit.stage, Stage::Ready);
    QCOMPARE(bench.last<TeardownItem>().state, TeardownState::LeftOut);
    QCOMPARE(bench.last<TeardownItem>().leftOutBecause, QStringLiteral("not needed any more"));
    QVERIFY(bench.last<TeardownItem>().backAt.isValid());
    // It stands on the sheet as what was not done.
    QVERIFY(
        notDone(bench.file).join(QLatin1Char('\n')).contains(QStringLiteral("Left out: shipping bracket (not needed any more)")));
    // And keeps nothing from being offered.
    testing::wantOk(ruledStageChange(bench.file, {.stage = Stage::Offered}, bench.maker()));
}

QTEST_GUILESS_MAIN(TestSumsLoose)
#include "test_sums_loose.moc"
