#pragma once

#include <QImage>
#include <QPixmap>
#include <QSize>

namespace ts {

/// A picture cut to fill `size` (in device-independent pixels), with rounded corners; an empty pixmap where there is none.
[[nodiscard]] QPixmap roundedCover(const QImage &picture, const QSize &size, int radius, qreal devicePixelRatio);

} // namespace ts
