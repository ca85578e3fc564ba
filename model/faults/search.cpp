#include "model/faults/search.h"

#include "model/faults/one_by_one.h"

#include <algorithm>
#include <bit>
#include <limits>
#include <unordered_map>

namespace ts {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();

/// Two standpoints with the same suspects alive, the same telling checks undone and the same outcomes of those that told them
/// apart differ in scale alone.
struct Key {
    quint64 alive = 0;
    quint64 undone = 0;
    quint64 owing = 0;
    quint64 abnormal = 0;
    quint64 telling = 0; ///< done checks whose outcome still matters
    bool operator==(const Key &) const = default;
};

struct KeyHash {
    std::size_t operator()(const Key &key) const
    {
        quint64 hash = 0;
        for (const quint64 part : {key.alive, key.undone, key.owing, key.abnormal, key.telling})
            hash = (hash ^ part) * 0x9e3779b97f4a7c15ULL ^ hash >> 29;
        return static_cast<std::size_t>(hash ^ hash >> 32);
    }
};

/// Something that can be done, with the costs that follow from it. All costs are minutes × total weight.
struct Option {
    bool repair = false;
    std::size_t place = 0;
    double cost = 0;
    double bound = 0;
};

std::vector<Option> options(const Puzzle &puzzle, const Standpoint &at)
{
    std::vector<Option> all;
    const double total = at.total();
    all.reserve(static_cast<std::size_t>(std::popcount(at.undone) + std::popcount(at.alive)));
    forEachBit(at.undone, [&](std::size_t k) {
        if (tellsSomething(puzzle, at, k))
            all.push_back({false, k, puzzle.probes[k].minutes * total, 0});
    });
    forEachBit(at.alive, [&](std::size_t i) {
        if (mayRepair(puzzle, at, i))
            all.push_back({true, i, puzzle.suspects[i].repair * total, 0});
    });
    return all;
}

/// The sum of a value over what can follow from an option.
template <class Value>
double following(const Puzzle &puzzle, const Standpoint &at, const Option &option, Value value)
{
    if (option.repair)
        return value(afterRepair(at, option.place));
    return value(afterProbe(puzzle, at, option.place, true)) + value(afterProbe(puzzle, at, option.place, false));
}

bool solved(const Standpoint &at)
{
    return at.alive == 0;
}

} // namespace

struct Search::Memory {
    std::unordered_map<Key, double, KeyHash> worth; ///< of a total weight of 1
    quint64 all = 0;

    [[nodiscard]] Key keyOf(const Puzzle &puzzle, const Standpoint &at) const
    {
        Key key;
        key.alive = at.alive;
        for (std::size_t k = 0; k < puzzle.probes.size(); ++k) {
            const quint64 bit = quint64(1) << k;
            if ((at.undone & bit) != 0) {
                key.undone |= tellsSomething(puzzle, at, k) ? bit : 0;
                continue;
            }
            const std::vector<double> &abnormal = puzzle.probes[k].abnormal;
            const double first = abnormal[static_cast<std::size_t>(std::countr_zero(at.alive))];
            forEachBit(at.alive, [&](std::size_t i) { key.telling |= abnormal[i] != first ? bit : 0; });
        }
        key.abnormal = at.abnormal & key.telling;
        forEachBit(at.alive & ~at.paid, [&](std::size_t i) { key.owing |= quint64(puzzle.suspects[i].mayTry ? 0 : 1) << i; });
        return key;
    }
};

Search::Search(Puzzle puzzle, int steps) : m_puzzle(std::move(puzzle)), m_steps(steps), m_memory(std::make_unique<Memory>()) {}

Search::~Search() = default;

