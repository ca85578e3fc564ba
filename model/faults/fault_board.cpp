#include "model/faults/fault_board.h"

#include "model/faults/cause_reason.h"
#include "model/faults/starting_weights.h"
#include "model/sums/bayes.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ts {

namespace {

template <class R>
QList<R> ofSymptom(const UnitFile &file, const Id<Symptom> &symptom)
{
    QList<R> found;
    for (const R &record : file.all<R>())
        if (!record.removed && record.symptom == symptom)
            found << record;
    return found;
}

double chance(double value, double fallback)
{
    return std::isfinite(value) ? std::clamp(value, 0.0, 1.0) : fallback;
}

/// What the check says of each cause; of a cause that it has no mark for, what its marks say where they are not the cause.
QList<BoardMark> marksOf(const UnitFile &file, const Id<Check> &check, const QList<Cause> &causes)
{
    QList<BoardMark> marks(causes.size());
    double otherwise = 0;
    int count = 0;
    for (qsizetype i = 0; i < causes.size(); ++i) {
        const Bearing *last = nullptr; // marked twice by two people: the later one stands
        for (const Bearing &bearing : file.all<Bearing>())
            if (!bearing.removed && bearing.check == check && bearing.cause == causes[i].id)
                last = &bearing;
        if (!last || causes[i].id.isNull())
            continue;
        marks[i] = {last->id, chance(last->abnormalIf, usuallyAbnormalIf)};
        otherwise += chance(last->abnormalIfNot, usuallyAbnormalIfNot);
        ++count;
    }
    for (BoardMark &mark : marks)
        if (!mark.marked())
            mark.abnormal = count > 0 ? otherwise / count : usuallyAbnormalIfNot;
    return marks;
}

/// How likely what came out is, cause by cause.
QList<double> likelihoods(const FaultBoard &board)
{
    QList<double> all(board.causes.size(), 1.0);
    for (const BoardCheck &check : board.checks)
        for (qsizetype i = 0; i < all.size(); ++i) {
            if (check.cameOut == CameOut::Abnormal)
                all[i] *= check.marks[i].abnormal;
            else if (check.cameOut == CameOut::Normal)
                all[i] *= 1 - check.marks[i].abnormal;
        }
    return all;
}

/// Likelihoods now: the checks, then what was settled by hand, which outweighs them.
void settle(FaultBoard &board)
{
    if (!board.confirmed.isEmpty()) { // more than one may have been found after all
        for (BoardCause &cause : board.causes)
            cause.now = cause.state == CauseState::Confirmed ? 1 : 0;
        return;
    }
    QList<double> before, allowed;
    for (const BoardCause &cause : board.causes) {
        before << cause.before;
        allowed << (cause.state == CauseState::Open ? 1.0 : 0.0);
    }
    QList<double> said = likelihoods(board);
    for (qsizetype i = 0; i < said.size(); ++i)
        said[i] *= allowed[i];
    QList<double> now = bayes(before, said);
    if (now.isEmpty()) {
        now = bayes(before, allowed);
        board.contradiction = !now.isEmpty();
    }
    if (board.contradiction)
        board.remarks << QStringLiteral("The outcomes contradict each other: no cause on the list can show all of them. "
                                        "The likelihoods leave the checks out until one is corrected.");
    if (now.isEmpty())
        board.remarks << QStringLiteral(
            "Everything on the list is ruled out, \"something else\" too: add a cause, or look again.");
    for (qsizetype i = 0; i < board.causes.size(); ++i)
        board.causes[i].now = now.isEmpty() ? 0 : now[i];
}

void remark(FaultBoard &board, const QList<Cause> &causes)
{
    board.remarks << QStringLiteral("One cause per symptom is assumed.");
    const auto typed = std::count_if(causes.begin(), causes.end(),
                                     [](const Cause &cause) { return cause.weight.has_value() && cause.weightFrom.isEmpty(); });
    if (std::any_of(causes.begin(), causes.end(), [](const Cause &cause) { return !cause.weightFrom.isEmpty(); }))
        board.remarks << QStringLiteral("Weights that were brought in say where they come from; those typed count as they are.");
    else if (typed > 0)
        board.remarks << QStringLiteral("Likelihoods start from the weights that were typed.");
    else if (causes.size() > 1)
        board.remarks << QStringLiteral("No weights were typed: all causes start alike.");
    for (const BoardCheck &check : board.checks)
        if (std::none_of(check.marks.begin(), check.marks.end(), [](const BoardMark &mark) { return mark.marked(); }))
            board.remarks
                << QStringLiteral("No mark says what \"%1\" would show, so it tells nothing yet.").arg(check.text.simplified());
}

/// Likeliest first, ruled out ones last; the marks follow.
void sortCauses(FaultBoard &board)
{
    QList<qsizetype> order(board.causes.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&board](qsizetype a, qsizetype b) {
        const BoardCause &left = board.causes[a], &right = board.causes[b];
        const bool leftOut = left.state == CauseState::RuledOut, rightOut = right.state == CauseState::RuledOut;
        return leftOut != rightOut ? rightOut : left.now != right.now ? left.now > right.now : left.before > right.before;
    });
    const auto arrange = [&order](const auto &list) {
        auto arranged = list;
        for (qsizetype i = 0; i < order.size(); ++i)
            arranged[i] = list[order[i]];
        return arranged;
    };
    board.causes = arrange(board.causes);
    for (BoardCheck &check : board.checks)
        check.marks = arrange(check.marks);
}

} // namespace

