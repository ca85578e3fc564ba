// Entries taken out of the log, each as it was told: what goes with them, what they go back to.
#include "model/sums/take_out.h"
#include "tests/log_desk.h"

#include <functional>

using namespace ts;
using namespace ts::testing;

class TestSumsTakeOut : public QObject {
    Q_OBJECT
private:
    static QList<Event> entries(LogDesk &log, EventKind what)
    {
        QList<Event> found;
        for (const Event &event : timeline(log.file(log.one), log.bench()))
            if (event.what == what)
                found << event;
        return found;
    }
    static void takeOut(LogDesk &log, EventKind what) { log.apply(takenOut({entries(log, what).last()}, log.file(log.one))); }

private Q_SLOTS:
    void theRecordGoes_data();
    void theRecordGoes();
    void whatBecameOfItIsTakenBack();
    void aReadingsOwnPointGoesWithIt();
    void aPhotoTakesItsPinsAndOthersLetGo();
    void theLastMoveOfAStage();
    void severalAtOnceAreOneChange();
    void refusals();
};

void TestSumsTakeOut::theRecordGoes_data()
{
    QTest::addColumn<QByteArray>("line");
    QTest::addColumn<EventKind>("what");
    const auto row = [](const char *line, EventKind what) { QTest::newRow(line) << QByteArray(line) << what; };
    row("CN2.4 = 11.92 V want 12 V 5%", EventKind::Reading);
    row("saw take-up reel stops", EventKind::Symptom);
    row("think clutch felt glazed 40%", EventKind::Cause);
    row("check felt under the lamp 5m", EventKind::Check);
    row("did cleaned the source switch 20m", EventKind::Step);
    row("need belt 78x4x0.6 2.50", EventKind::Need);
    row("fitted idler tyre 1.20", EventKind::Fitted);
    row("paid carriage 8.40", EventKind::Spend);
    row("off lid 5 screws M3x8 tray A1", EventKind::Teardown);
    row("next fit the belt", EventKind::LeftOff);
    row("proved plays both sides", EventKind::Proof);
    row("lid screws mismatched", EventKind::Note);
}

void TestSumsTakeOut::theRecordGoes()
{
    QFETCH(const QByteArray, line);
    QFETCH(const EventKind, what);
    LogDesk log;
    const QStringList before = log.everything();
    log.put(log.one, line.constData());
    const QStringList with = log.everything();
    const QString text = entries(log, what).last().text;
    takeOut(log, what);
    QCOMPARE(log.everything(), before);
    QCOMPARE(log.desk->journal(log.one)->first().sentence, QStringLiteral("Taken out: ") + text);
    wantOk(log.desk->undo());
    QCOMPARE(log.everything(), with);
}

void TestSumsTakeOut::whatBecameOfItIsTakenBack()
{
    struct Case {
        QList<const char *> first;
        const char *then;
        EventKind what;
    };
    const QList<Case> cases{{{"saw take-up reel stops"}, "cleared take-up reel stops", EventKind::SymptomCleared},
                            {{"think clutch felt"}, "ruled out clutch felt", EventKind::CauseRuledOut},
                            {{"think clutch felt"}, "was clutch felt", EventKind::CauseConfirmed},
                            {{"check swap the heads"}, "check swap the heads abnormal", EventKind::Check},
                            {{"off lid 5 screws"}, "back lid", EventKind::PutBack}};
    for (const Case &each : cases) {
        LogDesk log;
        for (const char *line : each.first)
            log.put(log.one, line);
        const QStringList before = log.everything();
        log.put(log.one, each.then);
        const QStringList then = log.everything();
        QVERIFY2(then != before, each.then);
        takeOut(log, each.what);
        QVERIFY2(log.everything() == before, each.then);
        wantOk(log.desk->undo());
        QVERIFY2(log.everything() == then, each.then);
    }
    // A part has more states behind it than the last: fitted goes back to here, ordered to needed.
    LogDesk log;
    log.put(log.one, "need belt 2.50");
    log.put(log.one, "ordered belt");
    log.put(log.one, "fitted belt");
    takeOut(log, EventKind::Fitted);
    QCOMPARE(log.file(log.one).all<Need>().last().state, NeedState::Here);
    takeOut(log, EventKind::Need);
    QCOMPARE(log.file(log.one).all<Need>().last().state, NeedState::Needed);
    takeOut(log, EventKind::Need);
    QVERIFY(log.file(log.one).all<Need>().isEmpty());
}

