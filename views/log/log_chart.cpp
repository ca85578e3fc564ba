#include "views/log/log_chart.h"

#include "model/sums/course.h"
#include "views/log/time_ticks.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QCategoryAxis>
#include <QChartView>
#include <QLabel>
#include <QLineSeries>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>
#include <QValueAxis>

#include <cmath>

namespace ts {

namespace {

double whole(const Money &money)
{
    return static_cast<double>(money.minor()) / std::pow(10.0, money.currency().decimals());
}

/// Goes on level, then up: what was reached holds until the next.
void addStep(QList<QPointF> &line, double at, double value)
{
    if (!line.isEmpty())
        line << QPointF(at, line.last().y());
    line << QPointF(at, value);
}

/// The step of an axis and how many of them reach the top, so that its numbers are round. There is no room for more than two.
std::pair<double, int> roundSteps(double most)
{
    if (most <= 0)
        return {1, 1};
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    for (const double step : {0.5, 1.0, 2.0, 2.5, 5.0})
        if (const double parts = std::ceil(most / (step * power)); parts <= 2)
            return {step * power, static_cast<int>(parts)};
    return {5 * power, 2};
}

void setSteps(QValueAxis *axis, double most, const QString &before, const QString &behind)
{
    const auto [step, parts] = roundSteps(most);
    // The room for the labels is taken when the range is set: their form comes first.
    axis->setLabelFormat(before + (step == std::floor(step) ? QStringLiteral("%.0f") : QStringLiteral("%.1f")) + behind);
    axis->setTickCount(parts + 1);
    axis->setRange(0, step * parts);
}

double highest(const QList<QPointF> &line)
{
    double most = 0;
    for (const QPointF &point : line)
        most = qMax(most, point.y());
    return most;
}

} // namespace

LogChart::LogChart(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_fold = new QPushButton(this);
    m_fold->setProperty("role", QStringLiteral("fold"));
    m_fold->setCheckable(true);
    m_fold->setAutoDefault(false);
    m_sums = styledLabel("faint", {}, this);
    auto *head = new QHBoxLayout;
    head->setContentsMargins(gap::normal, 0, gap::wide, 0);
    head->addWidget(m_fold);
    head->addStretch(1);
    head->addWidget(m_sums);
    m_place = new QWidget(this);
    auto *inside = new QVBoxLayout(m_place);
    inside->setContentsMargins(gap::small, 0, gap::small, 0);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, gap::tight, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(m_place);
    connect(m_fold, &QPushButton::clicked, this, [this] {
        m_chosen = true;
        setFolded(!m_folded);
    });
    setFolded(false);
}

void LogChart::restore(const QByteArray &state)
{
    m_chosen = !state.isEmpty();
    if (m_chosen)
        setFolded(state == "folded");
}

QByteArray LogChart::state() const
{
    return !m_chosen ? QByteArray() : m_folded ? QByteArrayLiteral("folded") : QByteArrayLiteral("open");
}

void LogChart::fitInto(int height)
{
    const bool low = height < m_work.style().space(150);
    if (!m_chosen && low != m_folded)
        setFolded(low);
}

void LogChart::setFolded(bool folded)
{
    m_folded = folded;
    m_fold->setChecked(!folded);
    m_fold->setText((folded ? QStringLiteral("▸ ") : QStringLiteral("▾ ")) + tr("Hours and money"));
    m_fold->setAccessibleName(folded ? tr("Show the chart of hours and money") : tr("Fold the chart of hours and money away"));
    m_place->setHidden(folded);
    if (!folded)
        draw();
}

void LogChart::refresh()
{
    const auto course = courseOf(m_work.file(), m_work.currency(), m_work.now());
    m_hours.clear();
    m_money.clear();
    setHidden(course.isEmpty());
    if (course.isEmpty())
        return;
    const auto begun = static_cast<double>(course.first().at.toMSecsSinceEpoch());
    m_hours << QPointF(begun, 0);
    m_money << QPointF(begun, 0);
    for (const CoursePoint &point : course) {
        const auto at = static_cast<double>(point.at.toMSecsSinceEpoch());
        addStep(m_hours, at, point.minutes / 60.0);
        addStep(m_money, at, whole(point.spent));
    }
    // A unit that is still here has come as far as today.
    if (m_work.file().unit.stage != Stage::Closed) {
        const auto now = static_cast<double>(m_work.now().toMSecsSinceEpoch());
        addStep(m_hours, qMax(now, m_hours.last().x()), m_hours.last().y());
        addStep(m_money, qMax(now, m_money.last().x()), m_money.last().y());
    }
    m_sums->setText(shown::duration(course.last().minutes) + QStringLiteral(" · ") + shown::money(course.last().spent));
    draw();
}

// Drawn when the window has its turn: the entries are looked at first.
void LogChart::draw()
{
    if (m_folded || m_hours.isEmpty() || m_drawWaits)
        return;
    m_drawWaits = true;
    QTimer::singleShot(0, this, [this] {
        m_drawWaits = false;
        if (m_folded || m_hours.isEmpty())
            return;
        if (!m_chart)
            makeChart();
        colour();
        setSteps(m_hourAxis, highest(m_hours), {}, QStringLiteral(" h"));
        setSteps(m_moneyAxis, highest(m_money), m_work.currency().sign().replace(QLatin1Char('%'), QLatin1String("%%")), {});
        const qint64 from = static_cast<qint64>(m_hours.first().x());
        const qint64 to = qMax(static_cast<qint64>(m_hours.last().x()), from + 3'600'000);
        for (const QString &label : m_timeAxis->categoriesLabels())
            m_timeAxis->remove(label);
        m_timeAxis->setRange(static_cast<double>(from), static_cast<double>(to));
        for (const TimeTick &tick : timeTicks(QDateTime::fromMSecsSinceEpoch(from), QDateTime::fromMSecsSinceEpoch(to), m_work.today()))
            m_timeAxis->append(tick.label, static_cast<double>(tick.at.toMSecsSinceEpoch()));
        m_hourLine->replace(m_hours);
        m_moneyLine->replace(m_money);
    });
}

void LogChart::makeChart()
{
    m_chart = new QChart;
    m_chart->setBackgroundVisible(false);
    m_chart->setMargins(QMargins(0, 0, 0, 0));
    m_chart->legend()->hide();
    m_chart->setLocalizeNumbers(true);
    m_chart->setAnimationOptions(QChart::NoAnimation);
    m_hourLine = new QLineSeries(m_chart);
    m_moneyLine = new QLineSeries(m_chart);
    m_chart->addSeries(m_hourLine);
    m_chart->addSeries(m_moneyLine);
    m_timeAxis = new QCategoryAxis(m_chart);
    m_timeAxis->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
    m_timeAxis->setGridLineVisible(false);
    m_hourAxis = new QValueAxis(m_chart);
    m_moneyAxis = new QValueAxis(m_chart);
    m_moneyAxis->setGridLineVisible(false);
    m_chart->addAxis(m_timeAxis, Qt::AlignBottom);
    m_chart->addAxis(m_hourAxis, Qt::AlignLeft);
    m_chart->addAxis(m_moneyAxis, Qt::AlignRight);
    m_hourLine->attachAxis(m_timeAxis);
    m_hourLine->attachAxis(m_hourAxis);
    m_moneyLine->attachAxis(m_timeAxis);
    m_moneyLine->attachAxis(m_moneyAxis);
    auto *view = new QChartView(m_chart, m_place);
    view->setFocusPolicy(Qt::NoFocus); // nothing in it is worked with; the sums stand in words above
    view->setRenderHint(QPainter::Antialiasing);
    view->setFrameShape(QFrame::NoFrame);
    view->setAccessibleName(tr("Chart of hours and money over time"));
    m_place->layout()->addWidget(view);
}

void LogChart::colour()
{
    const Style &style = m_work.style();
    const Ink &ink = style.ink();
    m_place->setFixedHeight(style.space(26));
    m_hourLine->setPen(QPen(ink.copper, 1.8));
    m_moneyLine->setPen(QPen(ink.hint, 1.8, Qt::DashLine));
    for (QAbstractAxis *axis : QList<QAbstractAxis *>{m_timeAxis, m_hourAxis, m_moneyAxis}) {
        axis->setLabelsFont(style.text(0.85));
        axis->setLinePen(QPen(ink.line, 1));
        axis->setGridLinePen(QPen(ink.line, 1, Qt::DotLine));
    }
    m_timeAxis->setLabelsColor(ink.faint);
    m_hourAxis->setLabelsColor(ink.copper);
    m_moneyAxis->setLabelsColor(ink.hint);
}

} // namespace ts