double Search::open(const Standpoint &at)
{
    if (solved(at) || m_left < 0)
        return 0;
    const Key key = m_memory->keyOf(m_puzzle, at);
    const double total = at.total();
    if (const auto known = m_memory->worth.find(key); known != m_memory->worth.end())
        return known->second * total;
    std::vector<Option> all = options(m_puzzle, at);
    m_left -= static_cast<int>(all.size());
    if (m_left < 0)
        return 0;
    for (Option &option : all)
        option.bound = option.cost + following(m_puzzle, at, option, [this](const Standpoint &after) {
                           return solved(after) ? 0 : atLeast(m_puzzle, after);
                       });
    std::sort(all.begin(), all.end(), [](const Option &a, const Option &b) { return a.bound < b.bound; });
    double best = never;
    for (const Option &option : all) {
        if (option.bound >= best)
            break;
        best = std::min(best,
                        option.cost + following(m_puzzle, at, option, [this](const Standpoint &after) { return open(after); }));
    }
    if (m_left >= 0)
        m_memory->worth.emplace(key, best / total);
    return best;
}

std::optional<double> Search::exact(const Standpoint &at)
{
    m_left = m_steps;
    const double worth = open(at);
    return m_left < 0 ? std::nullopt : std::optional(worth);
}

/// The best that can be done looking `depth` moves ahead, what comes after valued from above or from below.
double Search::ahead(const Standpoint &at, int depth, bool upper) const
{
    if (solved(at))
        return 0;
    double best = upper ? bestHabit(m_puzzle, at) : never;
    const double floor = atLeast(m_puzzle, at);
    if (depth == 0)
        return upper ? best : floor;
    for (const Option &option : options(m_puzzle, at)) {
        const auto bounded = [&](const Standpoint &after) { return solved(after) ? 0 : atLeast(m_puzzle, after); };
        if (option.cost + following(m_puzzle, at, option, bounded) >= best)
            continue;
        best = std::min(best, option.cost + following(m_puzzle, at, option,
                                                      [&](const Standpoint &after) { return ahead(after, depth - 1, upper); }));
    }
    return upper ? best : std::max(best, floor);
}

Prospect Search::from(const Standpoint &at)
{
    Prospect prospect;
    const double total = at.total();
    if (!(total > 0))
        return prospect;
    const std::vector<Option> all = options(m_puzzle, at);
    // Every first move is followed to its end, not the best alone: people see what the others would bring.
    // A board with so many moves cannot be played to its end within the steps; they are not spent on trying.
    constexpr std::size_t hopeless = 24;
    m_left = all.size() > hopeless ? -1 : m_steps;
    std::vector<double> worth;
    for (const Option &option : all)
        worth.push_back(option.cost + following(m_puzzle, at, option, [this](const Standpoint &after) { return open(after); }));
    prospect.exact = m_left >= 0;
    const int depth = all.size() <= 33 ? 1 : 0;
    for (std::size_t n = 0; n < all.size(); ++n) {
        const auto seen = [&](bool upper) {
            return all[n].cost +
                   following(m_puzzle, at, all[n], [&](const Standpoint &after) { return ahead(after, depth, upper); });
        };
        Choice choice{all[n].repair, all[n].place, worth[n] / total, worth[n] / total};
        if (!prospect.exact) {
            choice.minutes = seen(true) / total;
            choice.atLeast = std::min(choice.minutes, seen(false) / total);
        }
        prospect.choices.push_back(choice);
    }
    const auto spent = [this](const Choice &choice) {
        return choice.repair ? m_puzzle.suspects[choice.place].repair : m_puzzle.probes[choice.place].minutes;
    };
    std::stable_sort(prospect.choices.begin(), prospect.choices.end(), [&](const Choice &a, const Choice &b) {
        if (std::abs(a.minutes - b.minutes) > 1e-9 * std::max(1.0, a.minutes))
            return a.minutes < b.minutes;
        return spent(a) < spent(b);
    });
    prospect.minutes = prospect.choices.empty() ? 0 : prospect.choices.front().minutes;
    prospect.atLeast = prospect.minutes;
    for (const Choice &choice : prospect.choices)
        prospect.atLeast = std::min(prospect.atLeast, choice.atLeast);
    return prospect;
}

} // namespace ts
