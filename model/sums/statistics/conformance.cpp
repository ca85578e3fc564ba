#include "model/sums/statistics/conformance.h"

#include "model/sums/given.h"
#include "model/sums/normal.h"

#include <cmath>
#include <numbers>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// Simpson's rule, finer than the narrower of the two laws needs.
template <class Function>
double integral(double from, double to, Function function)
{
    constexpr int pieces = 4000;
    if (!(to > from))
        return 0;
    const double step = (to - from) / pieces;
    double sum = function(from) + function(to);
    for (int i = 1; i < pieces; ++i)
        sum += (i % 2 == 1 ? 4 : 2) * function(from + i * step);
    return sum * step / 3;
}

} // namespace

Expected<AcceptanceRisk> acceptanceRisk(double mean, double processSd, double u, double low, double high, double guard)
{
    const QString did = u"Cannot work out the risks"_s;
    if (!(processSd > 0) || !(u > 0))
        return Trouble{did, u"a standard deviation is not above 0"_s, u"give both above 0"_s};
    if (!(high > low) || !(high - guard > low + guard))
        return Trouble{did, u"the limits leave nothing to accept"_s,
                       u"give a high limit above the low one and a smaller guard band"_s};
    const auto density = [&](double x) {
        const double z = (x - mean) / processSd;
        return std::exp(-0.5 * z * z) / (processSd * std::sqrt(2 * std::numbers::pi));
    };
    const auto accepted = [&](double x) { return normalCdf((high - guard - x) / u) - normalCdf((low + guard - x) / u); };
    const auto bad = [&](double x) { return density(x) * accepted(x); };
    const auto refused = [&](double x) { return density(x) * (1 - accepted(x)); };
    const double far = 9 * processSd;
    AcceptanceRisk risk;
    risk.conforming = normalCdf((high - mean) / processSd) - normalCdf((low - mean) / processSd);
    risk.consumer = integral(mean - far, std::min(low, mean + far), bad) + integral(std::max(high, mean - far), mean + far, bad);
    risk.producer = integral(std::max(low, mean - far), std::min(high, mean + far), refused);
    return risk;
}

Sum acceptanceRiskSum()
{
    return {
        u"acceptance-risk"_s,
        u"what a guard band costs: the chance to accept what is bad and to reject what is good"_s,
        {{u"mean"_s, u"of the items"_s},
         {u"spread"_s, u"standard deviation of the items"_s},
         {u"uncertainty"_s, u"standard uncertainty of the measurement"_s},
         {u"low"_s, u"lower limit"_s},
         {u"high"_s, u"upper limit"_s},
         {u"guard"_s, u"width of the guard band inside each limit; the full U95 is what verdicts here use"_s, false, {}, u"0"_s}},
        {{u"conforming"_s, u"chance that an item is within its limits"_s},
         {u"consumer_risk"_s, u"chance that it is accepted and is not within"_s},
         {u"producer_risk"_s, u"chance that it is rejected and is within"_s}},
        u"JCGM 106:2012, clauses 8.3.2 and 9.3"_s,
        worked(u"acceptance-risk"_s,
               [](Given &given) -> SumOutput {
                   const auto risk = acceptanceRisk(given.number(u"mean"), given.number(u"spread"), given.number(u"uncertainty"),
                                                    given.number(u"low"), given.number(u"high"), given.number(u"guard"));
                   if (!risk)
                       return given.refuse(risk.trouble());
                   return {{u"conforming"_s, risk->conforming},
                           {u"consumer_risk"_s, risk->consumer},
                           {u"producer_risk"_s, risk->producer}};
               }),
        u"∫ over items of density × chance of acceptance, outside (consumer) and inside (producer) the limits"_s};
}

} // namespace ts
