#include "model/demo/scene.h"

#include "model/demo/engraving.h"

#include <QLinearGradient>
#include <QRadialGradient>

#include <cmath>

namespace ts {

Scene::Scene(quint32 seed) : m_image(width, height, QImage::Format_RGB32), m_dice(seed)
{
    m_image.fill(QColor(0x6d, 0x72, 0x6a));
    m_paint.begin(&m_image);
    m_paint.setRenderHint(QPainter::Antialiasing);
    m_paint.setPen(Qt::NoPen);
}

QImage Scene::finish()
{
    QRadialGradient light(width * 0.42, height * 0.36, width * 0.8);
    light.setColorAt(0, QColor(255, 250, 235, 34));
    light.setColorAt(0.45, QColor(255, 250, 235, 0));
    light.setColorAt(1, QColor(20, 24, 22, 96));
    m_paint.fillRect(m_image.rect(), light);
    m_paint.end();
    // A little grain, as a sensor in lamplight has it; it also hides the steps in the long gradients.
    for (int y = 0; y < height; ++y) {
        auto *line = reinterpret_cast<QRgb *>(m_image.scanLine(y));
        for (int x = 0; x < width; ++x) {
            const quint32 throwOfDice = m_dice.next() >> 29;
            const int by = throwOfDice == 0 ? 2 : throwOfDice == 1 ? -2 : 0;
            line[x] = qRgb(qBound(0, qRed(line[x]) + by, 255), qBound(0, qGreen(line[x]) + by, 255), qBound(0, qBlue(line[x]) + by, 255));
        }
    }
    return m_image;
}

void Scene::onBench()
{
    QLinearGradient wall(0, 0, 0, 770);
    wall.setColorAt(0, QColor(0x86, 0x8b, 0x82));
    wall.setColorAt(1, QColor(0x9b, 0x9d, 0x92));
    m_paint.fillRect(QRectF(0, 0, width, 770), wall);
    QLinearGradient top(0, 760, 0, height);
    top.setColorAt(0, QColor(0x8d, 0x80, 0x6b));
    top.setColorAt(0.06, QColor(0xa8, 0x9a, 0x82));
    top.setColorAt(1, QColor(0x87, 0x7b, 0x68));
    m_paint.fillRect(QRectF(0, 760, width, height - 760), top);
    m_paint.setPen(QPen(QColor(70, 60, 45, 16), 2));
    for (int i = 0; i < 46; ++i) { // the grain of the bench top
        const double y = m_dice.real(784, height);
        const double x = m_dice.real(-200, width);
        m_paint.drawLine(QPointF(x, y), QPointF(x + m_dice.real(150, 700), y + m_dice.real(-2, 2)));
    }
    m_paint.setPen(Qt::NoPen);
}

void Scene::onMat(const QColor &mat)
{
    QLinearGradient ground(0, 0, width, height);
    ground.setColorAt(0, mat.lighter(116));
    ground.setColorAt(1, mat.darker(122));
    m_paint.fillRect(m_image.rect(), ground);
    m_paint.setPen(QPen(QColor(255, 255, 255, 13), 2));
    for (int x = 80; x < width; x += 120)
        m_paint.drawLine(x, 0, x, height);
    for (int y = 60; y < height; y += 120)
        m_paint.drawLine(0, y, width, y);
    m_paint.setPen(Qt::NoPen);
}

void Scene::shadow(const QRectF &under, double soft, double dark)
{
    constexpr int layers = 14;
    for (int i = layers; i > 0; --i) {
        const double grow = soft * i / layers;
        m_paint.setBrush(QColor(18, 20, 16, static_cast<int>(dark / layers)));
        m_paint.drawRoundedRect(under.adjusted(-grow, -grow * 0.4, grow, grow).translated(8, 12), 18 + grow, 18 + grow);
    }
}

void Scene::box(const QRectF &body, const QColor &colour, double radius)
{
    QLinearGradient face(body.topLeft(), body.bottomLeft());
    face.setColorAt(0, colour.lighter(112));
    face.setColorAt(0.5, colour);
    face.setColorAt(1, colour.darker(112));
    m_paint.setBrush(face);
    m_paint.setPen(QPen(colour.darker(170), 2));
    m_paint.drawRoundedRect(body, radius, radius);
    m_paint.setPen(QPen(QColor(255, 255, 255, 70), 2));
    m_paint.drawLine(body.topLeft() + QPointF(radius, 2), body.topRight() + QPointF(-radius, 2));
    m_paint.setPen(Qt::NoPen);
}

void Scene::brushed(const QRectF &body)
{
    for (double y = body.top() + 3; y < body.bottom() - 3; y += 2) {
        const int strength = m_dice.whole(0, 17);
        m_paint.setPen(QPen(m_dice.whole(0, 1) != 0 ? QColor(255, 255, 255, strength) : QColor(0, 0, 0, strength), 1));
        m_paint.drawLine(QPointF(body.left() + 3, y), QPointF(body.right() - 3, y));
    }
    m_paint.setPen(Qt::NoPen);
}

void Scene::grained(const QRectF &body)
{
    m_paint.save();
    m_paint.setClipRect(body);
    const bool upright = body.height() > body.width();
    for (int i = 0; i < 60; ++i) {
        QPainterPath line;
        const double across = m_dice.real(0, 1);
        const double bend = m_dice.real(-18, 18);
        m_paint.setPen(QPen(QColor(40, 22, 8, m_dice.whole(10, 38)), m_dice.real(1, 4)));
        m_paint.setBrush(Qt::NoBrush);
        if (upright) {
            const double x = body.left() + across * body.width();
            line.moveTo(x, body.top());
            line.cubicTo(x + bend, body.top() + body.height() / 3, x - bend, body.top() + body.height() * 2 / 3, x + bend / 2, body.bottom());
        } else {
            const double y = body.top() + across * body.height();
            line.moveTo(body.left(), y);
            line.cubicTo(body.left() + body.width() / 3, y + bend / 3, body.left() + body.width() * 2 / 3, y - bend / 3, body.right(), y + bend / 4);
        }
        m_paint.drawPath(line);
    }
    m_paint.restore();
}

void Scene::inset(const QRectF &hole, const QColor &colour, double radius)
{
    m_paint.setBrush(QColor(255, 255, 255, 60));
    m_paint.drawRoundedRect(hole.adjusted(-1, -1, 2, 3), radius, radius);
    QLinearGradient depth(hole.topLeft(), hole.bottomLeft());
    depth.setColorAt(0, colour.darker(150));
    depth.setColorAt(0.25, colour);
    depth.setColorAt(1, colour.lighter(108));
    m_paint.setBrush(depth);
    m_paint.drawRoundedRect(hole, radius, radius);
}

void Scene::glass(const QRectF &pane)
{
    m_paint.save();
    m_paint.setClipRect(pane);
    QPolygonF shine;
    shine << pane.topLeft() << pane.topLeft() + QPointF(pane.width() * 0.42, 0) << pane.bottomLeft() + QPointF(pane.width() * 0.2, 0) << pane.bottomLeft();
    m_paint.setBrush(QColor(255, 255, 255, 20));
    m_paint.drawPolygon(shine);
    m_paint.restore();
}

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
