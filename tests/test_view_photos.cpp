// Photos as they come in, bad ones among them, and what is done with them in the viewer.
#include "model/records/tag_text.h"
#include "tests/media_samples.h"
#include "tests/window_under_test.h"
#include "views/photos/folder_watch.h"
#include "views/photos/photo_canvas.h"
#include "views/photos/photo_desk.h"
#include "views/photos/photo_list.h"
#include "views/photos/photo_tray.h"
#include "views/photos/photos_place.h"
#include "views/photos/thumbnails.h"
#include "views/widgets/ask.h"
#include "views/widgets/notice_bar.h"

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QLineEdit>
#include <QMimeData>
#include <QSignalSpy>

using namespace ts;
using namespace ts::testing;

class TestViewPhotos : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    QTemporaryDir m_folder;

    QString file(const QString &name, const QByteArray &bytes) const
    {
        const QString path = m_folder.filePath(name);
        QFile made(path);
        if (!made.open(QIODevice::WriteOnly) || made.write(bytes) != bytes.size())
            qFatal("a test file cannot be written");
        return path;
    }
    static QByteArray jpeg(int width, int height) { return samples::encoded(samples::quarters(width, height), "jpeg"); }
    static QList<Photo> photos(OpenDesk &desk, const Unit &unit) { return desk->unitFile(unit.id)->all<Photo>(); }
    static void drop(QWidget &onto, const QMimeData &data)
    {
        QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&onto, &enter);
        QVERIFY(enter.isAccepted());
        QDropEvent event(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&onto, &event);
    }
    static QMimeData *filesMime(const QStringList &files)
    {
        auto *data = new QMimeData;
        QList<QUrl> urls;
        for (const QString &path : files)
            urls << QUrl::fromLocalFile(path);
        data->setUrls(urls);
        return data;
    }
    static PhotosPlace *openPlace(WindowUnderTest &window)
    {
        window.workspace().showPlace(PlaceKey::Photos);
        return window.workspace().findChild<PhotosPlace *>();
    }
    static void key(PhotosPlace *place, Qt::Key key) { QTest::keyClick(place->findChild<PhotoCanvas *>(), key); }

