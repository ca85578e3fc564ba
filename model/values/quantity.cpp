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
    Opening{u"<=", Sense::Below},    Opening{u">=", Sense::Above},    Opening{u"<", Sense::Below},
    Opening{u">", Sense::Above},     Opening{u"≤", Sense::Below},     Opening{u"≥", Sense::Above},
    Opening{u"~", Sense::About},     Opening{u"≈", Sense::About},     Opening{u"about", Sense::About},
    Opening{u"ca.", Sense::About},   Opening{u"circa", Sense::About}, Opening{u"roughly", Sense::About},
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
    QChar letter;
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
                      text[letter], text.mid(at)};
}

/// A prefix before a symbol: "k" and "Ω". Nothing where the symbol takes none: kilo per cent is no unit.
std::optional<Measure> prefixed(QChar prefix, const QString &symbol)
{
    const QChar sign = prefix == u'K' ? QChar(u'k') : prefix; // K alone would be kelvin
    const auto measure = Measure::parse(QString(sign) + symbol);
    if (!measure || measure->symbol() != symbol)
        return std::nullopt;
    return *measure;
}

/// An amount as it was written: its figures, and a measure or a lone prefix that waits for one.
struct Written {
    QString number;
    Measure measure;
    QChar prefix;
};

Trouble wrong(const QString &what)
{
    return {{}, what, {}};
}

Expected<Written> writtenAsCode(const LetterCode &code)
{
    const QStringView unit = code.rest.trimmed();
    const QChar letter = code.letter;
    const bool namesSymbol = letter == u'R' || letter == u'V' || letter == u'F';
    Written written{code.number, {}, namesSymbol ? QChar() : letter};
    if (namesSymbol)
        written.measure = *Measure::parse(QString(letter));
    if (unit.isEmpty())
        return written;
    const auto named = Measure::parse(unit); // "4k7Ω": may repeat or complete what the letter says
    const auto whole = namesSymbol || !named || named->exponent() != 0 ? std::nullopt : prefixed(letter, named->symbol());
    if (!named || (namesSymbol ? !(*named == written.measure) : !whole || named->isNone()))
        return wrong(quoted(unit) + QStringLiteral(" cannot stand after a marking code"));
    return Written{code.number, namesSymbol ? written.measure : *whole, {}};
}

Expected<Written> writtenAsNumber(QStringView text, const Measure &expected)
{
    const qsizetype length = numberLength(text);
    if (length == 0)
        return wrong(QStringLiteral("it does not begin with a figure"));
    const QString number = text.left(length).toString();
    const QStringView tail = text.mid(length);
    const QStringView unit = tail.trimmed();
    if (unit.isEmpty())
        return Written{number, expected, {}};
    const bool spaced = tail.front().isSpace();
    if (isDigit(unit.front()) || unit.front() == u'.' || unit.front() == u',')
        return wrong(spaced ? QStringLiteral("a second number stands after %1").arg(quoted(number))
                            : QStringLiteral("a number has one decimal sign and nothing to part the thousands"));
    // "47K" and "5m" in one are prefixes of what was expected; "300 K" and "5 m" are kelvins and metres, as is "5m" where
    // nothing was expected
    if (!spaced && unit != expected.symbol() && (unit == u"K" || (unit == u"m" && !expected.isNone())))
        return Written{number, {}, unit.front()};
    qsizetype end = 0;
    while (end < unit.size() && !unit[end].isSpace())
        ++end;
    const auto measure = Measure::parse(unit.left(end));
    if (!measure)
        return wrong(measure.trouble().sentence().chopped(1));
    if (end < unit.size())
        return wrong(quoted(unit.mid(end)) + QStringLiteral(" after the unit does not belong to it"));
    if (measure->isNone())
        return Written{number, {}, unit.front()};
    return Written{number, *measure, {}};
}

} // namespace

Expected<Quantity> Quantity::parse(QStringView text, const Measure &expected)
{
    const auto refuse = [&](const QString &why) { return Trouble{quoted(text) + QStringLiteral(" is no value"), why, {}}; };
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
    const auto code = letterCode(rest);
    const auto written = code ? writtenAsCode(*code) : writtenAsNumber(rest, expected);
    if (!written)
        return refuse(written.trouble().wrong);
    const auto number = parseNumber(written->number);
    if (!number)
        return refuse(number.trouble().wrong);
    double value = *number;
    Measure measure = written->measure;
    if (!written->prefix.isNull()) {
        const auto whole = expected.isNone() ? std::nullopt : prefixed(written->prefix, expected.symbol());
        if (whole)
            measure = *whole;
        else if (written->prefix == u'm') // "5 m" would read back as metres: thousandths of no unit are a plain number
            value = shiftDecimal(value, -3);
        else
            measure = *prefixed(written->prefix, QString());
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
                       QStringLiteral("%1 and %2 measure different things").arg(name(m_measure), name(other)),
                       {}};
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
