// The ladder before and at first power: its steps, what stops it, and the sums beside it.
#include "model/faults/first_power.h"
#include "model/sums/power_ladder.h"
#include "tests/jot_bench.h"
#include "tests/reckoned.h"

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

class TestSumsFirstPower : public QObject {
    Q_OBJECT
private:
    static Unit unitOf(Category category, std::optional<ProtectionClass> of = {})
    {
        Unit unit;
        unit.category = category;
        unit.protectionClass = of;
        return unit;
    }
    static bool has(const Unit &unit, PowerStep step)
    {
        const QList<LadderStep> steps = ladderSteps(unit);
        return std::any_of(steps.begin(), steps.end(), [step](const LadderStep &each) { return each.step == step; });
    }
    static RungOutcome came(PowerStep step, const QString &value, std::optional<double> uncertainty = {})
    {
        Unit unit = unitOf(Category::AmplifierReceiver, ProtectionClass::I);
        for (const LadderStep &each : ladderSteps(unit)) {
            if (each.step != step)
                continue;
            Rung rung;
            rung.step = step;
            rung.wanted = each.wanted;
            rung.uncertainty = uncertainty;
            const auto read = Quantity::parse(value);
            if (read)
                rung.value = *read;
            return outcomeOf(rung);
        }
        return RungOutcome::NotApplicable;
    }

private Q_SLOTS:
    // ../shared/trade/trade.md 1.3, P1 to P14.
    void stepsByCategory()
    {
        for (const auto &[category, word] : Words<Category>::list) {
            const QList<LadderStep> steps = ladderSteps(unitOf(category, ProtectionClass::I));
            if (steps.isEmpty())
                continue;
            QCOMPARE(steps.first().step, PowerStep::Plate);
            QCOMPARE(steps.last().step, PowerStep::Direct);
            QSet<PowerStep> once;
            for (const LadderStep &step : steps) {
                QVERIFY2(!once.contains(step.step), word);
                once << step.step;
                QVERIFY2(!step.text.isEmpty() && !step.asks.isEmpty() && !step.stops.isEmpty() && !step.source.isEmpty(), word);
                QVERIFY(step.kind != StepAsks::Value || step.step == PowerStep::Reforming || step.wanted.bounded());
            }
        }
        QVERIFY(ladderSteps(unitOf(Category::Loudspeaker)).isEmpty());
        QVERIFY(has(unitOf(Category::AmplifierReceiver, ProtectionClass::I), PowerStep::Earth));
        QVERIFY(!has(unitOf(Category::AmplifierReceiver, ProtectionClass::II), PowerStep::Earth));
        QVERIFY(has(unitOf(Category::AmplifierReceiver), PowerStep::Output));
        QVERIFY(has(unitOf(Category::AmplifierReceiver), PowerStep::Drained));
        QVERIFY(has(unitOf(Category::OldComputer), PowerStep::Supply));
        QVERIFY(has(unitOf(Category::TestGear), PowerStep::Supply));
        QVERIFY(has(unitOf(Category::Radio), PowerStep::Valves));
        QVERIFY(!has(unitOf(Category::CassetteDeck), PowerStep::Valves));
        QVERIFY(ladderSteps(unitOf(Category::CassetteDeck, ProtectionClass::III)).isEmpty());
    }

    void stopsByValue_data()
    {
        QTest::addColumn<PowerStep>("step");
        QTest::addColumn<QString>("value");
        QTest::addColumn<RungOutcome>("came");
        using enum PowerStep;
        using enum RungOutcome;
        // trade.md 1.3 P6: tens to a few hundred ohms; near 0 or open is a stop; to metal megohms.
        QTest::newRow("primary") << Primary << u"85 Ω"_s << Pass;
        QTest::newRow("primary near 0") << Primary << u"0.2 Ω"_s << Stop;
        QTest::newRow("primary open") << Primary << u"OL"_s << Stop;
        QTest::newRow("metal") << Metal << u"> 20 MΩ"_s << Pass;
        QTest::newRow("metal over range") << Metal << u"OL"_s << Pass;
        QTest::newRow("metal low") << Metal << u"120 kΩ"_s << Stop;
        // P7: under 0.1 Ω and the lead; P8: under a few volts.
        QTest::newRow("earth") << Earth << u"0.08 Ω"_s << Pass;
        QTest::newRow("earth on the limit") << Earth << u"0.1 Ω"_s << Pass; // limits are inclusive
        QTest::newRow("earth high") << Earth << u"0.6 Ω"_s << Stop;
        QTest::newRow("drained") << Drained << u"1.2 V"_s << Pass;
        QTest::newRow("charged") << Drained << u"48 V"_s << Stop;
        QTest::newRow("another measure") << Drained << u"1.2 Ω"_s << Stop;
        // trade.md 2.4 b: direct voltage at the output commonly accepted to 50 mV.
        QTest::newRow("offset") << Offset << u"-23 mV"_s << Pass;
        QTest::newRow("offset high") << Offset << u"0.7 V"_s << Stop;
    }
    void stopsByValue()
    {
        QFETCH(PowerStep, step);
        QFETCH(QString, value);
        QFETCH(RungOutcome, came);
        QCOMPARE(TestSumsFirstPower::came(step, value), came);
    }

