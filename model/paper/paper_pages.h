#pragma once

#include "model/paper/document_pages.h"
#include "model/paper/photo_rows.h"
#include "model/paper/restoration_facts.h"

namespace ts {

/// A restoration sheet laid out on pages, with its photos.
class PaperPages {
public:
    PaperPages(const RestorationFacts &facts, PageSize size);

    [[nodiscard]] int count() const { return m_pages.count(); }
    [[nodiscard]] QSizeF pageSize() const { return m_pages.pageSize(); }
    /// Paints page `number`, from 0, with its photos, running head and footer, onto a painter scaled to 96 units per inch
    /// whose origin is the top left corner of the sheet.
    void paint(QPainter &painter, int number) const;

private:
    void paintPhotos(QPainter &painter, int number) const;

    QRectF m_body; ///< where text stands on each page
    PhotoRows m_photos;
    DocumentPages m_pages;
};

} // namespace ts
