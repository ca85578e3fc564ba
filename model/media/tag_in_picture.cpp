#include "model/media/tag_in_picture.h"

#include <QImageReader>
#include <QRegularExpression>
#include <QSet>

#include <zbar.h>

#include <memory>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr int firstSide = 1400; // pixels; a label that fills a fifth of the picture is read at this
constexpr int secondSide = 3200;

QStringList codesAt(const QImage &picture)
{
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    const auto width = static_cast<unsigned>(grey.width()), height = static_cast<unsigned>(grey.height());
    QByteArray pixels; // rows of an image are padded, those of the scanner are not
    pixels.reserve(grey.width() * grey.height());
    for (int y = 0; y < grey.height(); ++y)
        pixels.append(reinterpret_cast<const char *>(grey.constScanLine(y)), grey.width());

    const std::unique_ptr<zbar::zbar_image_scanner_t, void (*)(zbar::zbar_image_scanner_t *)> scanner(zbar::zbar_image_scanner_create(), zbar::zbar_image_scanner_destroy);
    const std::unique_ptr<zbar::zbar_image_t, void (*)(zbar::zbar_image_t *)> image(zbar::zbar_image_create(), zbar::zbar_image_destroy);
    if (!scanner || !image)
        return {};
    zbar::zbar_image_scanner_set_config(scanner.get(), zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
    for (const auto symbology : {zbar::ZBAR_QRCODE, zbar::ZBAR_CODE128})
        zbar::zbar_image_scanner_set_config(scanner.get(), symbology, zbar::ZBAR_CFG_ENABLE, 1);
    constexpr unsigned long y800 = 'Y' | '8' << 8 | '0' << 16 | static_cast<unsigned long>('0') << 24;
    zbar::zbar_image_set_format(image.get(), y800);
    zbar::zbar_image_set_size(image.get(), width, height);
    zbar::zbar_image_set_data(image.get(), pixels.constData(), static_cast<unsigned long>(pixels.size()), nullptr);
    QStringList codes;
    if (zbar::zbar_scan_image(scanner.get(), image.get()) <= 0)
        return codes;
    for (const auto *symbol = zbar::zbar_image_first_symbol(image.get()); symbol; symbol = zbar::zbar_symbol_next(symbol)) {
        const QString text = QString::fromUtf8(zbar::zbar_symbol_get_data(symbol), static_cast<qsizetype>(zbar::zbar_symbol_get_data_length(symbol)));
        if (!codes.contains(text))
            codes << text;
    }
    return codes;
}

QImage within(const QImage &picture, int side)
{
    return std::max(picture.width(), picture.height()) > side ? picture.scaled(side, side, Qt::KeepAspectRatio, Qt::SmoothTransformation) : picture;
}

} // namespace

QStringList codesIn(const QImage &picture)
{
    if (picture.isNull())
        return {};
    const QStringList codes = codesAt(within(picture, firstSide));
    if (!codes.isEmpty() || std::max(picture.width(), picture.height()) <= firstSide)
        return codes;
    return codesAt(within(picture, secondSide));
}

int tagInPicture(const QImage &picture)
{
    static const QRegularExpression digits(u"^[0-9]{1,6}$"_s);
    QSet<int> tags;
    for (const QString &code : codesIn(picture))
        if (digits.match(code).hasMatch())
            tags << code.toInt();
    return tags.size() == 1 ? *tags.begin() : 0;
}

int tagInPictureFile(const QString &file)
{
    QImageReader reader(file);
    reader.setAutoTransform(true);
    if (const QSize size = reader.size(); size.isValid() && std::max(size.width(), size.height()) > secondSide)
        reader.setScaledSize(size.scaled(secondSide, secondSide, Qt::KeepAspectRatio));
    return tagInPicture(reader.read());
}

} // namespace ts
