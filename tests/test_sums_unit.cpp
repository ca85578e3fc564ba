#include "model/sums/category_facts.h"
#include "model/sums/hours.h"
#include "model/sums/standing.h"
#include "model/sums/timeline.h"
#include "tests/testing.h"

using namespace ts;

namespace {

QDateTime at(int hour, int minute, int second = 0)
{
    return QDateTime(QDate(2026, 11, 25), QTime(hour, minute, second), Qt::UTC);
}

/// Ids that ascend, as the program's own do.
template <class R>
Id<R> nextId()
{
    static quint16 count = 0;
    return Id<R>{QUuid(0x019aa000u, ++count, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1)};
}

template <class R>
R &added(UnitFile &file, const QDateTime &when = at(10, 0))
{
    R record;
    record.id = nextId<R>();
    record.at = when;
    file.all<R>() << record;
    return file.all<R>().last();
}

void span(UnitFile &file, const QDateTime &from, const QDateTime &to, std::optional<int> counted = {})
{
    auto &record = added<ClockSpan>(file, from);
    record.startedAt = from;
    record.endedAt = to;
    record.countedMinutes = counted;
}

void step(UnitFile &file, const QDateTime &when, std::optional<int> minutes)
{
    auto &record = added<Step>(file, when);
    record.text = QStringLiteral("cleaned");
    record.minutes = minutes;
}

void reading(UnitFile &file, const char *name, const char *value, const char *wanted, Phase phase, const QDateTime &when = at(11, 0))
{
    auto &record = added<Reading>(file, when);
    record.name = QString::fromUtf8(name);
    record.value = *Quantity::parse(QString::fromUtf8(value));
    record.wanted = *Limit::parse(QString::fromUtf8(wanted));
    record.phase = phase;
}

void off(UnitFile &file, const char *what, const char *fasteners, std::optional<int> count, int position)
{
    auto &record = added<TeardownItem>(file);
    record.what = QString::fromUtf8(what);
    record.fasteners = QString::fromUtf8(fasteners);
    record.fastenerCount = count;
    record.position = position;
    record.keptIn = QStringLiteral("tray A1");
}

QString lines(const QStringList &all)
{
    return all.join(QLatin1Char('\n'));
}

} // namespace

class TestSumsUnit : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void hoursOfSpans();
    void hoursOfSteps();
    void hoursOverlapping();
    void durations();
    void toldInOrder();
    void toldInstants();
    void toldReadings();
    void stands();
    void fasteners_data();
    void fasteners();
    void latest();
    void cautionsByCategory();
    void cautionsDefer();
    void mains();
    void notDoneOfNothing();
    void notDoneWhenDone();
    void notDoneCapacitors();
    void notDoneEveryCategory();
};

// The expected minutes are by hand from the rule in hours.h, which is the project's own.
void TestSumsUnit::hoursOfSpans()
{
    UnitFile file;
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 0);
    span(file, at(9, 0), at(9, 47, 12));
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 47);
    span(file, at(10, 0), at(10, 0, 18)); // 47 m 12 s + 18 s: half a minute goes up, once for the sum
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 48);
    span(file, at(11, 0), at(11, 30), 10); // corrected to 10
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 58);
    span(file, at(11, 45), {});
    const Hours hours = hoursOf(file, at(12, 0));
    QCOMPARE(hours.minutes(), 73);
    QVERIFY(hours.running);
    QCOMPARE(hours.runningSince, at(11, 45));
    file.all<ClockSpan>().last().removed = true;
    QVERIFY(!hoursOf(file, at(12, 0)).running);
    span(file, at(9, 0), at(8, 0)); // ends before it starts
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 58);
    span(file, at(13, 0), {}); // starts after now: another computer's clock is ahead
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 58);
}

void TestSumsUnit::hoursOfSteps()
{
    UnitFile file;
    span(file, at(9, 0), at(9, 30));
    step(file, at(9, 10), 20);  // while the clock ran
    step(file, at(9, 30), 20);  // at its very end: still in it
    step(file, at(9, 31), 15);  // after it
    step(file, at(10, 0), {});  // no minutes
    const Hours hours = hoursOf(file, at(12, 0));
    QCOMPARE(hours.clocked, 30);
    QCOMPARE(hours.besides, 15);
    file.all<Step>()[2].removed = true;
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 30);
    span(file, at(11, 0), {});
    step(file, at(11, 59), 40); // while it still runs
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 90);
}

