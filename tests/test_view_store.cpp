// The parts store over a real workbook: found by attribute, written down, ordered, arrived, taken from the shelf; and photos that follow
// a photographed label.
#include "model/paper/tag_label.h"
#include "tests/grid_under_test.h"
#include "tests/window_under_test.h"
#include "views/parts/parts_page.h"
#include "views/parts/shelf_offer.h"
#include "views/photos/photo_desk.h"
#include "views/places/parts_store_place.h"
#include "views/store/order_pane.h"
#include "views/store/shelf_pane.h"
#include "views/store/write_paper.h"
#include "views/widgets/ask.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QPainter>

using namespace ts;
using namespace ts::testing;
using namespace Qt::StringLiterals;

namespace {

/// A window with the parts store open.
struct StoreOpen {
    OpenDesk desk;
    std::unique_ptr<WindowUnderTest> window;
    PartsStorePlace *place = nullptr;
    GridView *shelf = nullptr;

    explicit StoreOpen(const QString &book)
    {
        if (!desk.create(book))
            qFatal("no workbook");
        window = std::make_unique<WindowUnderTest>(*desk);
        window->workspace().showPlace(PlaceKey::PartsStore);
        place = window->workspace().findChild<PartsStorePlace *>();
        shelf = grid(u"Parts on the shelf"_s);
    }
    [[nodiscard]] GridView *grid(const QString &name) const
    {
        for (GridView *each : window->workspace().findChildren<GridView *>())
            if (each->accessibleName() == name && !each->isHidden() && each->parentWidget()->isVisible())
                return each;
        return nullptr;
    }
    template <class R>
    [[nodiscard]] QList<R> all()
    {
        return desk->list<R>().value();
    }
    void write(const QString &line)
    {
        shelf->editAdding();
        type(line);
        press(Qt::Key_Return);
        QTest::qWait(20); // the place shows it when the event loop comes round
        if (shelf->isEditing())
            press(Qt::Key_Escape); // with no field open it would leave the place
    }
    Need need(const Unit &unit, const QString &text, const QString &supplier = {})
    {
        Need need = desk->maker().fresh<Need>();
        need.unit = unit.id;
        need.text = text;
        need.supplier = supplier;
        if (!desk->apply(Change(u"Need"_s).add(need)))
            qFatal("no need");
        return need;
    }
};

QImage labelPicture(const QString &tag)
{
    QImage picture(900, 400, QImage::Format_RGB32);
    picture.fill(QColor(130, 120, 100));
    QPainter painter(&picture);
    painter.scale(2.2, 2.2);
    painter.translate(20, 10);
    paintLabel(painter, {tag, {}, u"Deck"_s, {}, {}}, {89, 36});
    return picture;
}

} // namespace

