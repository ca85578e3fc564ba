#include "model/media/picture_outline.h"
#include "model/media/prepared_photo.h"
#include "tests/media_samples.h"

#include <QColorSpace>
#include <QTemporaryDir>
#include <QtTest>

#include <cmath>

using namespace ts;
using namespace ts::samples;

class TestMediaPhoto : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void turnsUpright_data();
    void turnsUpright();
    void dropsEveryWordAboutWhereAndWith();
    void keepsToTheSizes_data();
    void keepsToTheSizes();
    void everyFormat_data();
    void everyFormat();
    void seeThroughBecomesWhite();
    void coloursSurviveTheirProfile();
    void originalIsNeverTouched();
    void trailingBytesAreNoDamage();
};

namespace {

/// "black", "red", "green", "blue" or "white", whichever is nearest.
QString colourAt(const QImage &image, double x, double y)
{
    const QColor colour = image.pixelColor(int(x * image.width()), int(y * image.height()));
    const auto high = [](int part) { return part > 127; };
    if (high(colour.red()) && high(colour.green()) && high(colour.blue()))
        return QStringLiteral("white");
    return high(colour.red())     ? QStringLiteral("red")
           : high(colour.green()) ? QStringLiteral("green")
           : high(colour.blue())  ? QStringLiteral("blue")
                                  : QStringLiteral("black");
}

} // namespace

void TestMediaPhoto::turnsUpright_data()
{
    QTest::addColumn<int>("orientation");
    QTest::addColumn<QString>("firstRowIs");    // where the stored first row and first column are seen,
    QTest::addColumn<QString>("firstColumnIs"); // CIPA DC-008-2019 section 4.6.4, tag 274
    const auto row = [](int orientation, const char *first, const char *column) {
        QTest::addRow("%d", orientation) << orientation << QString::fromLatin1(first) << QString::fromLatin1(column);
    };
    row(1, "top", "left");
    row(2, "top", "right");
    row(3, "bottom", "right");
    row(4, "bottom", "left");
    row(5, "left", "top");
    row(6, "right", "top");
    row(7, "right", "bottom");
    row(8, "left", "bottom");
}

void TestMediaPhoto::turnsUpright()
{
    QFETCH(int, orientation);
    QFETCH(QString, firstRowIs);
    QFETCH(QString, firstColumnIs);
    for (const bool little : {true, false}) {
        const QByteArray jpeg =
            withSegments(encoded(quarters(64, 48), "jpeg", 100), exifSegment(TiffBuilder(little).build(orientation, {})));
        const auto photo = preparePhoto(jpeg, QStringLiteral("a.jpg"));
        QVERIFY(photo.ok());
        const bool onItsSide = orientation >= 5;
        QCOMPARE(QSize(photo->width, photo->height), onItsSide ? QSize(48, 64) : QSize(64, 48));
        const QImage image = read(photo->bytes);
        QCOMPARE(image.size(), QSize(photo->width, photo->height));
        // A stored corner lies on the side its row is seen on and the side its column is seen on.
        const auto opposite = [](const QString &side) {
            return side == QLatin1String("top")      ? QStringLiteral("bottom")
                   : side == QLatin1String("bottom") ? QStringLiteral("top")
                   : side == QLatin1String("left")   ? QStringLiteral("right")
                                                     : QStringLiteral("left");
        };
        const auto seen = [&](bool lastRow, bool lastColumn) {
            const QStringList sides{lastRow ? opposite(firstRowIs) : firstRowIs,
                                    lastColumn ? opposite(firstColumnIs) : firstColumnIs};
            return colourAt(image, sides.contains(QStringLiteral("right")) ? 0.9 : 0.1,
                            sides.contains(QStringLiteral("bottom")) ? 0.9 : 0.1);
        };
        QCOMPARE(seen(false, false), QStringLiteral("black"));
        QCOMPARE(seen(false, true), QStringLiteral("red"));
        QCOMPARE(seen(true, false), QStringLiteral("green"));
        QCOMPARE(seen(true, true), QStringLiteral("blue"));
    }
}

