#include "jot_bench.h"
#include "model/exchange/knowledge_files.h"
#include "model/exchange/notes_json.h"
#include "model/faults/fault_offer.h"
#include "model/faults/model_learning.h"

#include <QJsonArray>
#include <QJsonDocument>

using namespace ts;
using ts::testing::JotBench;

namespace {

/// A deck on which something was found out.
struct TaughtBench : JotBench {
    TaughtBench()
    {
        file.unit.maker = QStringLiteral("Pellworth");
        file.unit.makerModel = QStringLiteral("KD-7");
        file.unit.category = Category::CassetteDeck;
        file.unit.mains = QStringLiteral("230 V 50 Hz");
        for (const auto *line :
             {"saw left channel weak", "think coupling capacitor C214 open 20% 25m", "think head worn 30%",
              "check ESR of C214 abnormal 10m", "was coupling capacitor C214 open because 22 Ω",
              "line out L = 96 mV want 387 mV 2dB", "off lid 5 screws M3x8 tray A1", "off mechanism 3 screws M2.6x10",
              "back mechanism", "fitted 3.3 µF 50 V 0.20", "proved record and erase"})
            put(QString::fromUtf8(line));
    }
};

/// Puts what a change adds to notes where a desk would.
void take(NotesFile &notes, const Change &change)
{
    for (const ChangeItem &item : change.items()) {
        const auto keep = [&]<class R>(QList<R> &list) {
            if (item.kind != &description<R>() || !item.after)
                return;
            const auto record = description<R>().fromRow(*item.after);
            testing::wantOk(record);
            list << *record;
        };
        std::apply([&](auto &...lists) { (keep(lists), ...); }, notes.lists);
        if (item.kind == &description<ModelNotes>() && item.after)
            notes.notes = *description<ModelNotes>().fromRow(*item.after);
    }
}

NotesFile taught(TaughtBench &bench)
{
    NotesFile notes;
    const auto change = learnFrom(bench.file, {}, bench.maker());
    testing::wantOk(change);
    take(notes, *change);
    return notes;
}

} // namespace

class TestFaultsNotes : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void learned();
    void learnedOnce();
    void refusedWithoutModel();
    void offeredToTheNext();
    void faultsOffered();
    void teardownCopied();
    void onComesOff();
    void sharedAsAFile();
    void fileRefused_data();
    void fileRefused();
};

void TestFaultsNotes::learned()
{
    TaughtBench bench;
    const NotesFile notes = taught(bench);
    QCOMPARE(notes.notes.makerModel, QStringLiteral("KD-7"));
    QCOMPARE(notes.notes.mainsVersions, QStringLiteral("230 V 50 Hz"));
    QCOMPARE(notes.all<TestPoint>().size(), 1);
    QCOMPARE(notes.all<TestPoint>().first().wanted.text(), QStringLiteral("387 mV 2dB"));
    QCOMPARE(notes.all<KnownCause>().size(), 2);
    QCOMPARE(notes.all<KnownCause>().first().symptom, QStringLiteral("left channel weak"));
    QCOMPARE(notes.all<KnownCause>().first().fixMinutes, std::optional(25));
    QCOMPARE(notes.all<KnownCause>().first().note, QStringLiteral("22 Ω"));
    QCOMPARE(notes.all<KnownCheck>().size(), 1);
    QCOMPARE(notes.all<KnownMark>().size(), 1);
    QVERIFY(notes.all<KnownMark>().first().cause == notes.all<KnownCause>().first().id);
    QCOMPARE(notes.all<KnownTeardown>().size(), 2);
    QCOMPARE(notes.all<KnownTeardown>().first().what, QStringLiteral("lid"));
    QCOMPARE(notes.all<KnownTeardown>().first().fastenerCount, std::optional(5));
    QCOMPARE(notes.all<KnownPart>().size(), 1);
    QCOMPARE(notes.all<KnownProof>().size(), 1);
    for (const KnownTeardown &step : notes.all<KnownTeardown>())
        QVERIFY(step.modelNotes == notes.notes.id);
}

