#pragma once

#include "model/demo/dice.h"

#include <QColor>
#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <QRectF>

namespace ts {

/// A picture being drawn, 1600 by 1200, and the things a restorer's photographs are full of.
class Scene {
public:
    explicit Scene(quint32 seed);

    static constexpr int width = 1600;
    static constexpr int height = 1200;

    [[nodiscard]] Dice &dice() { return m_dice; }
    [[nodiscard]] QPainter &paint() { return m_paint; }
    /// The picture with its light and grain laid over it; the scene is done with.
    [[nodiscard]] QImage finish();

    void onBench();                                      ///< a wall and a bench top seen from the front
    void onMat(const QColor &mat = QColor(0x74, 0x7a, 0x70)); ///< a mat seen from above
    void shadow(const QRectF &under, double soft = 28, double dark = 90);
    void box(const QRectF &body, const QColor &colour, double radius = 8);
    void brushed(const QRectF &body); ///< the fine lines of brushed metal
    void grained(const QRectF &body); ///< the figure of wood
    void inset(const QRectF &hole, const QColor &colour, double radius = 5);
    void glass(const QRectF &pane); ///< a slanting reflection
    void knob(QPointF centre, double radius, const QColor &colour, double turn);
    void key(const QRectF &cap, const QColor &colour, double radius = 5);
    void screw(QPointF centre, double radius = 9);
    void lamp(QPointF centre, double radius, const QColor &colour);
    void needle(const QRectF &dial, double swing); ///< a small meter
    void socket(QPointF centre, double radius, const QColor &ring);
    void vents(const QRectF &area, int count);
    void letter(const QString &text, QPointF topLeft, double size, const QColor &colour);
    void letterCentred(const QString &text, QPointF centre, double size, const QColor &colour);
    void figures(const QString &text, const QRectF &window, const QColor &colour); ///< lit characters in a window
    void disc(QPointF centre, double radius, const QColor &colour);
    void ring(QPointF centre, double radius, double thick, const QColor &colour);
    void wire(QPointF from, QPointF to, const QColor &colour, double sag, double thick = 6);
    void marks(const QRectF &area, int wear); ///< scuffs and dust, more of them the higher the wear

private:
    QImage m_image;
    QPainter m_paint;
    Dice m_dice;
};

} // namespace ts
