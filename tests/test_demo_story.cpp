// The demo workbook: its story is played once through the program's own parts, then looked at from all sides.
#include "model/demo/demo.h"
#include "model/demo/player.h"
#include "model/demo/scenario.h"
#include "model/records/all_records.h"
#include "model/records/settings.h"
#include "model/sums/spent.h"
#include "tests/workbooks.h"

#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>

using namespace ts;
using namespace ts::testing;

namespace {

/// The two that are told from the first look to the sale.
constexpr std::array fullStories{25, 29};

/// Every record of the workbook as JSON, kind by kind.
QByteArray everything(Desk &desk)
{
    QJsonObject all;
    for (const Kind *kind : allKinds()) {
        QJsonArray rows;
        const QList<Row> stored = desk.listRows(*kind).value();
        for (const Row &row : stored)
            rows << kind->toJson(row);
        all.insert(kind->table(), rows);
    }
    return QJsonDocument(all).toJson();
}

UnitFile fileOf(Desk &desk, int tag)
{
    return desk.unitFile(desk.unitByTag(tag).value()).value();
}

QString spent(Desk &desk, int tag)
{
    return spentOn(fileOf(desk, tag), desk.benchFile().value().currency()).total.decimal();
}

template <class R, class Is>
qsizetype countOf(const UnitFile &file, Is is)
{
    return std::count_if(file.all<R>().begin(), file.all<R>().end(), is);
}

} // namespace

class TestDemoStory : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    OpenDesk m_demo;
    QString m_book;