void TestFaultsNotes::learnedOnce()
{
    TaughtBench bench;
    NotesFile notes = taught(bench);
    QVERIFY(testing::refusal(learnFrom(bench.file, notes, bench.maker())).contains(QStringLiteral("already")));
    // What is new on the next one is added, and nothing twice.
    bench.put(QStringLiteral("off front panel 4 screws M3x6"));
    const auto more = learnFrom(bench.file, notes, bench.maker());
    testing::wantOk(more);
    QCOMPARE(more->items().size(), 1);
    take(notes, *more);
    QCOMPARE(notes.all<KnownTeardown>().last().position, 3);
}

void TestFaultsNotes::refusedWithoutModel()
{
    TaughtBench bench;
    bench.file.unit.makerModel.clear();
    QVERIFY(testing::refusal(learnFrom(bench.file, {}, bench.maker())).contains(QStringLiteral("no maker or no model")));
}

void TestFaultsNotes::offeredToTheNext()
{
    TaughtBench bench;
    const NotesFile notes = taught(bench);
    JotBench next;
    const auto change =
        offerNotes(next.file, notes, {.testPoints = true, .teardown = true, .proofs = true, .parts = true}, next.maker());
    testing::wantOk(change);
    QCOMPARE(change->sentence(),
             QStringLiteral("Brought in from the notes on Pellworth KD-7: 1 part, 1 proof, 2 teardown steps, 1 test point"));
    next.apply(*change);
    QCOMPARE(next.last<TestPoint>().name, QStringLiteral("line out L"));
    QVERIFY(next.last<TestPoint>().modelNotes.isNull());
    QCOMPARE(next.last<Proof>().cameOut, ProofOutcome::NotTested);
    QCOMPARE(next.last<Need>().state, NeedState::Needed);
    QVERIFY(!next.last<Need>().price);
    for (const TeardownItem &item : next.file.all<TeardownItem>())
        QCOMPARE(item.state, TeardownState::On);
    QVERIFY(testing::refusal(offerNotes(next.file, notes, {}, next.maker())).contains(QStringLiteral("already")));
}

void TestFaultsNotes::faultsOffered()
{
    TaughtBench bench;
    const NotesFile notes = taught(bench);
    const QList<FaultOffer> offers = offersOf(notes);
    QCOMPARE(offers.size(), 1);
    QCOMPARE(offers.first().causes.size(), 2);
    QCOMPARE(offers.first().causes.first().weight, 0.2);
    QCOMPARE(offers.first().causes.last().weight, 0.3);
    QVERIFY(std::abs(offers.first().somethingElse - 0.5) < 1e-12);
    QCOMPARE(offers.first().checks.first().marks.size(), 1);
    JotBench next;
    next.put(QStringLiteral("saw left channel weak"));
    const auto change = bringIn(next.file, next.last<Symptom>().id, offers.first(), next.maker());
    testing::wantOk(change);
    next.apply(*change);
    QCOMPARE(next.count<Cause>(), 3);
    QCOMPARE(next.count<Bearing>(), 1);
}

void TestFaultsNotes::teardownCopied()
{
    TaughtBench from;
    JotBench to;
    to.put(QStringLiteral("off lid 5 screws M3x8"));
    const auto change = copyTeardown(to.file, from.file, to.maker());
    testing::wantOk(change);
    to.apply(*change);
    QCOMPARE(to.count<TeardownItem>(), 2); // the lid is there already
    QCOMPARE(to.last<TeardownItem>().what, QStringLiteral("mechanism"));
    QCOMPARE(to.last<TeardownItem>().state, TeardownState::On);
    QCOMPARE(to.last<TeardownItem>().position, 2);
    QVERIFY(to.last<TeardownItem>().keptIn.isEmpty()); // where it lies is this unit's own
    QVERIFY(testing::refusal(copyTeardown(to.file, from.file, to.maker())).contains(QStringLiteral("already")));
}

