// First power and electrical safety, jotted.
#include "model/sums/electrical_safety.h"
#include "model/sums/power_ladder.h"
#include "model/sums/timeline.h"
#include "tests/jot_bench.h"

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

class TestJotSafety : public QObject {
    Q_OBJECT
private:
    struct Bench : JotBench {
        Bench()
        {
            file.unit.category = Category::CassetteDeck;
            Setting mains = maker().fresh<Setting>();
            mains.name = settings::mains;
            mains.value = u"230 V 50 Hz"_s;
            bench.all<Setting>() << mains;
        }
        void rules(const QString &word)
        {
            Setting rules = maker().fresh<Setting>();
            rules.name = settings::safetyRules;
            rules.value = word;
            bench.all<Setting>() << rules;
        }
        [[nodiscard]] QString flag() const { return last<LeftOff>().doNotPower; }
    };

private Q_SLOTS:
    void aLadderIsDoneByLines()
    {
        Bench bench;
        bench.put(u"safety class I"_s);
        QCOMPARE(bench.file.unit.protectionClass, ProtectionClass::I);
        for (const QString &line : {u"first power plate: 230 V 50 Hz, selector at 230"_s, u"first power lead: sound from end to end"_s, u"first power fuse = T500mAL250V want T500mAL250V"_s,
                                    u"first power inside: dust, nothing loose"_s, u"first power emptied: no tape, no cells"_s, u"first power primary = 180 Ω"_s, u"first power metal = OL MΩ"_s,
                                    u"first power earth = 0.14 Ω lead 0.05 Ω"_s, u"first power lamp: 40 W, flashed and dimmed"_s, u"first power rails: +12.1 V and -11.9 V"_s,
                                    u"first power heat: 24, 31 and 34 °C at the transformer"_s, u"first power direct: the same as on the lamp"_s})
            QVERIFY2(bench.put(line).badge == u"first power, pass"_s, qPrintable(line + u" → "_s + bench.preview(line).preview));
        QCOMPARE(ladderOf(bench.file).verdict, LadderVerdict::Passed);
        QCOMPARE(bench.count<LeftOff>(), 0);
        QCOMPARE(bench.file.unit.mains, u"230 V 50 Hz, selector at 230"_s);
        const Rung earth = bench.file.all<Rung>().at(7);
        QCOMPARE(*earth.wanted.high(), 0.15);
        QCOMPARE(earth.initials, u"R. M."_s);
        QCOMPARE(timeline(bench.file, bench.bench).last().what, EventKind::FirstPower);
    }

    void nothingIsTickedBlind_data()
    {
        QTest::addColumn<QString>("line");
        for (const char *line : {"first power inside", "first power inside:", "first power earth", "first power earth = good", "first power primary:", "first power fuse = T2A", "first power fuse: looks right",
                                 "first power plate: fits", "first power drained: 1 V", "first power stop", "first power inside stop:", "first power earth = 3 V", "first power lamp not applicable", "first power up it hummed",
                                 "safety insulation", "safety insulation = fine", "safety earth = 0.1 MV", "safety look", "safety insulation not applicable", "safety cover is loose", "safety leakage = 0.2 mA want <= 5 mA by iet 4"})
            QTest::newRow(line) << QString::fromUtf8(line);
    }
    void nothingIsTickedBlind()
    {
        QFETCH(QString, line);
        Bench bench;
        bench.put(u"safety class I"_s);
        const Jotted jotted = bench.preview(line);
        QCOMPARE(jotted.what, u"note"_s); // never an error, and never a step that was passed
        bench.put(line);
        QCOMPARE(bench.count<Rung>(), 0);
        QCOMPARE(bench.count<Proof>(), 0);
    }

    void aStopFlagsTheUnit()
    {
        Bench bench;
        bench.put(u"safety class I"_s);
        const Jotted stop = bench.put(u"first power earth = 0.6 Ω"_s);
        QVERIFY(stop.preview.contains(u"do not power"_s));
        QCOMPARE(bench.flag(), u"first power, earth: 0.6 Ω, wanted up to 0.1 Ω"_s);
        bench.put(u"first power fuse stop: foil round a blown one"_s);
        QVERIFY(bench.flag().contains(u"foil round a blown one"_s) && bench.flag().contains(u"0.6 Ω"_s));
        // What is passed later does not take the flag away; the user does.
        bench.put(u"first power earth = 0.08 Ω"_s);
        QVERIFY(!bench.flag().isEmpty());
        bench.put(u"safe to power"_s);
        QVERIFY(bench.flag().isEmpty());
        QCOMPARE(bench.count<Rung>(), 3);
        // Another mains than the bench has, by voltage and by frequency.
        bench.put(u"first power plate: 120 V 60 Hz"_s);
        QVERIFY2(bench.flag().contains(u"120 V"_s) && bench.flag().contains(u"60 Hz"_s), qPrintable(bench.flag()));
        QCOMPARE(bench.last<Rung>().cameOut, RungOutcome::Stop);
        // A UL fuse of the same figure stops as well.
        bench.put(u"first power fuse = UL T2A want T2A"_s);
        QCOMPARE(bench.last<Rung>().cameOut, RungOutcome::Stop);
    }

