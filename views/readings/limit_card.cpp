#include "views/readings/limit_card.h"

#include "model/sums/metering/budget.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/metering/good_enough.h"
#include "views/readings/limit_picture.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/measured_text.h"

#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

QString chanceText(double chance)
{
    if (chance > 0.995)
        return tr("over %1").arg(shown::percent(0.99));
    return chance < 0.005 ? tr("under %1").arg(shown::percent(0.01)) : shown::percent(chance);
}

// Two figures, never more than what would do.
double roundedDown(double value)
{
    const double size = std::pow(10.0, 1 - std::floor(std::log10(value)));
    return std::floor(value * size + 1e-9) / size;
}

QString settlingText(const Reading &reading, const BenchFile &bench, const QDate &day)
{
    const auto settled = whatWouldSettle(*reading.value, reading.wanted, bench, day);
    if (!settled)
        return {};
    if (!(settled->needed > 0))
        return tr("It stands right on the limit: no meter settles that.");
    const QString good = shown::spread(roundedDown(settled->needed), reading.value->measure());
    if (settled->good.isEmpty())
        return tr("A meter good to %1 would settle it; none of the bench's is.").arg(good);
    const MeterChoice &best = settled->good.first();
    const QString text = best.range.isEmpty() ? tr("A meter good to %1 would settle it; %2 is.").arg(good, best.name) : tr("A meter good to %1 would settle it; %2 on its %3 is.").arg(good, best.name, best.range);
    return best.overdue.isEmpty() ? text : text + QLatin1Char(' ') + tr("But its calibration is overdue.");
}

/// How the uncertainty came about, a line each, and whether the meter is overdue.
QString budgetText(const Reading &reading, const BenchFile &bench)
{
    QStringList lines;
    const Meter *meter = bench.find(reading.meter);
    const auto budget = meter && reading.value ? budgetWith(bench, reading.meter, {*reading.value}) : Expected<Budget>(Trouble{});
    if (budget && reading.uncertainty && std::abs(budget->sum.expanded - *reading.uncertainty) < 1e-6 * *reading.uncertainty)
        lines = budget->words(); // what was typed, or a mean of several, has no budget of the meter alone
    if (meter && calibrationOverdue(*meter, reading.at.toLocalTime().date()))
        lines << tr("%1 was overdue for calibration since %2 when this was read.").arg(meter->name, shown::day(meter->calibrationDue));
    return lines.join(QLatin1Char('\n'));
}

} // namespace

QString limitSentence(const PointRow &point, const BenchFile &bench)
{
    const Reading *reading = point.latest();
    if (!reading || !reading->value)
        return point.wanted.isNone() ? tr("Not read yet, and nothing is wanted of it.") : tr("Not read yet.");
    const auto judged = judge(*reading);
    if (!judged)
        return tr("What was read and what is wanted are of different measures: they cannot be compared.");
    if (judged->verdict == Verdict::NoLimit)
        return reading->wanted.isNone() ? tr("Type what is wanted in its row, and it is held against that.") : tr("No tolerance is given, so there is no verdict.");
    if (reading->value->sense() == Sense::OverRange)
        return judged->verdict == Verdict::Within ? tr("Over range of the meter, and so above what is wanted at least.") : tr("Over range of the meter, and so above what is wanted at the most.");
    if (!judged->chanceWithin)
        return judged->uncertainty95 ? QString() : tr("How sure the value is was not said: name the meter, or type ± behind the value.");
    const QString chance = tr("Chance that it is really within: %1.").arg(chanceText(*judged->chanceWithin));
    return judged->verdict == Verdict::TooCloseToCall ? chance + QLatin1Char(' ') + settlingText(*reading, bench, reading->at.toLocalTime().date()) : chance;
}

LimitCard::LimitCard(const Style &style, QWidget *parent) : Card({}, parent)
{
    m_figures = styledLabel("quiet", {}, this);
    m_figures->setWordWrap(true);
    m_picture = new LimitPicture(style, this);
    m_sentence = styledLabel("plain", {}, this);
    m_sentence->setWordWrap(true);
    body()->addWidget(m_figures);
    body()->addWidget(m_picture);
    body()->addWidget(m_sentence);
    m_budget = styledLabel("quiet", {}, this);
    m_budget->setWordWrap(true);
    m_budget->setTextFormat(Qt::PlainText);
    body()->addWidget(m_budget);
    body()->addStretch(1);
}

void LimitCard::show(const PointRow *point, const BenchFile &bench)
{
    const Reading *reading = point ? point->latest() : nullptr;
    setHeading(point ? point->name : tr("No test point is chosen"));
    m_sentence->setText(point ? limitSentence(*point, bench) : QString());
    const QString budget = reading ? budgetText(*reading, bench) : QString();
    m_budget->setText(budget);
    m_budget->setHidden(budget.isEmpty());
    QStringList figures;
    if (reading && reading->value) {
        figures << shown::quantity(*reading->value);
        if (reading->uncertainty)
            figures << shown::spread(*reading->uncertainty, reading->value->measure());
        figures << shown::phase(reading->phase);
    }
    QString text = figures.size() == 3 ? tr("%1 %2 %3").arg(figures.at(0), figures.at(1), figures.at(2)) : figures.join(QLatin1Char(' '));
    const Limit &wanted = reading ? reading->wanted : (point ? point->wanted : Limit());
    if (!wanted.isNone())
        text += text.isEmpty() ? tr("wanted %1").arg(shown::limit(wanted)) : tr(", wanted %1").arg(shown::limit(wanted));
    m_figures->setText(text);
    m_figures->setHidden(text.isEmpty());
    std::optional<Judgement> judged;
    std::optional<double> nominal;
    if (reading && reading->value)
        if (const auto held = judge(*reading)) {
            judged = *held;
            if (const auto same = wanted.in(held->measure))
                nominal = same->nominal();
        }
    m_picture->show(judged, reading && reading->value ? reading->value->sense() : Sense::Plain, nominal);
    m_picture->setAccessibleName(tr("%1: %2").arg(text, reading ? shown::verdict(verdictOf(*reading)) : tr("not read")));
}

QString LimitCard::sentence() const
{
    return m_sentence->text();
}

} // namespace ts
