#include "model/money/money_places.h"

namespace ts {

namespace {

Money costOf(const Batch &batch, int quantity, const Currency &bench)
{
    const bool ours = batch.unitCost && (batch.unitCost->currency().isNull() || batch.unitCost->currency() == bench);
    return ours && !batch.removed ? Money(batch.unitCost->minor(), bench).times(quantity) : Money(0, bench);
}

} // namespace

MoneyPlaces moneyPlaces(const QList<UnitFile> &units, const QList<Spend> &ofBench, const QList<Batch> &batches,
                        const Currency &bench)
{
    const Money zero(0, bench);
    MoneyPlaces made{zero, zero, zero, zero, zero, zero};
    Money borne = zero; // by units, of what came from the store
    for (const UnitFile &file : units) {
        const Donor donor = donorOf(file, batches, bench);
        Money ofStore = zero;
        for (const Need &need : file.all<Need>())
            if (!need.removed && !need.batch.isNull() && need.state != NeedState::Needed)
                ofStore += inCurrency(need, bench).value_or(zero);
        borne += ofStore;
        made.paid += donor.cost - ofStore;
        (donor.writtenOff ? made.writtenOff : made.onUnits) += donor.cost - donor.moved;
    }
    for (const Spend &spend : ofBench)
        if (!spend.removed && spend.unit.isNull() && (spend.flow == Flow::Out || spend.kind == SpendKind::Refund))
            made.overhead += inCurrency(spend, bench).value_or(zero).times(spend.flow == Flow::Out ? 1 : -1);
    made.paid += made.overhead;
    Money takenOut = zero;
    for (const Batch &batch : batches) {
        if (batch.donor.isNull())
            made.paid += costOf(batch, batch.quantity, bench);
        made.inStock += costOf(batch, batch.left, bench);
        takenOut += costOf(batch, batch.quantity - batch.left, bench);
    }
    made.astray = takenOut - borne;
    return made;
}

} // namespace ts
