#include "model/money/lot_shares.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

/// What the method shares by, or what it has no figure for.
Expected<QList<double>> keysOf(LotMethod method, const QList<LotUnit> &units)
{
    const QString did = QStringLiteral("Cannot share the lot out %1").arg(methodText(method));
    const bool valued = std::any_of(units.begin(), units.end(), [](const LotUnit &unit) { return unit.good && unit.value > 0; });
    QList<double> keys;
    for (const LotUnit &unit : units) {
        switch (method) {
        case LotMethod::ByValue:
            keys << unit.value;
            break;
        case LotMethod::Equal:
            keys << 1;
            break;
        case LotMethod::ByWeight:
            if (!(unit.weight > 0))
                return Trouble{did, QStringLiteral("%1 has no weight").arg(unit.name),
                               QStringLiteral("weigh it, or choose another method")};
            keys << unit.weight;
            break;
        case LotMethod::ByValueLessCost:
            keys << std::max(0.0, unit.restored - unit.cost);
            break;
        case LotMethod::AllOnTheGood:
            keys << (!unit.good ? 0 : valued ? unit.value : 1);
            break;
        }
        if (!std::isfinite(keys.last()) || keys.last() < 0)
            return Trouble{did, QStringLiteral("%1 has no figure that makes sense").arg(unit.name), {}};
    }
    if (std::all_of(keys.begin(), keys.end(), [](double key) { return key <= 0; }))
        return Trouble{did, QStringLiteral("no unit has a figure above zero for it"),
                       QStringLiteral("give figures, or choose another method")};
    return keys;
}

} // namespace

QString methodText(LotMethod method)
{
    switch (method) {
    case LotMethod::ByValue:
        return QStringLiteral("by value as found");
    case LotMethod::Equal:
        return QStringLiteral("equally");
    case LotMethod::ByWeight:
        return QStringLiteral("by weight");
    case LotMethod::ByValueLessCost:
        return QStringLiteral("by restored value less the cost to complete");
    case LotMethod::AllOnTheGood:
        break;
    }
    return QStringLiteral("all on the good ones");
}

Expected<QList<LotShare>> lotShares(const Lot &lot, const QList<LotUnit> &units)
{
    if (!lot.price)
        return Trouble{QStringLiteral("Cannot share the lot out"), QStringLiteral("“%1” has no price").arg(lot.name), {}};
    const auto keys = keysOf(lot.method, units);
    if (!keys)
        return keys.trouble();
    const auto prices = lot.price->shared(*keys);
    if (!prices)
        return prices.trouble();
    const auto carriages = lot.carriage.value_or(Money(0, lot.price->currency())).shared(*keys);
    if (!carriages)
        return carriages.trouble();
    double whole = 0;
    for (const double key : *keys)
        whole += key;
    QList<LotShare> shares;
    for (qsizetype i = 0; i < units.size(); ++i)
        shares << LotShare{
            units.at(i).unit, prices->at(i), carriages->at(i),
            QStringLiteral("%1 % of the lot, %2").arg(100 * keys->at(i) / whole, 0, 'f', 1).arg(methodText(lot.method))};
    return shares;
}

Expected<Change> shareOutLot(const Lot &lot, const QList<LotShare> &shares, const QList<Spend> &known, Maker &maker)
{
    const QString did = QStringLiteral("Cannot share “%1” out").arg(lot.name);
    if (lot.reason.trimmed().isEmpty())
        return Trouble{did, QStringLiteral("it does not say why to share it %1 is fair").arg(methodText(lot.method)),
                       QStringLiteral("give the reason")};
    for (const Spend &spend : known)
        if (!spend.removed && spend.lot == lot.id && !spend.unit.isNull())
            return Trouble{did, QStringLiteral("it is shared out already, and that stays as it was at purchase"),
                           QStringLiteral("undo it first, while none of its units is sold")};
    Change change(QStringLiteral("Shared out: %1, %2").arg(lot.name, methodText(lot.method)));
    for (const LotShare &share : shares)
        for (const auto &[kind, sum] : {std::pair{SpendKind::Purchase, share.price}, {SpendKind::CarriageIn, share.carriage}}) {
            if (sum.isZero() && kind == SpendKind::CarriageIn)
                continue;
            Spend spend = maker.fresh<Spend>();
            spend.unit = share.unit;
            spend.text = QStringLiteral("%1 of lot %2 (%3)")
                             .arg(kind == SpendKind::Purchase ? QStringLiteral("share") : QStringLiteral("carriage share"),
                                  lot.name, share.why);
            spend.kind = kind;
            spend.amount = sum;
            spend.paidOn = lot.boughtOn;
            spend.contact = lot.seller;
            spend.lot = lot.id;
            change.add(spend);
        }
    return change;
}

} // namespace ts
