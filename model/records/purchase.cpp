#include "model/records/purchase.h"

#include "model/records/named_contact.h"
#include "model/records/spend_part.h"

#include <algorithm>

namespace ts {

namespace {

struct PurchasePart {
    SpendPart part;
    std::optional<Money> Purchase::*sum;
};

// The price first: who sold it and when are read from the first that has them.
const QList<PurchasePart> &parts()
{
    static const QList<PurchasePart> all{{{SpendKind::Purchase, Flow::Out, QStringLiteral("Bought")}, &Purchase::price},
                                         {{SpendKind::CarriageIn, Flow::Out, QStringLiteral("Carriage in")}, &Purchase::carriage}};
    return all;
}

} // namespace

Purchase purchaseOf(const UnitFile &file, const BenchFile &bench)
{
    Purchase purchase;
    for (const PurchasePart &each : parts()) {
        const QList<Spend> spends = spendsOf(file, each.part);
        purchase.*each.sum = sumOf(spends);
        for (const Spend &spend : spends) {
            if (!purchase.boughtOn.isValid())
                purchase.boughtOn = spend.paidOn;
            if (const Contact *seller = bench.find(spend.contact); seller && purchase.seller.isEmpty())
                purchase.seller = seller->name;
        }
    }
    return purchase;
}

Expected<Change> purchaseChange(const UnitFile &file, const BenchFile &bench, const Purchase &wish, Maker &maker)
{
    const QString did = QStringLiteral("The purchase was not recorded");
    const Purchase before = purchaseOf(file, bench);
    Change change(wish.price ? QStringLiteral("Bought for ") + wish.price->display() : QStringLiteral("Purchase taken out"));
    if (wish == before)
        return change;
    const bool particularsDiffer = wish.seller != before.seller || wish.boughtOn != before.boughtOn;
    if (particularsDiffer && !wish.price && !wish.carriage && !before.price && !before.carriage)
        return Trouble{did, QStringLiteral("no sum is on record that it could be kept with"), QStringLiteral("type what was paid first, 0 for a gift")};
    const Id<Contact> seller = contactNamed(bench, wish.seller, change, maker);
    for (const PurchasePart &each : parts()) {
        const QList<Spend> spends = spendsOf(file, each.part);
        const bool share = std::any_of(spends.begin(), spends.end(), [](const Spend &spend) { return !spend.lot.isNull(); });
        if (share && wish.*each.sum != before.*each.sum)
            return Trouble{did, QStringLiteral("it is the unit's share of a lot, which was fixed at purchase"), {}};
        if (particularsDiffer && spends.size() > 1)
            return Trouble{did, QStringLiteral("it was paid in %1 sums").arg(spends.size()), QStringLiteral("change them in the Log")};
        const bool fresh = spends.isEmpty();
        const auto set = setSum(change, file, each.part, wish.*each.sum,
                                [&](Spend &spend) {
                                    // What nobody touched stays: carriage may have been paid to somebody else, on another day.
                                    if (fresh || wish.seller != before.seller)
                                        spend.contact = seller;
                                    if (fresh || wish.boughtOn != before.boughtOn)
                                        spend.paidOn = wish.boughtOn;
                                },
                                did, maker);
        if (!set)
            return set.trouble();
    }
    return change;
}

} // namespace ts
