#include "model/sums/three_point.h"

#include "model/sums/beta.h"
#include "model/values/number.h"

#include <cmath>

namespace ts {

Expected<ThreePoint> ThreePoint::of(double low, double likely, double high)
{
    const QString did = QStringLiteral("The three points make no estimate");
    if (!std::isfinite(low) || !std::isfinite(likely) || !std::isfinite(high))
        return Trouble{did, QStringLiteral("one of them is no number"), {}};
    if (low > likely || likely > high)
        return Trouble{did,
                       QStringLiteral("%1, %2 and %3 do not rise").arg(numberText(low), numberText(likely), numberText(high)),
                       QStringLiteral("give low, likely and high in this order")};
    return ThreePoint{low, likely, high};
}

double ThreePoint::mean() const
{
    return isSure() ? likely : (low + 4 * likely + high) / 6;
}

double ThreePoint::deviation() const
{
    // αβ/((α+β)²(α+β+1)) with α + β = 6, stretched over the span, is this product.
    return isSure() ? 0 : std::sqrt((mean() - low) * (high - mean()) / 7);
}

std::optional<double> ThreePoint::alpha() const
{
    return isSure() ? std::optional<double>() : 1 + 4 * (likely - low) / (high - low);
}

std::optional<double> ThreePoint::beta() const
{
    return isSure() ? std::optional<double>() : 1 + 4 * (high - likely) / (high - low);
}

double ThreePoint::quantile(double p) const
{
    return isSure() ? likely : low + (high - low) * betaQuantile(*alpha(), *beta(), p);
}

} // namespace ts
