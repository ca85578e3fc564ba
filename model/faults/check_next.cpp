#include "model/faults/check_next.h"

#include "model/faults/one_by_one.h"
#include "model/faults/search.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

/// The board in figures, and which of its causes and checks stand at which place.
struct Posed {
    Puzzle puzzle;
    std::vector<qsizetype> causes;
    std::vector<qsizetype> checks;
    bool moneyLeftOut = false;
    bool fixAssumed = false;
    bool checkAssumed = false;
    bool cut = false;
};

double repairMinutes(const BoardCause &cause, const std::optional<Money> &hourlyRate, Posed &posed)
{
    posed.fixAssumed = posed.fixAssumed || !cause.fixMinutes;
    double minutes = std::max(cause.fixMinutes.value_or(0), 0);
    if (!cause.fixMinutes)
        minutes = cause.somethingElse ? usualElseMinutes : usualFixMinutes;
    if (cause.fixCost && !cause.fixCost->isZero()) {
        if (hourlyRate && hourlyRate->minor() > 0 && hourlyRate->currency() == cause.fixCost->currency())
            minutes += 60.0 * static_cast<double>(cause.fixCost->minor()) / static_cast<double>(hourlyRate->minor());
        else
            posed.moneyLeftOut = true;
    }
    // A fix that can be had one time in two takes two tries for one that comes about. One in twenty is as bad as it is counted.
    return minutes / std::clamp(cause.fixOdds.value_or(1), 0.05, 1.0);
}

Posed pose(const FaultBoard &board, const std::optional<Money> &hourlyRate)
{
    Posed posed;
    for (qsizetype i = 0; i < board.causes.size(); ++i) {
        const BoardCause &cause = board.causes[i];
        if (!(cause.now > 0))
            continue;
        if (posed.causes.size() == mostSuspects) {
            posed.cut = true; // causes stand likeliest first
            break;
        }
        posed.puzzle.suspects.push_back({cause.now, repairMinutes(cause, hourlyRate, posed), cause.fixMinutes.has_value()});
        posed.causes.push_back(i);
    }
    for (qsizetype k = 0; k < board.checks.size(); ++k) {
        const BoardCheck &check = board.checks[k];
        Probe probe;
        for (std::size_t i = 0; i < posed.causes.size(); ++i) {
            const BoardMark &mark = check.marks[posed.causes[i]];
            probe.marks |= quint64(mark.marked() ? 1 : 0) << i;
            probe.abnormal.push_back(mark.abnormal);
        }
        if (check.cameOut == CameOut::Normal || check.cameOut == CameOut::Abnormal) {
            posed.puzzle.paid |= probe.marks;
            continue;
        }
        if (check.cameOut != CameOut::NotDone || probe.marks == 0)
            continue;
        if (posed.checks.size() == mostProbes) {
            posed.cut = true;
            continue;
        }
        posed.checkAssumed = posed.checkAssumed || !check.minutes;
        probe.minutes = check.minutes ? std::max(*check.minutes, 0) : usualCheckMinutes;
        posed.puzzle.probes.push_back(std::move(probe));
        posed.checks.push_back(k);
    }
    return posed;
}

WouldLeave leaving(const FaultBoard &board, const Posed &posed, CameOut cameOut, const Standpoint &after, double before)
{
    WouldLeave left;
    left.cameOut = cameOut;
    const double total = after.total();
    left.chance = before > 0 ? total / before : 0;
    if (!(total > 0))
        return left;
    const auto top = std::max_element(after.weights.begin(), after.weights.end()); // those out of it have 0
    left.likeliest = board.causes[posed.causes[static_cast<std::size_t>(top - after.weights.begin())]].text;
    left.likelihood = *top / total;
    return left;
}

QString percent(double chance)
{
    return QStringLiteral("%1 %").arg(std::lround(chance * 100));
}

QString sentenceOf(const QList<WouldLeave> &leaves, bool repair)
{
    QStringList said;
    for (const WouldLeave &left : leaves) {
        if (!(left.chance > 0))
            continue;
        const bool abnormal = left.cameOut == CameOut::Abnormal;
        const QString then = left.likeliest.isEmpty()
                                 ? QString()
                                 : QStringLiteral(": %1 %2").arg(left.likeliest.simplified(), percent(left.likelihood));
        if (repair)
            said << (abnormal ? QStringLiteral("Else") + then : QStringLiteral("Cures it in %1").arg(percent(left.chance)));
        else
            said << (abnormal ? QStringLiteral("If abnormal") : QStringLiteral("If normal")) + then;
    }
    return said.isEmpty() ? QString() : said.join(QStringLiteral(". ")) + QLatin1Char('.');
}

