#pragma once

#include "model/paper/document_pages.h"
#include "model/values/expected.h"

#include <QByteArray>
#include <QDateTime>
#include <QSizeF>

#include <functional>

namespace ts {

/// Pages on their way into a PDF.
struct PdfPages {
    QString did;   ///< "Cannot make the restoration sheet": what a refusal begins with
    QString title; ///< in the file
    QDateTime madeAt;
    PageSize size = PageSize::A4;
    int count = 0;
    std::function<void(QPainter &, int)> paint = {}; ///< page by page, scaled to 96 units per inch
    QSizeF millimetres = {}; ///< of a page that is not of a paper size: a label
};

/// Whether there is a QGuiApplication to lay out and draw with; refused, as what `did` says, where there is none.
[[nodiscard]] Expected<void> canDraw(const QString &did);

/// The pages as a PDF with its fonts inside. The same pages give the same bytes: the date in the file is `madeAt`.
[[nodiscard]] Expected<QByteArray> writePdf(const PdfPages &pages);

} // namespace ts
