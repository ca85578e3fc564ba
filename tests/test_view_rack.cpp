// The rack of tags: headings and counts, reading by page, narrowing, sorting, the keyboard; and that what was recorded changes one tag alone.
#include "model/records/stage_change.h"
#include "model/records/tag_text.h"
#include "tests/window_under_test.h"
#include "views/rack/rack_model.h"
#include "views/rack/rack_pane.h"
#include "views/rack/rack_view.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QScrollBar>
#include <QSignalSpy>

using namespace ts;
using namespace ts::testing;

namespace {

// A tag's number and name, or a heading with its count; a tag whose words were not read is "?".
QStringList linesOf(const RackModel &rack)
{
    QStringList lines;
    for (int row = 0; row < rack.rowCount(); ++row) {
        const QModelIndex index = rack.index(row);
        const QString text = index.data().toString();
        lines << (index.data(RackModel::IsHeading).toBool() ? QStringLiteral("%1 (%2)").arg(text).arg(index.data(RackModel::Count).toInt()) : text.isEmpty() ? QStringLiteral("?") : text);
    }
    return lines;
}

Unit addUnit(Desk &desk, const QString &name, Stage stage, const QString &symptom = {})
{
    Unit unit = desk.maker().fresh<Unit>();
    unit.name = name;
    unit.stage = stage;
    unit.stageSince = unit.at;
    if (stage == Stage::Closed)
        unit.outcome = Outcome::Kept;
    Change change(QStringLiteral("Unit"));
    change.add(unit);
    if (!symptom.isEmpty()) {
        Symptom seen = desk.maker().fresh<Symptom>();
        seen.unit = unit.id;
        seen.text = symptom;
        change.add(seen);
    }
    const auto applied = desk.apply(change);
    return applied ? desk.get(unit.id).value() : unit;
}

QList<Id<Unit>> addMany(Desk &desk, int count, Stage stage)
{
    Change change(QStringLiteral("Units"));
    QList<Id<Unit>> ids;
    for (int i = 0; i < count; ++i) {
        Unit unit = desk.maker().fresh<Unit>();
        unit.name = QStringLiteral("Deck %1").arg(i);
        unit.stage = stage;
        unit.stageSince = unit.at.addSecs(-i);
        change.add(unit);
        ids << unit.id;
    }
    wantOk(desk.apply(change));
    return ids;
}

Expected<Change> moved(Desk &desk, const Id<Unit> &unit, Stage stage)
{
    Maker maker = desk.maker();
    return stageChange(*desk.get(unit), {.stage = stage, .because = stage == Stage::Held ? QStringLiteral("belt") : QString(), .until = {}, .outcome = {}}, maker);
}

} // namespace

