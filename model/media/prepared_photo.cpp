#include "model/media/prepared_photo.h"

#include "model/media/exif.h"
#include "model/media/picture_outline.h"

#include <QBuffer>
#include <QColorSpace>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

namespace ts {

namespace {

constexpr int longSide = 2560;
constexpr int thumbnailSide = 320;
constexpr int quality = 88;
constexpr int thumbnailQuality = 80;
// The largest cameras in telephones take 200 megapixels; beyond lies what was made to fill the memory.
constexpr qint64 mostPixels = 210'000'000;
constexpr qint64 mostBytes = 200LL * 1024 * 1024;
constexpr int mostMegabytesDecoded = 1024; // of memory for one picture: 210 million pixels of four bytes and some room

Trouble refused(const QString &name, const QString &wrong, const QString &todo = {})
{
    return {QStringLiteral("Cannot take the photo %1").arg(name), wrong, todo};
}

Trouble damaged(const QString &name)
{
    return refused(name, QStringLiteral("the picture is damaged"), QStringLiteral("copy it from the camera again"));
}

QByteArray formatName(PictureFormat format)
{
    switch (format) {
    case PictureFormat::Jpeg:
        return QByteArrayLiteral("jpeg");
    case PictureFormat::Png:
        return QByteArrayLiteral("png");
    case PictureFormat::WebP:
        return QByteArrayLiteral("webp");
    case PictureFormat::Gif:
        return QByteArrayLiteral("gif");
    case PictureFormat::Bmp:
        return QByteArrayLiteral("bmp");
    case PictureFormat::None:
        break;
    }
    return {};
}

QSize fitted(const QSize &size, int side)
{
    if (qMax(size.width(), size.height()) <= side)
        return size;
    return size.scaled(side, side, Qt::KeepAspectRatio).expandedTo({1, 1});
}

/// The orientations of CIPA DC-008 table 6, undone: where the stored first row and first column belong.
QTransform upright(int orientation)
{
    switch (orientation) {
    case 2:
        return {-1, 0, 0, 1, 0, 0};
    case 3:
        return {-1, 0, 0, -1, 0, 0};
    case 4:
        return {1, 0, 0, -1, 0, 0};
    case 5:
        return {0, 1, 1, 0, 0, 0};
    case 6:
        return {0, 1, -1, 0, 0, 0};
    case 7:
        return {0, -1, -1, 0, 0, 0};
    case 8:
        return {0, -1, 1, 0, 0, 0};
    default:
        return {};
    }
}

/// The picture on fresh ground: on white where it was see-through, and with none of the texts, profiles or densities
/// that a picture read from a file carries and a writer would put back.
QImage clean(QImage image, int side)
{
    const QColorSpace space = image.colorSpace();
    if (space.isValid() && space != QColorSpace(QColorSpace::SRgb)) {
        // The profile is dropped, so the colours have to be what they look like without one.
        image = image.convertToFormat(image.hasAlphaChannel() ? QImage::Format_ARGB32 : QImage::Format_RGB32);
        image.convertToColorSpace(QColorSpace(QColorSpace::SRgb));
    }
    const QSize size = fitted(image.size(), side);
    if (size != image.size())
        image = image.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    image.setDevicePixelRatio(1);
    QImage ground(size, QImage::Format_RGB32);
    ground.fill(Qt::white);
    QPainter painter(&ground);
    painter.drawImage(QRect(QPoint(0, 0), size), image);
    return ground;
}

QByteArray jpeg(const QImage &image, int level)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, QByteArrayLiteral("jpeg"));
    writer.setQuality(level);
    writer.setOptimizedWrite(true);
    return writer.write(image) ? bytes : QByteArray();
}

QString sideBySide(const QSize &size)
{
    return QStringLiteral("%1 by %2 pixels").arg(size.width()).arg(size.height());
}

} // namespace

Expected<PreparedPhoto> preparePhoto(const QString &file)
{
    const QFileInfo info(file);
    if (!info.exists())
        return refused(file, QStringLiteral("there is no such file"));
    if (info.isDir())
        return refused(file, QStringLiteral("it is a folder"), QStringLiteral("name the pictures inside of it"));
    if (!info.isFile())
        return refused(file, QStringLiteral("it is not a plain file"));
    if (info.size() > mostBytes)
        return refused(file, QStringLiteral("the file is larger than 200 MB"), QStringLiteral("make a smaller copy of it"));
    QFile opened(file);
    if (!opened.open(QIODevice::ReadOnly))
        return refused(file, QStringLiteral("the file cannot be read"), QStringLiteral("look at who may read it"));
    const QByteArray data = opened.read(mostBytes + 1);
    if (opened.error() != QFileDevice::NoError)
        return refused(file, QStringLiteral("reading it failed (%1)").arg(opened.errorString()));
    return preparePhoto(data, file);
}

Expected<PreparedPhoto> preparePhoto(const QByteArray &data, const QString &name)
{
    if (data.isEmpty())
        return refused(name, QStringLiteral("the file is empty"));
    if (data.size() > mostBytes)
        return refused(name, QStringLiteral("the file is larger than 200 MB"), QStringLiteral("make a smaller copy of it"));
    const PictureOutline outline = pictureOutline(data);
    const PictureFormat format = outline.format;
    if (format == PictureFormat::None)
        return refused(name, QStringLiteral("it is no picture that can be read"),
                       QStringLiteral("JPEG, PNG, WebP, GIF and BMP can"));
    const QByteArray decoder = formatName(format);
    if (!QImageReader::supportedImageFormats().contains(decoder))
        return refused(
            name, QStringLiteral("pictures of the kind %1 cannot be read on this computer").arg(QString::fromLatin1(decoder)),
            QStringLiteral("save it as JPEG"));

    QBuffer buffer;
    buffer.setData(data);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer, decoder);
    reader.setAutoDetectImageFormat(false);
    reader.setAutoTransform(false); // done below, for every format alike
    // The size stands in the first bytes: a picture made to fill the memory is turned away before it is unpacked.
    const QSize stored = outline.size.isValid() || format != PictureFormat::WebP ? outline.size : reader.size();
    if (stored.isValid() && qint64(stored.width()) * stored.height() > mostPixels)
        return refused(name, QStringLiteral("it has %1, more than 210 megapixels").arg(sideBySide(stored)),
                       QStringLiteral("make a smaller copy of it"));
    if (!outline.reachedEnd)
        return refused(name, QStringLiteral("the picture is cut off before its end"),
                       QStringLiteral("copy it from the camera again"));
    if (!outline.sound || !stored.isValid())
        return damaged(name);
    // A JPEG can be unpacked at a smaller size at once, which saves most of the time and the memory.
    if (format == PictureFormat::Jpeg && fitted(stored, longSide) != stored)
        reader.setScaledSize(fitted(stored, longSide));
    QImageReader::setAllocationLimit(mostMegabytesDecoded);
    QImage image = reader.read();
    if (image.isNull())
        return damaged(name);

    const Exif exif = readExif(data);
    if (exif.orientation != 1)
        image = image.transformed(upright(exif.orientation));
    const QImage kept = clean(std::move(image), longSide);
    PreparedPhoto photo{.bytes = jpeg(kept, quality),
                        .thumbnail = jpeg(clean(kept, thumbnailSide), thumbnailQuality),
                        .width = kept.width(),
                        .height = kept.height(),
                        .takenAt = exif.takenAt,
                        .originalName = QFileInfo(name).fileName()};
    if (photo.bytes.isEmpty() || photo.thumbnail.isEmpty())
        return refused(name, QStringLiteral("it could not be written as JPEG"));
    return photo;
}

} // namespace ts
