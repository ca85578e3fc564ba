#include "model/sums/statistics/uncertainty.h"

#include "model/sums/given.h"
#include "model/sums/statistics/student_t.h"
#include "model/values/quantity.h"
#include "model/values/quoted.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

Expected<double> divisorOf(const QString &text)
{
    const QString word = text.trimmed().toLower();
    if (word.isEmpty() || word == u"normal"_s)
        return 1.0;
    if (word.startsWith(u"rect"_s))
        return std::numbers::sqrt3;
    if (word.startsWith(u"tri"_s))
        return std::sqrt(6.0);
    if (word.startsWith(u"arc"_s))
        return std::numbers::sqrt2;
    return parseNumber(word);
}

Expected<double> dofOf(const QString &text)
{
    const QString word = text.trimmed().toLower();
    if (word.isEmpty() || word == u"inf"_s || word == u"infinite"_s || word == u"∞"_s)
        return endless;
    return parseNumber(word);
}

} // namespace

double UncertaintyTerm::standard() const
{
    return std::abs(sensitivity * value / divisor);
}

CombinedUncertainty combined(const QList<UncertaintyTerm> &terms, double coverage)
{
    CombinedUncertainty sum;
    double largest = 0;
    for (const UncertaintyTerm &term : terms)
        largest = std::max(largest, term.standard());
    if (largest > 0) { // in shares of the largest, so that neither squares nor fourth powers leave the range of a double
        double squares = 0;
        double fourths = 0;
        for (const UncertaintyTerm &term : terms) {
            const double share = std::pow(term.standard() / largest, 2);
            squares += share;
            fourths += share * share / term.dof;
        }
        sum.standard = largest * std::sqrt(squares);
        sum.dof = fourths > 0 ? squares * squares / fourths : endless;
    }
    sum.k = studentFactor(coverage, std::isinf(sum.dof) ? sum.dof : std::max(1.0, std::floor(sum.dof + 1e-9)));
    sum.expanded = sum.k * sum.standard;
    return sum;
}

Expected<UncertaintyTerm> parseTerm(const QString &text)
{
    const QString did = quoted(text) + u" is no contribution to an uncertainty"_s;
    const QString todo = u"write value:divisor:sensitivity:dof, such as 1.04:rectangular or 0.012:1:1:9"_s;
    const QStringList parts = text.trimmed().split(u':');
    if (parts.size() > 4)
        return Trouble{did, u"it has %1 parts"_s.arg(parts.size()), todo};
    const auto value = parseNumber(parts.first().trimmed());
    const auto divisor = divisorOf(parts.value(1));
    const auto sensitivity = parts.value(2).trimmed().isEmpty() ? Expected<double>(1.0) : parseNumber(parts.value(2).trimmed());
    const auto dof = dofOf(parts.value(3));
    if (!value || !divisor || !sensitivity || !dof)
        return Trouble{did, u"part of it is no number"_s, todo};
    if (!(*divisor > 0) || !(*dof > 0))
        return Trouble{did, u"divisor and degrees of freedom must be above 0"_s, todo};
    return UncertaintyTerm{*value, *divisor, *sensitivity, *dof};
}

Sum uncertaintySum()
{
    return {u"uncertainty"_s,
            u"what several independent contributions to an uncertainty come to"_s,
            {{u"terms"_s,
              u"value:divisor:sensitivity:dof, comma-separated; the divisor is a number or rectangular, triangular, arcsine, "
              "normal; what is left out at the end is 1, 1, infinite"_s},
             {u"coverage"_s, u"share that the expanded uncertainty is to hold"_s, false, {}, u"0.95"_s}},
            {{u"combined"_s, u"standard uncertainty, in the unit of the terms"_s},
             {u"dof"_s, u"effective degrees of freedom; null where infinite"_s},
             {u"k"_s, u"coverage factor of the t law at the next lower whole number"_s},
             {u"expanded"_s, u"k times combined"_s}},
            u"JCGM 100:2008, 5.1.2, annex G (Welch-Satterthwaite, G.4.1)"_s,
            worked(u"uncertainty"_s,
                   [](Given &given) -> SumOutput {
                       QList<UncertaintyTerm> terms;
                       for (const QString &each : given.text(u"terms").split(u',', Qt::SkipEmptyParts)) {
                           const auto term = parseTerm(each);
                           if (!term)
                               return given.refuse(term.trouble());
                           terms << *term;
                       }
                       const double coverage = given.number(u"coverage");
                       if (!(coverage > 0) || !(coverage < 1))
                           return given.refuse(u"coverage must lie between 0 and 1"_s, u"give 0.95"_s);
                       const CombinedUncertainty sum = combined(terms, coverage);
                       return {{u"combined"_s, sum.standard},
                               {u"dof"_s, orNull(std::isinf(sum.dof) ? std::nullopt : std::optional(sum.dof))},
                               {u"k"_s, sum.k},
                               {u"expanded"_s, sum.expanded}};
                   }),
            u"u = √Σ(c u)²; ν = u⁴ / Σ((c u)⁴ / ν_i); U = k u"_s};
}

} // namespace ts