void TestMediaPhoto::dropsEveryWordAboutWhereAndWith()
{
    QImage texts = quarters(64, 48);
    texts.setText(QStringLiteral("Comment"), QStringLiteral("12 Example Street, GPS"));
    texts.setColorSpace(QColorSpace(QColorSpace::AdobeRgb));
    const QByteArray tiff = TiffBuilder(true).build(1, "2026:11:25 20:15:09", "+00:00");
    QByteArrayList sources{
        jpegWithEverything(), encoded(texts, "jpeg"), encoded(texts, "png"),
        withChunk(encoded(texts, "png"), pngChunk("eXIf", tiff) + pngChunk("tEXt", QByteArray("Author\0Somebody", 15)))};
    QVERIFY(sources[0].contains("Exif") && sources[0].contains("Invented Camera") && sources[1].contains("ICC_PROFILE"));
    for (const QByteArray &source : sources) {
        const auto photo = preparePhoto(source, QStringLiteral("folder/street.jpg"));
        QVERIFY(photo.ok());
        QCOMPARE(photo->originalName, QStringLiteral("street.jpg"));
        for (const QByteArray &bytes : {photo->bytes, photo->thumbnail}) {
            for (const char *word :
                 {"Exif", "GPS", "http", "xmp", "ICC", "Adobe", "Photoshop", "Camera", "Street", "Somebody", "2026"})
                QVERIFY2(!bytes.contains(word), word);
            // Whatever else might be said in a file stands in a marker segment; these are the ones a plain picture has.
            qsizetype at = 2;
            while (static_cast<quint8>(bytes[at + 1]) != 0xDA) {
                const auto marker = static_cast<quint8>(bytes[at + 1]);
                QVERIFY2(marker == 0xE0 || (marker >= 0xC0 && marker <= 0xDF), qPrintable(QString::number(marker, 16)));
                at += 2 + qFromBigEndian<quint16>(bytes.data() + at + 2);
            }
            QVERIFY(read(bytes).text().isEmpty());
        }
    }
    QCOMPARE(preparePhoto(sources[0], QString())->takenAt, QDateTime(QDate(2026, 11, 25), QTime(20, 15, 9), Qt::UTC));
}

void TestMediaPhoto::keepsToTheSizes_data()
{
    QTest::addColumn<QSize>("source");
    QTest::addColumn<QSize>("kept");
    QTest::addColumn<QSize>("small");
    QTest::newRow("landscape") << QSize(4000, 3000) << QSize(2560, 1920) << QSize(320, 240);
    QTest::newRow("portrait") << QSize(3000, 4000) << QSize(1920, 2560) << QSize(240, 320);
    QTest::newRow("just right") << QSize(2560, 1440) << QSize(2560, 1440) << QSize(320, 180);
    QTest::newRow("never made larger") << QSize(100, 50) << QSize(100, 50) << QSize(100, 50);
    QTest::newRow("a line") << QSize(5000, 2) << QSize(2560, 1) << QSize(320, 1);
    QTest::newRow("one pixel") << QSize(1, 1) << QSize(1, 1) << QSize(1, 1);
}

void TestMediaPhoto::keepsToTheSizes()
{
    QFETCH(QSize, source);
    QFETCH(QSize, kept);
    QFETCH(QSize, small);
    for (const char *format : {"jpeg", "png"}) {
        const auto photo = preparePhoto(encoded(quarters(source.width(), source.height()), format), QStringLiteral("a"));
        QVERIFY(photo.ok());
        QCOMPARE(QSize(photo->width, photo->height), kept);
        QCOMPARE(read(photo->bytes).size(), kept);
        QCOMPARE(read(photo->thumbnail).size(), small);
        if (kept.height() > 10)
            QCOMPARE(colourAt(read(photo->thumbnail), 0.9, 0.9), QStringLiteral("blue"));
    }
}

void TestMediaPhoto::everyFormat_data()
{
    QTest::addColumn<QByteArray>("bytes");
    const QImage image = quarters(64, 48);
    for (const char *format : {"jpeg", "png", "bmp", "webp"})
        QTest::newRow(format) << encoded(image, format, 100);
    QTest::newRow("grey jpeg") << encoded(image.convertToFormat(QImage::Format_Grayscale8), "jpeg");
    QTest::newRow("indexed png") << encoded(image.convertToFormat(QImage::Format_Indexed8), "png");
    QTest::newRow("deep png") << encoded(image.convertToFormat(QImage::Format_RGBA64), "png");
    QTest::newRow("gif") << smallGif();
}

