#include "model/paper/photo_rows.h"

#include "model/paper/ink.h"
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

constexpr qreal tallest = 165;
constexpr int mostInRow = 4;
constexpr int mostCaptionLines = 3;

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

void paintCaption(QPainter &painter, const QString &caption, const QRectF &place, const QFont &font)
{
    constexpr qreal inset = 8;
    const qreal spacing = QFontMetricsF(font).lineSpacing() + 1;
    QTextLayout text(isolated(caption), font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    text.setTextOption(option);
    text.beginLayout();
    int lines = 0;
    for (QTextLine line = text.createLine(); line.isValid() && lines < mostCaptionLines; line = text.createLine()) {
        line.setLineWidth(place.width() - 2 * inset);
        line.setPosition({0, lines++ * spacing});
    }
    text.endLayout();
    const qreal height = lines * spacing + 9;
    QColor shade(ink::colour(QLatin1String("shade")));
    shade.setAlphaF(0.64F); // dark enough for white letters on a white photo
    painter.fillRect(QRectF(place.left(), place.bottom() - height, place.width(), height), shade);
    painter.setPen(QColor(ink::colour(QLatin1String("on_shade"))));
    text.draw(&painter, {place.left() + inset, place.bottom() - height + 5});
}

} // namespace

PhotoRows::PhotoRows(const QList<RestorationFacts::Picture> &pictures, qreal width)
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
            line.tiles << Tile{pictures[i], x, wide};
            x += wide + gap;
        }
        m_rows << line;
        at += many;
    }
}

void PhotoRows::paint(QPainter &painter, qsizetype row, QPointF at, const QFont &captionFont) const
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
        paintCaption(painter, tile.picture.caption, place, captionFont);
        painter.restore();
    }
}

} // namespace ts