    void withoutTheBenchsMainsThePlateIsNotPassed()
    {
        JotBench bench;
        QCOMPARE(bench.preview(u"first power plate: 230 V 50 Hz"_s).what, u"note"_s);
    }

    void aSafetyTestIsJotted()
    {
        Bench bench;
        bench.put(u"safety class II"_s);
        const Jotted passed = bench.put(u"safety insulation = 200 MΩ with insulation tester"_s);
        QCOMPARE(passed.badge, u"proof, passed"_s);
        Proof proof = bench.last<Proof>();
        QCOMPARE(proof.kind, ProofKind::ElectricalSafety);
        QCOMPARE(proof.ruleSet, u"EN 50678 / VDE 0701-0702"_s);
        QCOMPARE(proof.instrument, u"insulation tester"_s);
        QCOMPARE(proof.initials, u"R. M."_s);
        QCOMPARE(proof.doneOn, QDate(2026, 11, 25));
        QVERIFY(proof.uncertainty); // from the tester's range
        QVERIFY2(proofResult(proof).contains(u"wanted at least 2 MΩ (DIN VDE 0701-0702"_s), qPrintable(proofResult(proof)));
        // Measured again it is the same proof; the journal keeps what it was.
        bench.put(u"safety insulation = 0.4 MΩ"_s);
        QCOMPARE(bench.count<Proof>(), 1);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
        QCOMPARE(failedSafety(bench.file).size(), 1);
        // Class II touch current: 0.5 mA here (S11), 0.25 mA by the 4th edition (S15), 5 mA by the 5th (S17).
        bench.put(u"safety leakage = 0.3 mA"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
        bench.put(u"safety leakage = 0.3 mA by iet 4"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
        QCOMPARE(bench.last<Proof>().ruleSet, rulesName(SafetyRules::Iet4));
        bench.put(u"safety leakage = 0.3 mA by iet 5"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
        bench.put(u"safety look: plug, lead and cover whole"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
        bench.put(u"safety heat failed: lead hot at the plug"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
    }

    void theMakersCheck()
    {
        // ../shared/checks 06_safety_cases.csv L05: 0.62 V passes the generic limit and fails a set's own 0.1 mA or 0.15 V (S23).
        Bench bench;
        bench.rules(u"makers"_s);
        bench.put(u"safety leakage = 0.62 V"_s);
        QCOMPARE(bench.last<Proof>().test, SafetyTest::HotLeakage);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
        QVERIFY2(proofResult(bench.last<Proof>()).contains(u"0.414 mA by |Z| = 1496.3 Ω of the network at 50 Hz"_s), qPrintable(proofResult(bench.last<Proof>())));
        bench.put(u"safety hot = 0.62 V want <= 0.15 V"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
        QVERIFY(bench.last<Proof>().limitSource.startsWith(u"the set's own"_s));
        bench.put(u"safety hot = 0.62 V want <= 0.1 mA"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
        // S21: 0.75 V is on the limit, and within; 0.41 mA is within 0.5 mA.
        bench.put(u"safety hot = 0.75 V"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
        bench.put(u"safety hot = 0.51 mA"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
        bench.put(u"safety cold = 2.2 MΩ"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
    }

    void aLongLead()
    {
        // L01: 0.4 Ω at 12.5 m.
        Bench bench;
        bench.put(u"safety class I"_s);
        bench.put(u"safety earth = 0.38 Ω"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Failed);
        bench.put(u"safety earth = 0.38 Ω lead 12.5 m"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::Passed);
        bench.put(u"safety earth = 0.29 Ω ± 0.03 Ω"_s);
        QCOMPARE(bench.last<Proof>().cameOut, ProofOutcome::NotTested);
        QCOMPARE(cameOutText(bench.last<Proof>()), u"too close to call"_s);
    }

    void theClassComesFirst()
    {
        Bench bench;
        const Jotted jotted = bench.preview(u"safety insulation = 200 MΩ"_s);
        QCOMPARE(jotted.what, u"note"_s);
        QVERIFY2(jotted.preview.contains(u"protection class"_s), qPrintable(jotted.preview));
    }
};

QTEST_GUILESS_MAIN(TestJotSafety)
#include "test_jot_safety.moc"
