#include "model/demo/scene.h"

#include <QLinearGradient>
#include <QRadialGradient>

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

} // namespace ts
