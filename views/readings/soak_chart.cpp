#include "views/readings/soak_chart.h"

#include "views/style/style.h"
#include "views/widgets/chart_dress.h"
#include "views/widgets/locale_text.h"

#include <QChart>
#include <QLineSeries>
#include <QValueAxis>

#include <algorithm>

namespace ts {

namespace {

QLineSeries *line(const QList<QPointF> &points, const QPen &pen)
{
    auto *series = new QLineSeries;
    series->append(points);
    series->setPen(pen);
    return series;
}

} // namespace

SoakChart::SoakChart(const Style &style, QWidget *parent) : QChartView(parent), m_style(style)
{
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    connect(&style, &Style::changed, this, &SoakChart::draw);
}

void SoakChart::show(const SoakCourse &course)
{
    if (course.soak == m_course.soak && course.points == m_course.points && course.low == m_course.low && course.high == m_course.high && chart()->series().size() > 0)
        return;
    m_course = course;
    draw();
}

void SoakChart::draw()
{
    const Ink &ink = m_style.ink();
    QChart *chart = this->chart();
    clearChart(*chart);
    if (m_course.points.isEmpty())
        return;

    QList<QPointF> points;
    double most = 0;
    double low = m_course.points.first().value;
    double high = low;
    for (const SoakPoint &point : m_course.points) {
        points << QPointF(point.hours, point.value);
        most = std::max(most, point.hours);
        low = std::min(low, point.value);
        high = std::max(high, point.value);
    }
    for (const auto &bound : {m_course.low, m_course.high})
        if (bound) {
            low = std::min(low, *bound);
            high = std::max(high, *bound);
        }
    const double room = high > low ? (high - low) * 0.12 : std::max(std::abs(high) * 0.05, 1e-9);

    auto *across = new QValueAxis;
    across->setRange(0, most > 0 ? most : 1);
    across->setLabelFormat(most < 4 ? QStringLiteral("%.1f h") : QStringLiteral("%.0f h"));
    across->setTickCount(5);
    auto *up = new QValueAxis;
    up->setRange(low - room, high + room);
    up->setTickCount(4);
    up->applyNiceNumbers();
    up->setTitleText(m_course.measure.text());
    dressAxis(*across, m_style);
    dressAxis(*up, m_style);
    across->setGridLineVisible(false);
    chart->addAxis(across, Qt::AlignBottom);
    chart->addAxis(up, Qt::AlignLeft);

    QList<QLineSeries *> all;
    for (const auto &bound : {m_course.low, m_course.high})
        if (bound)
            all << line({QPointF(0, *bound), QPointF(across->max(), *bound)}, QPen(ink.outside, 1.4, Qt::DashLine));
    if (m_course.fit)
        all << line({QPointF(0, m_course.fit->at(0)), QPointF(across->max(), m_course.fit->at(across->max()))}, QPen(ink.within, 1.6));
    all << line(points, QPen(ink.copper, 2));
    for (QLineSeries *series : all) {
        chart->addSeries(series);
        series->attachAxis(across);
        series->attachAxis(up);
    }
    all.last()->setPointsVisible(points.size() <= 40);
}

} // namespace ts
