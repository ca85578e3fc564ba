// What keeps a unit from being called ready, and how it goes there all the same; how a sale stands in the spends.
#include "model/records/purchase.h"
#include "model/records/sale.h"
#include "model/sums/stage_rules.h"
#include "tests/testing.h"

using namespace ts;
using namespace ts::testing;

class TestSumsStageRules : public QObject {
    Q_OBJECT
private:
    SetClock m_clock{QDateTime({2026, 11, 25}, {9, 0}, Qt::UTC)};
    IdMaker m_ids{m_clock, 1};
    Maker m_maker{m_ids};

    UnitFile bench()
    {
        UnitFile file;
        file.unit = m_maker.fresh<Unit>();
        file.unit.tag = 42;
        file.unit.category = Category::CassetteDeck;
        file.unit.stage = Stage::Proving;
        return file;
    }
    Proof failed(const UnitFile &file, ProofKind kind)
    {
        Proof proof = m_maker.fresh<Proof>();
        proof.unit = file.unit.id;
        proof.text = QStringLiteral("plays a disc to its end");
        proof.kind = kind;
        proof.cameOut = ProofOutcome::Failed;
        return proof;
    }
    Money pounds(qint64 pence) const { return Money(pence, *Currency::parse(u"GBP")); }

private Q_SLOTS:
    void nothingInTheWay()
    {
        UnitFile file = bench();
        Proof proof = failed(file, ProofKind::Function);
        for (const ProofOutcome fine : {ProofOutcome::Passed, ProofOutcome::NotApplicable, ProofOutcome::NotTested}) {
            proof.cameOut = fine;
            file.all<Proof>() = {proof};
            QVERIFY(inTheWay(file, Stage::Ready).reasons.isEmpty());
        }
        wantOk(ruledStageChange(file, {.stage = Stage::Ready}, m_maker));
    }

    void aFailedProofIsOverruledByAReason()
    {
        UnitFile file = bench();
        file.all<Proof>() = {failed(file, ProofKind::Function)};
        const auto refused = ruledStageChange(file, {.stage = Stage::Ready}, m_maker);
        QVERIFY(refusal(refused).contains(QLatin1String("plays a disc to its end")));
        QVERIFY(refusal(refused).contains(QLatin1String("say why")));
        QVERIFY(!ruledStageChange(file, {.stage = Stage::Ready, .because = QStringLiteral("  ")}, m_maker));
        const auto moved = ruledStageChange(file, {.stage = Stage::Ready, .because = QStringLiteral("the disc is scratched")}, m_maker);
        wantOk(moved);
        const auto move = description<StageMove>().fromRow(*moved->items().first().after);
        QCOMPARE(move->because, QStringLiteral("the disc is scratched"));
        // Only what leaves the bench is held against it.
        for (const Stage stage : {Stage::Shelved, Stage::Bench, Stage::Inbound, Stage::Scouted})
            wantOk(ruledStageChange(file, {.stage = stage}, m_maker));
        wantOk(ruledStageChange(file, {.stage = Stage::Closed, .outcome = Outcome::BrokenForParts}, m_maker));
    }

    void whatIsStillOffIsNamed()
    {
        UnitFile file = bench();
        TeardownItem lid = m_maker.fresh<TeardownItem>();
        lid.what = QStringLiteral("lid");
        TeardownItem door = m_maker.fresh<TeardownItem>();
        door.what = QStringLiteral("door");
        door.state = TeardownState::LeftOut;
        file.all<TeardownItem>() = {lid, door};
        QCOMPARE(inTheWay(file, Stage::Ready).reasons, QStringList{QStringLiteral("still off: lid")});
        QVERIFY(inTheWay(file, Stage::Offered).canBeOverruled);
        file.unit.stage = Stage::Ready; // it was said already
        QVERIFY(inTheWay(file, Stage::Offered).reasons.isEmpty());
    }

    void whatCanHurtIsNotOverruled()
    {
        UnitFile file = bench();
        file.all<Proof>() = {failed(file, ProofKind::ElectricalSafety)};
        QVERIFY(!inTheWay(file, Stage::Ready).canBeOverruled);
        QVERIFY(refusal(ruledStageChange(file, {.stage = Stage::Ready, .because = QStringLiteral("in a hurry")}, m_maker)).contains(QLatin1String("put it right first")));
        QVERIFY(inTheWay(file, Stage::Offered).canBeOverruled); // it may be sold as faulty
        LeftOff left = m_maker.fresh<LeftOff>();
        left.doNotPower = QStringLiteral("primary exposed");
        file.all<Proof>() = {};
        file.all<LeftOff>() = {left};
        QVERIFY(!inTheWay(file, Stage::Ready).canBeOverruled);
    }

