#include "model/paper/tag_code.h"

#include <zint.h>

#include <algorithm>
#include <memory>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

Expected<TagCode> encoded(const QString &text, int symbology, int option)
{
    const auto did = u"Cannot make a code of %1"_s.arg(text.left(40));
    const std::unique_ptr<zint_symbol, void (*)(zint_symbol *)> symbol(ZBarcode_Create(), ZBarcode_Delete);
    if (!symbol)
        return Trouble{did, u"there is no memory for it"_s, {}};
    symbol->symbology = symbology;
    symbol->option_1 = option;
    symbol->show_hrt = 0;
    const QByteArray bytes = text.toUtf8();
    if (ZBarcode_Encode(symbol.get(), reinterpret_cast<const unsigned char *>(bytes.constData()), static_cast<int>(bytes.size())) >= ZINT_ERROR ||
        ZBarcode_Buffer_Vector(symbol.get(), 0) >= ZINT_ERROR)
        return Trouble{did, QString::fromUtf8(symbol->errtxt), {}};
    // A code always has one dark place that is a single module wide.
    double module = 0, left = 0, top = 0, right = 0, bottom = 0;
    for (const zint_vector_rect *each = symbol->vector->rectangles; each; each = each->next) {
        const double x = double(each->x), y = double(each->y), w = double(each->width), h = double(each->height);
        const bool first = each == symbol->vector->rectangles;
        module = first ? w : std::min(module, w);
        left = first ? x : std::min(left, x);
        top = first ? y : std::min(top, y);
        right = first ? x + w : std::max(right, x + w);
        bottom = first ? y + h : std::max(bottom, y + h);
    }
    if (module <= 0)
        return Trouble{did, u"nothing came of it"_s, {}};
    TagCode code;
    const bool square = symbology == BARCODE_QRCODE;
    for (const zint_vector_rect *each = symbol->vector->rectangles; each; each = each->next)
        code.dark << QRectF((double(each->x) - left) / module, square ? (double(each->y) - top) / module : 0, double(each->width) / module,
                            square ? double(each->height) / module : 1);
    code.width = (right - left) / module;
    code.height = square ? (bottom - top) / module : 1;
    code.quiet = square ? 4 : 10;
    return code;
}

} // namespace

Expected<TagCode> code128(const QString &text)
{
    return encoded(text, BARCODE_CODE128, -1);
}

Expected<TagCode> qrCode(const QString &text)
{
    return encoded(text, BARCODE_QRCODE, 2);
}

} // namespace ts
