#include "model/sums/spent.h"

namespace ts {

namespace {

bool isOf(const Money &money, const Currency &bench)
{
    return money.currency().isNull() || money.currency() == bench;
}

} // namespace

QDateTime paidAt(const Spend &spend)
{
    const bool otherDay = spend.paidOn.isValid() && spend.paidOn != spend.at.toUTC().date();
    return otherDay ? QDateTime(spend.paidOn, QTime(0, 0), Qt::UTC) : spend.at;
}

int spendSign(const Spend &spend)
{
    if (spend.flow == Flow::Out)
        return 1;
    return spend.kind == SpendKind::Refund ? -1 : 0;
}

std::optional<Money> inCurrency(const Spend &spend, const Currency &bench)
{
    if (spend.amount && isOf(*spend.amount, bench))
        return Money(spend.amount->minor(), bench);
    if (spend.inBenchCurrency && isOf(*spend.inBenchCurrency, bench))
        return Money(spend.inBenchCurrency->minor(), bench);
    return std::nullopt;
}

std::optional<Money> inCurrency(const Need &need, const Currency &bench)
{
    if (!need.price || !isOf(*need.price, bench))
        return std::nullopt;
    return Money(need.price->minor(), bench).times(need.quantity);
}

Spent spentOn(const UnitFile &file, const Currency &bench)
{
    Spent spent{Money(0, bench), Money(0, bench), 0, {}};
    for (const Spend &spend : file.all<Spend>()) {
        const int sign = spend.removed ? 0 : spendSign(spend);
        if (sign == 0 || !spend.amount)
            continue;
        if (const auto amount = inCurrency(spend, bench))
            spent.total += amount->times(sign);
        else
            spent.without.append({spend.text, *spend.amount, spend.flow});
    }
    for (const Need &need : file.all<Need>()) {
        if (need.removed)
            continue;
        if (!need.price)
            ++spent.unpriced;
        else if (const auto cost = inCurrency(need, bench))
            (need.state == NeedState::Needed ? spent.toCome : spent.total) += *cost;
        else
            spent.without.append({need.text, need.price->times(need.quantity), Flow::Out});
    }
    return spent;
}

Money spentAs(const UnitFile &file, const Currency &bench, const QList<SpendKind> &kinds)
{
    Money sum(0, bench);
    for (const Spend &spend : file.all<Spend>()) {
        if (spend.removed || !kinds.contains(spend.kind))
            continue;
        if (const auto amount = inCurrency(spend, bench))
            sum += amount->times(spendSign(spend));
    }
    return sum;
}

} // namespace ts
