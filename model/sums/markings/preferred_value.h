#pragma once

#include "model/sums/reckon.h"
#include "model/values/words.h"

namespace ts {

/// The series of preferred values of IEC 60063.
enum class Series { E3, E6, E12, E24, E48, E96, E192 };

template <>
struct Words<Series> {
    static constexpr std::array list{std::pair{Series::E3, "E3"},    std::pair{Series::E6, "E6"},   std::pair{Series::E12, "E12"},
                                     std::pair{Series::E24, "E24"},  std::pair{Series::E48, "E48"}, std::pair{Series::E96, "E96"},
                                     std::pair{Series::E192, "E192"}};
};

/// One decade of a series as three figures, rising from 100: E3 is 100, 220, 470. IEC 60063:2015.
[[nodiscard]] QList<int> decadeOf(Series series);

/// A value and its neighbours in a series.
struct PreferredValue {
    double nearest = 0; ///< by ratio; the larger on a tie
    double below = 0;   ///< the next preferred value under the one asked for
    double above = 0;   ///< the next one over it
    [[nodiscard]] double errorPercent(double value) const { return 100 * (nearest / value - 1); }
    bool operator==(const PreferredValue &) const = default;
};

/// The preferred value nearest to one above zero, in its unit; refused are 0, below it, and what is not finite.
[[nodiscard]] Expected<PreferredValue> preferredValue(double value, Series series);

enum class Joined { InSeries, InParallel };

/// Two preferred values that together come near another.
struct PreferredPair {
    double first = 0; ///< never the smaller
    double second = 0;
    double together = 0;
    bool operator==(const PreferredPair &) const = default;
};

/// The best pairs of a series for a value, nearest first, at most `most` of them. Capacitors in series join as resistors in
/// parallel do: ask for the other way. Refused as above.
[[nodiscard]] Expected<QList<PreferredPair>> preferredPairs(double value, Series series, Joined joined, qsizetype most);

/// preferred-value and preferred-pair for the command line and the page of sums.
[[nodiscard]] Sum preferredValueSum();
[[nodiscard]] Sum preferredPairSum();

} // namespace ts
