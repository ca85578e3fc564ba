#include "model/media/prepared_photo.h"
#include "tests/media_samples.h"

#include <QRandomGenerator>
#include <QTemporaryDir>
#include <QtTest>

#include <unistd.h>

using namespace ts;
using namespace ts::samples;

/// Pictures that are none, that are too large, cut off or damaged.
class TestMediaRefusals : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void refuses_data();
    void refuses();
    void refusesFilesThatAreNone();
    void refusesTheCutOff_data();
    void refusesTheCutOff();
    void survivesMutations();
};

void TestMediaRefusals::refuses_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *name, const QByteArray &bytes, const char *says) {
        QTest::newRow(name) << bytes << QString::fromLatin1(says);
    };
    const QImage image = quarters(8, 8);
    row("empty", {}, "the file is empty");
    row("a text", "BMW deck, belt needed, tape counter stuck", "no picture");
    row("a page", "<html><img src=x></html>", "no picture");
    row("a drawing that could fetch things", "<svg xmlns='http://www.w3.org/2000/svg'><image href='file:///etc/passwd'/></svg>",
        "no picture");
    row("NULs", QByteArray(1000, '\0'), "no picture");
    row("only the first bytes of a jpeg", "\xFF\xD8\xFF", "cut off");
    row("a jpeg of nothing", QByteArray::fromHex("ffd8ffd9"), "damaged");
    row("a vast png", withPngSize(encoded(image, "png"), 50'000, 50'000), "50000 by 50000 pixels");
    row("a vast jpeg", withJpegSize(encoded(image, "jpeg"), 50'000, 50'000), "50000 by 50000 pixels");
    QByteArray bmp = encoded(image, "bmp");
    qToLittleEndian(quint32(50'000), bmp.data() + 18);
    qToLittleEndian(quint32(50'000), bmp.data() + 22);
    row("a vast bmp", bmp, "50000 by 50000 pixels");
    row("a png of no width", withPngSize(encoded(image, "png"), 0, 8), "damaged");
    row("a png whose rows do not reach", withPngSize(encoded(image, "png"), 8, 9), "damaged");
    QByteArray flipped = encoded(quarters(64, 64), "png");
    flipped[flipped.indexOf("IDAT") + 10] = char(~flipped[flipped.indexOf("IDAT") + 10]);
    row("a png with a wrong checksum", flipped, "damaged");
}

void TestMediaRefusals::refuses()
{
    QFETCH(QByteArray, bytes);
    QFETCH(QString, says);
    const auto photo = preparePhoto(bytes, QStringLiteral("shelf/a.jpg"));
    QVERIFY(!photo.ok());
    const QString sentence = photo.trouble().sentence();
    QVERIFY2(sentence.contains(says), qPrintable(sentence));
    QVERIFY2(sentence.startsWith(QLatin1String("Cannot take the photo shelf/a.jpg: ")), qPrintable(sentence));
    QVERIFY(!sentence.contains(u'\n'));
}

void TestMediaRefusals::refusesFilesThatAreNone()
{
    const auto says = [](const QString &path) {
        const auto photo = preparePhoto(path);
        return photo ? QString() : photo.trouble().sentence();
    };
    QTemporaryDir folder;
    QVERIFY(says(folder.filePath(QStringLiteral("nothing.jpg"))).contains(QLatin1String("there is no such file")));
    QVERIFY(says(folder.path()).contains(QLatin1String("it is a folder")));
    QVERIFY(says(QStringLiteral("/dev/null")).contains(QLatin1String("not a plain file")));
    QVERIFY(says(QString()).contains(QLatin1String("there is no such file")));

    QFile large(folder.filePath(QStringLiteral("large.jpg")));
    QVERIFY(large.open(QIODevice::WriteOnly));
    QVERIFY(large.resize(201LL * 1024 * 1024)); // takes no room on the disk
    large.close();
    QVERIFY(says(large.fileName()).contains(QLatin1String("larger than 200 MB")));

    QFile closed(folder.filePath(QStringLiteral("closed.jpg")));
    QVERIFY(closed.open(QIODevice::WriteOnly));
    closed.write(jpegWithEverything());
    closed.close();
    QVERIFY(says(closed.fileName()).isEmpty());
    QVERIFY(closed.setPermissions({}));
    if (geteuid() != 0) // root may read everything
        QVERIFY(says(closed.fileName()).contains(QLatin1String("cannot be read")));
}

void TestMediaRefusals::refusesTheCutOff_data()
{
    QTest::addColumn<QByteArray>("bytes");
    const QImage image = quarters(24, 16);
    for (const char *format : {"jpeg", "png", "bmp", "webp"})
        QTest::newRow(format) << encoded(image, format);
    QTest::newRow("gif") << smallGif();
    QByteArray progressive;
    QBuffer buffer(&progressive);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, "jpeg");
    writer.setProgressiveScanWrite(true);
    writer.write(image);
    QTest::newRow("progressive jpeg") << progressive;
    QTest::newRow("jpeg with metadata") << jpegWithEverything();
}

void TestMediaRefusals::refusesTheCutOff()
{
    QFETCH(QByteArray, bytes);
    if (bytes.isEmpty())
        QSKIP("this format cannot be written on this computer");
    QVERIFY(preparePhoto(bytes, QStringLiteral("a")).ok());
    for (qsizetype length = 0; length < bytes.size(); ++length)
        QVERIFY2(!preparePhoto(bytes.first(length), QStringLiteral("a")).ok(), qPrintable(QString::number(length)));
}

void TestMediaRefusals::survivesMutations()
{
    QRandomGenerator random(7);
    const QImage image = quarters(24, 16);
    const QByteArray tiff = TiffBuilder(false).build(5, "2026:11:25 20:15:09");
    QByteArrayList sources{withSegments(encoded(image, "jpeg"), exifSegment(tiff)), jpegWithEverything(),
                           withChunk(encoded(image, "png"), pngChunk("eXIf", tiff)), encoded(image, "bmp"), smallGif()};
    if (const QByteArray webp = encoded(image, "webp"); !webp.isEmpty())
        sources << webp;
    // The decoders complain aloud about each damaged picture; what matters here is what is answered.
    QLoggingCategory::setFilterRules(QStringLiteral("qt.gui.imageio*=false"));
    int taken = 0;
    for (int i = 0; i < 2'400; ++i) {
        QByteArray bytes = sources[i % sources.size()];
        for (int n = random.bounded(1, 8); n > 0; --n) {
            const int at = random.bounded(int(bytes.size()) + 1);
            switch (random.bounded(4)) {
            case 0:
                bytes.replace(at, 1, QByteArray(1, char(random.bounded(256))));
                break;
            case 1:
                bytes.replace(at, 1, QByteArray(1, random.bounded(2) ? char(0xFF) : '\0'));
                break;
            case 2:
                bytes.insert(at, QByteArray(random.bounded(1, 20), char(random.bounded(256))));
                break;
            default:
                bytes.remove(at, random.bounded(1, 20));
                break;
            }
        }
        const auto photo = preparePhoto(bytes, QStringLiteral("a"));
        if (!photo) {
            QVERIFY(photo.trouble().sentence().startsWith(QLatin1String("Cannot take the photo a: ")));
            continue;
        }
        ++taken;
        QVERIFY(photo->width >= 1 && photo->width <= 2560 && photo->height >= 1 && photo->height <= 2560);
        QCOMPARE(read(photo->bytes).size(), QSize(photo->width, photo->height));
    }
    qInfo("%d of 2400 damaged pictures could still be read", taken);
    QVERIFY(taken > 0 && taken < 2'400);
}

QTEST_MAIN(TestMediaRefusals)
#include "test_media_refusals.moc"
