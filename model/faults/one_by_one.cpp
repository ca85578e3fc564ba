#include "model/faults/one_by_one.h"

#include <algorithm>
#include <limits>

namespace ts {

namespace {

constexpr int noProbe = -1;
constexpr double never = std::numeric_limits<double>::infinity();

/// How one suspect is settled.
struct Turn {
    std::size_t suspect = 0;
    int probe = noProbe; ///< none: by its repair straight away
    double key = 0;      ///< ascending
};

/// What a turn costs where another is guilty, over its chance to end the search: what an exchange of neighbours compares.
double weighed(const Puzzle &puzzle, const Standpoint &at, std::size_t suspect, int probe, double total)
{
    const double weight = at.weights[suspect], repair = puzzle.suspects[suspect].repair;
    if (probe == noProbe)
        return repair / weight;
    const Probe &check = puzzle.probes[static_cast<std::size_t>(probe)];
    double alarms = 0;
    forEachBit(at.alive & ~(quint64(1) << suspect), [&](std::size_t i) { alarms += at.weights[i] * check.abnormal[i]; });
    const double others = total - weight;
    const double wasted = check.minutes + (others > 0 ? alarms / others * repair : 0);
    const double ends = weight * check.abnormal[suspect];
    return ends > 0 ? wasted / ends : never;
}

/// The check that settles a suspect best, or none.
int probeFor(const Puzzle &puzzle, const Standpoint &at, std::size_t suspect, double total)
{
    int best = noProbe;
    double least = never;
    forEachBit(at.undone, [&](std::size_t k) {
        if (!hasBit(puzzle.probes[k].marks, suspect))
            return;
        const double key = weighed(puzzle, at, suspect, static_cast<int>(k), total);
        if (best == noProbe || key < least) {
            best = static_cast<int>(k);
            least = key;
        }
    });
    return best;
}

std::vector<Turn> turns(const Puzzle &puzzle, const Standpoint &at, Habit habit, double total)
{
    std::vector<Turn> all;
    forEachBit(at.alive, [&](std::size_t i) {
        Turn turn{i, probeFor(puzzle, at, i, total), 0};
        const double minutes =
            turn.probe == noProbe ? puzzle.suspects[i].repair : puzzle.probes[static_cast<std::size_t>(turn.probe)].minutes;
        switch (habit) {
        case Habit::Entered:
            break;
        case Habit::Likeliest:
            turn.key = -at.weights[i];
            break;
        case Habit::Cheapest:
            turn.key = minutes;
            break;
        case Habit::PerMinute:
            turn.key = minutes / at.weights[i];
            break;
        case Habit::Weighed:
            turn.key = weighed(puzzle, at, i, turn.probe, total);
            if (const double straight = weighed(puzzle, at, i, noProbe, total);
                turn.probe != noProbe && straight < turn.key && mayRepair(puzzle, at, i))
                turn = {i, noProbe, straight};
            break;
        }
        all.push_back(turn);
    });
    std::stable_sort(all.begin(), all.end(), [](const Turn &a, const Turn &b) { return a.key < b.key; });
    return all;
}

/// The turns that come again where nothing helped: suspects whose check missed them, by repair.
std::vector<Turn> secondRound(const Puzzle &puzzle, const Standpoint &at, const std::vector<Turn> &first)
{
    std::vector<Turn> second;
    for (Turn turn : first) {
        if (turn.probe == noProbe)
            continue;
        const double missed = 1 - puzzle.probes[static_cast<std::size_t>(turn.probe)].abnormal[turn.suspect];
        turn.key = missed > 0 ? puzzle.suspects[turn.suspect].repair / (at.weights[turn.suspect] * missed) : never;
        second.push_back(turn);
    }
    std::stable_sort(second.begin(), second.end(), [](const Turn &a, const Turn &b) { return a.key < b.key; });
    return second;
}

/// Minutes that the turns are expected to take where `guilty` is it. Checks come out independently of each other, given who it
/// is.
double minutesIf(const Puzzle &puzzle, std::size_t guilty, const std::vector<Turn> &first, const std::vector<Turn> &second)
{
    double minutes = 0;
    double searching = 1; // chance that it goes on
    int missedBy = noProbe;
    quint64 used = 0;
    for (const Turn &turn : first) {
        const double repair = puzzle.suspects[turn.suspect].repair;
        if (turn.probe == noProbe) {
            minutes += searching * repair;
            if (turn.suspect == guilty)
                return minutes;
            continue;
        }
        const Probe &check = puzzle.probes[static_cast<std::size_t>(turn.probe)];
        const quint64 bit = quint64(1) << turn.probe;
        minutes += (used & bit) == 0 ? searching * check.minutes : 0;
        used |= bit;
        const double abnormal = check.abnormal[guilty];
        if (turn.suspect == guilty) {
            minutes += abnormal * repair;
            searching = 1 - abnormal;
            missedBy = turn.probe;
        } else if (turn.probe != missedBy) { // the check that missed it was normal
            minutes += searching * abnormal * repair;
        }
    }
    for (const Turn &turn : second) {
        const double normal =
            turn.probe == missedBy ? 1 : 1 - puzzle.probes[static_cast<std::size_t>(turn.probe)].abnormal[guilty];
        minutes += searching * normal * puzzle.suspects[turn.suspect].repair;
        if (turn.suspect == guilty)
            break;
    }
    return minutes;
}

} // namespace

double oneByOne(const Puzzle &puzzle, const Standpoint &at, Habit habit)
{
    const std::vector<Turn> first = turns(puzzle, at, habit, at.total());
    const std::vector<Turn> second = secondRound(puzzle, at, first);
    double sum = 0;
    for (const Turn &turn : first)
        sum += at.weights[turn.suspect] * minutesIf(puzzle, turn.suspect, first, second);
    return sum;
}

double bestHabit(const Puzzle &puzzle, const Standpoint &at)
{
    double best = never;
    for (const Habit habit : {Habit::Weighed, Habit::PerMinute, Habit::Likeliest, Habit::Cheapest, Habit::Entered})
        best = std::min(best, oneByOne(puzzle, at, habit));
    return best;
}

namespace {

/// Things to be done one after the other: Σ weight × minutes of those before, least over all orders by Smith's rule (minutes over
/// weight ascending). Kept sorted while they come in.
class Jobs {
public:
    void add(double weight, double minutes)
    {
        std::size_t place = m_count++;
        for (; place > 0 && minutes * m_weight[place - 1] < m_minutes[place - 1] * weight; --place) {
            m_weight[place] = m_weight[place - 1];
            m_minutes[place] = m_minutes[place - 1];
        }
        m_weight[place] = weight;
        m_minutes[place] = minutes;
    }
    [[nodiscard]] double leastWaiting() const
    {
        double before = 0, sum = 0;
        for (std::size_t i = 0; i < m_count; ++i) {
            sum += m_weight[i] * before;
            before += m_minutes[i];
        }
        return sum;
    }

private:
    std::array<double, mostSuspects> m_weight;
    std::array<double, mostSuspects> m_minutes;
    std::size_t m_count = 0;
};

} // namespace

double repairsOnly(const Puzzle &puzzle, const Standpoint &at)
{
    Jobs jobs;
    double sum = 0;
    forEachBit(at.alive, [&](std::size_t i) {
        jobs.add(at.weights[i], puzzle.suspects[i].repair);
        sum += at.weights[i] * puzzle.suspects[i].repair;
    });
    return sum + jobs.leastWaiting();
}

double atLeast(const Puzzle &puzzle, const Standpoint &at)
{
    std::array<double, mostSuspects> share;
    forEachBit(at.alive, [&](std::size_t i) { share[i] = never; });
    forEachBit(at.undone, [&](std::size_t k) {
        const quint64 bears = puzzle.probes[k].marks & at.alive;
        const double each = puzzle.probes[k].minutes / std::popcount(bears);
        forEachBit(bears, [&](std::size_t i) { share[i] = std::min(share[i], each); });
    });
    Jobs jobs;
    double sum = 0;
    forEachBit(at.alive, [&](std::size_t i) {
        const Suspect &suspect = puzzle.suspects[i];
        const bool owes = !suspect.mayTry && !hasBit(at.paid, i) && share[i] < never;
        sum += at.weights[i] * (suspect.repair + (owes ? share[i] : 0));
        jobs.add(at.weights[i], std::min(share[i], suspect.repair));
    });
    return sum + jobs.leastWaiting();
}

} // namespace ts
