#include "tests/paper_samples.h"
#include "tests/testing.h"

#include <QFile>
#include <QRegularExpression>

using namespace ts;
using namespace ts::testing;

/// What a restoration sheet says: gathered from a unit's records, and the web page written from it.
class PaperFacts : public QObject {
    Q_OBJECT

    static QStringList said(const RestorationFacts &facts)
    {
        // Every text of the page without its tags.
        QString page = QString::fromUtf8(restorationHtml(facts));
        page = page.mid(page.indexOf(QStringLiteral("<body>")));
        page.replace(QRegularExpression(QStringLiteral("<[^>]*>")), QStringLiteral("\n"));
        QStringList texts;
        for (const QString &line : page.split(QLatin1Char('\n')))
            if (!line.trimmed().isEmpty())
                texts << line.trimmed();
        return texts;
    }
    static const RestorationFacts::Measured &row(const RestorationFacts &facts, const QString &what)
    {
        for (const RestorationFacts::Measured &each : facts.measured)
            if (each.what == what)
                return each;
        static const RestorationFacts::Measured none;
        return none;
    }

private Q_SLOTS:
    void headingSaysWhichUnit()
    {
        const RestorationFacts facts = richSample(false).facts();
        QCOMPARE(facts.name, QStringLiteral("Pellworth KD-7 cassette deck"));
        QCOMPARE(facts.identity, (QStringList{QStringLiteral("Serial 1180427"), QStringLiteral("made about 1988"),
                                              QStringLiteral("230 V 50 Hz, class II"), QStringLiteral("tag 0042")}));
        QCOMPARE(facts.date, QStringLiteral("28 November 2026"));
        QCOMPARE(facts.worker, QStringLiteral("R. M."));
    }

    void workStandsBesideItsSymptom()
    {
        const RestorationFacts facts = richSample(false).facts();
        QCOMPARE(facts.work.size(), 4);
        QCOMPARE(facts.work[0].seen, QStringLiteral("Take-up reel stopped after a few seconds"));
        QCOMPARE(facts.work[0].causes,
                 QStringList{QStringLiteral("Glazed clutch felt, idler tyre hard")}); // the motor was ruled out
        QCOMPARE(facts.work[0].done,
                 (QStringList{QStringLiteral("Clutch felt cleaned and re-faced"), QStringLiteral("Idler tyre renewed")}));
        QVERIFY(facts.work[1].done.contains(QStringLiteral("Azimuth set: 70° at 10 kHz → under 10°")));
        QVERIFY(facts.work[1].done.contains(QStringLiteral("Fitted head lead, screened, 180 mm")));
        QCOMPARE(facts.work[3].seen, QString());
        QCOMPARE(facts.work[3].done, QStringList{QStringLiteral("Source switch cleaned")}); // "fully serviced" is not there
    }

    void anOpenSymptomIsSaidToBeOpen()
    {
        PaperSample sample = bareSample();
        sample.symptom(QStringLiteral("crackles"), {}, SymptomState::Open);
        QCOMPARE(sample.facts().work[0].state, QStringLiteral("still open"));
        QVERIFY(said(sample.facts()).contains(QStringLiteral("still open")));
    }

    void readingsArePairedAndJudged()
    {
        const RestorationFacts facts = richSample(false).facts();
        QCOMPARE(facts.measured.size(), 8);
        // Values ± U against their limits, by the rule of verdict.h; the sums here are done by head.
        const auto &torque = row(facts, QStringLiteral("Take-up torque"));
        QCOMPARE(torque.found.text, QStringLiteral("14\u00A0gf·cm"));
        QCOMPARE(torque.leaves.text, QStringLiteral("47\u00A0gf·cm"));
        QCOMPARE(torque.leaves.spread, QStringLiteral("± 2\u00A0gf·cm"));
        QCOMPARE(torque.wanted, QStringLiteral("35 to 65 gf·cm"));
        QCOMPARE(torque.source, QStringLiteral("service manual, page 14"));
        QCOMPARE(torque.verdict, QStringLiteral("within")); // 45 to 49 inside 35 to 65
        QCOMPARE(torque.verdictText, QStringLiteral("within"));
        // 11.80 ± 0.069 V against 11.76 to 12.24 V: 11.731 is below, 11.869 above the lower limit.
        const auto &rail = row(facts, QStringLiteral("CN2.4"));
        QCOMPARE(rail.verdict, QStringLiteral("too_close_to_call"));
        QVERIFY(rail.chance.endsWith(QStringLiteral(" % likely within")));
        QCOMPARE(rail.during.text, QString()); // a later reading as it leaves takes its place
        QVERIFY(rail.repeated);
        QCOMPARE(row(facts, QStringLiteral("Motor current")).leaves.text, QString());
        QCOMPARE(row(facts, QStringLiteral("Motor current")).verdict, QString());
        QCOMPARE(row(facts, QStringLiteral("Insulation, mains to touchable metal")).leaves.text,
                 QStringLiteral(">\u00A0200\u00A0MΩ"));
    }

