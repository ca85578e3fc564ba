#include "model/sums/spread.h"

#include "model/sums/statistics/kept_sum.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

Trouble noNumbers(const QString &what)
{
    return {QStringLiteral("Cannot work out the ") + what, QStringLiteral("there are no numbers"),
            QStringLiteral("give one or more")};
}

} // namespace

Expected<Spread> spreadOf(const QList<double> &values)
{
    if (values.isEmpty())
        return noNumbers(QStringLiteral("spread"));
    for (qsizetype i = 0; i < values.size(); ++i)
        if (!std::isfinite(values.at(i)))
            return Trouble{QStringLiteral("Cannot work out the spread"),
                           QStringLiteral("value %1 is no finite number").arg(i + 1),
                           QStringLiteral("leave it out or correct it")};

    const auto n = static_cast<double>(values.size());
    KeptSum sum;
    for (const double value : values)
        sum.add(value / n); // divided first: a row of huge numbers does not overflow
    // The mean is kept as a rounded figure and the small remainder, so that deviations lose nothing to its rounding.
    const double rounded = sum.value();
    KeptSum left;
    for (const double value : values)
        left.add(value - rounded);
    const double remainder = left.value() / n;
    const auto deviation = [&](qsizetype i) { return (values.at(i) - rounded) - remainder; };

    KeptSum squares;
    KeptSum neighbours;
    for (qsizetype i = 0; i < values.size(); ++i) {
        squares.add(deviation(i) * deviation(i));
        if (i > 0)
            neighbours.add(deviation(i - 1) * deviation(i));
    }
    Spread spread{values.size(), rounded + remainder, {}, {}};
    if (values.size() > 1)
        spread.sd = std::sqrt(squares.value() / (n - 1));
    if (squares.value() > 0)
        spread.lag1 = neighbours.value() / squares.value();
    return spread;
}

Expected<double> medianOf(QList<double> values)
{
    if (values.isEmpty())
        return noNumbers(QStringLiteral("median"));
    std::sort(values.begin(), values.end());
    const qsizetype half = values.size() / 2;
    return values.size() % 2 == 1 ? values.at(half) : values.at(half - 1) + (values.at(half) - values.at(half - 1)) / 2;
}

} // namespace ts