FaultBoard boardOf(const UnitFile &file, const BenchFile &, const Id<Symptom> &symptom)
{
    FaultBoard board;
    board.symptom = symptom;
    if (const Symptom *seen = symptom.isNull() ? nullptr : file.find(symptom)) {
        board.text = seen->text;
        board.seenAt = seen->at;
        board.cleared = seen->state == SymptomState::Cleared;
    }
    QList<Cause> causes = ofSymptom<Cause>(file, symptom);
    const QList<double> weights = startingWeights(causes);
    if (weights.size() > causes.size()) {
        causes << Cause();
        causes.last().text = somethingElse();
    }
    QHash<Id<Cause>, QString> reasons;
    for (qsizetype i = 0; i < causes.size(); ++i) {
        const Cause &cause = causes[i];
        board.causes << BoardCause{cause.id,
                                   cause.text,
                                   isSomethingElse(cause.text),
                                   cause.state,
                                   cause.weight.has_value() && cause.weightFrom.isEmpty(),
                                   cause.weightFrom,
                                   weights[i],
                                   0,
                                   {},
                                   cause.fixMinutes,
                                   cause.fixCost,
                                   cause.fixOdds};
        reasons.insert(cause.id, cause.reason);
        if (cause.state == CauseState::Confirmed)
            board.confirmed << cause.id;
    }
    for (const Check &check : ofSymptom<Check>(file, symptom))
        board.checks << BoardCheck{
            check.id, check.text, check.minutes, check.wanted, check.cameOut, check.result, marksOf(file, check.id, causes)};
    remark(board, causes);
    settle(board);
    sortCauses(board);
    for (qsizetype i = 0; i < board.causes.size(); ++i)
        board.causes[i].reason = reasonOf(board, i, reasons.value(board.causes[i].id));
    return board;
}

QList<FaultBoard> boardsOf(const UnitFile &file, const BenchFile &bench)
{
    QList<FaultBoard> boards;
    for (const SymptomState state : {SymptomState::Open, SymptomState::Cleared})
        for (const Symptom &symptom : file.all<Symptom>())
            if (!symptom.removed && symptom.state == state)
                boards << boardOf(file, bench, symptom.id);
    if (!ofSymptom<Cause>(file, {}).isEmpty() || !ofSymptom<Check>(file, {}).isEmpty())
        boards << boardOf(file, bench, {});
    return boards;
}

} // namespace ts
