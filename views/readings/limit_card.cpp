#include "views/readings/limit_card.h"

#include "model/sums/settling.h"
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
    return std::floor(value * size) / size;
}

QString settlingText(const Reading &reading, const BenchFile &bench)
{
    const auto settled = settling(reading, bench);
    if (!settled)
        return tr("It stands right on the limit: no meter settles that.");
    const QString good = shown::spread(roundedDown(settled->needed95), settled->measure);
    if (settled->meters.isEmpty())
        return tr("A meter good to %1 would settle it; none of the bench's is.").arg(good);
    const MeterChoice &best = settled->meters.first();
    const auto unit = Measure::parse(best.range.measure);
    if (!(best.range.fullScale > 0))
        return tr("A meter good to %1 would settle it; %2 is.").arg(good, best.meter.name);
    return tr("A meter good to %1 would settle it; %2 on its %3 range is.").arg(good, best.meter.name, shown::withMeasure(best.range.fullScale, unit ? *unit : Measure()));
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
    return judged->verdict == Verdict::TooCloseToCall ? chance + QLatin1Char(' ') + settlingText(*reading, bench) : chance;
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
    body()->addStretch(1);
}

void LimitCard::show(const PointRow *point, const BenchFile &bench)
{
    const Reading *reading = point ? point->latest() : nullptr;
    setHeading(point ? point->name : tr("No test point is chosen"));
    m_sentence->setText(point ? limitSentence(*point, bench) : QString());
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
