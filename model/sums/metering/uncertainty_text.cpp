#include "model/sums/metering/uncertainty_text.h"

#include <algorithm>
#include <cmath>

namespace ts {

QString uncertaintyFigures(double uncertainty)
{
    if (!std::isfinite(uncertainty) || uncertainty <= 0)
        return {};
    const double step = std::pow(10.0, std::floor(std::log10(uncertainty)) - 1);
    // The small allowance keeps 0.3 from becoming 0.31 by its binary tail.
    const double rounded = std::ceil(uncertainty / step - 1e-9);
    const int decimals = std::max(0, static_cast<int>(-std::lround(std::log10(step))));
    QString figures = decimals <= 9 ? QString::number(rounded * step, 'f', decimals) : QString::number(rounded * step, 'g', 2);
    if (figures.contains(QLatin1Char('.')) && !figures.contains(QLatin1Char('e'))) {
        while (figures.endsWith(QLatin1Char('0')))
            figures.chop(1);
        if (figures.endsWith(QLatin1Char('.')))
            figures.chop(1);
    }
    return figures;
}

QString uncertaintyWithUnit(double uncertainty, const Measure &measure)
{
    const QString figures = uncertaintyFigures(uncertainty);
    return figures.isEmpty() || measure.isNone() ? figures : figures + QLatin1Char(' ') + measure.text();
}

} // namespace ts
