// Records written down on the wrong unit and moved to another: what comes along, what is let go, and both histories.
#include "model/records/rehome.h"
#include "tests/log_desk.h"

#include <QSignalSpy>

using namespace ts;
using namespace ts::testing;

namespace {

/// The workbook's own check of itself: every reference leads somewhere, the search words are those of the records.
bool wantedSound(LogDesk &log)
{
    const auto found = log.desk->verify();
    return found && found->isEmpty();
}

template <class R>
RecordKey key(const R &record)
{
    return {&description<R>(), record.id.value};
}

} // namespace

class TestStoreRehome : public QObject {
    Q_OBJECT
private:
    static void move(LogDesk &log, const QList<RecordKey> &keys)
    {
        Maker maker = log.desk->maker();
        log.apply(rehomed(keys, log.file(log.one), log.file(log.two), maker));
    }

private Q_SLOTS:
    void aReadingBringsThePointItMade();
    void aReadingTakesThePointThatIsThere();
    void aPointWithOtherReadingsIsCopied();
    void aSymptomBringsItsCausesAndChecks();
    void whatStaysLetsGo();
    void aPhotoBringsItsPins();
    void aSoakBringsItsReadings();
    void leftOffIsWrittenOver();
    void orderGoesOnBehind();
    void bothHistoriesHaveTheLineAndUndoTakesItBack();
    void refusals();
};

void TestStoreRehome::aReadingBringsThePointItMade()
{
    LogDesk log;
    log.put(log.one, "CN2.4 = 11.92 V want 12 V 5%");
    const Reading before = log.file(log.one).all<Reading>().last();
    move(log, {key(before)});
    QVERIFY(log.file(log.one).all<Reading>().isEmpty());
    QVERIFY(log.file(log.one).all<TestPoint>().isEmpty());
    const UnitFile two = log.file(log.two);
    QCOMPARE(two.all<Reading>().size(), 1);
    QCOMPARE(two.all<Reading>().last().id, before.id); // the same record, not a copy
    QCOMPARE(two.all<Reading>().last().value, before.value);
    QCOMPARE(two.all<TestPoint>().size(), 1);
    QCOMPARE(two.all<Reading>().last().point, two.all<TestPoint>().last().id);
    // The next reading there is held against the same limit.
    log.put(log.two, "cn2.4 = 13 V");
    QCOMPARE(log.file(log.two).all<Reading>().last().wanted.text(), QStringLiteral("12 V 5%"));
}

void TestStoreRehome::aReadingTakesThePointThatIsThere()
{
    LogDesk log;
    log.put(log.one, "rail = 11.92 V want 12 V 5%");
    log.put(log.two, "RAIL = 11.5 V");
    TestPoint bare;
    bare.name = QStringLiteral("Rail");
    bare.position = 4;
    bare = log.add(bare, log.two);
    move(log, {key(log.file(log.one).all<Reading>().last())});
    const UnitFile two = log.file(log.two);
    QCOMPARE(two.all<TestPoint>().size(), 1);
    QCOMPARE(two.all<TestPoint>().last().wanted.text(), QStringLiteral("12 V 5%")); // it had none of its own
    QCOMPARE(two.all<Reading>().size(), 2);
    bool found = false;
    for (const Reading &reading : two.all<Reading>())
        found |= reading.point == bare.id && reading.value->text() == QStringLiteral("11.92 V");
    QVERIFY(found);
}

void TestStoreRehome::aPointWithOtherReadingsIsCopied()
{
    LogDesk log;
    log.put(log.one, "rail = 11.92 V want 12 V 5%");
    log.put(log.one, "rail = 5.1 V");
    move(log, {key(log.file(log.one).all<Reading>().last())});
    const UnitFile one = log.file(log.one), two = log.file(log.two);
    QCOMPARE(one.all<TestPoint>().size(), 1);
    QCOMPARE(one.all<Reading>().size(), 1);
    QCOMPARE(two.all<TestPoint>().size(), 1);
    QVERIFY(two.all<TestPoint>().last().id != one.all<TestPoint>().last().id);
    QCOMPARE(two.all<Reading>().last().point, two.all<TestPoint>().last().id);
    QCOMPARE(two.all<TestPoint>().last().wanted, one.all<TestPoint>().last().wanted);
    // A point that was prepared by itself stays with the unit it was prepared for.
    TestPoint prepared;
    prepared.name = QStringLiteral("bias");
    prepared.wanted = *Limit::parse(u"18..22 mV");
    log.add(prepared, log.one);
    log.put(log.one, "bias = 19 mV");
    move(log, {key(log.file(log.one).all<Reading>().last())});
    QCOMPARE(log.file(log.one).all<TestPoint>().size(), 2);
    QCOMPARE(log.file(log.two).all<TestPoint>().size(), 2);
}

