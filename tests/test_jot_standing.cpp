#include "jot_bench.h"

using namespace ts;
using ts::testing::JotBench;

/// Left off, waiting, proofs and flaws. The lines and what they must give are those of the product's own table of jotting.
class TestJotStanding : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void leftOff()
    {
        JotBench bench;
        const Jotted next = bench.put(QStringLiteral("next fit the belt"));
        QCOMPARE(next.preview, QStringLiteral("Next: fit the belt"));
        QCOMPARE(next.what, QStringLiteral("left off"));
        QCOMPARE(bench.last<LeftOff>().next, QStringLiteral("fit the belt"));
        const Jotted flag = bench.put(QStringLiteral("do not power primary exposed"));
        QCOMPARE(flag.preview, QStringLiteral("Do not power: primary exposed"));
        QCOMPARE(flag.change.sentence(), QStringLiteral("Do not power: primary exposed"));
        QCOMPARE(bench.count<LeftOff>(), 1);
        QCOMPARE(bench.last<LeftOff>().next, QStringLiteral("fit the belt"));
        QCOMPARE(bench.last<LeftOff>().doNotPower, QStringLiteral("primary exposed"));
        QCOMPARE(bench.last<LeftOff>().at, bench.now());
        // More words are no plain leave to power it.
        QCOMPARE(bench.put(QStringLiteral("safe to power through the lamp only")).what, QStringLiteral("note"));
        QCOMPARE(bench.last<LeftOff>().doNotPower, QStringLiteral("primary exposed"));
        const Jotted safe = bench.put(QStringLiteral("Safe to power"));
        QCOMPARE(safe.preview, QStringLiteral("Safe to power: takes away the flag \"primary exposed\""));
        QCOMPARE(safe.change.sentence(), QStringLiteral("Safe to power"));
        QCOMPARE(bench.last<LeftOff>().doNotPower, QString());
        QCOMPARE(bench.last<LeftOff>().next, QStringLiteral("fit the belt"));
        QVERIFY(bench.put(QStringLiteral("safe to power")).change.isEmpty());
    }

    void flagWithoutReason()
    {
        JotBench bench;
        bench.put(QStringLiteral("do not power"));
        QVERIFY(!bench.last<LeftOff>().doNotPower.isEmpty());
    }

    void waiting()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("waiting belt until 28 Nov"));
        QCOMPARE(jotted.preview, QStringLiteral("Held: waiting for belt until 28 Nov"));
        QCOMPARE(jotted.badge, QStringLiteral("stage, held"));
        QCOMPARE(bench.file.unit.stage, Stage::Held);
        QCOMPARE(bench.file.unit.heldBecause, QStringLiteral("belt"));
        QCOMPARE(bench.file.unit.heldUntil, QDate(2026, 11, 28));
        QCOMPARE(bench.file.unit.stageSince, bench.now());
        const StageMove move = bench.last<StageMove>();
        QCOMPARE(move.fromStage, Stage::Bench);
        QCOMPARE(move.toStage, Stage::Held);
        QCOMPARE(move.because, QStringLiteral("belt"));
        QCOMPARE(move.until, QDate(2026, 11, 28));
        // Held already: another reason or day is no further move.
        const QDateTime since = bench.file.unit.stageSince;
        bench.put(QStringLiteral("waiting for the stylus"));
        QCOMPARE(bench.file.unit.heldBecause, QStringLiteral("the stylus"));
        QVERIFY(!bench.file.unit.heldUntil.isValid());
        QCOMPARE(bench.file.unit.stageSince, since);
        QCOMPARE(bench.count<StageMove>(), 1);
        QVERIFY(bench.put(QStringLiteral("waiting the stylus")).change.isEmpty());
    }

    void days_data()
    {
        QTest::addColumn<QString>("written");
        QTest::addColumn<QDate>("day");
        // Today is Wednesday 25 November 2026.
        const auto row = [](const char *written, QDate day) { QTest::newRow(written) << QString::fromLatin1(written) << day; };
        row("28 Nov", QDate(2026, 11, 28));
        row("28 November 2026", QDate(2026, 11, 28));
        row("28th november", QDate(2026, 11, 28));
        row("Nov 28", QDate(2026, 11, 28));
        row("November 28, 2026", QDate(2026, 11, 28));
        row("2026-11-28", QDate(2026, 11, 28));
        row("28.11.", QDate(2026, 11, 28));
        row("28.11.2026", QDate(2026, 11, 28));
        row("25 Nov", QDate(2026, 11, 25));
        row("24 Nov", QDate(2027, 11, 24));
        row("3 Jan", QDate(2027, 1, 3));
        row("29 Feb", QDate(2028, 2, 29));
        row("tomorrow", QDate(2026, 11, 26));
        row("Friday", QDate(2026, 11, 27));
        row("30 Feb", QDate());
        row("the post comes", QDate());
        row("28", QDate());
        row("2026-13-01", QDate());
    }
    void days()
    {
        QFETCH(QString, written);
        QFETCH(QDate, day);
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("waiting belt until ") + written);
        QCOMPARE(bench.file.unit.stage, Stage::Held);
        QCOMPARE(bench.file.unit.heldUntil, day);
        QCOMPARE(bench.file.unit.heldBecause, day.isValid() ? QStringLiteral("belt") : QStringLiteral("belt until ") + written);
        QCOMPARE(jotted.preview.contains(QStringLiteral("is no day")), !day.isValid());
    }

    void closedOrPast()
    {
        JotBench bench;
        QCOMPARE(bench.preview(QStringLiteral("waiting belt until 2026-11-01")).question,
                 QStringLiteral("1 Nov is past. Record it all the same?"));
        bench.file.unit.stage = Stage::Closed;
        bench.file.unit.outcome = Outcome::Sold;
        QCOMPARE(bench.put(QStringLiteral("waiting belt")).question,
                 QStringLiteral("The unit is closed. Open it again as held?"));
        QVERIFY(!bench.file.unit.outcome);
    }

    void proofs_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<ProofOutcome>("outcome");
        QTest::addColumn<ProofKind>("kind");
        QTest::addColumn<QString>("text");
        const auto row = [](const char *line, ProofOutcome outcome, ProofKind kind, const char *text) {
            QTest::newRow(line) << QString::fromUtf8(line) << outcome << kind << QString::fromUtf8(text);
        };
        row("proved plays both sides to the end", ProofOutcome::Passed, ProofKind::Function, "plays both sides to the end");
        row("failed auto stop", ProofOutcome::Failed, ProofKind::Function, "auto stop");
        row("not tested recording", ProofOutcome::NotTested, ProofKind::Function, "recording");
        row("not applicable earth continuity", ProofOutcome::NotApplicable, ProofKind::ElectricalSafety, "earth continuity");
        row("proved insulation resistance: 200 MΩ", ProofOutcome::Passed, ProofKind::ElectricalSafety, "insulation resistance");
        row("proved touch current", ProofOutcome::Passed, ProofKind::ElectricalSafety, "touch current");
        row("proved touch buttons", ProofOutcome::Passed, ProofKind::Function, "touch buttons");
        row("proved leakage", ProofOutcome::Passed, ProofKind::ElectricalSafety, "leakage");
        row("proved no scratches on the lid", ProofOutcome::Passed, ProofKind::Cosmetic, "no scratches on the lid");
        row("proved case finish even", ProofOutcome::Passed, ProofKind::Cosmetic, "case finish even");
    }
    void proofs()
    {
        QFETCH(QString, line);
        QFETCH(ProofOutcome, outcome);
        QFETCH(ProofKind, kind);
        QFETCH(QString, text);
        JotBench bench;
        const Jotted jotted = bench.put(line);
        QCOMPARE(jotted.what, QStringLiteral("proof"));
        const Proof proof = bench.last<Proof>();
        QCOMPARE(proof.cameOut, outcome);
        QCOMPARE(proof.kind, kind);
        QCOMPARE(proof.text, text);
        const bool done = outcome == ProofOutcome::Passed || outcome == ProofOutcome::Failed;
        QCOMPARE(proof.doneOn, done ? QDate(2026, 11, 25) : QDate());
        QCOMPARE(proof.initials, done ? QStringLiteral("R. M.") : QString());
    }

    void provedLater()
    {
        JotBench bench;
        bench.put(QStringLiteral("not tested recording"));
        const Jotted jotted = bench.put(QStringLiteral("proved Recording: level even"));
        QCOMPARE(jotted.preview, QStringLiteral("Proof passed: recording, level even · function"));
        QCOMPARE(bench.count<Proof>(), 1);
        QCOMPARE(bench.last<Proof>().result, QStringLiteral("level even"));
        bench.put(QStringLiteral("failed recording"));
        QCOMPARE(bench.count<Proof>(), 2); // what was passed stays on record
        QCOMPARE(bench.put(QStringLiteral("failed to start twice")).what, QStringLiteral("note"));
    }

    void flawAndNote()
    {
        JotBench bench;
        QCOMPARE(bench.put(QStringLiteral("flaw deep scratch on the left cheek")).preview,
                 QStringLiteral("Flaw: deep scratch on the left cheek"));
        QCOMPARE(bench.last<Note>().kind, NoteKind::Flaw);
        QCOMPARE(bench.last<Note>().text, QStringLiteral("deep scratch on the left cheek"));
        const Jotted note = bench.put(QStringLiteral("belt smells of tar"));
        QCOMPARE(note.what, QStringLiteral("note"));
        QCOMPARE(note.badge, QStringLiteral("note"));
        QCOMPARE(note.preview, QStringLiteral("Note: belt smells of tar"));
        QCOMPARE(bench.last<Note>().kind, NoteKind::Note);
    }
};

QTEST_GUILESS_MAIN(TestJotStanding)
#include "test_jot_standing.moc"
