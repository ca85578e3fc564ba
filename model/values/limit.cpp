#include "model/values/limit.h"

#include "model/values/number.h"
#include "model/values/quoted.h"

#include <QList>

#include <array>
#include <cmath>

namespace ts {

namespace {

enum class Shape { Aim, Band, AtMost, AtLeast, Relative, Absolute, Decibels };

/// A limit as it was put: one or two amounts and what they are to each other.
struct Wanted {
    Shape shape = Shape::Aim;
    Quantity first;  ///< the aim, the lower end, or the only end
    Quantity second; ///< the upper end or the tolerance; in "%", "ppm", "dB" or the measure of the aim
};

struct Opening {
    QStringView written;
    Shape shape;
};
constexpr std::array openings{
    Opening{u"<=", Shape::AtMost},        Opening{u">=", Shape::AtLeast},   Opening{u"=<", Shape::AtMost},  Opening{u"=>", Shape::AtLeast},
    Opening{u"<", Shape::AtMost},         Opening{u">", Shape::AtLeast},    Opening{u"≤", Shape::AtMost},   Opening{u"≥", Shape::AtLeast},
    Opening{u"up to ", Shape::AtMost},    Opening{u"at most ", Shape::AtMost}, Opening{u"below ", Shape::AtMost},
    Opening{u"under ", Shape::AtMost},    Opening{u"at least ", Shape::AtLeast}, Opening{u"above ", Shape::AtLeast},
};

Trouble wrongLimit(const QString &wrong, const QString &todo = {})
{
    return {{}, wrong, todo};
}

QString shownMeasure(const Measure &measure)
{
    return measure.text().isEmpty() ? QStringLiteral("no unit") : quoted(measure.text());
}

bool isRelative(const Measure &measure)
{
    return measure.symbol() == u"%" || measure.symbol() == u"ppm";
}

/// One amount inside a limit: a plain value, nothing about or over range.
Expected<Quantity> amount(QStringView text, const Measure &expected)
{
    if (text.trimmed().isEmpty())
        return wrongLimit(QStringLiteral("a value is missing"));
    auto read = Quantity::parse(text, expected);
    if (!read)
        return wrongLimit(read.trouble().sentence().chopped(1));
    if (read->sense() != Sense::Plain)
        return wrongLimit(quoted(text) + QStringLiteral(" is not a definite value"));
    return read;
}

/// Whether the text states a unit, even if only a prefix.
bool namesUnit(QStringView text)
{
    const QStringView word = text.trimmed();
    return numberLength(word) < word.size();
}

Expected<Wanted> readBand(QStringView from, QStringView to, const Measure &expected)
{
    const auto upper = amount(to, expected);
    if (!upper)
        return upper.trouble();
    // "35..65 gf·cm": the unit stands once and holds for both, on whichever side it was put
    const auto lower = amount(from, namesUnit(to) ? upper->measure() : expected);
    if (!lower)
        return lower.trouble();
    Wanted wanted{Shape::Band, *lower, *upper};
    if (!namesUnit(to) && namesUnit(from))
        wanted.second = Quantity(upper->value(), lower->measure());
    const auto same = wanted.first.in(wanted.second.measure());
    if (!same)
        return wrongLimit(QStringLiteral("its ends are in %1 and %2").arg(shownMeasure(wanted.first.measure()), shownMeasure(wanted.second.measure())));
    if (same->value() > wanted.second.value())
        return wrongLimit(QStringLiteral("%1 is above %2").arg(wanted.first.text(), wanted.second.text()), QStringLiteral("put the lower end first"));
    wanted.first = *same;
    return wanted;
}

Expected<Wanted> readTolerance(QStringView aimText, QStringView toleranceText, bool plusMinus, const Measure &expected)
{
    const QStringView word = toleranceText.trimmed();
    if (!word.isEmpty() && (word.front() == u'-' || word.front() == u'+' || word.front() == u'\u2212'))
        return wrongLimit(QStringLiteral("a tolerance has no sign of its own"), QStringLiteral("write ± before it, or both ends as in 11..12 V"));
    const bool bareTolerance = !namesUnit(word);
    auto aim = amount(aimText, expected);
    if (!aim)
        return aim.trouble();
    if (bareTolerance && !plusMinus)
        return wrongLimit(quoted(word) + QStringLiteral(" may be a percentage or a value"), QStringLiteral("write its unit"));
    auto tolerance = amount(word, aim->measure());
    if (!tolerance)
        return tolerance.trouble();
    const Measure &unit = tolerance->measure();
    // "12 ± 0.5 V": the unit at the end holds for both
    if (!namesUnit(aimText) && !bareTolerance && !isRelative(unit) && unit.symbol() != u"dB")
        aim = Quantity(aim->value(), unit);
    if (tolerance->value() <= 0)
        return wrongLimit(QStringLiteral("a tolerance of nothing cannot be kept"));

    Wanted wanted{Shape::Absolute, *aim, *tolerance};
    const bool inDecibels = aim->measure().symbol().startsWith(QLatin1String("dB"));
    if (aim->measure().comparableWith(unit) || (inDecibels && unit.symbol() == u"dB"))
        return wanted; // also "50 % 5 %", 45 to 55 %, and "4 dBu 1 dB", 3 to 5 dBu
    if (!isRelative(unit) && unit.symbol() != u"dB")
        return wrongLimit(QStringLiteral("the tolerance is in %1 and the value in %2").arg(shownMeasure(unit), shownMeasure(aim->measure())));
    if (aim->value() == 0.0)
        return wrongLimit(QStringLiteral("%1 around zero is nothing").arg(tolerance->text()), QStringLiteral("give both ends"));
    if (inDecibels)
        return wrongLimit(QStringLiteral("a share of decibels means nothing"), QStringLiteral("give the tolerance in dB"));
    wanted.shape = unit.symbol() == u"dB" ? Shape::Decibels : Shape::Relative;
    return wanted;
}

/// Where "12 V 5%" has its second number: a token that begins one, after the first.
QList<qsizetype> laterNumbers(QStringView text)
{
    QList<qsizetype> found;
    for (qsizetype i = 1; i < text.size(); ++i)
        if (text[i - 1].isSpace() && numberLength(text.mid(i)) > 0)
            found << i;
    return found;
}

Expected<Wanted> read(QStringView text, const Measure &expected)
{
    for (const Opening &each : openings) {
        if (!text.startsWith(each.written, Qt::CaseInsensitive))
            continue;
        const auto end = amount(text.mid(each.written.size()), expected);
        if (!end)
            return end.trouble();
        return Wanted{each.shape, *end, {}};
    }

    for (const QStringView mark : {QStringView(u"±"), QStringView(u"+/-"), QStringView(u"+-"), QStringView(u"+/\u2212")})
        if (const qsizetype at = text.indexOf(mark); at >= 0)
            return readTolerance(text.left(at), text.mid(at + mark.size()), true, expected);

    for (const QStringView mark : {QStringView(u"..."), QStringView(u".."), QStringView(u"\u2026"), QStringView(u" to "), QStringView(u"\u2013"),
                                   QStringView(u" - ")})
        if (const qsizetype at = text.indexOf(mark, 0, Qt::CaseInsensitive); at >= 0)
            return readBand(text.left(at), text.mid(at + mark.size()), expected);
    // "35-65 gf·cm": a hyphen between two figures; after a space it is the sign of a tolerance, which has none
    if (const qsizetype length = numberLength(text); length > 0 && length + 1 < text.size() && text[length] == u'-')
        return readBand(text.left(length), text.mid(length + 1), expected);

    // "about 12 V" has no first number; "R47 5%" has
    const bool startsAsWord = text.front().isLetter() && (text.size() < 2 || !text[1].isDigit());
    const QList<qsizetype> later = startsAsWord ? QList<qsizetype>() : laterNumbers(text);
    if (later.size() > 1)
        return wrongLimit(QStringLiteral("it has more than two values"));
    if (later.size() == 1)
        return readTolerance(text.left(later.front()), text.mid(later.front()), false, expected);
    const auto aim = amount(text, expected);
    if (!aim)
        return aim.trouble();
    return Wanted{Shape::Aim, *aim, {}};
}

/// The canonical jot form, which `read` takes back as the same.
QString jotted(const Wanted &wanted)
{
    const QString first = wanted.first.text();
    const QString second = wanted.second.text();
    switch (wanted.shape) {
    case Shape::Aim:
        return first;
    case Shape::Band:
        return numberText(wanted.first.value()) + QStringLiteral("..") + second;
    case Shape::AtMost:
        return QStringLiteral("<= ") + first;
    case Shape::AtLeast:
        return QStringLiteral(">= ") + first;
    case Shape::Relative:
    case Shape::Decibels: {
        const QString unit = wanted.second.measure().text();
        const QString gap = unit == u"ppm" ? QStringLiteral(" ") : QString();
        return first + QLatin1Char(' ') + numberText(wanted.second.value()) + gap + unit;
    }
    case Shape::Absolute:
        return wanted.second.measure().text().isEmpty() ? first + QStringLiteral(" ± ") + second : first + QLatin1Char(' ') + second;
    }
    return {};
}

QString shown(const Wanted &wanted)
{
    switch (wanted.shape) {
    case Shape::Aim:
        return wanted.first.text();
    case Shape::Band:
        return numberText(wanted.first.value()) + QStringLiteral(" to ") + wanted.second.text();
    case Shape::AtMost:
        return QStringLiteral("up to ") + wanted.first.text();
    case Shape::AtLeast:
        return QStringLiteral("at least ") + wanted.first.text();
    case Shape::Relative:
    case Shape::Decibels:
    case Shape::Absolute:
        return wanted.first.text() + QStringLiteral(" ± ") + wanted.second.text();
    }
    return {};
}

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
        return around(aim * (whole - share) / whole, aim * (whole + share) / whole, std::max(std::abs(aim), std::abs(aim) * share / whole));
    }
    case Shape::Absolute: {
        const double tolerance = shiftDecimal(wanted.second.value(), wanted.second.measure().exponent() - wanted.first.measure().exponent());
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
        return Trouble{QStringLiteral("No limit was given"), {}, QStringLiteral("write it as 12 V 5%, 35..65 gf.cm or <= 0.12 %")};
    const auto wanted = read(word, expected);
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
    auto wanted = read(m_text, {});
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
    const auto wanted = read(m_text, {});
    return wanted ? shown(*wanted) : m_text;
}

} // namespace ts
