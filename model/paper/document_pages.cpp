#include "model/paper/document_pages.h"

#include "model/paper/even_figures.h"
#include "model/paper/ink.h"
#include "model/paper/paper_font.h"

#include <QAbstractTextDocumentLayout>
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QUrl>

namespace ts {

namespace {

constexpr qreal sideMargin = 52; // 13.8 mm
constexpr qreal topMargin = 42;
constexpr qreal bottomMargin = 66;
constexpr qreal runningHead = 27; // baseline
constexpr qreal footerRule = 60;  // from the sheet's lower edge

QSizeF sizeOf(PageSize size)
{
    // ISO 216 and ANSI/ASME Y14.1, in 96ths of an inch.
    return size == PageSize::A4 ? QSizeF(210 / 25.4 * 96, 297 / 25.4 * 96) : QSizeF(8.5 * 96, 11 * 96);
}

QColor colour(const char *role)
{
    return QColor(ink::colour(QLatin1String(role)));
}

/// A heading's size in HTML is a step of the default size and outweighs what the style says; it is set here instead.
void settleHeadings(QTextDocument &document, int pixels)
{
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() == 0)
            continue;
        QTextCursor cursor(block);
        QTextCharFormat format = block.begin().fragment().charFormat();
        format.clearProperty(QTextFormat::FontSizeAdjustment);
        format.setProperty(QTextFormat::FontPixelSize, pixels);
        cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
        cursor.setCharFormat(format);
    }
}

} // namespace

QRectF DocumentPages::bodyOf(PageSize size)
{
    const QSizeF page = sizeOf(size);
    return {sideMargin, topMargin, page.width() - 2 * sideMargin, page.height() - topMargin - bottomMargin};
}

DocumentPages::DocumentPages(const QString &html, PageWords words, PageSize size, qsizetype pictures)
    : m_words(std::move(words)), m_page(sizeOf(size)), m_body(bodyOf(size)), m_document(std::make_unique<QTextDocument>())
{
    m_document->setUndoRedoEnabled(false);
    m_document->setDefaultFont(paperFont(12));
    m_document->setUseDesignMetrics(true);
    m_document->setDocumentMargin(0);
    // The document only keeps the pictures' place free; they are painted over it.
    QImage nothing(1, 1, QImage::Format_ARGB32_Premultiplied);
    nothing.fill(Qt::transparent);
    for (qsizetype i = 0; i < pictures; ++i)
        m_document->addResource(QTextDocument::ImageResource, QUrl(QStringLiteral("photos:%1").arg(i)), nothing);
    m_document->setHtml(html);
    settleHeadings(*m_document, 14);
    shapeWhereNeeded(*m_document);
    evenOutFigures(*m_document);
    m_document->setTextWidth(m_body.width());
    m_cuts = pageCuts(*m_document, m_body.height());
}

DocumentPages::~DocumentPages() = default;

void DocumentPages::paint(QPainter &painter, int number) const
{
    const PageCut &cut = m_cuts.at(number);
    if (cut.headHeight() > 0)
        paintPart(painter, cut.headTop, cut.headBottom, m_body.top());
    paintPart(painter, cut.top, cut.bottom, m_body.top() + cut.headHeight());
    if (number > 0)
        paintRunningHead(painter);
    paintFooter(painter, number);
}

void DocumentPages::paintPart(QPainter &painter, qreal top, qreal bottom, qreal at) const
{
    painter.save();
    painter.translate(m_body.left(), at - top);
    const QRectF part(0, top, m_body.width(), bottom - top);
    painter.setClipRect(part, Qt::IntersectClip);
    QAbstractTextDocumentLayout::PaintContext context;
    // What only touches the part is not drawn at all: clipped text would still be found by a search of the PDF.
    context.clip = part.adjusted(0, 0.5, 0, -0.5);
    context.palette.setColor(QPalette::Text, colour("ink"));
    m_document->documentLayout()->draw(&painter, context);
    painter.restore();
}

void DocumentPages::paintRunningHead(QPainter &painter) const
{
    painter.setFont(fontFor(m_words.again, paperFont(11)));
    painter.setPen(colour("faint"));
    const QFontMetricsF metrics(painter.font());
    const qreal rightWidth = metrics.horizontalAdvance(m_words.againRight);
    painter.drawText(QPointF(m_body.left(), runningHead),
                     metrics.elidedText(m_words.again, Qt::ElideMiddle, m_body.width() - rightWidth - 20));
    painter.drawText(QPointF(m_body.right() - rightWidth, runningHead), m_words.againRight);
}

void DocumentPages::paintFooter(QPainter &painter, int number) const
{
    painter.setFont(fontFor(m_words.footer, paperFont(11)));
    const QFontMetricsF metrics(painter.font());
    const qreal rule = m_page.height() - footerRule;
    painter.setPen(QPen(colour("rule"), 1));
    painter.drawLine(QPointF(m_body.left(), rule), QPointF(m_body.right(), rule));
    painter.setPen(colour("faint"));
    const QString page = QStringLiteral("Page %1 of %2").arg(number + 1).arg(count());
    const qreal pageWidth = metrics.horizontalAdvance(page);
    painter.drawText(QPointF(m_body.right() - pageWidth, rule + 18), page);
    const bool fits = metrics.horizontalAdvance(m_words.footer) <= m_body.width() - pageWidth - 20;
    painter.drawText(QPointF(m_body.left(), rule + 18), fits ? m_words.footer : m_words.shortFooter);
}

} // namespace ts
