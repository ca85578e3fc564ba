#pragma once

#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// How a unit was sold: what came in, and what the selling took.
struct Sale {
    std::optional<Money> price;
    std::optional<Money> fees;
    std::optional<Money> carriage; ///< to the buyer, as paid
    Id<Channel> channel;
    QDate soldOn;

    bool operator==(const Sale &) const = default;
};

/// The unit's sale as its spends have it, each kind summed where there are several in one currency.
[[nodiscard]] Sale saleOf(const UnitFile &file);

/// The change that makes the spends say so: added where there is none of the kind, edited where there is one, removed where the sum was
/// taken out. Refused: a sum below nothing, and another sum where several spends make it up. Empty where they say so already.
[[nodiscard]] Expected<Change> saleChange(const UnitFile &file, const Sale &wish, Maker &maker);

} // namespace ts
