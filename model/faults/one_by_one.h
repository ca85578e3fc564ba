#pragma once

#include "model/faults/puzzle.h"

namespace ts {

/// A plain way to work: the suspects one after the other, each by its check (abnormal: repair it; normal: go on) or by its repair
/// straight away; then, where nothing helped, the repairs that are left, likeliest per minute first.
enum class Habit {
    Entered, ///< in the order of the list
    Likeliest,
    Cheapest,  ///< by the minutes of the check, of the repair where there is none
    PerMinute, ///< minutes over likelihood, ascending: the p/c order
    Weighed    ///< the same with misses and false alarms in it, by check or straight by repair as is better
};

/// The expected minutes × total weight until the guilty suspect is put right, working by that habit from here on; exact.
[[nodiscard]] double oneByOne(const Puzzle &puzzle, const Standpoint &at, Habit habit);

/// The least of them over all habits: an upper bound of the best that can be done.
[[nodiscard]] double bestHabit(const Puzzle &puzzle, const Standpoint &at);

/// The expected minutes × total weight of going straight to repairs, likeliest per minute first, with no more checks.
[[nodiscard]] double repairsOnly(const Puzzle &puzzle, const Standpoint &at);

/// A lower bound of the best: every check taken to be without error and to cost no more than its share for each suspect it bears
/// on, the last suspect taken as proven. Then the order by minutes over weight is the best that can be (Smith's rule).
[[nodiscard]] double atLeast(const Puzzle &puzzle, const Standpoint &at);

} // namespace ts
