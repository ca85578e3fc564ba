#pragma once

#include <QPainterPath>
#include <QString>

namespace ts {

/// Capitals, digits and a few signs as single strokes, the way a panel is engraved. The demo's pictures letter their fronts with
/// it and so need no font and come out alike on every computer. What has no stroke is left blank.
[[nodiscard]] QPainterPath engraved(const QString &text, QPointF topLeft, double height);
/// How wide that text is.
[[nodiscard]] double engravedWidth(const QString &text, double height);

} // namespace ts
