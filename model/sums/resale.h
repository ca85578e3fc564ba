#pragma once

#include "model/records/unit_file.h"
#include "model/sums/weighted_sample.h"

namespace ts {

/// One comparable as it counts towards an estimate.
struct CountedSale {
    Id<Comparable> id;
    QDate soldOn;     ///< not valid where it is not known
    Money entered;    ///< as sold
    Money price;      ///< in the bench's currency, without carriage, brought to this unit's looks
    double share = 0; ///< of all that counts, 0 to 1; 0 for an asking price
    QString why;      ///< "46 days old, same model; 2 grades better: 14 % off"
    bool operator==(const CountedSale &) const = default;
};

/// A bar of the drawing.
struct PriceBar {
    Money from;
    Money to;
    double share = 0; ///< of sales expected between the two, by the kernel estimate
    bool operator==(const PriceBar &) const = default;
};

/// What the unit should fetch, from comparable sales. Every figure is in the bench's currency.
struct Resale {
    Currency currency;
    bool working = true;       ///< as a working unit, or as it stands
    QList<CountedSale> sold;   ///< that count, dearest last: the dots
    QList<CountedSale> asking; ///< asking prices, shown apart and never counted
    QStringList leftOut;       ///< "1 sold as not working", one entry a reason
    int count = 0;             ///< sold ones that count
    double effective = 0;      ///< as many of equal weight tell as much
    bool guessing = true;      ///< fewer than five sales of the same or a like model
    std::optional<Money> low;  ///< 1 in 10 fetches less
    std::optional<Money> quarter;
    std::optional<Money> middle;
    std::optional<Money> threeQuarters;
    std::optional<Money> high; ///< 1 in 10 fetches more
    WeightedSample sample;     ///< of prices in minor units
    double width = 0;          ///< of the kernel, in minor units
    QList<PriceBar> bars;      ///< the kernel estimate in bars of a round width; empty without sales
    QString from;              ///< "median of 10 sold comparables", "1 sold comparable", or empty
    QString heading;           ///< "10 comparable sales, newest counts most"
    QString why;               ///< how the figures came about, in sentences

    /// Chance density at a price in minor units; 0 without sales.
    [[nodiscard]] double density(double minor) const;
};

/// How the comparables are to be read.
struct ResaleTerms {
    QDate day;                 ///< ages are counted to it
    bool working = true;       ///< false: what it fetches as it stands, from units sold as not working
    int halfLife = 120;        ///< days after which a sale counts half; trade habit looks back 90 to 180 days (common practice)
    qint64 looksStep = 70'000; ///< millionths of the price for a grade of looks; a starting value of ours
    std::optional<Money> carriage; ///< taken off prices that include it
    /// From the settings "resale_half_life" (days) and "looks_step" (percent), and the plan's carriage out.
    [[nodiscard]] static ResaleTerms of(const UnitFile &file, const BenchFile &bench, const QDate &day);
};

/// The estimate, from the unit's own comparables and `others` (of the bench, or of other units). Those of the same model count
/// whole; where there are fewer than five, others of its maker and category count 0.35, of its category alone 0.15 (starting
/// values of ours; a likeness entered goes before them). Weights halve with each half-life; quantiles are of type 8, weighted.
/// Sums in another currency count at the amount entered in the bench's, or not at all.
[[nodiscard]] Resale resaleOf(const UnitFile &file, const BenchFile &bench, const QList<Comparable> &others,
                              const ResaleTerms &terms);

} // namespace ts
