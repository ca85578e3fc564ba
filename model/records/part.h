#pragma once

#include "model/records/description.h"

namespace ts {

/// An item in the parts store.
struct Part : Record<Part> {
    QString name;
    QString kind; ///< belt, electrolytic, fuse …
    QString rating; ///< attributes as "key value" lines
    QString place;
    QString supplier;
    std::optional<int> minimumStock;
    QString note;

    bool operator==(const Part &) const = default;

    static constexpr auto table = "part";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("name", &Part::name).required().searched();
        fields("kind", &Part::kind).searched();
        fields("rating", &Part::rating).searched();
        fields("place", &Part::place).searched();
        fields("supplier", &Part::supplier).searched();
        fields("minimum_stock", &Part::minimumStock);
        fields("note", &Part::note).searched();
    }
};

} // namespace ts
