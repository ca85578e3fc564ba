// How many minutes it takes to the repair, symptom by symptom of the tables that ship: going by "Check next" against plain
// habits. For each symptom the true cause and what every check would show are drawn by the table's own shares and the usual
// chances of a mark (abnormal in 95 % if it is the cause, 5 % if not); every way of working then meets the same draws.
#include "model/faults/fault_offer.h"
#include "model/faults/one_by_one.h"
#include "model/faults/search.h"

#include <QCoreApplication>
#include <QRandomGenerator>
#include <QTextStream>

#include <array>
#include <cmath>
#include <map>

using namespace ts;

namespace {

constexpr int draws = 10'000;
constexpr double elseMinutes = 90; // check_next.h
constexpr std::array habits{Habit::Entered, Habit::Likeliest, Habit::Cheapest, Habit::PerMinute};

/// `tries`: repairs may be tried on suspicion, as in the program; else only what a check bears on is repaired.
Puzzle puzzleOf(const FaultOffer &offer, bool tries)
{
    Puzzle puzzle;
    const auto suspects = static_cast<std::size_t>(offer.causes.size() + 1);
    for (const OfferedCause &cause : offer.causes)
        puzzle.suspects.push_back({cause.weight, double(cause.fixMinutes.value_or(30)), tries && cause.fixMinutes.has_value()});
    puzzle.suspects.push_back({offer.somethingElse, elseMinutes, false});
    for (const OfferedCheck &check : offer.checks) {
        Probe probe;
        probe.minutes = check.minutes.value_or(10);
        probe.abnormal.assign(suspects, 0.05);
        for (const OfferedMark &mark : check.marks) {
            probe.marks |= quint64(1) << mark.cause;
            probe.abnormal[static_cast<std::size_t>(mark.cause)] = mark.abnormalIf;
        }
        puzzle.probes.push_back(probe);
    }
    return puzzle;
}

/// The true cause, and what each check would show.
struct Draw {
    std::size_t guilty = 0;
    quint64 abnormal = 0;
};

std::vector<Draw> drawn(const Puzzle &puzzle, quint32 seed)
{
    QRandomGenerator dice(seed);
    std::vector<Draw> all(draws);
    const double total = startOf(puzzle).total();
    for (Draw &draw : all) {
        double left = dice.generateDouble() * total;
        while (draw.guilty + 1 < puzzle.suspects.size() && (left -= puzzle.suspects[draw.guilty].weight) > 0)
            ++draw.guilty;
        for (std::size_t k = 0; k < puzzle.probes.size(); ++k)
            if (dice.generateDouble() < puzzle.probes[k].abnormal[draw.guilty])
                draw.abnormal |= quint64(1) << k;
    }
    return all;
}

/// Follows the first choice of "Check next" again and again; what it advises at each standpoint is worked out once.
class Adviser {
public:
    explicit Adviser(const Puzzle &puzzle) : m_search(puzzle) {}

    double minutes(const Draw &draw)
    {
        const Puzzle &puzzle = m_search.puzzle();
        Standpoint at = startOf(puzzle);
        double spent = 0;
        for (;;) {
            const Choice next = choice(at);
            if (next.repair) {
                spent += puzzle.suspects[next.place].repair;
                if (next.place == draw.guilty)
                    return spent;
                at = afterRepair(at, next.place);
            } else {
                spent += puzzle.probes[next.place].minutes;
                at = afterProbe(puzzle, at, next.place, hasBit(draw.abnormal, next.place));
            }
        }
    }

private:
    const Choice &choice(const Standpoint &at)
    {
        const std::array key{at.alive, at.undone, at.abnormal};
        const auto known = m_choices.find(key);
        return known != m_choices.end() ? known->second : m_choices.emplace(key, m_search.from(at).choices.front()).first->second;
    }