void TestSumsUnit::hoursOverlapping()
{
    UnitFile file;
    span(file, at(9, 0), at(10, 0));
    span(file, at(9, 30), at(10, 15)); // 15 more
    span(file, at(9, 40), at(9, 50));  // inside: nothing more
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 75);
    span(file, at(10, 10), at(10, 20), 3); // counted by hand
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 78);
    span(file, at(10, 15), at(10, 25)); // 5 beyond the corrected one
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 83);
    // The order in which they were recorded does not matter.
    std::reverse(file.all<ClockSpan>().begin(), file.all<ClockSpan>().end());
    QCOMPARE(hoursOf(file, at(12, 0)).minutes(), 83);
}

void TestSumsUnit::durations()
{
    QCOMPARE(durationText(175), QStringLiteral("2 h 55 m"));
    QCOMPARE(durationText(5), QStringLiteral("0 h 05 m"));
    QCOMPARE(durationText(0), QStringLiteral("0 h 00 m"));
}

void TestSumsUnit::toldInOrder()
{
    UnitFile file;
    file.unit.id = nextId<Unit>();
    file.unit.at = at(10, 2);
    file.unit.claim = QStringLiteral("does not play");
    auto &note = added<Note>(file, at(10, 30));
    note.text = QStringLiteral("<b>smells</b> of oil");
    auto &bought = added<Spend>(file, at(10, 5));
    bought.kind = SpendKind::Purchase;
    bought.text = QStringLiteral("bought");
    bought.amount = *Money::parse(u"30 GBP", {});
    bought.paidOn = QDate(2026, 11, 19);
    auto &sold = added<Spend>(file, at(10, 40));
    sold.kind = SpendKind::Sale;
    sold.flow = Flow::In;
    sold.amount = *Money::parse(u"120 GBP", {});
    sold.paidOn = QDate(2026, 11, 25);
    auto &gone = added<Note>(file, at(10, 31));
    gone.removed = true;

    const QList<Event> events = timeline(file, {});
    QCOMPARE(events.size(), 4);
    QCOMPARE(events[0].what, EventKind::Bought); // by the day it was paid, not the day it was typed
    QCOMPARE(events[0].at.date(), QDate(2026, 11, 19));
    QCOMPARE(events[0].money->decimal(), QStringLiteral("30.00"));
    QCOMPARE(events[1].what, EventKind::TakenIn);
    QVERIFY(events[1].detail.contains(QStringLiteral("does not play")));
    QCOMPARE(events[2].text, QStringLiteral("<b>smells</b> of oil")); // plain: whoever prints it escapes it
    QCOMPARE(events[3].money->decimal(), QStringLiteral("-120.00"));
    QCOMPARE(toWord(events[1].what), QStringLiteral("taken_in"));
    // At one instant the id decides, so the order is the same every time.
    added<Note>(file, at(10, 30)).text = QStringLiteral("second");
    QCOMPARE(timeline(file, {}).at(3).text, QStringLiteral("second"));
}

