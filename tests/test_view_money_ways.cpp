// What comes of a unit, on the screen: forecast and ways out worked out beside the window, also while a figure is typed; the decision and
// its figures; the line that asks; the highest bid of a scouted unit; the bench today; sales pasted.
#include "tests/window_under_test.h"
#include "views/money/bid_card.h"
#include "views/money/comparable_pasted.h"
#include "views/money/cost_model.h"
#include "views/money/figures_list.h"
#include "views/money/forecast_card.h"
#include "views/money/money_in_hand.h"
#include "views/money/money_page.h"
#include "views/money/plan_fields.h"
#include "views/money/ways_card.h"
#include "views/places/bench_today_place.h"
#include "views/standing/due_line.h"
#include "views/widgets/notice_bar.h"

#include "model/sums/timeline.h"

#include <QLabel>
#include <QLineEdit>
#include <QTableView>

#include <mutex>
#include <vector>

using namespace ts;
using namespace ts::testing;

class TestViewMoneyWays : public QObject {
    Q_OBJECT
    Workbooks m_books;
    QString m_book;
    OpenDesk m_desk;
    std::vector<std::unique_ptr<OpenDesk>> m_seconds;
    std::mutex m_opening;

    /// Opens the workbook a second time, as the program does for work in a thread of its own.
    LongWork::OpenDesk again()
    {
        return [this]() -> Expected<std::unique_ptr<Desk>> {
            const std::lock_guard<std::mutex> one(m_opening);
            auto second = std::make_unique<OpenDesk>();
            if (auto opened = second->open(m_book); !opened)
                return opened.trouble();
            auto desk = std::move(second->desk);
            m_seconds.push_back(std::move(second)); // its clock and ids outlive the desk
            return desk;
        };
    }
    template <class R>
    R fresh(const Unit &unit)
    {
        R record = m_desk->maker().fresh<R>();
        record.unit = unit.id;
        return record;
    }
    /// Sells for 80, 90 … 130 as such units do, and stands with a symptom.
    void sold(const Unit &unit)
    {
        Change change(QStringLiteral("Sales"));
        for (int pounds = 80; pounds <= 130; pounds += 10) {
            Comparable sale = fresh<Comparable>(unit);
            sale.price = Money(pounds * 100, *Currency::parse(u"GBP"));
            sale.category = unit.category;
            sale.working = true;
            sale.soldOn = QDate(2026, 11, 1);
            change.add(sale);
        }
        Symptom symptom = fresh<Symptom>(unit);
        symptom.text = QStringLiteral("left channel weak");
        wantOk(m_desk->apply(change.add(symptom)));
    }
    static void answered(WindowUnderTest &window)
    {
        QTRY_VERIFY_WITH_TIMEOUT(window.work().money().isFresh() && !window.work().money().isTrial(), 20'000);
    }

private Q_SLOTS:
    void init()
    {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        m_desk.desk.reset();
        m_book = m_books.fresh(QStringLiteral("sqlite"));
        wantOk(m_desk.create(m_book));
    }

    void decidedWithItsFigures()
    {
        const Unit unit = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        sold(unit);
        WindowUnderTest window(*m_desk, nullptr, again());
        window.work().takeInHand(unit.id);
        auto *due = window.workspace().findChild<DueLine *>();
        QVERIFY(!due->isHidden());
        QVERIFY(due->text().startsWith(QStringLiteral("Worth a look")));
        auto *page = window.open<MoneyPage>(PageKey::Money);
        answered(window);
        QVERIFY2(due->text().contains(QStringLiteral("brings £")), qPrintable(due->text()));
        auto *ways = page->findChild<WaysCard *>();
        auto *list = ways->findChild<FiguresList *>();
        QCOMPARE(list->topLevelItemCount(), 5); // finish, as it stands, for parts, return, stop
        const WayFigures *finish = window.work().money().answer()->ways.of(WayOut::FinishAndSell);
        QCOMPARE(list->currentKey(), QStringLiteral("finish_and_sell")); // what leads is offered
        auto *decide = buttonWith(*ways, QStringLiteral("Decide"));
        QVERIFY(decide && decide->isEnabled());
        list->makeCurrent(QStringLiteral("break_for_parts"));
        QVERIFY(!decide->isEnabled()); // nothing says what its parts are worth
        list->makeCurrent(QStringLiteral("finish_and_sell"));
        QTest::keyClicks(ways->findChild<QLineEdit *>(), QStringLiteral("the head is good"));
        QTest::mouseClick(decide, Qt::LeftButton);
        QCOMPARE(window.work().file().all<Decision>().size(), 1);
        const Decision made = window.work().file().all<Decision>().first();
        QCOMPARE(made.way, WayOut::FinishAndSell);
        QCOMPARE(made.asked, Asked::Triage);
        QCOMPARE(made.reason, QStringLiteral("the head is good"));
        QVERIFY(made.figures.contains(finish->middle.display()));
        window.workspace().unitPane()->showPage(PageKey::Log); // where “As it stands” is seen
        QVERIFY(due->isHidden());
        bool told = false;
        for (const Event &event : timeline(window.work().file(), window.work().bench()))
            told |= event.what == EventKind::Decision && event.detail.contains(finish->middle.display());
        QVERIFY(told);
        // A part that was not thought of: the question is put again.
        m_desk.clock.advance(60);
        Need need = fresh<Need>(unit);
        need.text = QStringLiteral("belt");
        QVERIFY(window.work().record(Change(QStringLiteral("Needed: belt")).add(need)));
        QVERIFY(!due->isHidden());
        QVERIFY(due->text().contains(QStringLiteral("a new part")));
        window.work().undo();
        window.work().undo();
        QVERIFY(window.work().file().all<Decision>().isEmpty());
        QCOMPARE(unnamedControls(window.workspace()), QStringList());
    }

    void figuresFollowWhatIsTyped()
    {
        const Unit unit = benchUnit(*m_desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        Plan plan = fresh<Plan>(unit);
        plan.resaleLikely = Money(5'000, *Currency::parse(u"GBP"));
        plan.minutes = 60;
        wantOk(m_desk->apply(Change(QStringLiteral("Plan")).add(plan)));
        WindowUnderTest window(*m_desk, nullptr, again());
        window.work().takeInHand(unit.id);
        auto *page = window.open<MoneyPage>(PageKey::Money);
        answered(window);
        const double before = window.work().money().answer()->forecast->profit.middle;
        auto *table = page->findChild<QTableView *>();
        auto *model = qobject_cast<CostModel *>(table->model());
        int row = 0;
        while (model->keyOf(row) != CostKey::Resale)
            ++row;
        table->setCurrentIndex(model->index(row, CostModel::Planned));
        table->edit(table->currentIndex());
        auto *editor = table->findChild<QLineEdit *>();
        QVERIFY(editor);
        editor->selectAll();
        QTest::keyClicks(editor, QStringLiteral("90"));
        QTRY_VERIFY_WITH_TIMEOUT(window.work().money().isTrial() && window.work().money().answer()->forecast->profit.middle > before + 2'000, 20'000);
        QCOMPARE(editor->text(), QStringLiteral("90"));                                                    // what is typed stays
        QCOMPARE(window.work().file().all<Plan>().first().resaleLikely->minor(), 5'000);                  // nothing is recorded
        QVERIFY(model->index(row, CostModel::AtCompletion).data().toString().contains(QStringLiteral("90"))); // the sheet follows, too
        QTest::keyClick(editor, Qt::Key_Escape);
        QTRY_VERIFY_WITH_TIMEOUT(!window.work().money().isTrial(), 20'000);
        QCOMPARE(window.work().money().answer()->forecast->profit.middle, before); // the same question has the same answer
        // The same in a field of the plan; Enter records it.
        auto *fields = page->findChild<PlanFields *>(QString(), Qt::FindChildrenRecursively);
        for (PlanFields *each : page->findChildren<PlanFields *>())
            if (each->isVisible())
                fields = each;
        QLineEdit *value = fields->field(PlanField::PartsValue);
        QTest::keyClicks(value, QStringLiteral("22"));
        QTRY_VERIFY_WITH_TIMEOUT(window.work().money().isTrial() && window.work().money().answer()->ways.of(WayOut::BreakForParts)->open, 20'000);
        QVERIFY(!window.work().file().all<Plan>().first().partsValue);
        QTest::keyClick(value, Qt::Key_Return);
        QCOMPARE(window.work().file().all<Plan>().first().partsValue->minor(), 2'200);
        QLineEdit *chance = fields->field(PlanField::Chance);
        QTest::keyClicks(chance, QStringLiteral("lots"));
        QTest::keyClick(chance, Qt::Key_Return);
        QVERIFY(!window.workspace().notice()->text().isEmpty());
        QVERIFY(!window.work().file().all<Plan>().first().chance);
        answered(window);
    }

    void bidOfAScoutedUnit()
    {
        Unit unit = benchUnit(*m_desk, QStringLiteral("Ardmoor D-22 disc player"), Category::DiscPlayer);
        Unit scouted = unit;
        scouted.stage = Stage::Scouted;
        wantOk(m_desk->apply(Change(QStringLiteral("Scouted")).edit(unit, scouted)));
        WindowUnderTest window(*m_desk, nullptr, again());
        window.work().takeInHand(unit.id);
        auto *page = window.open<MoneyPage>(PageKey::Money);
        auto *card = page->findChild<BidCard *>();
        QVERIFY(card->isVisible() && !page->findChild<WaysCard *>()->isVisible());
        answered(window);
        QVERIFY(!window.work().money().answer()->bid); // nothing says what it fetches
        // One press brings a symptom with its usual causes, two fields the rest.
        const auto offers = card->findChildren<QPushButton *>();
        QVERIFY(!offers.isEmpty());
        QTest::mouseClick(offers.first(), Qt::LeftButton);
        QCOMPARE(window.work().file().all<Symptom>().size(), 1);
        QVERIFY(!window.work().file().all<Cause>().isEmpty());
        auto *fields = card->findChild<PlanFields *>();
        QTest::keyClicks(fields->field(PlanField::Resale), QStringLiteral("120"));
        QTest::keyClick(fields->field(PlanField::Resale), Qt::Key_Return);
        answered(window);
        QVERIFY(window.work().money().answer()->bid.has_value());
        const Money bid = window.work().money().answer()->bid->bid.bid;
        const auto said = [&](const QString &text) {
            for (const QLabel *label : card->findChildren<QLabel *>())
                if (label->isVisible() && label->text().contains(text))
                    return true;
            return false;
        };
        QVERIFY(said(bid.display()));
        QVERIFY(said(window.work().money().answer()->bid->bid.backOfEnvelope.display()));
        QTest::keyClicks(fields->field(PlanField::Parts), QStringLiteral("30"));
        QTRY_VERIFY_WITH_TIMEOUT(window.work().money().isTrial() && window.work().money().answer()->bid->bid.bid < bid, 20'000);
        QTest::keyClick(fields->field(PlanField::Parts), Qt::Key_Return);
        window.work().undo(); // parts
        window.work().undo(); // resale
        window.work().undo(); // the symptom with its causes, at once
        QVERIFY(window.work().file().all<Symptom>().isEmpty() && window.work().file().all<Cause>().isEmpty());
        QCOMPARE(unnamedControls(window.workspace()), QStringList());
    }

    void benchToday()
    {
        const Unit deck = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        const Unit tuner = benchUnit(*m_desk, QStringLiteral("Tarrick T-9 tuner"), Category::Tuner);
        sold(deck);
        WindowUnderTest window(*m_desk, nullptr, again());
        window.work().takeInHand(tuner.id);
        window.work().goTo(PlaceKey::BenchToday);
        auto *place = window.workspace().findChild<BenchTodayPlace *>();
        auto *list = place->findChild<QTreeWidget *>();
        QTRY_COMPARE_WITH_TIMEOUT(list->topLevelItemCount(), 2, 20'000);
        QCOMPARE(list->topLevelItem(0)->text(1), deck.name); // an hour on it has a price
        QVERIFY(!list->topLevelItem(0)->text(5).isEmpty());
        QCOMPARE(unnamedControls(*place), QStringList());
        Q_EMIT list->itemActivated(list->topLevelItem(0), 0);
        QCOMPARE(window.work().file().unit.id, deck.id);
        QCOMPARE(window.workspace().place(), PlaceKey::Units);
    }

    void salesPasted()
    {
        const Unit unit = benchUnit(*m_desk, QStringLiteral("Pellworth KD-7 cassette deck"));
        UnitFile file = m_desk->unitFile(unit.id).value();
        const BenchFile bench = m_desk->benchFile().value();
        Maker maker = m_desk->maker();
        const QDate today(2026, 11, 25);
        const auto paste = [&](const char *text) { return ts::salesPasted(QString::fromUtf8(text), file, bench, today, maker); };
        const auto prices = [](const Expected<PastedSales> &pasted) {
            QStringList list;
            if (pasted)
                for (const ChangeItem &item : pasted->change.items())
                    list << description<Comparable>().fromRow(*item.after)->price->decimal();
            return list.join(QLatin1Char(' '));
        };
        QCOMPARE(prices(paste("118.00 27 Sep working, measured\n\n£95 asking\r\n31 not working")), QStringLiteral("118.00 95.00 31.00"));
        QCOMPARE(prices(paste("118.00\t2026-09-27\tworking\n1,120.00\t2026-09-28\tworking")), QStringLiteral("118.00 1120.00"));
        QCOMPARE(prices(paste("118.00,2026-09-27,working,measured\n95;28 Sep;working")), QStringLiteral("118.00 95.00"));
        const auto listed = paste("price,date,working,asking\n118.00,2026-09-27,yes,no\n95,2026-09-28,no,yes");
        QCOMPARE(prices(listed), QStringLiteral("118.00 95.00"));
        const auto first = description<Comparable>().fromRow(*listed->change.items().first().after);
        QCOMPARE(first->unit, unit.id);
        QCOMPARE(first->soldOn, QDate(2026, 9, 27));
        const auto bad = paste("118.00 27 Sep\ncheap 28 Sep 2\n95");
        QVERIFY(!bad);
        QVERIFY2(bad.trouble().sentence().contains(QStringLiteral("line 2")), qPrintable(bad.trouble().sentence()));
        QVERIFY(!paste("colour,size\n1,2")); // no column says the price
        // What is written down already is not written down again.
        for (const ChangeItem &item : listed->change.items())
            file.all<Comparable>() << *description<Comparable>().fromRow(*item.after);
        const auto twice = paste("price,date,working,asking\n118.00,2026-09-27,yes,no\n99,2026-09-28,no,yes");
        QCOMPARE(prices(twice), QStringLiteral("99.00"));
        QCOMPARE(twice->there, 1);
    }
};

QTEST_MAIN(TestViewMoneyWays)
#include "test_view_money_ways.moc"
