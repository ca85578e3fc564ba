#pragma once

#include "model/paper/page_cuts.h"
#include "model/paper/photo_rows.h"
#include "model/paper/restoration_facts.h"

#include <QRectF>

#include <memory>

class QPainter;
class QTextDocument;

namespace ts {

enum class PageSize { A4, Letter };

/// A restoration sheet laid out on pages. What the PDF writer and a preview paint is this one layout; it does not depend on
/// any screen or printer. Lengths are in 96ths of an inch. Needs a QGuiApplication for its fonts.
class PaperPages {
public:
    PaperPages(const RestorationFacts &facts, PageSize size);
    ~PaperPages();

    [[nodiscard]] int count() const { return static_cast<int>(m_cuts.size()); }
    [[nodiscard]] QSizeF pageSize() const { return m_page; }
    /// Paints page `number`, from 0, with its photos, running head and footer, onto a painter scaled to 96 units per inch
    /// whose origin is the top left corner of the sheet.
    void paint(QPainter &painter, int number) const;

private:
    [[nodiscard]] QString html() const;
    void paintPart(QPainter &painter, qreal top, qreal bottom, qreal at) const;
    void paintPhotos(QPainter &painter, int number) const;
    void paintRunningHead(QPainter &painter) const;
    void paintFooter(QPainter &painter, int number) const;

    RestorationFacts m_facts;
    QSizeF m_page;
    QRectF m_body; ///< where text stands on each page
    PhotoRows m_photos;
    std::unique_ptr<QTextDocument> m_document; ///< one endless page
    QList<PageCut> m_cuts;
};

} // namespace ts
