#include "model/paper/photo_rows.h"

#include "model/paper/ink.h"
#include "model/paper/paper_font.h"
#include "model/paper/plain_words.h"

#include <QBuffer>
#include <QFontMetricsF>
#include <QImageReader>
#include <QPainter>
#include <QPainterPath>
#include <QTextLayout>

#include <algorithm>

namespace ts {

namespace {

constexpr qreal tallest = 180;
constexpr int mostInRow = 4;
constexpr int mostCaptionLines = 3;
constexpr qreal captionInset = 8;

// A photo five times as wide as tall, or the other way round, is shown on a ground of that shape.
qreal shapeOf(const RestorationFacts::Picture &picture)
{
    return std::clamp(picture.width / qreal(picture.height), 0.4, 3.0);
}

QImage readFor(const QByteArray &jpeg, const QSizeF &place)
{
    constexpr qreal dotsPerUnit = 2.5; // 240 dots to the inch on paper
    QBuffer buffer;
    buffer.setData(jpeg);
    QImageReader reader(&buffer, "jpeg");
    const QSize wanted = reader.size().scaled((place * dotsPerUnit).toSize(), Qt::KeepAspectRatio);
    if (reader.size().width() > wanted.width())
        reader.setScaledSize(wanted);
    return reader.read();
}

/// Breaks a caption into lines of a width, at most so many, and says where the text ends that they hold.
int layOut(QTextLayout &text, qreal width)
{
    const qreal spacing = QFontMetricsF(text.font()).lineSpacing() + 1;
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    text.setTextOption(option);
    text.beginLayout();
    int end = 0;
    for (int line = 0; line < mostCaptionLines; ++line) {
        QTextLine next = text.createLine();
        if (!next.isValid())
            break;
        next.setLineWidth(width);
        next.setPosition({0, line * spacing});
        end = next.textStart() + next.textLength();
    }
    text.endLayout();
    return end;
}

/// As much of a caption as fits on its photo, with an ellipsis where it is cut.
QString fitting(const QString &caption, qreal width, const QFont &font)
{
    QTextLayout whole(caption, fontFor(caption, font));
    int end = layOut(whole, width);
    if (end >= caption.size())
        return caption;
    for (; end > 0; --end) {
        const QString part = caption.left(end).trimmed() + QChar(0x2026);
        QTextLayout attempt(part, whole.font());
        if (layOut(attempt, width) >= part.size())
            return part;
    }
    return QString(QChar(0x2026));
}

void paintCaption(QPainter &painter, const QString &caption, const QRectF &place, const QFont &font)
{
    QTextLayout text(isolated(caption), fontFor(caption, font));
    layOut(text, place.width() - 2 * captionInset);
    const qreal height = text.lineCount() * (QFontMetricsF(font).lineSpacing() + 1) + 9;
    QColor shade(ink::colour(QLatin1String("shade")));
    shade.setAlphaF(0.64F); // dark enough for white letters on a white photo
    painter.fillRect(QRectF(place.left(), place.bottom() - height, place.width(), height), shade);
    painter.setPen(QColor(ink::colour(QLatin1String("on_shade"))));
    text.draw(&painter, {place.left() + captionInset, place.bottom() - height + 5});
}

} // namespace

PhotoRows::PhotoRows(const QList<RestorationFacts::Picture> &pictures, qreal width, const QFont &captionFont)
    : m_font(captionFont)
{
    const qsizetype total = pictures.size();
    const qsizetype rows = (total + mostInRow - 1) / mostInRow;
    for (qsizetype row = 0, at = 0; row < rows; ++row) {
        const qsizetype many = (total - at + rows - row - 1) / (rows - row);
        qreal shapes = 0;
        for (qsizetype i = at; i < at + many; ++i)
            shapes += shapeOf(pictures[i]);
        Row line;
        line.height = std::min(tallest, (width - gap * qreal(many - 1)) / shapes);
        qreal x = 0;
        for (qsizetype i = at; i < at + many; ++i) {
            const qreal wide = line.height * shapeOf(pictures[i]);
            const QString caption = fitting(pictures[i].caption, wide - 2 * captionInset, m_font);
            if (caption != pictures[i].caption)
                m_cut << QStringLiteral("Photo %1: %2").arg(i + 1).arg(isolated(pictures[i].caption));
            line.tiles << Tile{pictures[i], caption, x, wide};
            x += wide + gap;
        }
        m_rows << line;
        at += many;
    }
}

void PhotoRows::paint(QPainter &painter, qsizetype row, QPointF at) const
{
    for (const Tile &tile : m_rows.at(row).tiles) {
        const QRectF place(at.x() + tile.x, at.y(), tile.width, m_rows.at(row).height);
        const QImage image = readFor(tile.picture.jpeg, place.size());
        painter.save();
        QPainterPath round;
        round.addRoundedRect(place, 3, 3);
        painter.setClipPath(round, Qt::IntersectClip);
        painter.fillRect(place, QColor(ink::colour(QLatin1String("desk"))));
        QRectF shown(QPointF(), QSizeF(image.size()).scaled(place.size(), Qt::KeepAspectRatio));
        shown.moveCenter(place.center());
        painter.drawImage(shown, image);
        paintCaption(painter, tile.caption, place, m_font);
        painter.restore();
    }
}

} // namespace ts
