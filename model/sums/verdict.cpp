#include "model/sums/verdict.h"

#include "model/sums/metering/uncertainty_text.h"

#include "model/sums/normal.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

/// The value and its limits brought to one measure.
Expected<Judgement> together(const Quantity &value, const Limit &limit, std::optional<double> uncertainty95)
{
    Judgement held;
    held.value = value.value();
    held.measure = value.measure();
    held.uncertainty95 = uncertainty95;
    if (!limit.bounded())
        return held;

    const Measure &own = value.measure();
    const Measure &wanted = limit.measure();
    const auto scaled = [](std::optional<double> bound, double by) { return bound ? std::optional(*bound * by) : bound; };
    if (own.comparableWith(wanted)) {
        const auto same = limit.in(own);
        if (!same)
            return same.trouble();
        held.low = same->low();
        held.high = same->high();
    } else if (own.isNone()) {
        // A bare 96 is in the limit's unit; a bare 4k7 is 4700 of the limit's symbol.
        const double by = own.exponent() == 0 ? 1 : own.factor() / wanted.factor();
        held.value *= by;
        held.uncertainty95 = scaled(uncertainty95, by);
        held.measure = wanted;
        held.low = limit.low();
        held.high = limit.high();
    } else if (wanted.isNone()) {
        const double by = wanted.exponent() == 0 ? 1 : wanted.factor() / own.factor();
        held.low = scaled(limit.low(), by);
        held.high = scaled(limit.high(), by);
    } else {
        return Trouble{QStringLiteral("Cannot judge %1 against %2").arg(value.text(), limit.display()),
                       QStringLiteral("%1 and %2 are different measures").arg(own.text(), wanted.text()),
                       QStringLiteral("give the value and the limit in the same unit")};
    }
    return held;
}

/// Comparisons of figures that were typed in decimals: 0.1 + 0.2 is on a limit of 0.3, not over it.
class Closely {
public:
    explicit Closely(const Judgement &held)
        : m_slack(1e-12 * std::max({std::abs(held.value), std::abs(held.low.value_or(0)), std::abs(held.high.value_or(0)),
                                    held.uncertainty95.value_or(0)}))
    {
    }
    [[nodiscard]] bool atMost(double a, double b) const { return a <= b + m_slack; }
    [[nodiscard]] bool beyond(double a, double b) const { return a > b + m_slack; }

private:
    double m_slack;
};

Verdict verdictOfInterval(const Judgement &held, Sense sense)
{
    const Closely closely(held);
    const double half = held.uncertainty95.value_or(0);
    const double least = held.value - half;
    const double most = held.value + half;
    switch (sense) {
    case Sense::OverRange:
        return held.high ? Verdict::Outside : Verdict::Within;
    case Sense::Below: // anything under `most`
        if (!held.low && closely.atMost(most, *held.high))
            return Verdict::Within;
        return held.low && closely.atMost(most, *held.low) ? Verdict::Outside : Verdict::TooCloseToCall;
    case Sense::Above: // anything over `least`
        if (!held.high && closely.atMost(*held.low, least))
            return Verdict::Within;
        return held.high && closely.atMost(*held.high, least) ? Verdict::Outside : Verdict::TooCloseToCall;
    case Sense::Plain:
    case Sense::About:
        break;
    }
    const bool overLow = !held.low || closely.atMost(*held.low, least);
    const bool underHigh = !held.high || closely.atMost(most, *held.high);
    if (overLow && underHigh)
        return Verdict::Within;
    if ((held.low && closely.beyond(*held.low, most)) || (held.high && closely.beyond(least, *held.high)))
        return Verdict::Outside;
    return Verdict::TooCloseToCall;
}

/// Conformance probability (JCGM 106:2012, 7.2): the share of the normal law of the value that lies between the limits.
double chanceWithin(const Judgement &held)
{
    const double u = *held.uncertainty95 / coverage95;
    if (u <= 0)
        return verdictOfInterval(held, Sense::Plain) == Verdict::Within ? 1 : 0;
    if (!held.low)
        return normalCdf((*held.high - held.value) / u);
    if (!held.high)
        return normalCdf((held.value - *held.low) / u);
    const double low = (*held.low - held.value) / u;
    const double high = (*held.high - held.value) / u;
    // In the upper tail the two cumulated chances are both near 1: take the difference on the other side.
    return std::max(0.0, low > 0 ? normalCdf(-low) - normalCdf(-high) : normalCdf(high) - normalCdf(low));
}

} // namespace

Expected<Judgement> judge(const Quantity &value, const Limit &limit, std::optional<double> uncertainty95)
{
    if (uncertainty95 && (!std::isfinite(*uncertainty95) || *uncertainty95 < 0))
        return Trouble{QStringLiteral("Cannot judge %1").arg(value.text()),
                       QStringLiteral("its uncertainty %1 is no half width").arg(numberText(*uncertainty95)),
                       QStringLiteral("give 0 or more")};
    auto held = together(value, limit, uncertainty95);
    if (!held || !limit.bounded())
        return held;
    held->verdict = verdictOfInterval(*held, value.sense());
    if (held->uncertainty95 && (value.sense() == Sense::Plain || value.sense() == Sense::About))
        held->chanceWithin = chanceWithin(*held);
    return held;
}

Expected<Judgement> judge(const Reading &reading)
{
    if (!reading.value)
        return Judgement{};
    return judge(*reading.value, reading.wanted, reading.uncertainty);
}

Verdict verdictOf(const Reading &reading)
{
    const auto judged = judge(reading);
    return judged ? judged->verdict : Verdict::NoLimit;
}

double expandedFromStandard(double standardUncertainty)
{
    return coverage95 * standardUncertainty;
}

QString uncertaintyText(double uncertainty, const Measure &measure)
{
    const QString figures = uncertaintyFigures(uncertainty);
    return figures.isEmpty() ? figures : QStringLiteral("± ") + figures + (measure.isNone() ? QString() : QChar(0x00A0) + measure.text());
}

QString verdictText(Verdict verdict)
{
    return toWord(verdict).replace(QLatin1Char('_'), QLatin1Char(' '));
}

} // namespace ts
