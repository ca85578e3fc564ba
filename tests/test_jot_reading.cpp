#include "jot_bench.h"

#include "model/sums/verdict.h"

using namespace ts;
using ts::testing::JotBench;

/// Lines with an equals sign. The lines and what they must give are those of the product's own table of jotting.
class TestJotReading : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void rowOfTheTable()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("CN2.4 = 11.92 V want 12 V 5%"));
        QCOMPARE(jotted.what, QStringLiteral("reading"));
        QCOMPARE(jotted.badge, QStringLiteral("reading, within"));
        QCOMPARE(jotted.preview, QStringLiteral("CN2.4: 11.92 V, wanted 12 V ± 5 %, is within · as found"));
        QCOMPARE(jotted.change.sentence(), QStringLiteral("Reading CN2.4: 11.92 V"));
        QCOMPARE(jotted.question, QString());
        const TestPoint point = bench.last<TestPoint>();
        QCOMPARE(point.name, QStringLiteral("CN2.4"));
        QCOMPARE(*point.wanted.low(), 11.4);
        QCOMPARE(*point.wanted.high(), 12.6);
        const Reading reading = bench.last<Reading>();
        QVERIFY(reading.point == point.id);
        QCOMPARE(reading.value->value(), 11.92);
        QCOMPARE(reading.value->measure().text(), QStringLiteral("V"));
        QCOMPARE(*reading.wanted.low(), 11.4);
        QVERIFY(!reading.uncertainty);
    }

    void range()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("take-up torque = 47 gf.cm want 35..65 after"));
        QCOMPARE(jotted.preview, QStringLiteral("Take-up torque: 47 gf·cm, wanted 35 to 65 gf·cm, is within · as it leaves"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsItLeaves);
        bench.put(QStringLiteral("take-up torque = 14 gf.cm found"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsFound);
        QCOMPARE(*bench.last<Reading>().wanted.high(), 65.0); // from the test point
        QCOMPARE(bench.count<TestPoint>(), 1);
        const Jotted low = bench.put(QStringLiteral("Take-up  Torque = 14 gf.cm during"));
        QCOMPARE(low.preview, QStringLiteral("Take-up torque: 14 gf·cm, wanted 35 to 65 gf·cm, is 21 gf·cm low · during work"));
        QCOMPARE(low.badge, QStringLiteral("reading, outside"));
        QVERIFY(bench.last<Reading>().point == bench.last<TestPoint>().id);
    }

    void oneSidedWithMeter()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("insulation = 200 MΩ want >= 2 MΩ with insulation tester"));
        QCOMPARE(jotted.badge, QStringLiteral("reading, within"));
        const Reading reading = bench.last<Reading>();
        QCOMPARE(*reading.wanted.low(), 2.0);
        QVERIFY(!reading.wanted.high());
        QVERIFY(reading.meter == bench.bench.all<Meter>().last().id);
        QCOMPARE(reading.meterName, QStringLiteral("insulation tester"));
        // 5 % of 200 MΩ and 5 counts of 1 MΩ: a = 15 MΩ, U95 = 1.959964 a / √3 (JCGM 100:2008, 4.3.7), reckoned by hand.
        QVERIFY(std::abs(*reading.uncertainty - 16.9738) < 1e-3);
        QCOMPARE(jotted.preview, QStringLiteral("Insulation: 200 MΩ ± 17 MΩ, wanted at least 2 MΩ, is within · as found · meter: "
                                                "insulation tester, 1000 MΩ range"));
    }

    void severalTimes()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("CN2.4 = 11.92; 11.93; 11,91 V want 12 V 5% with bench meter"));
        const Reading reading = bench.last<Reading>();
        QCOMPARE(reading.value->text(), QStringLiteral("11.92 V"));
        // By hand: a = 0.5 % of 11.92 V + 2 counts of 0.01 V = 0.0796 V; s = 0.01 V over three: u = √((a/√3)² + (0.01/√3)²),
        // and the t law of some thousand degrees of freedom is within 3e-4 of the normal one.
        QVERIFY(std::abs(*reading.uncertainty / (1.959964 * std::hypot(0.0796, 0.01) / std::sqrt(3.0)) - 1) < 3e-4);
        QVERIFY2(jotted.preview.contains(QStringLiteral("mean of 3 readings · meter: bench meter, 40 V range")),
                 qPrintable(jotted.preview));
        // Without a meter the repeats alone say how sure it is: t of 95 % with 2 degrees of freedom is 4.303 (JCGM 100, table
        // G.2).
        bench.put(QStringLiteral("ripple = 8; 10; 12 mV"));
        QVERIFY(std::abs(*bench.last<Reading>().uncertainty - 4.303 * 2 / std::sqrt(3.0)) < 0.001);
        bench.put(QStringLiteral("CN2.4 = 12; 13")); // the unit of the point
        QCOMPARE(bench.last<Reading>().value->text(), QStringLiteral("12.5 V"));
        QCOMPARE(bench.preview(QStringLiteral("CN2.4 = 12; grey V")).what, QStringLiteral("note"));
        QVERIFY(bench.preview(QStringLiteral("CN2.4 = 11.92 V ± 0.5 V with bench meter"))
                    .preview.contains(QStringLiteral("± 0.5 V")));
    }

    void meterOverdue()
    {
        JotBench bench;
        bench.bench.all<Meter>().first().calibrationDue = bench.now().date().addDays(1);
        QVERIFY(!bench.preview(QStringLiteral("a = 1 V with bench meter")).preview.contains(QStringLiteral("calibration")));
        bench.bench.all<Meter>().first().calibrationDue = QDate(2020, 5, 31);
        const QString preview = bench.preview(QStringLiteral("a = 1 V with bench meter")).preview;
        QVERIFY2(preview.contains(QStringLiteral("4 V range, its calibration was due on 2020-05-31")), qPrintable(preview));
    }

    void decibels()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("line out L = 96 mV want 387 mV 2dB"));
        // 20 lg (96 / 387) = -12.1 dB; limits 387 mV × 10^(∓ 2/20) = 307.4 mV and 487.2 mV, by hand.
        QCOMPARE(jotted.preview, QStringLiteral("Line out L: 96 mV, wanted 387 mV ± 2 dB, is 12.1 dB low · as found"));
        QCOMPARE(jotted.badge, QStringLiteral("reading, outside"));
        QVERIFY(std::abs(*bench.last<Reading>().wanted.low() - 307.4) < 0.05);
        QVERIFY(std::abs(*bench.last<Reading>().wanted.high() - 487.2) < 0.05);
    }

    void anyOrder_data()
    {
        QTest::addColumn<QString>("line");
        for (const char *line : {"line out L = 96 mV want 387 mV 2dB found with bench meter at 315 Hz",
                                 "line out L = 96 mV found at 315 Hz with bench meter want 387 mV 2dB",
                                 "line out L = 96 mV @ 315 Hz as found want 387 mV 2 dB with Bench",
                                 "line out L @ 315 Hz = 96mV with BENCH METER found want 387 mV ± 2 dB",
                                 "line out L @315 Hz = 96 mV want 0.387 V 2dB with bench found"})
            QTest::newRow(line) << QString::fromUtf8(line);
    }
    void anyOrder()
    {
        QFETCH(QString, line);
        JotBench bench;
        bench.put(line);
        const Reading reading = bench.last<Reading>();
        QCOMPARE(reading.name, QStringLiteral("line out L"));
        QCOMPARE(reading.value->text(), QStringLiteral("96 mV"));
        QCOMPARE(reading.conditions, QStringLiteral("315 Hz"));
        QCOMPARE(reading.phase, Phase::AsFound);
        QCOMPARE(reading.meterName, QStringLiteral("bench meter"));
        QCOMPARE(verdictOf(reading), Verdict::Outside);
        QCOMPARE(bench.last<TestPoint>().conditions, QStringLiteral("315 Hz"));
        // 0.5 % of 96 mV and 3 counts of 0.1 mV: a = 0.78 mV, U95 = 0.8826 mV, by hand.
        QVERIFY(std::abs(*reading.uncertainty - 0.8826) < 1e-3);
        QVERIFY2(bench.preview(line).preview.contains(QStringLiteral("bench meter, 400 mV range")),
                 qPrintable(bench.preview(line).preview));
    }

    void values_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("read");
        const auto row = [](const char *typed, const char *read) {
            QTest::newRow(typed) << QString::fromUtf8(typed) << QString::fromUtf8(read);
        };
        row("p = 11.92 V", "11.92 V");
        row("p = 11,92 V", "11.92 V");
        row("p=11.92V", "11.92 V");
        row("p = -23,5 mV", "-23.5 mV");
        row("p = 47 uF", "47 µF");
        row("p = 47 µF", "47 µF"); // micro sign
        row("p = 47 μF", "47 µF"); // Greek mu
        row("p = 4k7 want 4k7 ohm 5%", "4.7 kΩ");
        row("p = 2R2", "2.2 Ω");
        row("p = 0R5", "0.5 Ω");
        row("p = 100 R", "100 Ω");
        row("p = 100 ohm", "100 Ω");
        row("p = 10 Mohm", "10 MΩ");
        row("p = 100n want 100 nF 20%", "100 nF");
        row("p = 12m want 10 mV 5 mV", "12 mV");
        row("p = 97 want 96 mV 5%", "97 mV");
        row("p = about 12 V", "about 12 V");
        row("p = < 0.1 %", "< 0.1 %");
        row("p = > 200 MΩ", "> 200 MΩ");
        row("p = OL", "over range");
        row("p = OL want >= 2 MΩ", "over range");
        row("p = 1e3 Hz", "1000 Hz");
    }
    void values()
    {
        QFETCH(QString, typed);
        QFETCH(QString, read);
        JotBench bench;
        const Jotted jotted = bench.put(typed);
        QCOMPARE(jotted.what, QStringLiteral("reading"));
        QCOMPARE(bench.last<Reading>().value->text(), read);
    }

    void senses()
    {
        JotBench bench;
        bench.put(QStringLiteral("a = OL want >= 2 MΩ"));
        QCOMPARE(bench.last<Reading>().value->sense(), Sense::OverRange);
        QCOMPARE(verdictOf(bench.last<Reading>()), Verdict::Within);
        bench.put(QStringLiteral("b = < 0.1 % want <= 0.12 %"));
        QCOMPARE(bench.last<Reading>().value->sense(), Sense::Below);
        bench.put(QStringLiteral("c = about 12 V"));
        QCOMPARE(bench.last<Reading>().value->sense(), Sense::About);
        const Jotted unstable = bench.put(QStringLiteral("d = 11.9 V DC unstable"));
        QCOMPARE(bench.last<Reading>().conditions, QStringLiteral("DC unstable"));
        QCOMPARE(unstable.preview, QStringLiteral("d, DC unstable: 11.9 V · as found"));
    }

    void ownUncertainty_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<double>("wanted");
        QTest::newRow("sign") << QStringLiteral("p = 11.92 V ± 0.04 V want 12 V 5%") << 0.04;
        QTest::newRow("ascii") << QStringLiteral("p = 11.92 V +-0.04 want 12 V 5%") << 0.04;
        QTest::newRow("slash") << QStringLiteral("p = 11.92 V +/- 40 mV want 12 V 5%") << 0.04;
        QTest::newRow("glued") << QStringLiteral("p = 11.92±0.04 V want 12 V 5%") << 0.04;
        QTest::newRow("share") << QStringLiteral("p = 10 V ± 2 %") << 0.2;
        QTest::newRow("behind the phase") << QStringLiteral("p = 11.92 V want 12 V 5% after ± 0.04 V") << 0.04;
        QTest::newRow("behind the meter") << QStringLiteral("p = 11.92 V want 12 V 5% with bench meter ±0.04 V") << 0.04;
        QTest::newRow("before the meter's") << QStringLiteral("p = 11.92 V ± 0.04 with bench meter") << 0.04;
    }
    void ownUncertainty()
    {
        QFETCH(QString, line);
        QFETCH(double, wanted);
        JotBench bench;
        bench.put(line);
        QVERIFY(bench.last<Reading>().uncertainty);
        QVERIFY(std::abs(*bench.last<Reading>().uncertainty - wanted) < 1e-9);
        QCOMPARE(bench.last<Reading>().value->measure().text(), QStringLiteral("V"));
    }

    void tooClose()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("p = 11.42 V ± 0.04 V want 12 V 5%"));
        QCOMPARE(jotted.badge, QStringLiteral("reading, too close to call"));
        // u = 0.04 / 1.959964 = 0.020408 V; Φ((11.42 - 11.4) / u) = Φ(0.98) = 0.8365 (printed tables of the normal law).
        QCOMPARE(jotted.preview,
                 QStringLiteral("p: 11.42 V ± 0.04 V, wanted 12 V ± 5 %, is too close to call (84 % within) · as found"));
    }

    void phases()
    {
        JotBench bench;
        bench.put(QStringLiteral("p = 1 V"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsFound);
        bench.put(QStringLiteral("did cleaned the source switch 20m"));
        bench.put(QStringLiteral("p = 1 V"));
        QCOMPARE(bench.last<Reading>().phase, Phase::DuringWork);
        bench.put(QStringLiteral("p = 1 V as found"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsFound);
        bench.put(QStringLiteral("p = 1 V as it leaves"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsItLeaves);
        bench.file.unit.stage = Stage::Proving;
        bench.put(QStringLiteral("p = 1 V"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsItLeaves);
        bench.put(QStringLiteral("p = 1 V after ten minutes found"));
        QCOMPARE(bench.last<Reading>().phase, Phase::AsFound);
        QCOMPARE(bench.last<Reading>().conditions, QStringLiteral("after ten minutes"));
        JotBench fitted;
        fitted.put(QStringLiteral("fitted idler tyre 1.20"));
        fitted.put(QStringLiteral("p = 1 V"));
        QCOMPARE(fitted.last<Reading>().phase, Phase::DuringWork);
    }

    void testPoints()
    {
        JotBench bench;
        bench.put(QStringLiteral("out L = 380 mV want 387 mV 2dB at 315 Hz"));
        QCOMPARE(bench.count<TestPoint>(), 1);
        // Under other conditions the point is another one: nothing is wanted there yet.
        const Jotted other = bench.put(QStringLiteral("out L = 50 mV at 10 kHz"));
        QCOMPARE(other.badge, QStringLiteral("reading"));
        QVERIFY(bench.last<Reading>().point.isNull());
        QCOMPARE(bench.preview(QStringLiteral("out l @ 315Hz = 380 mV")).badge, QStringLiteral("reading, within"));
        QCOMPARE(bench.preview(QStringLiteral("OUT  L = 380 mV")).badge, QStringLiteral("reading, within"));
        // Another limit stays with its reading; the point keeps its own.
        bench.put(QStringLiteral("out L = 380 mV want 400 mV 1%"));
        QCOMPARE(bench.count<TestPoint>(), 1);
        QCOMPARE(bench.last<TestPoint>().wanted.text(), bench.file.all<Reading>().first().wanted.text());
        QCOMPARE(*bench.last<Reading>().wanted.low(), 396.0);
        QVERIFY(bench.last<Reading>().point == bench.last<TestPoint>().id);
        // The unit of the last reading goes for a bare number.
        bench.put(QStringLiteral("idle = 12 mV"));
        bench.put(QStringLiteral("idle = 13"));
        QCOMPARE(bench.last<Reading>().value->text(), QStringLiteral("13 mV"));
    }

    void unknownMeterAndNoRange()
    {
        JotBench bench;
        QCOMPARE(bench.put(QStringLiteral("p = 5 V with borrowed scope")).preview,
                 QStringLiteral("p: 5 V · as found · meter: borrowed scope, not among the bench's"));
        QCOMPARE(bench.last<Reading>().meterName, QStringLiteral("borrowed scope"));
        QVERIFY(bench.last<Reading>().meter.isNull());
        QCOMPARE(bench.put(QStringLiteral("p = 5 A with bench meter")).preview,
                 QStringLiteral("p: 5 A · as found · meter: bench meter, no range for it"));
        QVERIFY(!bench.last<Reading>().uncertainty);
    }

    void tenTimesOff_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("question");
        const auto row = [](const char *line, const char *question) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(question);
        };
        row("p = 1.192 V want 12 V 5%", "1.192 V is 10 times below what is wanted (12 V ± 5 %). Record it all the same?");
        row("p = 125 V want 12 V 5%", "125 V is 10 times above what is wanted (12 V ± 5 %). Record it all the same?");
        row("p = 12 mV want 12 V 5%", "12 mV is 1000 times below what is wanted (12 V ± 5 %). Record it all the same?");
        row("p = 47 kgf.cm want 35..65 gf.cm", "The reading is in kgf·cm and what is wanted in gf·cm. Record it all the same?");
        row("p = 1.5 % want <= 0.12 %", "1.5 % is 12.5 times above what is wanted (up to 0.12 %). Record it all the same?");
        row("p = 0.1 MΩ want >= 2 MΩ", "0.1 MΩ is 20 times below what is wanted (at least 2 MΩ). Record it all the same?");
        row("p = 5 mA want 12 V 5%", "The reading is in mA and what is wanted in V. Record it all the same?");
        row("p = 0 V want 12 V 5%", "");
        row("p = 9 V want 12 V 5%", "");
        row("p = 2 GΩ want >= 2 MΩ", "");
        row("p = 0.001 % want <= 0.12 %", "");
        row("p = OL want 100 ohm 5%", "");
        row("p = 96 mV want 387 mV 2dB", "");
    }
    void tenTimesOff()
    {
        QFETCH(QString, line);
        QFETCH(QString, question);
        JotBench bench;
        const Jotted jotted = bench.put(line);
        QCOMPARE(jotted.question, question);
        QCOMPARE(jotted.what, QStringLiteral("reading")); // asked about, not refused
        QCOMPARE(bench.count<Reading>(), 1);
    }

    void notReadings_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("preview");
        const auto row = [](const char *line, const char *preview) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(preview);
        };
        row("colour = grey", "Note: colour = grey");
        row("=cmd()|' /C calc'!A0", "Note: =cmd()|' /C calc'!A0");
        row("= 5 V", "Note: = 5 V");
        row("speed >= good", "Note: speed >= good");
        row("bias = rubbish want 20 mV 5%", "Taken as a note, because \"rubbish\" is no value");
        row("bias = 20 mV want quick", "Taken as a note, because \"quick\" is no limit");
        row("bias = want 20 mV 5%", "Taken as a note, because no value follows the equals sign");
        row("bias = 20 mV ± much want 20 mV 5%", "Taken as a note, because \"much\" is no uncertainty");
    }
    void notReadings()
    {
        QFETCH(QString, line);
        QFETCH(QString, preview);
        JotBench bench;
        const Jotted jotted = bench.put(line);
        QCOMPARE(jotted.what, QStringLiteral("note"));
        QCOMPARE(jotted.preview, preview);
        QCOMPARE(bench.last<Note>().text, line);
        QCOMPARE(bench.count<Reading>() + bench.count<TestPoint>(), 0);
    }

    void rubbishAtAKnownPoint()
    {
        JotBench bench;
        bench.put(QStringLiteral("CN2.4 = 11.92 V want 12 V 5%"));
        QCOMPARE(bench.preview(QStringLiteral("cn2.4 = high")).preview,
                 QStringLiteral("Taken as a note, because \"high\" is no value"));
        // A point whose name begins with a word of the jot line is still a point.
        bench.put(QStringLiteral("off = 0.4 V"));
        QCOMPARE(bench.last<Reading>().name, QStringLiteral("off"));
    }
};

QTEST_GUILESS_MAIN(TestJotReading)
#include "test_jot_reading.moc"
