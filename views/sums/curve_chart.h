#pragma once

#include "model/sums/reckon.h"

#include <QChartView>

namespace ts {

class Style;

/// A replay curve from 20 Hz to 20 kHz, and where on it the tone stands.
class CurveChart : public QChartView {
    Q_OBJECT
public:
    explicit CurveChart(const Style &style, QWidget *parent = nullptr);
    /// The curve that the keys of the sum "replay-curve" name.
    void show(const SumInput &given);
    [[nodiscard]] QSize sizeHint() const override { return {420, 220}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {260, 180}; }

private:
    void draw();

    const Style &m_style;
    SumInput m_given;
};

} // namespace ts
