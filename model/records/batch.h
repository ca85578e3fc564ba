#pragma once

#include "model/records/description.h"
#include "model/records/part.h"
#include "model/records/unit.h"

namespace ts {

/// Some of one part, bought or taken from a donor together.
struct Batch : Record<Batch> {
    Id<Part> part;
    int quantity = 0;
    int left = 0; ///< still in the store
    std::optional<Money> unitCost;
    QDate boughtOn;
    QString supplier;
    QString place;
    Id<Unit> donor; ///< the unit it was taken from
    QString tested; ///< how, by whom

    bool operator==(const Batch &) const = default;

    static constexpr auto table = "batch";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("part", &Batch::part).required();
        fields("quantity", &Batch::quantity);
        fields("left", &Batch::left);
        fields("unit_cost", &Batch::unitCost);
        fields("bought_on", &Batch::boughtOn);
        fields("supplier", &Batch::supplier).searched();
        fields("place", &Batch::place).searched();
        fields("donor", &Batch::donor);
        fields("tested", &Batch::tested);
    }
};

} // namespace ts
