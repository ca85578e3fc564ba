// The acceptance lists that ship, and how they come onto a unit.
#include "model/sums/acceptance.h"
#include "model/records/settings.h"
#include "model/sums/category_facts.h"
#include "model/sums/coming_in.h"
#include "model/sums/mains_match.h"
#include "model/sums/standing.h"
#include "tests/testing.h"

using namespace ts;

class TestSumsAcceptance : public QObject {
    Q_OBJECT
private:
    const SetClock m_clock{QDateTime(QDate(2026, 11, 25), QTime(10, 0), Qt::UTC)};
    IdMaker m_ids{m_clock, 5};
    Maker m_maker{m_ids};

    static UnitFile unitOf(Category category, std::optional<ProtectionClass> protection = {})
    {
        UnitFile file;
        file.unit.id = Id<Unit>{QUuid::createUuid()};
        file.unit.category = category;
        file.unit.protectionClass = protection;
        return file;
    }

    static QStringList texts(const QList<AcceptanceLine> &lines)
    {
        QStringList all;
        for (const AcceptanceLine &line : lines)
            all << line.text;
        return all;
    }

private Q_SLOTS:
    void everyCategoryHasAListThatSaysItsSource()
    {
        for (const auto &[category, word] : Words<Category>::list) {
            const AcceptanceList list = acceptanceOf(category);
            QVERIFY2(list.category == category, word);
            QVERIFY2(list.lines.size() >= 4, word);
            QVERIFY2(!list.source.isEmpty(), word);
            QVERIFY2(std::any_of(list.lines.begin(), list.lines.end(), [](const AcceptanceLine &line) { return line.kind == ProofKind::Cosmetic; }), word);
        }
        QVERIFY(!electricalSafety().category);
        for (const AcceptanceLine &line : electricalSafety().lines)
            QCOMPARE(line.kind, ProofKind::ElectricalSafety);
    }

    void whatAHandoverAsksForIsInTheList()
    {
        // With every line passed, the sheet has no area of the category to name as untested (category_facts.cpp, written by itself).
        for (const auto &[category, word] : Words<Category>::list) {
            UnitFile file = unitOf(category);
            for (Proof proof : proofsFor(file.unit, m_maker)) {
                proof.cameOut = ProofOutcome::Passed;
                file.all<Proof>() << proof;
            }
            for (const QString &sentence : notDone(file))
                QVERIFY2(!sentence.startsWith(QLatin1String("No test is recorded of")) && !sentence.contains(QLatin1String("electrical safety")), qPrintable(QString::fromLatin1(word) + QStringLiteral(": ") + sentence));
        }
    }

    void protectionClassSaysWhatIsTested()
    {
        // IEC 61140: class I relies on its protective earth, class II has none, class III runs from a safe low voltage.
        const QString earth = QStringLiteral("Protective earth: touchable metal to the earth pin");
        QVERIFY(texts(acceptanceFor(unitOf(Category::Tuner, ProtectionClass::I).unit)).contains(earth));
        QVERIFY(!texts(acceptanceFor(unitOf(Category::Tuner, ProtectionClass::II).unit)).contains(earth));
        QVERIFY(texts(acceptanceFor(unitOf(Category::Tuner).unit)).contains(earth)); // not known: better asked for
        for (const Category category : {Category::Tuner, Category::Loudspeaker})
            for (const AcceptanceLine &line : acceptanceFor(unitOf(category, ProtectionClass::III).unit))
                QVERIFY(line.kind != ProofKind::ElectricalSafety);
    }

