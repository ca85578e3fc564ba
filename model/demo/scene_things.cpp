// The things on a front and on a board: knobs, keys, screws, lamps, letters, wires.
#include "model/demo/engraving.h"
#include "model/demo/scene.h"

#include <QLinearGradient>
#include <QRadialGradient>

#include <cmath>

namespace ts {

void Scene::knob(QPointF centre, double radius, const QColor &colour, double turn)
{
    for (int i = 5; i > 0; --i) {
        m_paint.setBrush(QColor(0, 0, 0, 20));
        m_paint.drawEllipse(centre + QPointF(3, 5), radius + i * 2.0, radius + i * 2.0);
    }
    QLinearGradient side(centre - QPointF(radius, radius), centre + QPointF(radius, radius));
    side.setColorAt(0, colour.lighter(135));
    side.setColorAt(1, colour.darker(150));
    m_paint.setBrush(side);
    m_paint.drawEllipse(centre, radius, radius);
    m_paint.setPen(QPen(colour.darker(165), 1.4));
    const int ribs = static_cast<int>(radius * 1.2);
    for (int i = 0; i < ribs; ++i) {
        const double angle = 2 * M_PI * i / ribs;
        const QPointF way(std::cos(angle), std::sin(angle));
        m_paint.drawLine(centre + way * radius * 0.86, centre + way * radius * 0.98);
    }
    m_paint.setPen(Qt::NoPen);
    QLinearGradient cap(centre - QPointF(radius, radius), centre + QPointF(radius, radius));
    cap.setColorAt(0, colour.darker(108));
    cap.setColorAt(1, colour.lighter(118));
    m_paint.setBrush(cap);
    m_paint.drawEllipse(centre, radius * 0.78, radius * 0.78);
    const QPointF way(std::sin(turn), -std::cos(turn));
    m_paint.setPen(QPen(colour.lightness() > 110 ? QColor(50, 50, 46) : QColor(230, 226, 214), qMax(2.0, radius * 0.07), Qt::SolidLine, Qt::RoundCap));
    m_paint.drawLine(centre + way * radius * 0.38, centre + way * radius * 0.72);
    m_paint.setPen(Qt::NoPen);
}

void Scene::key(const QRectF &cap, const QColor &colour, double radius)
{
    m_paint.setBrush(QColor(0, 0, 0, 70));
    m_paint.drawRoundedRect(cap.adjusted(-1, 0, 2, 5), radius, radius);
    QLinearGradient face(cap.topLeft(), cap.bottomLeft());
    face.setColorAt(0, colour.lighter(125));
    face.setColorAt(1, colour.darker(115));
    m_paint.setBrush(face);
    m_paint.drawRoundedRect(cap, radius, radius);
}

void Scene::screw(QPointF centre, double radius)
{
    disc(centre + QPointF(1, 2), radius + 2, QColor(0, 0, 0, 70));
    QLinearGradient head(centre - QPointF(radius, radius), centre + QPointF(radius, radius));
    head.setColorAt(0, QColor(0xd6, 0xd3, 0xc8));
    head.setColorAt(1, QColor(0x77, 0x76, 0x6e));
    m_paint.setBrush(head);
    m_paint.drawEllipse(centre, radius, radius);
    const double turn = m_dice.real(0, M_PI);
    const QPointF way(std::cos(turn) * radius * 0.62, std::sin(turn) * radius * 0.62);
    const QPointF across(-way.y(), way.x());
    m_paint.setPen(QPen(QColor(50, 50, 46), radius * 0.24));
    m_paint.drawLine(centre - way, centre + way);
    m_paint.drawLine(centre - across, centre + across);
    m_paint.setPen(Qt::NoPen);
}

void Scene::lamp(QPointF centre, double radius, const QColor &colour)
{
    QRadialGradient glow(centre, radius * 3.2);
    QColor edge = colour;
    edge.setAlpha(0);
    glow.setColorAt(0, QColor(colour.red(), colour.green(), colour.blue(), 130));
    glow.setColorAt(1, edge);
    m_paint.setBrush(glow);
    m_paint.drawEllipse(centre, radius * 3.2, radius * 3.2);
    disc(centre, radius, colour.lighter(130));
}

void Scene::needle(const QRectF &dial, double swing)
{
    inset(dial, QColor(0xe6, 0xdb, 0xb8), 6);
    const QPointF pivot(dial.center().x(), dial.bottom() + dial.height() * 0.25);
    const double reach = dial.height() * 1.0;
    m_paint.save();
    m_paint.setClipRect(dial);
    m_paint.setBrush(Qt::NoBrush);
    for (int i = 0; i <= 10; ++i) {
        const double angle = (-0.72 + 0.144 * i);
        const QPointF way(std::sin(angle), -std::cos(angle));
        m_paint.setPen(QPen(i > 7 ? QColor(0xa8, 0x50, 0x2a) : QColor(60, 55, 45), i % 5 == 0 ? 3 : 1.6));
        m_paint.drawLine(pivot + way * reach * 0.94, pivot + way * reach * (i % 5 == 0 ? 1.06 : 1.01));
    }
    const double angle = -0.72 + 1.44 * swing;
    m_paint.setPen(QPen(QColor(40, 30, 25), 2.6));
    m_paint.drawLine(pivot, pivot + QPointF(std::sin(angle), -std::cos(angle)) * reach * 1.02);
    m_paint.setPen(Qt::NoPen);
    m_paint.restore();
    glass(dial);
}

void Scene::socket(QPointF centre, double radius, const QColor &colour)
{
    disc(centre + QPointF(1, 2), radius * 1.25, QColor(0, 0, 0, 60));
    disc(centre, radius * 1.2, QColor(0xb9, 0xb6, 0xaa));
    disc(centre, radius, colour);
    disc(centre, radius * 0.68, QColor(0xd2, 0xcf, 0xc3));
    disc(centre, radius * 0.32, QColor(28, 28, 26));
}

void Scene::vents(const QRectF &area, int count)
{
    const double step = area.width() / count;
    for (int i = 0; i < count; ++i)
        inset(QRectF(area.left() + i * step, area.top(), step * 0.45, area.height()), QColor(30, 32, 30), 4);
}

void Scene::letter(const QString &text, QPointF topLeft, double size, const QColor &colour)
{
    m_paint.setPen(QPen(colour, qMax(1.6, size * 0.115), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    m_paint.setBrush(Qt::NoBrush);
    m_paint.drawPath(engraved(text, topLeft, size));
    m_paint.setPen(Qt::NoPen);
}

void Scene::letterCentred(const QString &text, QPointF centre, double size, const QColor &colour)
{
    letter(text, centre - QPointF(engravedWidth(text, size) / 2, size / 2), size, colour);
}

void Scene::figures(const QString &text, const QRectF &window, const QColor &colour)
{
    inset(window, QColor(0x1d, 0x22, 0x20), 5);
    QColor soft = colour;
    soft.setAlpha(50);
    const double size = window.height() * 0.46;
    const QPointF at(window.left() + window.height() * 0.35, window.center().y() - size / 2);
    m_paint.setBrush(Qt::NoBrush);
    m_paint.setPen(QPen(soft, size * 0.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    m_paint.drawPath(engraved(text, at, size));
    m_paint.setPen(Qt::NoPen);
    letter(text, at, size, colour);
    glass(window);
}

void Scene::disc(QPointF centre, double radius, const QColor &colour)
{
    m_paint.setBrush(colour);
    m_paint.drawEllipse(centre, radius, radius);
}

void Scene::ring(QPointF centre, double radius, double thick, const QColor &colour)
{
    m_paint.setBrush(Qt::NoBrush);
    m_paint.setPen(QPen(colour, thick));
    m_paint.drawEllipse(centre, radius, radius);
    m_paint.setPen(Qt::NoPen);
}

void Scene::wire(QPointF from, QPointF to, const QColor &colour, double sag, double thick)
{
    QPainterPath path(from);
    path.cubicTo(from + QPointF((to.x() - from.x()) * 0.25, sag), to + QPointF((from.x() - to.x()) * 0.25, sag), to);
    m_paint.setBrush(Qt::NoBrush);
    m_paint.setPen(QPen(QColor(0, 0, 0, 60), thick + 2, Qt::SolidLine, Qt::RoundCap));
    m_paint.drawPath(path.translated(2, 4));
    m_paint.setPen(QPen(colour.darker(120), thick, Qt::SolidLine, Qt::RoundCap));
    m_paint.drawPath(path);
    m_paint.setPen(QPen(colour.lighter(125), thick * 0.35, Qt::SolidLine, Qt::RoundCap));
    m_paint.drawPath(path.translated(-thick * 0.12, -thick * 0.15));
    m_paint.setPen(Qt::NoPen);
}

void Scene::marks(const QRectF &area, int wear)
{
    for (int i = 0; i < wear * 3; ++i) {
        const QPointF at(m_dice.real(area.left(), area.right()), m_dice.real(area.top(), area.bottom()));
        const QPointF by(m_dice.real(12, 34 + 18 * wear), m_dice.real(-10, 10));
        m_paint.setPen(QPen(QColor(255, 255, 250, m_dice.whole(26, 60)), m_dice.real(1, 2.4), Qt::SolidLine, Qt::RoundCap));
        m_paint.drawLine(at, at + by);
    }
    m_paint.setPen(Qt::NoPen);
    for (int i = 0; i < wear * 50; ++i)
        disc({m_dice.real(area.left(), area.right()), m_dice.real(area.top(), area.bottom())}, m_dice.real(0.6, 2), QColor(235, 230, 210, m_dice.whole(15, 60)));
}

} // namespace ts
