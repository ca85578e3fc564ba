#include "model/paper/draw_pdf.h"

#include "model/paper/fill_restoration.h"
#include "model/paper/write_pdf.h"

namespace ts {

Expected<QByteArray> restorationPdf(const RestorationFacts &facts, PageSize size)
{
    const auto did = QStringLiteral("Cannot make the restoration sheet");
    if (auto can = canDraw(did); !can)
        return can.trouble();
    const PaperPages pages(facts, size);
    return writePdf({did, QStringLiteral("%1: %2, tag %3").arg(sheetName(facts), facts.name, facts.tag), facts.madeAt, size,
                     pages.count(), [&pages](QPainter &painter, int number) { pages.paint(painter, number); }});
}

} // namespace ts
