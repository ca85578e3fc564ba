#pragma once

#include "views/widgets/grid_row.h"

#include <QRect>

class QPainter;

namespace ts {

class Style;

/// How a cell of a grid is drawn, and how much room it takes.
class GridPaint {
public:
    explicit GridPaint(const Style &style) : m_style(style) {}

    void draw(QPainter &painter, const QRect &rect, const GridCell &cell, const GridColumn &column) const;
    void drawGroup(QPainter &painter, const QRect &rect, const GridCell &cell) const;
    [[nodiscard]] int height(const GridCell &cell, int width) const;
    [[nodiscard]] int pillWidth(const QString &word) const;
    [[nodiscard]] QRect tickRect(const QRect &cell) const;

private:
    [[nodiscard]] QFont font(const GridCell &cell) const;
    void drawPill(QPainter &painter, QRect &rect, const GridCell &cell) const;
    void drawTick(QPainter &painter, const QRect &rect, bool ticked) const;
    void drawBar(QPainter &painter, const QRect &rect, const GridBar &bar) const;

    const Style &m_style;
};

} // namespace ts
