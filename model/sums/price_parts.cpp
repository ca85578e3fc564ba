#include "model/sums/price_parts.h"

namespace ts {

QList<PricePart> priceParts(const CostSheet &sheet)
{
    const auto resale = sheet.toDate(CostKey::Resale);
    if (!resale)
        return {};
    QList<PricePart> parts;
    Money left = *resale;
    const auto take = [&](PriceShare share, std::initializer_list<CostKey> keys) {
        Money sum(0, sheet.currency);
        for (const CostKey key : keys)
            sum += sheet.toDate(key).value_or(Money(0, sheet.currency));
        left = left - sum;
        if (!sum.isZero())
            parts << PricePart{share, sum};
    };
    take(PriceShare::Bought, {CostKey::BoughtFor, CostKey::CarriageIn});
    take(PriceShare::Work, {CostKey::Parts, CostKey::Consumables, CostKey::OutsideWork, CostKey::Other, CostKey::Refunds, CostKey::Overhead});
    take(PriceShare::Fees, {CostKey::SellingFee});
    take(PriceShare::Carriage, {CostKey::CarriageOut});
    if (left.minor() > 0)
        parts << PricePart{PriceShare::Yours, left};
    else if (left.minor() < 0)
        parts << PricePart{PriceShare::Short, -left};
    return parts;
}

} // namespace ts
