#pragma once

#include "model/faults/puzzle.h"

#include <memory>
#include <optional>

namespace ts {

/// One thing that can be done next, and what the whole way is expected to take if it is.
struct Choice {
    bool repair = false;
    std::size_t place = 0; ///< of the suspect or the check in the puzzle
    double minutes = 0;    ///< expected until the guilty suspect is put right, this move included, going on in the best way known
    double atLeast = 0;    ///< no way that begins so takes less
};

/// What was found out about the way from one standpoint.
struct Prospect {
    double minutes = 0; ///< expected, by the best way known
    double atLeast = 0; ///< no way takes less; the same as minutes where exact
    bool exact = false;
    std::vector<Choice> choices; ///< best first; ties to the one of fewer minutes, then in the puzzle's order
};

/// Looks for the way of least expected minutes: dynamic programming over what can come out, with the branches left out that
/// cannot be best. Where that would take too many steps it looks two moves ahead (one on very large boards) and values what comes
/// after by the best plain habit (one_by_one.h); the way is then one that can really be gone, and the bound says how much better
/// another could be at the most. The same puzzle gives the same answer on every machine: steps are counted, not time.
class Search {
public:
    /// `steps`: how many moves may be weighed before it gives up being exact.
    explicit Search(Puzzle puzzle, int steps = usualSteps);
    ~Search();
    Search(const Search &) = delete;
    Search &operator=(const Search &) = delete;

    [[nodiscard]] const Puzzle &puzzle() const { return m_puzzle; }
    [[nodiscard]] Prospect from(const Standpoint &at);
    /// The expected minutes × total weight of the best way, or nothing where it took too many steps.
    [[nodiscard]] std::optional<double> exact(const Standpoint &at);

    static constexpr int usualSteps = 150'000;

private:
    struct Memory;
    double open(const Standpoint &at);
    double ahead(const Standpoint &at, int depth, bool upper) const;

    Puzzle m_puzzle;
    int m_steps;
    int m_left = 0;
    std::unique_ptr<Memory> m_memory;
};

} // namespace ts
