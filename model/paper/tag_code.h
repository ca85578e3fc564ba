#pragma once

#include "model/values/expected.h"

#include <QList>
#include <QRectF>

namespace ts {

/// The dark bars or squares of a code, in modules from its top left corner; the quiet zone around it is not in it. Code 128 is one
/// module high: its bars are drawn as high as there is room.
struct TagCode {
    QList<QRectF> dark;
    double width = 0;
    double height = 0;
    int quiet = 0; ///< modules that have to be left light around it
};

/// Code 128 of digits and letters (ISO/IEC 15417), ten modules of quiet zone at either side.
[[nodiscard]] Expected<TagCode> code128(const QString &text);
/// QR code of it (ISO/IEC 18004), error correction M, four modules of quiet zone all round.
[[nodiscard]] Expected<TagCode> qrCode(const QString &text);

} // namespace ts
