// Details of a circuit board, close up.
#include "model/demo/drawing_parts.h"

#include <QRadialGradient>

#include <cmath>

namespace ts {

void drawCapacitor(Scene &scene, int wear)
{
    drawBoard(scene, QRectF(60, 60, 1480, 1080), 60);
    for (const auto &[at, bad] : {std::pair{QPointF(700, 560), wear > 1}, std::pair{QPointF(1040, 470), false}, std::pair{QPointF(1010, 790), false}}) {
        if (bad) // what ran out of it
            for (int i = 0; i < 90; ++i)
                scene.disc(at + QPointF(scene.dice().real(-220, 220), scene.dice().real(40, 240)), scene.dice().real(10, 42), QColor(0x6e, 0x4a, 0x26, 26));
        drawCan(scene, at, bad ? 168 : 112, QColor(0x3a, 0x52, 0x64), bad);
    }
    scene.letter(QStringLiteral("C1"), {470, 380}, 40, QColor(0xe6, 0xe3, 0xd4));
}

void drawJoint(Scene &scene, int wear)
{
    scene.paint().fillRect(QRectF(0, 0, Scene::width, Scene::height), QColor(0x59, 0x68, 0x50));
    scene.paint().setPen(QPen(QColor(0x74, 0x84, 0x66), 90, Qt::SolidLine, Qt::RoundCap));
    scene.paint().drawLine(QPointF(-40, 300), QPointF(520, 300));
    scene.paint().drawLine(QPointF(520, 300), QPointF(800, 600));
    scene.paint().drawLine(QPointF(1240, 560), QPointF(1700, 560));
    scene.paint().drawLine(QPointF(330, 940), QPointF(1000, 940));
    scene.paint().setPen(Qt::NoPen);
    const auto pad = [&scene](QPointF at, double radius, bool cracked) {
        scene.disc(at, radius * 1.35, QColor(0x74, 0x84, 0x66));
        QRadialGradient solder(at - QPointF(radius * 0.35, radius * 0.4), radius * 1.6);
        solder.setColorAt(0, cracked ? QColor(0xc0, 0xbd, 0xb0) : QColor(0xf0, 0xee, 0xe6));
        solder.setColorAt(0.5, QColor(0xa3, 0xa2, 0x98));
        solder.setColorAt(1, QColor(0x66, 0x67, 0x60));
        scene.paint().setBrush(solder);
        scene.paint().drawEllipse(at, radius, radius);
        if (cracked) {
            QPainterPath crack;
            for (int i = 0; i <= 60; ++i) {
                const double angle = 2 * M_PI * i / 60;
                const double r = radius * (0.52 + 0.03 * std::sin(i * 2.3));
                const QPointF on = at + QPointF(std::cos(angle), std::sin(angle)) * r;
                if (i == 0)
                    crack.moveTo(on);
                else
                    crack.lineTo(on);
            }
            scene.paint().setBrush(Qt::NoBrush);
            scene.paint().setPen(QPen(QColor(28, 28, 24), 9));
            scene.paint().drawPath(crack);
            scene.paint().setPen(Qt::NoPen);
        }
        scene.disc(at, radius * 0.3, QColor(0xb9, 0xb4, 0xa0));
        scene.disc(at - QPointF(radius * 0.1, radius * 0.1), radius * 0.14, QColor(0xe9, 0xe4, 0xd2));
    };
    pad({800, 600}, 210, wear > 1);
    pad({1240, 560}, 130, false);
    pad({520, 300}, 130, false);
    pad({330, 940}, 130, false);
    pad({1000, 940}, 130, false);
}

void drawBurntBoard(Scene &scene, int wear)
{
    drawBoard(scene, QRectF(60, 60, 1480, 1080), 70);
    for (int i = 0; i < wear * 60; ++i) {
        const double along = scene.dice().real(0, 1);
        scene.disc(QPointF(480 + along * 620, 520 + std::sin(along * 7) * 60 + scene.dice().real(-46, 46)), scene.dice().real(12, 64), QColor(0x2a, 0x1b, 0x10, 22));
    }
    scene.paint().setBrush(Qt::NoBrush);
    scene.paint().setPen(QPen(QColor(0x14, 0x0e, 0x0a), 12, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    QPainterPath track(QPointF(500, 520));
    for (int i = 1; i < 12; ++i)
        track.lineTo(500 + i * 52, 520 + std::sin(i * 0.6) * 60 + scene.dice().real(-22, 22));
    scene.paint().drawPath(track);
    scene.paint().setPen(Qt::NoPen);
}

void drawRelay(Scene &scene, int wear)
{
    drawBoard(scene, QRectF(60, 60, 1480, 1080), 46);
    const QRectF body(440, 320, 720, 520);
    scene.shadow(body, 30, 120);
    scene.box(body, QColor(0xd8, 0xd2, 0xc0), 10);
    const QRectF coil(480, 380, 330, 400);
    scene.box(coil, QColor(0xb2, 0x6c, 0x3c), 14);
    for (double y = coil.top() + 8; y < coil.bottom() - 8; y += 9)
        scene.paint().fillRect(QRectF(coil.left() + 6, y, coil.width() - 12, 3), QColor(60, 25, 8, 80));
    for (int i = 0; i < 3; ++i) {
        const double y = 420 + i * 140;
        scene.box(QRectF(850, y, 260, 26), QColor(0xc6, 0xb2, 0x76), 6);
        scene.box(QRectF(850, y + 52, 260, 26), QColor(0xc6, 0xb2, 0x76), 6);
        scene.disc({1060, y + 30}, 26, QColor(0xd8, 0xd4, 0xc4));
        if (i == 0 && wear > 0)
            for (int spot = 0; spot < 14; ++spot)
                scene.disc({1060 + scene.dice().real(-18, 18), y + 30 + scene.dice().real(-18, 18)}, scene.dice().real(3, 9), QColor(0x2c, 0x26, 0x20));
    }
}

} // namespace ts