private Q_SLOTS:
    void initTestCase()
    {
        m_book = m_books.fresh(QStringLiteral("sqlite"));
        wantOk(m_demo.create(m_book));
        wantOk(playDemo(*m_demo, m_demo.clock));
    }

    void everyJotSaysWhatItIsMeantToBe()
    {
        const auto events = demoScenario();
        wantOk(events);
        int lines = 0;
        for (const DemoEvent &event : *events) {
            if (event.verb != QLatin1String("jot"))
                continue;
            ++lines;
            QVERIFY2(event.content.contains(QLatin1String("expect")), qPrintable(event.where()));
        }
        QVERIFY(lines > 300);
    }

    // The player holds a line to its meaning: one that is taken otherwise is refused by its place in the story, and nothing is recorded.
    void aLineTakenOtherwiseIsRefused()
    {
        const auto notes = m_demo->count(description<Note>());
        const DemoEvent event{m_demo.clock.now(), 42, QStringLiteral("jot"),
                              {{QStringLiteral("jot"), QStringLiteral("the left channel is weak")}, {QStringLiteral("expect"), QStringLiteral("symptom")}},
                              QStringLiteral("wrong.json")};
        Player player(*m_demo);
        const QString why = refusal(player.play(event));
        QVERIFY2(why.contains(QStringLiteral("wrong.json")) && why.contains(QStringLiteral("taken as note, not as symptom")), qPrintable(why));
        QCOMPARE(m_demo->count(description<Note>()).value(), notes.value());
        DemoEvent lost = event;
        lost.tag = 9999;
        QVERIFY(refusal(player.play(lost)).contains(QStringLiteral("9999")));
    }

    void coversStagesAndCategories()
    {
        const auto units = m_demo->list<Unit>();
        wantOk(units);
        QVERIFY(units->size() >= 14);
        QSet<Stage> stages;
        QSet<Category> categories;
        QSet<UnitKind> kinds;
        QSet<Outcome> outcomes;
        for (const Unit &unit : *units) {
            stages << unit.stage;
            categories << unit.category;
            kinds << unit.kind;
            if (unit.outcome)
                outcomes << *unit.outcome;
            QCOMPARE(unit.stage == Stage::Closed, unit.outcome.has_value());
            QVERIFY2(!unit.maker.isEmpty() && unit.name.startsWith(unit.maker), qPrintable(unit.name));
        }
        QCOMPARE(stages.size(), static_cast<qsizetype>(Words<Stage>::list.size()));
        QVERIFY(categories.size() >= 8);
        QCOMPARE(kinds.size(), static_cast<qsizetype>(Words<UnitKind>::list.size()));
        QVERIFY(outcomes.contains(Outcome::Sold) && outcomes.contains(Outcome::BrokenForParts) && outcomes.contains(Outcome::Scrapped) && outcomes.contains(Outcome::Kept));
    }

    void fullStoriesHaveEverything_data()
    {
        QTest::addColumn<int>("tag");
        for (const int tag : fullStories)
            QTest::addRow("%04d", tag) << tag;
    }
    void fullStoriesHaveEverything()
    {
        QFETCH(int, tag);
        const UnitFile file = fileOf(*m_demo, tag);
        QCOMPARE(file.unit.stage, Stage::Closed);
        QCOMPARE(file.unit.outcome, std::optional(Outcome::Sold));
        QVERIFY(!file.unit.serial.isEmpty() && !file.unit.mains.isEmpty() && file.unit.protectionClass && !file.unit.claim.isEmpty());
        QCOMPARE(file.all<StageMove>().first().fromStage, Stage::Scouted);
        const QList<Stage> path = [&] {
            QList<Stage> stages;
            for (const StageMove &move : file.all<StageMove>())
                stages << move.toStage;
            return stages;
        }();
        for (const Stage stage : {Stage::Inbound, Stage::Shelved, Stage::Bench, Stage::Proving, Stage::Ready, Stage::Offered, Stage::Closed})
            QVERIFY2(path.contains(stage), qPrintable(toWord(stage)));

        QVERIFY(file.all<Symptom>().size() >= 3);
        QCOMPARE(countOf<Symptom>(file, [](const Symptom &each) { return each.state == SymptomState::Open; }), 0);
        QVERIFY(countOf<Cause>(file, [](const Cause &each) { return each.state == CauseState::Confirmed; }) >= 3);
        QVERIFY(countOf<Cause>(file, [](const Cause &each) { return each.state == CauseState::RuledOut && !each.reason.isEmpty(); }) >= 3);
        QVERIFY(countOf<Check>(file, [](const Check &each) { return each.cameOut != CameOut::NotDone && !each.result.isEmpty(); }) >= 5);
        QVERIFY(file.all<Bearing>().size() >= 5);
        QVERIFY(file.all<TestPoint>().size() >= 8);
        QVERIFY(countOf<Reading>(file, [](const Reading &each) { return each.phase == Phase::AsFound && each.wanted.bounded(); }) >= 5);
        QVERIFY(countOf<Reading>(file, [](const Reading &each) { return each.phase == Phase::AsItLeaves && each.soak.isNull() && !each.meter.isNull(); }) >= 5);
        QVERIFY(countOf<Reading>(file, [](const Reading &each) { return each.uncertainty.has_value(); }) >= 8);
        QVERIFY(countOf<Reading>(file, [](const Reading &each) { return !each.soak.isNull(); }) >= 5);
        QVERIFY(countOf<Soak>(file, [](const Soak &each) { return each.endedAt.isValid(); }) >= 1);
        QVERIFY(countOf<Step>(file, [](const Step &each) { return each.minutes && !each.symptom.isNull(); }) >= 3);
        QVERIFY(file.all<ClockSpan>().size() >= 3);
        QVERIFY(file.all<TeardownItem>().size() >= 3);
        QCOMPARE(countOf<TeardownItem>(file, [](const TeardownItem &each) { return each.state != TeardownState::Back; }), 0);
        QVERIFY(countOf<Need>(file, [](const Need &each) { return each.state == NeedState::Fitted && !each.position.isEmpty() && !each.oldValue.isEmpty(); }) >= 1);
        QCOMPARE(countOf<Need>(file, [](const Need &each) { return each.state != NeedState::Fitted; }), 0);
        QVERIFY(countOf<Photo>(file, [](const Photo &each) { return each.phase == Phase::AsFound; }) >= 2);
        QVERIFY(countOf<Photo>(file, [](const Photo &each) { return each.phase == Phase::AsItLeaves; }) >= 1);
        QVERIFY(file.all<Comparable>().size() >= 5);
        QCOMPARE(file.all<Plan>().size(), 1);
        QVERIFY(countOf<Proof>(file, [](const Proof &each) { return each.kind == ProofKind::ElectricalSafety && each.cameOut == ProofOutcome::Passed && !each.ruleSet.isEmpty(); }) >= 3);
        QVERIFY(countOf<Proof>(file, [](const Proof &each) { return each.kind == ProofKind::Function && each.cameOut == ProofOutcome::Passed; }) >= 3);
        QVERIFY(countOf<Proof>(file, [](const Proof &each) { return each.kind == ProofKind::Cosmetic; }) >= 1);
        QVERIFY(countOf<Proof>(file, [](const Proof &each) { return each.cameOut == ProofOutcome::NotTested; }) >= 1);
        QVERIFY(countOf<Note>(file, [](const Note &each) { return each.kind == NoteKind::Flaw; }) >= 1);
        QVERIFY(countOf<Note>(file, [](const Note &each) { return each.kind == NoteKind::Use; }) >= 1);
        QCOMPARE(file.all<LeftOff>().size(), 1);
        QVERIFY(file.all<LeftOff>().first().doNotPower.isEmpty());
        QCOMPARE(file.all<Paper>().size(), 1);
        for (const SpendKind kind : {SpendKind::Purchase, SpendKind::CarriageIn, SpendKind::Sale, SpendKind::SellingFee, SpendKind::CarriageOut, SpendKind::Packing})
            QCOMPARE(countOf<Spend>(file, [kind](const Spend &each) { return each.kind == kind; }), 1);
    }

    // 12.8 % of (94.00 + 14.00) + 0.30 = 14.124; of (68.00 + 8.50) + 0.30 = 10.092; halves up. By hand.
    void feesOfTheSales()
    {
        const auto fee = [this](int tag) {
            const UnitFile file = fileOf(*m_demo, tag);
            for (const Spend &spend : file.all<Spend>())
                if (spend.kind == SpendKind::SellingFee)
                    return spend.amount->decimal();
            return QString();
        };
        QCOMPARE(fee(25), QStringLiteral("14.12"));
        QCOMPARE(fee(29), QStringLiteral("10.09"));
    }

    // 45.00 and 6.00 by 40 : 25 : 8. By hand, the last pennies to the largest remainders: 24.6575 15.4109 4.9315 and 3.2877 2.0548 0.6575.
    void lotSharesAddUp()
    {
        const QHash<int, QStringList> wanted{{34, {QStringLiteral("24.66"), QStringLiteral("3.29")}},
                                             {36, {QStringLiteral("15.41"), QStringLiteral("2.05")}},
                                             {38, {QStringLiteral("4.93"), QStringLiteral("0.66")}}};
        const auto lot = m_demo->list<Lot>();
        wantOk(lot);
        QCOMPARE(lot->size(), 1);
        QVERIFY(!lot->first().reason.isEmpty());
        Money total;
        for (auto it = wanted.begin(); it != wanted.end(); ++it) {
            const UnitFile file = fileOf(*m_demo, it.key());
            QCOMPARE(file.unit.lot, lot->first().id);
            QStringList shares;
            for (const Spend &spend : file.all<Spend>())
                if (spend.lot == lot->first().id) {
                    shares << spend.amount->decimal();
                    total += *spend.amount;
                }
            QCOMPARE(shares, it.value());
        }
        QCOMPARE(total.decimal(), QStringLiteral("51.00"));
    }

    void donorsCostMovedOutWhole()
    {
        const Unit donor = fileOf(*m_demo, 22).unit;
        QCOMPARE(donor.outcome, std::optional(Outcome::BrokenForParts));
        Money moved;
        const QList<Batch> batches = m_demo->list<Batch>(QStringLiteral("donor"), donor.id.text()).value();
        for (const Batch &batch : batches)
            moved += batch.unitCost->times(batch.quantity);
        QCOMPARE(moved.decimal(), QStringLiteral("9.00"));
        QCOMPARE(spent(*m_demo, 22), QStringLiteral("9.00"));
    }

    void hopelessCaseWasStoppedWithAReason()
    {
        const UnitFile file = fileOf(*m_demo, 23);
        QSet<QDate> evenings;
        for (const ClockSpan &span : file.all<ClockSpan>())
            evenings << span.startedAt.date();
        QCOMPARE(evenings.size(), 3);
        QCOMPARE(file.unit.outcome, std::optional(Outcome::Scrapped));
        QVERIFY(!file.all<StageMove>().last().because.isEmpty());
    }

    void ownersUnitHasItsOwner()
    {
        const UnitFile file = fileOf(*m_demo, 33);
        QCOMPARE(file.unit.kind, UnitKind::Owners);
        const auto owner = m_demo->get(file.unit.owner);
        wantOk(owner);
        QVERIFY(!owner->reach.isEmpty());
    }

    // Added up by hand from the story's own amounts.
    void moneyOutOnTheRack()
    {
        QCOMPARE(spent(*m_demo, 31), QStringLiteral("57.20")); // 44.00 + 11.20 + 0.60 + 1.00 + 0.40
        QCOMPARE(spent(*m_demo, 33), QStringLiteral("42.10")); // 24.00 + 8.50 + 9.60
        QCOMPARE(spent(*m_demo, 35), QStringLiteral("19.50")); // 12.00 + 5.50 + 2.00
        QCOMPARE(spent(*m_demo, 37), QStringLiteral("24.00")); // 15.40 + 8.60, the stylus only needed
        QCOMPARE(spent(*m_demo, 42), QStringLiteral("42.10")); // 30.00 + 8.40 + 1.20 + 2.50
    }

    void deckOnTheBench()
    {
        const UnitFile file = fileOf(*m_demo, 42);
        QCOMPARE(file.unit.name, QStringLiteral("Pellworth KD-7 cassette deck"));
        QCOMPARE(file.unit.stage, Stage::Bench);
        QCOMPARE(file.unit.serial, QStringLiteral("1180427"));
        QCOMPARE(file.all<Symptom>().size(), 3);
        QCOMPARE(countOf<Symptom>(file, [](const Symptom &each) { return each.state == SymptomState::Open; }), 2);
        QVERIFY(file.all<LeftOff>().first().doNotPower.contains(QStringLiteral("CN5")));
        QCOMPARE(file.all<PhotoPin>().size(), 3);
    }

    void benchIsSetUp()
    {
        const auto bench = m_demo->benchFile();
        wantOk(bench);
        QCOMPARE(bench->setting(settings::benchName), QStringLiteral("Harbour Lane Audio Bench"));
        QCOMPARE(bench->hourlyRate()->decimal(), QStringLiteral("12.00"));
        QVERIFY(bench->all<Meter>().size() >= 8);
        QVERIFY(bench->all<MeterRange>().size() >= 20);
        QVERIFY(bench->all<Channel>().size() >= 3);
        QVERIFY(bench->all<FeeRule>().size() >= 5);
        QVERIFY(bench->all<ModelNotes>().size() >= 3);
        QVERIFY(!bench->setting(settings::terms).isEmpty());
        const auto points = m_demo->list<TestPoint>();
        wantOk(points);
        qsizetype ofModels = 0;
        for (const TestPoint &point : *points) {
            QVERIFY2(point.unit.isNull() != point.modelNotes.isNull(), qPrintable(point.name)); // of one or of the other
            ofModels += point.modelNotes.isNull() ? 0 : 1;
        }
        QVERIFY(ofModels >= 8);
    }

    void workbookIsSoundAndSmall()
    {
        QCOMPARE(m_demo->verify().value(), QStringList());
        m_demo.desk.reset();
        QVERIFY2(QFileInfo(m_book).size() < 15'000'000, qPrintable(QString::number(QFileInfo(m_book).size())));
        wantOk(m_demo.open(m_book));
    }

    void playedAgainItIsTheSame()
    {
        const auto play = [this] {
            SetClock clock(QDateTime({2026, 9, 28}, {9, 0}, Qt::UTC));
            IdMaker ids(clock, 7);
            auto store = Store::create(*BookAddress::parse(m_books.fresh(QStringLiteral("sqlite"))), clock.now(), QStringLiteral("demo"));
            wantOk(store);
            Desk fresh(*std::move(store), ids);
            wantOk(playDemo(fresh, clock));
            return everything(fresh);
        };
        const QByteArray once = play();
        QVERIFY(once.size() > 100'000);
        QVERIFY(once == play());
    }

    void canBeStopped()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        int told = 0;
        QVERIFY(refusal(playDemo(*desk, desk.clock, [&](qint64, qint64) { return ++told < 5; })).contains(QStringLiteral("stopped")));
        QCOMPARE(told, 5);
    }
};

QTEST_MAIN(TestDemoStory)
#include "test_demo_story.moc"
