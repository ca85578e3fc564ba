#include "model/sums/cost_sheet.h"

#include "model/records/settings.h"
#include "model/sums/money/break_even.h"

namespace ts {

namespace {

using Maybe = std::optional<Money>;

Maybe plus(const Maybe &a, const Maybe &b)
{
    if (!a)
        return b;
    return b ? *a + *b : *a;
}

/// Builds the lines, one column of figures at a time for the sums.
class Sheet {
public:
    Sheet(const UnitFile &file, const BenchFile &bench, const QDateTime &now, const Resale &resale)
        : m_file(file), m_bench(bench), m_currency(bench.currency()), m_day(now.toUTC().date()), m_resaleNow(resale)
    {
        m_sheet.currency = m_currency;
        m_sheet.spent = spentOn(file, m_currency);
        m_sheet.hours = hoursOf(file, now);
        for (const Plan &plan : file.all<Plan>())
            if (!plan.removed)
                m_plan = &plan;
        if (m_plan)
            m_sheet.minutesPlanned = m_plan->minutes;
    }

    CostSheet made()
    {
        addSpent();
        lookAtSale();
        const Column planned = addSelling();
        addYours(planned);
        remarkOnMissing();
        return std::move(m_sheet);
    }

private:
    struct Column {
        Maybe planned;
        Maybe toDate;
    };

    void add(CostKey key, const QString &text, const Column &column, bool isTotal = false)
    {
        m_sheet.lines.append({key, text, column.planned, column.toDate, isTotal});
    }
    void addCost(CostKey key, const QString &text, const Column &column)
    {
        add(key, text, column);
        m_spent.planned = plus(m_spent.planned, column.planned);
        m_spent.toDate = plus(m_spent.toDate, column.toDate);
    }
    [[nodiscard]] Money paid(const QList<SpendKind> &kinds) const { return spentAs(m_file, m_currency, kinds); }
    [[nodiscard]] Maybe asPlanned(const Money &money) const { return m_plan ? Maybe(money) : std::nullopt; }
    /// A sum of the plan, where it is in the bench's currency.
    [[nodiscard]] Maybe ours(const Maybe &money)
    {
        if (!money || money->currency().isNull() || money->currency() == m_currency)
            return money ? Maybe(Money(money->minor(), m_currency)) : money;
        m_sheet.remarks << QStringLiteral("%1 of the plan is in another currency and left out.").arg(money->display());
        return std::nullopt;
    }
    [[nodiscard]] Maybe perHour(const Maybe &rate, std::optional<int> minutes) const
    {
        return rate && minutes ? Maybe(rate->scaled(*minutes, 60, Rounding::HalfUp)) : std::nullopt;
    }

    void addSpent()
    {
        const Money bought = paid({SpendKind::Purchase});
        const Money carriage = paid({SpendKind::CarriageIn});
        Money parts = paid({SpendKind::Part});
        for (const Need &need : m_file.all<Need>())
            if (!need.removed && need.state != NeedState::Needed)
                parts += inCurrency(need, m_currency).value_or(Money());
        addCost(CostKey::BoughtFor, QStringLiteral("Bought for"), {asPlanned(bought), bought});
        addCost(CostKey::CarriageIn, QStringLiteral("Carriage in"), {asPlanned(carriage), carriage});
        addCost(CostKey::Parts, QStringLiteral("Parts"), {m_plan ? ours(m_plan->parts) : std::nullopt, parts});
        addCost(CostKey::Consumables, QStringLiteral("Consumables"), {std::nullopt, paid({SpendKind::Consumable})});
        addCost(CostKey::OutsideWork, QStringLiteral("Outside work"), {std::nullopt, paid({SpendKind::OutsideWork})});
        // A deposit or a sale that flowed out is money out all the same.
        const Money other = paid({SpendKind::Other, SpendKind::Deposit, SpendKind::Sale});
        if (!other.isZero())
            addCost(CostKey::Other, QStringLiteral("Other"), {std::nullopt, other});
        const Money refunds = paid({SpendKind::Refund});
        if (!refunds.isZero())
            addCost(CostKey::Refunds, refunds.minor() < 0 ? QStringLiteral("Refunds got") : QStringLiteral("Refunds given"),
                    {std::nullopt, refunds});

        const Maybe rate = moneySetting(settings::overheadRate);
        const Maybe overheadPlanned = m_plan ? perHour(rate, m_plan->minutes) : std::nullopt;
        const Money overhead =
            paid({SpendKind::Overhead}) + perHour(rate, m_sheet.hours.minutes()).value_or(Money(0, m_currency));
        addCost(CostKey::Overhead, QStringLiteral("Bench overhead"), {overheadPlanned, overhead});
        add(CostKey::Spent, QStringLiteral("Spent on the unit"), {m_spent.planned, m_spent.toDate}, true);
    }

