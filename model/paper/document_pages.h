#pragma once

#include "model/paper/page_cuts.h"

#include <QRectF>
#include <QString>

#include <memory>

class QPainter;
class QTextDocument;

namespace ts {

enum class PageSize { A4, Letter };

/// The words that stand on a sheet beside its text.
struct PageWords {
    QString again;       ///< head of every page but the first: what this is
    QString againRight;  ///< the same at the right
    QString footer;      ///< where it is short enough for one line
    QString shortFooter; ///< else this
};

/// A document laid out on pages. What the PDF writer and a preview paint is this one layout; it does not depend on any screen or
/// printer. Lengths are in 96ths of an inch. Needs a QGuiApplication for its fonts.
class DocumentPages {
public:
    /// `pictures`: how many empty places "photos:0", "photos:1" … the HTML keeps free.
    DocumentPages(const QString &html, PageWords words, PageSize size, qsizetype pictures = 0);
    ~DocumentPages();

    /// Where text stands on a page of that size.
    [[nodiscard]] static QRectF bodyOf(PageSize size);

    [[nodiscard]] int count() const { return static_cast<int>(m_cuts.size()); }
    [[nodiscard]] QSizeF pageSize() const { return m_page; }
    [[nodiscard]] const PageCut &cut(int number) const { return m_cuts.at(number); }
    [[nodiscard]] const QTextDocument &document() const { return *m_document; }
    /// Paints page `number`, from 0, with its running head and footer, onto a painter scaled to 96 units per inch whose origin is
    /// the top left corner of the sheet.
    void paint(QPainter &painter, int number) const;

private:
    void paintPart(QPainter &painter, qreal top, qreal bottom, qreal at) const;
    void paintRunningHead(QPainter &painter) const;
    void paintFooter(QPainter &painter, int number) const;

    PageWords m_words;
    QSizeF m_page;
    QRectF m_body;
    std::unique_ptr<QTextDocument> m_document; ///< one endless page
    QList<PageCut> m_cuts;
};

} // namespace ts
