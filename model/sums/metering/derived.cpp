#include "model/sums/metering/derived.h"

#include "model/sums/given.h"
#include "model/sums/metering/uncertainty_text.h"
#include "model/sums/normal.h"
#include "model/sums/statistics/line_fit.h"
#include "model/sums/statistics/student_t.h"
#include "model/values/number.h"

#include <QJsonArray>

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double decibelsPerNeper = 20 / std::numbers::ln10;

bool isVolts(const Measure &measure)
{
    return measure.symbol() == u"V"_s || measure.symbol() == u"Vrms"_s;
}

Trouble notDerived(Derived kind, const QString &wrong, const QString &todo)
{
    return {u"Cannot work out the "_s + toWord(kind), wrong, todo};
}

/// What is wrong with the inputs, if anything is.
std::optional<Trouble> unfit(Derived kind, const DerivedFrom &first, const DerivedFrom &second, double correlation)
{
    for (const DerivedFrom *each : {&first, &second})
        if (each->value.sense() == Sense::OverRange || !(each->standard >= 0))
            return notDerived(kind, u"%1 is no figure with an uncertainty"_s.arg(each->value.text()), {});
    if (!(correlation >= -1 && correlation <= 1))
        return notDerived(kind, u"%1 is no correlation"_s.arg(correlation), u"give −1 to 1"_s);
    if (kind == Derived::Current || kind == Derived::Power) {
        if (!isVolts(first.value.measure()) || second.value.measure().symbol() != u"Ω"_s)
            return notDerived(kind, u"it takes volts and ohms"_s, u"give the drop in V and the resistance in Ω"_s);
        if (!(second.value.base() > 0))
            return notDerived(kind, u"%1 is no resistance"_s.arg(second.value.text()), u"give more than 0 Ω"_s);
        return std::nullopt;
    }
    if (!first.value.measure().comparableWith(second.value.measure()))
        return notDerived(kind, u"%1 and %2 do not compare"_s.arg(first.value.text(), second.value.text()),
                          u"give both in one unit"_s);
    if (second.value.base() == 0 || (kind != Derived::Ratio && !(first.value.base() / second.value.base() > 0)))
        return notDerived(kind, u"%1 against %2 has none"_s.arg(first.value.text(), second.value.text()),
                          u"give values above 0"_s);
    return std::nullopt;
}

/// Result and its rate of change with each of the two, everything in base units.
struct Slopes {
    double result;
    double byFirst;
    double bySecond;
    QString unit;
};

Slopes slopesOf(Derived kind, double a, double b)
{
    switch (kind) {
    case Derived::Current:
        return {a / b, 1 / b, -a / (b * b), u"A"_s};
    case Derived::Power:
        return {a * a / b, 2 * a / b, -a * a / (b * b), u"W"_s};
    case Derived::Ratio:
        return {a / b, 1 / b, -a / (b * b), {}};
    case Derived::Gain:
    case Derived::Level:
    case Derived::Balance:
        break;
    }
    return {20 * std::log10(a / b), decibelsPerNeper / a, -decibelsPerNeper / b, u"dB"_s};
}

/// In the prefix that leaves 1 to 999: 0.0455 A is 45.5 mA.
Measure handyUnit(double value, const QString &symbol)
{
    if (symbol == u"dB"_s || symbol.isEmpty() || value == 0)
        return symbol.isEmpty() ? Measure() : *Measure::parse(symbol);
    for (const QStringView prefix : {u"", u"m", u"µ", u"n"})
        if (const auto measure = Measure::parse(prefix.toString() + symbol); std::abs(value) >= measure->factor())
            return *measure;
    return *Measure::parse(u'n' + symbol);
}

} // namespace

