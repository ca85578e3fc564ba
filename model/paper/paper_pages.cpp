#include "model/paper/paper_pages.h"

#include "model/paper/fill_restoration.h"
#include "model/paper/paper_files.h"
#include "model/paper/paper_font.h"
#include "model/paper/plain_words.h"

#include <QAbstractTextDocumentLayout>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextLayout>

namespace ts {

namespace {

QString length(qreal value)
{
    return QString::number(value, 'f', 2);
}

QString htmlOf(const RestorationFacts &facts, const PhotoRows &photos, qreal width)
{
    Filling filling = restorationFilling(facts);
    QList<Filling> rows;
    for (qsizetype i = 0; i < photos.count(); ++i)
        rows << Filling()
                    .put("index", QString::number(i))
                    .put("width", length(width))
                    .put("height", length(photos.height(i)))
                    .put("above", length(i == 0 ? 13 : PhotoRows::gap));
    filling.put("photo_rows", rows);
    QList<Filling> captions;
    for (const QString &caption : photos.cutCaptions())
        captions << Filling().put("text", caption).put("first", captions.isEmpty() ? QStringLiteral("yes") : QString());
    filling.put("long_captions", captions);
    const bool during = !filling.texts.value(QStringLiteral("has_during")).isEmpty();
    filling.put("w_what", during ? QStringLiteral("29") : QStringLiteral("36"));
    filling.put("w_wanted", during ? QStringLiteral("17") : QStringLiteral("19"));
    filling.put("w_value", during ? QStringLiteral("13") : QStringLiteral("14.5"));
    filling.put("w_word", during ? QStringLiteral("15") : QStringLiteral("16"));
    return filled(paperFile(QStringLiteral("restoration-print.html")), filling);
}

PageWords wordsOf(const RestorationFacts &facts)
{
    const QString sheet =
        facts.number > 0 ? QStringLiteral(" · sheet %1, edition %2").arg(facts.number).arg(facts.edition) : QString();
    // The first line of the terms stands in the footer where it is short enough; all of them stand in the text.
    const QString first = isolated(facts.terms.section(QLatin1Char('\n'), 0, 0));
    const QString ask = facts.number > 0
                            ? QStringLiteral("Questions: quote tag %1 and sheet %2.").arg(facts.tag).arg(facts.number)
                            : QStringLiteral("Questions: quote tag %1.").arg(facts.tag);
    return {isolated(facts.name) + QStringLiteral(" · tag ") + facts.tag + sheet, facts.date,
            first.isEmpty() ? ask : first + QLatin1Char(' ') + ask, ask};
}

} // namespace

PaperPages::PaperPages(const RestorationFacts &facts, PageSize size)
    : m_body(DocumentPages::bodyOf(size)), m_photos(facts.pictures, m_body.width(), paperFont(10, 500)),
      m_pages(htmlOf(facts, m_photos, m_body.width()), wordsOf(facts), size, m_photos.count())
{
}

void PaperPages::paint(QPainter &painter, int number) const
{
    m_pages.paint(painter, number);
    paintPhotos(painter, number);
}

void PaperPages::paintPhotos(QPainter &painter, int number) const
{
    const PageCut &cut = m_pages.cut(number);
    const QTextDocument &document = m_pages.document();
    qsizetype row = 0;
    for (QTextBlock block = document.begin(); block.isValid() && row < m_photos.count(); block = block.next()) {
        if (!block.begin().fragment().charFormat().isImageFormat())
            continue;
        const qreal foot = document.documentLayout()->blockBoundingRect(block).top() + block.layout()->lineAt(0).rect().bottom();
        const qreal top = foot - m_photos.height(row);
        if (foot > cut.top && foot <= cut.bottom + 1)
            m_photos.paint(painter, row, {m_body.left(), m_body.top() + cut.headHeight() + top - cut.top});
        ++row;
    }
}

} // namespace ts
