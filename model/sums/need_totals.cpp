#include "model/sums/need_totals.h"

#include <algorithm>

namespace ts {

namespace {

void count(NeedTotal &total, const Need &need, const Currency &bench)
{
    ++total.lines;
    total.pieces += need.quantity;
    if (!need.price) {
        ++total.unpriced;
        return;
    }
    const Money sum = need.price->times(need.quantity);
    const auto same = std::find_if(total.sums.begin(), total.sums.end(), [&](const Money &each) { return each.currency() == sum.currency(); });
    if (same != total.sums.end())
        *same += sum;
    else if (sum.currency() == bench)
        total.sums.prepend(sum);
    else
        total.sums << sum;
}

} // namespace

QList<NeedTotal> needTotals(const UnitFile &file, const Currency &bench)
{
    QList<NeedTotal> totals;
    for (const auto &[state, word] : Words<NeedState>::list) {
        NeedTotal total;
        total.state = state;
        for (const Need &need : file.all<Need>())
            if (!need.removed && need.state == state)
                count(total, need, bench);
        totals << total;
    }
    return totals;
}

NeedTotal needTotal(const UnitFile &file, const Currency &bench)
{
    NeedTotal total;
    for (const Need &need : file.all<Need>())
        if (!need.removed)
            count(total, need, bench);
    return total;
}

} // namespace ts
