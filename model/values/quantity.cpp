#include "model/values/number.h"
#include "model/values/quoted.h"

#include <array>
#include <cmath>

namespace ts {

namespace {

// Beyond this no meter reads and no prefix can be changed without running out of a double.
constexpr double largest = 1e99;

struct Opening {
    QStringView written;
    Sense sense;
};
// The longer first: "<=" begins with "<". A word needs a space or a figure after it.
constexpr std::array openings{
    Opening{u"<=", Sense::Below},    Opening{u">=", Sense::Above},   Opening{u"<", Sense::Below},       Opening{u">", Sense::Above},
    Opening{u"≤", Sense::Below},     Opening{u"≥", Sense::Above},    Opening{u"~", Sense::About},       Opening{u"≈", Sense::About},
    Opening{u"about", Sense::About}, Opening{u"ca.", Sense::About},  Opening{u"circa", Sense::About},   Opening{u"roughly", Sense::About},
    Opening{u"below", Sense::Below}, Opening{u"under", Sense::Below}, Opening{u"above", Sense::Above},
};

constexpr std::array overRange{QStringView(u"over range"), QStringView(u"overrange"), QStringView(u"overload"),
                               QStringView(u"O.L."),       QStringView(u"O.L"),       QStringView(u"OL")};

Sense takeSense(QStringView &text)
{
    for (const Opening &each : openings) {
        if (!text.startsWith(each.written, Qt::CaseInsensitive))
            continue;
        const QStringView rest = text.mid(each.written.size());
        if (each.written.back().isLetter() && !rest.isEmpty() && !rest.front().isSpace() && numberLength(rest) == 0)
            continue;
        text = rest.trimmed();
        return each.sense;
    }
    return Sense::Plain;
}

/// What stands after "OL", where the text begins so.
std::optional<QStringView> afterOverRange(QStringView text)
{
    for (const QStringView each : overRange) {
        if (!text.startsWith(each, Qt::CaseInsensitive))
            continue;
        const QStringView rest = text.mid(each.size());
        if (rest.isEmpty() || rest.front().isSpace())
            return rest.trimmed();
    }
    return std::nullopt;
}

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

/// A letter standing for the decimal point (IEC 60062): "4k7", "2R2", "R47", "3V3". Empty where the text is no such code.
struct LetterCode {
    QString number;
    QString letter;
    QStringView rest;
};
std::optional<LetterCode> letterCode(QStringView text)
{
    qsizetype at = !text.isEmpty() && (text.front() == u'-' || text.front() == u'+' || text.front() == u'\u2212') ? 1 : 0;
    const qsizetype start = at;
    while (at < text.size() && isDigit(text[at]))
        ++at;
    const qsizetype letter = at;
    if (letter >= text.size() || !QStringView(u"RKMGTkpnuµ\u03bcmVF").contains(text[letter]))
        return std::nullopt;
    const bool leads = letter == start; // "R47", "p33": of these only the ones that cannot be anything else
    if (leads && !QStringView(u"Rpnuµ\u03bc").contains(text[letter]))
        return std::nullopt;
    at = letter + 1;
    while (at < text.size() && isDigit(text[at]))
        ++at;
    if (at == letter + 1)
        return std::nullopt;
    const QString whole = leads ? QStringLiteral("0") : text.mid(start, letter - start).toString();
    return LetterCode{text.left(start).toString() + whole + QLatin1Char('.') + text.mid(letter + 1, at - letter - 1).toString(),
                      QString(text[letter]), text.mid(at)};
}

/// Prefixes are for symbols that take them: "47k" where rpm is expected is 47 thousand of nothing known, not 47 krpm.
bool takesPrefix(const Measure &measure)
{
    const auto kilo = Measure::parse(QString(QLatin1Char('k') + measure.symbol()));
    return !measure.isNone() && kilo && kilo->symbol() == measure.symbol();
}

} // namespace

Expected<Quantity> Quantity::parse(QStringView text, const Measure &expected)
{
    const auto refuse = [&](const QString &wrong) { return Trouble{quoted(text) + QStringLiteral(" is no value"), wrong, {}}; };
    QStringView rest = text.trimmed();
    if (rest.isEmpty())
        return Trouble{QStringLiteral("No value was given"), {}, {}};

    if (const auto unit = afterOverRange(rest)) {
        if (unit->isEmpty())
            return Quantity(0, expected, Sense::OverRange);
        const auto measure = Measure::parse(*unit);
        if (!measure)
            return refuse(measure.trouble().sentence().chopped(1));
        return Quantity(0, *measure, Sense::OverRange);
    }

    const Sense sense = takeSense(rest);
    QString number;
    Measure measure;
    QStringView unit;
    bool bare = false; // the unit is a lone letter that may be a prefix of what is expected
    if (const auto code = letterCode(rest)) {
        number = code->number;
        unit = code->rest.trimmed();
        const auto letter = Measure::parse(code->letter == u"m" ? QStringView(u"k") : QStringView(code->letter));
        if (!letter)
            return refuse(letter.trouble().wrong);
        if (letter->isNone() || code->letter == u"K") { // a prefix; R, V and F name their symbol themselves
            const int exponent = code->letter == u"m" ? -3 : code->letter == u"K" ? 3 : letter->exponent();
            measure.m_exponent = exponent;
            bare = true;
            if (!unit.isEmpty()) { // "4k7Ω"
                const auto named = Measure::parse(unit);
                if (!named || named->exponent() != 0 || !takesPrefix(*named))
                    return refuse(quoted(unit) + QStringLiteral(" cannot stand after a marking code"));
                measure.m_symbol = named->symbol();
                bare = false;
            }
        } else {
            measure = *letter;
            if (!unit.isEmpty()) {
                const auto named = Measure::parse(unit);
                if (!named || !(*named == measure))
                    return refuse(quoted(unit) + QStringLiteral(" cannot stand after a marking code"));
            }
        }
    } else {
        const qsizetype length = numberLength(rest);
        if (length == 0)
            return refuse(QStringLiteral("it does not begin with a figure"));
        number = rest.left(length).toString();
        const QStringView tail = rest.mid(length);
        const bool spaced = !tail.isEmpty() && tail.front().isSpace();
        unit = tail.trimmed();
        if (unit.isEmpty()) {
            measure = expected;
        } else if (!spaced && (unit == u"K" || unit == u"m") && unit != expected.symbol() && !(unit == u"m" && expected.isNone())) {
            // "47K" and "5m" written in one are prefixes; "300 K" and "5 m" are kelvins and metres
            measure.m_exponent = unit == u"K" ? 3 : -3;
            bare = true;
        } else {
            if (isDigit(unit.front()) || unit.front() == u'.' || unit.front() == u',')
                return refuse(spaced ? QStringLiteral("a second number stands after %1").arg(quoted(number))
                                     : QStringLiteral("a number has one decimal sign and nothing to part the thousands"));
            qsizetype end = 0;
            while (end < unit.size() && !unit[end].isSpace())
                ++end;
            const auto read = Measure::parse(unit.left(end));
            if (!read)
                return refuse(read.trouble().sentence().chopped(1));
            if (end < unit.size())
                return refuse(quoted(unit.mid(end)) + QStringLiteral(" after the unit does not belong to it"));
            measure = *read;
            bare = measure.isNone();
        }
    }
    if (bare && takesPrefix(expected))
        measure.m_symbol = expected.symbol();

    const auto read = parseNumber(number);
    if (!read)
        return refuse(read.trouble().wrong);
    double value = *read;
    if (measure.isNone() && measure.m_exponent == -3) { // "5 m" would read back as metres: thousandths of no unit are a plain number
        value = shiftDecimal(value, measure.m_exponent);
        measure.m_exponent = 0;
    }
    if (std::abs(value) > largest || (value != 0.0 && std::abs(value) < 1 / largest))
        return refuse(QStringLiteral("nothing that size can be measured"));
    return Quantity(value, measure, sense);
}

double Quantity::base() const
{
    return shiftDecimal(m_value, m_measure.exponent());
}

Expected<Quantity> Quantity::in(const Measure &other) const
{
    if (!m_measure.comparableWith(other)) {
        const auto name = [](const Measure &measure) {
            return measure.text().isEmpty() ? QStringLiteral("a bare number") : quoted(measure.text());
        };
        return Trouble{quoted(text()) + QStringLiteral(" cannot be given in another unit"),
                       QStringLiteral("%1 and %2 measure different things").arg(name(m_measure), name(other)), {}};
    }
    return Quantity(shiftDecimal(m_value, m_measure.exponent() - other.exponent()), other, m_sense);
}

QString Quantity::text() const
{
    const QString unit = m_measure.text();
    const QString tail = unit.isEmpty() ? QString() : QLatin1Char(' ') + unit;
    const QString amount = numberText(m_value) + tail;
    switch (m_sense) {
    case Sense::Plain:
        return amount;
    case Sense::About:
        return QStringLiteral("about ") + amount;
    case Sense::Below:
        return QStringLiteral("< ") + amount;
    case Sense::Above:
        return QStringLiteral("> ") + amount;
    case Sense::OverRange:
        return QStringLiteral("over range") + tail;
    }
    return amount;
}

} // namespace ts
