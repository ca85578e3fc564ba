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

// Things that more than one of them draws.
void drawBoard(Scene &scene, const QRectF &area, int density);
void drawCan(Scene &scene, QPointF centre, double radius, const QColor &sleeve, bool vented); ///< an electrolytic from above

} // namespace ts
