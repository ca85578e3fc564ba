#pragma once

#include "views/widgets/pill.h"

#include <QFont>
#include <QIcon>
#include <QTextLayout>

class QPainter;

namespace ts {

class Style;

/// A beginning of a text in another face.
struct OtherFace {
    QFont font;
    int length = 0;
};

/// Breaks a text into lines of a width; answers their height. The text may be anybody's: nothing in it is markup.
[[nodiscard]] qreal breakLines(QTextLayout &layout, const QString &text, const QFont &font, int width, const OtherFace &beginning = {});
/// Whether a text surely stands on one line.
[[nodiscard]] bool fitsOneLine(const QString &text, const QFont &font, int width);
/// The height of a detail that stands on one line.
[[nodiscard]] int detailLine(const Style &style, bool withFigures);

/// A word on a coloured ground, its line's top left at `at`.
void paintPill(QPainter &painter, const Style &style, Tone tone, const QString &word, const QPointF &at, qreal lineHeight);
/// Parts between " · " at the right, one below the other.
void paintRight(QPainter &painter, const QRect &area, int line, const QString &text);
/// An icon in one colour.
void paintTinted(QPainter &painter, const QIcon &icon, const QRect &place, const QColor &colour);

} // namespace ts
