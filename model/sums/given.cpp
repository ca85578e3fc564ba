#include "model/sums/given.h"

#include "model/values/quantity.h"
#include "model/values/quoted.h"

#include <QRegularExpression>

#include <cmath>

namespace ts {

Given::Given(QString sum, const SumInput &input) : m_sum(std::move(sum)), m_input(input) {}

bool Given::has(QStringView key) const
{
    return !text(key).isEmpty();
}

QString Given::text(QStringView key) const
{
    return m_input.value(key.toString()).trimmed();
}

double Given::amount(QStringView key, QStringView unit)
{
    const auto measure = unit.isEmpty() ? Expected<Measure>(Measure()) : Measure::parse(unit);
    const auto todo = [&] {
        return unit.isEmpty() ? QStringLiteral("give a number") : QStringLiteral("give it in %1").arg(unit);
    };
    const QString typed = text(key);
    if (!measure || typed.isEmpty()) {
        refuseKey(key, QStringLiteral("is missing"), todo());
        return 1;
    }
    const auto quantity = Quantity::parse(typed, *measure);
    if (!quantity) {
        refuseKey(key, QStringLiteral("is not understood: ") + quantity.trouble().sentence().chopped(1), todo());
        return 1;
    }
    const QString symbol = quantity->measure().symbol();
    const bool same = symbol == measure->symbol() || symbol.isEmpty() ||
                      (measure->symbol() == QLatin1String("V") && symbol == QLatin1String("Vrms"));
    if (!same || (quantity->sense() != Sense::Plain && quantity->sense() != Sense::About)) {
        refuseKey(key, QStringLiteral("cannot be %1").arg(quoted(typed)), todo());
        return 1;
    }
    return quantity->base();
}

double Given::positive(QStringView key, QStringView unit)
{
    const double value = amount(key, unit);
    if (value > 0)
        return value;
    refuseKey(key, QStringLiteral("cannot be %1").arg(quoted(text(key))), QStringLiteral("give more than 0"));
    return 1;
}

double Given::notNegative(QStringView key, QStringView unit)
{
    const double value = amount(key, unit);
    if (value >= 0)
        return value;
    refuseKey(key, QStringLiteral("cannot be %1").arg(quoted(text(key))), QStringLiteral("give 0 or more"));
    return 1;
}

std::optional<double> Given::maybe(QStringView key, QStringView unit)
{
    return has(key) ? std::optional(positive(key, unit)) : std::nullopt;
}

double Given::number(QStringView key)
{
    QString typed = text(key);
    if (typed.endsWith(QLatin1Char('%')))
        typed = typed.chopped(1).trimmed();
    static const QRegularExpression fraction(QStringLiteral("^([0-9]+)\\s+([0-9]+)/([1-9][0-9]*)$"));
    if (const auto match = fraction.match(typed); match.hasMatch())
        return match.captured(1).toDouble() + match.captured(2).toDouble() / match.captured(3).toDouble();
    const auto value = parseNumber(typed);
    if (value)
        return *value;
    refuseKey(key, QStringLiteral("cannot be %1").arg(quoted(typed)), QStringLiteral("give a number"));
    return 1;
}

qsizetype Given::whole(QStringView key, qsizetype least, qsizetype most)
{
    const double value = number(key);
    if (value == std::floor(value) && value >= static_cast<double>(least) && value <= static_cast<double>(most))
        return static_cast<qsizetype>(value);
    refuseKey(key, QStringLiteral("cannot be %1").arg(quoted(text(key))),
              QStringLiteral("give a whole number from %1 to %2").arg(least).arg(most));
    return least;
}

qsizetype Given::choice(QStringView key, const QStringList &choices)
{
    const QString typed = text(key);
    for (qsizetype i = 0; i < choices.size(); ++i)
        if (choices.at(i).compare(typed, Qt::CaseInsensitive) == 0)
            return i;
    refuseKey(key, QStringLiteral("cannot be %1").arg(quoted(typed)),
              QStringLiteral("choose one of ") + choices.join(QStringLiteral(", ")));
    return 0;
}

SumOutput Given::refuse(const QString &wrong, const QString &todo)
{
    return refuse(Trouble{QStringLiteral("Cannot reckon ") + m_sum, wrong, todo});
}

SumOutput Given::refuse(const Trouble &trouble)
{
    if (!m_wrong)
        m_wrong = trouble;
    return {};
}

void Given::refuseKey(QStringView key, const QString &why, const QString &todo)
{
    refuse(key.toString() + QLatin1Char(' ') + why, todo);
}

std::function<Expected<SumOutput>(const SumInput &)> worked(const QString &sum, std::function<SumOutput(Given &)> work)
{
    return [sum, work = std::move(work)](const SumInput &input) -> Expected<SumOutput> {
        Given given(sum, input);
        const SumOutput out = work(given);
        if (given.wrong())
            return *given.wrong();
        return out;
    };
}

QJsonValue orNull(const std::optional<double> &number)
{
    return number ? QJsonValue(*number) : QJsonValue(QJsonValue::Null);
}

} // namespace ts