    Search m_search;
    std::map<std::array<quint64, 3>, Choice> m_choices;
};

/// A habit played through one draw: check after check, abnormal means repair, then the repairs that are left by the same habit.
double minutesBy(Habit habit, const Puzzle &puzzle, const Draw &draw)
{
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < puzzle.suspects.size(); ++i)
        order.push_back(i);
    const auto checkOf = [&](std::size_t suspect) {
        int best = -1;
        for (std::size_t k = 0; k < puzzle.probes.size(); ++k)
            if (hasBit(puzzle.probes[k].marks, suspect) && (best < 0 || k == suspect))
                best = static_cast<int>(k);
        return best;
    };
    const auto cost = [&](std::size_t i) {
        return checkOf(i) < 0 ? puzzle.suspects[i].repair : puzzle.probes[static_cast<std::size_t>(checkOf(i))].minutes;
    };
    const auto key = [&](std::size_t i) {
        switch (habit) {
        case Habit::Likeliest:
            return -puzzle.suspects[i].weight;
        case Habit::Cheapest:
            return cost(i);
        case Habit::PerMinute:
            return cost(i) / puzzle.suspects[i].weight;
        default:
            return 0.0;
        }
    };
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    double spent = 0;
    quint64 done = 0, repaired = 0;
    for (const bool again : {false, true})
        for (const std::size_t i : order) {
            const int check = checkOf(i);
            bool mend = again || check < 0;
            if (!again && check >= 0) {
                spent +=
                    hasBit(done, static_cast<std::size_t>(check)) ? 0 : puzzle.probes[static_cast<std::size_t>(check)].minutes;
                done |= quint64(1) << check;
                mend = hasBit(draw.abnormal, static_cast<std::size_t>(check));
            }
            if (!mend || hasBit(repaired, i))
                continue;
            spent += puzzle.suspects[i].repair;
            repaired |= quint64(1) << i;
            if (i == draw.guilty)
                return spent;
        }
    return spent;
}

/// Mean minutes of one symptom or of many: the way there, and the repair that had to be done in any case.
struct Mean {
    double advised = 0;
    std::array<double, habits.size()> habit{};
    double needed = 0; ///< the guilty one's repair alone
    double best = 0;   ///< expected, where it could be worked out
    int count = 0;

    void add(const Mean &other)
    {
        advised += other.advised;
        needed += other.needed;
        best += other.best;
        count += other.count;
        for (std::size_t h = 0; h < habits.size(); ++h)
            habit[h] += other.habit[h];
    }
};

Mean measured(const Puzzle &puzzle, quint32 seed)
{
    Mean mean;
    mean.count = 1;
    Adviser adviser(puzzle);
    for (const Draw &draw : drawn(puzzle, seed)) {
        mean.advised += adviser.minutes(draw) / draws;
        mean.needed += puzzle.suspects[draw.guilty].repair / draws;
        for (std::size_t h = 0; h < habits.size(); ++h)
            mean.habit[h] += minutesBy(habits[h], puzzle, draw) / draws;
    }
    Search patient(puzzle, 50'000'000);
    const Standpoint start = startOf(puzzle);
    const auto best = patient.exact(start);
    mean.best = best ? *best / start.total() : std::nan("");
    return mean;
}

QString row(const QString &name, const Mean &mean)
{
    const auto cell = [&](double sum) { return QStringLiteral(" | %1").arg(sum / mean.count, 0, 'f', 1); };
    QString line = QStringLiteral("| ") + name + cell(mean.advised);
    for (const double each : mean.habit)
        line += cell(each);
    const double likeliest = mean.habit[1];
    line += cell(mean.needed) + QStringLiteral(" | %1 %").arg(100 * (1 - mean.advised / likeliest), 0, 'f', 1) +
            QStringLiteral(" | %1 %").arg(100 * (1 - (mean.advised - mean.needed) / (likeliest - mean.needed)), 0, 'f', 1);
    return line + (std::isnan(mean.best) ? QStringLiteral(" | - |")
                                         : QStringLiteral(" | %1 |").arg(mean.advised / mean.best, 0, 'f', 3));
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication app(argc, argv);
    const bool tries = !app.arguments().contains(QStringLiteral("--no-tries"));
    const bool all = app.arguments().contains(QStringLiteral("--symptoms"));
    QTextStream out(stdout);
    out << "| | check next | as typed | likeliest | cheapest | p/c | repair alone | fewer than likeliest | of the minutes before "
           "the "
           "repair | to the best |\n|---|---|---|---|---|---|---|---|---|---|\n";
    Mean overall;
    int worse = 0;
    quint32 seed = 1;
    for (const StartingTable &table : allTables({})) {
        Mean ofCategory;
        for (const FaultOffer &offer : offersOf(table)) {
            const Mean mean = measured(puzzleOf(offer, tries), seed++);
            // Of two means over 10,000 draws a half percent is no difference.
            for (const double each : mean.habit)
                worse += mean.advised > each * 1.005 ? 1 : 0;
            if (all)
                out << row(QStringLiteral("%1: %2").arg(toWord(table.category), offer.symptom), mean) << Qt::endl;
            ofCategory.add(mean);
        }
        out << row(toWord(table.category), ofCategory) << Qt::endl;
        overall.add(ofCategory);
    }
    out << row(QStringLiteral("all %1 symptoms").arg(overall.count), overall)
        << "\nworse than a habit by more than 0.5 %: " << worse << '\n';
    return 0;
}
