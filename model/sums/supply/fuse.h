#pragma once

#include "model/sums/reckon.h"
#include "model/values/words.h"

namespace ts {

/// A time and current characteristic with published gates.
enum class FuseLaw { Fast, TimeLag, TimeLagHigh, Ul, UlFast, UlSlow };

template <>
struct Words<FuseLaw> {
    static constexpr std::array list{
        std::pair{FuseLaw::Fast, "F"}, std::pair{FuseLaw::TimeLag, "T"},      std::pair{FuseLaw::TimeLagHigh, "T-high"},
        std::pair{FuseLaw::Ul, "UL"},  std::pair{FuseLaw::UlFast, "UL-fast"}, std::pair{FuseLaw::UlSlow, "UL-slow"}};
};

/// When a fuse must and must not have opened, at so many times its rated current.
struct FuseTimes {
    std::optional<double> least; ///< seconds that it holds at least
    std::optional<double> most;  ///< seconds by which it has opened
    bool holds = false;          ///< it carries this current for good
    bool atGate = true;          ///< false: between two gates, so bounds by the neighbouring ones
    QString sheet;               ///< where the gate stands: "IEC 60127-2 sheet 3"
};

/// The gates for a rated current in amperes at a multiple of it. Between gates a larger current opens no later, so the longest
/// holding time of the gates above and the shortest opening time of those below are bounds. Refuses ratings that no sheet covers.
/// IEC 60127-2 sheets 2, 3 and 5; UL 248-14; ratings above 6.3 A by makers' data.
[[nodiscard]] Expected<FuseTimes> fuseTimes(FuseLaw law, double rating, double multiple);

/// Breaking capacity in amperes of a low-breaking fuse (L): the larger of 35 A and ten times its rating. IEC 60127-2.
[[nodiscard]] double lowBreakingCapacity(double rating);

/// fuse for the command line and the page of sums.
[[nodiscard]] Sum fuseSum();

} // namespace ts