    void anUncertaintyNeverLooksBetterThanItIs_data()
    {
        QTest::addColumn<double>("uncertainty");
        QTest::addColumn<QString>("shown");
        // Two significant figures (JCGM 100:2008, 7.2.6), rounded up.
        QTest::newRow("up") << 0.0691 << QStringLiteral("± 0.07\u00A0V");
        QTest::newRow("exact") << 0.3 << QStringLiteral("± 0.3\u00A0V");
        QTest::newRow("two") << 0.0124 << QStringLiteral("± 0.013\u00A0V");
        QTest::newRow("large") << 1234.0 << QStringLiteral("± 1300\u00A0V");
        QTest::newRow("carry") << 0.0999 << QStringLiteral("± 0.1\u00A0V");
    }
    void anUncertaintyNeverLooksBetterThanItIs()
    {
        QFETCH(double, uncertainty);
        QFETCH(QString, shown);
        PaperSample sample = bareSample();
        const auto point = sample.point(QStringLiteral("TP1"), {}, {}, {}, 0);
        sample.reading(point, QStringLiteral("5 V"), Phase::AsItLeaves, uncertainty);
        QCOMPARE(sample.facts().measured[0].leaves.spread, shown);
    }

    void aWordWithoutUncertaintyLooksLessSure()
    {
        PaperSample sample = bareSample();
        const auto weighed = sample.point(QStringLiteral("TP1"), QStringLiteral("5 V 5%"), {}, {}, 1);
        const auto bare = sample.point(QStringLiteral("TP2"), QStringLiteral("5 V 5%"), {}, {}, 2);
        const auto wrong = sample.point(QStringLiteral("TP3"), QStringLiteral("5 V 5%"), {}, {}, 3);
        sample.reading(weighed, QStringLiteral("5.01 V"), Phase::AsItLeaves, 0.05);
        sample.reading(bare, QStringLiteral("5.01 V"), Phase::AsItLeaves);
        sample.reading(wrong, QStringLiteral("6.2 V"), Phase::AsItLeaves);
        const RestorationFacts facts = sample.facts();
        QVERIFY(!row(facts, QStringLiteral("TP1")).byFigureAlone);
        QVERIFY(row(facts, QStringLiteral("TP2")).byFigureAlone);
        QCOMPARE(row(facts, QStringLiteral("TP2")).verdictText, QStringLiteral("within"));
        const QString page = QString::fromUtf8(restorationHtml(facts));
        QCOMPARE(page.count(QStringLiteral("<p class=\"word within\">within</p>")), 1);
        QCOMPARE(page.count(QStringLiteral("<p class=\"word by_figure\">within</p><p class=\"small\">by the figure alone</p>")), 1);
        QCOMPARE(page.count(QStringLiteral("<p class=\"word outside\">outside</p><p class=\"small\">by the figure alone</p>")), 1);
        QVERIFY(!said(facts).filter(QStringLiteral("the uncertainty of the meter was not taken into account")).isEmpty());
    }

    void aSheetSaysWhichOneItIs()
    {
        const RestorationFacts facts = bareSample().facts();
        QVERIFY(said(facts).contains(QStringLiteral("Restoration sheet 17, edition 2 · stage: shelved")));
        QVERIFY(said(facts).contains(QStringLiteral("Questions: quote tag 0007 and sheet 17.")));
        RestorationFacts draft = facts;
        draft.number = draft.edition = 0;
        QVERIFY(said(draft).contains(QStringLiteral("Restoration sheet, a draft that was not handed over · stage: shelved")));
    }