    /// Whether it is sold, what for, and which comparables there are.
    void lookAtSale()
    {
        m_sheet.soldComparables = m_resaleNow.count;
        for (const QString &each : m_resaleNow.leftOut)
            if (each.contains(QStringLiteral("currency")))
                m_sheet.remarks << QStringLiteral("%1 left out of the middle resale.").arg(each);

        for (const Spend &spend : m_file.all<Spend>()) {
            if (spend.removed || spend.kind != SpendKind::Sale || spend.flow != Flow::In)
                continue;
            const Maybe amount = inCurrency(spend, m_currency);
            if (!amount)
                continue;
            m_soldFor = plus(m_soldFor, amount);
            m_soldChannel = spend.channel.isNull() ? m_soldChannel : spend.channel;
            if (spend.paidOn.isValid())
                m_day = spend.paidOn;
        }
        m_resale.planned = m_plan ? ours(m_plan->resaleLikely) : std::nullopt;
        if (m_soldFor) {
            m_resale.toDate = m_soldFor;
            m_sheet.resaleFrom = QStringLiteral("sold");
        } else if (m_resaleNow.middle) {
            m_resale.toDate = m_resaleNow.middle;
            m_sheet.resaleFrom = m_resaleNow.from;
        } else if (m_resale.planned) {
            m_resale.toDate = m_resale.planned;
            m_sheet.resaleFrom = QStringLiteral("plan");
        }
    }

    [[nodiscard]] Maybe feesAt(const Maybe &price)
    {
        if (!price || m_sheet.channel.isEmpty())
            return std::nullopt;
        const auto fees = feesOf(m_rules, {*price, Money(0, m_currency), Money(0, m_currency)});
        if (fees)
            return Money(fees->total.minor(), m_currency);
        remark(fees.trouble().sentence());
        return std::nullopt;
    }

    Column addSelling()
    {
        const Channel *channel = m_bench.find(m_soldChannel);
        channel = channel ? channel : channelFor(m_file, m_bench);
        if (channel) {
            m_sheet.channel = channel->name;
            m_rules = m_sheet.rules = rulesOn(m_bench, channel->id, m_day);
        }
        const Money feesPaid = paid({SpendKind::SellingFee});
        const Money carriagePaid = paid({SpendKind::CarriageOut, SpendKind::Packing});
        Column fee{feesAt(m_resale.planned), feesPaid};
        if (!m_soldFor)
            fee.toDate = plus(feesAt(m_resale.toDate), feesPaid.isZero() ? std::nullopt : Maybe(feesPaid));
        const Maybe carriagePlanned = m_plan ? plus(ours(m_plan->carriageOut), ours(m_plan->packing)) : std::nullopt;
        Column carriage{carriagePlanned, carriagePaid};
        if (!m_soldFor && carriagePlanned && carriagePaid < *carriagePlanned)
            carriage.toDate = carriagePlanned;

        const QString feeWords = feeText(m_rules);
        add(CostKey::SellingFee, feeWords.isEmpty() ? QStringLiteral("Selling fee") : QStringLiteral("Selling fee ") + feeWords,
            fee);
        add(CostKey::CarriageOut, QStringLiteral("Carriage and packing out"), carriage);
        const Column everything{m_plan ? plus(plus(m_spent.planned, fee.planned), carriage.planned) : std::nullopt,
                                plus(plus(m_spent.toDate, fee.toDate), carriage.toDate)};
        add(CostKey::EverythingButHours, QStringLiteral("Everything but your hours"), everything, true);
        add(CostKey::Resale, m_soldFor ? QStringLiteral("Sold for") : QStringLiteral("Resale, middle estimate"), m_resale);

        // What must be covered before any fee that depends on the price.
        m_toCover.planned = m_plan ? plus(m_spent.planned, carriage.planned) : std::nullopt;
        m_toCover.toDate = plus(m_spent.toDate, carriage.toDate);
        m_sheet.feeBesideRules = m_soldFor && !m_rules.isEmpty() ? Money(0, m_currency) : feesPaid;
        m_toCover.toDate = plus(m_toCover.toDate, m_sheet.feeBesideRules);
        return everything;
    }

