// The stages at the head of a unit: a click moves it, asks what the stage needs, says what is in the way, and all of it can be changed and undone.
#include "tests/window_under_test.h"
#include "views/unit/stage_asks.h"
#include "views/unit/stage_panel.h"
#include "views/unit/stage_ribbon.h"
#include "views/unit/unit_head.h"
#include "views/widgets/notice_bar.h"
#include "views/widgets/stage_names.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QWindow>

using namespace ts;
using namespace ts::testing;

namespace {

class Head {
public:
    explicit Head(WindowUnderTest &window) : m_head(*window.workspace().findChild<UnitHead *>()) {}
    void click(Stage stage)
    {
        for (QPushButton *button : m_head.ribbon()->findChildren<QPushButton *>())
            if (button->text() == shown::stage(stage) && !button->menu())
                return QTest::mouseClick(button, Qt::LeftButton);
        QFAIL("no such stage");
    }
    StagePanel *panel() { return m_head.panel(); }
    QString particulars() { return m_head.ribbon()->findChild<QPushButton *>(QStringLiteral("stageParticulars"))->text(); }
    QLineEdit *field(const QString &name)
    {
        for (QLineEdit *each : panel()->findChildren<QLineEdit *>())
            if (each->accessibleName() == name && each->isVisible())
                return each;
        return nullptr;
    }
    void type(const QString &name, const QString &text)
    {
        QLineEdit *line = field(name);
        QVERIFY2(line, qPrintable(name));
        line->setFocus();
        line->selectAll();
        QTest::keyClick(line, Qt::Key_Delete);
        QTest::keyClicks(line, text);
    }
    QPushButton *button(const QString &text)
    {
        for (QPushButton *each : panel()->findChildren<QPushButton *>())
            if (each->text() == text && each->isVisible())
                return each;
        return nullptr;
    }
    UnitHead &head() { return m_head; }

private:
    UnitHead &m_head;
};

} // namespace

