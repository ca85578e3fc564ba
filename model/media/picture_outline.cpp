#include "model/media/picture_outline.h"

#include <QtEndian>

namespace ts {

namespace {

constexpr QByteArrayView exifMark("Exif\0\0", 6);

quint32 big(QByteArrayView bytes, qint64 at)
{
    return at >= 0 && at <= bytes.size() - 4 ? qFromBigEndian<quint32>(bytes.data() + at) : 0;
}

quint32 little(QByteArrayView bytes, qint64 at)
{
    return at >= 0 && at <= bytes.size() - 4 ? qFromLittleEndian<quint32>(bytes.data() + at) : 0;
}

int byteAt(QByteArrayView bytes, qint64 at)
{
    return at >= 0 && at < bytes.size() ? static_cast<quint8>(bytes[at]) : -1;
}

/// CRC-32 of ISO/IEC 15948, annex D, a nibble at a time.
quint32 checksum(QByteArrayView bytes)
{
    static constexpr quint32 table[16] = {0x00000000, 0x1DB71064, 0x3B6E20C8, 0x26D930AC, 0x76DC4190, 0x6B6B51F4,
                                          0x4DB26158, 0x5005713C, 0xEDB88320, 0xF00F9344, 0xD6D6A3E8, 0xCB61B38C,
                                          0x9B64C2B0, 0x86D3D2D4, 0xA00AE278, 0xBDBDF21C};
    quint32 value = 0xFFFFFFFF;
    for (const char byte : bytes) {
        value ^= static_cast<quint8>(byte);
        value = value >> 4 ^ table[value & 15];
        value = value >> 4 ^ table[value & 15];
    }
    return ~value;
}

/// A size of 32-bit numbers; one that no picture has is none.
QSize sized(quint32 width, quint32 height)
{
    constexpr quint32 most = 1 << 24;
    if (width == 0 || height == 0 || width > most || height > most)
        return {};
    return {static_cast<int>(width), static_cast<int>(height)};
}

/// ITU-T T.81 annex B: markers with lengths, and between SOS and the next marker the coded picture.
PictureOutline outlineOfJpeg(QByteArrayView file)
{
    PictureOutline outline;
    qint64 at = 2;
    while (byteAt(file, at) == 0xFF) {
        const int marker = byteAt(file, at + 1);
        if (marker == 0xFF) { // fill byte
            ++at;
            continue;
        }
        if (marker == 0xD9) {
            outline.reachedEnd = true;
            return outline;
        }
        if (marker == 0x01 || (marker >= 0xD0 && marker <= 0xD7)) { // alone, without a length
            at += 2;
            continue;
        }
        const int high = byteAt(file, at + 2);
        const int low = byteAt(file, at + 3);
        const qint64 length = 256 * high + low;
        if (marker < 0xC0 || high < 0 || low < 0 || length < 2 || length > file.size() - at - 2)
            return outline;
        const QByteArrayView payload = file.sliced(at + 4, length - 2);
        if (marker == 0xE1 && outline.metadata.isEmpty() && payload.startsWith(exifMark))
            outline.metadata = payload;
        // Every start of frame is C0 to CF but for three that are tables (table B.1): precision, height, width.
        if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC && payload.size() >= 5)
            outline.size = sized(big(file, at + 5) & 0xFFFF, big(file, at + 5) >> 16);
        at += 2 + length;
        if (marker == 0xDA)
            while (at < file.size() &&
                   (byteAt(file, at) != 0xFF || byteAt(file, at + 1) == 0x00 || (byteAt(file, at + 1) & 0xF8) == 0xD0))
                ++at;
    }
    return outline;
}

/// ISO/IEC 15948: chunks with lengths and checksums up to IEND, the first of them the header.
PictureOutline outlineOfPng(QByteArrayView file)
{
    PictureOutline outline;
    outline.size = sized(big(file, 16), big(file, 20));
    for (qint64 at = 8; at <= file.size() - 12;) {
        const qint64 length = big(file, at);
        if (length > file.size() - at - 12)
            return outline;
        const QByteArrayView type = file.sliced(at + 4, 4);
        if (checksum(file.sliced(at + 4, length + 4)) != big(file, at + 8 + length))
            outline.sound = false;
        if (type == "IEND") {
            outline.reachedEnd = true;
            return outline;
        }
        if (type == "eXIf")
            outline.metadata = file.sliced(at + 8, length);
        at += 12 + length;
    }
    return outline;
}

/// RIFF: one length for the whole, then chunks of even size.
PictureOutline outlineOfWebP(QByteArrayView file)
{
    PictureOutline outline;
    const qint64 end = qint64(little(file, 4)) + 8;
    if (end > file.size())
        return outline;
    outline.reachedEnd = true;
    for (qint64 at = 12; at <= end - 8;) {
        const qint64 length = little(file, at + 4);
        if (length > end - at - 8)
            break;
        if (file.sliced(at, 4) == "EXIF")
            outline.metadata = file.sliced(at + 8, length);
        at += 8 + length + (length & 1);
    }
    return outline;
}

/// GIF89a: blocks made of sub-blocks, up to the trailer byte.
PictureOutline outlineOfGif(QByteArrayView file)
{
    PictureOutline outline;
    outline.size = sized(little(file, 6) & 0xFFFF, little(file, 6) >> 16);
    const auto table = [](int flags) { return flags & 0x80 ? 3LL << ((flags & 7) + 1) : 0; };
    const auto pastSubBlocks = [&](qint64 at) {
        int size = byteAt(file, at);
        while (size > 0) {
            at += size + 1;
            size = byteAt(file, at);
        }
        return at + 1;
    };
    qint64 at = 13 + table(byteAt(file, 10));
    while (at < file.size()) {
        const int block = byteAt(file, at);
        if (block == 0x3B)
            outline.reachedEnd = true;
        if (block == 0x21)
            at = pastSubBlocks(at + 2);
        else if (block == 0x2C)
            at = pastSubBlocks(at + 11 + table(byteAt(file, at + 9)));
        else
            return outline;
    }
    return outline;
}

/// A bitmap tells where its picture starts and how large it is; uncompressed ones leave the size 0, so it is worked out.
PictureOutline outlineOfBmp(QByteArrayView file)
{
    PictureOutline outline;
    const qint64 start = little(file, 10);
    const bool old = little(file, 14) == 12; // the core header has 16-bit sizes
    if (old)
        outline.size = sized(little(file, 18) & 0xFFFF, little(file, 18) >> 16);
    else // a height below 0 says that the rows run from the top
        outline.size = sized(little(file, 18), static_cast<quint32>(qAbs(qint64(static_cast<qint32>(little(file, 22))))));
    if (!outline.size.isValid())
        return outline;
    const qint64 bits = old ? little(file, 22) >> 16 : little(file, 28) & 0xFFFF;
    const bool packed = !old && (little(file, 30) == 1 || little(file, 30) == 2);
    const qint64 size = packed ? qint64(little(file, 34)) : (outline.size.width() * bits + 31) / 32 * 4 * outline.size.height();
    outline.reachedEnd = start > 0 && size > 0 && start + size <= file.size();
    return outline;
}

PictureFormat formatOf(const QByteArray &file)
{
    if (file.startsWith("\xFF\xD8\xFF"))
        return PictureFormat::Jpeg;
    if (file.startsWith("\x89PNG\r\n\x1A\n"))
        return PictureFormat::Png;
    if (file.startsWith("RIFF") && file.mid(8, 4) == "WEBP")
        return PictureFormat::WebP;
    if (file.startsWith("GIF87a") || file.startsWith("GIF89a"))
        return PictureFormat::Gif;
    // "BM" alone begins many a text; the size of the header behind it is one of a few.
    const quint32 header = little(file, 14);
    if (file.startsWith("BM") && (header == 12 || (header >= 40 && header <= 124)))
        return PictureFormat::Bmp;
    return PictureFormat::None;
}

PictureOutline outlineOf(const QByteArray &file, PictureFormat format)
{
    switch (format) {
    case PictureFormat::Jpeg:
        return outlineOfJpeg(file);
    case PictureFormat::Png:
        return outlineOfPng(file);
    case PictureFormat::WebP:
        return outlineOfWebP(file);
    case PictureFormat::Gif:
        return outlineOfGif(file);
    case PictureFormat::Bmp:
        return outlineOfBmp(file);
    case PictureFormat::None:
        break;
    }
    return {};
}

} // namespace

PictureOutline pictureOutline(const QByteArray &file)
{
    const PictureFormat format = formatOf(file);
    PictureOutline outline = outlineOf(file, format);
    outline.format = format;
    return outline;
}

} // namespace ts
