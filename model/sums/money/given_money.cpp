#include "model/sums/money/given_money.h"

#include "model/values/quoted.h"

#include <QRegularExpression>

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

} // namespace

MoneyGiven::MoneyGiven(const QString &sum, const SumInput &input) : Given(sum, input)
{
    const QString named = text(u"currency");
    m_named = !named.isEmpty();
    const auto currency = Currency::parse(m_named ? named : QStringLiteral("GBP"));
    if (currency)
        m_currency = *currency;
    else
        refuse(currency.trouble());
}

Expected<std::optional<Money>> MoneyGiven::moneyIn(const QString &text)
{
    if (text.trimmed().isEmpty())
        return std::optional<Money>();
    const auto money = Money::parse(text.trimmed(), m_currency);
    if (!money)
        return money.trouble();
    if (!(money->currency() == m_currency)) {
        if (m_named || m_read)
            return Trouble{QStringLiteral("%1 is not in %2").arg(quoted(text), m_currency.code()),
                           {},
                           QStringLiteral("give everything in one currency")};
        m_currency = money->currency();
    }
    m_read = true;
    m_named = m_named || text.contains(QRegularExpression(QStringLiteral("[^0-9.,\\s'+\\-\u2212]")));
    return std::optional(*money);
}

std::optional<Money> MoneyGiven::maybeSum(QStringView key)
{
    const auto money = moneyIn(text(key));
    if (money)
        return *money;
    refuse(money.trouble());
    return std::nullopt;
}

Money MoneyGiven::sum(QStringView key)
{
    return maybeSum(key).value_or(Money(0, m_currency));
}

Money MoneyGiven::notNegative(QStringView key)
{
    const Money money = sum(key);
    if (money.minor() < 0)
        refuse(QStringLiteral("%1 %2 is below zero").arg(key.toString(), money.decimal()), QStringLiteral("give 0 or more"));
    return money;
}

QList<Money> MoneyGiven::sums(QStringView key)
{
    QList<Money> list;
    for (const QString &each : text(key).split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto money = moneyIn(each);
        if (!money)
            refuse(money.trouble());
        else if (*money)
            list << **money;
    }
    return list;
}

Rate MoneyGiven::percent(QStringView key)
{
    if (!has(key))
        return {};
    const auto rate = Rate::parse(text(key));
    if (!rate)
        refuse(rate.trouble());
    else if (rate->millionths() < 0)
        refuse(QStringLiteral("%1 %2 is below zero").arg(key.toString(), text(key)), QStringLiteral("give 0 or more"));
    return rate ? *rate : Rate();
}

double MoneyGiven::hours(QStringView key)
{
    if (!has(key))
        return 0;
    static const QRegularExpression shape(
        QStringLiteral("^(?:([0-9]+(?:[.,][0-9]+)?)\\s*(?:h|hours?)?)?\\s*(?:([0-9]+(?:[.,][0-9]+)?)\\s*(?:m|min|minutes?))?$"));
    const auto match = shape.match(text(key));
    const auto figure = [&](int group) { return match.captured(group).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(); };
    if (match.hasMatch())
        return figure(1) + figure(2) / 60;
    refuse(QStringLiteral("%1 cannot be %2").arg(key.toString(), quoted(text(key))),
           QStringLiteral("give hours, such as 2.5 or 2 h 30 m"));
    return 1;
}

double MoneyGiven::chance(QStringView key)
{
    const bool percent = text(key).endsWith(QLatin1Char('%'));
    const double value = number(key) / (percent ? 100 : 1);
    if (value >= 0 && value <= 1)
        return value;
    refuse(QStringLiteral("%1 cannot be %2").arg(key.toString(), quoted(text(key))),
           QStringLiteral("give 0 to 1, or a percentage"));
    return 1;
}

Expected<FeeRule> MoneyGiven::rule(const QString &text)
{
    const QStringList parts = text.split(QLatin1Char(':'));
    if (parts.size() > 4)
        return Trouble{QStringLiteral("\"%1\" is no fee rule").arg(text), QStringLiteral("it has too many parts"),
                       QStringLiteral("write rate:base:fixed:cap")};
    const auto rate = Rate::parse(parts.first().trimmed());
    if (!rate)
        return rate.trouble();
    const auto base = baseOf(parts.value(1));
    if (!base)
        return base.trouble();
    const auto fixed = moneyIn(parts.value(2));
    if (!fixed)
        return fixed.trouble();
    const auto cap = moneyIn(parts.value(3));
    if (!cap)
        return cap.trouble();
    FeeRule made;
    made.name = text;
    made.rate = rate->millionths();
    made.base = *base;
    made.fixed = *fixed;
    made.cap = *cap;
    return made;
}

QList<FeeRule> MoneyGiven::rules(QStringView key)
{
    QList<FeeRule> list;
    for (const QString &each : text(key).split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto made = rule(each.trimmed());
        if (made)
            list << *made;
        else
            refuse(made.trouble());
    }
    return list;
}

void MoneyGiven::addCurrency(SumOutput &out) const
{
    if (m_named)
        out.append({QStringLiteral("currency"), m_currency.code()});
}

SumKey MoneyGiven::currencyKey()
{
    return {QStringLiteral("currency"), QStringLiteral("three-letter code"), false};
}

SumKey MoneyGiven::currencyGiven()
{
    return {QStringLiteral("currency"), QStringLiteral("three-letter code, where one was named"), false};
}

SumKey MoneyGiven::rulesKey()
{
    return {
        QStringLiteral("rules"),
        QStringLiteral("rate:base:fixed:cap, comma-separated; rate in percent, base item, item+carriage or item+carriage+tax"),
        false};
}

} // namespace ts