    void aReadingDuringWorkIsShownWhereNothingFollowed()
    {
        PaperSample sample = bareSample();
        const auto point = sample.point(QStringLiteral("TP1"), QStringLiteral("5 V 5%"), {}, {}, 0);
        sample.reading(point, QStringLiteral("5.01 V"), Phase::DuringWork);
        const RestorationFacts facts = sample.facts();
        QCOMPARE(facts.measured[0].during.text, QStringLiteral("5.01\u00A0V"));
        QCOMPARE(facts.measured[0].verdict, QString()); // nothing is said of how it leaves
        QVERIFY(said(facts).contains(QStringLiteral("During work")));
        QVERIFY(!said(richSample(false).facts()).contains(QStringLiteral("During work")));
    }

    void oneMeterIsNamedOnce()
    {
        PaperSample sample = bareSample();
        for (const char *name : {"TP1", "TP2"})
            sample.reading(sample.point(QString::fromLatin1(name), {}, {}, {}, 0), QStringLiteral("5 V"), Phase::AsItLeaves, {},
                           QStringLiteral("Tarrick 41"));
        QCOMPARE(sample.facts().oneMeter, QStringLiteral("Tarrick 41"));
        QCOMPARE(said(sample.facts()).filter(QStringLiteral("Tarrick")).size(), 1);
        QCOMPARE(richSample(false).facts().oneMeter, QString());
    }

    void soaksTellTheirTimeAndInterruptions()
    {
        const RestorationFacts facts = richSample(false).facts();
        QCOMPARE(facts.soaked.size(), 1);
        QCOMPARE(facts.soaked[0].length, QStringLiteral("4 h 10 m")); // 18:00 to 22:10
        QVERIFY(said(facts).contains(QStringLiteral("Soak, 4 h 10 m: Play, both directions")));
        QCOMPARE(facts.soaked[0].readings, QStringLiteral("4 readings from 31.5 °C to 38.4 °C, wanted up to 45 °C"));
        QCOMPARE(facts.soaked[0].verdict, QStringLiteral("within"));
        QVERIFY(!said(facts).filter(QStringLiteral("stopped once for 10 minutes")).isEmpty());
        QCOMPARE(row(facts, QStringLiteral("Motor, by thermometer")).what, QString()); // not among the single readings
    }

    void provesAndSafetyStandApart()
    {
        const RestorationFacts facts = richSample(false).facts();
        QCOMPARE(facts.proved.size(), 4); // what was not tested stands under what was not done, and there alone
        QCOMPARE(facts.safety.checks.size(), 3);
        QVERIFY(facts.safety.recorded);
        const QStringList texts = said(facts);
        for (const char *word : {"passed", "failed", "not applicable"})
            QVERIFY2(texts.contains(QLatin1String(word)), word);
        QCOMPARE(texts.filter(QStringLiteral("Metal tape")), QStringList{QStringLiteral("Not tested: Metal tape.")}); // once
        QVERIFY(!texts.filter(QStringLiteral("EN 50699")).isEmpty());
        QVERIFY(!texts.filter(QStringLiteral("no certificate: local codes and licensed practice come first")).isEmpty());
    }