void TestFaultsNotes::onComesOff()
{
    TaughtBench from;
    JotBench to;
    const auto change = copyTeardown(to.file, from.file, to.maker());
    testing::wantOk(change);
    to.apply(*change);
    const Jotted jotted = to.put(QStringLiteral("off lid tray B2"));
    QVERIFY2(jotted.preview.startsWith(QStringLiteral("Off: lid, 5 screws M3x8, in tray B2")), qPrintable(jotted.preview));
    QCOMPARE(to.count<TeardownItem>(), 2);
    QCOMPARE(to.file.all<TeardownItem>().first().state, TeardownState::Off);
    QCOMPARE(to.file.all<TeardownItem>().first().keptIn, QStringLiteral("tray B2"));
    QCOMPARE(to.file.all<TeardownItem>().first().at, to.now());
}

void TestFaultsNotes::sharedAsAFile()
{
    TaughtBench bench;
    NotesFile notes = taught(bench);
    notes.all<KnownCause>().first().fixCost = testing::pounds(4711);
    notes.notes.ideas = QStringLiteral("try a softer tyre");
    KnownPaper paper = bench.maker().fresh<KnownPaper>();
    paper.modelNotes = notes.notes.id;
    paper.title = QStringLiteral("service sheet");
    paper.sha256 = QStringLiteral("cafe");
    notes.all<KnownPaper>() << paper;
    const QByteArray json = notesJson({notes});
    for (const auto *never : {"47.11", "4711", "price", "GBP", "cafe", "owner", "unit"})
        QVERIFY2(!json.contains(never), never);
    const auto again = readNotesJson(json, bench.maker());
    testing::wantOk(again);
    QCOMPARE(again->size(), 1);
    QCOMPARE(notesJson(*again), json);
    QVERIFY(!(again->first().notes.id == notes.notes.id));
    // Read in where the same is known: nothing new but nothing lost.
    QVERIFY(mergedNotes(again->first(), notes, bench.maker()).isEmpty());
}

void TestFaultsNotes::fileRefused_data()
{
    QTest::addColumn<QByteArray>("json");
    QTest::addColumn<QString>("says");
    const auto model = [](const char *entry) {
        return QByteArray(
                   R"({"form": "turnscrew-model-notes", "edition": 1, "models": [{"maker": "P", "maker_model": "K", "category": "radio", )") +
               entry + "}]}";
    };
    QTest::newRow("no JSON") << QByteArray("{") << "no JSON";
    QTest::newRow("another form") << QByteArray("{\"units\": []}") << "something else";
    QTest::newRow("later") << QByteArray(R"({"form": "turnscrew-model-notes", "edition": 9, "models": [{}]})") << "later program";
    QTest::newRow("no model") << QByteArray(R"({"form": "turnscrew-model-notes", "edition": 1})") << "no model";
    QTest::newRow("limit") << model(R"("test_points": [{"name": "CN2.4", "wanted": "a lot"}])") << "CN2.4";
    QTest::newRow("chance") << model(R"("causes": [{"text": "belt", "weight": 3}])") << "weight is no chance";
    QTest::newRow("mark") << model(R"("checks": [{"text": "look", "bears_on": [{"cause": "belt"}]}])")
                          << "no cause of that symptom";
    QTest::newRow("no text") << model(R"("known_parts": [{"position": "C1"}])") << "a part has no text";
    QTest::newRow("kind") << model(R"("proofs": [{"text": "plays", "kind": "luck"}])") << "\"luck\" is no kind of proof";
    QTest::newRow("category")
        << QByteArray(R"({"form": "turnscrew-model-notes", "edition": 1, "models": [{"maker": "P", "category": "toaster"}]})")
        << "no category";
}

void TestFaultsNotes::fileRefused()
{
    QFETCH(QByteArray, json);
    QFETCH(QString, says);
    JotBench bench;
    const QString said = testing::refusal(readNotesJson(json, bench.maker()));
    QVERIFY2(said.contains(says), qPrintable(said));
}

QTEST_GUILESS_MAIN(TestFaultsNotes)
#include "test_faults_notes.moc"