    void untestedSafetyIsSaidAndKeepsNothing()
    {
        // IEC 61140 has safety rest on protective measures of the unit; whether they hold is known by a test alone. That a move says what was not
        // tested, and is not kept, is the house's own rule.
        UnitFile file = bench();
        const auto sentence = [&](const StageWish &wish) {
            const auto change = ruledStageChange(file, wish, m_maker);
            return change ? change->sentence() : refusal(change);
        };
        QVERIFY(safetyGap(file).none); // a cassette deck runs from the mains, and nothing is on record
        QCOMPARE(sentence({.stage = Stage::Ready}), QStringLiteral("Moved 0042 to Ready; no electrical-safety proof is on record"));
        Proof earth = failed(file, ProofKind::ElectricalSafety);
        earth.cameOut = ProofOutcome::NotTested;
        earth.text = QStringLiteral("earth continuity");
        Proof insulation = earth;
        insulation.id = m_maker.fresh<Proof>().id;
        insulation.text = QStringLiteral("insulation");
        insulation.cameOut = ProofOutcome::Passed;
        Proof none = earth;
        none.id = m_maker.fresh<Proof>().id;
        none.cameOut = ProofOutcome::NotApplicable;
        Proof plays = failed(file, ProofKind::Function);
        plays.cameOut = ProofOutcome::NotTested;
        file.all<Proof>() = {earth, insulation, none, plays};
        QCOMPARE(safetyGap(file).untested, QStringList{QStringLiteral("earth continuity")});
        QCOMPARE(sentence({.stage = Stage::Ready}), QStringLiteral("Moved 0042 to Ready; 1 electrical-safety proof not tested"));
        QCOMPARE(sentence({.stage = Stage::Offered}), QStringLiteral("Moved 0042 to Offered; 1 electrical-safety proof not tested"));
        QCOMPARE(sentence({.stage = Stage::Closed, .outcome = Outcome::Sold}), QStringLiteral("Moved 0042 to Closed: sold; 1 electrical-safety proof not tested"));
        // Nobody plugs it in there.
        for (const StageWish &wish : {StageWish{.stage = Stage::Shelved}, StageWish{.stage = Stage::Closed, .outcome = Outcome::BrokenForParts}})
            QVERIFY(!sentence(wish).contains(QLatin1String("electrical")));
        file.unit.stage = Stage::Offered; // it was said when it went there
        QCOMPARE(sentence({.stage = Stage::Ready}), QStringLiteral("Moved 0042 to Ready"));
        file.unit.stage = Stage::Proving;
        file.all<Proof>()[0].cameOut = ProofOutcome::Passed;
        QVERIFY(!safetyGap(file).any());
        QCOMPARE(sentence({.stage = Stage::Ready}), QStringLiteral("Moved 0042 to Ready"));
        // Loudspeakers without a plate take no mains: nothing is missing.
        file.all<Proof>().clear();
        file.unit.category = Category::Loudspeaker;
        QVERIFY(!safetyGap(file).any());
    }

    void aPurchaseIsItsSpends()
    {
        UnitFile file = bench();
        BenchFile contacts;
        const Purchase wish{pounds(3000), pounds(840), QStringLiteral("Dennis Ravell"), QDate(2026, 11, 19)};
        const auto bought = purchaseChange(file, contacts, wish, m_maker);
        wantOk(bought);
        QCOMPARE(bought->items().size(), 3); // the seller first, who is new
        contacts.all<Contact>() << *description<Contact>().fromRow(*bought->items().first().after);
        for (const ChangeItem &item : bought->items().mid(1))
            file.all<Spend>() << *description<Spend>().fromRow(*item.after);
        QCOMPARE(purchaseOf(file, contacts), wish);
        QVERIFY(purchaseChange(file, contacts, wish, m_maker)->isEmpty());
        Purchase later = wish;
        later.boughtOn = QDate(2026, 11, 20);
        QCOMPARE(purchaseChange(file, contacts, later, m_maker)->items().size(), 2); // both sums, and no second seller
        later = wish;
        later.price = pounds(-1);
        QVERIFY(refusal(purchaseChange(file, contacts, later, m_maker)).contains(QLatin1String("below nothing")));
        file.all<Spend>().first().lot = m_maker.fresh<Lot>().id;
        later.price = pounds(2000);
        QVERIFY(refusal(purchaseChange(file, contacts, later, m_maker)).contains(QLatin1String("share of a lot")));
        file.all<Spend>().clear();
        later = Purchase{std::nullopt, std::nullopt, QStringLiteral("Dennis Ravell"), {}};
        QVERIFY(refusal(purchaseChange(file, contacts, later, m_maker)).contains(QLatin1String("no sum is on record")));
    }

    void aSaleIsItsSpends()
    {
        UnitFile file = bench();
        const Sale wish{pounds(9400), pounds(1412), std::nullopt, {}, QDate(2026, 10, 24)};
        const auto sold = saleChange(file, wish, m_maker);
        wantOk(sold);
        QCOMPARE(sold->items().size(), 2);
        for (const ChangeItem &item : sold->items())
            file.all<Spend>() << *description<Spend>().fromRow(*item.after);
        QCOMPARE(saleOf(file), wish);
        QVERIFY(saleChange(file, wish, m_maker)->isEmpty());
        Sale other = wish;
        other.price = pounds(9000);
        other.fees.reset();
        other.carriage = pounds(1320);
        const auto set = saleChange(file, other, m_maker);
        QCOMPARE(set->items().size(), 3); // edited, removed, added
        QVERIFY(set->items().at(0).before && set->items().at(0).after);
        QVERIFY(!set->items().at(1).after);
        QVERIFY(!set->items().at(2).before);
        other.price = pounds(-1);
        QVERIFY(refusal(saleChange(file, other, m_maker)).contains(QLatin1String("below nothing")));
        file.all<Spend>() << file.all<Spend>().first(); // sold in two halves
        QCOMPARE(saleOf(file).price, std::optional(pounds(18800)));
        QVERIFY(refusal(saleChange(file, wish, m_maker)).contains(QLatin1String("Money page")));
    }
};

QTEST_GUILESS_MAIN(TestSumsStageRules)
#include "test_sums_stage_rules.moc"
