#include "model/paper/paper_pages.h"

#include "model/paper/even_figures.h"
#include "model/paper/fill_restoration.h"
#include "model/paper/ink.h"
#include "model/paper/paper_files.h"
#include "model/paper/paper_font.h"
#include "model/paper/plain_words.h"

#include <QAbstractTextDocumentLayout>
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextLayout>
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

QString length(qreal value)
{
    return QString::number(value, 'f', 2);
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

PaperPages::PaperPages(const RestorationFacts &facts, PageSize size)
    : m_facts(facts), m_page(sizeOf(size)),
      m_body(sideMargin, topMargin, m_page.width() - 2 * sideMargin, m_page.height() - topMargin - bottomMargin),
      m_photos(facts.pictures, m_body.width(), paperFont(10, 500)), m_document(std::make_unique<QTextDocument>())
{
    m_document->setUndoRedoEnabled(false);
    m_document->setDefaultFont(paperFont(12));
    m_document->setUseDesignMetrics(true);
    m_document->setDocumentMargin(0);
    // The document only keeps the photos' place free; they are painted over it.
    QImage nothing(1, 1, QImage::Format_ARGB32_Premultiplied);
    nothing.fill(Qt::transparent);
    for (qsizetype i = 0; i < m_photos.count(); ++i)
        m_document->addResource(QTextDocument::ImageResource, QUrl(QStringLiteral("photos:%1").arg(i)), nothing);
    m_document->setHtml(html());
    settleHeadings(*m_document, 14);
    shapeWhereNeeded(*m_document);
    evenOutFigures(*m_document);
    m_document->setTextWidth(m_body.width());
    m_cuts = pageCuts(*m_document, m_body.height());
}

PaperPages::~PaperPages() = default;

QString PaperPages::html() const
{
    Filling filling = restorationFilling(m_facts);
    QList<Filling> rows;
    for (qsizetype i = 0; i < m_photos.count(); ++i)
        rows << Filling()
                    .put("index", QString::number(i))
                    .put("width", length(m_body.width()))
                    .put("height", length(m_photos.height(i)))
                    .put("above", length(i == 0 ? 13 : PhotoRows::gap));
    filling.put("photo_rows", rows);
    QList<Filling> captions;
    for (const QString &caption : m_photos.cutCaptions())
        captions << Filling().put("text", caption).put("first", captions.isEmpty() ? QStringLiteral("yes") : QString());
    filling.put("long_captions", captions);
    const bool during = !filling.texts.value(QStringLiteral("has_during")).isEmpty();
    filling.put("w_what", during ? QStringLiteral("29") : QStringLiteral("36"));
    filling.put("w_wanted", during ? QStringLiteral("17") : QStringLiteral("19"));
    filling.put("w_value", during ? QStringLiteral("13") : QStringLiteral("14.5"));
    filling.put("w_word", during ? QStringLiteral("15") : QStringLiteral("16"));
    return filled(paperFile(QStringLiteral("restoration-print.html")), filling);
}

void PaperPages::paint(QPainter &painter, int number) const
{
    const PageCut &cut = m_cuts.at(number);
    if (cut.headHeight() > 0)
        paintPart(painter, cut.headTop, cut.headBottom, m_body.top());
    paintPart(painter, cut.top, cut.bottom, m_body.top() + cut.headHeight());
    paintPhotos(painter, number);
    if (number > 0)
        paintRunningHead(painter);
    paintFooter(painter, number);
}

void PaperPages::paintPart(QPainter &painter, qreal top, qreal bottom, qreal at) const
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

void PaperPages::paintPhotos(QPainter &painter, int number) const
{
    const PageCut &cut = m_cuts.at(number);
    qsizetype row = 0;
    for (QTextBlock block = m_document->begin(); block.isValid() && row < m_photos.count(); block = block.next()) {
        if (!block.begin().fragment().charFormat().isImageFormat())
            continue;
        const qreal foot =
            m_document->documentLayout()->blockBoundingRect(block).top() + block.layout()->lineAt(0).rect().bottom();
        const qreal top = foot - m_photos.height(row);
        if (foot > cut.top && foot <= cut.bottom + 1)
            m_photos.paint(painter, row, {m_body.left(), m_body.top() + cut.headHeight() + top - cut.top});
        ++row;
    }
}

void PaperPages::paintRunningHead(QPainter &painter) const
{
    const QString again = isolated(m_facts.name) + QStringLiteral(" · tag ") + m_facts.tag +
                          (m_facts.number > 0 ? QStringLiteral(" · sheet %1, edition %2").arg(m_facts.number).arg(m_facts.edition) : QString());
    painter.setFont(fontFor(again, paperFont(11)));
    painter.setPen(colour("faint"));
    const QFontMetricsF metrics(painter.font());
    const qreal dateWidth = metrics.horizontalAdvance(m_facts.date);
    painter.drawText(QPointF(m_body.left(), runningHead),
                     metrics.elidedText(again, Qt::ElideMiddle, m_body.width() - dateWidth - 20));
    painter.drawText(QPointF(m_body.right() - dateWidth, runningHead), m_facts.date);
}

void PaperPages::paintFooter(QPainter &painter, int number) const
{
    const QString first = isolated(m_facts.terms.section(QLatin1Char('\n'), 0, 0));
    painter.setFont(fontFor(first, paperFont(11)));
    const QFontMetricsF metrics(painter.font());
    const qreal rule = m_page.height() - footerRule;
    painter.setPen(QPen(colour("rule"), 1));
    painter.drawLine(QPointF(m_body.left(), rule), QPointF(m_body.right(), rule));
    painter.setPen(colour("faint"));
    const QString page = QStringLiteral("Page %1 of %2").arg(number + 1).arg(count());
    const qreal pageWidth = metrics.horizontalAdvance(page);
    painter.drawText(QPointF(m_body.right() - pageWidth, rule + 18), page);
    // The first line of the terms stands here where it is short enough; all of them stand in the text.
    const QString ask = m_facts.number > 0 ? QStringLiteral("Questions: quote tag %1 and sheet %2.").arg(m_facts.tag).arg(m_facts.number)
                                           : QStringLiteral("Questions: quote tag %1.").arg(m_facts.tag);
    const QString both = first + QLatin1Char(' ') + ask;
    const bool fits = !first.isEmpty() && metrics.horizontalAdvance(both) <= m_body.width() - pageWidth - 20;
    painter.drawText(QPointF(m_body.left(), rule + 18), fits ? both : ask);
}

} // namespace ts
