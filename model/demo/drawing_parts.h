#pragma once

#include "model/demo/drawing.h"
#include "model/demo/scene.h"

namespace ts {

/// How one unit is finished, from its seed: every picture of it looks like the same unit.
struct Finish {
    QColor panel;
    QColor ink; ///< lettering that can be read on the panel
    QColor knob;
    QColor key;
    QColor lit; ///< displays and lamps
    QColor wood;
    bool dark = false;
};
[[nodiscard]] Finish finishOf(const DemoPicture &picture);

void drawFront(Scene &scene, const DemoPicture &picture);
void drawFlat(Scene &scene, const DemoPicture &picture); ///< what is photographed from above: turntable, console, computer
void drawBack(Scene &scene, const DemoPicture &picture);
void drawInside(Scene &scene, const DemoPicture &picture);
void drawDetail(Scene &scene, const DemoPicture &picture);

// Parts of them, for more than one or to keep files short.
/// A low wide box standing on the bench, in a wooden sleeve or not; answers its panel.
QRectF drawCabinet(Scene &scene, const Finish &finish, double width, double height, bool sleeve = false);
void drawBadge(Scene &scene, const DemoPicture &picture, const Finish &finish, QPointF at, double size = 26);
void drawReelRecorder(Scene &scene, const DemoPicture &picture, const Finish &finish);
void drawLoudspeakers(Scene &scene, const DemoPicture &picture, const Finish &finish);
void drawRadio(Scene &scene, const DemoPicture &picture, const Finish &finish);
void drawTestGear(Scene &scene, const DemoPicture &picture, const Finish &finish);
void drawCapacitor(Scene &scene, int wear);
void drawJoint(Scene &scene, int wear);
void drawBurntBoard(Scene &scene, int wear);
void drawRelay(Scene &scene, int wear);
void drawBoard(Scene &scene, const QRectF &area, int density);
void drawCan(Scene &scene, QPointF centre, double radius, const QColor &sleeve, bool vented); ///< an electrolytic from above

} // namespace ts
