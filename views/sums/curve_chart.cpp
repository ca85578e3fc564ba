#include "views/sums/curve_chart.h"

#include "views/style/style.h"
#include "views/widgets/chart_dress.h"

#include <QChart>
#include <QLineSeries>
#include <QLogValueAxis>
#include <QScatterSeries>
#include <QValueAxis>

#include <cmath>

namespace ts {

namespace {

std::optional<QPointF> pointAt(SumInput given, double hertz)
{
    given.insert(QStringLiteral("frequency"), QString::number(hertz, 'g', 12));
    const auto out = reckon(QStringLiteral("replay-curve"), given);
    if (out)
        for (const auto &[name, value] : *out)
            if (name == QLatin1String("db") && value.isDouble())
                return QPointF(hertz, value.toDouble());
    return std::nullopt;
}

} // namespace

CurveChart::CurveChart(const Style &style, QWidget *parent) : QChartView(parent), m_style(style)
{
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Replay curve"));
    connect(&style, &Style::changed, this, &CurveChart::draw);
}

void CurveChart::show(const SumInput &given)
{
    m_given = given;
    draw();
}

void CurveChart::draw()
{
    const Ink &ink = m_style.ink();
    QChart *chart = this->chart();
    clearChart(*chart);
    auto *curve = new QLineSeries;
    curve->setPen(QPen(ink.copper, 2));
    for (int i = 0; i <= 90; ++i)
        if (const auto at = pointAt(m_given, 20 * std::pow(10.0, i / 30.0)))
            curve->append(*at);
    if (curve->points().isEmpty()) {
        delete curve;
        return;
    }
    auto *tone = new QScatterSeries;
    tone->setMarkerSize(9);
    tone->setColor(ink.ink);
    tone->setBorderColor(ink.sheet);
    bool read = false;
    const double hertz = m_given.value(QStringLiteral("frequency")).toDouble(&read);
    if (const auto at = read ? pointAt(m_given, hertz) : std::nullopt)
        tone->append(*at);
    auto *across = new QLogValueAxis;
    across->setRange(20, 20000);
    across->setLabelFormat(QStringLiteral("%g Hz"));
    across->setMinorTickCount(8);
    auto *up = new QValueAxis;
    double low = curve->at(0).y();
    double high = low;
    for (const QPointF &point : curve->points()) {
        low = std::min(low, point.y());
        high = std::max(high, point.y());
    }
    up->setRange(low - 1, high + 1);
    up->setTickCount(5);
    up->applyNiceNumbers();
    up->setLabelFormat(QStringLiteral("%g dB"));
    dressAxis(*across, m_style);
    dressAxis(*up, m_style);
    across->setMinorGridLineVisible(false);
    chart->addAxis(across, Qt::AlignBottom);
    chart->addAxis(up, Qt::AlignLeft);
    for (QXYSeries *series : {static_cast<QXYSeries *>(curve), static_cast<QXYSeries *>(tone)}) {
        chart->addSeries(series);
        series->attachAxis(across);
        series->attachAxis(up);
    }
}

} // namespace ts