class TestViewRack : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void headingsCountAndClosedIsFolded()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addUnit(*desk, QStringLiteral("Old one"), Stage::Closed);
        addUnit(*desk, QStringLiteral("Tuner"), Stage::Held);
        desk.clock.advance(60);
        addUnit(*desk, QStringLiteral("Deck"), Stage::Bench);
        desk.clock.advance(60);
        addUnit(*desk, QStringLiteral("Receiver"), Stage::Bench);
        RackModel rack(*desk);
        const QAbstractItemModelTester tester(&rack, QAbstractItemModelTester::FailureReportingMode::QtTest);
        rack.reload();
        rack.load(0, 10);
        QCOMPARE(linesOf(rack), QStringList({QStringLiteral("On the bench (2)"), QStringLiteral("0004 Receiver"), QStringLiteral("0003 Deck"), QStringLiteral("Held (1)"),
                                             QStringLiteral("0002 Tuner"), QStringLiteral("Closed (1)")}));
        QVERIFY(rack.index(5).data(RackModel::Folded).toBool());
        rack.setFolded(Stage::Closed, false);
        rack.setFolded(Stage::Bench, true);
        rack.load(0, 10);
        QCOMPARE(linesOf(rack), QStringList({QStringLiteral("On the bench (2)"), QStringLiteral("Held (1)"), QStringLiteral("0002 Tuner"), QStringLiteral("Closed (1)"),
                                             QStringLiteral("0001 Old one")}));
    }

    void tagsAreReadByPage()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addMany(*desk, 450, Stage::Bench);
        RackModel rack(*desk);
        const QAbstractItemModelTester tester(&rack, QAbstractItemModelTester::FailureReportingMode::QtTest);
        rack.reload();
        QCOMPARE(rack.rowCount(), 451); // where each hangs is known, what it says is not
        QCOMPARE(linesOf(rack).count(QStringLiteral("?")), 450);
        rack.load(200, 210);
        const QStringList lines = linesOf(rack);
        QCOMPARE(lines.at(200), QStringLiteral("%1 Deck 199").arg(tagText(200)));
        QVERIFY(lines.count(QStringLiteral("?")) > 300);
        for (int row = 0; row < rack.rowCount(); row += 50)
            rack.load(row, row + 50);
        QCOMPARE(linesOf(rack).count(QStringLiteral("?")), 0);
    }

    void aJottedLineChangesOneTagAlone()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto ids = addMany(*desk, 300, Stage::Bench);
        RackModel rack(*desk);
        const QAbstractItemModelTester tester(&rack, QAbstractItemModelTester::FailureReportingMode::QtTest);
        rack.reload();
        rack.load(0, 20);
        QSignalSpy reset(&rack, &QAbstractItemModel::modelReset);
        QSignalSpy inserted(&rack, &QAbstractItemModel::rowsInserted);
        QSignalSpy changed(&rack, &QAbstractItemModel::dataChanged);
        Symptom seen = desk->maker().fresh<Symptom>();
        seen.unit = ids.at(4);
        seen.text = QStringLiteral("hums");
        wantOk(desk->apply(Change(QStringLiteral("Symptom: hums")).add(seen)));
        rack.refresh();
        QCOMPARE(reset.count() + inserted.count(), 0);
        QCOMPARE(changed.count(), 1);
        const int row = rack.rowOf(ids.at(4).value);
        QCOMPARE(changed.first().at(0).toModelIndex().row(), row);
        QCOMPARE(changed.first().at(1).toModelIndex().row(), row);
        QCOMPARE(rack.index(row).data(RackModel::Words).value<TagWords>().matter, QStringLiteral("hums"));
        // One that was never looked at is not read.
        seen = desk->maker().fresh<Symptom>();
        seen.unit = ids.at(290);
        seen.text = QStringLiteral("hums");
        wantOk(desk->apply(Change(QStringLiteral("Symptom: hums")).add(seen)));
        rack.refresh();
        QCOMPARE(changed.count(), 1);
    }

    void aMovedUnitGoesToItsPlaceAndTheOthersStay()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto ids = addMany(*desk, 5, Stage::Bench);
        addUnit(*desk, QStringLiteral("Tuner"), Stage::Proving);
        RackModel rack(*desk);
        const QAbstractItemModelTester tester(&rack, QAbstractItemModelTester::FailureReportingMode::QtTest);
        rack.reload();
        rack.load(0, 20);
        QSignalSpy reset(&rack, &QAbstractItemModel::modelReset);
        const QPersistentModelIndex moving(rack.index(rack.rowOf(ids.at(2).value)));
        const QPersistentModelIndex staying(rack.index(rack.rowOf(ids.at(3).value)));
        const auto agrees = [&] { // with a rack that is read anew
            RackModel fresh(*desk);
            fresh.reload();
            fresh.load(0, 20);
            return linesOf(rack) == linesOf(fresh);
        };
        for (const Stage stage : {Stage::Held, Stage::Proving, Stage::Bench, Stage::Scouted, Stage::Offered, Stage::Proving}) {
            desk.clock.advance(60);
            wantOk(desk->apply(*moved(*desk, ids.at(2), stage)));
            rack.refresh();
            QVERIFY2(agrees(), qPrintable(toWord(stage) + QLatin1Char('\n') + linesOf(rack).join(QLatin1Char('\n'))));
            QCOMPARE(moving.row(), rack.rowOf(ids.at(2).value));
            QCOMPARE(staying.row(), rack.rowOf(ids.at(3).value));
        }
        wantOk(desk->undo());
        rack.refresh();
        QVERIFY(agrees());
        QCOMPARE(reset.count(), 0);
        addUnit(*desk, QStringLiteral("New one"), Stage::Inbound);
        rack.refresh();
        rack.load(0, 20);
        QVERIFY(agrees());
        wantOk(desk->undo());
        rack.refresh();
        QVERIFY(agrees());
        QCOMPARE(reset.count(), 0);
    }

    void narrowsByTagNameAndOpenSymptom()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addUnit(*desk, QStringLiteral("Pellworth KD-7"), Stage::Bench, QStringLiteral("take-up reel stops"));
        addUnit(*desk, QStringLiteral("Tarrick T-9"), Stage::Held);
        const Unit old = addUnit(*desk, QStringLiteral("Brenlow TT-21"), Stage::Closed);
        WindowUnderTest window(*desk);
        RackPane *pane = window.workspace().rackPane();
        auto *field = pane->findChild<QLineEdit *>();
        const QAbstractItemModelTester tester(pane->model(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        pane->focusFilter();
        QTest::keyClicks(field, QStringLiteral("reel"));
        QCOMPARE(pane->model()->units(), 3); // not before the keys rest
        QTRY_COMPARE_WITH_TIMEOUT(pane->model()->units(), 1, 1000);
        QTest::keyClick(field, Qt::Key_Escape);
        QCOMPARE(pane->model()->units(), 3);
        // What matches is closed: it is shown all the same, and Enter takes it in hand.
        QTest::keyClicks(field, tagText(old.tag));
        QTest::keyClick(field, Qt::Key_Return);
        QCOMPARE(window.work().file().unit.id, old.id);
        QTest::keyClick(field, Qt::Key_Escape);
        QCOMPARE(window.work().file().unit.id, old.id); // the unit in hand stays, wherever it hangs
        // Its stage is folded away again, and it hangs there all the same, marked.
        QVERIFY(pane->model()->rowOf(old.id.value) > 0);
        QCOMPARE(pane->view()->currentIndex().row(), pane->model()->rowOf(old.id.value));
    }

    void theKeyboardWalksTheTags()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto ids = addMany(*desk, 40, Stage::Bench);
        const Unit last = addUnit(*desk, QStringLiteral("Tuner"), Stage::Scouted);
        addUnit(*desk, QStringLiteral("Old one"), Stage::Closed);
        WindowUnderTest window(*desk);
        RackPane *pane = window.workspace().rackPane();
        RackView *view = pane->view();
        const auto inHand = [&] { return window.work().file().unit.id; };
        QCOMPARE(inHand(), ids.first());
        view->setFocus();
        QTest::keyClick(view, Qt::Key_Down);
        QTest::keyClick(view, Qt::Key_Down);
        QCOMPARE(inHand(), ids.first()); // the arrows rest first
        QTRY_COMPARE(inHand(), ids.at(2));
        pane->step(1);
        QCOMPARE(inHand(), ids.at(3));
        pane->step(-1);
        QCOMPARE(inHand(), ids.at(2));
        QTest::keyClick(view, Qt::Key_End); // the folded heading of what is closed
        QVERIFY(view->currentIndex().data(RackModel::IsHeading).toBool());
        QTest::keyClick(view, Qt::Key_Up);
        QTest::keyClick(view, Qt::Key_Return);
        QCOMPARE(inHand(), last.id);
        QVERIFY(!view->hasFocus()); // it is opened to be worked on
        QVERIFY(view->visualRect(view->currentIndex()).bottom() <= view->viewport()->height());
        view->setFocus();
        QTest::keyClick(view, Qt::Key_Down);
        QTest::keyClick(view, Qt::Key_Space); // unfolds
        QTRY_COMPARE(linesOf(*pane->model()).last().right(7), QStringLiteral("Old one"));
        QTest::keyClick(view, Qt::Key_Home);
        QTRY_COMPARE(inHand(), ids.first());
        QCOMPARE(view->verticalScrollBar()->value(), 0);
    }

    void aClickTakesInHandAndFolds()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto ids = addMany(*desk, 3, Stage::Bench);
        WindowUnderTest window(*desk);
        RackView *view = window.workspace().rackPane()->view();
        const auto click = [&](int row) { QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(view->model()->index(row, 0)).center()); };
        click(2);
        QCOMPARE(window.work().file().unit.id, ids.at(1));
        click(0);
        QCOMPARE(view->model()->rowCount(), 2); // the one in hand is never folded away
        QCOMPARE(window.work().file().unit.id, ids.at(1));
        click(0);
        QCOMPARE(view->model()->rowCount(), 4);
    }

    void theUnitInHandHangsThereEvenWhereItsStageIsFolded()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto ids = addMany(*desk, 3, Stage::Bench);
        addUnit(*desk, QStringLiteral("Old one"), Stage::Closed);
        WindowUnderTest window(*desk);
        RackModel *rack = window.workspace().rackPane()->model();
        const QAbstractItemModelTester tester(rack, QAbstractItemModelTester::FailureReportingMode::QtTest);
        RackView *view = window.workspace().rackPane()->view();
        window.work().takeInHand(ids.at(1));
        Maker maker = desk->maker();
        QVERIFY(window.work().record(stageChange(*desk->get(ids.at(1)), {.stage = Stage::Closed, .because = {}, .until = {}, .outcome = Outcome::Kept}, maker)));
        rack->load(0, 10);
        QCOMPARE(linesOf(*rack).mid(3), QStringList({QStringLiteral("Closed (2)"), QStringLiteral("0002 Deck 1")}));
        QCOMPARE(view->currentIndex().row(), 4); // and it is the chosen one
        window.work().takeInHand(ids.at(0));
        QCOMPARE(rack->rowCount(), 4);
        window.work().takeInHand(ids.at(1)); // as Find does
        QCOMPARE(rack->rowOf(ids.at(1).value), 4);
        window.work().undo();
        QCOMPARE(rack->rowCount(), 5);
        QCOMPARE(rack->rowOf(ids.at(1).value), view->currentIndex().row());
    }

    void theUnitInHandStaysInHandWhereverItGoes()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto ids = addMany(*desk, 200, Stage::Bench);
        WindowUnderTest window(*desk);
        RackPane *pane = window.workspace().rackPane();
        RackView *view = pane->view();
        window.work().takeInHand(ids.at(100));
        QVERIFY(view->verticalScrollBar()->value() > 0);
        QVERIFY(window.work().record(moved(*desk, ids.at(100), Stage::Shelved)));
        QTest::qWait(200); // longer than the arrows rest
        QCOMPARE(window.work().file().unit.id, ids.at(100));
        QCOMPARE(view->currentIndex().row(), pane->model()->rowOf(ids.at(100).value));
        QVERIFY(view->viewport()->rect().contains(view->visualRect(view->currentIndex()))); // and is seen where it hangs now
        const int value = view->verticalScrollBar()->value();
        // Another person's change to another unit moves nothing either.
        wantOk(desk->apply(*moved(*desk, ids.at(5), Stage::Held)));
        QTest::qWait(50);
        QCOMPARE(window.work().file().unit.id, ids.at(100));
        QCOMPARE(view->verticalScrollBar()->value(), value);
    }

    void whatIsFoldedIsRemembered()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        addMany(*desk, 3, Stage::Bench);
        QByteArray state;
        {
            WindowUnderTest window(*desk);
            window.workspace().rackPane()->model()->setFolded(Stage::Bench, true);
            window.workspace().rackPane()->model()->setSort(RackSort::ByName);
            state = window.workspace().layoutState();
        }
        WindowUnderTest window(*desk);
        window.workspace().restoreLayout(state);
        RackModel *rack = window.workspace().rackPane()->model();
        QCOMPARE(rack->sort(), RackSort::ByName);
        QCOMPARE(rack->folded(), QSet<Stage>({Stage::Bench, Stage::Closed}));
        window.workspace().restoreLayout(QByteArrayLiteral("rubbish"));
        QCOMPARE(rack->sort(), RackSort::ByName);
    }

    void aTagSaysWhatMattersNow_data()
    {
        QTest::addColumn<int>("stage");
        QTest::addColumn<QString>("matter");
        QTest::addColumn<QString>("days");
        const auto row = [](const char *name, Stage stage, const char *matter, const char *days) {
            QTest::newRow(name) << static_cast<int>(stage) << QString::fromUtf8(matter) << QString::fromUtf8(days);
        };
        row("bench", Stage::Bench, "hums, and 2 more", "day 6");
        row("held", Stage::Held, "Waiting: belt", "due 28 Nov");
        row("proving", Stage::Proving, "Soak 6 h 00 m, drift", "day 6");
        row("ready", Stage::Ready, "hums, and 2 more", "day 6");
        row("offered", Stage::Offered, "Asked £68.00 on Lantern Lots", "day 6");
        row("closed", Stage::Closed, "Sold for £94.00", "20 Nov");
        row("scouted", Stage::Scouted, "Next: bid no more than 31", "day 6");
    }
    void aTagSaysWhatMattersNow()
    {
        QFETCH(int, stage);
        QFETCH(QString, matter);
        QFETCH(QString, days);
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const QDateTime now({2026, 11, 25}, {18, 0}, Qt::UTC);
        const Currency pounds = *Currency::parse(u"GBP");
        RackRow unit;
        unit.tag = 42;
        unit.stage = static_cast<Stage>(stage);
        unit.stageSince = now.addDays(-5);
        unit.taken = now.addDays(-6);
        unit.symptom = QStringLiteral("hums");
        unit.openSymptoms = 3;
        unit.heldBecause = QStringLiteral("belt");
        unit.heldUntil = QDate(2026, 11, 28);
        unit.outcome = Outcome::Sold;
        unit.next = QStringLiteral("bid no more than 31");
        unit.asked = Money(6800, pounds);
        unit.soldFor = Money(9400, pounds);
        unit.channel = QStringLiteral("Lantern Lots");
        if (unit.stage == Stage::Proving) {
            unit.soak = QStringLiteral("drift");
            unit.soakSince = now.addSecs(-6 * 3600);
        }
        unit.spent = Money(3840, pounds);
        unit.minutes = 175;
        const TagWords words = tagWords(unit, now);
        QCOMPARE(words.matter, matter);
        QCOMPARE(words.days, days);
        QCOMPARE(words.spent, QStringLiteral("£38.40"));
        QCOMPARE(words.hours, QStringLiteral("2 h 55 m"));
    }

    void whatCanHurtIsOnTheTag()
    {
        const QDateTime now({2026, 11, 25}, {18, 0}, Qt::UTC);
        RackRow unit;
        unit.category = Category::AmplifierReceiver;
        unit.stage = Stage::Bench;
        unit.doNotPower = true;
        unit.loose = 2;
        const auto marks = [&] {
            QStringList all;
            for (const TagWords::Mark &mark : tagWords(unit, now).marks)
                all << mark.word;
            return all.join(QStringLiteral(", "));
        };
        QCOMPARE(marks(), QStringLiteral("do not power"));
        unit.doNotPower = false;
        QCOMPARE(marks(), QStringLiteral("mains caution"));
        unit.protectionClass = ProtectionClass::III; // IEC 61140: class III is fed by extra-low voltage
        QCOMPARE(marks(), QString());
        unit.stage = Stage::Ready;
        QCOMPARE(marks(), QStringLiteral("2 loose"));
    }
};

QTEST_MAIN(TestViewRack)
#include "test_view_rack.moc"