void TestSumsUnit::toldInstants()
{
    UnitFile file;
    file.unit.at = at(8, 0);
    auto &symptom = added<Symptom>(file, at(10, 15));
    symptom.text = QStringLiteral("take-up reel stops");
    symptom.state = SymptomState::Cleared;
    symptom.clearedAt = at(15, 30);
    auto &cause = added<Cause>(file, at(10, 20));
    cause.symptom = symptom.id;
    cause.text = QStringLiteral("clutch felt glazed");
    cause.weight = 0.4;
    cause.state = CauseState::Confirmed;
    cause.settledAt = at(14, 0);
    auto &other = added<Cause>(file, at(10, 21));
    other.text = QStringLiteral("belt");
    other.state = CauseState::RuledOut;
    other.settledAt = at(11, 0);
    auto &need = added<Need>(file, at(10, 45));
    need.text = QStringLiteral("idler tyre");
    need.price = *Money::parse(u"1.20 GBP", {});
    need.quantity = 2;
    need.state = NeedState::Fitted;
    need.stateSince = at(14, 30);
    auto &fitted = added<Need>(file, at(14, 40));
    fitted.text = QStringLiteral("lamp");
    fitted.state = NeedState::Fitted;
    fitted.stateSince = at(14, 40);
    auto &lid = added<TeardownItem>(file, at(10, 50));
    lid.what = QStringLiteral("lid");
    lid.state = TeardownState::Back;
    lid.backAt = at(16, 0);
    auto &check = added<Check>(file, at(11, 5));
    check.text = QStringLiteral("swap leads");
    check.minutes = 5;
    check.cameOut = CameOut::Abnormal;
    check.doneAt = at(11, 10);
    auto &soak = added<Soak>(file, at(16, 5));
    soak.name = QStringLiteral("play");
    soak.startedAt = at(16, 5);
    soak.endedAt = at(18, 5);
    auto &clock = added<ClockSpan>(file, at(9, 0));
    clock.startedAt = at(9, 0);
    clock.endedAt = at(9, 12);

    QStringList told;
    for (const Event &event : timeline(file, {}))
        told << event.at.toString(QStringLiteral("hh:mm ")) + toWord(event.what) + QLatin1Char(' ') + event.text;
    QCOMPARE(lines(told), QStringLiteral("08:00 taken_in Taken in\n"
                                         "09:00 clock Clock ran\n"
                                         "10:15 symptom Symptom: take-up reel stops\n"
                                         "10:20 cause Possible cause: clutch felt glazed\n"
                                         "10:21 cause Possible cause: belt\n"
                                         "10:45 need Needed: 2 × idler tyre\n"
                                         "10:50 teardown Off: lid\n"
                                         "11:00 cause_ruled_out Ruled out: belt\n"
                                         "11:05 check Check to do: swap leads\n"
                                         "11:10 check Check came out abnormal: swap leads\n"
                                         "14:00 cause_confirmed Cause confirmed: clutch felt glazed\n"
                                         "14:30 fitted Fitted: 2 × idler tyre\n"
                                         "14:40 fitted Fitted: lamp\n"
                                         "15:30 symptom_cleared Symptom cleared: take-up reel stops\n"
                                         "16:00 put_back Back: lid\n"
                                         "16:05 soak Soak begun: play\n"
                                         "18:05 soak Soak ended: play"));
    qint64 money = 0;
    int minutes = 0;
    for (const Event &event : timeline(file, {})) {
        money += event.money ? event.money->minor() : 0;
        minutes += event.minutes.value_or(0);
    }
    QCOMPARE(money, 240); // the tyres once, not at each state
    QCOMPARE(minutes, 17); // clock and check
}

void TestSumsUnit::toldReadings()
{
    UnitFile file;
    file.unit.at = at(8, 0);
    reading(file, "Take-up torque", "14 gf.cm", "35..65 gf.cm", Phase::AsFound, at(10, 44));
    file.all<Reading>().last().uncertainty = 2.954;
    reading(file, "take-up torque", "47 gf.cm", "35..65 gf.cm", Phase::AsItLeaves, at(15, 28));
    const QList<Event> events = timeline(file, {});
    QCOMPARE(events[1].verdict, std::optional(Verdict::Outside));
    QCOMPARE(events[2].verdict, std::optional(Verdict::Within));
    QVERIFY2(events[1].detail.contains(QStringLiteral("14 gf·cm ± 3 ")) && events[1].detail.contains(QStringLiteral("35 to 65 gf·cm")), qPrintable(events[1].detail));
    QVERIFY2(events[2].detail.contains(QStringLiteral("was 14 gf·cm")), qPrintable(events[2].detail));
}