void TestStoreRehome::aSymptomBringsItsCausesAndChecks()
{
    LogDesk log;
    log.put(log.one, "saw take-up reel stops after a few seconds");
    log.put(log.one, "think clutch felt glazed 40%");
    log.put(log.one, "check felt under the lamp abnormal");
    const UnitFile before = log.file(log.one);
    QCOMPARE(before.all<Check>().size(), 1);
    Bearing bearing;
    bearing.check = before.all<Check>().last().id;
    bearing.cause = before.all<Cause>().last().id;
    log.add(bearing, log.one);
    move(log, {key(before.all<Symptom>().last())});
    const UnitFile one = log.file(log.one), two = log.file(log.two);
    QVERIFY(one.all<Symptom>().isEmpty() && one.all<Cause>().isEmpty() && one.all<Check>().isEmpty() && one.all<Bearing>().isEmpty());
    QCOMPARE(two.all<Cause>().last().symptom, two.all<Symptom>().last().id);
    QCOMPARE(two.all<Check>().last().symptom, two.all<Symptom>().last().id);
    QCOMPARE(two.all<Bearing>().size(), 1);
}

void TestStoreRehome::whatStaysLetsGo()
{
    LogDesk log;
    log.put(log.one, "saw left channel weak");
    log.put(log.one, "think dry joint 60%");
    log.put(log.one, "check reflow the joint normal");
    UnitFile before = log.file(log.one);
    Bearing bearing;
    bearing.check = before.all<Check>().last().id;
    bearing.cause = before.all<Cause>().last().id;
    log.add(bearing, log.one);
    move(log, {key(before.all<Cause>().last())}); // the cause alone: its symptom and its check stay
    QVERIFY(log.file(log.two).all<Cause>().last().symptom.isNull());
    QVERIFY(log.file(log.one).all<Bearing>().isEmpty() && log.file(log.two).all<Bearing>().isEmpty());
    QCOMPARE(log.file(log.one).all<Check>().size(), 1);

    Step step;
    step.text = QStringLiteral("reflowed the joint");
    step.symptom = before.all<Symptom>().last().id;
    step = log.add(step, log.one);
    move(log, {key(before.all<Symptom>().last())});
    QVERIFY(log.file(log.one).find(step.id)->symptom.isNull());
    QVERIFY(wantedSound(log));
}

void TestStoreRehome::aPhotoBringsItsPins()
{
    LogDesk log;
    Photo photo;
    photo.sha256 = QString(64, u'a');
    photo.position = 1;
    log.add(photo, log.two);
    photo = log.add(photo, log.one);
    log.put(log.one, "off lid 5 screws M3x8 tray A1");
    TeardownItem item = log.file(log.one).all<TeardownItem>().last();
    PhotoPin pin;
    pin.photo = photo.id;
    pin.item = item.id;
    pin = log.add(pin, log.one);
    move(log, {key(photo)});
    const UnitFile two = log.file(log.two);
    QCOMPARE(two.all<PhotoPin>().size(), 1);
    QCOMPARE(two.all<PhotoPin>().last().photo, photo.id);
    QVERIFY(two.all<PhotoPin>().last().item.isNull()); // the lid is still the first unit's
    QCOMPARE(two.find(photo.id)->position, 2);
    QVERIFY(log.file(log.one).all<PhotoPin>().isEmpty());
}

void TestStoreRehome::aSoakBringsItsReadings()
{
    LogDesk log;
    Soak soak;
    soak.name = QStringLiteral("rail warm");
    soak.startedAt = log.desk.clock.now();
    soak = log.add(soak, log.one);
    for (const char *value : {"12.01 V", "12.02 V"}) {
        Reading reading;
        reading.name = QStringLiteral("rail");
        reading.value = *Quantity::parse(QString::fromLatin1(value));
        reading.soak = soak.id;
        log.add(reading, log.one);
    }
    move(log, {key(soak)});
    const UnitFile two = log.file(log.two);
    QCOMPARE(two.all<Reading>().size(), 2);
    QCOMPARE(two.all<Reading>().first().soak, soak.id);
    QVERIFY(log.file(log.one).all<Reading>().isEmpty());
}