    void byWhateverDoorAUnitComesInItBringsTheSame()
    {
        UnitFile file = unitOf(Category::Tuner, ProtectionClass::I);
        file.unit.mains = QStringLiteral("117 V 60 Hz");
        BenchFile bench;
        Setting mains;
        mains.name = settings::mains;
        mains.value = QStringLiteral("230 V 50 Hz");
        bench.all<Setting>() << mains;
        const ComingIn brings = comingIn(file.unit, bench, m_maker);
        QCOMPARE(brings.proofs.size(), acceptanceFor(file.unit).size());
        for (const Proof &proof : brings.proofs)
            QVERIFY(proof.unit == file.unit.id && proof.cameOut == ProofOutcome::NotTested);
        QCOMPARE(brings.cautions, cautions(file, bench));
        QVERIFY(!brings.cautions.isEmpty());
        QCOMPARE(brings.mains, mainsCautions(file.unit, mains.value));
        QVERIFY(!brings.mains.isEmpty());
    }

    void aListComesOnceAndAsOneChange()
    {
        UnitFile file = unitOf(Category::CassetteDeck, ProtectionClass::II);
        Proof mine = m_maker.fresh<Proof>();
        mine.text = QStringLiteral("counter AND  pause"); // reads the same as a line of the list
        mine.cameOut = ProofOutcome::Failed;
        file.all<Proof>() << mine;
        const auto change = bringAcceptance(file, m_maker);
        QVERIFY(change);
        QCOMPARE(change->items().size(), acceptanceFor(file.unit).size() - 1);
        QVERIFY(change->sentence().startsWith(QLatin1String("Brought in")));
        for (const ChangeItem &item : change->items())
            file.all<Proof>() << description<Proof>().fromRow(*item.after).value();
        const auto again = bringAcceptance(file, m_maker);
        QVERIFY(!again);
        QVERIFY(again.trouble().sentence().contains(QLatin1String("already")));
    }

    void aProofIsDatedAndSignedWhenItIsDone()
    {
        const QDate today(2026, 11, 25);
        const Proof fresh;
        const Proof failed = provedAs(fresh, ProofOutcome::Failed, today, QStringLiteral("R. M."));
        QCOMPARE(failed.doneOn, today);
        QCOMPARE(failed.initials, QStringLiteral("R. M."));
        const Proof back = provedAs(failed, ProofOutcome::NotTested, today, QStringLiteral("R. M."));
        QVERIFY(!back.doneOn.isValid());
        QVERIFY(back.initials.isEmpty());
    }

    void aStrangeListIsRefusedByName_data()
    {
        QTest::addColumn<QByteArray>("json");
        QTest::addColumn<QString>("says");
        const auto row = [](const char *name, const char *json, const char *says) { QTest::newRow(name) << QByteArray(json) << QString::fromLatin1(says); };
        row("no json", "{", "Cannot read the acceptance list");
        row("list", "[]", "no JSON object");
        row("category", R"({"category": "spaceship", "source": "s", "lines": [{"kind": "function", "text": "a"}]})", "spaceship");
        row("source", R"({"category": "tuner", "lines": [{"kind": "function", "text": "a"}]})", "source");
        row("empty", R"({"category": "tuner", "source": "s", "lines": []})", "no lines");
        row("kind", R"({"category": "tuner", "source": "s", "lines": [{"kind": "magic", "text": "a"}]})", "magic");
        row("text", R"({"category": "tuner", "source": "s", "lines": [{"kind": "function", "text": " "}]})", "no text");
        row("class", R"({"category": "tuner", "source": "s", "lines": [{"kind": "function", "text": "a", "classes": ["IV"]}]})", "IV");
        row("twice", R"({"category": "tuner", "source": "s", "lines": [{"kind": "function", "text": "a b"}, {"kind": "cosmetic", "text": "A  B"}]})", "twice");
    }

    void aStrangeListIsRefusedByName()
    {
        QFETCH(QByteArray, json);
        QFETCH(QString, says);
        const auto list = readAcceptance(json);
        QVERIFY(!list);
        QVERIFY2(list.trouble().sentence().contains(says), qPrintable(list.trouble().sentence()));
    }
};

QTEST_GUILESS_MAIN(TestSumsAcceptance)
#include "test_sums_acceptance.moc"
