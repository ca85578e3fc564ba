// What is typed on the board of a symptom, each as one change.
#include "model/faults/board_changes.h"
#include "model/faults/usual_causes.h"
#include "model/jot/phrase.h"
#include "model/values/plain_text.h"
#include "views/fault/fault_page.h"
#include "views/fault/fault_rows.h"
#include "views/fault/symptom_choice.h"
#include "views/unit/record_edit.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/typed.h"

namespace ts {

namespace {

/// The record of that kind that a change makes or leaves behind.
template <class R>
std::optional<QUuid> idIn(const Change &change)
{
    for (const ChangeItem &item : change.items())
        if (item.kind == &description<R>() && item.after)
            return Kind::id(*item.after);
    return std::nullopt;
}

template <class R>
std::optional<QUuid> recordMade(Workplace &work, const Expected<Change> &change)
{
    if (!work.record(change))
        return std::nullopt;
    return idIn<R>(*change).value_or(QUuid());
}

} // namespace

std::optional<QUuid> FaultPage::commitCause(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding)
        return addCauseTyped(typed);
    if (static_cast<CauseColumn>(column) == CauseColumn::State) {
        const auto state = fromWord<CauseState>(typed);
        const Cause *cause = file().find(Id<Cause>{row.key});
        if (!state || !cause)
            return std::nullopt;
        if (*state == CauseState::Open) {
            Maker maker = work().maker();
            return work().record(settleCause(*cause, *state, {}, maker)) ? std::optional(row.key) : std::nullopt;
        }
        askWhy(cause->id, *state);
        return row.key;
    }
    return editCause(row, column, typed);
}

std::optional<QUuid> FaultPage::addCauseTyped(const QString &typed)
{
    if (typed.isEmpty())
        return QUuid();
    // "clutch felt glazed 40%": a weight may follow, as in the log.
    const auto weight = takePercent(typed);
    Maker maker = work().maker();
    auto change = addCause(file(), m_symptom, weight ? weight->rest : typed, maker);
    if (change && weight) {
        Change weighted(change->sentence());
        for (ChangeItem item : change->items()) {
            auto cause = item.kind == &description<Cause>() && item.after ? description<Cause>().fromRow(*item.after) : Expected<Cause>(Trouble{});
            if (cause) {
                cause->weight = weight->value / 100;
                item.after = description<Cause>().toRow(*cause);
            }
            weighted.addItem(item);
        }
        change = weighted;
    }
    return recordMade<Cause>(work(), change);
}

// "Something else" becomes a record when something is said of it.
std::optional<QUuid> FaultPage::editCause(const GridRow &row, int column, const QString &typed)
{
    const auto refused = [this](const Trouble &trouble) {
        work().refuse(trouble);
        return std::nullopt;
    };
    Maker maker = work().maker();
    const Cause *there = file().find(Id<Cause>{row.key});
    Cause before;
    if (there) {
        before = *there;
    } else {
        const Change made = recordSomethingElse(file(), m_symptom, maker);
        if (made.isEmpty())
            return std::nullopt;
        before = description<Cause>().fromRow(*made.items().first().after).value();
    }
    Cause after = before;
    switch (static_cast<CauseColumn>(column)) {
    case CauseColumn::Cause: {
        const auto text = plainText(typed, tr("The cause"), shortText);
        if (!text || text->isEmpty())
            return refused(text ? Trouble{tr("A cause needs a text"), {}, tr("Delete takes it out")} : text.trouble());
        after.text = *text;
        break;
    }
    case CauseColumn::Weight: {
        const auto share = typed::shareOrNone(typed, tr("weight"));
        if (!share)
            return refused(share.trouble());
        after.weight = *share;
        break;
    }
    case CauseColumn::PutRight: {
        const auto right = parsePutRight(typed, work().currency());
        if (!right)
            return refused(right.trouble());
        after.fixMinutes = right->minutes;
        after.fixCost = right->cost;
        after.fixOdds = right->odds;
        break;
    }
    default:
        return std::nullopt;
    }
    const QString sentence = tr("Cause %1, %2: %3").arg(after.text, causeColumns().at(column).title, typed);
    return there ? recordEdit(work(), before, after, sentence) : recordNew(work(), after, sentence);
}

