#include "model/values/limit.h"

#include "model/values/number.h"
#include "model/values/quoted.h"
#include "model/values/wanted.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

struct Ends {
    std::optional<double> low;
    std::optional<double> high;
    std::optional<double> nominal;
};

/// Low and high in the measure of the first amount. Binary dust is taken off, because a limit is inclusive and a reading
/// typed as exactly 11.4 V must be within 12 V ± 5 %.
Ends ends(const Wanted &wanted)
{
    const double aim = wanted.first.value();
    const auto around = [aim](double low, double high, double scale) {
        return Ends{withoutBinaryDust(std::min(low, high), scale), withoutBinaryDust(std::max(low, high), scale), aim};
    };
    switch (wanted.shape) {
    case Shape::Aim:
        return {{}, {}, aim};
    case Shape::Band:
        return {aim, wanted.second.value(), {}};
    case Shape::AtMost:
        return {{}, aim, {}};
    case Shape::AtLeast:
        return {aim, {}, {}};
    case Shape::Relative: {
        const double whole = wanted.second.measure().symbol() == u"%" ? 100 : 1'000'000;
        const double share = wanted.second.base();
        return around(aim * (whole - share) / whole, aim * (whole + share) / whole,
                      std::max(std::abs(aim), std::abs(aim) * share / whole));
    }
    case Shape::Absolute: {
        const double tolerance =
            shiftDecimal(wanted.second.value(), wanted.second.measure().exponent() - wanted.first.measure().exponent());
        return around(aim - tolerance, aim + tolerance, std::max(std::abs(aim), tolerance));
    }
    case Shape::Decibels: {
        // A level of a field quantity is 20 lg, of a power 10 lg (IEC 60027-3; ISO 80000-3 annex).
        const QString symbol = wanted.first.measure().symbol();
        const bool power = symbol == u"W" || symbol == u"VA" || symbol == u"var";
        const double ratio = std::pow(10.0, wanted.second.base() / (power ? 10 : 20));
        return around(aim / ratio, aim * ratio, std::abs(aim));
    }
    }
    return {};
}

} // namespace

Expected<Limit> Limit::parse(QStringView text, const Measure &expected)
{
    const QStringView word = text.trimmed();
    if (word.isEmpty())
        return Trouble{
            QStringLiteral("No limit was given"), {}, QStringLiteral("write it as 12 V 5%, 35..65 gf.cm or <= 0.12 %")};
    const auto wanted = readWanted(word, expected);
    if (!wanted)
        return Trouble{quoted(text) + QStringLiteral(" is no limit"), wanted.trouble().wrong, wanted.trouble().todo};
    const Ends found = ends(*wanted);
    for (const auto &end : {found.low, found.high})
        if (end && (!std::isfinite(*end) || std::abs(*end) > 1e99))
            return Trouble{quoted(text) + QStringLiteral(" is no limit"), QStringLiteral("it is too wide to be judged by"), {}};
    Limit limit;
    limit.m_low = found.low;
    limit.m_high = found.high;
    limit.m_nominal = found.nominal;
    limit.m_measure = wanted->shape == Shape::Band ? wanted->second.measure() : wanted->first.measure();
    limit.m_text = jotted(*wanted);
    return limit;
}

Expected<Limit> Limit::in(const Measure &other) const
{
    if (isNone() || m_measure == other)
        return *this;
    auto wanted = readWanted(m_text, {});
    if (!wanted)
        return wanted.trouble();
    const auto first = wanted->first.in(other);
    if (!first)
        return first.trouble();
    wanted->first = *first;
    if (wanted->shape == Shape::Band) {
        const auto second = wanted->second.in(other);
        if (!second)
            return second.trouble();
        wanted->second = *second;
    }
    return parse(jotted(*wanted));
}

QString Limit::display() const
{
    if (isNone())
        return {};
    const auto wanted = readWanted(m_text, {});
    return wanted ? ts::display(*wanted) : m_text;
}

} // namespace ts
