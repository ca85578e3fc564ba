#include "model/sums/metering/budget.h"

#include "model/sums/given.h"
#include "model/sums/metering/calibration.h"
#include "model/sums/metering/repeats.h"
#include "model/sums/metering/uncertainty_text.h"
#include "model/sums/spread.h"
#include "model/values/number.h"

#include <QJsonArray>

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

Trouble noBudget(const QString &wrong, const QString &todo = {})
{
    return {u"Cannot say how sure the reading is"_s, wrong, todo};
}

/// The readings in the unit of the first.
Expected<QList<double>> inOneUnit(const QList<Quantity> &repeats)
{
    if (repeats.isEmpty())
        return noBudget(u"there is none"_s, u"take one"_s);
    QList<double> values;
    for (const Quantity &each : repeats) {
        if (each.sense() != Sense::Plain && each.sense() != Sense::About)
            return noBudget(u"%1 is no figure"_s.arg(each.text()), u"leave it out, or read it on a higher range"_s);
        const auto same = each.in(repeats.first().measure());
        if (!same)
            return same.trouble();
        values << same->value();
    }
    return values;
}

QString dofText(double dof)
{
    return std::isinf(dof) ? QString() : u", %1 degrees of freedom"_s.arg(std::floor(dof + 1e-9));
}

void addTerm(QList<UncertaintyTerm> &terms, Budget &budget, const QString &text, const UncertaintyTerm &term)
{
    terms << term;
    budget.lines << BudgetLine{text, term.standard(), term.dof, 0};
}

void conclude(Budget &budget, const QList<UncertaintyTerm> &terms)
{
    budget.sum = combined(terms);
    for (BudgetLine &line : budget.lines)
        line.share = budget.sum.standard > 0 ? std::pow(line.standard / budget.sum.standard, 2) : 0;
}

} // namespace

QStringList Budget::words() const
{
    QStringList list;
    for (const BudgetLine &line : lines)
        list << line.text + u" (u = %1, %2 % of the whole%3)"_s.arg(uncertaintyWithUnit(line.standard, value.measure()))
                                .arg(std::lround(100 * line.share))
                                .arg(dofText(line.dof));
    if (sum.standard > 0)
        list << u"together ± %1 (95 %, k = %2%3)"_s.arg(uncertaintyWithUnit(sum.expanded, value.measure()))
                    .arg(sum.k, 0, 'f', 2)
                    .arg(dofText(sum.dof));
    return list;
}

Expected<Budget> budgetOf(const ReadingTaken &taken)
{
    const auto values = inOneUnit(taken.repeats);
    if (!values)
        return values.trouble();
    const auto spread = spreadOf(*values);
    if (!spread)
        return spread.trouble();
    const Measure &measure = taken.repeats.first().measure();
    Budget budget;
    budget.value = Quantity(withoutBinaryDust(spread->mean, spread->mean), measure, taken.repeats.first().sense());
    QList<UncertaintyTerm> terms;
    if (taken.accuracy) {
        const auto half = taken.accuracy->halfWidth(budget.value);
        if (!half)
            return half.trouble();
        addTerm(terms, budget, u"%1: ± %2, a rectangle"_s.arg(taken.meterText, uncertaintyWithUnit(*half, measure)),
                {*half, std::numbers::sqrt3});
    }
    if (const auto n = static_cast<double>(spread->n); spread->sd)
        addTerm(terms, budget, u"%1 readings, standard deviation of their mean"_s.arg(n),
                {*spread->sd / std::sqrt(n), 1, 1, n - 1});
    for (const OwnTerm &own : taken.terms)
        addTerm(terms, budget, own.text, own.term);
    conclude(budget, terms);
    return budget;
}

