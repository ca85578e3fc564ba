#include "model/jot/reading_words.h"

#include "model/jot/phrase.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

/// To so many figures, no needless zeros: differences are for reading, not for reckoning on.
QString rounded(double value, int figures = 3)
{
    if (value == 0 || !std::isfinite(value))
        return QStringLiteral("0");
    const double size = std::pow(10.0, figures - 1 - std::floor(std::log10(std::abs(value))));
    return numberText(std::round(value * size) / size);
}

QString withUnit(const QString &number, const Measure &measure)
{
    return measure.isNone() ? number : number + QLatin1Char(' ') + measure.text();
}

/// The middle that was named, in the judged measure.
std::optional<double> nominalIn(const Limit &wanted, const Measure &measure)
{
    if (!wanted.nominal())
        return std::nullopt;
    const auto there = Quantity(*wanted.nominal(), wanted.measure()).in(measure);
    return there ? std::optional(there->value()) : std::nullopt;
}

} // namespace

QString phaseText(Phase phase)
{
    return toWord(phase).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString howFarOff(const Reading &reading, const Judgement &judged)
{
    if (judged.verdict != Verdict::Outside || !reading.value || reading.value->sense() == Sense::OverRange)
        return {};
    const bool low = judged.low && judged.value < *judged.low;
    const auto bound = low ? judged.low : judged.high;
    if (!bound)
        return {};
    const QString side = low ? QStringLiteral(" low") : QStringLiteral(" high");
    const auto middle = nominalIn(reading.wanted, judged.measure);
    const QString form = reading.wanted.text().toLower();
    if (middle && form.endsWith(QLatin1String("db")) && judged.measure.symbol() != QLatin1String("dB") &&
        judged.value / *middle > 0)
        return QString::number(std::abs(20 * std::log10(judged.value / *middle)), 'f', 1) + QStringLiteral(" dB") + side;
    if (middle && *middle != 0 && form.endsWith(QLatin1Char('%')) && judged.measure.symbol() != QLatin1String("%"))
        return QString::number(std::abs((judged.value - *middle) / *middle) * 100, 'f', 1) + QStringLiteral(" %") + side;
    return withUnit(rounded(std::abs(judged.value - (middle ? *middle : *bound))), judged.measure) + side;
}

QString readingSentence(const Reading &reading)
{
    QString text = startingBig(shown(reading.name));
    if (!reading.conditions.isEmpty())
        text += (reading.conditions.at(0).isDigit() ? QStringLiteral(" at ") : QStringLiteral(", ")) + shown(reading.conditions);
    text += QStringLiteral(": ") + (reading.value ? reading.value->text() : QString());
    if (reading.uncertainty && reading.value)
        // Two figures of an uncertainty that was worked out are enough (JCGM 100:2008, 7.2.6).
        text += QStringLiteral(" ± ") +
                withUnit(rounded(*reading.uncertainty, reading.meter.isNull() ? 3 : 2), reading.value->measure());
    if (reading.wanted.isNone())
        return text;
    text += QStringLiteral(", wanted ") + reading.wanted.display();
    const auto judged = judge(reading);
    if (!judged)
        return text + QStringLiteral(", which cannot be compared");
    switch (judged->verdict) {
    case Verdict::NoLimit:
        return text + QStringLiteral(", no tolerance given");
    case Verdict::Within:
        return text + QStringLiteral(", is within");
    case Verdict::TooCloseToCall:
        text += QStringLiteral(", is too close to call");
        if (judged->chanceWithin)
            text += QStringLiteral(" (%1 % within)").arg(std::lround(*judged->chanceWithin * 100));
        return text;
    case Verdict::Outside:
        break;
    }
    const QString off = howFarOff(reading, *judged);
    return text + QStringLiteral(", is ") + (off.isEmpty() ? QStringLiteral("outside") : off);
}

QString doubtAbout(const Reading &reading)
{
    if (!reading.value || reading.wanted.isNone() || reading.value->sense() == Sense::OverRange)
        return {};
    const auto judged = judge(reading);
    if (!judged)
        return QStringLiteral("The reading is in %1 and what is wanted in %2. Record it all the same?")
            .arg(reading.value->measure().text(), reading.wanted.measure().text());
    // A slip of the decimal point or of the prefix is what is looked for. Zero is a true reading of a dead circuit, and decibels
    // are tenths of powers already.
    if (judged->verdict == Verdict::Within || judged->value == 0 || judged->measure.symbol() == QLatin1String("dB"))
        return {};
    const double value = std::abs(judged->value);
    const auto middle = nominalIn(reading.wanted, judged->measure);
    double most = 0;
    double least = HUGE_VAL;
    for (const auto &bound : {middle, middle ? std::nullopt : judged->low, middle ? std::nullopt : judged->high})
        if (bound) {
            most = std::max(most, std::abs(*bound));
            least = std::min(least, std::abs(*bound));
        }
    if (middle && *middle == 0) // an offset: wanted is none, the bounds say how much is still well
        for (const auto &bound : {judged->low, judged->high})
            if (bound)
                most = std::max(most, std::abs(*bound));
    const auto wellAt = [&](double other) { // only where all that is wanted lies on one side of zero
        return judged->low && judged->high && *judged->low * *judged->high > 0 && other >= *judged->low && other <= *judged->high;
    };
    const bool over = most > 0 && (value >= most * 9.999999 || wellAt(judged->value / 10)) && !(judged->low && !judged->high);
    const bool under = !over && least > 0 && least < HUGE_VAL && (value <= least / 9.999999 || wellAt(judged->value * 10)) &&
                       !(judged->high && !judged->low);
    if (!over && !under)
        return {};
    const double ratio = over ? value / most : least / value;
    const QString times = ratio < 9.5 || ratio >= 10.5 ? rounded(ratio >= 100 ? std::round(ratio) : std::round(ratio * 10) / 10)
                                                       : QStringLiteral("10");
    return QStringLiteral("%1 is %2 times %3 what is wanted (%4). Record it all the same?")
        .arg(reading.value->text(), times, over ? QStringLiteral("above") : QStringLiteral("below"), reading.wanted.display());
}

} // namespace ts
