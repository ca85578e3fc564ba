// What the board asks for in words, one line at a time.
#include "model/faults/board_changes.h"
#include "model/values/plain_text.h"
#include "views/fault/fault_page.h"
#include "views/fault/fault_rows.h"
#include "views/unit/record_edit.h"
#include "views/widgets/ask_line.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/typed.h"

#include <QLocale>
#include <QRegularExpression>

namespace ts {

void FaultPage::askWhy(const Id<Cause> &id, CauseState state)
{
    const Cause *cause = file().find(id);
    const QString question = state == CauseState::RuledOut ? tr("Why is it ruled out: %1?").arg(cause->text) : tr("What confirmed it: %1?").arg(cause->text);
    m_ask->ask(question, cause->reason, tr("may stay empty"), [this, id, state](const QString &why) {
        const auto reason = plainText(why, tr("The reason"), shortText);
        const Cause *now = file().find(id);
        if (!reason || !now) {
            if (!reason)
                work().refuse(reason.trouble());
            return !reason.ok() ? false : true;
        }
        Maker maker = work().maker();
        work().record(settleCause(*now, state, *reason, maker));
        m_causes->setFocus();
        return true;
    });
}

void FaultPage::askMore()
{
    const Id<Check> check{m_checks->currentKey()};
    const int mark = m_checks->currentIndex().column() - static_cast<int>(CheckColumn::FirstMark);
    mark >= 0 && mark < m_board.causes.size() ? askHowSure(check, mark) : askResult(check);
}

void FaultPage::askResult(const Id<Check> &id)
{
    const Check *check = file().find(id);
    if (!check)
        return;
    m_ask->ask(tr("What was seen: %1?").arg(check->text), check->result, tr("3.3 µF, 0.4 Ω"), [this, id](const QString &typed) {
        const auto text = plainText(typed, tr("The result"), longText);
        const Check *before = file().find(id);
        if (!text || !before) {
            if (!text)
                work().refuse(text.trouble());
            return text.ok();
        }
        Check after = *before;
        after.result = *text;
        m_checks->setFocus();
        return recordEdit(work(), *before, after, tr("Check %1: %2").arg(after.text, *text)).has_value();
    });
}

void FaultPage::askHowSure(const Id<Check> &check, int mark)
{
    const BoardCause cause = m_board.causes.at(markOrder(m_board).at(mark));
    if (cause.id.isNull())
        return;
    double ifIt = usuallyAbnormalIf;
    double ifNot = usuallyAbnormalIfNot;
    for (const Bearing &bearing : file().all<Bearing>())
        if (bearing.check == check && bearing.cause == cause.id) {
            ifIt = bearing.abnormalIf;
            ifNot = bearing.abnormalIfNot;
        }
    const auto percent = [](double share) { return QLocale().toString(share * 100, 'g', 6); };
    m_ask->ask(tr("Abnormal in % if it is %1, and if it is not:").arg(cause.text), percent(ifIt) + QLatin1Char(' ') + percent(ifNot), tr("95 5"), [this, check, cause](const QString &typed) {
        static const QRegularExpression gaps(QStringLiteral("[\\s;/%]+"));
        const QStringList pieces = typed.split(gaps, Qt::SkipEmptyParts);
        const auto first = typed::shareOrNone(pieces.value(0), tr("chance"));
        const auto second = typed::shareOrNone(pieces.value(1), tr("chance"));
        if (pieces.size() != 2 || !first || !second) {
            work().refuse(tr("Type two percentages, like 95 5: how often it comes out abnormal if this is the cause, and if it is not."));
            return false;
        }
        Maker maker = work().maker();
        work().record(setMark(file(), check, cause.id, **first, **second, maker));
        m_checks->setFocus();
        return true;
    });
}

void FaultPage::askSymptom()
{
    m_ask->ask(tr("What was seen?"), {}, tr("left channel weak, when warm"), [this](const QString &typed) {
        const auto text = plainText(typed, tr("The symptom"), longText);
        if (!text || text->isEmpty()) {
            if (!text)
                work().refuse(text.trouble());
            return text.ok();
        }
        Symptom symptom = freshOfUnit<Symptom>(work());
        symptom.text = *text;
        m_symptom = symptom.id;
        if (!recordNew(work(), symptom, tr("Symptom: %1").arg(*text)))
            return false;
        m_causes->setFocus();
        return true;
    });
}

// A step of first power is not ticked blind: what it showed is said. It is kept as a check that stands by itself.
void FaultPage::askSafety(const QString &step, bool inOrder)
{
    m_ask->ask(inOrder ? tr("What did it show?") : tr("What is not in order?"), {}, step, [this, step, inOrder](const QString &typed) {
        const auto result = plainText(typed, tr("What it showed"), longText);
        if (!result || result->isEmpty()) {
            work().refuse(result ? tr("Say what it showed, in figures where there are any: a step of first power is not ticked blind.") : result.trouble().sentence());
            return false;
        }
        Check check = freshOfUnit<Check>(work());
        check.text = step;
        check.cameOut = inOrder ? CameOut::Normal : CameOut::Abnormal;
        check.result = *result;
        check.doneAt = check.at;
        return recordNew(work(), check, tr("Before first power: %1, %2").arg(step, *result)).has_value();
    });
}

} // namespace ts