Expected<Budget> budgetWith(const BenchFile &bench, const Id<Meter> &meter, const QList<Quantity> &repeats,
                            std::optional<double> celsius, const QList<OwnTerm> &terms)
{
    const auto values = inOneUnit(repeats);
    if (!values)
        return values.trouble();
    double highest = 0; // the meter stood on one range for all of them
    for (const double value : *values)
        highest = std::max(highest, std::abs(value));
    const auto range = rangeFor(bench, meter, Quantity(highest, repeats.first().measure()));
    if (!range)
        return range.trouble();
    const Meter *found = bench.find(meter);
    const double outside = kelvinOutside(celsius);
    const auto accuracy = MeterSpec::of(*range, outside);
    if (!accuracy)
        return accuracy.trouble();
    QStringList text{found ? found->name : u"meter"_s};
    if (const QString scale = rangeText(*range); !scale.isEmpty())
        text << scale;
    if (outside > 0)
        text << u"%1 K outside its temperatures"_s.arg(outside);
    return budgetOf({repeats, *accuracy, text.join(u", "_s), terms});
}

QString rangeText(const MeterRange &range)
{
    const auto measure = Measure::parse(range.measure);
    if (!measure || !(range.fullScale > 0))
        return {};
    Quantity scale(range.fullScale, *measure);
    const bool handy = scale.value() >= 1 && scale.value() <= 1000;
    for (const QStringView prefix : {u"n", u"µ", u"m", u"", u"k", u"M", u"G"}) {
        if (handy)
            break;
        const auto other = Measure::parse(prefix.toString() + measure->symbol());
        const auto same = other && other->comparableWith(*measure) ? scale.in(*other) : Expected<Quantity>(Trouble{});
        if (same && same->value() >= 1 && same->value() < 1000)
            scale = *same;
    }
    return scale.text() + u" range"_s;
}

Sum budgetSum()
{
    return {u"budget"_s,
            u"how sure a reading is: repeat readings, the meter's data sheet and what you add"_s,
            {{u"values"_s, u"one reading or several, parted by semicolons, the unit behind the last: 11.92; 11.93; 11.91 V"_s},
             {u"meter"_s, u"its accuracy as on the data sheet: 0.5% + 2 x 0.01 V"_s, false},
             {u"terms"_s, u"what you add: value:divisor:sensitivity:dof, comma-separated, in the unit of the values"_s, false}},
            {{u"value"_s, u"the mean"_s},
             {u"unit"_s, u"of the value and of what follows"_s},
             {u"combined"_s, u"standard uncertainty"_s},
             {u"dof"_s, u"effective degrees of freedom; null where infinite"_s},
             {u"k"_s, u"coverage factor of the t law"_s},
             {u"expanded"_s, u"half width that holds 95 %"_s},
             {u"lines"_s, u"the budget in words"_s}},
            u"JCGM 100:2008, 4.2.3, 4.3.7, 5.1.2, annex G"_s,
            worked(u"budget"_s,
                   [](Given &given) -> SumOutput {
                       const auto repeats = repeatedReadings(given.text(u"values"));
                       if (!repeats)
                           return given.refuse(repeats.trouble());
                       ReadingTaken taken{*repeats, {}, u"meter, "_s + given.text(u"meter"), {}};
                       if (given.has(u"meter")) {
                           const auto spec = MeterSpec::parse(given.text(u"meter"));
                           if (!spec)
                               return given.refuse(spec.trouble());
                           taken.accuracy = *spec;
                       }
                       for (const QString &each : given.text(u"terms").split(u',', Qt::SkipEmptyParts)) {
                           const auto term = parseTerm(each);
                           if (!term)
                               return given.refuse(term.trouble());
                           taken.terms << OwnTerm{u"own, "_s + each.trimmed(), *term};
                       }
                       const auto budget = budgetOf(taken);
                       if (!budget)
                           return given.refuse(budget.trouble());
                       return {{u"value"_s, budget->value.value()},
                               {u"unit"_s, budget->value.measure().text()},
                               {u"combined"_s, budget->sum.standard},
                               {u"dof"_s, orNull(std::isinf(budget->sum.dof) ? std::nullopt : std::optional(budget->sum.dof))},
                               {u"k"_s, budget->sum.k},
                               {u"expanded"_s, budget->sum.expanded},
                               {u"lines"_s, QJsonArray::fromStringList(budget->words())}};
                   }),
            u"u = √(a²/3 + s²/n + Σ(c u)²); U = k u"_s};
}

} // namespace ts
