#include "model/records/sale.h"

#include "model/records/spend_part.h"

namespace ts {

namespace {

struct SalePart {
    SpendPart part;
    std::optional<Money> Sale::*sum;
};

const QList<SalePart> &parts()
{
    static const QList<SalePart> all{{{SpendKind::Sale, Flow::In, QStringLiteral("Sold")}, &Sale::price},
                                     {{SpendKind::SellingFee, Flow::Out, QStringLiteral("Selling fees")}, &Sale::fees},
                                     {{SpendKind::CarriageOut, Flow::Out, QStringLiteral("Carriage to the buyer")}, &Sale::carriage}};
    return all;
}

} // namespace

Sale saleOf(const UnitFile &file)
{
    Sale sale;
    for (const SalePart &each : parts()) {
        const QList<Spend> spends = spendsOf(file, each.part);
        sale.*each.sum = sumOf(spends);
        if (each.part.kind == SpendKind::Sale && !spends.isEmpty()) {
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
    for (const SalePart &each : parts()) {
        const auto set = setSum(change, file, each.part, wish.*each.sum,
                                [&wish](Spend &spend) {
                                    spend.channel = wish.channel;
                                    spend.paidOn = wish.soldOn;
                                },
                                did, maker);
        if (!set)
            return set.trouble();
    }
    return change;
}

} // namespace ts
