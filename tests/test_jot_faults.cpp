#include "jot_bench.h"

#include "model/sums/hours.h"

using namespace ts;
using ts::testing::JotBench;

/// Symptoms, causes, checks and steps. The lines and what they must give are those of the product's own table of jotting.
class TestJotFaults : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void saw()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("saw take-up reel stops after a few seconds"));
        QCOMPARE(jotted.what, QStringLiteral("symptom"));
        QCOMPARE(jotted.badge, QStringLiteral("symptom, open"));
        QCOMPARE(jotted.preview, QStringLiteral("Symptom: take-up reel stops after a few seconds"));
        QCOMPARE(jotted.change.sentence(), QStringLiteral("Symptom: take-up reel stops after a few seconds"));
        QCOMPARE(bench.last<Symptom>().text, QStringLiteral("take-up reel stops after a few seconds"));
        QCOMPARE(bench.last<Symptom>().state, SymptomState::Open);
        bench.put(QStringLiteral("SAW: left channel weak when warm"));
        QCOMPARE(bench.last<Symptom>().text, QStringLiteral("left channel weak when warm"));
    }

    void cleared()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw take-up reel stops after a few seconds"));
        bench.put(QStringLiteral("saw left channel weak"));
        const Jotted jotted = bench.put(QStringLiteral("cleared take-up reel stops"));
        QCOMPARE(jotted.preview, QStringLiteral("Symptom cleared: take-up reel stops after a few seconds"));
        QCOMPARE(jotted.badge, QStringLiteral("symptom, cleared"));
        QCOMPARE(jotted.question, QString());
        const Symptom first = bench.file.all<Symptom>().first();
        QCOMPARE(first.state, SymptomState::Cleared);
        QCOMPARE(first.clearedAt, bench.now());
        QCOMPARE(bench.last<Symptom>().state, SymptomState::Open);
        // Cleared already: a note, and why.
        QCOMPARE(bench.put(QStringLiteral("cleared take-up reel")).preview,
                 QStringLiteral("Taken as a note, because that symptom is cleared already"));
        QCOMPARE(bench.last<Note>().text, QStringLiteral("cleared take-up reel"));
        // What names none clears none: it may be another fault, and the sheet would then say too much.
        const Jotted other = bench.put(QStringLiteral("cleared the crackle"));
        QCOMPARE(other.preview, QStringLiteral("Taken as a note, because no open symptom reads \"the crackle\"; "
                                               "still open: \"left channel weak\""));
        QCOMPARE(other.question, QString());
        QCOMPARE(bench.last<Note>().text, QStringLiteral("cleared the crackle"));
        QCOMPARE(bench.last<Symptom>().state, SymptomState::Open);
        QCOMPARE(bench.preview(QStringLiteral("cleared the weak channel")).badge, QStringLiteral("symptom, cleared"));
        // More words than the symptom has still name it; alone it is the newest.
        QCOMPARE(bench.preview(QStringLiteral("cleared left channel weak on both tapes")).question, QString());
        bench.put(QStringLiteral("cleared"));
        QCOMPARE(bench.last<Symptom>().state, SymptomState::Cleared);
        // With none open it stands by itself.
        QCOMPARE(bench.put(QStringLiteral("cleared the hum")).preview,
                 QStringLiteral("Taken as a note, because no symptom is open"));
        QCOMPARE(bench.last<Note>().text, QStringLiteral("cleared the hum"));
    }

    void whatIsStillOpenIsNamedNewestFirst()
    {
        JotBench bench;
        for (const char *text : {"saw hum on left", "saw no display", "saw drawer stuck", "saw remote dead"})
            bench.put(QString::fromLatin1(text));
        QCOMPARE(bench.preview(QStringLiteral("cleared wow")).preview,
                 QStringLiteral("Taken as a note, because no open symptom reads \"wow\"; "
                                "still open: \"remote dead\", \"drawer stuck\" and 2 more"));
    }

    void clearedOfTwoAlike()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw hum on left"));
        bench.put(QStringLiteral("saw hum on right"));
        QCOMPARE(bench.put(QStringLiteral("cleared hum")).preview,
                 QStringLiteral("Symptom cleared: hum on right · the newest of 2 that read so"));
        QCOMPARE(bench.file.all<Symptom>().first().state, SymptomState::Open);
    }

    void think()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw take-up reel stops"));
        const Jotted jotted = bench.put(QStringLiteral("think clutch felt glazed 40%"));
        QCOMPARE(jotted.what, QStringLiteral("cause"));
        QCOMPARE(jotted.preview, QStringLiteral("Cause: clutch felt glazed, 40 % · for \"take-up reel stops\""));
        QCOMPARE(jotted.change.sentence(), QStringLiteral("Cause: clutch felt glazed, 40 %"));
        Cause cause = bench.last<Cause>();
        QCOMPARE(cause.text, QStringLiteral("clutch felt glazed"));
        QCOMPARE(*cause.weight, 0.4);
        QCOMPARE(cause.state, CauseState::Open);
        QVERIFY(cause.symptom == bench.last<Symptom>().id);
        // Thought of again: the same cause with another weight.
        bench.put(QStringLiteral("think clutch felt glazed 60 % 30m"));
        QCOMPARE(bench.count<Cause>(), 1);
        QCOMPARE(*bench.last<Cause>().weight, 0.6);
        QCOMPARE(*bench.last<Cause>().fixMinutes, 30);
        bench.put(QStringLiteral("think spring weak"));
        QVERIFY(!bench.last<Cause>().weight);
        // More than the whole is no share: the words stay.
        bench.put(QStringLiteral("think bias 140%"));
        QCOMPARE(bench.last<Cause>().text, QStringLiteral("bias 140%"));
    }

    void belongsToTheSymptomNamed()
    {
        JotBench bench;
        bench.put(QStringLiteral("think mains fuse"));
        QVERIFY(bench.last<Cause>().symptom.isNull()); // none open: by itself
        bench.put(QStringLiteral("saw take-up reel stops"));
        bench.put(QStringLiteral("saw left channel weak"));
        const auto reel = bench.file.all<Symptom>().first().id;
        const auto weak = bench.file.all<Symptom>().last().id;
        bench.put(QStringLiteral("think dry joint 58%"));
        QVERIFY(bench.last<Cause>().symptom == weak);
        bench.put(QStringLiteral("think worn belt 40% for reel stops"));
        QVERIFY(bench.last<Cause>().symptom == reel);
        QCOMPARE(bench.last<Cause>().text, QStringLiteral("worn belt"));
        QCOMPARE(*bench.last<Cause>().weight, 0.4);
        bench.put(QStringLiteral("think slack spring for take-up reel 20%"));
        QVERIFY(bench.last<Cause>().symptom == reel);
        QCOMPARE(*bench.last<Cause>().weight, 0.2);
        bench.put(QStringLiteral("check spin the take-up by hand, reel stops 3m"));
        QVERIFY(bench.last<Check>().symptom == reel);
        bench.put(QStringLiteral("check swap head leads L and R 5m"));
        QVERIFY(bench.last<Check>().symptom == weak);
        bench.put(QStringLiteral("think too much play for a good bearing"));
        QCOMPARE(bench.last<Cause>().text, QStringLiteral("too much play for a good bearing"));
        QVERIFY(bench.last<Cause>().symptom == weak);
    }

    void ruledOutAndWas()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw take-up reel stops"));
        bench.put(QStringLiteral("think clutch felt glazed 40%"));
        bench.put(QStringLiteral("think spring seated one notch low"));
        const Jotted out = bench.put(QStringLiteral("ruled out spring because it measures right"));
        QCOMPARE(out.preview, QStringLiteral("Cause ruled out: spring seated one notch low, because it measures right"));
        QCOMPARE(out.badge, QStringLiteral("cause, ruled out"));
        QCOMPARE(bench.last<Cause>().state, CauseState::RuledOut);
        QCOMPARE(bench.last<Cause>().reason, QStringLiteral("it measures right"));
        QCOMPARE(bench.last<Cause>().settledAt, bench.now());
        const Jotted was = bench.put(QStringLiteral("was clutch felt"));
        QCOMPARE(was.preview, QStringLiteral("Cause confirmed: clutch felt glazed"));
        QCOMPARE(was.badge, QStringLiteral("cause, confirmed"));
        QCOMPARE(bench.file.all<Cause>().first().state, CauseState::Confirmed);
        QCOMPARE(bench.count<Cause>(), 2);
        // Nothing new: nothing to record.
        QVERIFY(bench.put(QStringLiteral("was clutch felt")).change.isEmpty());
        // Never thought of: recorded already settled.
        QCOMPARE(bench.put(QStringLiteral("ruled out clutch motor")).preview,
                 QStringLiteral("Cause ruled out: clutch motor · for \"take-up reel stops\" · a new cause, ruled out"));
        QCOMPARE(bench.last<Cause>().text, QStringLiteral("clutch motor"));
        QCOMPARE(bench.last<Cause>().state, CauseState::RuledOut);
        QVERIFY(bench.last<Cause>().symptom == bench.last<Symptom>().id);
        QCOMPARE(bench.put(QStringLiteral("was broken wire")).preview,
                 QStringLiteral("Cause confirmed: broken wire · for \"take-up reel stops\" · a new cause, confirmed"));
        QCOMPARE(bench.last<Cause>().state, CauseState::Confirmed);
        // Thought of once more it is open again.
        QVERIFY(
            bench.put(QStringLiteral("think clutch motor 10%")).preview.contains(QStringLiteral("open again, was ruled out")));
        QCOMPARE(bench.count<Cause>(), 4);
    }

    void wasOfASymptomThatIsNamed()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw take-up reel stops"));
        bench.put(QStringLiteral("think clutch felt glazed for take-up reel stops"));
        bench.put(QStringLiteral("saw left channel weak"));
        bench.put(QStringLiteral("think head worn"));
        // The one that the board has under the symptom named, and nothing new.
        QCOMPARE(bench.put(QStringLiteral("was clutch felt for reel stops")).preview, QStringLiteral("Cause confirmed: clutch felt glazed"));
        QCOMPARE(bench.count<Cause>(), 2);
        // Not thought of under that symptom: said before it is recorded.
        QCOMPARE(bench.put(QStringLiteral("was dirty switch for left channel weak")).preview,
                 QStringLiteral("Cause confirmed: dirty switch · for \"left channel weak\" · a new cause, confirmed"));
        QCOMPARE(bench.count<Cause>(), 3);
    }

    void checkBearsOn()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw left channel weak"));
        bench.put(QStringLiteral("think coupling capacitor C214 open 20%"));
        bench.put(QStringLiteral("think head lead broken"));
        bench.put(QStringLiteral("think playback head worn"));
        // A place that both name.
        QCOMPARE(bench.put(QStringLiteral("check ESR of C214 normal 10m")).preview,
                 QStringLiteral("Check came out normal: ESR of C214, 10 min · for \"left channel weak\" · bears on coupling capacitor "
                                "C214 open"));
        QCOMPARE(bench.count<Bearing>(), 1);
        QVERIFY(bench.last<Bearing>().check == bench.last<Check>().id);
        QVERIFY(bench.last<Bearing>().cause == bench.file.all<Cause>().first().id);
        // Named, before or after the figures; the outcome comes later and marks nothing twice.
        bench.put(QStringLiteral("check swap head leads 5m points to head lead and playback head"));
        QCOMPARE(bench.count<Bearing>(), 3);
        QCOMPARE(bench.last<Check>().text, QStringLiteral("swap head leads"));
        QCOMPARE(bench.last<Check>().minutes, std::optional(5));
        bench.put(QStringLiteral("check swap head leads points to head lead abnormal"));
        QCOMPARE(bench.count<Bearing>(), 3);
        QCOMPARE(bench.last<Check>().cameOut, CameOut::Abnormal);
        // What names no cause is said and marks nothing.
        QVERIFY(bench.put(QStringLiteral("check listen points to the weather"))
                    .preview.contains(QStringLiteral("no open cause reads so")));
        QCOMPARE(bench.count<Bearing>(), 3);
        QCOMPARE(bench.last<Check>().text, QStringLiteral("listen"));
        // A cause of another symptom is left alone.
        bench.put(QStringLiteral("saw hum"));
        bench.put(QStringLiteral("check ripple at C214"));
        QCOMPARE(bench.count<Bearing>(), 3);
    }

    void check()
    {
        JotBench bench;
        const Jotted todo = bench.put(QStringLiteral("check swap head leads 12m"));
        QCOMPARE(todo.preview, QStringLiteral("Check to do: swap head leads, 12 min"));
        QCOMPARE(todo.badge, QStringLiteral("check, not done"));
        QCOMPARE(bench.last<Check>().cameOut, CameOut::NotDone);
        QCOMPARE(*bench.last<Check>().minutes, 12);
        const Jotted done = bench.put(QStringLiteral("check swap head leads abnormal"));
        QCOMPARE(done.preview, QStringLiteral("Check came out abnormal: swap head leads, 12 min"));
        QCOMPARE(bench.count<Check>(), 1);
        QCOMPARE(bench.last<Check>().cameOut, CameOut::Abnormal);
        QCOMPARE(bench.last<Check>().doneAt, bench.now());
        // Once more is another check; the first outcome stays.
        bench.put(QStringLiteral("check swap head leads 3m normal"));
        QCOMPARE(bench.count<Check>(), 2);
        QCOMPARE(bench.last<Check>().cameOut, CameOut::Normal);
        QCOMPARE(*bench.last<Check>().minutes, 3);
        bench.put(QStringLiteral("check belt tension: unclear"));
        QCOMPARE(bench.last<Check>().text, QStringLiteral("belt tension"));
        QCOMPARE(bench.last<Check>().cameOut, CameOut::Unclear);
    }

    void steps_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<StepKind>("kind");
        QTest::addColumn<int>("minutes");
        QTest::addColumn<QString>("preview");
        const auto row = [](const char *line, StepKind kind, int minutes, const char *preview) {
            QTest::newRow(line) << QString::fromUtf8(line) << kind << minutes << QString::fromUtf8(preview);
        };
        row("did cleaned the source switch 20m", StepKind::Clean, 20, "Step: Cleaned the source switch, 20 min");
        row("did lubricated the clutch shaft 1h20", StepKind::Lubricate, 80, "Step: Lubricated the clutch shaft, 1 h 20 min");
        row("did oiled motor 1 h 20 m", StepKind::Lubricate, 80, "Step: Oiled motor, 1 h 20 min");
        row("did adjusted tape speed 90min", StepKind::Adjust, 90, "Step: Adjusted tape speed, 1 h 30 min");
        row("did set bias 1.5 h", StepKind::Adjust, 90, "Step: Set bias, 1 h 30 min");
        row("did re-soldered the head lead 12 min", StepKind::Solder, 12, "Step: Re-soldered the head lead, 12 min");
        row("did renewed C214", StepKind::Renew, -1, "Step: Renewed C214");
        row("did replaced the lamps 2 hours", StepKind::Renew, 120, "Step: Replaced the lamps, 2 h");
        row("did aligned azimuth 15 minutes", StepKind::Align, 15, "Step: Aligned azimuth, 15 min");
        row("did measured all rails 1h", StepKind::Investigate, 60, "Step: Measured all rails, 1 h");
        row("did cleaned and re-greased take-up clutch 1h20m", StepKind::Clean, 80,
            "Step: Cleaned and re-greased take-up clutch, 1 h 20 min");
        row("did a good look round", StepKind::Investigate, -1, "Step: A good look round");
        row("did nothing", StepKind::Other, -1, "Step: Nothing");
    }
    void steps()
    {
        QFETCH(QString, line);
        QFETCH(StepKind, kind);
        QFETCH(int, minutes);
        QFETCH(QString, preview);
        JotBench bench;
        QCOMPARE(bench.put(line).preview, preview);
        QCOMPARE(bench.last<Step>().kind, kind);
        QCOMPARE(bench.last<Step>().minutes.value_or(-1), minutes);
    }

    void stepOfASymptom()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw left channel weak"));
        const Jotted jotted = bench.put(QStringLiteral("did renewed C214 and R12 25m"));
        QVERIFY(bench.last<Step>().symptom == bench.last<Symptom>().id);
        QCOMPARE(bench.last<Step>().text, QStringLiteral("renewed C214 and R12"));
        QCOMPARE(bench.last<Step>().position, QStringLiteral("C214, R12"));
        QCOMPARE(jotted.change.sentence(), QStringLiteral("Renewed C214 and R12, 25 min"));
        QCOMPARE(jotted.preview, QStringLiteral("Step: Renewed C214 and R12, 25 min · for \"left channel weak\""));
    }

    void minutesWhileTheClockRuns()
    {
        JotBench bench;
        ClockSpan span = bench.maker().fresh<ClockSpan>();
        span.unit = bench.file.unit.id;
        span.startedAt = bench.now().addSecs(-3600);
        bench.file.all<ClockSpan>() << span;
        const QString line = QStringLiteral("did cleaned the source switch 20m");
        QCOMPARE(bench.put(line).preview, QStringLiteral("Step: Cleaned the source switch, 20 min · the clock runs: counted within it"));
        QCOMPARE(hoursOf(bench.file, bench.now()).minutes(), 61); // an hour and the minute that the line took; not 81
        QCOMPARE(bench.preview(QStringLiteral("did looked at it")).preview, QStringLiteral("Step: Looked at it")); // no minutes to count
        bench.file.all<ClockSpan>()[0].endedAt = bench.now();
        QCOMPARE(bench.put(line).preview, QStringLiteral("Step: Cleaned the source switch, 20 min"));
        QCOMPARE(hoursOf(bench.file, bench.now()).minutes(), 81);
    }

    void wordsWithoutMore()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("saw"));
        QCOMPARE(jotted.preview, QStringLiteral("Note: saw · go on with what was seen"));
        QCOMPARE(bench.last<Note>().text, QStringLiteral("saw"));
        QCOMPARE(bench.put(QStringLiteral("sawdust everywhere")).preview, QStringLiteral("Note: sawdust everywhere"));
        QCOMPARE(bench.put(QStringLiteral("the reel, as I saw it, wobbles")).what, QStringLiteral("note"));
    }
};

QTEST_GUILESS_MAIN(TestJotFaults)
#include "test_jot_faults.moc"
