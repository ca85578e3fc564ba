#include "model/records/columns.h"

namespace ts {

namespace {

using Sum = std::optional<Money>;
using Amount = std::optional<Quantity>;

QVariant textOrBlank(const QString &text)
{
    return text.isNull() ? QStringLiteral("") : text;
}

} // namespace

QVariant Columns<Sum>::putMinor(const void *place)
{
    const auto &money = *static_cast<const Sum *>(place);
    return money ? QVariant(static_cast<qlonglong>(money->minor())) : QVariant();
}

bool Columns<Sum>::getMinor(const QVariant &stored, void *place)
{
    auto &money = *static_cast<Sum *>(place);
    money.reset();
    if (!stored.isNull())
        money = Money(stored.toLongLong(), {});
    return true;
}

QVariant Columns<Sum>::putCurrency(const void *place)
{
    const auto &money = *static_cast<const Sum *>(place);
    return textOrBlank(money ? money->currency().code() : QString());
}

bool Columns<Sum>::getCurrency(const QVariant &stored, void *place)
{
    auto &money = *static_cast<Sum *>(place);
    const QString code = stored.toString();
    if (!money || code.isEmpty())
        return true;
    const auto currency = Currency::parse(code);
    if (currency)
        money = Money(money->minor(), *currency);
    return currency.ok();
}

QVariant Columns<Amount>::putValue(const void *place)
{
    const auto &quantity = *static_cast<const Amount *>(place);
    return quantity ? QVariant(quantity->value()) : QVariant();
}

bool Columns<Amount>::getValue(const QVariant &stored, void *place)
{
    auto &quantity = *static_cast<Amount *>(place);
    quantity.reset();
    if (!stored.isNull())
        quantity = Quantity(stored.toDouble(), {});
    return true;
}

QVariant Columns<Amount>::putUnit(const void *place)
{
    const auto &quantity = *static_cast<const Amount *>(place);
    return textOrBlank(quantity ? quantity->measure().text() : QString());
}

bool Columns<Amount>::getUnit(const QVariant &stored, void *place)
{
    auto &quantity = *static_cast<Amount *>(place);
    const QString unit = stored.toString();
    if (!quantity || unit.isEmpty())
        return true;
    const auto measure = Measure::parse(unit);
    if (measure)
        quantity = Quantity(quantity->value(), *measure);
    return measure.ok();
}

QVariant Columns<Amount>::putSense(const void *place)
{
    const auto &quantity = *static_cast<const Amount *>(place);
    return quantity ? QVariant(toWord(quantity->sense())) : QVariant();
}

bool Columns<Amount>::getSense(const QVariant &stored, void *place)
{
    auto &quantity = *static_cast<Amount *>(place);
    const auto sense = fromWord<Sense>(stored.toString());
    if (quantity && sense)
        quantity = Quantity(quantity->value(), quantity->measure(), *sense);
    return stored.isNull() || sense.has_value();
}

} // namespace ts
