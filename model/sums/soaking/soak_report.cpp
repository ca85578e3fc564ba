#include "model/sums/soaking/soak_report.h"

#include "model/sums/metering/uncertainty_text.h"
#include "model/sums/normal.h"
#include "model/sums/spread.h"
#include "model/sums/statistics/line_fit.h"
#include "model/sums/statistics/theil_sen.h"

#include <algorithm>
#include <array>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double normalOfMedian = 1.4826; // standard deviation of a normal law over its median absolute deviation
constexpr double farOff = 5;              // of those: an outlier

struct Timed {
    const Reading *reading;
    QDateTime at;
};

QList<double> beside(const QList<double> &x, const QList<double> &y, double slope, double intercept)
{
    QList<double> left;
    left.reserve(x.size());
    for (qsizetype i = 0; i < x.size(); ++i)
        left << y.at(i) - intercept - slope * x.at(i);
    return left;
}

double medianSize(const QList<double> &row)
{
    QList<double> sizes;
    sizes.reserve(row.size());
    for (const double each : row)
        sizes << std::abs(each);
    return *medianOf(sizes);
}

/// The verdict of a series by its drift and its readings.
std::optional<SoakVerdict> verdictOf(const SoakSeries &series)
{
    if (series.worst == Verdict::Outside)
        return SoakVerdict::Out;
    if (!series.drift)
        return std::nullopt;
    const Drift &drift = *series.drift;
    const double change = std::abs(drift.perHour) * (series.hours.last() - series.hours.first());
    // Tails of binary arithmetic are no drift: a row of one value has a slope of 1e-17.
    const double size = std::max(std::abs(series.lowest), std::abs(series.highest));
    const bool clear = drift.low > 0 || drift.high < 0;
    return clear && change > 2 * drift.scatter && change > 1e-9 * size ? SoakVerdict::Drifting : SoakVerdict::Steady;
}

void judgeInto(SoakSeries &series, const Reading &reading, const Limit &wanted)
{
    constexpr std::array order{Verdict::NoLimit, Verdict::Within, Verdict::TooCloseToCall, Verdict::Outside};
    const auto rank = [&order](Verdict verdict) { return std::find(order.begin(), order.end(), verdict); };
    const auto judged = judge(*reading.value, wanted, reading.uncertainty);
    if (judged && rank(judged->verdict) > rank(series.worst))
        series.worst = judged->verdict;
}

/// The readings of a soak, by name, in order of time.
class Gatherer {
public:
    Gatherer(const UnitFile &file, const Soak &soak) : m_soak(soak)
    {
        QList<Timed> timed;
        for (const Reading &reading : file.all<Reading>())
            if (!reading.removed && reading.soak == soak.id && reading.value)
                timed << Timed{&reading, reading.at};
        std::stable_sort(timed.begin(), timed.end(), [](const Timed &a, const Timed &b) { return a.at < b.at; });
        for (const Timed &each : timed) {
            times << each.at;
            take(each);
        }
    }

    QList<SoakSeries> series;
    QList<QDateTime> times;

private:
    void take(const Timed &timed)
    {
        const Reading &reading = *timed.reading;
        SoakSeries &its = seriesOf(reading);
        judgeInto(its, reading, its.wanted);
        const auto same =
            reading.value->sense() == Sense::OverRange ? Expected<Quantity>(Trouble{}) : reading.value->in(its.measure);
        if (!same) {
            ++its.overRange;
            return;
        }
        its.lowest = its.values.isEmpty() ? same->value() : std::min(its.lowest, same->value());
        its.highest = its.values.isEmpty() ? same->value() : std::max(its.highest, same->value());
        its.values << same->value();
        its.hours << static_cast<double>(m_soak.startedAt.msecsTo(timed.at)) / 3.6e6;
    }

    SoakSeries &seriesOf(const Reading &reading)
    {
        const QString key = reading.name.simplified().toCaseFolded();
        auto place = m_places.constFind(key);
        if (place == m_places.constEnd()) {
            place = m_places.insert(key, series.size());
            series << SoakSeries();
            series.last().name = reading.name;
            series.last().measure = reading.value->measure();
            series.last().wanted = m_soak.wanted.isNone() ? reading.wanted : m_soak.wanted;
        }
        return series[*place];
    }

    const Soak &m_soak;
    QHash<QString, qsizetype> m_places;
};

