#include "model/sums/check_order.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ts {

double expectedMinutes(const QList<SuspectCost> &suspects, const QList<qsizetype> &order)
{
    double all = 0, spent = 0, sum = 0;
    for (const SuspectCost &each : suspects)
        all += each.weight;
    for (const qsizetype place : order) {
        spent += suspects[place].minutes;
        sum += suspects[place].weight / all * spent;
    }
    return sum;
}

Expected<CheckOrder> checkOrder(const QList<SuspectCost> &suspects)
{
    const QString did = QStringLiteral("Cannot put the checks in order");
    if (suspects.isEmpty())
        return Trouble{did, QStringLiteral("there is no suspect"), {}};
    double all = 0;
    for (const SuspectCost &each : suspects) {
        if (!std::isfinite(each.weight) || !std::isfinite(each.minutes) || each.weight < 0 || each.minutes < 0)
            return Trouble{did, QStringLiteral("weights and minutes are numbers from 0 up"), {}};
        all += each.weight;
    }
    if (!(all > 0) || !std::isfinite(all))
        return Trouble{did, QStringLiteral("all weights are 0"), QStringLiteral("give at least one suspect a weight")};
    CheckOrder best;
    best.order.resize(suspects.size());
    std::iota(best.order.begin(), best.order.end(), 0);
    std::stable_sort(best.order.begin(), best.order.end(), [&](qsizetype a, qsizetype b) {
        const SuspectCost &left = suspects[a], &right = suspects[b];
        // Ratios crosswise: a weight of 0 goes last. Two that differ in the last bits alone are a tie.
        const double before = left.minutes * right.weight, after = right.minutes * left.weight;
        if (std::abs(before - after) > 1e-12 * std::max(before, after))
            return before < after;
        if (left.weight > 0 && right.weight > 0)
            return left.minutes < right.minutes;
        return left.weight > right.weight;
    });
    best.expectedMinutes = expectedMinutes(suspects, best.order);
    return best;
}

} // namespace ts
