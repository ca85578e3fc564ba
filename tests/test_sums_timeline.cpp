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

void reading(UnitFile &file, const char *name, const char *value, const char *wanted, Phase phase,
             const QDateTime &when = at(11, 0))
{
    auto &record = added<Reading>(file, when);
    record.name = QString::fromUtf8(name);
    record.value = *Quantity::parse(QString::fromUtf8(value));
    record.wanted = *Limit::parse(QString::fromUtf8(wanted));
    record.phase = phase;
}

QString lines(const QStringList &all)
{
    return all.join(QLatin1Char('\n'));
}

} // namespace

class TestSumsTimeline : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void toldInOrder();
    void toldInstants();
    void toldReadings();
    void toldDecisions();
    void toldProofs();
};

void TestSumsTimeline::toldInOrder()
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

void TestSumsTimeline::toldInstants()
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
    QCOMPARE(money, 240);  // the tyres once, not at each state
    QCOMPARE(minutes, 17); // clock and check
}

void TestSumsTimeline::toldReadings()
{
    UnitFile file;
    file.unit.at = at(8, 0);
    reading(file, "Take-up torque", "14 gf.cm", "35..65 gf.cm", Phase::AsFound, at(10, 44));
    file.all<Reading>().last().uncertainty = 2.954;
    reading(file, "take-up torque", "47 gf.cm", "35..65 gf.cm", Phase::AsItLeaves, at(15, 28));
    const QList<Event> events = timeline(file, {});
    QCOMPARE(events[1].verdict, std::optional(Verdict::Outside));
    QCOMPARE(events[2].verdict, std::optional(Verdict::Within));
    QVERIFY2(events[1].detail.contains(QStringLiteral("14 gf·cm ± 3 ")) &&
                 events[1].detail.contains(QStringLiteral("35 to 65 gf·cm")),
             qPrintable(events[1].detail));
    QVERIFY2(events[2].detail.contains(QStringLiteral("was 14 gf·cm")), qPrintable(events[2].detail));
}

void TestSumsTimeline::toldDecisions()
{
    UnitFile file;
    file.unit.at = at(8, 0);
    auto &decision = added<Decision>(file, at(12, 0));
    decision.way = WayOut::BreakForParts;
    decision.reason = QStringLiteral("the head is worn");
    decision.figures = QStringLiteral("Finish and sell: £4.00, £9.00, £15.00\nBreak for parts: £20.00, £22.00, £30.00");
    const QList<Event> events = timeline(file, {});
    QCOMPARE(events.size(), 2);
    QCOMPARE(events[1].what, EventKind::Decision);
    QCOMPARE(events[1].text, QStringLiteral("Decided: break for parts"));
    QCOMPARE(events[1].detail, QStringLiteral("the head is worn · Finish and sell: £4.00, £9.00, £15.00 · Break for parts: £20.00, £22.00, £30.00"));
    QCOMPARE(events[1].record, decision.id.value);
    QVERIFY(&kindOf(EventKind::Decision) == &description<Decision>());
}

// What is to be proved is no happening until it was tried; then it stands under the day on which it was.
void TestSumsTimeline::toldProofs()
{
    UnitFile file;
    file.unit.at = at(8, 0);
    Proof &open = added<Proof>(file, at(8, 0));
    open.text = QStringLiteral("plays both sides");
    QCOMPARE(timeline(file, {}).size(), 1); // taken in, and nothing else
    Proof &passed = added<Proof>(file, at(8, 0));
    passed.text = QStringLiteral("counter counts");
    passed.cameOut = ProofOutcome::Passed;
    passed.doneOn = at(8, 0).date().addDays(3);
    const QList<Event> events = timeline(file, {});
    QCOMPARE(events.size(), 2);
    QCOMPARE(events.last().text, QStringLiteral("Proof passed: counter counts"));
    QCOMPARE(events.last().at, QDateTime(passed.doneOn, QTime(0, 0), Qt::UTC));
    passed.doneOn = at(8, 0).date();
    QCOMPARE(timeline(file, {}).last().at, at(8, 0));
}

QTEST_GUILESS_MAIN(TestSumsTimeline)
#include "test_sums_timeline.moc"
