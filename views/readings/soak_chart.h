#pragma once

#include "model/sums/soak_course.h"

#include <QChartView>

namespace ts {

class Style;

/// How a value went over the hours of a soak, with its limits and the straight line through it.
class SoakChart : public QChartView {
    Q_OBJECT
public:
    explicit SoakChart(const Style &style, QWidget *parent = nullptr);
    void show(const SoakCourse &course);
    [[nodiscard]] QSize sizeHint() const override { return {360, 220}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 150}; }

private:
    void draw();

    const Style &m_style;
    SoakCourse m_course;
};

} // namespace ts