    void anInsulationReadingIsASafetyCheck()
    {
        PaperSample sample = bareSample();
        sample.file.unit.protectionClass = ProtectionClass::II;
        const auto insulation = sample.point(QStringLiteral("insulation"), QStringLiteral(">= 2 MΩ"), {}, {}, 1);
        sample.reading(insulation, QStringLiteral("200 MΩ"), Phase::DuringWork, {}, QStringLiteral("insulation tester"));
        QVERIFY(!sample.facts().safety.recorded); // what it was on the way says nothing of how it leaves
        QCOMPARE(sample.facts().safety.checks.size(), 1); // but it stands there with its words
        QVERIFY(sample.facts().safety.checks[0].result.endsWith(QStringLiteral("; during the work, not as it leaves")));
        sample.reading(insulation, QStringLiteral("200 MΩ"), Phase::AsItLeaves, {}, QStringLiteral("insulation tester"));
        RestorationFacts facts = sample.facts();
        QVERIFY(facts.safety.recorded);
        QCOMPARE(facts.safety.checks.size(), 1);
        QCOMPARE(facts.safety.checks[0].cameOut, QStringLiteral("within"));
        QVERIFY(facts.safety.checks[0].byFigureAlone);
        QCOMPARE(facts.safety.checks[0].result,
                 QStringLiteral("200 MΩ, wanted at least 2 MΩ, by the figure alone (whose limit that is, is not on record)"));
        QCOMPARE(facts.safety.checks[0].instrument, QStringLiteral("insulation tester"));
        QCOMPARE(facts.notDone.filter(QStringLiteral("electrical safety"), Qt::CaseInsensitive),
                 QStringList{QStringLiteral("Electrical safety, not tested: Plug, lead, grip and fuse looked at; the cover is whole and nothing live can be "
                                            "reached; Touch current at every metal part that can be touched; Lead cool and nothing too hot after hours of "
                                            "running.")});
        QVERIFY(facts.notices.isEmpty());
        // Beside proofs that nobody marked: what the reading is of counts as tried, with the rules of that proof; the others do not.
        for (const char *text : {"Insulation at 500 V DC: live and neutral together to touchable metal", "Protective earth: touchable metal to the earth pin"})
            sample.proof(ProofKind::ElectricalSafety, ProofOutcome::NotTested, QString::fromLatin1(text), {}, {}, QStringLiteral("EN 50699"));
        facts = sample.facts();
        QCOMPARE(facts.safety.checks.size(), 1);
        QCOMPARE(facts.safety.checks[0].text, QStringLiteral("insulation"));
        QCOMPARE(facts.safety.checks[0].result, QStringLiteral("200 MΩ, wanted at least 2 MΩ, by the figure alone (limit by EN 50699)"));
        QCOMPARE(facts.notDone.filter(QStringLiteral("electrical safety"), Qt::CaseInsensitive),
                 QStringList{QStringLiteral("Electrical safety, not tested: Protective earth: touchable metal to the earth pin.")});
        const QStringList texts = said(facts);
        QVERIFY(!texts.filter(QStringLiteral("Limits used: EN 50699. What was not tested is named under")).isEmpty());
        QVERIFY(!texts.contains(QStringLiteral("not tested"))); // no row of its own
        QCOMPARE(QString(texts.join(QLatin1Char('\n'))).count(QStringLiteral("Protective earth: touchable metal")), 1);
        // The same said as a check stands there once.
        sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Passed, QStringLiteral("insulation at 500 V"));
        QCOMPARE(sample.facts().safety.checks.size(), 1);
        QCOMPARE(sample.facts().safety.checks[0].text, QStringLiteral("insulation at 500 V"));
        QCOMPARE(sample.facts().safety.checks[0].cameOut, QStringLiteral("passed"));

