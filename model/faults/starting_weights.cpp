#include "model/faults/starting_weights.h"

#include "model/faults/fault_board.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ts {

namespace {

std::optional<double> typed(const Cause &cause)
{
    const bool sound = cause.weight && std::isfinite(*cause.weight) && *cause.weight >= 0;
    return sound ? cause.weight : std::nullopt;
}

} // namespace

QString somethingElse()
{
    return QStringLiteral("something else");
}

bool isSomethingElse(QStringView text)
{
    return text.trimmed().compare(somethingElse(), Qt::CaseInsensitive) == 0;
}

QList<double> startingWeights(const QList<Cause> &causes)
{
    double given = 0;
    qsizetype open = 0; // without a weight of their own, "something else" among them
    bool elseIsThere = false;
    for (const Cause &cause : causes) {
        const auto weight = typed(cause);
        given += weight.value_or(0);
        open += weight ? 0 : 1;
        elseIsThere = elseIsThere || isSomethingElse(cause.text);
    }
    open += elseIsThere ? 0 : 1;
    const double share = open > 0 ? std::max(0.0, 1 - given) / static_cast<double>(open) : 0;
    const auto weightOf = [share](bool isElse) { return std::max(share, isElse ? elseFloor : elseFloor / 2); };
    QList<double> weights;
    for (const Cause &cause : causes)
        weights << typed(cause).value_or(weightOf(isSomethingElse(cause.text)));
    if (!elseIsThere)
        weights << weightOf(true);
    const double sum = std::accumulate(weights.cbegin(), weights.cend(), 0.0);
    for (double &weight : weights)
        weight = sum > 0 ? weight / sum : 1 / static_cast<double>(weights.size());
    return weights;
}

} // namespace ts
