#include "model/demo/drawing_parts.h"

#include <QRadialGradient>

#include <cmath>

namespace ts {

namespace {

constexpr QPointF middle{Scene::width / 2.0, Scene::height / 2.0};

void rubberLoop(Scene &scene, const QRectF &around, double thick, double ripple, const QColor &rubber)
{
    QPainterPath loop;
    const double phase = scene.dice().real(0, 6);
    for (int i = 0; i <= 240; ++i) {
        const double angle = 2 * M_PI * i / 240;
        const double wobble = 1 + ripple * std::sin(angle * 5 + phase) + ripple * 0.6 * std::sin(angle * 11);
        const QPointF at(around.center().x() + around.width() / 2 * wobble * std::cos(angle), around.center().y() + around.height() / 2 * wobble * std::sin(angle));
        if (i == 0)
            loop.moveTo(at);
        else
            loop.lineTo(at);
    }
    scene.paint().setBrush(Qt::NoBrush);
    scene.paint().setPen(QPen(QColor(0, 0, 0, 70), thick + 6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    scene.paint().drawPath(loop.translated(7, 12));
    scene.paint().setPen(QPen(rubber, thick, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    scene.paint().drawPath(loop);
    scene.paint().setPen(QPen(QColor(255, 255, 255, 26), thick * 0.3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    scene.paint().drawPath(loop.translated(-thick * 0.16, -thick * 0.2));
    scene.paint().setPen(Qt::NoPen);
}

void belts(Scene &scene, int wear)
{
    rubberLoop(scene, QRectF(150, 250, 660, 660), 26, wear > 2 ? 0.05 : 0.022, QColor(0x3b, 0x36, 0x2d));
    rubberLoop(scene, QRectF(900, 320, 520, 520), 26, 0, QColor(0x26, 0x27, 0x26));
    if (wear > 2) // tar where it lay
        for (int i = 0; i < 60; ++i) {
            const double angle = scene.dice().real(0, 2 * M_PI);
            scene.disc(QPointF(480 + 330 * std::cos(angle), 580 + 330 * std::sin(angle)) + QPointF(scene.dice().real(-40, 40), scene.dice().real(-40, 40)),
                       scene.dice().real(3, 13), QColor(0x24, 0x1c, 0x14, 190));
        }
    // a steel rule along the bottom, as belts are measured
    scene.shadow(QRectF(120, 1000, 1360, 96), 14, 80);
    scene.box(QRectF(120, 1000, 1360, 96), QColor(0xc2, 0xc0, 0xb5), 4);
    scene.brushed(QRectF(120, 1000, 1360, 96));
    scene.paint().setPen(QPen(QColor(40, 40, 36), 2));
    for (int i = 0; i <= 130; ++i)
        scene.paint().drawLine(QPointF(140 + i * 10, 1002), QPointF(140 + i * 10, i % 10 == 0 ? 1042 : i % 5 == 0 ? 1030 : 1020));
    scene.paint().setPen(Qt::NoPen);
    for (int i = 0; i <= 12; ++i)
        scene.letterCentred(QString::number(i * 10), {140.0 + i * 100, 1064}, 17, QColor(40, 40, 36));
}

void gearWheel(Scene &scene, QPointF centre, double radius, int teeth, const QColor &plastic)
{
    scene.disc(centre + QPointF(10, 20), radius * 1.05, QColor(0, 0, 0, 70));
    QPainterPath outline;
    for (int i = 0; i < teeth * 4; ++i) {
        const double angle = 2 * M_PI * i / (teeth * 4);
        const double r = i % 4 < 2 ? radius * 1.06 : radius * 0.97;
        const QPointF at = centre + QPointF(std::cos(angle), std::sin(angle)) * r;
        if (i == 0)
            outline.moveTo(at);
        else
            outline.lineTo(at);
    }
    outline.closeSubpath();
    QRadialGradient face(centre - QPointF(radius * 0.3, radius * 0.4), radius * 1.5);
    face.setColorAt(0, plastic.lighter(110));
    face.setColorAt(1, plastic.darker(122));
    scene.paint().setBrush(face);
    scene.paint().drawPath(outline);
    scene.ring(centre, radius * 0.82, 5, plastic.darker(125));
}

void cam(Scene &scene, int wear)
{
    gearWheel(scene, middle, 400, 56, QColor(0xdd, 0xd6, 0xc1));
    scene.ring(middle, 250, 54, QColor(0xbd, 0xb5, 0x9f));
    for (int i = 0; i < wear * 90; ++i) { // old grease in the groove
        const double angle = scene.dice().real(0, 2 * M_PI);
        scene.disc(middle + QPointF(std::cos(angle), std::sin(angle)) * scene.dice().real(222, 282), scene.dice().real(6, 22), QColor(0xa2, 0x78, 0x32, 90));
    }
    for (int i = 0; i < 3; ++i) {
        const double angle = 0.4 + i * 2.094;
        scene.disc(middle + QPointF(std::cos(angle), std::sin(angle)) * 150, 44, QColor(0x74, 0x79, 0x6f));
    }
    scene.disc(middle, 70, QColor(0xc7, 0xbf, 0xa9));
    scene.disc(middle, 36, QColor(0xd5, 0xd2, 0xc6));
    scene.disc(middle, 20, QColor(0x6a, 0x68, 0x60));
    scene.disc(middle + QPointF(-330, 60), 13, QColor(0xf6, 0xf3, 0xea)); // the mark made before it came off
}

void clutch(Scene &scene, int wear)
{
    gearWheel(scene, middle + QPointF(-40, 20), 360, 44, QColor(0x54, 0x57, 0x52));
    const QPointF hub = middle + QPointF(-40, 20);
    scene.disc(hub, 270, wear > 1 ? QColor(0x8a, 0x62, 0x44) : QColor(0xb9, 0x84, 0x58)); // the felt
    for (int i = 0; i < 900; ++i) {
        const double angle = scene.dice().real(0, 2 * M_PI);
        const double r = scene.dice().real(96, 264);
        scene.disc(hub + QPointF(std::cos(angle), std::sin(angle)) * r, scene.dice().real(1, 3.4), QColor(scene.dice().whole(0, 1) == 0 ? 0xff6d4a30 : 0xffcfa078));
    }
    if (wear > 1) // the glaze: a shine that runs round
        for (int i = 0; i < 8; ++i) {
            scene.paint().setBrush(Qt::NoBrush);
            scene.paint().setPen(QPen(QColor(255, 244, 220, 50), 14, Qt::SolidLine, Qt::RoundCap));
            scene.paint().drawArc(QRectF(hub.x() - 120 - i * 17, hub.y() - 120 - i * 17, 240 + i * 34, 240 + i * 34), (100 + i * 4) * 16, (58 - i * 3) * 16);
        }
    scene.paint().setPen(Qt::NoPen);
    scene.disc(hub, 92, QColor(0xd6, 0xd2, 0xc4));
    for (int i = 0; i < 7; ++i) // the spring
        scene.ring(hub, 84 - i * 7, 4, QColor(0x8b, 0x8a, 0x80));
    scene.disc(hub, 26, QColor(0x5a, 0x5a, 0x54));
    scene.paint().setBrush(Qt::NoBrush);
    scene.paint().setPen(QPen(QColor(0xc9, 0xc6, 0xba), 9, Qt::SolidLine, Qt::RoundCap));
    scene.paint().drawArc(QRectF(1240, 820, 120, 120), 40 * 16, 280 * 16); // the clip beside it
    scene.paint().setPen(Qt::NoPen);
}

void tyre(Scene &scene)
{
    for (const auto &[centre, scale, fresh] : {std::tuple{QPointF(560, 600), 1.0, true}, std::tuple{QPointF(1160, 700), 0.62, false}}) {
        scene.disc(centre + QPointF(12, 22), 316 * scale, QColor(0, 0, 0, 70));
        scene.disc(centre, 310 * scale, fresh ? QColor(0x27, 0x28, 0x27) : QColor(0x4b, 0x46, 0x3d));
        scene.ring(centre, 290 * scale, 6 * scale, QColor(255, 255, 255, fresh ? 20 : 60));
        scene.disc(centre, 226 * scale, fresh ? QColor(0xd8, 0xd0, 0xba) : QColor(0x74, 0x79, 0x6f));
        if (!fresh)
            continue;
        for (int i = 0; i < 5; ++i) {
            const double angle = i * 2 * M_PI / 5;
            scene.disc(centre + QPointF(std::cos(angle), std::sin(angle)) * 140, 42, QColor(0x74, 0x79, 0x6f));
        }
        scene.disc(centre, 48, QColor(0xb9, 0xb5, 0xa5));
        scene.disc(centre, 20, QColor(0x50, 0x4f, 0x48));
    }
}

void lid(Scene &scene, int wear, const Finish &finish)
{
    scene.box(QRectF(-60, 200, 1800, 1100), finish.panel, 30);
    scene.brushed(QRectF(-60, 200, 1800, 1100));
    for (int i = 0; i < wear; ++i) {
        const QPointF from(420 + i * 260, 560 + i * 90);
        scene.paint().setPen(QPen(QColor(255, 255, 252, 200), 5, Qt::SolidLine, Qt::RoundCap));
        scene.paint().drawLine(from, from + QPointF(300 + i * 90, 60 - i * 80));
        scene.paint().setPen(QPen(QColor(0, 0, 0, 60), 3));
        scene.paint().drawLine(from + QPointF(2, 6), from + QPointF(302 + i * 90, 66 - i * 80));
        scene.paint().setPen(Qt::NoPen);
    }
    scene.screw({180, 320}, 34);
    scene.screw({1420, 320}, 34);
}

void strobe(Scene &scene, const Finish &finish)
{
    scene.box(QRectF(0, 0, Scene::width, Scene::height), finish.panel.darker(116), 0);
    scene.brushed(QRectF(0, 0, Scene::width, Scene::height));
    const QPointF hub(800, 2100);
    for (const auto &[radius, colour] : {std::pair{1660.0, QColor(0xb2, 0xaf, 0xa3)}, std::pair{1340.0, QColor(0x33, 0x35, 0x33)}})
        scene.disc(hub, radius, colour);
    for (int row = 0; row < 4; ++row)
        for (int i = -60; i <= 60; ++i) {
            const double angle = -M_PI / 2 + i * (0.018 + row * 0.0012);
            const QPointF at = hub + QPointF(std::cos(angle), std::sin(angle)) * (1600 - row * 66);
            scene.disc(at, 15, row == 1 ? finish.lit : QColor(0x40, 0x40, 0x3b));
        }
    QRadialGradient glow(QPointF(800, 520), 620);
    glow.setColorAt(0, QColor(255, 170, 90, 90));
    glow.setColorAt(1, QColor(255, 170, 90, 0));
    scene.paint().setBrush(glow);
    scene.paint().drawEllipse(QPointF(800, 520), 620, 620);
}

void parcel(Scene &scene, const DemoPicture &picture)
{
    scene.onBench();
    const QRectF carton(330, 330, 940, 600);
    scene.shadow(QRectF(carton.left(), carton.bottom() - 10, carton.width(), 40), 46, 150);
    scene.box(carton, QColor(0xb3, 0x90, 0x63), 6);
    scene.box(QRectF(carton.left(), carton.center().y() - 46, carton.width(), 92), QColor(0xc9, 0xb3, 0x87), 0);
    scene.paint().fillRect(QRectF(carton.left(), carton.top() + 2, carton.width(), 3), QColor(70, 50, 26));
    const QRectF label(720, 420, 430, 290);
    scene.box(label, QColor(0xf2, 0xee, 0xe2), 6);
    scene.letter(QStringLiteral("FRAGILE"), label.topLeft() + QPointF(34, 34), 44, QColor(0xa8, 0x50, 0x2a));
    scene.letter(picture.maker.toUpper(), label.topLeft() + QPointF(34, 120), 28, QColor(40, 40, 36));
    scene.letter(picture.makerModel.toUpper(), label.topLeft() + QPointF(34, 176), 22, QColor(40, 40, 36));
    scene.letter(QStringLiteral("THIS WAY UP"), label.topLeft() + QPointF(34, 228), 22, QColor(40, 40, 36));
}

} // namespace

QStringList demoSubjects()
{
    return {QStringLiteral("belt"),  QStringLiteral("tyre"),  QStringLiteral("clutch"), QStringLiteral("gear"),   QStringLiteral("capacitor"), QStringLiteral("joint"),
            QStringLiteral("board"), QStringLiteral("relay"), QStringLiteral("lid"),    QStringLiteral("strobe"), QStringLiteral("parcel")};
}

void drawDetail(Scene &scene, const DemoPicture &picture)
{
    const Finish finish = finishOf(picture);
    scene.onMat();
    switch (demoSubjects().indexOf(picture.subject)) {
    case 0:
        return belts(scene, picture.wear);
    case 1:
        return tyre(scene);
    case 2:
        return clutch(scene, picture.wear);
    case 3:
        return cam(scene, picture.wear);
    case 4:
        return drawCapacitor(scene, picture.wear);
    case 5:
        return drawJoint(scene, picture.wear);
    case 7:
        return drawRelay(scene, picture.wear);
    case 8:
        return lid(scene, picture.wear, finish);
    case 9:
        return strobe(scene, finish);
    case 10:
        return parcel(scene, picture);
    default:
        return drawBurntBoard(scene, picture.wear);
    }
}

} // namespace ts