private Q_SLOTS:
    void droppedFilesGoInAndBadOnesAreRefusedByName()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        const QByteArray good = jpeg(80, 60);
        const std::unique_ptr<QMimeData> data(filesMime({file(QStringLiteral("lid.jpg"), good), file(QStringLiteral("notes.txt"), "no picture"), file(QStringLiteral("cut.jpg"), good.left(good.size() / 2)),
                                                         file(QStringLiteral("empty.png"), {}), m_folder.filePath(QStringLiteral("nowhere.jpg")), file(QStringLiteral("belt.png"), samples::encoded(samples::quarters(20, 30), "png"))}));
        auto *field = new QLineEdit(&window.workspace()); // a field would take the names of the files for text
        field->show();
        drop(*field, *data);
        QTRY_COMPARE(photos(desk, unit).size(), 2);
        QTRY_VERIFY(!window.workspace().photos()->intake().isBusy());
        QVERIFY(field->text().isEmpty());
        QCOMPARE(photos(desk, unit).first().originalName, QStringLiteral("lid.jpg"));
        QCOMPARE(photos(desk, unit).last().originalName, QStringLiteral("belt.png"));
        QCOMPARE(photos(desk, unit).first().phase, Phase::DuringWork); // it stands on the bench
        QCOMPARE(window.workspace().said()->text(), tagText(unit.tag) + QStringLiteral(" 2 photos"));
        const QStringList refused = window.workspace().notice()->text().split(QLatin1Char('\n'));
        QCOMPARE(refused.size(), 4);
        for (const auto *name : {"notes.txt", "cut.jpg", "empty.png", "nowhere.jpg"})
            QCOMPARE(refused.filter(QLatin1String(name)).size(), 1);
        window.work().undo(); // one change
        QVERIFY(photos(desk, unit).isEmpty());
        window.work().redo();
        QCOMPARE(photos(desk, unit).size(), 2);
        // The same photo again is not a second one.
        drop(window.workspace(), *data);
        QTRY_VERIFY(window.workspace().notice()->text().contains(QLatin1String("has this photo already")));
        QCOMPARE(photos(desk, unit).size(), 2);
    }

    void aCopiedPictureIsPasted()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        QGuiApplication::clipboard()->setImage(samples::quarters(40, 30));
        QTest::keyClick(&window.workspace(), Qt::Key_V, Qt::ControlModifier);
        QTRY_COMPARE(photos(desk, unit).size(), 1);
        QCOMPARE(QSize(photos(desk, unit).first().width, photos(desk, unit).first().height), QSize(40, 30));
        // The picture is what was copied: its four quarters have their colours (JPEG, so within a few levels).
        const QImage kept = samples::read(*desk->kept(photos(desk, unit).first().sha256));
        QVERIFY(qRed(kept.pixel(30, 5)) > 230 && qGreen(kept.pixel(5, 25)) > 230 && qBlue(kept.pixel(30, 25)) > 230);
        // Text is text, in a field and beside one.
        QGuiApplication::clipboard()->setText(QStringLiteral("glazed"));
        QLineEdit field(&window.workspace());
        field.show();
        QTest::keyClick(&field, Qt::Key_V, Qt::ControlModifier);
        QCOMPARE(field.text(), QStringLiteral("glazed"));
        QVERIFY(!window.workspace().photos()->intake().isBusy());
    }

    void filesAreChosen()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        const QString files = file(QStringLiteral("one.jpg"), jpeg(30, 20)) + QLatin1Char('\n') + file(QStringLiteral("two.jpg"), jpeg(31, 20));
        ask::answerFor(&window.workspace(), [&](const QString &) { return files; });
        window.workspace().photos()->chooseFiles();
        QTRY_COMPARE(photos(desk, unit).size(), 2);
    }

    void workIsStoppedAndWhatIsReadyStays()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        PhotoIntake &intake = window.workspace().photos()->intake();
        QList<PhotoSource> many;
        for (int i = 0; i < 12; ++i)
            many << PhotoSource{{}, samples::quarters(600 + i, 400)};
        connect(&intake, &PhotoIntake::advanced, &intake, [&](int done, int) {
            if (done == 3)
                intake.stop();
        });
        intake.take(many, unit.id);
        QTRY_VERIFY(!intake.isBusy());
        QCOMPARE(photos(desk, unit).size(), 3);
        QTest::qWait(100); // a late answer changes nothing
        QCOMPARE(photos(desk, unit).size(), 3);
    }

    void theWatchedFolderWaitsForAWholeFile()
    {
        QTemporaryDir watched;
        const QByteArray whole = jpeg(200, 150);
        const auto write = [&](const QString &name, const QByteArray &bytes) {
            QFile out(watched.filePath(name));
            QVERIFY(out.open(QIODevice::Append) && out.write(bytes) == bytes.size());
        };
        write(QStringLiteral("old.jpg"), whole);
        FolderWatch watch(nullptr, 60);
        QSignalSpy arrived(&watch, &FolderWatch::arrived);
        watch.setFolder(watched.path());
        write(QStringLiteral("new.jpg"), whole.left(whole.size() / 2));
        write(QStringLiteral("new.jpg.part"), whole);
        QTest::qWait(250); // quiet for four times as long as a whole one needs, and cut off
        QCOMPARE(arrived.count(), 0);
        write(QStringLiteral("new.jpg"), whole.mid(whole.size() / 2));
        QTRY_COMPARE(arrived.count(), 1);
        QCOMPARE(arrived.first().first().toStringList(), QStringList{watched.filePath(QStringLiteral("new.jpg"))});
        // One that stays cut off is told of in the end, to be refused with a reason.
        write(QStringLiteral("never.jpg"), whole.left(300));
        QTRY_COMPARE_WITH_TIMEOUT(arrived.count(), 2, 5000);
        // What came while nobody watched is offered the next time.
        const QDateTime until = watch.newest();
        watch.setFolder({});
        QTest::qWait(20);
        write(QStringLiteral("later.jpg"), whole);
        FolderWatch again(nullptr, 60);
        QSignalSpy offered(&again, &FolderWatch::arrived);
        again.setFolder(watched.path(), until);
        QTRY_COMPARE(offered.count(), 1);
        QCOMPARE(offered.first().first().toStringList(), QStringList{watched.filePath(QStringLiteral("later.jpg"))});
    }

    void theTrayGivesPhotosByOneKey()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit other = benchUnit(*desk, QStringLiteral("Tuner"));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        window.work().takeInHand(unit.id);
        PhotoTray *tray = window.workspace().photos()->tray();
        QVERIFY(!tray->isVisible());
        tray->add({file(QStringLiteral("a.jpg"), jpeg(30, 20))});
        QVERIFY(tray->isVisible());
        QTest::keyClick(&window.workspace(), Qt::Key_F8);
        QTRY_COMPARE(photos(desk, unit).size(), 1);
        QVERIFY(!tray->isVisible());
        tray->add({file(QStringLiteral("b.jpg"), jpeg(32, 20))});
        auto *field = tray->findChild<QLineEdit *>();
        field->setFocus();
        QTest::keyClicks(field, QStringLiteral("9999"));
        QTest::keyClick(field, Qt::Key_Return);
        QVERIFY(window.workspace().notice()->text().contains(QLatin1String("9999")));
        QVERIFY(tray->isVisible());
        field->setText(tagText(other.tag));
        QTest::keyClick(field, Qt::Key_Return);
        QTRY_COMPARE(photos(desk, other).size(), 1);
        QCOMPARE(photos(desk, unit).size(), 1);
    }

    void theViewerDoesWhatItsKeysSay()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit other = benchUnit(*desk, QStringLiteral("Tuner"));
        const Unit unit = benchUnit(*desk, QStringLiteral("Deck"));
        WindowUnderTest window(*desk);
        window.work().takeInHand(unit.id);
        window.workspace().photos()->intake().take({{{}, samples::quarters(300, 200)}, {{}, samples::quarters(301, 200)}, {{}, samples::quarters(302, 200)}}, unit.id);
        QTRY_COMPARE(photos(desk, unit).size(), 3);
        PhotosPlace *place = openPlace(window);
        const auto shown = [&] { return *window.work().file().find(place->current()); };
        const QAbstractItemModelTester tester(place->findChild<PhotoListModel *>(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        QCOMPARE(shown().width, 300);
        key(place, Qt::Key_Right);
        QCOMPARE(shown().width, 301);
        key(place, Qt::Key_F);
        QCOMPARE(shown().phase, Phase::AsFound);
        QCOMPARE(shown().width, 301); // it is first now, and still the one shown
        window.work().undo();
        QCOMPARE(shown().phase, Phase::DuringWork);
        key(place, Qt::Key_L);
        QCOMPARE(shown().phase, Phase::AsItLeaves);
        key(place, Qt::Key_S);
        QVERIFY(shown().onSheet);
        key(place, Qt::Key_C);
        auto *caption = qobject_cast<QLineEdit *>(window.workspace().window()->focusWidget());
        QVERIFY(caption);
        QTest::keyClicks(caption, QStringLiteral("clutch <b>felt</b>"));
        // Somebody else's change on the unit leaves what is being typed alone.
        Note note = desk->maker().fresh<Note>();
        note.unit = unit.id;
        note.text = QStringLiteral("meanwhile");
        QVERIFY(window.work().record(Change(QStringLiteral("Note")).add(note)));
        QCOMPARE(caption->text(), QStringLiteral("clutch <b>felt</b>"));
        QTest::keyClick(caption, Qt::Key_Return);
        QCOMPARE(shown().caption, QStringLiteral("clutch <b>felt</b>"));

        PhotoPin pin = desk->maker().fresh<PhotoPin>();
        pin.unit = unit.id;
        pin.photo = place->current();
        QVERIFY(window.work().record(Change(QStringLiteral("Pin")).add(pin)));
        const Photo gone = shown();
        key(place, Qt::Key_Delete);
        QCOMPARE(photos(desk, unit).size(), 2);
        QVERIFY(desk->unitFile(unit.id)->all<PhotoPin>().isEmpty());
        window.work().undo();
        QCOMPARE(desk->unitFile(unit.id)->all<PhotoPin>().size(), 1);
        window.work().showPhoto(unit.id, gone.id);
        QCOMPARE(place->current(), gone.id);
        key(place, Qt::Key_M);
        QTest::keyClicks(window.workspace().window()->focusWidget(), tagText(other.tag));
        QTest::keyClick(window.workspace().window()->focusWidget(), Qt::Key_Return);
        QCOMPARE(photos(desk, unit).size(), 2);
        QCOMPARE(photos(desk, other).size(), 1);
        QCOMPARE(photos(desk, other).first().caption, gone.caption);
        QCOMPARE(desk->unitFile(other.id)->all<PhotoPin>().size(), 1); // along with its photo
        window.work().undo();
        QCOMPARE(photos(desk, unit).size(), 3);
        QVERIFY(photos(desk, other).isEmpty());
        QVERIFY2(unnamedControls(*place).isEmpty(), qPrintable(unnamedControls(*place).join(QStringLiteral(", "))));
        key(place, Qt::Key_Escape);
        QCOMPARE(window.workspace().place(), PlaceKey::Units);
    }

    void zoomIsAboutWhereOneLooks()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        WindowUnderTest window(*desk);
        PhotoCanvas canvas(window.style());
        canvas.resize(400, 300);
        canvas.setPicture(QStringLiteral("a"), samples::quarters(1600, 1200), {}, QSize(1600, 1200));
        QVERIFY(canvas.isFitted());
        QCOMPARE(canvas.zoom(), 0.25);
        QTest::keyClick(&canvas, Qt::Key_A); // no key of its own
        canvas.ownPixels();
        QCOMPARE(canvas.zoom(), 1.0);
        // The middle of the picture, where the four quarters meet, is the middle of the window.
        const QImage grabbed = canvas.grab().toImage();
        QVERIFY(qRed(grabbed.pixel(300, 100)) > 250 && qGreen(grabbed.pixel(100, 200)) > 250 && qBlue(grabbed.pixel(300, 200)) > 250);
        canvas.zoomBy(2);
        QCOMPARE(canvas.zoom(), 2.0);
        canvas.zoomBy(0.01);
        QVERIFY(canvas.isFitted()); // never smaller than the place
        canvas.zoomBy(1000);
        QCOMPARE(canvas.zoom(), 8.0);
        canvas.setPicture(QStringLiteral("b"), samples::quarters(100, 80), {}, QSize(100, 80));
        QCOMPARE(canvas.zoom(), 1.0); // another one is whole again, and not larger than it is
    }

    void smallPicturesComeWithoutReadingWhilePainting()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const auto prepared = preparePhoto(jpeg(80, 60), QStringLiteral("a.jpg"));
        wantOk(prepared);
        const auto sha256 = desk->keep(prepared->bytes, prepared->thumbnail);
        wantOk(sha256);
        Thumbnails thumbnails(*desk);
        QSignalSpy arrived(&thumbnails, &Thumbnails::arrived);
        QVERIFY(thumbnails.cover(*sha256, {30, 20}, 4, 2).isNull());
        QTRY_COMPARE(arrived.count(), 1);
        const QPixmap cover = thumbnails.cover(*sha256, {30, 20}, 4, 2);
        QCOMPARE(cover.size(), QSize(60, 40));
        QCOMPARE(cover.devicePixelRatio(), 2.0);
        QCOMPARE(thumbnails.cover(*sha256, {30, 20}, 4, 2).cacheKey(), cover.cacheKey()); // made once
        QVERIFY(thumbnails.coverNow(QStringLiteral("none"), {30, 20}, 4, 1).isNull());
    }
};

QTEST_MAIN(TestViewPhotos)
#include "test_view_photos.moc"
