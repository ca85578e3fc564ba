#include "model/sums/bayes.h"

#include <cmath>
#include <numeric>

namespace ts {

QList<double> bayes(const QList<double> &before, const QList<double> &likelihood)
{
    if (before.size() != likelihood.size())
        return {};
    QList<double> after(before.size());
    for (qsizetype i = 0; i < before.size(); ++i)
        after[i] = before[i] * likelihood[i];
    const double sum = std::accumulate(after.cbegin(), after.cend(), 0.0);
    if (!(sum > 0))
        return {};
    for (double &each : after)
        each /= sum;
    return after;
}

double entropyBits(const QList<double> &weights)
{
    const double sum = std::accumulate(weights.cbegin(), weights.cend(), 0.0);
    double bits = 0;
    for (const double weight : weights)
        if (weight > 0)
            bits -= weight / sum * std::log2(weight / sum);
    return bits;
}

double expectedInformation(const QList<double> &before, const QList<double> &abnormal)
{
    const double sum = std::accumulate(before.cbegin(), before.cend(), 0.0);
    if (!(sum > 0) || before.size() != abnormal.size())
        return 0;
    QList<double> ifAbnormal, ifNormal;
    double chance = 0;
    for (qsizetype i = 0; i < before.size(); ++i) {
        ifAbnormal << before[i] * abnormal[i];
        ifNormal << before[i] * (1 - abnormal[i]);
        chance += ifAbnormal.last() / sum;
    }
    return entropyBits(before) - chance * entropyBits(ifAbnormal) - (1 - chance) * entropyBits(ifNormal);
}

} // namespace ts
