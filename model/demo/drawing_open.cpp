#include "model/demo/drawing_parts.h"

#include <cmath>

namespace ts {

void drawCan(Scene &scene, QPointF centre, double radius, const QColor &sleeve, bool vented)
{
    scene.disc(centre + QPointF(radius * 0.16, radius * 0.26), radius * 1.06, QColor(0, 0, 0, 80));
    scene.disc(centre, radius, sleeve);
    scene.disc(centre, radius * 0.84, QColor(0xc4, 0xc2, 0xb8));
    scene.paint().setPen(QPen(QColor(90, 88, 82), qMax(1.4, radius * 0.06)));
    scene.paint().drawLine(centre - QPointF(radius * 0.6, 0), centre + QPointF(radius * 0.6, 0));
    scene.paint().drawLine(centre - QPointF(0, radius * 0.6), centre + QPointF(0, radius * 0.6));
    scene.paint().setPen(Qt::NoPen);
    if (vented)
        scene.disc(centre, radius * 0.5, QColor(0x6a, 0x4a, 0x2c, 150));
    scene.disc(centre - QPointF(radius * 0.3, radius * 0.3), radius * 0.2, QColor(255, 255, 255, 60));
}

void drawBoard(Scene &scene, const QRectF &area, int density)
{
    scene.shadow(area, 16, 80);
    scene.box(area, QColor(0x5d, 0x6b, 0x55), 6);
    Dice &dice = scene.dice();
    scene.paint().save();
    scene.paint().setClipRect(area.adjusted(6, 6, -6, -6));
    scene.paint().setBrush(Qt::NoBrush);
    for (int i = 0; i < density * 3; ++i) { // tracks
        QPointF at(dice.real(area.left(), area.right()), dice.real(area.top(), area.bottom()));
        QPainterPath track(at);
        for (int leg = 0; leg < 3; ++leg) {
            at += leg % 2 == 0 ? QPointF(dice.real(-160, 160), 0) : QPointF(0, dice.real(-110, 110));
            track.lineTo(at);
        }
        scene.paint().setPen(QPen(QColor(0x7c, 0x8a, 0x6c, 150), 4));
        scene.paint().drawPath(track);
    }
    scene.paint().restore();
    scene.paint().setPen(Qt::NoPen);
    for (int i = 0; i < density; ++i) {
        const QPointF at(dice.real(area.left() + 50, area.right() - 70), dice.real(area.top() + 40, area.bottom() - 50));
        switch (dice.whole(0, 5)) {
        case 0: // an integrated circuit
            for (int pin = 0; pin < 7; ++pin) {
                scene.box(QRectF(at.x() + 4 + pin * 13.0, at.y() - 6, 6, 8), QColor(0xb9, 0xb6, 0xaa), 1);
                scene.box(QRectF(at.x() + 4 + pin * 13.0, at.y() + 30, 6, 8), QColor(0xb9, 0xb6, 0xaa), 1);
            }
            scene.box(QRectF(at, QSizeF(94, 32)), QColor(0x35, 0x36, 0x34), 3);
            scene.disc(at + QPointF(10, 16), 4, QColor(0x55, 0x56, 0x52));
            break;
        case 1:
        case 2: // a resistor
            scene.paint().setPen(QPen(QColor(0xbd, 0xba, 0xae), 3));
            scene.paint().drawLine(at - QPointF(22, 0), at + QPointF(52, 0));
            scene.paint().setPen(Qt::NoPen);
            scene.box(QRectF(at.x() - 2, at.y() - 8, 34, 16), QColor(0xc2, 0xad, 0x82), 7);
            for (const double band : {4.0, 11.0, 18.0, 26.0})
                scene.paint().fillRect(QRectF(at.x() + band, at.y() - 7, 3, 14), QColor::fromHsv(dice.whole(0, 359), 90, 130));
            break;
        case 3:
            drawCan(scene, at, dice.real(13, 24), QColor(dice.whole(0, 1) == 0 ? 0xff3e5363 : 0xff47473f), false);
            break;
        case 4: // a film capacitor
            scene.box(QRectF(at, QSizeF(42, 24)), QColor(0x9a, 0x5a, 0x34), 5);
            break;
        default: // a small transistor
            scene.paint().setBrush(QColor(0x2f, 0x30, 0x2e));
            scene.paint().drawChord(QRectF(at.x(), at.y(), 28, 28), 0, 180 * 16);
        }
    }
}

namespace {

void transformer(Scene &scene, const QRectF &area)
{
    scene.shadow(area, 18, 110);
    scene.box(area, QColor(0x8d, 0x8a, 0x7e), 6);
    for (double x = area.left() + 10; x < area.right() - 10; x += 7)
        scene.paint().fillRect(QRectF(x, area.top() + 6, 2, area.height() - 12), QColor(0, 0, 0, 28));
    const QRectF coil = area.adjusted(34, 26, -34, -26);
    scene.box(coil, QColor(0xb2, 0x6c, 0x3c), 10);
    for (double y = coil.top() + 6; y < coil.bottom() - 4; y += 6)
        scene.paint().fillRect(QRectF(coil.left() + 4, y, coil.width() - 8, 2), QColor(60, 25, 8, 70));
    scene.box(QRectF(coil.left() + 20, coil.center().y() - 24, coil.width() - 40, 48), QColor(0xe2, 0xd9, 0xc0), 4);
}

void heatSink(Scene &scene, const QRectF &area)
{
    scene.shadow(area, 14, 90);
    scene.box(area, QColor(0x55, 0x58, 0x55), 3);
    for (double x = area.left() + 8; x < area.right() - 8; x += 22)
        scene.box(QRectF(x, area.top() + 6, 10, area.height() - 12), QColor(0x70, 0x74, 0x70), 2);
}

void mechanism(Scene &scene, const QRectF &area)
{
    scene.shadow(area, 18, 110);
    scene.box(area, QColor(0xa2, 0x9f, 0x93), 8);
    scene.brushed(area);
    const QPointF wheel(area.left() + area.width() * 0.68, area.center().y() + 20);
    const QPointF motor(area.left() + area.width() * 0.2, area.top() + area.height() * 0.3);
    scene.paint().setBrush(Qt::NoBrush);
    scene.paint().setPen(QPen(QColor(0x24, 0x25, 0x24), 9));
    const double r = area.height() * 0.3;
    QPainterPath belt;
    belt.moveTo(motor + QPointF(8, -26));
    belt.lineTo(wheel + QPointF(-r * 0.1, -r));
    belt.arcTo(QRectF(wheel.x() - r, wheel.y() - r, 2 * r, 2 * r), 96, -206);
    belt.lineTo(motor + QPointF(-18, 24));
    scene.paint().drawPath(belt);
    scene.paint().setPen(Qt::NoPen);
    scene.disc(wheel, r - 4, QColor(0x8a, 0x88, 0x7d));
    scene.ring(wheel, r * 0.7, 3, QColor(0, 0, 0, 50));
    scene.disc(wheel, r * 0.2, QColor(0xcf, 0xcc, 0xc0));
    scene.disc(motor, 62, QColor(0x6e, 0x6c, 0x63));
    scene.disc(motor, 46, QColor(0x87, 0x85, 0x7a));
    scene.disc(motor, 24, QColor(0xc6, 0xb2, 0x76));
    for (const double x : {0.36, 0.5}) {
        const QPointF gear(area.left() + area.width() * x, area.bottom() - 80);
        scene.disc(gear, 52, QColor(0xd4, 0xcd, 0xb8));
        for (int i = 0; i < 22; ++i) {
            const double angle = 2 * M_PI * i / 22;
            scene.disc(gear + QPointF(std::cos(angle), std::sin(angle)) * 52, 6, QColor(0xd4, 0xcd, 0xb8));
        }
        scene.disc(gear, 16, QColor(0x77, 0x74, 0x69));
    }
    scene.screw(area.topLeft() + QPointF(34, 34));
    scene.screw(area.topRight() + QPointF(-34, 34));
    scene.screw(QPointF(area.center().x(), area.bottom() - 30));
}

void underside(Scene &scene, const Finish &finish)
{
    const QRectF plinth(200, 130, 1200, 940);
    scene.shadow(plinth, 46, 120);
    scene.box(plinth, finish.wood.darker(112), 14);
    scene.grained(plinth);
    scene.box(plinth.adjusted(70, 70, -70, -70), QColor(0xa4, 0x9a, 0x84), 8);
    const QPointF bearing(650, 600);
    scene.disc(bearing, 110, QColor(0x8b, 0x89, 0x7e));
    scene.disc(bearing, 54, QColor(0xc9, 0xc5, 0xb4));
    scene.disc(bearing, 20, QColor(0x60, 0x5e, 0x56));
    const QPointF cam(1010, 470);
    scene.disc(cam + QPointF(4, 8), 150, QColor(0, 0, 0, 60));
    scene.disc(cam, 146, QColor(0xdc, 0xd6, 0xc2));
    for (int i = 0; i < 64; ++i) {
        const double angle = 2 * M_PI * i / 64;
        scene.disc(cam + QPointF(std::cos(angle), std::sin(angle)) * 146, 6, QColor(0xdc, 0xd6, 0xc2));
    }
    scene.ring(cam, 92, 16, QColor(0xa5, 0x84, 0x4c, 190));
    scene.disc(cam, 26, QColor(0x77, 0x74, 0x69));
    scene.disc({410, 350}, 112, QColor(0x5f, 0x60, 0x5a));
    scene.disc({410, 350}, 84, QColor(0x78, 0x78, 0x70));
    for (const QPointF &mount : {QPointF(410, 230), QPointF(305, 410), QPointF(515, 410)})
        scene.disc(mount, 20, QColor(0x2c, 0x2d, 0x2b));
    scene.wire({470, 420}, {640, 850}, QColor(0x6d, 0x4a, 0x3a), 60);
    scene.wire({1170, 780}, {780, 930}, QColor(0x4f, 0x6b, 0x4c), 70);
    scene.wire({1180, 760}, {800, 910}, QColor(0xa8, 0x50, 0x2a), 60);
    drawBoard(scene, QRectF(580, 820, 260, 140), 9);
    for (const QPointF &at : {QPointF(290, 220), QPointF(1310, 220), QPointF(290, 980), QPointF(1310, 980)})
        scene.screw(at, 13);
}

} // namespace

void drawInside(Scene &scene, const DemoPicture &picture)
{
    const Finish finish = finishOf(picture);
    scene.onMat(QColor(0x6b, 0x72, 0x68));
    if (picture.category == Category::Turntable)
        return underside(scene, finish);
    Dice &dice = scene.dice();
    const QRectF tub(150, 110, 1300, 980);
    scene.shadow(tub, 46, 120);
    scene.box(tub, QColor(0x95, 0x94, 0x8a), 10);
    scene.inset(tub.adjusted(26, 26, -26, -26), QColor(0x7b, 0x7b, 0x72), 6);
    const bool turned = dice.whole(0, 1) == 1;
    const auto placed = [turned, &tub](double x, double y, double w, double h) {
        return turned ? QRectF(tub.right() - (x - tub.left()) - w, y, w, h) : QRectF(x, y, w, h);
    };
    const bool moving = picture.category == Category::CassetteDeck || picture.category == Category::ReelRecorder || picture.category == Category::DiscPlayer;
    drawBoard(scene, placed(moving ? 820 : 480, 170, moving ? 560 : 900, moving ? 520 : 560), moving ? 52 : 84);
    transformer(scene, placed(200, 170, 240, 220));
    if (moving)
        mechanism(scene, placed(230, 470, 540, 520));
    else if (picture.category == Category::AmplifierReceiver)
        heatSink(scene, placed(480, 790, 900, 230));
    else
        drawBoard(scene, placed(480, 790, 900, 230), 30);
    if (picture.category == Category::AmplifierReceiver || picture.category == Category::TestGear) {
        drawCan(scene, placed(200, 470, 160, 160).center(), 78, QColor(0x3c, 0x55, 0x66), false);
        drawCan(scene, placed(200, 660, 160, 160).center(), 78, QColor(0x3c, 0x55, 0x66), false);
    }
    if (moving)
        drawBoard(scene, placed(820, 740, 560, 260), 22);
    for (int i = 0; i < 6; ++i)
        scene.wire({dice.real(260, 500), dice.real(380, 460)}, {dice.real(700, 1200), dice.real(420, 860)}, QColor::fromHsv(dice.whole(0, 359), 110, 130), dice.real(40, 140), 7);
    for (const QPointF &at : {QPointF(180, 140), QPointF(1420, 140), QPointF(180, 1060), QPointF(1420, 1060)})
        scene.screw(at, 12);
}

void drawBack(Scene &scene, const DemoPicture &picture)
{
    const Finish finish = finishOf(picture);
    scene.onBench();
    const QRectF body(180, 480, 1240, 380);
    scene.shadow(QRectF(body.left(), body.bottom() - 10, body.width(), 36), 40, 130);
    const QColor back = finish.dark ? QColor(0x4b, 0x4d, 0x4a) : QColor(0x9a, 0x98, 0x8c);
    scene.box(body, back, 8);
    const QColor ink = finish.dark ? QColor(0xd8, 0xd2, 0xc0) : QColor(0x38, 0x38, 0x34);
    scene.vents(QRectF(body.left() + 60, body.top() + 34, body.width() - 120, 44), 40);
    for (int row = 0; row < 2; ++row)
        for (int i = 0; i < 4; ++i)
            scene.socket({body.left() + 90 + i * 92.0, body.top() + 160 + row * 92.0}, 22, row == 0 ? QColor(0xde, 0xda, 0xcd) : QColor(0xa0, 0x40, 0x30));
    scene.letter(QStringLiteral("LINE OUT"), {body.left() + 64, body.bottom() - 60}, 17, ink);
    const QRectF plate(body.left() + 500, body.top() + 120, 400, 190);
    scene.box(plate, QColor(0xc9, 0xc6, 0xba), 6);
    const QColor engraving(0x3a, 0x39, 0x34);
    scene.letter(picture.maker.toUpper() + QLatin1Char(' ') + picture.makerModel.toUpper(), plate.topLeft() + QPointF(24, 24), 21, engraving);
    scene.letter(QStringLiteral("230 V - 50 HZ"), plate.topLeft() + QPointF(24, 76), 18, engraving);
    scene.letter(QStringLiteral("SERIAL ") + picture.serial.toUpper(), plate.topLeft() + QPointF(24, 124), 18, engraving);
    for (const QPointF &at : {plate.topLeft() + QPointF(12, 12), plate.topRight() + QPointF(-12, 12), plate.bottomLeft() + QPointF(12, -12), plate.bottomRight() + QPointF(-12, -12)})
        scene.screw(at, 7);
    scene.disc({body.right() - 150, body.center().y() + 30}, 44, QColor(0x2c, 0x2d, 0x2b));
    scene.wire({body.right() - 150, body.center().y() + 30}, {1560, 1080}, QColor(0x35, 0x36, 0x34), 170, 26);
    for (const QPointF &at : {body.topLeft() + QPointF(26, 26), body.topRight() + QPointF(-26, 26), body.bottomLeft() + QPointF(26, -26), body.bottomRight() + QPointF(-26, -26)})
        scene.screw(at, 12);
    scene.marks(body, picture.wear);
}

} // namespace ts
