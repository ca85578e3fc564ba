#pragma once

#include "model/records/reading.h"
#include "model/values/words.h"

namespace ts {

enum class Verdict { NoLimit, Within, Outside, TooCloseToCall };

template <>
struct Words<Verdict> {
    static constexpr std::array list{std::pair{Verdict::NoLimit, "no_limit"}, std::pair{Verdict::Within, "within"},
                                     std::pair{Verdict::Outside, "outside"},
                                     std::pair{Verdict::TooCloseToCall, "too_close_to_call"}};
};

/// A value held against its limit, everything in one measure.
struct Judgement {
    Verdict verdict = Verdict::NoLimit;
    double value = 0;                    ///< as judged, in `measure`; means nothing for an over-range value
    Measure measure;                     ///< the value's own; the limit's where the value was a bare number
    std::optional<double> low;           ///< inclusive, in `measure`
    std::optional<double> high;          ///< inclusive, in `measure`
    std::optional<double> uncertainty95; ///< half width that holds 95 %, in `measure`
    std::optional<double> chanceWithin;  ///< 0 to 1; only for a plain or about value with uncertainty and a limit
    bool operator==(const Judgement &) const = default;
};

/// Holds a value against a limit, with the full 95 % uncertainty as guard band (decision rule in the manner of
/// ISO 14253-1; conformance probability by JCGM 106:2012, 7.2):
/// within only if value ± U lies inside (limits inclusive), outside only if the whole of value ± U lies beyond one limit
/// (a touch is not beyond), else too close to call. Without uncertainty the plain comparison. The chance of being within
/// comes from the normal law with u = U / 1.959964.
/// "< x" is anything up to x + U and "> x" anything from x − U: within where all of that is inside, outside where none is.
/// Over range is beyond every upper limit and meets a lower limit that stands alone. "About x" is judged as x.
/// A bare number takes the other side's unit. Refused: a measure that cannot be compared with the limit's; an uncertainty
/// that is negative or not finite.
[[nodiscard]] Expected<Judgement> judge(const Quantity &value, const Limit &limit, std::optional<double> uncertainty95 = {});
/// The same for a recorded reading; one without value has no limit to meet.
[[nodiscard]] Expected<Judgement> judge(const Reading &reading);
/// The verdict alone, NoLimit where the reading cannot be judged.
[[nodiscard]] Verdict verdictOf(const Reading &reading);

/// U95 of a standard uncertainty u under the normal law with infinitely many degrees of freedom: 1.959964 u.
[[nodiscard]] double expandedFromStandard(double standardUncertainty);

/// An uncertainty for people, to two significant figures (JCGM 100:2008, 7.2.6), rounded away from zero so that it never looks better
/// than it is: "± 0.013 V". Empty where it is not above zero or not finite.
[[nodiscard]] QString uncertaintyText(double uncertainty, const Measure &measure);

/// For people: "within", "outside", "too close to call", "no limit".
[[nodiscard]] QString verdictText(Verdict verdict);

} // namespace ts
