#pragma once

#include <QtGlobal>

#include <array>
#include <bit>
#include <vector>

namespace ts {

/// So many suspects a puzzle can have, and so many checks: standpoints are copied millions of times and stay small.
inline constexpr std::size_t mostSuspects = 32;
inline constexpr std::size_t mostProbes = 64;

/// A suspect in figures alone.
struct Suspect {
    double weight = 0;  ///< how likely against the others
    double repair = 0;  ///< minutes to put right; paid whenever the repair is done, wasted where it was another
    bool mayTry = true; ///< its repair may be tried on suspicion; else only after a check that bears on it, where there is one
};

/// A check in figures alone.
struct Probe {
    double minutes = 0;
    quint64 marks = 0;            ///< bit i: bears on suspect i
    std::vector<double> abnormal; ///< suspect by suspect, the chance of abnormal; all without a mark have the same
};

/// Which of the suspects is guilty, and what it takes to find out and put it right. At most mostSuspects and mostProbes.
struct Puzzle {
    std::vector<Suspect> suspects;
    std::vector<Probe> probes;
    quint64 paid = 0; ///< bit i: a check that bears on suspect i was done before
};

/// What is known at some moment: weights after what came out (they need not add up to 1; 0 is out of the question), and which
/// checks are still to be had.
struct Standpoint {
    std::array<double, mostSuspects> weights{};
    quint64 alive = 0; ///< suspects that can still be it: those with a weight above 0
    quint64 undone = 0;
    quint64 paid = 0;     ///< suspects with a check that bears on them done
    quint64 abnormal = 0; ///< checks of the puzzle that came out abnormal

    [[nodiscard]] double total() const;
};

/// Calls with each place in the set, ascending.
template <class Call>
constexpr void forEachBit(quint64 set, Call call)
{
    for (; set != 0; set &= set - 1)
        call(static_cast<std::size_t>(std::countr_zero(set)));
}

[[nodiscard]] constexpr bool hasBit(quint64 set, std::size_t place)
{
    return (set >> place & 1) != 0;
}

/// Before anything of the puzzle is done.
[[nodiscard]] Standpoint startOf(const Puzzle &puzzle);
/// After a check came out.
[[nodiscard]] Standpoint afterProbe(const Puzzle &puzzle, const Standpoint &at, std::size_t probe, bool abnormal);
/// After a repair that did not help.
[[nodiscard]] Standpoint afterRepair(const Standpoint &at, std::size_t suspect);
/// Whether a repair may be begun: it may be tried, or a check that bears on it was done, or there is none to do.
[[nodiscard]] bool mayRepair(const Puzzle &puzzle, const Standpoint &at, std::size_t suspect);
/// Whether a check that is still undone can tell suspects apart, or lets a repair begin.
[[nodiscard]] bool tellsSomething(const Puzzle &puzzle, const Standpoint &at, std::size_t probe);

} // namespace ts
