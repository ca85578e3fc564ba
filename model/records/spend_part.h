#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

#include <functional>

namespace ts {

/// A sum of a unit that is kept as a spend of its own kind: what it was bought for, the fees of its sale.
struct SpendPart {
    SpendKind kind;
    Flow flow;
    QString text; ///< of a spend that is made for it
};

/// The unit's spends of that kind, those taken out left aside.
[[nodiscard]] QList<Spend> spendsOf(const UnitFile &file, const SpendPart &part);
/// Their sum, of the first currency among them; the others are on the Money page. Nothing where there are none.
[[nodiscard]] std::optional<Money> sumOf(const QList<Spend> &spends);

/// Has the spends of that kind say the sum: added where there is none, edited where there is one, removed where there is no sum any more.
/// `particulars` fills in what else is known of it. Refused: a sum below nothing, and another sum where several spends make it up.
[[nodiscard]] Expected<void> setSum(Change &change, const UnitFile &file, const SpendPart &part, const std::optional<Money> &sum,
                                    const std::function<void(Spend &)> &particulars, const QString &did, Maker &maker);

} // namespace ts
