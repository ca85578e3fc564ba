#include "model/records/sale.h"

namespace ts {

namespace {

struct SalePart {
    SpendKind kind;
    Flow flow;
    QString text;
    std::optional<Money> Sale::*sum;
};

const QList<SalePart> &parts()
{
    static const QList<SalePart> all{{SpendKind::Sale, Flow::In, QStringLiteral("Sold"), &Sale::price},
                                 {SpendKind::SellingFee, Flow::Out, QStringLiteral("Selling fees"), &Sale::fees},
                                 {SpendKind::CarriageOut, Flow::Out, QStringLiteral("Carriage to the buyer"), &Sale::carriage}};
    return all;
}

QList<Spend> spendsOf(const UnitFile &file, const SalePart &part)
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
            return sum; // of the first currency; the others are on the Money page
        sum = sum ? *sum + *spend.amount : *spend.amount;
    }
    return sum;
}

} // namespace

Sale saleOf(const UnitFile &file)
{
    Sale sale;
    for (const SalePart &part : parts()) {
        const QList<Spend> spends = spendsOf(file, part);
        sale.*part.sum = sumOf(spends);
        if (part.kind == SpendKind::Sale && !spends.isEmpty()) {
            sale.channel = spends.last().channel;
            sale.soldOn = spends.last().paidOn;
        }
    }
    return sale;
}

Expected<Change> saleChange(const UnitFile &file, const Sale &wish, Maker &maker)
{
    const QString did = QStringLiteral("The sale was not recorded");
    Change change(wish.price ? QStringLiteral("Sold for ") + wish.price->display() : QStringLiteral("Sale taken out"));
    for (const SalePart &part : parts()) {
        const std::optional<Money> &sum = wish.*part.sum;
        if (sum && sum->minor() < 0)
            return Trouble{did, QStringLiteral("%1 is below nothing").arg(sum->display()), QStringLiteral("give sums as they were paid")};
        const QList<Spend> spends = spendsOf(file, part);
        if (spends.size() > 1) {
            if (sum == sumOf(spends))
                continue;
            return Trouble{did, QStringLiteral("there are %1 spends of the kind \"%2\"").arg(spends.size()).arg(part.text), QStringLiteral("change them on the Money page")};
        }
        if (spends.isEmpty() && !sum)
            continue;
        if (!sum) {
            change.remove(spends.first());
            continue;
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
        spend.channel = wish.channel;
        spend.paidOn = wish.soldOn;
        if (spends.isEmpty())
            change.add(spend);
        else
            change.edit(spends.first(), spend);
    }
    return change;
}

} // namespace ts
