#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// How a unit was bought.
struct Purchase {
    std::optional<Money> price;
    std::optional<Money> carriage; ///< to the bench
    QString seller;                ///< a contact, by name
    QDate boughtOn;

    bool operator==(const Purchase &) const = default;
};

/// The purchase as the unit's spends have it, each kind summed where there are several in one currency.
[[nodiscard]] Purchase purchaseOf(const UnitFile &file, const BenchFile &bench);

/// The change that makes the spends say so (records/spend_part.h); a seller whose name is new becomes a contact. Refused: what setSum
/// refuses, a seller or a day with no sum to keep it with or with several, and another share of a lot, which is fixed at purchase.
[[nodiscard]] Expected<Change> purchaseChange(const UnitFile &file, const BenchFile &bench, const Purchase &wish, Maker &maker);

} // namespace ts
