#pragma once

#include <QBuffer>
#include <QByteArray>
#include <QImage>
#include <QImageWriter>
#include <QtEndian>

/// Picture files made byte by byte, so that what is read from them is known without asking the reader.
namespace ts::samples {

inline QByteArray encoded(const QImage &image, const char *format, int quality = 95)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, format);
    writer.setQuality(quality);
    return writer.write(image) ? bytes : QByteArray();
}

/// Black above on the left, red above on the right, green below on the left, blue below on the right.
inline QImage quarters(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const bool right = x >= width / 2;
            const bool below = y >= height / 2;
            image.setPixel(x, y, qRgb(right && !below ? 255 : 0, !right && below ? 255 : 0, right && below ? 255 : 0));
        }
    return image;
}

/// Builds a TIFF structure in either order of bytes, as CIPA DC-008 (Exif) and the TIFF 6.0 specification lay it out.
class TiffBuilder {
public:
    explicit TiffBuilder(bool little) : m_little(little) {}

    struct Entry {
        quint16 tag;
        quint16 type; ///< 2 text, 3 short, 4 long
        quint32 number;
        QByteArray text;
    };

    /// First directory with the orientation, one below it with the times, one with a place on the globe.
    [[nodiscard]] QByteArray build(int orientation, const QByteArray &original, const QByteArray &offset = {},
                                   const QByteArray &digitized = {}) const
    {
        QByteArray bytes = m_little ? QByteArray("II*\0", 4) : QByteArray("MM\0*", 4);
        append(bytes, 8, 4);
        QList<Entry> exif;
        if (!original.isNull())
            exif << Entry{0x9003, 2, 0, original + '\0'};
        if (!digitized.isNull())
            exif << Entry{0x9004, 2, 0, digitized + '\0'};
        if (!offset.isNull())
            exif << Entry{0x9011, 2, 0, offset + '\0'};
        const QList<Entry> gps{{1, 2, 0, QByteArray("N\0", 2)}, {3, 2, 0, QByteArray("W\0", 2)}};
        const quint32 firstSize = 2 + 12 * 4 + 4;
        const QByteArray camera("Invented Camera Works\0", 22);
        const quint32 exifAt = 8 + firstSize + quint32(camera.size());
        const QByteArray exifBytes = directory(exif, exifAt);
        directoryInto(bytes,
                      {{0x010F, 2, 0, camera},
                       {0x0112, 3, quint32(orientation), {}},
                       {0x8769, 4, exifAt, {}},
                       {0x8825, 4, exifAt + quint32(exifBytes.size()), {}}},
                      8);
        return bytes + exifBytes + directory(gps, exifAt + quint32(exifBytes.size()));
    }

private:
    void append(QByteArray &bytes, quint32 number, int size) const
    {
        for (int i = 0; i < size; ++i)
            bytes += char(number >> 8 * (m_little ? i : size - 1 - i) & 0xFF);
    }

    [[nodiscard]] QByteArray directory(const QList<Entry> &entries, quint32 at) const
    {
        QByteArray bytes;
        directoryInto(bytes, entries, at);
        return bytes;
    }

    void directoryInto(QByteArray &bytes, const QList<Entry> &entries, quint32 at) const
    {
        QByteArray behind;
        const quint32 behindAt = at + 2 + 12 * quint32(entries.size()) + 4;
        append(bytes, quint32(entries.size()), 2);
        for (const Entry &entry : entries) {
            append(bytes, entry.tag, 2);
            append(bytes, entry.type, 2);
            append(bytes, entry.type == 2 ? quint32(entry.text.size()) : 1, 4);
            if (entry.type == 2 && entry.text.size() > 4) {
                append(bytes, behindAt + quint32(behind.size()), 4);
                behind += entry.text;
            } else if (entry.type == 2) {
                bytes += entry.text.leftJustified(4, '\0');
            } else if (entry.type == 3) {
                append(bytes, entry.number, 2);
                append(bytes, 0, 2);
            } else {
                append(bytes, entry.number, 4);
            }
        }
        append(bytes, 0, 4);
        bytes += behind;
    }

    bool m_little;
};

/// A marker segment of a JPEG (ITU-T T.81, B.1.1.4).
inline QByteArray segment(int marker, const QByteArray &payload)
{
    QByteArray bytes("\xFF", 1);
    bytes += char(marker);
    const auto length = payload.size() + 2;
    bytes += char(length >> 8 & 0xFF);
    bytes += char(length & 0xFF);
    return bytes + payload;
}

/// The JPEG with segments put in right behind its first two bytes.
inline QByteArray withSegments(const QByteArray &jpeg, const QByteArray &segments)
{
    return jpeg.left(2) + segments + jpeg.mid(2);
}

inline QByteArray exifSegment(const QByteArray &tiff)
{
    return segment(0xE1, QByteArray("Exif\0\0", 6) + tiff);
}

/// CRC-32 of ISO/IEC 15948 annex D.
inline quint32 crc(const QByteArray &bytes)
{
    quint32 value = 0xFFFFFFFF;
    for (const char byte : bytes) {
        value ^= static_cast<quint8>(byte);
        for (int bit = 0; bit < 8; ++bit)
            value = value & 1 ? value >> 1 ^ 0xEDB88320 : value >> 1;
    }
    return ~value;
}

inline QByteArray bigEndian(quint32 number)
{
    QByteArray bytes(4, '\0');
    qToBigEndian(number, bytes.data());
    return bytes;
}

inline QByteArray pngChunk(const QByteArray &type, const QByteArray &content)
{
    return bigEndian(quint32(content.size())) + type + content + bigEndian(crc(type + content));
}

/// The PNG with a chunk put in behind its header chunk.
inline QByteArray withChunk(const QByteArray &png, const QByteArray &chunk)
{
    return png.left(33) + chunk + png.mid(33);
}

/// The PNG with another size in its header; its rows stay what they were.
inline QByteArray withPngSize(const QByteArray &png, quint32 width, quint32 height)
{
    return png.left(8) + pngChunk("IHDR", bigEndian(width) + bigEndian(height) + png.mid(24, 5)) + png.mid(33);
}

/// The JPEG with another size in its frame header (T.81, B.2.2).
inline QByteArray withJpegSize(QByteArray jpeg, quint16 width, quint16 height)
{
    const auto frame = jpeg.indexOf(QByteArray("\xFF\xC0", 2));
    qToBigEndian(height, jpeg.data() + frame + 5);
    qToBigEndian(width, jpeg.data() + frame + 7);
    return jpeg;
}

/// One white pixel, after the example of the GIF89a specification's blocks.
inline QByteArray smallGif()
{
    return QByteArray::fromHex("474946383961010001008000 00ffffff000000 2c00000000010001 0000 02024401003b");
}

/// A picture with a camera, a place, an editor and a comment in its metadata.
inline QByteArray jpegWithEverything()
{
    const QByteArray tiff = TiffBuilder(true).build(1, "2026:11:25 20:15:09", "+00:00");
    return withSegments(
        encoded(quarters(64, 48), "jpeg"),
        exifSegment(tiff) + segment(0xE1, QByteArray("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>GPSLatitude</x:xmpmeta>", 60)) +
            segment(0xED, QByteArray("Photoshop 3.0\0", 14) + "8BIM by-line") + segment(0xFE, "a comment: 12 Example Street"));
}

inline QImage read(const QByteArray &bytes)
{
    return QImage::fromData(bytes, "jpeg");
}

} // namespace ts::samples
