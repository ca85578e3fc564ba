#include "model/paper/write_pdf.h"

#include "model/paper/pdf_date.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

namespace ts {

namespace {

constexpr int resolution = 1200;

/// Hash tables made while this lives are in the same order in every run. The PDF writer keeps its fonts in one and writes them in
/// its order; tables made before keep the seed they have.
class SteadyHashes {
public:
    SteadyHashes() { QHashSeed::setDeterministicGlobalSeed(); }
    ~SteadyHashes() { QHashSeed::resetRandomGlobalSeed(); }
    Q_DISABLE_COPY_MOVE(SteadyHashes)
};

} // namespace

Expected<void> canDraw(const QString &did)
{
    if (!qobject_cast<QGuiApplication *>(QCoreApplication::instance()))
        return Trouble{did, QStringLiteral("there is nothing to draw with"), QStringLiteral("set QT_QPA_PLATFORM to offscreen")};
    return {};
}

Expected<QByteArray> writePdf(const PdfPages &pages)
{
    QByteArray pdf;
    QBuffer out(&pdf);
    out.open(QIODevice::WriteOnly);
    {
        const SteadyHashes steady;
        QPdfWriter writer(&out);
        writer.setResolution(resolution);
        writer.setTitle(pages.title);
        writer.setCreator(QStringLiteral("Turnscrew"));
        writer.setPageSize(pages.millimetres.isEmpty() ? QPageSize(pages.size == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter)
                                                       : QPageSize(pages.millimetres, QPageSize::Millimeter, {}, QPageSize::ExactMatch));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        QPainter painter;
        if (!painter.begin(&writer))
            return Trouble{pages.did, QStringLiteral("the page could not be begun"), {}};
        painter.scale(resolution / 96.0, resolution / 96.0);
        for (int page = 0; page < pages.count; ++page) {
            if (page > 0 && !writer.newPage())
                return Trouble{pages.did, QStringLiteral("a page could not be added"), {}};
            pages.paint(painter, page);
        }
    }
    setCreationDate(pdf, pages.madeAt);
    return pdf;
}

} // namespace ts
