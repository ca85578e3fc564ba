#include "model/sums/at_completion.h"

#include "model/sums/money/break_even.h"
#include "model/sums/money_settings.h"

#include <algorithm>

namespace ts {

Completion atCompletion(const CostSheet &sheet, const UnitFile &file, const BenchFile &bench)
{
    const bool closed = file.unit.stage == Stage::Closed;
    const MoneySettings settings = MoneySettings::of(bench);
    const Money nothing(0, sheet.currency);
    Completion made;
    const int worked = sheet.hours.minutes();
    made.minutes = closed ? worked : std::max(worked, sheet.minutesPlanned.value_or(0));
    made.why = closed ? QStringLiteral("The unit is closed, so this is what it came to.")
                      : QStringLiteral("As it stands, with the parts still needed and at least the hours planned.");
    const auto put = [&](CostKey key, const std::optional<Money> &money) {
        if (money)
            made.lines.insert(key, *money);
    };
    Money spent = nothing;
    const auto cost = [&](CostKey key, const Money &money) {
        if (!sheet.line(key))
            return;
        made.lines.insert(key, money);
        spent += money;
    };
    const auto toDate = [&](CostKey key) { return sheet.toDate(key).value_or(nothing); };
    const auto atLeastPlanned = [&](CostKey key) { return closed ? toDate(key) : std::max(toDate(key), sheet.planned(key).value_or(nothing)); };
    cost(CostKey::BoughtFor, toDate(CostKey::BoughtFor));
    cost(CostKey::CarriageIn, toDate(CostKey::CarriageIn));
    cost(CostKey::Parts, closed ? toDate(CostKey::Parts) : toDate(CostKey::Parts) + sheet.spent.toCome);
    cost(CostKey::Consumables, atLeastPlanned(CostKey::Consumables));
    cost(CostKey::OutsideWork, atLeastPlanned(CostKey::OutsideWork));
    cost(CostKey::Other, toDate(CostKey::Other));
    cost(CostKey::Refunds, toDate(CostKey::Refunds));
    const Money overheadToCome = settings.overheadRate ? settings.overheadRate->scaled(made.minutes - worked, 60, Rounding::HalfUp) : nothing;
    cost(CostKey::Overhead, toDate(CostKey::Overhead) + overheadToCome);
    put(CostKey::Spent, spent);

    for (const CostKey key : {CostKey::SellingFee, CostKey::CarriageOut, CostKey::Resale})
        put(key, sheet.toDate(key));
    const Money everything = spent + toDate(CostKey::SellingFee) + toDate(CostKey::CarriageOut);
    put(CostKey::EverythingButHours, everything);
    if (settings.hourlyRate)
        put(CostKey::YourHours, settings.hourlyRate->scaled(made.minutes, 60, Rounding::HalfUp));
    if (const auto resale = sheet.toDate(CostKey::Resale)) {
        const Money profit = *resale - everything;
        put(CostKey::ProfitBeforeHours, profit);
        if (made.minutes > 0)
            put(CostKey::EarnedPerHour, profit.scaled(60, made.minutes, Rounding::HalfUp));
    }
    // Break-even moves by the costs still to come alone where the price sets the fee; so it is solved again.
    if (sheet.toDate(CostKey::BreakEven)) {
        if (closed)
            put(CostKey::BreakEven, sheet.toDate(CostKey::BreakEven));
        else if (const auto price = breakEven(spent + toDate(CostKey::CarriageOut) + sheet.feeBesideRules, sheet.rules))
            put(CostKey::BreakEven, Money(price->minor(), sheet.currency));
    }
    return made;
}

} // namespace ts
