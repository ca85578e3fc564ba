#include "views/widgets/grid_paint.h"

#include "views/style/style.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace ts {

namespace {

constexpr int atSide = gap::small;
constexpr int above = 5;
constexpr double second = 0.92; // of the running text
constexpr double pilled = 0.88;

int textHeight(const QFontMetrics &metrics, const QString &text, int width)
{
    if (text.isEmpty())
        return 0;
    if (!text.contains(QLatin1Char('\n')) && metrics.horizontalAdvance(text) <= width)
        return metrics.height();
    return metrics.boundingRect(QRect(0, 0, std::max(width, 10), 10000), Qt::TextWordWrap, text).height();
}

} // namespace

QFont GridPaint::font(const GridCell &cell) const
{
    QFont font = cell.figures ? m_style.figures(0.96) : m_style.text(1.0, cell.strong ? QFont::DemiBold : QFont::Normal);
    font.setStrikeOut(cell.struck);
    return font;
}

int GridPaint::height(const GridCell &cell, int width) const
{
    int room = width - 2 * atSide;
    if (cell.tick)
        room -= m_style.space(4) + gap::small;
    const QFontMetrics one(font(cell));
    int high = cell.pill ? std::max(QFontMetrics(m_style.text(pilled)).height() + 4, one.height()) : textHeight(one, cell.text, room);
    if (cell.pill && !cell.after.isEmpty()) {
        const int pill = pillWidth(cell.text);
        const int beside = QFontMetrics(m_style.text(second)).horizontalAdvance(cell.after);
        if (pill + gap::small + beside > room)
            high += textHeight(QFontMetrics(m_style.text(second)), cell.after, room);
    }
    if (!cell.second.isEmpty())
        high += textHeight(QFontMetrics(m_style.text(second)), cell.second, room);
    return std::max(high, one.height()) + 2 * above;
}

int GridPaint::pillWidth(const QString &word) const
{
    return QFontMetrics(m_style.text(pilled, QFont::DemiBold)).horizontalAdvance(word) + 2 * gap::small;
}

QRect GridPaint::tickRect(const QRect &cell) const
{
    const int side = m_style.space(3.4);
    return {cell.left() + atSide, cell.center().y() - side / 2, side, side};
}

void GridPaint::draw(QPainter &painter, const QRect &rect, const GridCell &cell, const GridColumn &column) const
{
    const Ink &ink = m_style.ink();
    const int side = column.middle ? 1 : atSide;
    QRect room = rect.adjusted(side, above, -side, -above);
    if (cell.tick) {
        drawTick(painter, tickRect(rect), *cell.tick);
        room.setLeft(room.left() + m_style.space(4) + gap::small - 2);
    }
    if (cell.bar) {
        drawBar(painter, room, *cell.bar);
        return;
    }
    if (cell.pill && !cell.text.isEmpty()) {
        drawPill(painter, room, cell);
        return;
    }
    const int across = column.right ? Qt::AlignRight : column.middle ? Qt::AlignHCenter : Qt::AlignLeft;
    painter.setFont(font(cell));
    painter.setPen(cell.quiet || cell.struck ? ink.quiet : ink.ink);
    if (cell.second.isEmpty()) {
        painter.drawText(room, across | Qt::AlignVCenter | Qt::TextWordWrap, cell.text);
        return;
    }
    const int first = textHeight(QFontMetrics(font(cell)), cell.text, room.width());
    const QFont small = m_style.text(second);
    const int below = textHeight(QFontMetrics(small), cell.second, room.width());
    const int top = room.top() + std::max(0, (room.height() - first - below) / 2);
    painter.drawText(QRect(room.left(), top, room.width(), first), across | Qt::TextWordWrap, cell.text);
    painter.setFont(small);
    painter.setPen(ink.quiet);
    painter.drawText(QRect(room.left(), top + first, room.width(), below), across | Qt::TextWordWrap, cell.second);
}

void GridPaint::drawGroup(QPainter &painter, const QRect &rect, const GridCell &cell) const
{
    const Ink &ink = m_style.ink();
    painter.fillRect(rect.adjusted(0, 0, 0, -1), ink.raised);
    const QRect room = rect.adjusted(atSide, above, -atSide, -above);
    painter.setFont(m_style.text(second, QFont::DemiBold));
    painter.setPen(ink.faint);
    painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, cell.text);
    painter.drawText(room, Qt::AlignRight | Qt::AlignVCenter, cell.after);
}

void GridPaint::drawPill(QPainter &painter, QRect &rect, const GridCell &cell) const
{
    const ToneInk tone = toneInk(*cell.pill, m_style);
    const QFont word = m_style.text(pilled, QFont::DemiBold);
    const QFontMetrics metrics(word);
    const int width = std::min(pillWidth(cell.text), rect.width());
    const int height = metrics.height() + 3;
    const QFont small = m_style.text(second);
    const bool below = !cell.after.isEmpty() && width + gap::small + QFontMetrics(small).horizontalAdvance(cell.after) > rect.width();
    const QRect pill(rect.left(), below ? rect.top() : rect.center().y() - height / 2, width, height);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(tone.ground);
    painter.drawRoundedRect(pill, height / 2.0, height / 2.0);
    painter.setPen(tone.text);
    painter.setFont(word);
    painter.drawText(pill, Qt::AlignCenter, metrics.elidedText(cell.text, Qt::ElideRight, width - gap::small));
    if (cell.after.isEmpty())
        return;
    painter.setFont(small);
    painter.setPen(m_style.ink().ink);
    if (below)
        painter.drawText(rect.adjusted(0, height + 1, 0, above), Qt::AlignLeft | Qt::TextWordWrap, cell.after);
    else
        painter.drawText(rect.adjusted(width + gap::small, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, cell.after);
}

void GridPaint::drawTick(QPainter &painter, const QRect &rect, bool ticked) const
{
    const Ink &ink = m_style.ink();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ticked ? ink.within : ink.strong, 1.4));
    painter.setBrush(ticked ? ink.withinPaper : ink.sheet);
    painter.drawRoundedRect(QRectF(rect).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    if (!ticked)
        return;
    QPainterPath mark;
    mark.moveTo(rect.left() + rect.width() * 0.22, rect.top() + rect.height() * 0.52);
    mark.lineTo(rect.left() + rect.width() * 0.43, rect.top() + rect.height() * 0.74);
    mark.lineTo(rect.left() + rect.width() * 0.80, rect.top() + rect.height() * 0.26);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.within, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(mark);
}

// The ground, how it was as a pale broad bar, how it is now as a narrower one in copper.
void GridPaint::drawBar(QPainter &painter, const QRect &rect, const GridBar &bar) const
{
    const Ink &ink = m_style.ink();
    const double high = m_style.space(2.6);
    const QRectF ground(rect.left(), rect.center().y() - high / 2, rect.width(), high);
    const auto part = [&ground](double share, double height) {
        QRectF piece = ground;
        piece.setWidth(ground.width() * std::clamp(share, 0.0, 1.0));
        piece.setTop(ground.center().y() - height / 2);
        piece.setHeight(height);
        return piece;
    };
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink.bar);
    painter.drawRoundedRect(ground, 3, 3);
    painter.setBrush(ink.strong);
    painter.drawRoundedRect(part(bar.before, high), 3, 3);
    if (bar.now > 0) {
        painter.setBrush(ink.copper);
        painter.drawRoundedRect(part(bar.now, high / 2), 3, 3);
    }
}

} // namespace ts
