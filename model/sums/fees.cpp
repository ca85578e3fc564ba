#include "model/sums/fees.h"

#include "model/records/settings.h"

#include <algorithm>

namespace ts {

namespace {

constexpr qint64 million = 1'000'000;
/// Where a search for a price is given up: the most that Money reads, in minor units.
constexpr qint64 farthest = 9'000'000'000'000'000;
// Below this a rate of a sum is worked out in 64 bits, which is what makes fees of 100,000 draws cheap.
constexpr qint64 small = qint64(1) << 40;

qint64 minorOf(const std::optional<Money> &money)
{
    return money ? money->minor() : 0;
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

qint64 FeeSchedule::shareOf(qint64 rate, qint64 part)
{
    if (rate >= 0 && rate <= 4 * million && part >= 0 && part < small)
        return (rate * part + million / 2) / million;
    return Money(part, Currency()).scaled(rate, million, Rounding::HalfUp).minor();
}

Expected<FeeSchedule> FeeSchedule::of(const QList<FeeRule> &rules, const QList<Money> &sums, Promotion promotion)
{
    const auto currency = oneCurrency(rules, sums);
    if (!currency)
        return currency.trouble();
    FeeSchedule made;
    made.m_currency = *currency;
    for (const FeeRule &rule : rules) {
        Line line;
        line.base = rule.base;
        line.rate = rule.rate;
        line.from = std::max<qint64>(0, minorOf(rule.tierFrom));
        line.upTo = rule.tierTo ? rule.tierTo->minor() : farthest;
        line.fixed = minorOf(rule.fixed);
        line.least = rule.minimum ? rule.minimum->minor() : -farthest;
        line.most = rule.cap ? rule.cap->minor() : farthest;
        line.due = promotion == Promotion::Counted || rule.kind != FeeKind::Promotion;
        line.givenBack = rule.givenBack;
        made.m_lines << line;
    }
    return made;
}

qint64 FeeSchedule::Line::at(qint64 price, qint64 carriage, qint64 tax) const
{
    const qint64 whole = baseOf(price, carriage, tax);
    return !due || (from > 0 && whole <= from) ? 0 : bounded(whole);
}

qint64 FeeSchedule::Line::baseOf(qint64 price, qint64 carriage, qint64 tax) const
{
    return price + (base == FeeBase::Item ? 0 : carriage) + (base == FeeBase::ItemCarriageAndTax ? tax : 0);
}

qint64 FeeSchedule::Line::bounded(qint64 whole) const
{
    const qint64 part = std::max<qint64>(0, std::min(whole, upTo) - from);
    return std::min(std::max(shareOf(rate, part) + fixed, least), most);
}

qint64 FeeSchedule::total(qint64 price, qint64 carriage, qint64 tax) const
{
    qint64 sum = 0;
    for (const Line &line : m_lines)
        sum += line.at(price, carriage, tax);
    return sum;
}

qint64 FeeSchedule::keptOnReturn(qint64 price, qint64 carriage, qint64 tax) const
{
    qint64 sum = 0;
    for (const Line &line : m_lines)
        sum += line.givenBack ? 0 : line.at(price, carriage, tax);
    return sum;
}

Expected<Fees> feesOf(const QList<FeeRule> &rules, const Takings &takings)
{
    const auto schedule = FeeSchedule::of(rules, {takings.item, takings.carriage, takings.tax}, takings.promotion);
    if (!schedule)
        return schedule.trouble();
    Fees fees{{}, Money(0, schedule->currency())};
    for (qsizetype i = 0; i < rules.size(); ++i) {
        const FeeSchedule::Line &line = schedule->lines().at(i);
        if (!line.due)
            continue;
        const Money amount(line.at(takings.item.minor(), takings.carriage.minor(), takings.tax.minor()), schedule->currency());
        fees.lines.append({rules.at(i).name, amount});
        fees.total += amount;
    }
    return fees;
}

} // namespace ts
