#include "model/sums/category_facts.h"
#include "model/sums/standing.h"
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

class TestSumsNotDone : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void notDoneOfNothing();
    void notDoneOfSafety();
    void notDoneWhenDone();
    void notDoneCapacitors();
    void notDoneEveryCategory();
};

void TestSumsNotDone::notDoneOfNothing()
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
    for (const auto *wanted :
         {"Not tested: record on chrome tape.", "No electrical safety test is recorded.", "azimuth",
          "Not measured as it leaves: CN2.4; flutter.", "No soak is recorded", "Not put right: left channel weak.",
          "Needed but not fitted: belt.", "Not put back: lid.", "Belts", "Pinch roller"})
        QVERIFY2(said.contains(QString::fromUtf8(wanted)),
                 qPrintable(QString::fromUtf8(wanted) + QStringLiteral(" is not in\n") + said));
    // Things of one kind in one sentence, what has commas or a remark of its own parted plainly from the next.
    QVERIFY2(said.contains(QStringLiteral("so as found: Belts; Pinch roller; Heads (worn as they came); Electrolytic capacitors.")), qPrintable(said));
    QVERIFY2(!said.contains(QStringLiteral("; record and erase;")), qPrintable(said)); // said by the proof's own words already
}

void TestSumsNotDone::notDoneOfSafety()
{
    UnitFile file;
    file.unit.category = Category::Tuner;
    file.unit.protectionClass = ProtectionClass::I;
    for (const char *text : {"Protective earth: touchable metal to the earth pin", "Insulation at 500 V DC", "Protective conductor current",
                             "Touch current at every metal part that can be touched"}) {
        auto &proof = added<Proof>(file);
        proof.kind = ProofKind::ElectricalSafety;
        proof.text = QString::fromUtf8(text);
    }
    const auto untested = [&file] { return notDone(file).filter(QStringLiteral("Electrical safety, not tested")).value(0).section(QStringLiteral("tested: "), 1); };
    QCOMPARE(untested(), QStringLiteral("Protective earth: touchable metal to the earth pin; Insulation at 500 V DC; Protective conductor current; "
                                        "Touch current at every metal part that can be touched."));
    reading(file, "earth bond", "0.08 Ω", "<= 0.3 Ω", Phase::AsItLeaves);
    reading(file, "insulation", "200 MΩ", ">= 2 MΩ", Phase::AsItLeaves);
    QCOMPARE(untested(), QStringLiteral("Protective conductor current; Touch current at every metal part that can be touched."));
    // The earth leakage is the current in the protective conductor (IEC 60990), not the earth's resistance.
    file.all<Reading>().removeFirst();
    reading(file, "earth leakage", "0.2 mA", "<= 3.5 mA", Phase::AsItLeaves);
    QCOMPARE(untested(), QStringLiteral("Protective earth: touchable metal to the earth pin; Touch current at every metal part that can be touched."));
    // On the way, or without a limit: no test.
    reading(file, "touch current", "0.02 mA", "<= 0.25 mA", Phase::DuringWork);
    QVERIFY(untested().contains(QStringLiteral("Touch current")));
    file.all<Reading>().last().phase = Phase::AsItLeaves;
    QVERIFY(!untested().contains(QStringLiteral("Touch current")));
}

void TestSumsNotDone::notDoneWhenDone()
{
    UnitFile file;
    file.unit.category = Category::Loudspeaker;
    for (const char *text :
         {"slow sweep, no rattle", "each driver sounds", "level control and terminals", "pair matched by ear"}) {
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

void TestSumsNotDone::notDoneCapacitors()
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
    QVERIFY2(
        lines(notDone(file)).contains(QStringLiteral("Electrolytic capacitors: as found but for those renewed here: C214; C215.")),
        qPrintable(lines(notDone(file))));
    QVERIFY(lines(notDone(file)).contains(QStringLiteral("so as found: Lamps")));
    file.all<Need>().clear();
    auto &cap = added<Need>(file);
    cap.text = QStringLiteral("capstan belt"); // no capacitor
    cap.state = NeedState::Fitted;
    QVERIFY(lines(notDone(file)).contains(QStringLiteral("so as found: Electrolytic capacitors")));
}

void TestSumsNotDone::notDoneEveryCategory()
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

QTEST_GUILESS_MAIN(TestSumsNotDone)
#include "test_sums_not_done.moc"