void TestSumsUnit::stands()
{
    UnitFile file;
    auto &open = added<Symptom>(file);
    open.text = QStringLiteral("left channel weak");
    auto &cleared = added<Symptom>(file);
    cleared.state = SymptomState::Cleared;
    reading(file, "torque", "14 gf.cm", "35..65 gf.cm", Phase::AsFound, at(10, 0));
    reading(file, "torque", "47 gf.cm", "35..65 gf.cm", Phase::AsItLeaves, at(11, 0)); // put right since
    reading(file, "line out L", "96 mV", "387 mV 2dB", Phase::AsFound, at(10, 30));
    reading(file, "flutter", "< 0.2 %", "<= 0.12 %", Phase::AsFound, at(10, 31));
    for (const auto &[text, state, due] : {std::tuple{"belt", NeedState::Ordered, QDate(2026, 11, 30)}, {"tyre", NeedState::Ordered, QDate(2026, 11, 28)},
                                           {"lamp", NeedState::Needed, QDate()}, {"felt", NeedState::Here, QDate()}, {"fuse", NeedState::Fitted, QDate()}}) {
        auto &need = added<Need>(file);
        need.text = QString::fromUtf8(text);
        need.state = state;
        need.due = due;
    }
    off(file, "lid", "5 screws M3x8", 5, 1);
    off(file, "front", "4 screw M3x8, 2 clips", {}, 2);
    off(file, "board", "", {}, 3);
    auto &back = added<TeardownItem>(file);
    back.state = TeardownState::Back;
    back.fasteners = QStringLiteral("9 screws");
    auto &left = added<LeftOff>(file, at(22, 10));
    left.next = QStringLiteral("swap head leads");
    left.doNotPower = QStringLiteral("CN5 unplugged");

    const Standing now = standing(file, {});
    QCOMPARE(now.symptoms, 2);
    QCOMPARE(now.openSymptoms.size(), 1);
    QCOMPARE(now.outside.size(), 1);
    QCOMPARE(now.outside.first().reading.name, QStringLiteral("line out L"));
    QCOMPARE(now.tooClose.size(), 1);
    QStringList awaited;
    for (const Need &need : now.awaited)
        awaited << need.text;
    QCOMPARE(awaited, (QStringList{QStringLiteral("tyre"), QStringLiteral("belt"), QStringLiteral("lamp")}));
    QCOMPARE(now.loose.size(), 3);
    QCOMPARE(now.loose.first().what, QStringLiteral("board")); // last off goes back first
    QCOMPARE(now.fasteners, (QList<FastenerCount>{{QStringLiteral("screw M3x8"), 9}, {QStringLiteral("clips"), 2}}));
    QCOMPARE(now.keptIn, QStringList{QStringLiteral("tray A1")});
    QCOMPARE(now.next, QStringLiteral("swap head leads"));
    QCOMPARE(now.doNotPower, QStringLiteral("CN5 unplugged"));
    QCOMPARE(now.leftOffAt, at(22, 10));
    QVERIFY(now.cautions.first().contains(QStringLiteral("CN5 unplugged")));
}

void TestSumsUnit::fasteners_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("count"); // below zero: none
    QTest::addColumn<QString>("found");
    // Readings of plain words; no source.
    QTest::newRow("one kind") << "5 screws M3x8" << -1 << "5 screws M3x8";
    QTest::newRow("count beside") << "screws M3x8" << 5 << "5 screws M3x8";
    QTest::newRow("count twice") << "5 screws M3x8" << 5 << "5 screws M3x8";
    QTest::newRow("count corrected") << "5 screws M3x8" << 4 << "4 screws M3x8";
    QTest::newRow("two kinds") << "4 screws M3x8, 2 self-tappers" << 6 << "4 screws M3x8|2 self-tappers";
    QTest::newRow("and") << "1 nut and 3 washers" << -1 << "1 nut|3 washers";
    QTest::newRow("times") << "2 x M2.5x6" << -1 << "2 M2.5x6";
    QTest::newRow("count alone") << "" << 7 << "7 fasteners";
    QTest::newRow("nothing to read") << "some clips" << -1 << "";
    QTest::newRow("nothing") << "" << -1 << "";
    QTest::newRow("partly") << "3 screws, clips" << -1 << "3 screws";
}

void TestSumsUnit::fasteners()
{
    QFETCH(QString, text);
    QFETCH(int, count);
    QFETCH(QString, found);
    TeardownItem item;
    item.fasteners = text;
    if (count >= 0)
        item.fastenerCount = count;
    QStringList said;
    for (const FastenerCount &each : fastenersOf(item))
        said << QStringLiteral("%1 %2").arg(each.count).arg(each.kind);
    QCOMPARE(said.join(QLatin1Char('|')), found);
}

void TestSumsUnit::latest()
{
    UnitFile file;
    auto &point = added<TestPoint>(file);
    point.name = QStringLiteral("CN2.4");
    reading(file, "CN2.4", "11 V", "12 V 5%", Phase::AsFound, at(10, 0));
    file.all<Reading>().last().point = point.id;
    reading(file, "cn2.4 ", "12 V", "12 V 5%", Phase::AsItLeaves, at(11, 0)); // only named
    QCOMPARE(latestReadings(file).size(), 1);
    QCOMPARE(latestReadings(file).first().value->value(), 12.0);
    QCOMPARE(latestReadings(file, Phase::AsFound).first().value->value(), 11.0);
    QVERIFY(latestReadings(file, Phase::DuringWork).isEmpty());
}