        sample.reading(insulation, QStringLiteral("0.4 MΩ"), Phase::AsItLeaves, 0.05);
        facts = sample.facts();
        QCOMPARE(facts.safety.checks.last().cameOut, QStringLiteral("outside"));
        QCOMPARE(facts.notices, QStringList{QStringLiteral("Do not use this unit: an electrical safety check failed, insulation: "
                                                           "0.4 MΩ ± 0.05 MΩ, wanted at least 2 MΩ")});
    }

    void aSafetyReadingThatDecidesNothingIsNoTest()
    {
        PaperSample sample = bareSample();
        sample.file.unit.protectionClass = ProtectionClass::I;
        sample.reading(sample.point(QStringLiteral("earth bond"), {}, {}, {}, 1), QStringLiteral("0.08 Ω"), Phase::AsItLeaves);
        sample.reading(sample.point(QStringLiteral("leakage of C12"), QStringLiteral("<= 5 µA"), {}, {}, 2), QStringLiteral("1 µA"),
                       Phase::AsItLeaves);
        const RestorationFacts facts = sample.facts();
        QVERIFY(!facts.safety.recorded);
        QVERIFY(facts.notDone.contains(QStringLiteral("Electrical safety was measured, but nothing can be said from it, for want of a "
                                                      "limit or of a surer meter: earth bond.")));
    }

    void aSafetyReadingOutsideBeforeAndNotTakenAgainIsSaidFirst()
    {
        PaperSample sample = bareSample();
        const auto earth = sample.point(QStringLiteral("earth bond"), QStringLiteral("<= 0.3 Ω"), {}, {}, 1);
        sample.reading(earth, QStringLiteral("2.4 Ω"), Phase::AsFound, 0.05);
        QCOMPARE(sample.facts().notices, QStringList{QStringLiteral("Do not use this unit: an electrical safety check failed, earth bond: 2.4 Ω ± 0.05 Ω, "
                                                                    "wanted up to 0.3 Ω, and not measured as it leaves")});
        sample.reading(earth, QStringLiteral("0.11 Ω"), Phase::AsItLeaves, 0.02);
        QVERIFY(sample.facts().notices.isEmpty());
    }

    void aFailedSafetyCheckIsTheFirstThingSaid()
    {
        PaperSample sample = bareSample();
        sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Failed, QStringLiteral("earth continuity"));
        QCOMPARE(sample.facts().notices,
                 QStringList{QStringLiteral("Do not use this unit: an electrical safety check failed, earth continuity")});
        sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Passed, QStringLiteral("Earth continuity")); // put right and tried again
        QVERIFY(sample.facts().notices.isEmpty());
    }

    void whatWasNotDoneIsWorkedOut()
    {
        const QStringList list = richSample(false).facts().notDone;
        QVERIFY(!list.filter(QStringLiteral("Metal tape")).isEmpty());
        QVERIFY(!list.filter(QStringLiteral("Motor current")).isEmpty());
        QVERIFY(list.contains(QStringLiteral("One entry names no particular work or check; nothing is claimed for it.")));
        const QStringList texts = said(richSample(false).facts());
        for (const QString &sentence : list)
            QVERIFY2(texts.contains(sentence), qPrintable(sentence));
    }

    void whatMustNotBePoweredComesFirst()
    {
        QVERIFY(richSample(false).facts().notices.isEmpty());
        PaperSample sample = bareSample();
        LeftOff left;
        left.doNotPower = QStringLiteral("primary exposed");
        sample.add(left);
        const QStringList texts = said(sample.facts());
        const auto notice = texts.indexOf(QStringLiteral("Do not power this unit: primary exposed"));
        QVERIFY(notice > 0);
        QVERIFY(notice < texts.indexOf(QStringLiteral("What was wrong, and what was done")));
    }

    void privateNotesStayPrivate() { QVERIFY(!restorationHtml(richSample(false).facts()).contains("bought too dear")); }

    void anEmptyUnitSaysWhatIsNotOnRecord()
    {
        const QStringList texts = said(bareSample().facts());
        for (const char *sentence :
             {"No fault was noted at this bench, and no work is on record.", "Nothing was measured, or no reading was recorded.",
              "No acceptance check was recorded.", "No part is on record as fitted; what is inside was there when it came.",
              "The protection class is not on record. No electrical safety test of this unit is on record.",
              "No flaw was noted, which is not the same as none: ask."})
            QVERIFY2(texts.contains(QString::fromUtf8(sentence)), sentence);
        QVERIFY(texts.contains(QStringLiteral("As reported: “No sound, crackles when the volume is turned”")));
    }

    void neverABareClaim()
    {
        for (const char *claim : {"serviced", "Fully restored.", "tested", "Tested OK, working", "professionally refurbished"}) {
            const QString text = QString::fromLatin1(claim);
            PaperSample sample = bareSample();
            Unit &unit = sample.file.unit;
            unit.name = unit.claim = unit.looks = unit.function = unit.accessories = unit.earlierWork = text;
            unit.maker = QStringLiteral("Quenby");
            const auto symptom = sample.symptom(text, {}, SymptomState::Cleared);
            sample.cause(symptom, text, CauseState::Confirmed);
            sample.step(symptom, StepKind::Other, text);
            sample.fitted(symptom, text);
            sample.proof(ProofKind::Function, ProofOutcome::Passed, text);
            sample.proof(ProofKind::ElectricalSafety, ProofOutcome::Passed, text, text);
            sample.note(NoteKind::Flaw, text);
            sample.note(NoteKind::Use, text);
            sample.setting(settings::terms, text);
            const RestorationFacts facts = sample.facts();
            QCOMPARE(facts.name, QStringLiteral("Quenby"));
            QVERIFY(!facts.safety.recorded);
            QString all = said(facts).join(QLatin1Char('\n')).toLower();
            all.remove(QStringLiteral("restoration sheet")).remove(QStringLiteral("not tested"));
            for (const char *word : {"serviced", "restored", "tested", "refurbished"})
                QVERIFY2(!all.contains(QLatin1String(word)), qPrintable(text + QStringLiteral(" left ") + QLatin1String(word)));
        }
    }

    void photosAreChosenFromArrivalToLeaving()
    {
        PaperSample sample = bareSample();
        for (int i = 0; i < 40; ++i)
            sample.photo(i < 3    ? Phase::AsFound
                         : i > 36 ? Phase::AsItLeaves
                                  : Phase::DuringWork,
                         QStringLiteral("number %1").arg(i), {40, 30}, false, Qt::gray);
        QList<RestorationFacts::Picture> pictures = sample.facts().pictures;
        QCOMPARE(pictures.size(), 2); // none marked: the first as found, the last as it leaves
        QVERIFY(pictures[0].caption.endsWith(QStringLiteral("number 0")));
        QVERIFY(pictures[1].caption.endsWith(QStringLiteral("number 39")));

        for (PaperPhoto &photo : sample.photos)
            photo.record.onSheet = true;
        pictures = sample.facts().pictures;
        QCOMPARE(pictures.size(), 8);
        QVERIFY(pictures.first().caption.startsWith(QStringLiteral("As it arrived, 22 November")));
        QVERIFY(pictures.last().caption.startsWith(QStringLiteral("As it leaves")));

        // Asked of a workbook, only what goes on the sheet is read, and a broken one gives its place to the next.
        const auto readOf = [&sample](bool marked, int broken) {
            QList<Photo> records;
            QHash<Id<Photo>, QByteArray> kept;
            for (const PaperPhoto &photo : std::as_const(sample.photos)) {
                records << photo.record;
                records.last().onSheet = marked;
                kept.insert(photo.record.id, records.size() - 1 == broken ? QByteArray("no picture") : photo.jpeg);
            }
            int read = 0;
            const auto list = photosForSheet(records, [&](const Photo &photo) {
                ++read;
                return Expected<QByteArray>(kept.value(photo.id));
            });
            return QPair<int, qsizetype>(read, list->size());
        };
        QCOMPARE(readOf(false, -1), qMakePair(2, qsizetype(2)));
        QCOMPARE(readOf(true, -1), qMakePair(8, qsizetype(8)));
        QCOMPARE(readOf(true, 0), qMakePair(9, qsizetype(8)));

        sample.photos = {PaperPhoto{sample.photos.first().record, QByteArray("no picture")}};
        QCOMPARE(sample.facts().pictures.size(), 0);
    }

    void theWebPageNeedsNoOtherFile()
    {
        const QString page = QString::fromUtf8(restorationHtml(richSample(true).facts()));
        QCOMPARE(page.count(QStringLiteral("src=\"data:image/jpeg;base64,")), 3);
        QVERIFY(!page.contains(QStringLiteral("src=\"http")));
        QVERIFY(!page.contains(QStringLiteral("<link")));
        QVERIFY(!page.contains(QStringLiteral("url(")));
        QVERIFY(!page.contains(QStringLiteral("[[")));
        QVERIFY(!page.contains(QStringLiteral("<!--")));
    }

    void theWebPageOfAFullStory()
    {
        // Written anew with TURNSCREW_GOLDEN=write in the environment; read it before keeping it.
        const QString path = QStringLiteral(SOURCE_DIR "/tests/golden/restoration_sheet_of_a_full_story.html");
        const QByteArray page = restorationHtml(richSample(false).facts());
        if (qEnvironmentVariable("TURNSCREW_GOLDEN") == u"write") {
            QFile file(path);
            QVERIFY(file.open(QIODevice::WriteOnly));
            file.write(page);
        }
        QFile golden(path);
        QVERIFY2(golden.open(QIODevice::ReadOnly), qPrintable(path));
        const QStringList wanted = QString::fromUtf8(golden.readAll()).split(QLatin1Char('\n'));
        const QStringList got = QString::fromUtf8(page).split(QLatin1Char('\n'));
        for (qsizetype i = 0; i < std::max(wanted.size(), got.size()); ++i)
            QCOMPARE(got.value(i), wanted.value(i));
    }
};

QTEST_MAIN(PaperFacts)
#include "test_paper_facts.moc"