void TestSumsTakeOut::aReadingsOwnPointGoesWithIt()
{
    LogDesk log;
    log.put(log.one, "rail = 11.92 V want 12 V 5%");
    log.put(log.one, "rail = 5.1 V");
    takeOut(log, EventKind::Reading);
    QCOMPARE(log.file(log.one).all<TestPoint>().size(), 1); // one reading is still taken at it
    takeOut(log, EventKind::Reading);
    QVERIFY(log.file(log.one).all<TestPoint>().isEmpty());
    TestPoint prepared;
    prepared.name = QStringLiteral("bias");
    log.add(prepared, log.one);
    log.put(log.one, "bias = 19 mV");
    takeOut(log, EventKind::Reading);
    QCOMPARE(log.file(log.one).all<TestPoint>().size(), 1);
}

void TestSumsTakeOut::aPhotoTakesItsPinsAndOthersLetGo()
{
    LogDesk log;
    Photo photo;
    photo.sha256 = QString(64, u'b');
    photo = log.add(photo, log.one);
    TeardownItem item;
    item.what = QStringLiteral("lid");
    item.photo = photo.id;
    item = log.add(item, log.one);
    PhotoPin pin;
    pin.photo = photo.id;
    pin.item = item.id;
    log.add(pin, log.one);
    takeOut(log, EventKind::Photo);
    QVERIFY(log.file(log.one).all<Photo>().isEmpty() && log.file(log.one).all<PhotoPin>().isEmpty());
    QVERIFY(log.file(log.one).find(item.id)->photo.isNull());
    wantOk(log.desk->undo());
    QCOMPARE(log.file(log.one).find(item.id)->photo, photo.id);
    QCOMPARE(log.file(log.one).all<PhotoPin>().size(), 1);
}

void TestSumsTakeOut::theLastMoveOfAStage()
{
    LogDesk log;
    const Unit start = log.file(log.one).unit;
    log.put(log.one, "waiting belt until 28 Nov");
    QCOMPARE(log.file(log.one).unit.stage, Stage::Held);
    takeOut(log, EventKind::Stage);
    const Unit back = log.file(log.one).unit;
    QCOMPARE(back.stage, Stage::Bench);
    QCOMPARE(back.stageSince, start.at);
    QVERIFY(back.heldBecause.isEmpty() && !back.heldUntil.isValid());
    QVERIFY(log.file(log.one).all<StageMove>().isEmpty());
}

void TestSumsTakeOut::severalAtOnceAreOneChange()
{
    LogDesk log;
    const QStringList before = log.everything();
    log.put(log.one, "saw take-up reel stops");
    log.put(log.one, "cleared take-up reel stops");
    log.put(log.one, "paid carriage 8.40");
    QList<Event> chosen = timeline(log.file(log.one), log.bench());
    chosen.removeIf([](const Event &event) { return event.what == EventKind::TakenIn; });
    QCOMPARE(chosen.size(), 3);
    log.apply(takenOut(chosen, log.file(log.one)));
    QCOMPARE(log.everything(), before);
    QCOMPARE(log.desk->journal(log.one)->first().sentence, QStringLiteral("Taken out: 3 entries"));
    wantOk(log.desk->undo());
    QCOMPARE(timeline(log.file(log.one), log.bench()).size(), 4);
}

void TestSumsTakeOut::refusals()
{
    LogDesk log;
    log.put(log.one, "waiting belt until 28 Nov");
    log.put(log.one, "lid screws mismatched");
    Paper paper;
    paper.madeAt = log.desk.clock.now();
    paper.sha256 = QString(64, u'c');
    paper.format = QStringLiteral("pdf");
    log.add(paper, log.one);
    StageMove again;
    again.fromStage = Stage::Held;
    again.toStage = Stage::Bench;
    log.desk.clock.advance(60);
    log.add(again, log.one);
    const UnitFile file = log.file(log.one);
    const auto refused = [&](EventKind what) { return refusal(takenOut({entries(log, what).first()}, file)); };
    QVERIFY(refused(EventKind::TakenIn).contains(QLatin1String("stays taken in")));
    QVERIFY(refused(EventKind::Paper).contains(QLatin1String("stays in the record")));
    QVERIFY(refused(EventKind::Stage).contains(QLatin1String("only the last move")));
    const QList<Event> note = entries(log, EventKind::Note);
    log.apply(takenOut(note, file));
    QVERIFY(refusal(takenOut(note, log.file(log.one))).contains(QLatin1String("there no longer")));
}

QTEST_GUILESS_MAIN(TestSumsTakeOut)
#include "test_sums_take_out.moc"
