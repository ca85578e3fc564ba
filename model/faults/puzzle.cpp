#include "model/faults/puzzle.h"

namespace ts {

double Standpoint::total() const
{
    double sum = 0;
    forEachBit(alive, [&](std::size_t i) { sum += weights[i]; });
    return sum;
}

Standpoint startOf(const Puzzle &puzzle)
{
    Standpoint start;
    for (std::size_t i = 0; i < puzzle.suspects.size(); ++i) {
        start.weights[i] = puzzle.suspects[i].weight;
        start.alive |= quint64(start.weights[i] > 0 ? 1 : 0) << i;
    }
    for (std::size_t k = 0; k < puzzle.probes.size(); ++k)
        start.undone |= quint64(1) << k;
    start.paid = puzzle.paid;
    return start;
}

Standpoint afterProbe(const Puzzle &puzzle, const Standpoint &at, std::size_t probe, bool abnormal)
{
    Standpoint after = at;
    const Probe &done = puzzle.probes[probe];
    forEachBit(at.alive, [&](std::size_t i) {
        after.weights[i] *= abnormal ? done.abnormal[i] : 1 - done.abnormal[i];
        if (!(after.weights[i] > 0))
            after.alive &= ~(quint64(1) << i);
    });
    after.undone &= ~(quint64(1) << probe);
    after.paid |= done.marks;
    if (abnormal)
        after.abnormal |= quint64(1) << probe;
    return after;
}

Standpoint afterRepair(const Standpoint &at, std::size_t suspect)
{
    Standpoint after = at;
    after.weights[suspect] = 0;
    after.alive &= ~(quint64(1) << suspect);
    return after;
}

bool mayRepair(const Puzzle &puzzle, const Standpoint &at, std::size_t suspect)
{
    if (puzzle.suspects[suspect].mayTry || hasBit(at.paid, suspect))
        return true;
    bool checkToDo = false;
    forEachBit(at.undone, [&](std::size_t k) { checkToDo = checkToDo || hasBit(puzzle.probes[k].marks, suspect); });
    return !checkToDo;
}

bool tellsSomething(const Puzzle &puzzle, const Standpoint &at, std::size_t probe)
{
    const Probe &check = puzzle.probes[probe];
    const double first = at.alive == 0 ? 0 : check.abnormal[static_cast<std::size_t>(std::countr_zero(at.alive))];
    for (quint64 set = at.alive; set != 0; set &= set - 1)
        if (check.abnormal[static_cast<std::size_t>(std::countr_zero(set))] != first)
            return true;
    bool owed = false;
    forEachBit(check.marks & at.alive & ~at.paid, [&](std::size_t i) { owed = owed || !puzzle.suspects[i].mayTry; });
    return owed;
}

} // namespace ts
