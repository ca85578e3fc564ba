#include "views/widgets/rounded.h"

#include <QPainter>
#include <QPainterPath>

namespace ts {

QPixmap roundedCover(const QImage &picture, const QSize &size, int radius, qreal devicePixelRatio)
{
    if (picture.isNull() || size.isEmpty())
        return {};
    const QSize pixels = size * devicePixelRatio;
    const QImage scaled = picture.scaled(pixels, Qt::KeepAspectRatioByExpanding, Qt::SmoothTransformation);
    QPixmap cover(pixels);
    cover.fill(Qt::transparent);
    QPainter painter(&cover);
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath corners;
    corners.addRoundedRect(QRectF(QPointF(), QSizeF(pixels)), radius * devicePixelRatio, radius * devicePixelRatio);
    painter.setClipPath(corners);
    painter.drawImage((pixels.width() - scaled.width()) / 2, (pixels.height() - scaled.height()) / 2, scaled);
    painter.end();
    cover.setDevicePixelRatio(devicePixelRatio);
    return cover;
}

} // namespace ts
