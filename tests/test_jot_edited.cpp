// Records of a unit set right by their rows, as the log's editor does it: what follows, what is refused.
#include "model/jot/edited_record.h"
#include "model/records/unit_rows.h"
#include "tests/log_desk.h"

using namespace ts;
using namespace ts::testing;

class TestJotEdited : public QObject {
    Q_OBJECT
private:
    template <class R>
    static R last(LogDesk &log)
    {
        return log.file(log.one).all<R>().last();
    }
    /// Sets one column of the newest record of a kind.
    template <class R>
    static Expected<Change> set(LogDesk &log, const char *column, const QVariant &value)
    {
        const Row before = description<R>().toRow(last<R>(log));
        Row after = before;
        after[description<R>().column(QString::fromLatin1(column))] = value;
        Maker maker = log.desk->maker();
        log.desk.clock.advance(60);
        return editedRecord(description<R>(), before, after, log.file(log.one), log.bench(), maker);
    }

private Q_SLOTS:
    void textsMinutesAndTimes();
    void statesAreSinceNow();
    void theLastMoveIsTheUnitsToo();
    void theSymptomItIsFor();
    void refusals();
};

void TestJotEdited::textsMinutesAndTimes()
{
    LogDesk log;
    log.put(log.one, "did cleaned the sorce switch 20m");
    log.apply(set<Step>(log, "text", QStringLiteral("cleaned the source switch")));
    log.apply(set<Step>(log, "minutes", 25LL));
    log.apply(set<Step>(log, "at", QStringLiteral("2026-11-24T20:15:00.000Z")));
    QCOMPARE(last<Step>(log).text, QStringLiteral("cleaned the source switch"));
    QCOMPARE(last<Step>(log).minutes, 25);
    QCOMPARE(last<Step>(log).at, QDateTime({2026, 11, 24}, {20, 15}, Qt::UTC));
    QCOMPARE(log.desk->journal(log.one)->first().sentence, QStringLiteral("Corrected step: cleaned the source switch"));
    QVERIFY(set<Step>(log, "minutes", 25LL)->isEmpty());
    log.put(log.one, "paid carriage 8.40");
    log.apply(set<Spend>(log, "amount", 840LL + 10));
    QCOMPARE(last<Spend>(log).amount->decimal(), QStringLiteral("8.50"));
    for (int i = 0; i < 4; ++i)
        wantOk(log.desk->undo());
    QCOMPARE(last<Step>(log).text, QStringLiteral("cleaned the source switch"));
}

void TestJotEdited::statesAreSinceNow()
{
    LogDesk log;
    log.put(log.one, "need belt 78x4x0.6 2.50");
    log.apply(set<Need>(log, "state", QStringLiteral("here")));
    QCOMPARE(last<Need>(log).stateSince, log.desk.clock.now());
    log.apply(set<Need>(log, "state", QStringLiteral("needed")));
    QVERIFY(!last<Need>(log).stateSince.isValid());
    log.put(log.one, "check felt under the lamp");
    log.apply(set<Check>(log, "came_out", QStringLiteral("abnormal")));
    QCOMPARE(last<Check>(log).doneAt, log.desk.clock.now());
    log.apply(set<Check>(log, "came_out", QStringLiteral("not_done")));
    QVERIFY(!last<Check>(log).doneAt.isValid());
}

void TestJotEdited::theLastMoveIsTheUnitsToo()
{
    LogDesk log;
    log.put(log.one, "waiting belt until 28 Nov");
    log.apply(set<StageMove>(log, "because", QStringLiteral("idler tyre")));
    QCOMPARE(log.file(log.one).unit.heldBecause, QStringLiteral("idler tyre"));
    QCOMPARE(log.file(log.one).unit.heldUntil, QDate(2026, 11, 28));
}

void TestJotEdited::theSymptomItIsFor()
{
    LogDesk log;
    log.put(log.one, "saw take-up reel stops");
    log.put(log.one, "saw left channel weak");
    const auto symptoms = log.file(log.one).all<Symptom>();
    const Id<Symptom> reel = symptoms.at(0).id;
    const Id<Symptom> channel = symptoms.at(1).id;
    const auto all = [&](auto expected) {
        return last<Step>(log).symptom == expected && last<Cause>(log).symptom == expected && last<Check>(log).symptom == expected &&
               last<Need>(log).symptom == expected;
    };
    for (const char *line : {"did cleaned the clutch for reel stops 20m", "think clutch felt glazed for reel stops", "check clutch torque for reel stops 5m",
                             "need clutch felt for reel stops 2.50"})
        log.put(log.one, line);
    QVERIFY(all(reel));
    const auto setAll = [&](const QVariant &value) {
        log.apply(set<Step>(log, "symptom", value));
        log.apply(set<Cause>(log, "symptom", value));
        log.apply(set<Check>(log, "symptom", value));
        log.apply(set<Need>(log, "symptom", value));
    };
    setAll(channel.text());
    QVERIFY(all(channel));
    setAll(QVariant()); // by itself
    QVERIFY(all(Id<Symptom>()));
    log.put(log.two, "saw hum");
    const QString other = log.file(log.two).all<Symptom>().last().id.text();
    QVERIFY(refusal(set<Step>(log, "symptom", other)).contains(QLatin1String("no symptom of this unit")));
    QVERIFY(all(Id<Symptom>()));
}

void TestJotEdited::refusals()
{
    LogDesk log;
    log.put(log.one, "lid screws mismatched");
    ClockSpan span;
    span.startedAt = log.desk.clock.now();
    span.endedAt = span.startedAt.addSecs(600);
    log.add(span, log.one);
    const QStringList before = log.everything();
    QVERIFY(!refusal(set<Note>(log, "text", QString(QLatin1String("")))).isEmpty());
    QVERIFY(!refusal(set<Note>(log, "kind", QStringLiteral("gossip"))).isEmpty());
    QVERIFY(refusal(set<ClockSpan>(log, "ended_at", QStringLiteral("2026-11-20T10:00:00.000Z"))).contains(QLatin1String("end before it begins")));
    QCOMPARE(log.everything(), before);
}

QTEST_GUILESS_MAIN(TestJotEdited)
#include "test_jot_edited.moc"