std::optional<QUuid> FaultPage::commitCheck(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding)
        return addCheckTyped(typed);
    const Check *before = file().find(Id<Check>{row.key});
    if (!before)
        return std::nullopt;
    Maker maker = work().maker();
    const int marks = static_cast<int>(m_board.causes.size());
    const int mark = column - static_cast<int>(CheckColumn::FirstMark);
    if (mark >= 0 && mark < marks) {
        const BoardCause &cause = m_board.causes.at(markOrder(m_board).at(mark));
        return work().record(turnMark(file(), before->id, cause.id, maker)) ? std::optional(row.key) : std::nullopt;
    }
    if (mark == marks) {
        const auto cameOut = fromWord<CameOut>(typed);
        return cameOut && work().record(recordOutcome(*before, *cameOut, *cameOut == CameOut::NotDone ? QString() : before->result, maker)) ? std::optional(row.key) : std::nullopt;
    }
    Check after = *before;
    const auto text = plainText(typed, tr("The text"), shortText);
    if (!text) {
        work().refuse(text.trouble());
        return std::nullopt;
    }
    if (column == static_cast<int>(CheckColumn::Minutes)) {
        const auto minutes = typed::minutesOrNone(typed);
        if (!minutes) {
            work().refuse(minutes.trouble());
            return std::nullopt;
        }
        after.minutes = *minutes;
    } else if (text->isEmpty()) {
        work().refuse(Trouble{tr("A check needs a text"), {}, tr("Delete takes it out")});
        return std::nullopt;
    } else {
        after.text = *text;
    }
    return recordEdit(work(), *before, after, tr("Check %1: %2").arg(after.text, typed));
}

std::optional<QUuid> FaultPage::addCheckTyped(const QString &typed)
{
    if (typed.isEmpty())
        return QUuid();
    const auto time = takeMinutes(typed);
    Maker maker = work().maker();
    return recordMade<Check>(work(), addCheck(file(), m_symptom, time ? time->rest : typed, time ? std::optional(time->value) : std::nullopt, maker));
}

void FaultPage::turnSymptom()
{
    const Symptom *before = file().find(m_symptom);
    if (!before)
        return;
    Symptom after = *before;
    const bool open = before->state == SymptomState::Open;
    after.state = open ? SymptomState::Cleared : SymptomState::Open;
    after.clearedAt = open ? work().now() : QDateTime();
    work().record(Change(open ? tr("Symptom cleared: %1").arg(before->text) : tr("Symptom open again: %1").arg(before->text)).edit(*before, after));
}

void FaultPage::bringInUsual()
{
    const auto offer = usualCauses(work().desk(), file().unit, m_board.text);
    if (!offer)
        return offerOthers(tr("No causes are known for “%1”. Choose the symptom that comes nearest:").arg(m_board.text));
    m_choice->putAway();
    bringIn(*offer);
}

void FaultPage::bringIn(const FaultOffer &offer)
{
    Maker maker = work().maker();
    if (work().record(ts::bringIn(file(), m_symptom, offer, maker)))
        m_causes->setFocus();
}

// Where the words of a symptom are like no other, the person says in the page which one is meant.
void FaultPage::offerOthers(const QString &question)
{
    const auto notes = notesFor(work().desk(), file().unit);
    const QList<FaultOffer> offers = (notes ? offersOf(*notes) : QList<FaultOffer>()) + offersOf(tableOf(bench(), file().unit.category));
    if (offers.isEmpty())
        return work().refuse(tr("Neither the notes nor a table know symptoms of such a unit."));
    m_choice->offer(question, offers);
}

void FaultPage::removeCause(const QUuid &key)
{
    const Cause *cause = file().find(Id<Cause>{key});
    if (!cause)
        return;
    Change change(tr("Cause taken out: %1").arg(cause->text));
    for (const Bearing &bearing : file().all<Bearing>())
        if (bearing.cause == cause->id)
            change.remove(bearing);
    work().record(change.remove(*cause));
}

void FaultPage::removeCheck(const QUuid &key)
{
    const Check *check = file().find(Id<Check>{key});
    if (!check)
        return;
    Change change(tr("Check taken out: %1").arg(check->text));
    for (const Bearing &bearing : file().all<Bearing>())
        if (bearing.check == check->id)
            change.remove(bearing);
    work().record(change.remove(*check));
}

} // namespace ts
