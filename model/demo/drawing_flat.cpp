#include "model/demo/drawing_parts.h"

#include <cmath>

namespace ts {

namespace {

void turntable(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QRectF plinth(230, 150, 1140, 880);
    scene.shadow(plinth, 50, 130);
    scene.box(plinth, finish.wood, 18);
    scene.grained(plinth);
    const QRectF deck = plinth.adjusted(26, 26, -26, -26);
    scene.box(deck, finish.panel, 10);
    scene.brushed(deck);
    const QPointF hub(plinth.left() + 450, plinth.center().y());
    scene.disc(hub + QPointF(6, 12), 396, QColor(0, 0, 0, 70));
    scene.disc(hub, 392, QColor(0xa9, 0xa6, 0x9a));
    for (int row = 0; row < 3; ++row) // the strobe ring of the rim
        for (int i = 0; i < 150 + row * 12; ++i) {
            const double angle = 2 * M_PI * i / (150 + row * 12);
            scene.disc(hub + QPointF(std::cos(angle), std::sin(angle)) * (386 - row * 9), 2.6, QColor(0x3a, 0x3a, 0x36));
        }
    scene.disc(hub, 360, QColor(0x34, 0x36, 0x34));
    for (int i = 0; i < 15; ++i)
        scene.ring(hub, 120 + i * 16, 2, QColor(255, 255, 255, i % 4 == 0 ? 26 : 12));
    scene.disc(hub, 100, QColor(0x2c, 0x2e, 0x2c));
    scene.disc(hub, 9, QColor(0xdc, 0xd9, 0xcd));
    const QPointF pivot(plinth.right() - 150, plinth.top() + 180);
    scene.disc(pivot + QPointF(4, 8), 74, QColor(0, 0, 0, 70));
    scene.disc(pivot, 70, finish.panel.darker(125));
    scene.disc(pivot, 46, QColor(0xc9, 0xc6, 0xba));
    const QPointF head(plinth.right() - 220 + scene.dice().whole(0, 40), plinth.bottom() - 300);
    for (const double thick : {22.0, 14.0}) { // the tube and its light
        scene.paint().setPen(QPen(thick > 20 ? QColor(0x8a, 0x88, 0x7e) : QColor(0xdb, 0xd8, 0xcd), thick, Qt::SolidLine, Qt::RoundCap));
        scene.paint().drawLine(pivot - (head - pivot) * 0.22, head);
    }
    scene.paint().setPen(Qt::NoPen);
    scene.disc(pivot - (head - pivot) * 0.24, 46, QColor(0x3b, 0x3c, 0x39));
    scene.disc(pivot - (head - pivot) * 0.24, 30, QColor(0x5a, 0x5b, 0x56));
    scene.paint().save();
    scene.paint().translate(head);
    scene.paint().rotate(18);
    scene.box(QRectF(-26, -6, 52, 96), QColor(0x2f, 0x31, 0x2f), 6);
    scene.box(QRectF(-16, 54, 32, 34), QColor(0xa8, 0x50, 0x2a), 4);
    scene.paint().restore();
    scene.knob({deck.right() - 110, deck.bottom() - 80}, 42, finish.knob, scene.dice().real(-0.8, 0.8));
    scene.key(QRectF(deck.right() - 250, deck.bottom() - 104, 72, 52), finish.key, 6);
    scene.lamp({deck.right() - 270, deck.bottom() - 150}, 7, finish.lit);
    scene.letter(picture.maker.toUpper(), {deck.left() + 30, deck.bottom() - 46}, 20, finish.ink);
    scene.letterCentred(picture.makerModel.toUpper(), {deck.right() - 110, deck.bottom() - 26}, 13, finish.ink);
    scene.marks(plinth, picture.wear);
}

void pad(Scene &scene, QPointF centre, const Finish &finish, const QColor &shell)
{
    const QRectF body(centre.x() - 150, centre.y() - 72, 300, 144);
    scene.shadow(body, 22, 90);
    scene.box(body, shell, 40);
    scene.box(QRectF(centre.x() - 110, centre.y() - 14, 84, 28), QColor(0x34, 0x35, 0x33), 4);
    scene.box(QRectF(centre.x() - 82, centre.y() - 42, 28, 84), QColor(0x34, 0x35, 0x33), 4);
    scene.disc(centre + QPointF(54, 18), 22, QColor(0xa8, 0x50, 0x2a));
    scene.disc(centre + QPointF(104, -14), 22, finish.knob.darker(120));
}

void console(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QColor shell = picture.wear > 0 ? QColor(0xcb, 0xbe, 0x98) : QColor(0xc9, 0xc7, 0xbe);
    const QRectF body(410, 190, 780, 540);
    scene.wire({500, 700}, {360, 900}, QColor(60, 60, 56), 120, 12);
    scene.wire({1080, 700}, {1240, 900}, QColor(60, 60, 56), 120, 12);
    scene.shadow(body, 46, 120);
    scene.box(body, shell, 34);
    scene.box(body.adjusted(60, 60, -60, -150), shell.darker(108), 22);
    scene.inset(QRectF(body.left() + 210, body.top() + 130, 360, 74), QColor(0x2c, 0x2d, 0x2b), 10);
    scene.inset(QRectF(body.left() + 228, body.top() + 146, 324, 42), QColor(0x18, 0x19, 0x18), 6);
    for (int i = 0; i < 9; ++i)
        scene.inset(QRectF(body.left() + 110 + i * 64.0, body.top() + 262, 40, 70), shell.darker(132), 6);
    scene.key(QRectF(body.left() + 90, body.bottom() - 110, 120, 56), finish.dark ? finish.key : QColor(0x6f, 0x74, 0x6c), 10);
    scene.key(QRectF(body.right() - 210, body.bottom() - 110, 120, 56), QColor(0xa8, 0x50, 0x2a), 10);
    scene.lamp({body.left() + 250, body.bottom() - 82}, 8, finish.lit);
    scene.letterCentred(picture.maker.toUpper(), {body.center().x(), body.bottom() - 96}, 26, QColor(0x4a, 0x45, 0x3a));
    scene.letterCentred(picture.makerModel.toUpper(), {body.center().x(), body.bottom() - 52}, 15, QColor(0x4a, 0x45, 0x3a));
    pad(scene, {350, 960}, finish, shell);
    pad(scene, {1250, 960}, finish, shell);
    scene.marks(body, picture.wear);
}

void computer(Scene &scene, const DemoPicture &picture, const Finish &finish)
{
    const QColor shell(0xcf, 0xc6, 0xad);
    const QRectF body(210, 330, 1180, 560);
    scene.shadow(body, 50, 130);
    scene.box(body, shell, 24);
    scene.box(body.adjusted(26, 20, -26, -400), shell.darker(106), 14);
    scene.vents(QRectF(body.left() + 560, body.top() + 46, 560, 70), 22);
    scene.letter(picture.maker.toUpper(), {body.left() + 60, body.top() + 50}, 30, QColor(0x4a, 0x45, 0x3a));
    scene.letter(picture.makerModel.toUpper(), {body.left() + 60, body.top() + 104}, 17, QColor(0x4a, 0x45, 0x3a));
    const std::array rows{14, 14, 13, 12};
    const std::array starts{0.0, 24.0, 44.0, 66.0};
    for (size_t row = 0; row < rows.size(); ++row)
        for (int i = 0; i < rows[row]; ++i) {
            const bool edge = i == 0 || i == rows[row] - 1;
            const QRectF cap(body.left() + 56 + starts[row] + i * 77.0, body.top() + 178 + static_cast<double>(row) * 74, 66, 62);
            scene.key(cap, edge ? QColor(0x7d, 0x62, 0x4a) : QColor(0x4a, 0x43, 0x3a), 8);
            scene.box(cap.adjusted(8, 4, -8, -16), edge ? QColor(0x8c, 0x70, 0x55) : QColor(0x5b, 0x53, 0x47), 6);
        }
    scene.key(QRectF(body.left() + 300, body.top() + 476, 560, 56), QColor(0x4a, 0x43, 0x3a), 8);
    scene.lamp({body.right() - 70, body.top() + 146}, 8, finish.lit);
    scene.marks(body, picture.wear);
}

} // namespace

void drawFlat(Scene &scene, const DemoPicture &picture)
{
    const Finish finish = finishOf(picture);
    scene.onMat();
    if (picture.category == Category::Turntable)
        turntable(scene, picture, finish);
    else if (picture.category == Category::GameConsole)
        console(scene, picture, finish);
    else
        computer(scene, picture, finish);
}

} // namespace ts
