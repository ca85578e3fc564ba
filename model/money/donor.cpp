#include "model/money/donor.h"

#include <algorithm>

namespace ts {

Donor donorOf(const UnitFile &file, const QList<Batch> &batches, const Currency &bench)
{
    Donor made;
    made.cost = spentOn(file, bench).total;
    made.moved = Money(0, bench);
    int parts = 0;
    for (const Batch &batch : batches) {
        const bool ours = batch.unitCost && (batch.unitCost->currency().isNull() || batch.unitCost->currency() == bench);
        if (batch.removed || batch.donor != file.unit.id || !ours)
            continue;
        made.moved += Money(batch.unitCost->minor(), bench).times(batch.quantity);
        parts += batch.quantity;
    }
    made.left = std::max(Money(0, bench), made.cost - made.moved);
    made.writtenOff = file.unit.stage == Stage::Closed &&
                      (file.unit.outcome == Outcome::BrokenForParts || file.unit.outcome == Outcome::Scrapped);
    made.why = QStringLiteral("It cost %1; %2 parts took %3 of it with them; %4 %5.")
                   .arg(made.cost.display())
                   .arg(parts)
                   .arg(made.moved.display(), made.left.display(),
                        made.writtenOff ? QStringLiteral("is written off") : QStringLiteral("is left on it"));
    return made;
}

Expected<TakenCost> takeFromDonor(const Money &left, const Money &worthEach, int quantity)
{
    const QString did = QStringLiteral("Cannot take the part from the donor");
    if (quantity < 1)
        return Trouble{did, QStringLiteral("a quantity of %1 makes no sense").arg(quantity), {}};
    if (worthEach.minor() < 0)
        return Trouble{did, QStringLiteral("%1 is below zero").arg(worthEach.display()), {}};
    if (!worthEach.currency().isNull() && !left.currency().isNull() && !(worthEach.currency() == left.currency()))
        return Trouble{did, QStringLiteral("%1 is not in %2").arg(worthEach.display(), left.currency().code()), {}};
    const qint64 most = std::max<qint64>(0, left.minor()) / quantity;
    const Money each(std::min(worthEach.minor(), most), left.currency());
    const Money moved = each.times(quantity);
    return TakenCost{each, moved, left - moved};
}

} // namespace ts