class TestViewStore : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void partsAreWrittenDownAndFound()
    {
        StoreOpen store(m_books.fresh(u"sqlite"_s));
        store.write(u"10 x electrolytic 1000 uF 63 V 10x20 at 0.12 in drawer C3"_s);
        store.write(u"electrolytic 1000 uF 50 V"_s);
        store.write(u"2 x belt 76x4x0.6"_s);
        QCOMPARE(store.all<Part>().size(), 3);
        const Part cap = store.all<Part>().first();
        QCOMPARE(cap.kind, u"electrolytic"_s);
        QCOMPARE(cap.place, u"drawer C3"_s);
        QVERIFY(cap.rating.contains(u"capacitance 1000 µF"_s));
        QCOMPARE(store.all<Batch>().first().left, 10);
        QCOMPARE(store.all<Batch>().first().unitCost->minor(), 12);
        const QAbstractItemModelTester tester(&store.shelf->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        auto *find = store.place->findChild<ShelfPane *>()->findChild<QLineEdit *>();
        find->setFocus();
        const auto found = [&](const QString &line) {
            find->clear();
            type(line);
            press(Qt::Key_Return);
            return store.shelf->rows().rowCount() - 1; // the last one adds
        };
        QCOMPARE(found(u"capacitor 1000u >=63V d<=10mm"_s), 1);
        QCOMPARE(store.shelf->rows().row(0).key, cap.id.value);
        QCOMPARE(found(u"belt 78 +- 2 mm"_s), 1);
        QCOMPARE(found(u"belt 79 +- 2 mm"_s), 0);
        QCOMPARE(found(u"belt >=9V"_s), 0); // is refused in words, and shows what was found before
        QCOMPARE(found({}), 3);
        QCOMPARE(unnamedControls(*store.place), QStringList());
    }

    void attributesAndBatchesAreEdited()
    {
        StoreOpen store(m_books.fresh(u"sqlite"_s));
        const Unit donor = benchUnit(*store.desk, u"Donor"_s);
        store.write(u"electrolytic 470 uF 25 V"_s);
        const QUuid part = store.all<Part>().first().id.value;
        store.shelf->setCurrent(part);
        GridView *rating = store.grid(u"Rating"_s);
        QVERIFY(rating);
        const auto rowOf = [&](const QString &key) {
            for (const GridRow &row : rating->rows().rows())
                if (row.name == key)
                    return row.key;
            return QUuid();
        };
        rating->editAt(rowOf(u"diameter"_s), 1);
        type(u"10"_s);
        press(Qt::Key_Return);
        QVERIFY(store.all<Part>().first().rating.contains(u"diameter 10 mm"_s));
        rating->editAt(rowOf(u"height"_s), 1);
        type(u"16 V"_s);
        press(Qt::Key_Return);
        QVERIFY(!store.all<Part>().first().rating.contains(u"height"_s)); // a height is not given in volts
        press(Qt::Key_Escape);

        GridView *batches = store.grid(u"Batches"_s);
        batches->editAdding();
        type(u"2 at 4.00 from %1"_s.arg(donor.tag));
        press(Qt::Key_Return);
        QCOMPARE(store.all<Batch>().size(), 2);
        QCOMPARE(store.all<Batch>().last().donor, donor.id);
        QCOMPARE(store.all<Batch>().last().unitCost->minor(), 0); // the donor cost nothing, so nothing can move
        QTest::qWait(20);
        if (batches->isEditing())
            press(Qt::Key_Escape);

        store.shelf->editAt(part, 4);
        QVERIFY(store.shelf->isEditing());
        type(u"5"_s);
        press(Qt::Key_Return);
        QTest::qWait(20);
        QCOMPARE(store.all<Part>().first().minimumStock, std::optional(5));
        QVERIFY(buttonWith(*store.place, u"Below what is kept: 1"_s));
        store.window->work().undo();
        QVERIFY(!store.all<Part>().first().minimumStock);
    }

    void anOrderIsPlacedAndArrives()
    {
        StoreOpen store(m_books.fresh(u"sqlite"_s));
        const Unit first = benchUnit(*store.desk, u"Deck"_s), second = benchUnit(*store.desk, u"Player"_s);
        for (const Unit &unit : {first, second}) { // they have stood there since yesterday
            Unit after = unit;
            after.stageSince = unit.stageSince.addDays(-1);
            wantOk(store.desk->apply(Change(u"Since"_s).edit(unit, after)));
        }
        store.need(first, u"belt 78x4x0.6"_s, u"Millrace"_s);
        store.need(second, u"belt 78x4x0.6"_s, u"Millrace"_s);
        QCOMPARE(store.desk->rackOrder({}, RackSort::MovedLast)->first().id, second.id); // taken in later
        store.place->showOrder(true);
        QTRY_VERIFY(buttonWith(*store.place, u"Mark as ordered"_s));
        QCOMPARE(unnamedControls(*store.place), QStringList());
        for (QLineEdit *each : store.place->findChildren<QLineEdit *>())
            if (each->isVisible() && each->accessibleName().startsWith(u"Due"_s))
                each->setText(u"2026-11-30"_s);
        QTest::mouseClick(buttonWith(*store.place, u"Mark as ordered"_s), Qt::LeftButton);
        for (const Need &need : store.all<Need>()) {
            QCOMPARE(need.state, NeedState::Ordered);
            QCOMPARE(need.due, QDate(2026, 11, 30));
        }
        QTRY_VERIFY(!buttonWith(*store.place, u"Mark as ordered"_s));
        // one of them is taken off the list: only the first unit is waited for, and it comes up when the order is here
        Need gone;
        for (const Need &need : store.all<Need>())
            if (need.unit == second.id)
                gone = need;
        wantOk(store.desk->apply(Change(u"Off"_s).remove(gone)));
        QTRY_VERIFY(buttonWith(*store.place, u"It has arrived"_s));
        QTest::qWait(50);
        QTRY_VERIFY(buttonWith(*store.place, u"It has arrived"_s));
        QTest::mouseClick(buttonWith(*store.place, u"It has arrived"_s), Qt::LeftButton);
        QCOMPARE(store.all<Need>().size(), 1);
        QCOMPARE(store.all<Need>().first().state, NeedState::Here);
        QCOMPARE(store.desk->rackOrder({}, RackSort::MovedLast)->first().id, first.id);
        QVERIFY(store.desk->rackUnits({first.id})->first().partsHere);
        QVERIFY(!store.desk->rackUnits({second.id})->first().partsHere);
        store.window->work().undo();
        QCOMPARE(store.all<Need>().first().state, NeedState::Ordered);
        QCOMPARE(store.desk->rackOrder({}, RackSort::MovedLast)->first().id, second.id);
    }

    void shelfFillsANeed()
    {
        StoreOpen store(m_books.fresh(u"sqlite"_s));
        store.write(u"3 x belt 78x4x0.6 at 1.20 in tin B1"_s);
        const Unit deck = benchUnit(*store.desk, u"Deck"_s);
        const Need need = store.need(deck, u"capstan belt 78x4x0.6"_s);
        store.window->work().takeInHand(deck.id);
        store.window->workspace().showPlace(PlaceKey::Units);
        auto *page = store.window->open<PartsPage>(PageKey::Parts);
        page->table()->setCurrent(need.id.value);
        auto *offer = page->findChild<ShelfOffer *>();
        QTRY_VERIFY(offer->isVisible());
        QCOMPARE(offer->table()->rows().rowCount(), 1);
        QTest::qWait(20);
        QTest::mouseClick(buttonWith(*offer, u"Take it"_s), Qt::LeftButton);
        QCOMPARE(store.all<Need>().first().state, NeedState::Here);
        QCOMPARE(store.all<Need>().first().price->minor(), 120);
        QCOMPARE(store.all<Batch>().first().left, 2);
        QTRY_VERIFY(!offer->isVisible());
        store.window->work().undo();
        QCOMPARE(store.all<Batch>().first().left, 3);
    }

    void papersAreWritten()
    {
        StoreOpen store(m_books.fresh(u"sqlite"_s));
        QTemporaryDir folder;
        QString file = folder.filePath(u"label.pdf"_s);
        ask::answerFor(&store.window->workspace(), [&file](const QString &) { return file; });
        const Unit deck = benchUnit(*store.desk, u"Deck"_s);
        store.window->work().takeInHand(deck.id);
        writeLabels(store.window->work(), &store.window->workspace(), false, 2);
        QVERIFY(QFileInfo(file).size() > 1000);
        QCOMPARE(store.all<Paper>().first().kind, PaperKind::Label);
        file = folder.filePath(u"order.html"_s);
        writeOrderList(store.window->work(), &store.window->workspace(), nullptr);
        QVERIFY(!QFileInfo::exists(file)); // nothing is awaited
        store.need(deck, u"belt 78x4x0.6"_s);
        writeOrderList(store.window->work(), &store.window->workspace(), nullptr);
        QVERIFY(QFileInfo(file).size() > 1000);
        QVERIFY(store.all<Paper>().last().unit.isNull());
    }

    void photosFollowThePhotographedLabel()
    {
        StoreOpen store(m_books.fresh(u"sqlite"_s));
        const Unit deck = benchUnit(*store.desk, u"Deck"_s), other = benchUnit(*store.desk, u"Other"_s);
        store.window->work().takeInHand(other.id);
        QTemporaryDir folder;
        PhotoDesk *photos = store.window->workspace().photos();
        photos->watch().setFolder(folder.path());
        QVERIFY(labelPicture(QString::number(deck.tag).rightJustified(4, u'0')).save(folder.filePath(u"1.png"_s)));
        QImage plain(640, 480, QImage::Format_RGB32);
        plain.fill(Qt::darkGreen);
        QVERIFY(plain.save(folder.filePath(u"2.png"_s)));
        QTRY_COMPARE_WITH_TIMEOUT(store.all<Photo>().size(), 2, 20000);
        for (const Photo &photo : store.all<Photo>())
            QCOMPARE(photo.unit, deck.id);
        // whoever takes a unit in hand means that one again
        store.window->work().takeInHand(deck.id);
        store.window->work().takeInHand(other.id);
        plain.fill(Qt::darkRed);
        QVERIFY(plain.save(folder.filePath(u"3.png"_s)));
        QTest::qWait(4000);
        QCOMPARE(store.all<Photo>().size(), 2); // is offered, not put anywhere
    }
};

QTEST_MAIN(TestViewStore)
#include "test_view_store.moc"
