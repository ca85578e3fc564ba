#include "model/records/spend_part.h"

namespace ts {

QList<Spend> spendsOf(const UnitFile &file, const SpendPart &part)
{
    QList<Spend> found;
    for (const Spend &spend : file.all<Spend>())
        if (!spend.removed && spend.kind == part.kind && spend.flow == part.flow)
            found << spend;
    return found;
}

std::optional<Money> sumOf(const QList<Spend> &spends)
{
    std::optional<Money> sum;
    for (const Spend &spend : spends) {
        if (!spend.amount)
            continue;
        if (sum && !(sum->currency() == spend.amount->currency()))
            return sum;
        sum = sum ? *sum + *spend.amount : *spend.amount;
    }
    return sum;
}

Expected<void> setSum(Change &change, const UnitFile &file, const SpendPart &part, const std::optional<Money> &sum,
                      const std::function<void(Spend &)> &particulars, const QString &did, Maker &maker)
{
    if (sum && sum->minor() < 0)
        return Trouble{did, QStringLiteral("%1 is below nothing").arg(sum->display()), QStringLiteral("give sums as they were paid")};
    const QList<Spend> spends = spendsOf(file, part);
    if (spends.size() > 1) {
        if (sum == sumOf(spends))
            return {};
        return Trouble{did, QStringLiteral("there are %1 spends of the kind \"%2\"").arg(spends.size()).arg(part.text), QStringLiteral("change them on the Money page")};
    }
    if (spends.isEmpty() && !sum)
        return {};
    if (!sum) {
        change.remove(spends.first());
        return {};
    }
    Spend spend = spends.isEmpty() ? maker.fresh<Spend>() : spends.first();
    if (spends.isEmpty()) {
        spend.unit = file.unit.id;
        spend.text = part.text;
        spend.kind = part.kind;
        spend.flow = part.flow;
    }
    if (spend.amount != sum)
        spend.inBenchCurrency.reset(); // it was that of another sum
    spend.amount = sum;
    particulars(spend);
    if (spends.isEmpty())
        change.add(spend);
    else
        change.edit(spends.first(), spend);
    return {};
}

} // namespace ts
