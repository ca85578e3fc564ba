#include "model/sums/money/break_even.h"

#include <algorithm>

namespace ts {

namespace {

constexpr qint64 million = 1'000'000;
/// Where a search for a price is given up: the most that Money reads, in minor units.
constexpr qint64 farthest = 9'000'000'000'000'000;
constexpr int mostSteps = 2'000'000;

/// A price looked at from both sides: what a sale leaves before it is charged, and what is owed. Every rule is taken apart into
/// pieces that only rise or only fall with the price: its share above the first minor unit, in the sense of its rate, and what
/// entering its tier costs, in the sense of that sum. The rising pieces are owed, the falling ones are given back, so both sides
/// rise with the price however the rules jump; that is what makes the climb below exact.
class Sides {
public:
    Sides(const FeeSchedule &schedule, qint64 costs, qint64 carriage, const Rate &tax)
        : m_schedule(schedule), m_costs(costs), m_carriage(carriage), m_tax(tax)
    {
    }

    [[nodiscard]] qint64 owed(qint64 price) const { return m_costs + pieces(price, true); }
    [[nodiscard]] qint64 left(qint64 price) const { return price + m_carriage - pieces(price, false); }
    [[nodiscard]] bool isPlain() const // nothing is given back: what is left is the price and the carriage
    {
        return std::all_of(m_schedule.lines().begin(), m_schedule.lines().end(),
                           [](const FeeSchedule::Line &line) { return !line.due || (line.rate >= 0 && line.bounded(0) >= 0); });
    }

private:
    [[nodiscard]] qint64 pieces(qint64 price, bool rising) const
    {
        const qint64 tax = FeeSchedule::shareOf(m_tax.millionths(), price + m_carriage);
        qint64 sum = 0;
        for (const FeeSchedule::Line &line : m_schedule.lines()) {
            if (!line.due)
                continue;
            const qint64 whole = line.baseOf(price, m_carriage, tax);
            const qint64 entry = line.bounded(line.from); // with no part of the base above the tier's lower end
            if ((line.rate >= 0) == rising)
                sum += line.bounded(std::max(whole, line.from)) - entry;
            if ((entry >= 0) == rising && (line.from == 0 || whole > line.from))
                sum += entry;
        }
        return sum;
    }

    const FeeSchedule &m_schedule;
    qint64 m_costs;
    qint64 m_carriage;
    Rate m_tax;
};

/// The share of each further minor unit that fees take however high the price, in millionths of a millionth.
qint64 openShare(const FeeSchedule &schedule, const Rate &tax)
{
    qint64 open = 0;
    for (const FeeSchedule::Line &line : schedule.lines()) {
        const bool ends =
            line.upTo < farthest || (line.rate > 0 && line.most < farthest) || (line.rate < 0 && line.least > -farthest);
        if (line.due && !ends)
            open += line.rate * (million + (line.base == FeeBase::ItemCarriageAndTax ? tax.millionths() : 0));
    }
    return open;
}

/// A price above which no rule changes its course.
qint64 lastBend(const FeeSchedule &schedule)
{
    qint64 last = 0;
    for (const FeeSchedule::Line &line : schedule.lines()) {
        if (!line.due)
            continue;
        last = std::max(last, line.upTo < farthest ? std::max(line.upTo, line.from) : line.from);
        const qint64 bound = line.rate > 0 ? line.most : line.least;
        if (line.rate != 0 && std::abs(bound) < farthest) {
            const double part = static_cast<double>(bound - line.fixed) / static_cast<double>(line.rate) * million;
            last = std::max(last, line.from + static_cast<qint64>(std::clamp(part, 0.0, 1e15)) + million);
        }
    }
    return last;
}

} // namespace

Expected<Money> breakEven(const Money &costs, const QList<FeeRule> &rules, const Money &carriageCharged, const Rate &taxOnTop,
                          Promotion promotion)
{
    const QString did = QStringLiteral("There is no break-even price");
    if (taxOnTop.millionths() < 0)
        return Trouble{did, QStringLiteral("a tax of %1 % is below zero").arg(taxOnTop.percent()), {}};
    const auto schedule = FeeSchedule::of(rules, {costs, carriageCharged}, promotion);
    if (!schedule)
        return schedule.trouble();
    const Sides sides(*schedule, costs.minor(), carriageCharged.minor(), taxOnTop);
    const qint64 open = openShare(*schedule, taxOnTop);
    // Above the last bend, fees that take all there is leave no more with any price; but for what each rule's rounding gives,
    // which comes round again within a million minor units.
    const bool takesAll = open >= million * million;
    const qint64 end = takesAll ? lastBend(*schedule) + (rules.size() + 1) * million : farthest;
    const bool plain = sides.isPlain();
    // Climb: what is owed at a price that is too low can only be met at the least price that leaves as much, and no price
    // below that one covers. Both sides rise, so the first standstill is the least price of all (Kleene).
    qint64 price = 0;
    for (int step = 0; step < mostSteps && price < end; ++step) {
        const qint64 needed = sides.owed(price);
        const qint64 left = sides.left(price);
        if (left >= needed)
            return Money(price, schedule->currency());
        qint64 below = price;
        qint64 enough = price + (needed - left); // what is left rises by at least one for one
        while (!plain && enough - below > 1) {
            const qint64 middle = below + (enough - below) / 2;
            (sides.left(middle) >= needed ? enough : below) = middle;
        }
        price = enough;
    }
    if (takesAll)
        return Trouble{did, QStringLiteral("fees take %1 % of every price").arg(Rate(open / million).percent()),
                       QStringLiteral("correct the rates")};
    return Trouble{did, QStringLiteral("no price up to %1 covers the costs").arg(Money(price, schedule->currency()).decimal()),
                   QStringLiteral("correct the costs or the rates")};
}

} // namespace ts