NextMove moveOf(const FaultBoard &board, const Posed &posed, const Standpoint &start, const Choice &choice)
{
    NextMove move;
    const double total = start.total();
    if (choice.repair) {
        const BoardCause &cause = board.causes[posed.causes[choice.place]];
        move.kind = MoveKind::Repair;
        move.cause = cause.id;
        move.text = cause.somethingElse ? QStringLiteral("Look further: it is something else")
                                        : QStringLiteral("Put right: ") + cause.text.simplified();
        move.minutes = posed.puzzle.suspects[choice.place].repair;
        move.money = cause.fixCost;
        const Standpoint after = afterRepair(start, choice.place);
        move.leaves << WouldLeave{CameOut::Normal, total > 0 ? start.weights[choice.place] / total : 0, {}, 0}
                    << leaving(board, posed, CameOut::Abnormal, after, total);
    } else {
        const BoardCheck &check = board.checks[posed.checks[choice.place]];
        move.check = check.id;
        move.text = check.text.simplified();
        move.minutes = posed.puzzle.probes[choice.place].minutes;
        for (const bool abnormal : {true, false})
            move.leaves << leaving(board, posed, abnormal ? CameOut::Abnormal : CameOut::Normal,
                                   afterProbe(posed.puzzle, start, choice.place, abnormal), total);
    }
    move.leavesText = sentenceOf(move.leaves, choice.repair);
    return move;
}

QStringList basisOf(const Posed &posed, const CheckNext &next, const std::optional<Money> &hourlyRate)
{
    QStringList basis{next.exact ? QStringLiteral("Worked out over all orders: no other takes fewer minutes on average.")
                                 : QStringLiteral("Too large to try all orders: at most %1 min above the best there can be.")
                                       .arg(std::ceil(next.expectedMinutes - next.atLeastMinutes))};
    if (posed.fixAssumed)
        basis << QStringLiteral("Where no minutes to put right were given, %1 are taken, %2 for something else.")
                     .arg(usualFixMinutes)
                     .arg(usualElseMinutes);
    if (posed.checkAssumed)
        basis << QStringLiteral("Where a check has no minutes, %1 are taken.").arg(usualCheckMinutes);
    if (posed.moneyLeftOut)
        basis << (hourlyRate ? QStringLiteral("A fix priced in another currency counts by its minutes alone.")
                             : QStringLiteral("No hourly rate is set, so the cost of a fix is not weighed."));
    if (posed.cut)
        basis << QStringLiteral("Only the %1 likeliest causes and the first %2 checks are weighed.")
                     .arg(mostSuspects)
                     .arg(mostProbes);
    return basis;
}

} // namespace

CheckNext checkNext(const FaultBoard &board, const std::optional<Money> &hourlyRate, const QList<SafetyStep> &safety)
{
    CheckNext next;
    if (board.closed())
        return next;
    for (const SafetyStep &step : safety) {
        NextMove move;
        move.kind = MoveKind::Safety;
        move.text = step.text;
        move.minutes = step.minutes;
        next.moves << move;
    }
    const Posed posed = pose(board, hourlyRate);
    if (board.blank() || posed.puzzle.suspects.empty())
        return next;
    Search search(posed.puzzle);
    const Standpoint start = startOf(posed.puzzle);
    const double total = start.total();
    const Prospect prospect = search.from(start);
    next.expectedMinutes = prospect.minutes;
    next.atLeastMinutes = prospect.atLeast;
    next.exact = prospect.exact;
    next.repairsOnlyMinutes = repairsOnly(posed.puzzle, start) / total;
    next.odds = 0;
    for (const BoardCause &cause : board.causes)
        next.odds += cause.now * std::clamp(cause.fixOdds.value_or(1), 0.0, 1.0);
    for (const Choice &choice : prospect.choices) {
        next.moves << moveOf(board, posed, start, choice);
        next.moves.last().savesMinutes = next.repairsOnlyMinutes - choice.minutes;
    }
    next.basis = basisOf(posed, next, hourlyRate);
    return next;
}

} // namespace ts