    void whatIsTooCloseIsAStop()
    {
        QCOMPARE(came(PowerStep::Earth, u"0.09 Ω"_s, 0.005), RungOutcome::Pass);
        QCOMPARE(came(PowerStep::Earth, u"0.09 Ω"_s, 0.02), RungOutcome::Stop);
    }

    void theLadderIsWhatItsNewestTriesSay()
    {
        UnitFile file;
        file.unit = unitOf(Category::CassetteDeck);
        QCOMPARE(ladderOf(file).verdict, LadderVerdict::Open);
        QDateTime at(QDate(2026, 11, 25), QTime(10, 0), Qt::UTC);
        for (const LadderStep &step : ladderSteps(file.unit)) {
            Rung rung;
            rung.step = step.step;
            rung.at = at;
            rung.cameOut = step.step == PowerStep::Heat ? RungOutcome::NotApplicable : RungOutcome::Pass;
            file.all<Rung>() << rung;
        }
        QCOMPARE(ladderOf(file).verdict, LadderVerdict::Passed);
        Rung stop = file.all<Rung>().first();
        stop.at = at.addSecs(60);
        stop.cameOut = RungOutcome::Stop;
        file.all<Rung>() << stop;
        QCOMPARE(ladderOf(file).verdict, LadderVerdict::Stopped);
        QCOMPARE(ladderOf(file).stopped, 1);
        file.all<Rung>().last().removed = true;
        QCOMPARE(ladderOf(file).verdict, LadderVerdict::Passed);
        file.all<Rung>().removeFirst();
        QCOMPARE(ladderOf(file).verdict, LadderVerdict::Open);
        QCOMPARE(ladderOf(file).open, 1);
    }

    void mainsStop_data()
    {
        QTest::addColumn<QString>("plate");
        QTest::addColumn<QString>("bench");
        QTest::addColumn<int>("stops");
        // ../shared/checks 03_mains_voltages.csv M01, M08 to M10 and 03_mains_cases.csv M21, M22 (16.7 % low, 20 % high).
        QTest::newRow("fits") << u"230 V 50 Hz"_s << u"230 V 50 Hz"_s << 0;
        QTest::newRow("fits a wide plate") << u"220-240 V 50/60 Hz"_s << u"230 V 50 Hz"_s << 0;
        QTest::newRow("M21") << u"120 V 60 Hz"_s << u"100 V 60 Hz"_s << 1;
        QTest::newRow("M22") << u"100 V 60 Hz"_s << u"120 V 60 Hz"_s << 1;
        QTest::newRow("both apart") << u"120 V 60 Hz"_s << u"230 V 50 Hz"_s << 2;
        QTest::newRow("frequency alone") << u"100 V 60 Hz"_s << u"100 V 50 Hz"_s << 1;
        QTest::newRow("old 220 V set, cautioned but no stop") << u"220 V 50 Hz"_s << u"230 V 50 Hz"_s << 0; // M20
    }
    void mainsStop()
    {
        QFETCH(QString, plate);
        QFETCH(QString, bench);
        QFETCH(int, stops);
        QCOMPARE(mainsStops(unitOf(Category::Turntable), plate, bench).size(), stops);
    }

