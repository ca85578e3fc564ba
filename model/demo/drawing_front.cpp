#include "model/demo/drawing_parts.h"

#include <cmath>

namespace ts {

namespace {

void cassetteDeck(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QRectF body = drawCabinet(scene, finish, 1240, 430);
    drawBadge(scene, picture, finish, body.topLeft() + QPointF(40, 30));
    const QRectF door(body.left() + 150, body.top() + 100, 400, 236);
    scene.inset(door.adjusted(-14, -14, 14, 14), finish.panel.darker(135), 10);
    scene.inset(door, QColor(0x2a, 0x2d, 0x2b), 8);
    const QRectF shell = door.adjusted(40, 36, -40, -36);
    scene.box(shell, QColor(0x8c, 0x8b, 0x80), 8);
    scene.box(shell.adjusted(20, 16, -20, -70), QColor(0xdd, 0xd6, 0xc2), 4);
    for (const double x : {0.32, 0.68}) {
        const QPointF hub(shell.left() + shell.width() * x, shell.top() + shell.height() * 0.66);
        scene.disc(hub, 38, QColor(0x3b, 0x2f, 0x28));
        scene.disc(hub, 22, QColor(0xd8, 0xd3, 0xc5));
        scene.disc(hub, 10, QColor(0x2e, 0x2c, 0x28));
    }
    scene.glass(door);
    for (int i = 0; i < 6; ++i)
        scene.key(QRectF(door.left() - 14 + i * 73, body.bottom() - 72, 66, 40), finish.key, 4);
    const double right = body.left() + 640;
    scene.needle(QRectF(right, body.top() + 60, 200, 110), 0.42 + 0.05 * scene.dice().whole(0, 4));
    scene.needle(QRectF(right + 224, body.top() + 60, 200, 110), 0.4 + 0.05 * scene.dice().whole(0, 4));
    scene.figures(QStringLiteral("%1").arg(scene.dice().whole(12, 998), 3, 10, QLatin1Char('0')), QRectF(right + 450, body.top() + 72, 112, 56), finish.lit);
    for (int i = 0; i < 5; ++i) {
        scene.key(QRectF(right + i * 86, body.top() + 216, 64, 30), finish.key, 4);
        scene.lamp({right + 32 + i * 86, body.top() + 204}, 4, i == 1 ? finish.lit : QColor(90, 88, 80));
    }
    scene.knob({right + 44, body.bottom() - 90}, 44, finish.knob, -0.6);
    scene.knob({right + 164, body.bottom() - 90}, 44, finish.knob, 0.2);
    scene.knob({right + 500, body.bottom() - 110}, 62, finish.knob, 0.5);
    scene.key(QRectF(body.left() + 44, body.bottom() - 100, 62, 62), finish.key, 6);
    scene.marks(body, picture.wear);
}

void discPlayer(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QRectF body = drawCabinet(scene, finish, 1240, 270);
    drawBadge(scene, picture, finish, body.topLeft() + QPointF(40, 28));
    const QRectF tray(body.left() + 360, body.top() + 36, 500, 62);
    scene.inset(tray.adjusted(-5, -5, 5, 5), QColor(30, 31, 30), 5);
    scene.box(tray, finish.panel.darker(104), 4);
    scene.brushed(tray);
    scene.figures(QStringLiteral("%1  %2:%3").arg(scene.dice().whole(1, 12), 2, 10, QLatin1Char('0')).arg(scene.dice().whole(0, 59), 2, 10, QLatin1Char('0'))
                      .arg(scene.dice().whole(0, 59), 2, 10, QLatin1Char('0')),
                  QRectF(body.left() + 360, body.top() + 130, 500, 96), finish.lit);
    for (int row = 0; row < 2; ++row)
        for (int i = 0; i < 3; ++i)
            scene.key(QRectF(body.left() + 910 + i * 98, body.top() + 60 + row * 84, 84, 46), finish.key, 5);
    scene.key(QRectF(body.left() + 44, body.bottom() - 96, 92, 46), finish.key, 5);
    scene.lamp({body.left() + 168, body.bottom() - 72}, 6, finish.lit);
    scene.socket({body.left() + 250, body.bottom() - 72}, 17, QColor(60, 58, 52));
    scene.marks(body, picture.wear);
}

void dialScale(Scene &scene, const QRectF &glass, const Finish &finish, double pointer)
{
    scene.inset(glass, QColor(0x22, 0x2b, 0x2a), 6);
    for (int i = 0; i <= 40; ++i) {
        const double x = glass.left() + 40 + (glass.width() - 80) * i / 40;
        scene.paint().setPen(QPen(finish.lit, i % 5 == 0 ? 3 : 1.4));
        scene.paint().drawLine(QPointF(x, glass.center().y()), QPointF(x, glass.center().y() - (i % 5 == 0 ? 24 : 12)));
        scene.paint().setPen(Qt::NoPen);
        if (i % 5 == 0)
            scene.letterCentred(QString::number(88 + i / 2), {x, glass.center().y() + 26}, 15, finish.lit);
    }
    const double x = glass.left() + 40 + (glass.width() - 80) * pointer;
    scene.paint().fillRect(QRectF(x - 2, glass.top() + 8, 4, glass.height() - 16), QColor(0xe0, 0x7a, 0x4a));
    scene.glass(glass);
}

void amplifier(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const bool receiver = picture.name.contains(QStringLiteral("receiver"));
    const QRectF body = drawCabinet(scene, finish, 1280, receiver ? 440 : 390, true);
    if (receiver)
        dialScale(scene, QRectF(body.left() + 60, body.top() + 36, body.width() - 120, 140), finish, scene.dice().real(0.2, 0.8));
    const double top = body.top() + (receiver ? 206 : 40);
    drawBadge(scene, picture, finish, {body.left() + 60, top});
    if (!receiver) {
        scene.needle(QRectF(body.left() + 420, top, 250, 130), 0.12);
        scene.needle(QRectF(body.left() + 690, top, 250, 130), 0.14);
    }
    scene.knob({body.right() - 150, receiver ? body.bottom() - 110 : body.center().y()}, receiver ? 82 : 104, finish.knob, -1.4);
    static const std::array under{"BASS", "TREBLE", "BALANCE", "SOURCE"};
    for (int i = 0; i < 4; ++i) {
        const QPointF at(body.left() + 110 + i * 130, body.bottom() - 88);
        scene.knob(at, 40, finish.knob, scene.dice().real(-0.6, 0.6));
        scene.letterCentred(QString::fromLatin1(under[static_cast<size_t>(i)]), at + QPointF(0, 60), 12, finish.ink);
    }
    for (int i = 0; i < 5; ++i) {
        scene.key(QRectF(body.left() + 640 + i * 72, body.bottom() - 106, 56, 32), finish.key, 4);
        scene.lamp({body.left() + 668 + i * 72, body.bottom() - 122}, 4, i == scene.dice().whole(0, 4) ? finish.lit : QColor(80, 78, 72));
    }
    scene.marks(body, picture.wear);
}

void tuner(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QRectF body = drawCabinet(scene, finish, 1240, 320);
    dialScale(scene, QRectF(body.left() + 320, body.top() + 40, 700, 150), finish, scene.dice().real(0.2, 0.8));
    drawBadge(scene, picture, finish, body.topLeft() + QPointF(44, 40));
    scene.needle(QRectF(body.left() + 44, body.top() + 120, 116, 72), 0.7);
    scene.needle(QRectF(body.left() + 176, body.top() + 120, 116, 72), 0.5);
    scene.knob({body.right() - 116, body.center().y()}, 84, finish.knob, 0.9);
    for (int i = 0; i < 7; ++i) {
        scene.key(QRectF(body.left() + 320 + i * 100, body.bottom() - 84, 82, 34), finish.key, 4);
        scene.lamp({body.left() + 361 + i * 100, body.bottom() - 100}, 4, i == 2 ? finish.lit : QColor(84, 82, 76));
    }
    scene.key(QRectF(body.left() + 44, body.bottom() - 84, 92, 34), finish.key, 4);
    scene.marks(body, picture.wear);
}

} // namespace

void drawFront(Scene &scene, const DemoPicture &picture)
{
    const Finish finish = finishOf(picture);
    scene.onBench();
    switch (picture.category) {
    case Category::CassetteDeck:
        return cassetteDeck(scene, picture, finish);
    case Category::DiscPlayer:
        return discPlayer(scene, picture, finish);
    case Category::Tuner:
        return tuner(scene, picture, finish);
    case Category::ReelRecorder:
        return drawReelRecorder(scene, picture, finish);
    case Category::Loudspeaker:
        return drawLoudspeakers(scene, picture, finish);
    case Category::Radio:
        return drawRadio(scene, picture, finish);
    case Category::TestGear:
        return drawTestGear(scene, picture, finish);
    default:
        return amplifier(scene, picture, finish);
    }
}

} // namespace ts
