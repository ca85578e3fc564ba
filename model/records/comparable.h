#pragma once

#include "model/records/description.h"
#include "model/records/unit.h"

namespace ts {

/// A sale of the same or a like unit somewhere.
struct Comparable : Record<Comparable> {
    Id<Unit> unit;
    QString maker;
    QString makerModel;
    Category category = Category::Other;
    std::optional<Money> price;
    QDate soldOn;
    QString condition;
    std::optional<bool> working;
    bool asking = false; ///< an asking price, never mixed with sold ones
    bool carriageIncluded = false;
    QString source;
    std::optional<Money> inBenchCurrency; ///< of a foreign price, at its day's rate, as entered
    std::optional<double> likeness;       ///< 0 to 1 as entered: how far it tells of this unit; none: by model and category

    bool operator==(const Comparable &) const = default;

    static constexpr auto table = "comparable";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Comparable::unit);
        fields("maker", &Comparable::maker).searched();
        fields("maker_model", &Comparable::makerModel).searched();
        fields("category", &Comparable::category);
        fields("price", &Comparable::price).required();
        fields("sold_on", &Comparable::soldOn);
        fields("condition", &Comparable::condition).searched();
        fields("working", &Comparable::working);
        fields("asking", &Comparable::asking);
        fields("carriage_included", &Comparable::carriageIncluded);
        fields("source", &Comparable::source).searched();
        fields("in_bench_currency", &Comparable::inBenchCurrency);
        fields("likeness", &Comparable::likeness);
    }
};

} // namespace ts