    void addYours(const Column &everything)
    {
        const auto less = [](const Maybe &a, const Maybe &b) { return a && b ? Maybe(*a - *b) : std::nullopt; };
        const Column profit{less(m_resale.planned, everything.planned), less(m_resale.toDate, everything.toDate)};
        add(CostKey::ProfitBeforeHours, QStringLiteral("Profit before your hours"), profit, true);

        const Maybe rate = m_bench.hourlyRate();
        const int minutes = m_sheet.hours.minutes();
        add(CostKey::YourHours, rate ? QStringLiteral("Your hours at %1").arg(rate->display()) : QStringLiteral("Your hours"),
            {m_plan ? perHour(rate, m_plan->minutes) : std::nullopt, perHour(rate, minutes)});
        const auto each = [](const Maybe &money, int time) {
            return money && time > 0 ? Maybe(money->scaled(60, time, Rounding::HalfUp)) : std::nullopt;
        };
        add(CostKey::EarnedPerHour, QStringLiteral("Earned per hour"),
            {each(profit.planned, m_sheet.minutesPlanned.value_or(0)), each(profit.toDate, minutes)}, true);
        add(CostKey::BreakEven, QStringLiteral("Break-even price"),
            {lowestPrice(m_toCover.planned), lowestPrice(m_toCover.toDate)}, true);
    }

    [[nodiscard]] Maybe lowestPrice(const Maybe &costs)
    {
        if (!costs)
            return std::nullopt;
        const auto price = breakEven(*costs, m_rules);
        if (price)
            return Money(price->minor(), m_currency);
        remark(price.trouble().sentence());
        return std::nullopt;
    }

    [[nodiscard]] Maybe moneySetting(const QString &name)
    {
        const QString text = m_bench.setting(name);
        if (text.isEmpty())
            return std::nullopt;
        const auto money = Money::parse(text, m_currency);
        if (money && money->currency() == m_currency)
            return *money;
        remark(QStringLiteral("The setting %1 is no sum in %2 and is left out.").arg(name, m_currency.code()));
        return std::nullopt;
    }

    void remark(const QString &sentence)
    {
        if (!m_sheet.remarks.contains(sentence))
            m_sheet.remarks << sentence;
    }

    void remarkOnMissing()
    {
        if (m_sheet.channel.isEmpty() && m_resale.toDate && !m_soldFor)
            remark(QStringLiteral("No channel is set, so no selling fee is counted."));
        for (const Unconverted &each : m_sheet.spent.without)
            remark(QStringLiteral("%1 (%2) has no amount in %3 and is in no total.")
                       .arg(each.text, each.amount.display(), m_currency.code()));
        if (m_sheet.spent.unpriced > 0)
            remark(m_sheet.spent.unpriced == 1 ? QStringLiteral("1 part has no price.")
                                               : QStringLiteral("%1 parts have no price.").arg(m_sheet.spent.unpriced));
        if (m_file.unit.outcome == Outcome::Sold && !m_soldFor)
            remark(QStringLiteral("It is closed as sold, but no sale is recorded."));
    }

    const UnitFile &m_file;
    const BenchFile &m_bench;
    Currency m_currency;
    QDate m_day;
    const Resale &m_resaleNow;
    const Plan *m_plan = nullptr;
    CostSheet m_sheet;
    Column m_spent;
    Column m_resale;
    Column m_toCover;
    Maybe m_soldFor;
    Id<Channel> m_soldChannel;
    QList<FeeRule> m_rules;
};

} // namespace

const CostLine *CostSheet::line(CostKey key) const
{
    for (const CostLine &each : lines)
        if (each.key == key)
            return &each;
    return nullptr;
}

std::optional<Money> CostSheet::planned(CostKey key) const
{
    const CostLine *found = line(key);
    return found ? found->planned : std::nullopt;
}

std::optional<Money> CostSheet::toDate(CostKey key) const
{
    const CostLine *found = line(key);
    return found ? found->toDate : std::nullopt;
}

CostSheet costSheet(const UnitFile &file, const BenchFile &bench, const QDateTime &now)
{
    return costSheet(file, bench, now, resaleOf(file, bench, {}, ResaleTerms::of(file, bench, now.toUTC().date())));
}

CostSheet costSheet(const UnitFile &file, const BenchFile &bench, const QDateTime &now, const Resale &resale)
{
    return Sheet(file, bench, now, resale).made();
}

} // namespace ts