void TestSumsUnit::cautionsByCategory()
{
    const auto of = [](Category category, const QString &plate = {}) {
        UnitFile file;
        file.unit.category = category;
        file.unit.mains = plate;
        return lines(cautions(file, {}));
    };
    // Which hazards belong to which category: common practice, no standard lists them.
    QVERIFY(of(Category::DiscPlayer).contains(QStringLiteral("Laser")));
    QVERIFY(!of(Category::CassetteDeck).contains(QStringLiteral("Laser")));
    QVERIFY(of(Category::OldComputer).contains(QStringLiteral("Picture tube")));
    QVERIFY(of(Category::Radio).contains(QStringLiteral("Live chassis")));
    QVERIFY(of(Category::GameConsole).contains(QStringLiteral("Lithium")));
    QVERIFY(of(Category::AmplifierReceiver).contains(QStringLiteral("Stored charge")));
    QVERIFY(!of(Category::Loudspeaker).contains(QStringLiteral("Mains")));
    QVERIFY(of(Category::Loudspeaker, QStringLiteral("230 V 50 Hz")).contains(QStringLiteral("Mains")));
    QVERIFY(!of(Category::Radio, QStringLiteral("9 V DC, battery")).contains(QStringLiteral("Mains:")));
    QVERIFY(of(Category::Other).contains(QStringLiteral("Mains")));

    UnitFile file;
    file.unit.maker = QStringLiteral("Pellworth");
    file.unit.makerModel = QStringLiteral("KD-7");
    auto &item = added<TeardownItem>(file);
    item.what = QStringLiteral("spring");
    item.caution = QStringLiteral("under tension");
    BenchFile bench;
    ModelNotes notes;
    notes.maker = QStringLiteral("pellworth");
    notes.makerModel = QStringLiteral("KD-7 ");
    notes.cautions = QStringLiteral("chassis edge is sharp");
    bench.all<ModelNotes>() << notes;
    QVERIFY(cautions(file, bench).contains(QStringLiteral("spring: under tension")));
    QVERIFY(cautions(file, bench).contains(QStringLiteral("chassis edge is sharp")));
    bench.all<ModelNotes>().first().makerModel = QStringLiteral("KD-8");
    QVERIFY(!cautions(file, bench).contains(QStringLiteral("chassis edge is sharp")));
}

void TestSumsUnit::cautionsDefer()
{
    for (const auto &[category, word] : Words<Category>::list) {
        UnitFile file;
        file.unit.category = category;
        const QStringList all = cautions(file, {});
        QVERIFY2(!all.isEmpty(), word);
        for (const QString &each : all) // every text of the program's own names who has the last word
            QVERIFY2(each.contains(QStringLiteral("ocal")), qPrintable(each));
    }
}

void TestSumsUnit::mains()
{
    Unit unit;
    unit.category = Category::CassetteDeck;
    QVERIFY(mainsPowered(unit));
    unit.protectionClass = ProtectionClass::III;
    QVERIFY(!mainsPowered(unit));
    unit.protectionClass = ProtectionClass::II;
    unit.category = Category::Loudspeaker;
    QVERIFY(mainsPowered(unit));
    unit.protectionClass.reset();
    QVERIFY(!mainsPowered(unit));
    unit.mains = QStringLiteral("115/230 V~ 50/60 Hz");
    QVERIFY(mainsPowered(unit));
}

void TestSumsUnit::notDoneOfNothing()
{
    UnitFile file;
    file.unit.category = Category::CassetteDeck;
    auto &proof = added<Proof>(file);
    proof.text = QStringLiteral("record on chrome tape");
    auto &symptom = added<Symptom>(file);
    symptom.text = QStringLiteral("left channel weak");
    auto &need = added<Need>(file);
    need.text = QStringLiteral("belt");
    auto &point = added<TestPoint>(file);
    point.name = QStringLiteral("CN2.4");
    reading(file, "flutter", "0.19 %", "<= 0.12 %", Phase::AsFound);
    off(file, "lid", "", {}, 1);
    const QString said = lines(notDone(file));
    for (const auto *wanted : {"Not tested: record on chrome tape.", "No electrical safety test is recorded.", "azimuth", "Not measured as it leaves: CN2.4; flutter.",
                               "No soak is recorded", "Not put right: left channel weak.", "Needed but not fitted: belt.", "Not put back: lid.", "Belts", "Pinch roller"})
        QVERIFY2(said.contains(QString::fromUtf8(wanted)), qPrintable(QString::fromUtf8(wanted) + QStringLiteral(" is not in\n") + said));
    QVERIFY2(!said.contains(QStringLiteral("; record and erase;")), qPrintable(said)); // said by the proof's own words already
}

