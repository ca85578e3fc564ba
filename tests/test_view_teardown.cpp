// The teardown page over a real workbook: off, back, left out, and pins on a photo.
#include "tests/grid_under_test.h"
#include "tests/page_under_test.h"
#include "views/teardown/pinned_photo.h"
#include "views/teardown/teardown_page.h"
#include "views/teardown/teardown_rows.h"
#include "views/widgets/ask.h"
#include "views/widgets/ask_line.h"

#include <QAbstractItemModelTester>
#include <QBuffer>

using namespace ts;
using namespace ts::testing;

class TestViewTeardown : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static int column(TeardownColumn c) { return static_cast<int>(c); }

    struct OnPage : PageUnderTest<TeardownPage> {
        GridView *table;
        explicit OnPage(const QString &book) : PageUnderTest(book, PageKey::Teardown), table(page->table()) {}
        void takeOff(const QStringList &lines)
        {
            table->editAdding();
            for (const QString &line : lines) {
                type(line);
                press(Qt::Key_Return);
            }
            press(Qt::Key_Escape);
        }
        void addPhoto()
        {
            QImage picture(400, 300, QImage::Format_RGB32);
            picture.fill(Qt::darkGray);
            QByteArray bytes;
            QBuffer buffer(&bytes);
            buffer.open(QIODevice::WriteOnly);
            picture.save(&buffer, "PNG");
            const auto sha256 = desk->keep(bytes, bytes);
            QVERIFY(sha256);
            Photo photo = desk->maker().fresh<Photo>();
            photo.unit = unit.id;
            photo.sha256 = *sha256;
            photo.width = 400;
            photo.height = 300;
            photo.caption = QStringLiteral("mechanism from above");
            QVERIFY(window->work().record(Change(QStringLiteral("Photo")).add(photo)));
        }
        [[nodiscard]] QList<TeardownItem> items() const { return inOrder(file()); }
        [[nodiscard]] const QList<PhotoPin> &pins() const { return all<PhotoPin>(); }
    };

