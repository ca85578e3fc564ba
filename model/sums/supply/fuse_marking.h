#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// What stands on the cap of a fuse, or on a plate beside its holder.
struct FuseMarking {
    QString speed;     ///< "F", "T", "FF", "M", "TT"; empty where none is marked
    double rating = 0; ///< A
    QString breaking;  ///< "L", "E", "H"; empty where none is marked
    std::optional<double> volts;
    std::optional<double> breakingCapacity; ///< A; of L, E (150) and H (1500)
    bool operator==(const FuseMarking &) const = default;
};

/// Reads "T2AL250V", "F 1.6 A", "T3,15AH250V", "500 mA T", "2 A slow 250 V", "4A". Refuses what has no rated current.
/// The marking order of IEC 60127-1 (from memory).
[[nodiscard]] Expected<FuseMarking> fuseMarking(QStringView text);

/// In words: "time-lag, 2 A, low breaking (35 A), 250 V".
[[nodiscard]] QString fuseWords(const FuseMarking &marking);

/// What is wrong with a fitted fuse beside what the plate names, most dangerous first; empty where nothing is. `plateIsUl` and
/// `fittedIsUl` say which of the two standards each is made to: their ratings do not mean the same.
[[nodiscard]] QStringList fuseAgainstPlate(const FuseMarking &fitted, const FuseMarking &plate, bool fittedIsUl = false,
                                           bool plateIsUl = false);

/// The rating of the other standard that carries the same lasting load, as advice and never as a substitution: a UL fuse is
/// loaded to 75 % of its rating, an IEC fuse to all of it. Rule of thumb of fuse makers.
[[nodiscard]] double ulRatingForLoadOf(double iecRating);

/// fuse-marking for the command line and the page of sums.
[[nodiscard]] Sum fuseMarkingSum();

} // namespace ts
