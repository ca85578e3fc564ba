#include "model/paper/web_picture.h"

#include <QBuffer>
#include <QImage>
#include <QImageReader>

#include <algorithm>

namespace ts {

namespace {

constexpr int longestSide = 1600; // fills the width of a large screen; a page of eight stays in the size of a mail
constexpr int quality = 82;

QByteArray smaller(const QByteArray &jpeg)
{
    QBuffer in;
    in.setData(jpeg);
    QImageReader reader(&in, "jpeg");
    const QSize size = reader.size();
    if (std::max(size.width(), size.height()) <= longestSide)
        return jpeg;
    reader.setScaledSize(size.scaled(longestSide, longestSide, Qt::KeepAspectRatio));
    const QImage image = reader.read();
    QByteArray bytes;
    QBuffer out(&bytes);
    return image.isNull() || !image.save(&out, "jpeg", quality) ? jpeg : bytes;
}

} // namespace

QString webPicture(const QByteArray &jpeg)
{
    return QStringLiteral("data:image/jpeg;base64,") + QString::fromLatin1(smaller(jpeg).toBase64());
}

} // namespace ts
