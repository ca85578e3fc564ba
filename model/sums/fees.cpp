#include "model/sums/fees.h"

#include "model/records/settings.h"

#include <algorithm>

namespace ts {

namespace {

constexpr qint64 million = 1'000'000;
/// Where a search for a price is given up: the most that Money reads, in minor units.
constexpr qint64 farthest = 9'000'000'000'000'000;
constexpr int mostSteps = 2'000'000;

qint64 minorOf(const std::optional<Money> &money)
{
    return money ? money->minor() : 0;
}

/// rate × part in whole minor units, half up.
qint64 shareOf(qint64 rate, qint64 part, const Currency &currency)
{
    return Money(part, currency).scaled(rate, million, Rounding::HalfUp).minor();
}

qint64 feeOf(const FeeRule &rule, qint64 item, qint64 carriage, qint64 tax, const Currency &currency)
{
    qint64 base = item;
    if (rule.base != FeeBase::Item)
        base += carriage;
    if (rule.base == FeeBase::ItemCarriageAndTax)
        base += tax;
    const qint64 from = minorOf(rule.tierFrom);
    if (from > 0 && base <= from)
        return 0;
    const qint64 upTo = rule.tierTo ? std::min(base, rule.tierTo->minor()) : base;
    qint64 fee = shareOf(rule.rate, std::max<qint64>(0, upTo - from), currency) + minorOf(rule.fixed);
    if (rule.minimum)
        fee = std::max(fee, rule.minimum->minor());
    if (rule.cap)
        fee = std::min(fee, rule.cap->minor());
    return fee;
}

/// The currency that all the sums agree on, or the trouble of the first that does not.
Expected<Currency> oneCurrency(const QList<FeeRule> &rules, const QList<Money> &sums)
{
    Currency currency;
    for (const Money &money : sums) {
        if (currency.isNull())
            currency = money.currency();
        else if (!money.currency().isNull() && !(money.currency() == currency))
            return Trouble{QStringLiteral("Cannot work out the fees"),
                           QStringLiteral("%1 and %2 do not add").arg(currency.code(), money.currency().code()),
                           QStringLiteral("give everything in one currency")};
    }
    for (const FeeRule &rule : rules)
        for (const auto &money : {rule.tierFrom, rule.tierTo, rule.fixed, rule.minimum, rule.cap}) {
            if (!money || money->currency().isNull())
                continue;
            if (currency.isNull())
                currency = money->currency();
            if (!(money->currency() == currency))
                return Trouble{QStringLiteral("Cannot work out the fees"),
                               QStringLiteral("rule \"%1\" is in %2, the sale in %3")
                                   .arg(rule.name, money->currency().code(), currency.code()),
                               QStringLiteral("give the rule in the currency of the sale")};
        }
    return currency;
}

} // namespace

QList<FeeRule> rulesOn(const BenchFile &bench, const Id<Channel> &channel, const QDate &day)
{
    QList<FeeRule> rules;
    for (const FeeRule &rule : bench.all<FeeRule>())
        if (rule.channel == channel && !rule.removed && (!rule.validFrom.isValid() || rule.validFrom <= day) &&
            (!rule.validTo.isValid() || day <= rule.validTo))
            rules.append(rule);
    return rules;
}

const Channel *channelFor(const UnitFile &file, const BenchFile &bench)
{
    for (const Plan &plan : file.all<Plan>())
        if (!plan.removed && !plan.channel.isNull())
            if (const Channel *channel = bench.find(plan.channel))
                return channel;
    const QString name = bench.setting(settings::channel).trimmed();
    for (const Channel &channel : bench.all<Channel>())
        if (!channel.removed && !name.isEmpty() && channel.name.compare(name, Qt::CaseInsensitive) == 0)
            return &channel;
    return nullptr;
}

QString feeText(const QList<FeeRule> &rules)
{
    QStringList texts;
    for (const FeeRule &rule : rules) {
        QStringList parts;
        if (rule.rate != 0)
            parts << Rate(rule.rate).percent() + QStringLiteral(" %");
        if (rule.fixed && !rule.fixed->isZero())
            parts << rule.fixed->decimal();
        QString text = parts.join(QStringLiteral(" + "));
        if (rule.tierFrom && !rule.tierFrom->isZero())
            text += QStringLiteral(" above ") + rule.tierFrom->decimal();
        if (rule.tierTo)
            text += QStringLiteral(" up to ") + rule.tierTo->decimal();
        if (rule.minimum)
            text += QStringLiteral(", at least ") + rule.minimum->decimal();
        if (rule.cap)
            text += QStringLiteral(", at most ") + rule.cap->decimal();
        if (!text.isEmpty())
            texts << text;
    }
    return texts.join(QStringLiteral("; "));
}

Expected<Fees> feesOf(const QList<FeeRule> &rules, const Takings &takings)
{
    const auto currency = oneCurrency(rules, {takings.item, takings.carriage, takings.tax});
    if (!currency)
        return currency.trouble();
    Fees fees{{}, Money(0, *currency)};
    for (const FeeRule &rule : rules) {
        const Money amount(feeOf(rule, takings.item.minor(), takings.carriage.minor(), takings.tax.minor(), *currency),
                           *currency);
        fees.lines.append({rule.name, amount});
        fees.total += amount;
    }
    return fees;
}

Expected<Money> breakEven(const Money &costs, const QList<FeeRule> &rules, const Money &carriageCharged, const Rate &taxOnTop)
{
    const QString did = QStringLiteral("There is no break-even price");
    const auto currency = oneCurrency(rules, {costs, carriageCharged});
    if (!currency)
        return currency.trouble();

    // Rules that take more as the price rises are kept apart from those that give more back, so that both sums are
    // monotone in the price: that is what makes the search below exact, whatever tiers, caps and roundings there are.
    QList<FeeRule> rising;
    QList<FeeRule> falling;
    for (const FeeRule &rule : rules) {
        const bool tiered = minorOf(rule.tierFrom) > 0;
        const qint64 entry = std::min(std::max(minorOf(rule.fixed), rule.minimum ? rule.minimum->minor() : minorOf(rule.fixed)),
                                      rule.cap ? rule.cap->minor() : farthest);
        if (tiered && (rule.rate < 0 ? entry > 0 : entry < 0))
            return Trouble{did, QStringLiteral("entering the tier of rule \"%1\" goes against its rate").arg(rule.name),
                           QStringLiteral("split it into two rules")};
        (rule.rate < 0 ? falling : rising).append(rule);
    }
    const qint64 carriage = carriageCharged.minor();
    const auto sumOf = [&](const QList<FeeRule> &some, qint64 price) {
        const qint64 tax = shareOf(taxOnTop.millionths(), price + carriage, *currency);
        qint64 sum = 0;
        for (const FeeRule &rule : some)
            sum += feeOf(rule, price, carriage, tax, *currency);
        return sum;
    };
    const auto taken = [&](qint64 price) { return price + carriage - sumOf(falling, price); };
    const auto owed = [&](qint64 price) { return costs.minor() + sumOf(rising, price); };
    if (taken(0) >= owed(0))
        return Money(0, *currency);

    // The share of each further minor unit that fees take however high the price, in millionths. Where that is all of it,
    // only a price low enough to be under a minimum or below a tier can cover; it is found soon or not at all.
    qint64 open = 0;
    for (const FeeRule &rule : rules)
        if (!rule.tierTo && !(rule.rate > 0 && rule.cap) && !(rule.rate < 0 && rule.minimum))
            open += rule.base == FeeBase::ItemCarriageAndTax ? shareOf(rule.rate, million + taxOnTop.millionths(), *currency)
                                                             : rule.rate;
    // Climb: what is owed at a price that is too low can only be met at the least price that takes as much, and no price
    // below that one covers. Both sides are monotone, so the first standstill is the least price of all (Kleene).
    const int steps = open >= million ? mostSteps / 100 : mostSteps;
    qint64 price = 0;
    for (int step = 0; step < steps && price < farthest; ++step) {
        const qint64 needed = owed(price);
        if (taken(price) >= needed)
            return Money(price, *currency);
        qint64 below = price;
        qint64 enough = price + std::max<qint64>(1, needed - taken(price)); // taken rises by at least one for one
        while (!falling.isEmpty() && enough - below > 1) {
            const qint64 middle = below + (enough - below) / 2;
            (taken(middle) >= needed ? enough : below) = middle;
        }
        price = enough;
    }
    if (open >= million)
        return Trouble{did, QStringLiteral("fees take %1 % of every price").arg(Rate(open).percent()),
                       QStringLiteral("correct the rates")};
    return Trouble{did, QStringLiteral("no price up to %1 covers the costs").arg(Money(price, *currency).decimal()),
                   QStringLiteral("correct the costs or the rates")};
}

} // namespace ts