void TestMediaPhoto::everyFormat()
{
    QFETCH(QByteArray, bytes);
    if (bytes.isEmpty())
        QSKIP("this format cannot be written on this computer");
    QVERIFY(pictureOutline(bytes).reachedEnd);
    QVERIFY(pictureOutline(bytes).sound);
    const auto photo = preparePhoto(bytes, QStringLiteral("a"));
    QVERIFY2(photo.ok(), photo ? "" : qPrintable(photo.trouble().sentence()));
    if (photo->width == 64 && qstrncmp(QTest::currentDataTag(), "grey", 4) != 0)
        QCOMPARE(colourAt(read(photo->bytes), 0.1, 0.9), QStringLiteral("green"));
}

void TestMediaPhoto::seeThroughBecomesWhite()
{
    QImage image(32, 32, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    const auto photo = preparePhoto(encoded(image, "png"), QStringLiteral("a.png"));
    QVERIFY(photo.ok());
    QCOMPARE(read(photo->bytes).pixelColor(16, 16), QColor(Qt::white));
}

void TestMediaPhoto::coloursSurviveTheirProfile()
{
    // Adobe RGB (1998) colour image encoding, sections 4.3.4 and 4.3.5, to XYZ; IEC 61966-2-1 from XYZ to sRGB.
    const double stored[3] = {150, 110, 90};
    double linear[3];
    for (int i = 0; i < 3; ++i)
        linear[i] = std::pow(stored[i] / 255, 2.19921875);
    const double x = 0.57667 * linear[0] + 0.18556 * linear[1] + 0.18823 * linear[2];
    const double y = 0.29734 * linear[0] + 0.62736 * linear[1] + 0.07529 * linear[2];
    const double z = 0.02703 * linear[0] + 0.07069 * linear[1] + 0.99134 * linear[2];
    const double wanted[3] = {3.2406 * x - 1.5372 * y - 0.4986 * z, -0.9689 * x + 1.8758 * y + 0.0415 * z,
                              0.0557 * x - 0.2040 * y + 1.0570 * z};

    QImage image(32, 32, QImage::Format_RGB32);
    image.fill(QColor(int(stored[0]), int(stored[1]), int(stored[2])));
    image.setColorSpace(QColorSpace(QColorSpace::AdobeRgb));
    for (const char *format : {"jpeg", "png"}) {
        const auto photo = preparePhoto(encoded(image, format, 100), QStringLiteral("a"));
        QVERIFY(photo.ok());
        const QColor seen = read(photo->bytes).pixelColor(16, 16);
        const int parts[3] = {seen.red(), seen.green(), seen.blue()};
        for (int i = 0; i < 3; ++i) {
            const double expected = 255 * (1.055 * std::pow(wanted[i], 1 / 2.4) - 0.055);
            QVERIFY2(std::abs(parts[i] - expected) <= 3,
                     qPrintable(QStringLiteral("%1: %2, wanted %3").arg(i).arg(parts[i]).arg(expected)));
        }
        QVERIFY2(std::abs(parts[0] - stored[0]) > 4, "the case does not tell the two spaces apart");
    }
}

void TestMediaPhoto::originalIsNeverTouched()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("as found.jpg"));
    const QByteArray bytes = jpegWithEverything();
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.flush(); // or the bytes would be written, and the time be set, at closing
    const QDateTime old(QDate(2020, 1, 2), QTime(3, 4, 5), Qt::UTC);
    QVERIFY(file.setFileTime(old, QFileDevice::FileModificationTime));
    file.close();
    QVERIFY(file.setPermissions(QFileDevice::ReadOwner));

    const auto photo = preparePhoto(path);
    QVERIFY(photo.ok());
    QCOMPARE(photo->originalName, QStringLiteral("as found.jpg"));
    QCOMPARE(*photo, *preparePhoto(bytes, QStringLiteral("as found.jpg")));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), bytes);
    QCOMPARE(QFileInfo(path).lastModified(), old);
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1);
}

void TestMediaPhoto::trailingBytesAreNoDamage()
{
    // Telephones hang small films and depth maps behind the end of the picture.
    QVERIFY(preparePhoto(jpegWithEverything() + QByteArray(5000, 'x'), QStringLiteral("a")).ok());
    QVERIFY(preparePhoto(encoded(quarters(8, 8), "png") + "more", QStringLiteral("a")).ok());
}

QTEST_MAIN(TestMediaPhoto)
#include "test_media_photo.moc"
