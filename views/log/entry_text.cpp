#include "views/log/entry_text.h"

#include "views/style/style.h"

#include <QPainter>
#include <QtMath>

namespace ts {

qreal breakLines(QTextLayout &layout, const QString &text, const QFont &font, int width, const OtherFace &beginning)
{
    layout.setText(text);
    layout.setFont(font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    if (beginning.length > 0) {
        QTextCharFormat format;
        format.setFont(beginning.font);
        layout.setFormats({{0, beginning.length, format}});
    }
    qreal height = 0;
    layout.beginLayout();
    while (true) {
        QTextLine line = layout.createLine();
        if (!line.isValid())
            break;
        line.setLineWidth(width);
        line.setPosition(QPointF(0, height));
        height += line.height();
    }
    layout.endLayout();
    return height;
}

bool fitsOneLine(const QString &text, const QFont &font, int width)
{
    const QFontMetrics metrics(font);
    // No letter that people write is much wider than an M; what is short enough for that is not measured.
    if (text.size() * metrics.horizontalAdvance(QLatin1Char('M')) * 4 / 3 <= width)
        return true;
    return text.size() < width && metrics.horizontalAdvance(text) <= width;
}

int detailLine(const Style &style, bool withFigures)
{
    // As QTextLayout stacks them: the highest ascent and the deepest descent of the faces on the line.
    const QFontMetricsF text(style.text(0.97));
    if (!withFigures)
        return qCeil(text.height());
    const QFontMetricsF figures(style.figures(0.97));
    return qCeil(qMax(text.ascent(), figures.ascent()) + qMax(text.descent(), figures.descent()));
}

void paintPill(QPainter &painter, const Style &style, Tone tone, const QString &word, const QPointF &at, qreal lineHeight)
{
    const ToneInk ink = toneInk(tone, style);
    painter.setFont(style.text(0.86, QFont::DemiBold));
    const QFontMetricsF metrics(painter.font());
    const qreal height = metrics.height() + 1;
    const QRectF pill(at.x(), at.y() + (lineHeight - height) / 2, metrics.horizontalAdvance(word) + 14, height);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.ground);
    painter.drawRoundedRect(pill, height / 2, height / 2);
    painter.setPen(ink.text);
    painter.drawText(pill, Qt::AlignCenter, word);
}

void paintRight(QPainter &painter, const QRect &area, int line, const QString &text)
{
    if (text.isEmpty())
        return;
    QRect place(area.left(), area.top(), area.width(), line);
    for (const QString &part : text.split(QStringLiteral(" · "))) {
        painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, part);
        place.translate(0, line);
    }
}

void paintTinted(QPainter &painter, const QIcon &icon, const QRect &place, const QColor &colour)
{
    const qreal ratio = painter.device()->devicePixelRatioF();
    QPixmap picture = icon.pixmap(place.size(), ratio);
    if (picture.isNull())
        return;
    QPainter tint(&picture);
    tint.setCompositionMode(QPainter::CompositionMode_SourceIn);
    tint.fillRect(QRect(QPoint(), picture.size()), colour);
    tint.end();
    painter.drawPixmap(QRect(place.center() - QPoint(place.width() / 2 - 1, place.height() / 2 - 1), place.size()), picture);
}

} // namespace ts
