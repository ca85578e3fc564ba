#include "model/faults/board_changes.h"

#include "model/sums/verdict.h"

#include <algorithm>

namespace ts {

namespace {

const Bearing *markOf(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause)
{
    for (const Bearing &bearing : file.all<Bearing>())
        if (!bearing.removed && bearing.check == check && bearing.cause == cause)
            return &bearing;
    return nullptr;
}

Bearing newMark(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause, Maker &maker)
{
    Bearing bearing = maker.fresh<Bearing>();
    bearing.unit = file.unit.id;
    bearing.check = check;
    bearing.cause = cause;
    return bearing;
}

/// "ESR of C214 bears on coupling capacitor C214 open"
QString bearsOn(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause, const QString &how)
{
    const Check *of = file.find(check);
    const Cause *on = file.find(cause);
    return QStringLiteral("%1 %2 %3").arg(of ? of->text.simplified() : QString(), how, on ? on->text.simplified() : QString());
}

QString stateLabel(CauseState state)
{
    switch (state) {
    case CauseState::RuledOut:
        return QStringLiteral("Cause ruled out: ");
    case CauseState::Confirmed:
        return QStringLiteral("Cause confirmed: ");
    case CauseState::Open:
        break;
    }
    return QStringLiteral("Cause open again: ");
}

} // namespace

Expected<Change> addCause(const UnitFile &file, const Id<Symptom> &symptom, const QString &text, Maker &maker)
{
    const QString plain = text.simplified();
    if (plain.isEmpty())
        return Trouble{QStringLiteral("No cause was added"), QStringLiteral("it has no text"), {}};
    for (const Cause &each : file.all<Cause>())
        if (!each.removed && each.symptom == symptom && each.text.simplified().compare(plain, Qt::CaseInsensitive) == 0)
            return Trouble{QStringLiteral("\"%1\" is a cause of this symptom already").arg(plain), {}, {}};
    Cause cause = maker.fresh<Cause>();
    cause.unit = file.unit.id;
    cause.symptom = symptom;
    cause.text = plain;
    return Change(QStringLiteral("Cause: ") + plain).add(cause);
}

Expected<Change> addCheck(const UnitFile &file, const Id<Symptom> &symptom, const QString &text, std::optional<int> minutes,
                          Maker &maker)
{
    const QString plain = text.simplified();
    if (plain.isEmpty())
        return Trouble{QStringLiteral("No check was added"), QStringLiteral("it has no text"), {}};
    Check check = maker.fresh<Check>();
    check.unit = file.unit.id;
    check.symptom = symptom;
    check.text = plain;
    check.minutes = minutes;
    return Change(QStringLiteral("Check to do: ") + plain).add(check);
}

Change recordSomethingElse(const UnitFile &file, const Id<Symptom> &symptom, Maker &maker)
{
    auto change = addCause(file, symptom, somethingElse(), maker);
    return change ? *std::move(change) : Change();
}

Change turnMark(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause, Maker &maker)
{
    if (const Bearing *mark = markOf(file, check, cause))
        return Change(bearsOn(file, check, cause, QStringLiteral("does not bear on"))).remove(*mark);
    return Change(bearsOn(file, check, cause, QStringLiteral("bears on"))).add(newMark(file, check, cause, maker));
}

Expected<Change> setMark(const UnitFile &file, const Id<Check> &check, const Id<Cause> &cause, double abnormalIf,
                         double abnormalIfNot, Maker &maker)
{
    for (const double chance : {abnormalIf, abnormalIfNot})
        if (!(chance >= 0 && chance <= 1))
            return Trouble{QStringLiteral("The mark was not set"), QStringLiteral("a chance is from 0 to 100 %"), {}};
    Change change(QStringLiteral("%1: abnormal in %2 % if so, %3 % if not")
                      .arg(bearsOn(file, check, cause, QStringLiteral("bears on")))
                      .arg(abnormalIf * 100)
                      .arg(abnormalIfNot * 100));
    const Bearing *known = markOf(file, check, cause);
    Bearing mark = known ? *known : newMark(file, check, cause, maker);
    mark.abnormalIf = abnormalIf;
    mark.abnormalIfNot = abnormalIfNot;
    return known ? change.edit(*known, mark) : change.add(mark);
}

Change recordOutcome(const Check &check, CameOut cameOut, const QString &result, Maker &maker)
{
    Check after = check;
    after.cameOut = cameOut;
    after.result = result.simplified();
    if (cameOut == CameOut::NotDone)
        after.doneAt = {};
    else if (after.cameOut != check.cameOut || after.result != check.result)
        after.doneAt = maker.now();
    const QString text = check.text.simplified();
    const QString said = cameOut == CameOut::NotDone ? QStringLiteral("Check not done: ") + text
                                                     : QStringLiteral("Check came out %1: %2").arg(toWord(cameOut), text);
    return Change(said).edit(check, after);
}

std::optional<CameOut> cameOutOf(const Reading &reading)
{
    switch (verdictOf(reading)) {
    case Verdict::Within:
        return CameOut::Normal;
    case Verdict::Outside:
        return CameOut::Abnormal;
    case Verdict::TooCloseToCall:
        return CameOut::Unclear;
    case Verdict::NoLimit:
        break;
    }
    return std::nullopt;
}

Expected<Change> recordOutcome(const Check &check, const Reading &reading, Maker &maker)
{
    const auto cameOut = cameOutOf(reading);
    if (!cameOut)
        return Trouble{QStringLiteral("%1 says nothing of this check").arg(reading.name.simplified()),
                       QStringLiteral("it has no limit to meet"), QStringLiteral("say yourself how the check came out")};
    const QString value = reading.value ? reading.value->text() : QString();
    return recordOutcome(check, *cameOut,
                         QStringLiteral("%1 %2, %3").arg(reading.name.simplified(), value, verdictText(verdictOf(reading))),
                         maker);
}

Change settleCause(const Cause &cause, CauseState state, const QString &because, Maker &maker)
{
    Cause after = cause;
    after.state = state;
    after.reason = state == CauseState::Open ? QString() : because.simplified();
    if (state == CauseState::Open)
        after.settledAt = {};
    else if (after.state != cause.state || after.reason != cause.reason)
        after.settledAt = maker.now();
    const QString reason = after.reason.isEmpty() ? QString() : QStringLiteral(", because ") + after.reason;
    return Change(stateLabel(state) + cause.text.simplified() + reason).edit(cause, after);
}

} // namespace ts
