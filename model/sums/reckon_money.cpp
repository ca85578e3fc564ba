#include "model/sums/reckon_money.h"

#include "model/sums/fees.h"

namespace ts {

namespace {

Expected<FeeBase> baseOf(const QString &text)
{
    QString word = text.trimmed().toLower();
    word.replace(QLatin1Char(' '), QLatin1Char('+'));
    if (word.isEmpty() || word == QLatin1String("item"))
        return FeeBase::Item;
    if (word == QLatin1String("item+carriage"))
        return FeeBase::ItemAndCarriage;
    if (word == QLatin1String("item+carriage+tax"))
        return FeeBase::ItemCarriageAndTax;
    if (const auto named = fromWord<FeeBase>(word))
        return *named;
    return Trouble{QStringLiteral("\"%1\" is no base of a fee").arg(text),
                   {},
                   QStringLiteral("choose item, item+carriage or item+carriage+tax")};
}

Expected<std::optional<Money>> moneyIn(const QStringList &parts, qsizetype place, const Currency &currency)
{
    const QString text = parts.value(place).trimmed();
    if (text.isEmpty())
        return std::optional<Money>();
    const auto money = Money::parse(text, currency);
    if (!money)
        return money.trouble();
    return std::optional<Money>(*money);
}

/// "13:item+carriage:0.35:50, 3:item": rate in percent, base, fixed part, cap; what is left out at the end is none.
Expected<QList<FeeRule>> rulesOf(const QString &text, const Currency &currency)
{
    QList<FeeRule> rules;
    for (const QString &each : text.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const QStringList parts = each.trimmed().split(QLatin1Char(':'));
        if (parts.size() > 4)
            return Trouble{QStringLiteral("\"%1\" is no fee rule").arg(each.trimmed()), QStringLiteral("it has too many parts"),
                           QStringLiteral("write rate:base:fixed:cap")};
        const auto rate = Rate::parse(parts.first().trimmed());
        if (!rate)
            return rate.trouble();
        const auto base = baseOf(parts.value(1));
        if (!base)
            return base.trouble();
        const auto fixed = moneyIn(parts, 2, currency);
        if (!fixed)
            return fixed.trouble();
        const auto cap = moneyIn(parts, 3, currency);
        if (!cap)
            return cap.trouble();
        FeeRule rule;
        rule.name = each.trimmed();
        rule.rate = rate->millionths();
        rule.base = *base;
        rule.fixed = *fixed;
        rule.cap = *cap;
        rules << rule;
    }
    return rules;
}

Expected<SumOutput> breakEvenOf(const SumInput &given)
{
    const QString named = given.value(QStringLiteral("currency")).trimmed();
    // Where no currency is named, two decimals are taken, as with the bench's own default.
    const auto fallback = Currency::parse(named.isEmpty() ? QStringLiteral("GBP") : named);
    if (!fallback)
        return fallback.trouble();
    const auto costs = Money::parse(given.value(QStringLiteral("costs")), *fallback);
    if (!costs)
        return costs.trouble();
    const Currency currency = costs->currency();
    if (costs->minor() < 0)
        return Trouble{QStringLiteral("Cannot reckon break-even"), QStringLiteral("costs %1 is below zero").arg(costs->decimal()),
                       QStringLiteral("give 0 or more")};
    const auto rules = rulesOf(given.value(QStringLiteral("rules")), currency);
    if (!rules)
        return rules.trouble();
    const auto carriage = moneyIn({given.value(QStringLiteral("carriage"))}, 0, currency);
    if (!carriage)
        return carriage.trouble();
    if (*carriage && (*carriage)->minor() < 0)
        return Trouble{QStringLiteral("Cannot reckon break-even"),
                       QStringLiteral("carriage %1 is below zero").arg((*carriage)->decimal()), QStringLiteral("give 0 or more")};
    const QString tax = given.value(QStringLiteral("tax")).trimmed();
    const auto taxRate = tax.isEmpty() ? Expected<Rate>(Rate()) : Rate::parse(tax);
    if (!taxRate)
        return taxRate.trouble();
    const auto price = breakEven(*costs, *rules, carriage->value_or(Money(0, currency)), *taxRate);
    if (!price)
        return price.trouble();
    SumOutput out{{QStringLiteral("price"), price->decimal()}};
    if (!named.isEmpty() || !(currency == *fallback))
        out.append({QStringLiteral("currency"), currency.code()});
    return out;
}

} // namespace

Sum breakEvenSum()
{
    return {
        QStringLiteral("break-even"),
        QStringLiteral("the least item price that covers the costs after the fees"),
        {{QStringLiteral("costs"), QStringLiteral("money, all of them, your own carriage and packing included")},
         {QStringLiteral("rules"),
          QStringLiteral("rate:base:fixed:cap, comma-separated; rate in percent, base item, item+carriage or item+carriage+tax"),
          false},
         {QStringLiteral("carriage"), QStringLiteral("money, what the buyer pays for it beside the price"), false},
         {QStringLiteral("tax"), QStringLiteral("percent charged on top and passed on"), false},
         {QStringLiteral("currency"), QStringLiteral("three-letter code"), false}},
        {{QStringLiteral("price"), QStringLiteral("money, item without carriage")},
         {QStringLiteral("currency"), QStringLiteral("three-letter code, where one was named"), false}},
        QStringLiteral("definition: least P with P + carriage − fees ≥ costs"),
        breakEvenOf};
}

} // namespace ts