    void fuseStop_data()
    {
        QTest::addColumn<QString>("fitted");
        QTest::addColumn<QString>("plate");
        QTest::addColumn<QString>("says"); // empty: fits
        // Characteristics and breaking capacities: IEC 60127-2 (../shared/checks 03_fuse_cases.csv G07, G08, G06: the 0.75 rule is never a substitution).
        QTest::newRow("the same") << u"T2AL250V"_s << u"T2AL250V"_s << QString();
        QTest::newRow("same, other spelling") << u"2 A slow 250 V"_s << u"T2A"_s << QString();
        QTest::newRow("many times the rating") << u"T6.3A"_s << u"T1.6A"_s << u"above"_s;
        QTest::newRow("quick for slow") << u"F2A"_s << u"T2A"_s << u"quick"_s;
        QTest::newRow("slow for quick") << u"T2A"_s << u"F2A"_s << u"protects less"_s;
        QTest::newRow("low for high breaking") << u"T2AL250V"_s << u"T2AH250V"_s << u"breaks"_s;
        QTest::newRow("UL of the same figure") << u"UL T2A"_s << u"T2A"_s << u"not interchangeable"_s;
        QTest::newRow("UL of the 0.75 rule") << u"UL T1.4A"_s << u"T1A"_s << u"not interchangeable"_s;
    }
    void fuseStop()
    {
        QFETCH(QString, fitted);
        QFETCH(QString, plate);
        QFETCH(QString, says);
        const auto stops = fuseStops(fitted, plate);
        QVERIFY(stops.ok());
        if (says.isEmpty())
            QVERIFY2(stops->isEmpty(), qPrintable(stops->join(u'|')));
        else
            QVERIFY2(stops->join(u'|').contains(says), qPrintable(stops->join(u'|')));
        QVERIFY(!fuseStops(u"a piece of foil"_s, plate).ok());
    }

    void reformingByCapacitance()
    {
        // trade.md 1.3 P11: no more than 0.15 to 0.5 µA for each µF and volt; 32 µF at 450 V: 7200 µA at the most.
        QVERIFY(qAbs(reformingLeakage(32e-6, 450) - 7200e-6) < 1e-12);
    }

    void lamp_data()
    {
        figureColumns();
        // trade.md 1.3 P12: lamp watts about the idle power to twice that. P / U and U² / P by hand.
        figure("least", "series-lamp|idle=30|mains=230", "least", 30);
        figure("most", "series-lamp|idle=30|mains=230", "most", 60);
        figure("short", "series-lamp|idle=30|mains=230", "short_current", 60.0 / 230, 1e-9);
        figure("hot", "series-lamp|idle=30 W|mains=230 V", "hot_resistance", 230.0 * 230 / 60, 1e-9);
        // ../shared/checks 06_safety_cases.csv L03, computed: |Z| at 50 Hz and the current at 0.75 V.
        figure("L03 Z", "leakage|volts=0.75|frequency=50", "impedance", 1496.27, 0.005);
        figure("L03", "leakage|volts=0.75|frequency=50", "current", 0.50125e-3, 1e-8);
    }
    void lamp() { holdFigure(); }

    void theFaultBoardOwesTheSameSteps()
    {
        UnitFile file;
        file.unit = unitOf(Category::CassetteDeck);
        const qsizetype all = firstPowerDue(file).size();
        QCOMPARE(all, ladderSteps(file.unit).size());
        Rung rung;
        rung.step = PowerStep::Plate;
        rung.cameOut = RungOutcome::Pass;
        file.all<Rung>() << rung;
        QCOMPARE(firstPowerDue(file).size(), all - 1);
        rung.step = PowerStep::Lead;
        rung.cameOut = RungOutcome::Stop;
        file.all<Rung>() << rung;
        QCOMPARE(firstPowerDue(file).size(), 1);
        QVERIFY(firstPowerDue(file).first().text.startsWith(u"stop, do not power"_s));
    }

    void flagsAddUp()
    {
        LeftOff none;
        const LeftOff one = flaggedFor(none, u"first power, earth: 0.6 Ω"_s);
        QCOMPARE(one.doNotPower, u"first power, earth: 0.6 Ω"_s);
        QCOMPARE(flaggedFor(one, u"first power, fuse: bridged"_s).doNotPower, u"first power, earth: 0.6 Ω; first power, fuse: bridged"_s);
        QCOMPARE(flaggedFor(one, u"first power, earth: 0.6 Ω"_s), one);
    }
};

QTEST_GUILESS_MAIN(TestSumsFirstPower)
#include "test_sums_first_power.moc"
