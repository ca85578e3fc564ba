#include "model/sums/metering/repeats.h"

namespace ts {

Expected<QList<Quantity>> repeatedReadings(const QString &text, const Measure &expected)
{
    const QStringList parts = text.split(QLatin1Char(';'));
    const auto last = Quantity::parse(parts.last(), expected);
    if (!last)
        return last.trouble();
    const Measure unit = last->measure().isNone() ? expected : last->measure();
    QList<Quantity> repeats;
    for (const QString &part : parts) {
        const auto value = Quantity::parse(part, unit);
        if (!value)
            return value.trouble();
        const auto same = repeats.isEmpty() ? *value : value->in(repeats.first().measure());
        if (!same)
            return same.trouble();
        repeats << *same;
    }
    return repeats;
}

QString repeatsText(const QList<Quantity> &repeats)
{
    QStringList figures;
    for (const Quantity &each : repeats)
        figures << numberText(each.value());
    return figures.join(QStringLiteral("; "));
}

} // namespace ts