class TestViewStage : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    OpenDesk m_desk;
    Unit m_unit;

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }

    void init()
    {
        m_desk.desk.reset();
        wantOk(m_desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        m_unit = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7"));
    }

    void aStageThatNeedsNothingIsOneClick()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Shelved);
        QCOMPARE(window.work().file().unit.stage, Stage::Shelved);
        QCOMPARE(window.work().file().all<StageMove>().size(), 1);
        QVERIFY(!head.panel()->isVisible());
        window.work().undo();
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
    }

    void heldAsksForAReasonAndADay()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Held);
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        QLineEdit *because = head.field(QStringLiteral("Waiting for"));
        QVERIFY(because && because->hasFocus()); // one types at once
        QTest::keyClick(because, Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("needs a reason")));
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        QTest::keyClicks(because, QStringLiteral("belt <b>4</b>"));
        head.type(QStringLiteral("Until (if you know)"), QStringLiteral("32 Nov"));
        QTest::keyClick(head.field(QStringLiteral("Until (if you know)")), Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("is no day")));
        head.type(QStringLiteral("Until (if you know)"), QStringLiteral("28 Nov"));
        QTest::keyClick(head.field(QStringLiteral("Until (if you know)")), Qt::Key_Return);
        const Unit &unit = window.work().file().unit;
        QCOMPARE(unit.stage, Stage::Held);
        QCOMPARE(unit.heldBecause, QStringLiteral("belt <b>4</b>"));
        QCOMPARE(unit.heldUntil, QDate(2026, 11, 28));
        QVERIFY(!head.panel()->isVisible());
        QVERIFY(head.particulars().startsWith(QLatin1String("Waiting for belt <b>4</b> until")));
    }

    void whatIsHeldIsChangedInPlace()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Held);
        QTest::keyClicks(head.field(QStringLiteral("Waiting for")), QStringLiteral("belt"));
        QTest::keyClick(head.field(QStringLiteral("Waiting for")), Qt::Key_Return);
        head.click(Stage::Held);
        QCOMPARE(head.field(QStringLiteral("Waiting for"))->text(), QStringLiteral("belt"));
        head.type(QStringLiteral("Waiting for"), QStringLiteral("idler"));
        window.workspace().unitPane()->setFocusPolicy(Qt::StrongFocus);
        window.workspace().unitPane()->setFocus(); // going elsewhere keeps it
        QTRY_COMPARE(window.work().file().unit.heldBecause, QStringLiteral("idler"));
        QCOMPARE(window.work().file().all<StageMove>().size(), 1);
        QVERIFY(m_desk->undoSentence()->value().contains(QLatin1String("stands at Held: idler")));
        head.click(Stage::Held);
        head.type(QStringLiteral("Waiting for"), QStringLiteral("not this"));
        QTest::keyClick(head.field(QStringLiteral("Waiting for")), Qt::Key_Escape);
        QVERIFY(!head.panel()->isVisible());
        QCOMPARE(window.work().file().unit.heldBecause, QStringLiteral("idler"));
    }

    void anotherUnitClosesWhatWasAsked()
    {
        const Unit other = benchUnit(*m_desk, QStringLiteral("Tarrick T-9"));
        WindowUnderTest window(*m_desk);
        Head head(window);
        window.work().takeInHand(m_unit.id);
        head.click(Stage::Held);
        QTest::keyClicks(head.field(QStringLiteral("Waiting for")), QStringLiteral("belt"));
        window.work().takeInHand(other.id);
        QVERIFY(!head.panel()->isVisible());
        QCOMPARE(m_desk->get(m_unit.id)->stage, Stage::Bench); // it was not moved: it was only being asked
        QCOMPARE(m_desk->get(other.id)->stage, Stage::Bench);
    }

    void offeredAsksForAChannelAndAPrice()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Offered);
        QVERIFY(head.field(QStringLiteral("Where"))->hasFocus()); // where, then for how much
        head.type(QStringLiteral("Price asked"), QStringLiteral("sixty"));
        QTest::keyClick(head.field(QStringLiteral("Price asked")), Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().startsWith(QLatin1String("Price asked: ")));
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        head.type(QStringLiteral("Price asked"), QStringLiteral("68.50"));
        head.type(QStringLiteral("Where"), QStringLiteral("Lantern Lots")); // a channel that is new
        QTest::mouseClick(head.button(QStringLiteral("Move to Offered")), Qt::LeftButton);
        QCOMPARE(window.work().file().unit.stage, Stage::Offered);
        QCOMPARE(window.work().file().unit.asked, std::optional(Money(6850, *Currency::parse(u"GBP"))));
        QCOMPARE(window.work().bench().all<Channel>().size(), 1);
        QCOMPARE(window.work().file().unit.channel, window.work().bench().all<Channel>().first().id);
        QCOMPARE(head.particulars(), QStringLiteral("£68.50 asked on Lantern Lots"));
        head.click(Stage::Offered);
        head.type(QStringLiteral("Price asked"), QStringLiteral("£60"));
        QTest::keyClick(head.field(QStringLiteral("Price asked")), Qt::Key_Return);
        QCOMPARE(head.particulars(), QStringLiteral("£60.00 asked on Lantern Lots"));
        QCOMPARE(window.work().bench().all<Channel>().size(), 1);
        window.work().undo();
        window.work().undo();
        QVERIFY(window.work().bench().all<Channel>().isEmpty());
    }

    void closedAsksHowItEnded()
    {
        Channel channel = m_desk->maker().fresh<Channel>();
        channel.name = QStringLiteral("Lantern Lots");
        FeeRule rule = m_desk->maker().fresh<FeeRule>();
        rule.channel = channel.id;
        rule.name = QStringLiteral("commission");
        rule.rate = 128'000; // 12.8 %
        rule.fixed = Money(30, *Currency::parse(u"GBP"));
        wantOk(m_desk->apply(Change(QStringLiteral("Channel")).add(channel).add(rule)));
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Closed);
        head.type(QStringLiteral("Sold on"), QStringLiteral("Lantern Lots"));
        head.type(QStringLiteral("Price got"), QStringLiteral("94"));
        // 12.8 % of 94.00 is 12.032, and 0.30: by hand.
        QCOMPARE(head.field(QStringLiteral("Selling fees"))->text(), QStringLiteral("£12.33"));
        head.type(QStringLiteral("Selling fees"), QStringLiteral("12.40")); // what it really was
        head.type(QStringLiteral("Price got"), QStringLiteral("95"));
        QCOMPARE(head.field(QStringLiteral("Selling fees"))->text(), QStringLiteral("12.40"));
        head.type(QStringLiteral("Carriage you paid"), QStringLiteral("8.20"));
        QTest::keyClick(head.field(QStringLiteral("Carriage you paid")), Qt::Key_Return);
        const UnitFile &file = window.work().file();
        QCOMPARE(file.unit.stage, Stage::Closed);
        QCOMPARE(file.unit.outcome, std::optional(Outcome::Sold));
        QCOMPARE(file.all<Spend>().size(), 3);
        for (const Spend &spend : file.all<Spend>()) {
            const qint64 wanted = spend.kind == SpendKind::Sale ? 9500 : spend.kind == SpendKind::SellingFee ? 1240 : spend.kind == SpendKind::CarriageOut ? 820 : -1;
            QCOMPARE(spend.amount->minor(), wanted);
            QCOMPARE(spend.flow, spend.kind == SpendKind::Sale ? Flow::In : Flow::Out);
            QCOMPARE(spend.channel, channel.id);
        }
        QVERIFY(head.particulars().startsWith(QStringLiteral("Sold for £95.00")));
        // Set right afterwards: the same spends, not more of them.
        head.click(Stage::Closed);
        head.type(QStringLiteral("Price got"), QStringLiteral("90"));
        QTest::keyClick(head.field(QStringLiteral("Price got")), Qt::Key_Return);
        QCOMPARE(window.work().file().all<Spend>().size(), 3);
        QVERIFY(head.particulars().startsWith(QStringLiteral("Sold for £90.00")));
        window.work().undo();
        window.work().undo(); // one change took it there
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        QVERIFY(window.work().file().all<Spend>().isEmpty());
        head.click(Stage::Closed);
        QComboBox *outcome = nullptr;
        for (QComboBox *each : head.panel()->findChildren<QComboBox *>())
            if (each->accessibleName() == QLatin1String("How it ended"))
                outcome = each;
        QVERIFY(outcome);
        outcome->setCurrentIndex(outcome->findData(static_cast<int>(Outcome::Kept)));
        QVERIFY(!head.field(QStringLiteral("Price got")));
        QTest::keyClick(outcome, Qt::Key_Return);
        QCOMPARE(window.work().file().unit.outcome, std::optional(Outcome::Kept));
        QCOMPARE(head.particulars(), QStringLiteral("Kept"));
    }

    void readyIsOverruledWithAReason()
    {
        Proof proof = m_desk->maker().fresh<Proof>();
        proof.unit = m_unit.id;
        proof.text = QStringLiteral("erases a tape");
        proof.cameOut = ProofOutcome::Failed;
        TeardownItem lid = m_desk->maker().fresh<TeardownItem>();
        lid.unit = m_unit.id;
        lid.what = QStringLiteral("lid");
        wantOk(m_desk->apply(Change(QStringLiteral("Proof")).add(proof).add(lid)));
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Ready);
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        QLineEdit *because = head.field(QStringLiteral("It goes there all the same, because"));
        QVERIFY(because && because->hasFocus());
        QTest::keyClick(because, Qt::Key_Return); // without a reason it does not
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("erases a tape")));
        QVERIFY(head.button(QStringLiteral("Look at what is off")));
        QTest::mouseClick(head.button(QStringLiteral("Look at the proofs")), Qt::LeftButton);
        QCOMPARE(window.workspace().unitPane()->currentPage(), PageKey::Proving);
        QVERIFY(head.panel()->isVisible()); // it waits while one looks
        QTest::keyClicks(because, QStringLiteral("sold as a player only"));
        QTest::keyClick(because, Qt::Key_Return);
        QCOMPARE(window.work().file().unit.stage, Stage::Ready);
        QCOMPARE(window.work().file().all<StageMove>().last().because, QStringLiteral("sold as a player only"));
    }

    void whatCanHurtIsPutRightFirst()
    {
        LeftOff left = m_desk->maker().fresh<LeftOff>();
        left.unit = m_unit.id;
        left.doNotPower = QStringLiteral("primary exposed");
        wantOk(m_desk->apply(Change(QStringLiteral("Left")).add(left)));
        WindowUnderTest window(*m_desk);
        Head head(window);
        head.click(Stage::Ready);
        QVERIFY(!head.field(QStringLiteral("It goes there all the same, because")));
        QVERIFY(!head.button(QStringLiteral("Move to Ready"))->isEnabled());
        LeftOff safe = window.work().file().all<LeftOff>().first();
        safe.doNotPower.clear();
        QVERIFY(window.work().record(Change(QStringLiteral("Safe")).edit(window.work().file().all<LeftOff>().first(), safe)));
        QVERIFY(head.button(QStringLiteral("Move to Ready"))->isEnabled());
        QTest::mouseClick(head.button(QStringLiteral("Move to Ready")), Qt::LeftButton);
        QCOMPARE(window.work().file().unit.stage, Stage::Ready);
    }

    void tabStaysInThePanelUntilItsEnd()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        const auto goesThrough = [&](const QStringList &wanted) {
            QStringList went;
            for (qsizetype i = 0; i < wanted.size(); ++i) {
                QWidget *at = window.workspace().window()->focusWidget();
                went << at->accessibleName();
                QTest::keyClick(at, Qt::Key_Tab);
            }
            QCOMPARE(went, wanted);
        };
        // In this order, so that what is made later does not go last.
        head.click(Stage::Closed);
        goesThrough({QStringLiteral("How it ended"), QStringLiteral("Price got"), QStringLiteral("Sold on"), QStringLiteral("Selling fees"), QStringLiteral("Carriage you paid"), QStringLiteral("Day"),
                     QStringLiteral("Move to Closed"), QStringLiteral("Look at the proofs"), QStringLiteral("Not now")});
        head.click(Stage::Held);
        goesThrough({QStringLiteral("Waiting for"), QStringLiteral("Until (if you know)"), QStringLiteral("Move to Held"), QStringLiteral("Not now")});
        head.click(Stage::Offered);
        goesThrough({QStringLiteral("Where"), QStringLiteral("Price asked"), QStringLiteral("Move to Offered"), QStringLiteral("Look at the proofs"), QStringLiteral("Not now")});
        head.click(Stage::Offered);
        head.button(QStringLiteral("Not now"))->setFocus();
        QTest::keyClick(head.button(QStringLiteral("Not now")), Qt::Key_Return); // a button is pressed by Enter, and moves nothing else
        QVERIFY(!head.panel()->isVisible());
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
    }

    void whatIsWrongIsSaidByTheFieldsName()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        const auto refused = [&](const QString &name, const QString &text) {
            head.type(name, text);
            QTest::keyClick(head.field(name), Qt::Key_Return);
            QVERIFY2(window.workspace().notice()->text().startsWith(name + QLatin1String(": ")), qPrintable(window.workspace().notice()->text()));
            QCOMPARE(window.work().file().unit.stage, Stage::Bench);
            head.type(name, QString());
        };
        head.click(Stage::Offered);
        refused(QStringLiteral("Price asked"), QStringLiteral("sixty"));
        head.click(Stage::Closed);
        for (const char *name : {"Price got", "Selling fees", "Carriage you paid"})
            refused(QString::fromLatin1(name), QStringLiteral("much"));
        refused(QStringLiteral("Day"), QStringLiteral("32 Nov"));
        head.click(Stage::Held);
        head.type(QStringLiteral("Waiting for"), QStringLiteral("belt"));
        refused(QStringLiteral("Until (if you know)"), QStringLiteral("soonish"));
    }

    void whatWentWrongGoesWhenSomethingSucceedsAndByEsc()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        NoticeBar *notice = window.workspace().notice();
        window.work().refuse(QStringLiteral("That did not go."));
        head.click(Stage::Shelved); // what was said this moment is not gone before it was read
        QVERIFY(notice->isVisible());
        QTest::qWait(400);
        head.click(Stage::Bench);
        QVERIFY(!notice->isVisible());
        QVERIFY(notice->text().isEmpty());
        window.work().refuse(QStringLiteral("Nor did that."));
        QVERIFY(notice->isVisible());
        QTest::keyClick(window.workspace().window()->windowHandle(), Qt::Key_Escape);
        QVERIFY(!notice->isVisible());
    }

    void untestedSafetyIsSaidBeforeItGoesToReady()
    {
        Proof earth = m_desk->maker().fresh<Proof>();
        earth.unit = m_unit.id;
        earth.text = QStringLiteral("earth <b>continuity</b>");
        earth.kind = ProofKind::ElectricalSafety;
        wantOk(m_desk->apply(Change(QStringLiteral("Proof")).add(earth)));
        WindowUnderTest window(*m_desk);
        Head head(window);
        const auto says = [&](const QString &words) {
            for (const QLabel *each : head.panel()->findChildren<QLabel *>())
                if (each->isVisible() && each->text().contains(words))
                    return true;
            return false;
        };
        head.click(Stage::Ready);
        QVERIFY(head.panel()->isVisible());
        QVERIFY(says(QStringLiteral("Electrical safety is not tested: earth <b>continuity</b>.")));
        QVERIFY(says(QStringLiteral("licensed practice")));
        QVERIFY(head.button(QStringLiteral("Look at the proofs")));
        QCOMPARE(window.work().file().unit.stage, Stage::Bench);
        QTest::keyClick(window.workspace().window()->focusWidget(), Qt::Key_Return); // it is no block
        QCOMPARE(window.work().file().unit.stage, Stage::Ready);
        QVERIFY(m_desk->undoSentence()->value().endsWith(QLatin1String("; 1 electrical-safety proof not tested")));
        head.click(Stage::Closed);
        QVERIFY(says(QStringLiteral("Electrical safety is not tested")));
        QComboBox *outcome = nullptr;
        for (QComboBox *each : head.panel()->findChildren<QComboBox *>())
            if (each->accessibleName() == QLatin1String("How it ended"))
                outcome = each;
        outcome->setCurrentIndex(outcome->findData(static_cast<int>(Outcome::BrokenForParts)));
        QVERIFY(!says(QStringLiteral("Electrical safety is not tested"))); // nobody plugs it in
        outcome->setCurrentIndex(outcome->findData(static_cast<int>(Outcome::Sold)));
        QVERIFY(says(QStringLiteral("Electrical safety is not tested")));
        // Tested meanwhile: it goes in one click.
        window.work().undo();
        Proof passed = window.work().file().all<Proof>().first();
        passed.cameOut = ProofOutcome::Passed;
        QVERIFY(window.work().record(Change(QStringLiteral("Passed")).edit(window.work().file().all<Proof>().first(), passed)));
        QVERIFY(!says(QStringLiteral("Electrical safety is not tested")));
        head.click(Stage::Ready);
        QCOMPARE(window.work().file().unit.stage, Stage::Ready);
        QVERIFY(!m_desk->undoSentence()->value().contains(QLatin1String("electrical")));
    }

    void onlyWhereItHasBeenIsPassed()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        const auto passed = [&](Stage stage) {
            for (const QPushButton *button : head.head().ribbon()->findChildren<QPushButton *>())
                if (button->text() == shown::stage(stage) && !button->menu())
                    return button->property("passed").toString();
            return QString();
        };
        QCOMPARE(passed(Stage::Scouted), QStringLiteral("ahead")); // it was taken in at the bench
        head.click(Stage::Proving);
        QCOMPARE(passed(Stage::Bench), QStringLiteral("passed"));
        QCOMPARE(passed(Stage::Held), QStringLiteral("ahead")); // it never was
        QCOMPARE(passed(Stage::Proving), QStringLiteral("current"));
        head.click(Stage::Held);
        QTest::keyClicks(head.field(QStringLiteral("Waiting for")), QStringLiteral("belt\r"));
        head.click(Stage::Proving);
        QCOMPARE(passed(Stage::Held), QStringLiteral("passed"));
    }

    void theSellersWordsAreNoFindingOfOurs()
    {
        Unit said = *m_desk->get(m_unit.id);
        said.claim = QStringLiteral("was working");
        wantOk(m_desk->apply(Change(QStringLiteral("Claim")).edit(*m_desk->get(m_unit.id), said)));
        WindowUnderTest window(*m_desk);
        Head head(window);
        const auto says = [&](const QString &words) {
            for (const QLabel *each : head.head().findChildren<QLabel *>())
                if (each->text().contains(words))
                    return true;
            return false;
        };
        QVERIFY(says(QStringLiteral("seller’s words: “was working”")));
        Unit owners = window.work().file().unit;
        owners.kind = UnitKind::Owners;
        QVERIFY(window.work().record(Change(QStringLiteral("Kind")).edit(window.work().file().unit, owners)));
        QVERIFY(says(QStringLiteral("owner’s words: “was working”")));
    }

    void narrowWindowsHaveOneButton()
    {
        WindowUnderTest window(*m_desk);
        Head head(window);
        QVERIFY(!head.head().ribbon()->isCompact());
        head.head().setFixedWidth(760); // as in a window of 1100 pixels
        QTRY_VERIFY2(head.head().ribbon()->isCompact(), qPrintable(QStringLiteral("%1 %2 %3").arg(window.workspace().width()).arg(head.head().width()).arg(head.head().ribbon()->wideWidth())));
        QPushButton *one = nullptr;
        for (QPushButton *each : head.head().ribbon()->findChildren<QPushButton *>())
            if (each->menu())
                one = each;
        QVERIFY(one && one->isVisible());
        // No room is kept for the stages that are not side by side any more.
        QTRY_VERIFY2(head.head().height() < 110, qPrintable(QString::number(head.head().height())));
        QCOMPARE(one->text(), QStringLiteral("Bench"));
        QCOMPARE(one->menu()->actions().size(), 9);
        one->menu()->actions().at(static_cast<int>(Stage::Shelved))->trigger();
        QCOMPARE(window.work().file().unit.stage, Stage::Shelved);
        QCOMPARE(one->text(), QStringLiteral("Shelved"));
        for (const QPushButton *each : head.head().ribbon()->findChildren<QPushButton *>()) // nothing is cut off
            QVERIFY(!each->isVisible() || each->mapTo(&window.workspace(), QPoint(each->width(), 0)).x() <= window.workspace().width());
    }
};

QTEST_MAIN(TestViewStage)
#include "test_view_stage.moc"
