#pragma once

#include "model/sums/verdict.h"

#include <QWidget>

namespace ts {

class Style;

/// A value with its uncertainty, held against what is wanted: one line drawn to scale.
class LimitPicture : public QWidget {
    Q_OBJECT
public:
    explicit LimitPicture(const Style &style, QWidget *parent = nullptr);
    /// Nothing is drawn for what has no limit or is over range; `sense` draws "less than" and "more than" as open ends.
    void show(const std::optional<Judgement> &judged, Sense sense, std::optional<double> nominal);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

    /// The stretch of the line that is drawn, in the judged measure: what is wanted and what was read, with room around them.
    struct Span {
        double from = 0;
        double to = 1;
    };
    [[nodiscard]] static Span spanOf(const Judgement &judged, std::optional<double> nominal);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void drawBand(QPainter &painter, const QRectF &line, const Span &span) const;
    void drawValue(QPainter &painter, const QRectF &line, const Span &span) const;
    void drawFigures(QPainter &painter, const QRectF &line, const Span &span) const;

    const Style &m_style;
    std::optional<Judgement> m_judged;
    Sense m_sense = Sense::Plain;
    std::optional<double> m_nominal;
};

} // namespace ts
