#pragma once

#include <QByteArray>
#include <QString>

namespace ts {

/// A JPEG as a data: address for a web page, made smaller where its long side is above 1600 pixels.
[[nodiscard]] QString webPicture(const QByteArray &jpeg);

} // namespace ts
