#include "views/money/plan_edit.h"

#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

} // namespace

Expected<int> minutesTyped(const QString &typed)
{
    static const QRegularExpression hoursAndMinutes(QStringLiteral("^(\\d{1,5})\\s*(?:h|:)\\s*(?:(\\d{1,2})\\s*(?:m|min)?)?$"), QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression minutes(QStringLiteral("^(\\d{1,6})\\s*(?:m|min)?$"), QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression decimal(QStringLiteral("^(\\d{1,5}[.,]\\d{1,2})\\s*h$"), QRegularExpression::CaseInsensitiveOption);
    const QString text = typed.trimmed();
    int made = -1;
    if (const auto match = hoursAndMinutes.match(text); match.hasMatch())
        made = match.captured(1).toInt() * 60 + match.captured(2).toInt();
    else if (const auto plain = minutes.match(text); plain.hasMatch())
        made = plain.captured(1).toInt();
    else if (const auto parts = decimal.match(text); parts.hasMatch())
        made = qRound(parts.captured(1).replace(QLatin1Char(','), QLatin1Char('.')).toDouble() * 60);
    if (made < 0 || made > 600'000)
        return Trouble{tr("“%1” is no time").arg(text), {}, tr("write it as 4 h 30 m, 4:30 or 270")};
    return made;
}

namespace {

/// The place of a field in the plan, by the kind of value that it holds.
std::optional<Money> Plan::*moneyOf(PlanField field)
{
    switch (field) {
    case PlanField::Parts:
        return &Plan::parts;
    case PlanField::PartsLow:
        return &Plan::partsLow;
    case PlanField::PartsHigh:
        return &Plan::partsHigh;
    case PlanField::Resale:
        return &Plan::resaleLikely;
    case PlanField::ResaleLow:
        return &Plan::resaleLow;
    case PlanField::ResaleHigh:
        return &Plan::resaleHigh;
    case PlanField::CarriageOut:
        return &Plan::carriageOut;
    case PlanField::Packing:
        return &Plan::packing;
    case PlanField::CarriageCharged:
        return &Plan::carriageCharged;
    case PlanField::CarriageIn:
        return &Plan::carriageIn;
    case PlanField::PartsValue:
        return &Plan::partsValue;
    case PlanField::ReturnRefund:
        return &Plan::returnRefund;
    case PlanField::ReturnCost:
        return &Plan::returnCost;
    default:
        return nullptr;
    }
}

std::optional<int> Plan::*minutesOf(PlanField field)
{
    switch (field) {
    case PlanField::Minutes:
        return &Plan::minutes;
    case PlanField::MinutesLow:
        return &Plan::minutesLow;
    case PlanField::MinutesHigh:
        return &Plan::minutesHigh;
    case PlanField::BreakingMinutes:
        return &Plan::breakingMinutes;
    default:
        return nullptr;
    }
}

Plan planNow(const UnitFile &file, Maker &maker)
{
    if (!file.all<Plan>().isEmpty())
        return file.all<Plan>().last();
    Plan plan = maker.fresh<Plan>();
    plan.unit = file.unit.id;
    return plan;
}

Expected<std::optional<Money>> moneyTyped(const QString &typed, const Currency &currency)
{
    if (typed.isEmpty())
        return std::optional<Money>();
    const auto read = shown::parseMoney(typed, currency);
    if (!read)
        return read.trouble();
    if (read->minor() < 0)
        return Trouble{tr("“%1” is below zero").arg(typed), {}, {}};
    return std::optional<Money>(*read);
}

template <class T>
bool outOfOrder(const std::optional<T> &low, const std::optional<T> &high)
{
    return low && high && *high < *low;
}

// Hardly less, likely and hardly more have to stand in that order.
Expected<void> inOrder(const Plan &plan)
{
    const bool wrong = outOfOrder(plan.minutesLow, plan.minutes) || outOfOrder(plan.minutes, plan.minutesHigh) || outOfOrder(plan.partsLow, plan.parts) ||
                       outOfOrder(plan.parts, plan.partsHigh) || outOfOrder(plan.resaleLow, plan.resaleLikely) || outOfOrder(plan.resaleLikely, plan.resaleHigh);
    if (wrong)
        return Trouble{tr("The plan was left as it is"), tr("the least, the likely and the most are not in that order"), {}};
    return {};
}

} // namespace

Expected<Plan> planTyped(const UnitFile &file, const BenchFile &bench, PlanField field, const QString &typed, const QDate &today, Maker &maker)
{
    Plan plan = planNow(file, maker);
    const QString text = typed.trimmed();
    if (const auto money = moneyOf(field)) {
        const auto read = moneyTyped(text, bench.currency());
        if (!read)
            return read.trouble();
        plan.*money = *read;
    } else if (const auto minutes = minutesOf(field)) {
        (plan.*minutes).reset();
        if (!text.isEmpty()) {
            const auto read = minutesTyped(text);
            if (!read)
                return read.trouble();
            plan.*minutes = *read;
        }
    } else if (field == PlanField::Chance) {
        const auto read = typed::shareOrNone(text, tr("chance of repair"));
        if (!read)
            return read.trouble();
        plan.chance = *read;
    } else if (field == PlanField::DaysToSell) {
        const auto read = typed::wholeOrNone(text, tr("number of days"), 0, 3650);
        if (!read)
            return read.trouble();
        plan.daysToSell = *read;
    } else {
        const auto read = typed::dayOrNone(text, today);
        if (!read)
            return read.trouble();
        plan.returnUntil = *read;
    }
    if (const auto ordered = inOrder(plan); !ordered)
        return ordered.trouble();
    return plan;
}

Expected<Plan> planTyped(const UnitFile &file, const BenchFile &bench, CostKey key, const QString &typed, Maker &maker)
{
    // No line of the sheet is a day, so none rests on which day it is.
    if (key == CostKey::YourHours)
        return planTyped(file, bench, PlanField::Minutes, typed, {}, maker);
    if (key == CostKey::Parts)
        return planTyped(file, bench, PlanField::Parts, typed, {}, maker);
    if (key == CostKey::Resale)
        return planTyped(file, bench, PlanField::Resale, typed, {}, maker);
    if (key != CostKey::CarriageOut)
        return Trouble{tr("This line is not planned"), {}, {}};
    auto plan = planTyped(file, bench, PlanField::CarriageOut, typed, {}, maker);
    if (!plan)
        return plan;
    // The line is carriage and packing together; packing that was planned apart stays, as far as the sum has room for it.
    if (plan->carriageOut && plan->packing && plan->packing->minor() <= plan->carriageOut->minor())
        plan->carriageOut = *plan->carriageOut - *plan->packing;
    else
        plan->packing.reset();
    return plan;
}

QString planText(const UnitFile &file, PlanField field)
{
    if (file.all<Plan>().isEmpty())
        return {};
    const Plan &plan = file.all<Plan>().last();
    if (const auto money = moneyOf(field))
        return plan.*money ? shown::amount(*(plan.*money)) : QString();
    if (const auto minutes = minutesOf(field))
        return plan.*minutes ? shown::duration(*(plan.*minutes)) : QString();
    if (field == PlanField::Chance)
        return plan.chance ? shown::percent(*plan.chance) : QString();
    if (field == PlanField::DaysToSell)
        return plan.daysToSell ? shown::count(*plan.daysToSell) : QString();
    return plan.returnUntil.isValid() ? QLocale().toString(plan.returnUntil, QLocale::ShortFormat) : QString();
}

Change planChange(const UnitFile &file, const Plan &plan, const QString &typed)
{
    Change change(tr("Plan: %1").arg(typed.trimmed().isEmpty() ? tr("a figure taken out") : typed.trimmed()));
    const QList<Plan> &plans = file.all<Plan>();
    if (plans.isEmpty())
        return change.add(plan);
    return plans.last() == plan ? Change() : change.edit(plans.last(), plan);
}

Expected<Change> planWith(const UnitFile &file, const BenchFile &bench, CostKey key, const QString &typed, Maker &maker)
{
    const auto plan = planTyped(file, bench, key, typed, maker);
    if (!plan)
        return plan.trouble();
    return planChange(file, *plan, typed);
}

} // namespace ts