Expected<Budget> derivedReading(Derived kind, const DerivedFrom &first, const DerivedFrom &second, double correlation)
{
    if (const auto trouble = unfit(kind, first, second, correlation))
        return *trouble;
    const Slopes slopes = slopesOf(kind, first.value.base(), second.value.base());
    const Measure measure = handyUnit(slopes.result, slopes.unit);
    const double shown = 1 / measure.factor();
    Budget budget;
    budget.value = Quantity(withoutBinaryDust(slopes.result * shown, slopes.result * shown), measure);
    const QList<UncertaintyTerm> terms{
        {first.standard * first.value.measure().factor(), 1, slopes.byFirst * shown, first.dof},
        {second.standard * second.value.measure().factor(), 1, slopes.bySecond * shown, second.dof}};
    budget.sum = combined(terms);
    if (correlation != 0.0) {
        budget.sum.standard = propagated({terms.at(0).sensitivity, terms.at(1).sensitivity},
                                         {terms.at(0).value, terms.at(1).value}, {{1, correlation}, {correlation, 1}});
        budget.sum.dof = std::min(first.dof, second.dof);
        budget.sum.k =
            studentFactor(0.95, std::isinf(budget.sum.dof) ? budget.sum.dof : std::max(1.0, std::floor(budget.sum.dof)));
        budget.sum.expanded = budget.sum.k * budget.sum.standard;
    }
    const double variance = std::pow(budget.sum.standard, 2);
    const auto line = [&](const DerivedFrom &from, const UncertaintyTerm &term, const QString &fallback) {
        const QString name = from.name.isEmpty() ? fallback : from.name;
        budget.lines << BudgetLine{
            u"%1 %2 ± %3 standard"_s.arg(name, from.value.text(), uncertaintyWithUnit(from.standard, from.value.measure())),
            term.standard(), from.dof, variance > 0 ? std::pow(term.standard(), 2) / variance : 0};
    };
    line(first, terms.at(0), u"first"_s);
    line(second, terms.at(1), u"second"_s);
    return budget;
}

double propagated(const QList<double> &sensitivities, const QList<double> &standards, const QList<QList<double>> &correlations)
{
    double variance = 0;
    for (qsizetype i = 0; i < sensitivities.size(); ++i)
        for (qsizetype j = 0; j < sensitivities.size(); ++j)
            variance += sensitivities.at(i) * sensitivities.at(j) * correlations.at(i).at(j) * standards.at(i) * standards.at(j);
    return std::sqrt(std::max(0.0, variance)); // a full correlation may leave a hair below nothing
}

Expected<double> correlationOfMeans(const QList<double> &a, const QList<double> &b)
{
    const auto forward = fitLine(a, b);
    if (!forward)
        return forward.trouble();
    return std::copysign(std::sqrt(std::max(0.0, forward->r2)), forward->slope);
}

Sum derivedSum()
{
    return {
        u"derived"_s,
        u"a reading worked out from two others, with its uncertainty"_s,
        {{u"kind"_s,
          u"current: drop and resistor; power: volts and load; gain: out and in; level: volts and reference; ratio and "
          "balance: left and right"_s,
          true,
          {},
          {},
          allWords<Derived>()},
         {u"first"_s, u"with unit: 10.0 mV"_s},
         {u"first_u"_s, u"its 95 % uncertainty, in its unit"_s, false, {}, u"0"_s},
         {u"second"_s, u"with unit: 0.22 Ω"_s},
         {u"second_u"_s, u"its 95 % uncertainty, in its unit"_s, false, {}, u"0"_s},
         {u"correlation"_s, u"of the two, −1 to 1: two channels with one range of one meter come near 1"_s, false, {}, u"0"_s}},
        {{u"value"_s, u"the result"_s},
         {u"unit"_s, u"of the result"_s},
         {u"combined"_s, u"standard uncertainty"_s},
         {u"expanded"_s, u"half width that holds 95 %"_s},
         {u"lines"_s, u"the budget in words"_s}},
        u"JCGM 100:2008, 5.1.2, 5.2.2 (equation 16)"_s,
        worked(u"derived"_s,
               [](Given &given) -> SumOutput {
                   const auto kind = static_cast<Derived>(given.choice(u"kind", allWords<Derived>()));
                   const auto first = Quantity::parse(given.text(u"first"));
                   const auto second = Quantity::parse(given.text(u"second"));
                   if (!first || !second)
                       return given.refuse(first ? second.trouble() : first.trouble());
                   const DerivedFrom a{*first, given.number(u"first_u") / coverage95, std::numeric_limits<double>::infinity(),
                                       u"first"_s};
                   const DerivedFrom b{*second, given.number(u"second_u") / coverage95, std::numeric_limits<double>::infinity(),
                                       u"second"_s};
                   const auto budget = derivedReading(kind, a, b, given.number(u"correlation"));
                   if (!budget)
                       return given.refuse(budget.trouble());
                   return {{u"value"_s, budget->value.value()},
                           {u"unit"_s, budget->value.measure().text()},
                           {u"combined"_s, budget->sum.standard},
                           {u"expanded"_s, budget->sum.expanded},
                           {u"lines"_s, QJsonArray::fromStringList(budget->words())}};
               }),
        u"I = U / R; P = U² / R; dB = 20 log10(a / b); u² = Σ(c u)² + 2 c1 c2 r u1 u2"_s};
}

} // namespace ts