private Q_SLOTS:
    void whatComesOffIsTypedInTheWordsOfTheLog()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        QCOMPARE(on.page->looseText(), QStringLiteral("Nothing is off."));
        on.takeOff({QStringLiteral("lid 5 screws M3x8 tray A1"), QStringLiteral("front panel 4 screws M3x6 tray A3"), QStringLiteral("off to one side")});
        QCOMPARE(on.items().size(), 3);
        QCOMPARE(on.items().at(0).what, QStringLiteral("lid"));
        QCOMPARE(on.items().at(0).fasteners, QStringLiteral("5 screws M3x8"));
        QCOMPARE(on.items().at(0).keptIn, QStringLiteral("tray A1"));
        QVERIFY2(on.page->looseText().startsWith(QLatin1String("9 screws")), qPrintable(on.page->looseText())); // 5 + 4
        const QAbstractItemModelTester tester(&on.table->rows(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        stand(on.table, 2, column(TeardownColumn::What));
        press(Qt::Key_Up, Qt::ControlModifier);
        QCOMPARE(on.items().at(1).what, QStringLiteral("off to one side"));
        stand(on.table, 1, column(TeardownColumn::What));
        press(Qt::Key_Delete);
        QCOMPARE(on.items().size(), 2);
        on.window->work().undo();
        QCOMPARE(on.items().size(), 3);
    }

    void puttingBackReadsItBackwards()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.takeOff({QStringLiteral("lid 5 screws M3x8"), QStringLiteral("bracket 2 screws M3x6")});
        on.page->setWay(TeardownWay::Back);
        QCOMPARE(reads(on.table, 0, column(TeardownColumn::What)), QStringLiteral("bracket"));
        stand(on.table, 0, column(TeardownColumn::What));
        press(Qt::Key_Space);
        QCOMPARE(on.items().at(1).state, TeardownState::Back);
        QVERIFY(on.items().at(1).backAt.isValid());
        QCOMPARE(on.page->looseText(), QStringLiteral("5 screws"));
        press(Qt::Key_Space);
        QCOMPARE(on.items().at(1).state, TeardownState::Off);
        press(Qt::Key_L, Qt::ControlModifier);
        QVERIFY(on.page->asking()->isVisible());
        press(Qt::Key_Return); // not without a reason
        QVERIFY(on.notice().contains(QLatin1String("why")));
        type(QStringLiteral("thread stripped"));
        press(Qt::Key_Return);
        QCOMPARE(on.items().at(1).state, TeardownState::LeftOut);
        QCOMPARE(on.items().at(1).leftOutBecause, QStringLiteral("thread stripped"));
        QVERIFY(!on.page->asking()->isVisible());
    }

    void moreOfAnItemIsNotedAndWarnedOf()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.takeOff({QStringLiteral("mechanism 3 screws M2.6x10")});
        stand(on.table, 0, column(TeardownColumn::What));
        QVERIFY(on.page->cautionText().isEmpty());
        stand(on.page->details(), static_cast<int>(TeardownDetail::Marks), 1);
        type(QStringLiteral("height screw against the block"));
        press(Qt::Key_Return);
        QCOMPARE(on.items().first().marks, QStringLiteral("height screw against the block"));
        QVERIFY(on.page->cautionText().contains(QLatin1String("height screw")));
        stand(on.page->details(), static_cast<int>(TeardownDetail::Count), 1);
        press(Qt::Key_F2);
        openField()->selectAll();
        type(QStringLiteral("lots"));
        press(Qt::Key_Return);
        QVERIFY(on.notice().contains(QLatin1String("whole number")));
        press(Qt::Key_Escape);
        QCOMPARE(on.items().first().fastenerCount, std::optional(3));
    }

    void pinsArePutDraggedAndMovedByKeys()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        on.takeOff({QStringLiteral("lid 5 screws M3x8"), QStringLiteral("mechanism 3 screws")});
        on.addPhoto();
        PinnedPhoto *photo = on.page->photo();
        QVERIFY(photo->isVisible());
        stand(on.table, 1, column(TeardownColumn::What));
        const PinnedPhoto::Pin corner{{}, {}, 0.25, 0.25, false};
        QTest::mouseClick(photo, Qt::LeftButton, Qt::NoModifier, photo->placeOf(corner).toPoint());
        QCOMPARE(on.pins().size(), 1);
        QCOMPARE(on.pins().first().item, on.items().at(1).id);
        QVERIFY(std::abs(on.pins().first().x - 0.25) < 0.01 && std::abs(on.pins().first().y - 0.25) < 0.01);
        QCOMPARE(photo->pins().first().label, QStringLiteral("2"));

        const QPoint from = photo->placeOf(photo->pins().first()).toPoint();
        const QPoint to = photo->placeOf({{}, {}, 0.75, 0.5, false}).toPoint();
        QTest::mousePress(photo, Qt::LeftButton, Qt::NoModifier, from);
        QTest::mouseMove(photo, to);
        QTest::mouseRelease(photo, Qt::LeftButton, Qt::NoModifier, to);
        QCOMPARE(on.pins().size(), 1);
        QVERIFY(std::abs(on.pins().first().x - 0.75) < 0.01 && std::abs(on.pins().first().y - 0.5) < 0.01);

        photo->setFocus();
        const double before = on.pins().first().x;
        for (int i = 0; i < 3; ++i)
            press(Qt::Key_Left);
        photo->commitMove(); // what resting does
        QVERIFY(std::abs(before - 0.06 - on.pins().first().x) < 1e-9);
        on.window->work().undo(); // three strokes are one change
        QVERIFY(std::abs(before - on.pins().first().x) < 1e-9);
        press(Qt::Key_Return); // another, in the middle
        QCOMPARE(on.pins().size(), 2);
        QCOMPARE(on.pins().last().x, 0.5);
        press(Qt::Key_Delete);
        QCOMPARE(on.pins().size(), 1);
        on.page->grab();
        const QStringList unnamed = unnamedControls(*on.page);
        QVERIFY2(unnamed.isEmpty(), qPrintable(unnamed.join(QStringLiteral(", "))));
    }

    void anotherUnitsTeardownIsCopied()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        const Unit like = benchUnit(*on.desk, QStringLiteral("another KD-7"));
        TeardownItem item = on.desk->maker().fresh<TeardownItem>();
        item.unit = like.id;
        item.position = 1;
        item.what = QStringLiteral("bottom plate");
        item.fasteners = QStringLiteral("6 screws M3x6");
        wantOk(on.desk->apply(Change(QStringLiteral("Off")).add(item)));
        QPushButton *copy = OnPage::button(on.page, QStringLiteral("From another unit"));
        QVERIFY(copy);
        copy->click();
        type(QStringLiteral("nonsense"));
        press(Qt::Key_Return);
        QVERIFY(on.notice().contains(QLatin1String("no tag")));
        on.page->asking()->field()->selectAll();
        type(QString::number(like.tag));
        press(Qt::Key_Return);
        QCOMPARE(on.items().size(), 1);
        QCOMPARE(on.items().first().state, TeardownState::On);
        QVERIFY(on.page->looseText() == QLatin1String("Nothing is off."));
        stand(on.table, 0, column(TeardownColumn::What));
        press(Qt::Key_Space);
        QCOMPARE(on.items().first().state, TeardownState::Off);
        QCOMPARE(on.page->looseText(), QStringLiteral("6 screws"));
    }

    void theModelNotesBringTheirSteps()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        QPushButton *bring = OnPage::button(on.page, QStringLiteral("From the model notes"));
        QVERIFY(bring);
        bring->click();
        QVERIFY(on.notice().contains(QLatin1String("no notes")));
        Maker maker = on.desk->maker();
        ModelNotes notes = maker.fresh<ModelNotes>();
        notes.maker = QStringLiteral("Pellworth");
        notes.makerModel = QStringLiteral("KD-7");
        KnownTeardown known = maker.fresh<KnownTeardown>();
        known.modelNotes = notes.id;
        known.what = QStringLiteral("lid");
        known.fasteners = QStringLiteral("5 screws M3x8");
        Unit unit = on.file().unit;
        unit.maker = notes.maker;
        unit.makerModel = notes.makerModel;
        QVERIFY(on.window->work().record(Change(QStringLiteral("Notes")).add(notes).add(known).edit(on.file().unit, unit)));
        bring->click();
        QCOMPARE(on.items().size(), 1);
        QCOMPARE(on.items().first().state, TeardownState::On);
        QCOMPARE(on.items().first().fasteners, QStringLiteral("5 screws M3x8"));
    }

    void thePuttingBackSheetIsWritten()
    {
        OnPage on(m_books.fresh(QStringLiteral("sqlite")));
        QTemporaryDir folder;
        const QString file = folder.filePath(QStringLiteral("back.html"));
        ask::answerFor(on.page, [file](const QString &) { return file; });
        QPushButton *print = OnPage::button(on.page, QStringLiteral("Print"));
        QVERIFY(print);
        print->click();
        QVERIFY(!QFile::exists(file)); // nothing is off
        QVERIFY(!on.notice().isEmpty());
        on.takeOff({QStringLiteral("lid <b>top</b> 5 screws M3x8")});
        print->click();
        QFile written(file);
        QVERIFY(written.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(written.readAll());
        QVERIFY(text.contains(QLatin1String("lid &lt;b&gt;top")));
        QTRY_COMPARE(on.window->work().file().all<Paper>().size(), 1);
    }
};

QTEST_MAIN(TestViewTeardown)
#include "test_view_teardown.moc"
