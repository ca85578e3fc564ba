#include "model/sums/metering/good_enough.h"

#include "model/sums/meter_spec.h"
#include "model/sums/metering/budget.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/metering/uncertainty_text.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString choiceText(const MeterChoice &choice, const Measure &measure)
{
    QString text = choice.name;
    if (!choice.range.isEmpty())
        text += u", "_s + choice.range;
    text += u" (± %1)"_s.arg(uncertaintyWithUnit(choice.uncertainty95, measure));
    return choice.overdue.isEmpty() ? text : text + u", but its "_s + choice.overdue;
}

QString settlingSentence(const Settling &settling, const Measure &measure)
{
    if (settling.needed <= 0)
        return u"The value stands on its limit: no meter settles that."_s;
    // Rounded down: a meter that just misses must not look good enough.
    const double step = std::pow(10.0, std::floor(std::log10(settling.needed)) - 1);
    const QString needed =
        u"It needs ± %1 or better"_s.arg(Quantity(std::floor(settling.needed / step + 1e-9) * step, measure).in(measure)->text());
    if (!settling.good.isEmpty()) {
        QStringList names;
        for (const MeterChoice &choice : settling.good.mid(0, 3))
            names << choiceText(choice, measure);
        return needed + u": "_s + names.join(u"; "_s) + u'.';
    }
    if (settling.others.isEmpty())
        return needed + u"; none of the bench's meters has a range for it."_s;
    return needed +
           u"; none of the bench's meters is good enough, the best is %1."_s.arg(choiceText(settling.others.first(), measure));
}

} // namespace

QList<MeterChoice> metersFor(const BenchFile &bench, const Quantity &value, const QDate &day)
{
    QList<MeterChoice> choices;
    for (const Meter &meter : bench.all<Meter>()) {
        if (meter.removed)
            continue;
        const auto range = rangeFor(bench, meter.id, value);
        const auto uncertainty = range ? uncertaintyOf(bench, meter.id, value) : Expected<double>(range.trouble());
        if (uncertainty)
            choices << MeterChoice{meter.id, meter.name, rangeText(*range), *uncertainty, overdueWords(meter, day)};
    }
    std::stable_sort(choices.begin(), choices.end(), [](const MeterChoice &a, const MeterChoice &b) {
        return std::pair(!a.overdue.isEmpty(), a.uncertainty95) < std::pair(!b.overdue.isEmpty(), b.uncertainty95);
    });
    return choices;
}

Expected<Settling> whatWouldSettle(const Quantity &value, const Limit &limit, const BenchFile &bench, const QDate &day)
{
    const auto held = judge(value, limit);
    if (!held)
        return held.trouble();
    const bool figure = value.sense() == Sense::Plain || value.sense() == Sense::About;
    if (!figure || (!held->low && !held->high))
        return Trouble{u"Nothing is to be settled for %1"_s.arg(value.text()),
                       figure ? u"no limit with an end is wanted"_s : u"it is no figure"_s,
                       {}};
    Settling settling;
    settling.needed = HUGE_VAL;
    for (const auto &bound : {held->low, held->high})
        if (bound)
            settling.needed = std::min(settling.needed, std::abs(held->value - *bound));
    if (settling.needed < 1e-12 * std::abs(held->value))
        settling.needed = 0;
    for (const MeterChoice &choice : metersFor(bench, Quantity(held->value, held->measure), day))
        (choice.uncertainty95 < settling.needed ? settling.good : settling.others) << choice;
    settling.sentence = settlingSentence(settling, held->measure);
    return settling;
}

} // namespace ts