void TestSumsUnit::notDoneWhenDone()
{
    UnitFile file;
    file.unit.category = Category::Loudspeaker;
    for (const char *text : {"slow sweep, no rattle", "each driver sounds", "level control and terminals", "pair matched by ear"}) {
        auto &proof = added<Proof>(file);
        proof.text = QString::fromUtf8(text);
        proof.cameOut = ProofOutcome::Passed;
    }
    auto &surround = added<Need>(file);
    surround.text = QStringLiteral("foam surrounds");
    surround.state = NeedState::Fitted;
    auto &renewed = added<Step>(file);
    renewed.kind = StepKind::Renew;
    renewed.text = QStringLiteral("renewed the crossover capacitors");
    auto &symptom = added<Symptom>(file);
    symptom.state = SymptomState::Cleared;
    reading(file, "impedance", "7.8 Ω", "6..9 Ω", Phase::AsItLeaves);
    QCOMPARE(lines(notDone(file)), QString());
    // What failed was tested; what does not apply is no gap.
    file.all<Proof>()[0].cameOut = ProofOutcome::Failed;
    file.all<Proof>()[1].cameOut = ProofOutcome::NotApplicable;
    QCOMPARE(lines(notDone(file)), QString());
    file.all<Proof>()[2].removed = true;
    QCOMPARE(lines(notDone(file)), QStringLiteral("No test is recorded of: controls and terminals."));
    file.all<Reading>().last().uncertainty = 5;
    QVERIFY(lines(notDone(file)).contains(QStringLiteral("Too close to call with the meter used: impedance.")));
}

void TestSumsUnit::notDoneCapacitors()
{
    UnitFile file;
    file.unit.category = Category::AmplifierReceiver;
    QVERIFY(lines(notDone(file)).contains(QStringLiteral("so as found: Electrolytic capacitors; Lamps")));
    for (const char *position : {"C214", "C215", "C214", "R7"}) {
        auto &need = added<Need>(file);
        need.text = QStringLiteral("100 µF 25 V");
        need.position = QString::fromUtf8(position);
        need.state = NeedState::Fitted;
    }
    QVERIFY2(lines(notDone(file)).contains(QStringLiteral("Electrolytic capacitors: renewed only at C214, C215, the rest as found.")), qPrintable(lines(notDone(file))));
    QVERIFY(lines(notDone(file)).contains(QStringLiteral("so as found: Lamps")));
    file.all<Need>().clear();
    auto &cap = added<Need>(file);
    cap.text = QStringLiteral("capstan belt"); // no capacitor
    cap.state = NeedState::Fitted;
    QVERIFY(lines(notDone(file)).contains(QStringLiteral("so as found: Electrolytic capacitors")));
}

void TestSumsUnit::notDoneEveryCategory()
{
    for (const auto &[category, word] : Words<Category>::list) {
        UnitFile file;
        file.unit.category = category;
        const CategoryFacts facts = factsOf(category);
        QVERIFY2(!facts.acceptance.isEmpty(), word);
        for (const AcceptanceArea &area : facts.acceptance)
            QVERIFY2(!area.name.isEmpty() && !area.words.isEmpty(), word);
        QCOMPARE(lines(notDone(file)).contains(QStringLiteral("electrical safety")), facts.mainsPowered);
        // A proof in an area's own words closes that area.
        for (const AcceptanceArea &area : facts.acceptance) {
            auto &proof = added<Proof>(file);
            proof.text = area.name + QLatin1Char(' ') + area.words.first();
            proof.cameOut = ProofOutcome::Passed;
        }
        QVERIFY2(!lines(notDone(file)).contains(QStringLiteral("No test is recorded of")), qPrintable(lines(notDone(file))));
    }
}

QTEST_GUILESS_MAIN(TestSumsUnit)
#include "test_sums_unit.moc"
