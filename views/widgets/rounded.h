#pragma once

#include <QPixmap>
#include <QSize>

namespace ts {

/// A picture cut to fill `size` (in device-independent pixels), with rounded corners; an empty pixmap where the bytes are no picture.
[[nodiscard]] QPixmap roundedCover(const QByteArray &picture, const QSize &size, int radius, qreal devicePixelRatio);

} // namespace ts