void TestStoreRehome::leftOffIsWrittenOver()
{
    LogDesk log;
    log.put(log.two, "next fit the belt");
    log.put(log.one, "do not power primary exposed");
    move(log, {key(log.file(log.one).all<LeftOff>().last())});
    QVERIFY(log.file(log.one).all<LeftOff>().isEmpty());
    QCOMPARE(log.file(log.two).all<LeftOff>().size(), 1);
    QCOMPARE(log.file(log.two).all<LeftOff>().last().next, QStringLiteral("fit the belt"));
    QCOMPARE(log.file(log.two).all<LeftOff>().last().doNotPower, QStringLiteral("primary exposed"));
}

void TestStoreRehome::orderGoesOnBehind()
{
    LogDesk log;
    for (const char *line : {"off foot plate 4 screws", "off lid 5 screws"})
        log.put(log.two, line);
    for (const char *line : {"off knob", "off front 3 screws"})
        log.put(log.one, line);
    const UnitFile one = log.file(log.one);
    move(log, {key(one.all<TeardownItem>().at(0)), key(one.all<TeardownItem>().at(1))});
    QList<std::pair<int, QString>> order;
    const UnitFile two = log.file(log.two);
    for (const TeardownItem &item : two.all<TeardownItem>())
        order << std::pair(item.position, item.what);
    std::sort(order.begin(), order.end());
    QStringList names;
    QSet<int> positions;
    for (const auto &[position, what] : order) {
        names << what;
        positions << position;
    }
    QCOMPARE(names, (QStringList{QStringLiteral("foot plate"), QStringLiteral("lid"), QStringLiteral("knob"), QStringLiteral("front")}));
    QCOMPARE(positions.size(), 4);
}

void TestStoreRehome::bothHistoriesHaveTheLineAndUndoTakesItBack()
{
    LogDesk log;
    log.put(log.one, "saw left channel weak");
    log.put(log.one, "out L = 96 mV want 387 mV 2dB");
    log.put(log.one, "did cleaned the source switch 20m");
    log.put(log.one, "paid carriage 8.40");
    log.put(log.one, "need belt 78x4x0.6 2.50");
    const QStringList before = log.everything();
    const UnitFile one = log.file(log.one);
    QSignalSpy told(log.desk.desk.get(), &Desk::recorded);
    move(log, {key(one.all<Symptom>().last()), key(one.all<Reading>().last()), key(one.all<Step>().last()), key(one.all<Spend>().last()),
               key(one.all<Need>().last())});
    QVERIFY(log.everything() != before);
    const auto tells = [&](const Id<Unit> &unit) {
        bool found = false;
        for (const auto &each : told)
            found |= each.at(2).toUuid() == unit.value;
        told.clear();
        return found;
    };
    QCOMPARE(log.desk->journal(log.one)->first().sentence, QStringLiteral("Moved from 0001 to 0002: 5 entries"));
    QCOMPARE(log.desk->journal(log.two)->first().sentence, QStringLiteral("Moved from 0001 to 0002: 5 entries"));
    QVERIFY(wantedSound(log));
    QVERIFY(tells(log.one)); // whoever looks at either unit is told
    wantOk(log.desk->undo());
    QCOMPARE(log.everything(), before);
    QVERIFY(tells(log.two));
    wantOk(log.desk->redo());
    QCOMPARE(log.file(log.two).all<Spend>().size(), 1);
    QVERIFY(wantedSound(log));
}

void TestStoreRehome::refusals()
{
    LogDesk log;
    log.put(log.one, "waiting belt until 28 Nov");
    log.put(log.one, "lid screws mismatched");
    const QStringList before = log.everything();
    const UnitFile one = log.file(log.one), two = log.file(log.two);
    Maker maker = log.desk->maker();
    const RecordKey note = key(one.all<Note>().last());
    QVERIFY(refusal(rehomed({}, one, two, maker)).contains(QLatin1String("nothing was chosen")));
    QVERIFY(refusal(rehomed({note}, one, one, maker)).contains(QLatin1String("0001 is the unit it stands on")));
    QVERIFY(refusal(rehomed({note}, two, one, maker)).contains(QLatin1String("no longer on 0002")));
    QVERIFY(refusal(rehomed({note, key(one.all<StageMove>().last())}, one, two, maker)).contains(QLatin1String("stage move stays with its unit")));
    QVERIFY(refusal(rehomed({key(one.unit)}, one, two, maker)).contains(QLatin1String("unit stays with its unit")));
    QCOMPARE(log.everything(), before);
}

QTEST_GUILESS_MAIN(TestStoreRehome)
#include "test_store_rehome.moc"
