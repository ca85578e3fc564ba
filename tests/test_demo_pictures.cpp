// The drawn photographs: each is a picture, each unit looks its own way, and the same description gives the same picture.
#include "model/demo/drawing.h"
#include "model/demo/engraving.h"
#include "model/demo/scene.h"
#include "tests/testing.h"

#include <QBuffer>

using namespace ts;

namespace {

DemoPicture deck(quint32 seed)
{
    DemoPicture picture;
    picture.category = Category::CassetteDeck;
    picture.maker = QStringLiteral("Pellworth");
    picture.makerModel = QStringLiteral("KD-7");
    picture.serial = QStringLiteral("1180427");
    picture.seed = seed;
    return picture;
}

/// How many different colours a coarse look finds: an empty or one-coloured picture has few.
qsizetype colours(const QImage &image)
{
    QSet<QRgb> found;
    for (int y = 0; y < image.height(); y += 7)
        for (int x = 0; x < image.width(); x += 7)
            found << (image.pixel(x, y) & 0xf8f8f8u);
    return found.size();
}

/// What a coarse look finds where nothing lies on the mat.
qsizetype coloursOfNothing()
{
    Scene scene(3);
    scene.onMat();
    return colours(scene.finish());
}

} // namespace

class TestDemoPictures : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyCategoryIsDrawn_data()
    {
        QTest::addColumn<Category>("category");
        for (const auto &[category, word] : Words<Category>::list)
            QTest::newRow(word) << category;
    }
    void everyCategoryIsDrawn()
    {
        QFETCH(Category, category);
        DemoPicture picture = deck(3);
        picture.category = category;
        for (const DemoView view : {DemoView::Front, DemoView::Back, DemoView::Inside}) {
            picture.view = view;
            const QImage image = drawDemoPicture(picture);
            QCOMPARE(image.size(), QSize(1600, 1200));
            QVERIFY(colours(image) > 2 * coloursOfNothing());
            QByteArray jpeg;
            QBuffer buffer(&jpeg);
            QVERIFY(buffer.open(QIODevice::WriteOnly) && image.save(&buffer, "JPEG", 88));
            QVERIFY2(jpeg.size() < 260'000, qPrintable(QString::number(jpeg.size())));
        }
    }

    void everySubjectIsDrawn()
    {
        QList<QImage> all;
        for (const QString &subject : demoSubjects()) {
            DemoPicture picture = deck(3);
            picture.view = DemoView::Detail;
            picture.subject = subject;
            picture.wear = 3;
            const QImage image = drawDemoPicture(picture);
            QVERIFY2(colours(image) > 2 * coloursOfNothing(), qPrintable(subject));
            QVERIFY2(!all.contains(image), qPrintable(subject));
            all << image;
        }
    }

    void sameDescriptionSamePicture()
    {
        QCOMPARE(drawDemoPicture(deck(5)), drawDemoPicture(deck(5)));
    }

    void eachUnitLooksItsOwnWay()
    {
        QVERIFY(drawDemoPicture(deck(5)) != drawDemoPicture(deck(6)));
        DemoPicture worn = deck(5);
        worn.wear = 3;
        QVERIFY(drawDemoPicture(deck(5)) != drawDemoPicture(worn));
    }

    void lettersAreStrokes()
    {
        QVERIFY(engraved(QStringLiteral("   "), {0, 0}, 30).isEmpty());
        QVERIFY(!engraved(QStringLiteral("KD-7"), {0, 0}, 30).isEmpty());
        const QRectF size = engraved(QStringLiteral("HELLO"), {10, 20}, 30).boundingRect();
        QCOMPARE(size.topLeft(), QPointF(10, 20));
        QCOMPARE(size.height(), 30.0);
        QCOMPARE(size.width(), engravedWidth(QStringLiteral("HELLO"), 30));
        QCOMPARE(engravedWidth(QString(), 30), 0.0);
    }
};

QTEST_GUILESS_MAIN(TestDemoPictures)
#include "test_demo_pictures.moc"
