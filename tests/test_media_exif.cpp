#include "model/media/exif.h"
#include "tests/media_samples.h"

#include <QRandomGenerator>
#include <QTimeZone>
#include <QtTest>

using namespace ts;
using namespace ts::samples;

class TestMediaExif : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsOrientationAndTime_data();
    void readsOrientationAndTime();
    void findsItInEveryContainer();
    void strangeTimesCountAsNone_data();
    void strangeTimesCountAsNone();
    void fallsBackOnTheTimeOfDigitizing();
    void damageGivesTheDefaults();
    void survivesMutations();
};

void TestMediaExif::readsOrientationAndTime_data()
{
    QTest::addColumn<bool>("little");
    QTest::addColumn<int>("orientation");
    QTest::addColumn<int>("expected");
    for (const bool little : {true, false})
        for (int i = 0; i <= 9; ++i) // 1 to 8 have a meaning, the others are reserved (CIPA DC-008, tag 274)
            QTest::addRow("%s %d", little ? "II" : "MM", i) << little << i << (i >= 1 && i <= 8 ? i : 1);
}

void TestMediaExif::readsOrientationAndTime()
{
    QFETCH(bool, little);
    QFETCH(int, orientation);
    QFETCH(int, expected);
    const Exif exif = readTiff(TiffBuilder(little).build(orientation, "2026:11:25 20:15:09", "+01:00"));
    QCOMPARE(exif.orientation, expected);
    QCOMPARE(exif.takenAt, QDateTime(QDate(2026, 11, 25), QTime(19, 15, 9), Qt::UTC));
    QCOMPARE(exif.takenAt.timeSpec(), Qt::UTC);
}

void TestMediaExif::findsItInEveryContainer()
{
    const QByteArray tiff = TiffBuilder(true).build(6, "2026:02:03 04:05:06", "-03:30");
    const Exif wanted{.orientation = 6, .takenAt = QDateTime(QDate(2026, 2, 3), QTime(7, 35, 6), Qt::UTC)};
    const QImage image = quarters(16, 8);

    const QByteArray jpeg = encoded(image, "jpeg");
    QCOMPARE(readExif(jpeg), Exif());
    QCOMPARE(readExif(withSegments(jpeg, exifSegment(tiff))), wanted);
    // Another APP1 in front of it, as editors leave them.
    QCOMPARE(readExif(withSegments(jpeg, segment(0xE1, "http://ns.example/xmp") + exifSegment(tiff))), wanted);

    const QByteArray png = encoded(image, "png");
    QCOMPARE(readExif(withChunk(png, pngChunk("eXIf", tiff))), wanted);

    const auto chunk = [](const QByteArray &type, const QByteArray &content) {
        QByteArray length(4, '\0');
        qToLittleEndian(quint32(content.size()), length.data());
        return type + length + content + QByteArray(content.size() & 1, '\0');
    };
    const QByteArray inner = QByteArray("WEBP") + chunk("ABCD", "odd") + chunk("EXIF", tiff);
    QCOMPARE(readExif(chunk("RIFF", inner)), wanted);
}

void TestMediaExif::strangeTimesCountAsNone_data()
{
    QTest::addColumn<QByteArray>("time");
    for (const char *time :
         {"", "0000:00:00 00:00:00", "    :  :     :  :  ", "2026:13:01 00:00:00", "2026:02:30 00:00:00", "2026-02-03 04:05:06",
          "2026:02:03", "2026:02:03 25:00:00", "yesterday", "2026:02:03 04:05:06 and more of it behind the end of the field"})
        QTest::newRow(time) << QByteArray(time);
}

void TestMediaExif::strangeTimesCountAsNone()
{
    QFETCH(QByteArray, time);
    QVERIFY(!readTiff(TiffBuilder(true).build(1, time)).takenAt.isValid());
}

void TestMediaExif::fallsBackOnTheTimeOfDigitizing()
{
    const QDateTime local(QDate(2026, 6, 1), QTime(12, 0));
    QCOMPARE(readTiff(TiffBuilder(false).build(1, {}, {}, "2026:06:01 12:00:00")).takenAt, local.toUTC());
    QCOMPARE(readTiff(TiffBuilder(false).build(1, "0000:00:00 00:00:00", {}, "2026:06:01 12:00:00")).takenAt, local.toUTC());
    // Without an offset, or with one that is none, it is this computer's local time.
    for (const char *offset : {"", "+99:00", "0100", "+1:000", "+aa:00"})
        QCOMPARE(readTiff(TiffBuilder(false).build(1, "2026:06:01 12:00:00", offset)).takenAt, local.toUTC());
}

void TestMediaExif::damageGivesTheDefaults()
{
    const QByteArray tiff = TiffBuilder(true).build(6, "2026:02:03 04:05:06");
    for (qsizetype length = 0; length < 22; ++length)
        QCOMPARE(readTiff(tiff.first(length)), Exif());
    QByteArray far = tiff;
    qToLittleEndian(quint32(0xFFFFFFFE), far.data() + 4); // the first directory beyond the end
    QCOMPARE(readTiff(far), Exif());
    QByteArray round = tiff;
    qToLittleEndian(quint32(8), round.data() + 8 + 2 + 2 * 12 + 8); // the second directory is the first again
    QCOMPARE(readTiff(round).orientation, 6);
    QVERIFY(!readTiff(round).takenAt.isValid());
}

void TestMediaExif::survivesMutations()
{
    QRandomGenerator random(42);
    const QByteArray little = TiffBuilder(true).build(6, "2026:02:03 04:05:06", "+01:00");
    const QByteArray big = TiffBuilder(false).build(6, "2026:02:03 04:05:06", "+01:00");
    int changed = 0;
    for (int i = 0; i < 20'000; ++i) {
        QByteArray bytes = i % 2 ? little : big;
        for (int n = random.bounded(1, 6); n > 0; --n)
            bytes[random.bounded(4, int(bytes.size()))] = char(random.bounded(256));
        bytes.truncate(random.bounded(4) ? bytes.size() : random.bounded(int(bytes.size())));
        const Exif exif = readTiff(bytes);
        QVERIFY(exif.orientation >= 1 && exif.orientation <= 8);
        QVERIFY(!exif.takenAt.isValid() || exif.takenAt.date().year() >= 1799);
        changed += exif.orientation != 6 || !exif.takenAt.isValid();
    }
    QVERIFY2(changed > 2'000, "the mutations hit nothing that is read");
}

QTEST_GUILESS_MAIN(TestMediaExif)
#include "test_media_exif.moc"