QString seriesWords(const SoakSeries &series)
{
    const auto figure = [&](double value) { return Quantity(value, series.measure).text(); };
    QString text = u"%1: %2 readings"_s.arg(series.name).arg(series.values.size());
    if (!series.values.isEmpty())
        text += u" from %1 to %2"_s.arg(figure(series.lowest), figure(series.highest));
    if (series.overRange > 0)
        text += u", %1 without a figure"_s.arg(series.overRange);
    if (!series.drift)
        return text + (series.verdict ? u", outside its limit"_s : u", too few to say how it drifts"_s);
    const Drift &drift = *series.drift;
    const QString half = uncertaintyFigures((drift.high - drift.low) / 2);
    text += u", drift %1%2 an hour%3"_s.arg(QString::number(drift.perHour, 'g', 3), half.isEmpty() ? QString() : u" ± "_s + half,
                                            drift.robust ? u" (by the median of all slopes, %1 outliers)"_s.arg(drift.outliers)
                                                         : QString());
    text += u": "_s + toWord(*series.verdict);
    if (drift.lag1 > 0.5)
        text += u"; the readings follow each other (lag-1 correlation %1), so the interval is narrower than it ought to be"_s.arg(
            drift.lag1, 0, 'f', 2);
    return text;
}

} // namespace

Expected<Drift> driftOf(const QList<double> &hours, const QList<double> &values)
{
    const auto fit = fitLine(hours, values);
    if (!fit)
        return fit.trouble();
    if (hours.size() < 3)
        return Trouble{u"Cannot say how it drifts"_s, u"there are %1 readings"_s.arg(hours.size()), u"take three or more"_s};
    const auto robust = theilSen(hours, values);
    if (!robust)
        return robust.trouble();
    const QList<double> left = beside(hours, values, robust->slope, robust->intercept);
    const double scatter = normalOfMedian * medianSize(left);
    Drift drift;
    const double reach = std::max(farOff * scatter, 1e-9 * medianSize(values));
    drift.outliers =
        static_cast<int>(std::count_if(left.begin(), left.end(), [&](double each) { return std::abs(each) > reach; }));
    // Where more than half of the readings lie on the line to the last digit every other looks like an outlier.
    drift.robust = drift.outliers > 0 && scatter > 0;
    if (drift.robust) {
        const auto interval = theilSenInterval(hours, values, robust->slope);
        drift.perHour = robust->slope;
        drift.low = interval.low;
        drift.high = interval.high;
        drift.scatter = scatter;
    } else {
        drift.outliers = 0;
        drift.perHour = fit->slope;
        drift.low = fit->slope - *fit->slopeHalf95;
        drift.high = fit->slope + *fit->slopeHalf95;
        drift.scatter = *fit->residualSd;
    }
    if (const auto spread = spreadOf(drift.robust ? left : beside(hours, values, fit->slope, fit->intercept));
        spread && spread->lag1)
        drift.lag1 = *spread->lag1;
    return drift;
}

SoakReport soakReport(const UnitFile &file, const Soak &soak, const QDateTime &now)
{
    Gatherer gathered(file, soak);
    SoakReport report;
    report.series = std::move(gathered.series);
    report.gaps = soakGaps(soak, gathered.times, now);
    report.minutes = soakMinutes(soak, report.gaps, now);
    report.readings = gathered.times.size();
    for (qsizetype i = 0; i < report.series.size(); ++i) {
        SoakSeries &series = report.series[i];
        if (const auto drift = driftOf(series.hours, series.values))
            series.drift = *drift;
        series.verdict = verdictOf(series);
        if (report.telling < 0 || (series.verdict && (!report.verdict || *series.verdict > *report.verdict)))
            report.telling = i;
        if (series.verdict && (!report.verdict || *series.verdict > *report.verdict))
            report.verdict = series.verdict;
        report.words << seriesWords(series);
    }
    report.words << gapWords(soak, report.gaps);
    return report;
}

QList<Soak> dueSoaks(const UnitFile &file, const QDateTime &now)
{
    QHash<Id<Soak>, QDateTime> last;
    for (const Reading &reading : file.all<Reading>())
        if (!reading.removed && !reading.soak.isNull() && !(last.value(reading.soak) > reading.at))
            last.insert(reading.soak, reading.at);
    QList<std::pair<QDateTime, Soak>> due;
    for (const Soak &soak : file.all<Soak>())
        if (const QDateTime next = nextDue(soak, last.value(soak.id)); !soak.removed && next.isValid() && next <= now)
            due << std::pair(next, soak);
    std::stable_sort(due.begin(), due.end(), [](const auto &a, const auto &b) { return a.first < b.first; });
    QList<Soak> soaks;
    for (const auto &[next, soak] : due)
        soaks << soak;
    return soaks;
}

} // namespace ts
