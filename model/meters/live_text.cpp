#include "model/meters/live_text.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// The measure of that symbol whose prefix leaves one to three figures before the point, for the symbols that people use with prefixes.
Measure readable(const Measure &base, double value)
{
    static const QStringList prefixed{u"V"_s, u"A"_s, u"Ω"_s, u"F"_s, u"Hz"_s, u"s"_s};
    if (!prefixed.contains(base.symbol()) || value == 0)
        return base;
    static const QString prefixes = u"pnµm kMG"_s; // SI Brochure, 9th edition, table 7: 10^-12 to 10^9
    const int step = std::clamp(static_cast<int>(std::floor(std::log10(std::abs(value)) / 3 + 1e-12)), -4, 3);
    const QChar prefix = prefixes.at(step + 4);
    return prefix == u' ' ? base : Measure::parse(prefix + base.symbol()).value();
}

} // namespace

Expected<QString> liveText(const LiveReading &reading, const Measure &like)
{
    const Quantity &value = reading.value;
    if (!value.measure().isNone() && !like.isNone() && !value.measure().comparableWith(like))
        return Trouble{u"The meter reads %1"_s.arg(value.measure().text()), u"%1 is wanted here"_s.arg(like.text()), u"turn its switch"_s};
    if (value.sense() == Sense::OverRange)
        return u"OL"_s;
    if (value.measure().isNone() && like.isNone())
        return Trouble{u"The meter does not say what it measures"_s, {}, u"say first what is wanted here, with its unit"_s};
    const Measure base = value.measure().isNone() ? Measure::parse(like.symbol()).value() : value.measure();
    const Measure unit = like.isNone() ? readable(base, value.value()) : like;
    const double places = reading.step > 0 ? unit.exponent() - std::floor(std::log10(reading.step) + 1e-9) : 6;
    return QString::number(value.value() / unit.factor(), 'f', std::clamp(static_cast<int>(places), 0, 9)) + u' ' + unit.text();
}

} // namespace ts
