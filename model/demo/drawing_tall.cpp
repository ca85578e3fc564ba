// Fronts that are no low wide box, and what all fronts share.
#include "model/demo/drawing_parts.h"

#include <cmath>

namespace ts {

QRectF drawCabinet(Scene &scene, const Finish &finish, double width, double height, bool sleeve)
{
    const QRectF body((Scene::width - width) / 2, 860 - height, width, height);
    for (const double x : {body.left() + 60, body.right() - 120})
        scene.box(QRectF(x, body.bottom() - 4, 60, 24), QColor(40, 40, 38), 6);
    scene.shadow(QRectF(body.left(), body.bottom() - 10, body.width(), 36), 40, 130);
    scene.shadow(body, 18, 50);
    if (sleeve) {
        const QRectF wood = body.adjusted(-26, -24, 26, 4);
        scene.box(wood, finish.wood, 10);
        scene.grained(wood);
    } else {
        // the lid seen a little from above
        scene.box(QRectF(body.left() + 10, body.top() - 26, body.width() - 20, 40), finish.panel.darker(finish.dark ? 118 : 128), 6);
    }
    scene.box(body, finish.panel, 8);
    scene.brushed(body);
    return body;
}

void drawBadge(Scene &scene, const DemoPicture &picture, const Finish &finish, QPointF at, double size)
{
    scene.letter(picture.maker.toUpper(), at, size, finish.ink);
    scene.letter(picture.makerModel.toUpper(), at + QPointF(0, size * 1.7), size * 0.62, finish.ink);
}

void drawReelRecorder(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QRectF body(380, 130, 840, 810);
    scene.shadow(QRectF(body.left(), body.bottom() - 10, body.width(), 40), 40, 130);
    scene.box(body.adjusted(-24, -20, 24, 12), finish.wood, 14);
    scene.grained(body.adjusted(-24, -20, 24, 12));
    scene.box(body, finish.panel, 8);
    scene.brushed(body);
    for (const int side : {0, 1}) {
        const QPointF hub(body.left() + (side == 0 ? 220 : 620), body.top() + 230);
        scene.disc(hub + QPointF(5, 9), 188, QColor(0, 0, 0, 60));
        scene.disc(hub, 186, QColor(0xcf, 0xcb, 0xbf));
        scene.disc(hub, side == 0 ? 158 : 112, QColor(0x54, 0x3c, 0x2c));
        scene.ring(hub, 186, 4, QColor(0x9e, 0x9a, 0x8e));
        const double turn = scene.dice().real(0, 2);
        for (int i = 0; i < 3; ++i) { // the three windows of a spool
            scene.paint().save();
            scene.paint().translate(hub);
            scene.paint().rotate(turn * 57 + 120 * i);
            scene.paint().setBrush(QColor(255, 255, 250, 46));
            scene.paint().drawPie(QRectF(-150, -150, 300, 300), 20 * 16, 62 * 16);
            scene.paint().restore();
        }
        scene.disc(hub, 58, QColor(0xdf, 0xdb, 0xcf));
        scene.disc(hub, 16, QColor(0x48, 0x46, 0x40));
        for (int i = 0; i < 3; ++i)
            scene.disc(hub + QPointF(std::cos(turn + i * 2.094), std::sin(turn + i * 2.094)) * 34, 9, QColor(0x48, 0x46, 0x40));
    }
    scene.paint().setPen(QPen(QColor(0x54, 0x3c, 0x2c), 5));
    scene.paint().drawLine(QPointF(body.left() + 66, body.top() + 330), QPointF(body.left() + 300, body.top() + 508));
    scene.paint().drawLine(QPointF(body.left() + 300, body.top() + 508), QPointF(body.left() + 560, body.top() + 508));
    scene.paint().drawLine(QPointF(body.left() + 560, body.top() + 508), QPointF(body.left() + 728, body.top() + 258));
    scene.paint().setPen(Qt::NoPen);
    scene.box(QRectF(body.left() + 310, body.top() + 462, 220, 96), finish.panel.darker(112), 10);
    scene.brushed(QRectF(body.left() + 310, body.top() + 462, 220, 96));
    scene.disc({body.left() + 566, body.top() + 516}, 24, QColor(45, 43, 40));
    drawBadge(scene, picture, finish, {body.left() + 40, body.bottom() - 200});
    scene.needle(QRectF(body.left() + 310, body.bottom() - 210, 160, 96), 0.3);
    scene.needle(QRectF(body.left() + 486, body.bottom() - 210, 160, 96), 0.34);
    for (int i = 0; i < 6; ++i)
        scene.key(QRectF(body.left() + 40 + i * 104, body.bottom() - 80, 92, 44), finish.key, 5);
    scene.knob({body.right() - 90, body.bottom() - 150}, 46, finish.knob, -0.5);
    scene.knob({body.right() - 90, body.bottom() - 54}, 34, finish.knob, 0.4);
    scene.marks(body, picture.wear);
}

void drawLoudspeakers(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    for (const double left : {330.0, 890.0}) {
        const QRectF body(left, 130, 400, 800);
        scene.shadow(QRectF(body.left(), body.bottom() - 10, body.width(), 36), 44, 140);
        scene.box(body, finish.wood, 8);
        scene.grained(body);
        scene.box(body.adjusted(22, 22, -22, -22), QColor(0x2f, 0x31, 0x2f), 6);
        const QPointF low(body.center().x(), body.top() + 540);
        const QPointF high(body.center().x(), body.top() + 190);
        scene.disc(low, 158, QColor(0x1d, 0x1e, 0x1d));
        scene.ring(low, 150, 22, picture.wear > 1 ? QColor(0x5d, 0x55, 0x49) : QColor(0x3f, 0x40, 0x3d));
        scene.disc(low, 136, QColor(0x55, 0x57, 0x51));
        for (int i = 0; i < 7; ++i)
            scene.ring(low, 60 + 11 * i, 1.2, QColor(0, 0, 0, 40));
        scene.disc(low, 50, QColor(0x6d, 0x6f, 0x67));
        scene.disc(low - QPointF(12, 14), 22, QColor(255, 255, 255, 24));
        scene.disc(high, 78, QColor(0x24, 0x26, 0x25));
        scene.disc(high, 34, QColor(0x77, 0x76, 0x6c));
        scene.disc(high - QPointF(8, 9), 13, QColor(255, 255, 255, 34));
        for (int i = 0; i < 4; ++i) {
            const double angle = M_PI / 4 + i * M_PI / 2;
            scene.screw(low + QPointF(std::cos(angle), std::sin(angle)) * 172, 8);
            scene.screw(high + QPointF(std::cos(angle), std::sin(angle)) * 88, 7);
        }
        if (picture.wear > 1) // crumbs of the surround
            for (int i = 0; i < 26; ++i) {
                const double angle = scene.dice().real(0, 2 * M_PI);
                scene.disc(low + QPointF(std::cos(angle), std::sin(angle)) * scene.dice().real(140, 164), scene.dice().real(3, 8), QColor(0x26, 0x24, 0x20));
            }
        scene.letterCentred(picture.maker.toUpper(), {body.center().x(), body.bottom() - 66}, 18, QColor(0xc9, 0xc2, 0xae));
        scene.marks(body, picture.wear);
    }
}

void drawRadio(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QRectF body(400, 360, 800, 560);
    scene.paint().setBrush(Qt::NoBrush);
    scene.paint().setPen(QPen(finish.wood.darker(120), 30, Qt::SolidLine, Qt::RoundCap));
    scene.paint().drawArc(QRectF(620, 270, 360, 200), 20 * 16, 140 * 16);
    scene.paint().setPen(Qt::NoPen);
    scene.shadow(QRectF(body.left(), body.bottom() - 10, body.width(), 36), 44, 140);
    scene.box(body, finish.wood.lighter(120), 26);
    scene.grained(body);
    const QRectF face = body.adjusted(30, 30, -30, -30);
    scene.box(face, QColor(0xdc, 0xd3, 0xbb), 16);
    for (int row = 0; row < 15; ++row)
        for (int i = 0; i < 17; ++i)
            scene.disc({face.left() + 40 + i * 23.0, face.top() + 46 + row * 23.0}, 6, QColor(0x5d, 0x52, 0x40));
    const QPointF dial(face.right() - 160, face.top() + 175);
    scene.disc(dial, 128, QColor(0x30, 0x2f, 0x2a));
    for (int i = 0; i < 40; ++i) {
        const double angle = M_PI * (0.75 + 1.5 * i / 39);
        const QPointF way(std::cos(angle), std::sin(angle));
        scene.paint().setPen(QPen(QColor(0xe0, 0xcf, 0x9f), i % 5 == 0 ? 4 : 1.6));
        scene.paint().drawLine(dial + way * (i % 5 == 0 ? 92.0 : 102.0), dial + way * 114);
    }
    scene.paint().setPen(Qt::NoPen);
    scene.knob(dial, 58, QColor(0xb9, 0xad, 0x8e), scene.dice().real(-1.5, 1.5));
    scene.letter(picture.maker.toUpper(), {face.right() - 268, face.bottom() - 128}, 26, QColor(0x5b, 0x40, 0x28));
    scene.letter(picture.makerModel.toUpper(), {face.right() - 268, face.bottom() - 82}, 15, QColor(0x5b, 0x40, 0x28));
    for (int i = 0; i < 3; ++i)
        scene.key(QRectF(face.left() + 40 + i * 86, face.bottom() - 84, 74, 44), QColor(0xb9, 0xad, 0x8e), 6);
    scene.knob({face.left() + 360, face.bottom() - 62}, 34, QColor(0xb9, 0xad, 0x8e), -0.8);
    scene.marks(body, picture.wear);
}

void drawTestGear(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const bool scope = picture.name.contains(QStringLiteral("scope"));
    const QRectF body = drawCabinet(scene, finish, 1080, scope ? 560 : 460);
    drawBadge(scene, picture, finish, body.topLeft() + QPointF(44, 30), 24);
    if (scope) {
        const QRectF screen(body.left() + 50, body.top() + 110, 430, 350);
        scene.inset(screen.adjusted(-20, -20, 20, 20), QColor(0x22, 0x24, 0x22), 18);
        scene.inset(screen, QColor(0x2c, 0x3d, 0x36), 12);
        scene.paint().setPen(QPen(QColor(0x9d, 0xb8, 0xa4, 70), 1.4));
        for (int i = 0; i <= 10; ++i)
            scene.paint().drawLine(QPointF(screen.left() + i * 43, screen.top()), QPointF(screen.left() + i * 43, screen.bottom()));
        for (int i = 0; i <= 8; ++i)
            scene.paint().drawLine(QPointF(screen.left(), screen.top() + i * 43.75), QPointF(screen.right(), screen.top() + i * 43.75));
        scene.paint().setPen(Qt::NoPen);
        scene.glass(screen);
        for (int row = 0; row < 3; ++row)
            for (int i = 0; i < 4; ++i)
                scene.knob({body.left() + 590 + i * 126.0, body.top() + 130 + row * 134.0}, row == 1 ? 46 : 34, finish.knob, scene.dice().real(-2, 2));
        for (int i = 0; i < 3; ++i)
            scene.socket({body.left() + 610 + i * 180.0, body.bottom() - 60}, 20, QColor(0xb9, 0xb5, 0xa6));
    } else {
        const QPointF dial(body.left() + 420, body.center().y() + 20);
        scene.disc(dial, 168, finish.panel.darker(120));
        scene.ring(dial, 166, 3, finish.ink);
        for (int i = 0; i < 60; ++i) {
            const double angle = 2 * M_PI * i / 60;
            const QPointF way(std::cos(angle), std::sin(angle));
            scene.paint().setPen(QPen(finish.ink, i % 5 == 0 ? 4 : 1.6));
            scene.paint().drawLine(dial + way * (i % 5 == 0 ? 136.0 : 148.0), dial + way * 158);
        }
        scene.paint().setPen(Qt::NoPen);
        scene.knob(dial, 78, finish.knob, 0.7);
        scene.needle(QRectF(body.right() - 380, body.top() + 70, 310, 170), 0.2);
        for (int i = 0; i < 3; ++i)
            scene.knob({body.right() - 330 + i * 120.0, body.bottom() - 96}, 40, finish.knob, scene.dice().real(-1.4, 1.4));
        scene.socket({body.left() + 110, body.bottom() - 90}, 24, QColor(0xb9, 0xb5, 0xa6));
    }
    scene.marks(body, picture.wear);
}

} // namespace ts
