#include "model/values/lettercode.h"

#include "model/values/number.h"
#include "model/values/quoted.h"

#include <array>
#include <cmath>

namespace ts {

namespace {

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

/// What a tolerance letter says: percent below and above, and picofarads where it stands on a capacitor under 10 pF (0: none).
struct Letter {
    char16_t sign;
    double below;
    double above;
    double picofarads;
};
// IEC 60062, tolerance letters. F G J K M Z and C in picofarads were seen in a readable source; the others are from memory.
constexpr std::array letters{
    Letter{u'E', 0.005, 0.005, 0}, Letter{u'L', 0.01, 0.01, 0},    Letter{u'P', 0.02, 0.02, 0}, Letter{u'W', 0.05, 0.05, 0},
    Letter{u'B', 0.1, 0.1, 0.1},   Letter{u'C', 0.25, 0.25, 0.25}, Letter{u'D', 0.5, 0.5, 0.5}, Letter{u'F', 1, 1, 1},
    Letter{u'G', 2, 2, 2},         Letter{u'H', 3, 3, 0},          Letter{u'J', 5, 5, 0},       Letter{u'K', 10, 10, 0},
    Letter{u'M', 20, 20, 0},       Letter{u'N', 30, 30, 0},        Letter{u'Q', 10, 30, 0},     Letter{u'T', 10, 50, 0},
    Letter{u'S', 20, 50, 0},       Letter{u'Z', 20, 80, 0},
};

const Letter *toleranceLetter(QChar c)
{
    for (const Letter &each : letters)
        if (c == each.sign)
            return &each;
    return nullptr;
}

void setTolerance(Marking &marking, const Letter &letter)
{
    double below = letter.below;
    double above = letter.above;
    if (const double picofarads = marking.value.base() * 1e12;
        marking.value.measure().symbol() == u"F" && letter.picofarads > 0 && picofarads < 10)
        below = above = withoutBinaryDust(100 * letter.picofarads / picofarads, 100);
    marking.tolerancePercent = std::max(below, above);
    if (below != above) {
        marking.toleranceLowPercent = -below;
        marking.toleranceHighPercent = above;
    }
}

/// Three figures of a capacitor: two significant ones and a power of ten, in picofarads. 8 and 9 stand for 0.01 and 0.1
/// (from memory). Given in the prefix that leaves 1 to 999.
Quantity fromThreeDigits(QStringView code)
{
    const int power = code[2].digitValue();
    const int exponent = power == 9 ? -1 : power == 8 ? -2 : power;
    const double picofarads = shiftDecimal(code.left(2).toInt(), exponent);
    constexpr std::array<QStringView, 4> units{u"pF", u"nF", u"µF", u"mF"};
    size_t step = 0;
    while (step + 1 < units.size() && picofarads >= std::pow(1000.0, step + 1))
        ++step;
    return {shiftDecimal(picofarads, -3 * static_cast<int>(step)), *Measure::parse(units[step])};
}

/// The measure that the letter at the decimal point stands for; none where it is no such letter.
std::optional<Measure> pointLetter(QChar c)
{
    switch (c.unicode()) {
    case u'R':
    case u'r':
        return *Measure::parse(u"Ω");
    case u'K':
    case u'k':
        return *Measure::parse(u"kΩ");
    case u'M':
        return *Measure::parse(u"MΩ");
    case u'G':
        return *Measure::parse(u"GΩ");
    case u'p':
        return *Measure::parse(u"pF");
    case u'n':
        return *Measure::parse(u"nF");
    case u'u':
    case u'µ':
    case 0x03bc: // Greek mu
        return *Measure::parse(u"µF");
    case u'm':
        return *Measure::parse(u"mF");
    case u'F':
        return *Measure::parse(u"F");
    default:
        return std::nullopt;
    }
}

} // namespace

Expected<Marking> decodeMarking(QStringView text)
{
    const QStringView code = text.trimmed();
    const auto refuse = [&](const QString &wrong) {
        return Trouble{quoted(text) + QStringLiteral(" is no marking"), wrong,
                       QStringLiteral("write it as 4K7, 2R2J, 470n or 473J")};
    };
    if (code.isEmpty())
        return Trouble{QStringLiteral("No marking was given"), {}, QStringLiteral("write it as 4K7, 2R2J, 470n or 473J")};
    if (code.size() > 10)
        return refuse(QStringLiteral("it is too long"));

    qsizetype at = 0;
    while (at < code.size() && isDigit(code[at]))
        ++at;
    const qsizetype whole = at;
    Marking marking;

    // Three figures and K or M can be read twice: 470K is 470 kΩ, 105K is 1 µF ± 10 %. A resistor marked in full hundreds of
    // thousands ends in 0; a capacitor's third figure is its power of ten and is rarely 0. F and G after three figures are
    // tolerances: nobody marks hundreds of gigaohms, and hundreds of farads are printed in full.
    const bool ends = whole == 3 && code.size() <= 4;
    const QChar last = code.size() == 4 ? code[3] : QChar();
    const bool capacitorCode =
        ends && (last.isNull() || (toleranceLetter(last) && !((last == u'K' || last == u'M') && code[2] == u'0')));
    if (capacitorCode) {
        marking.value = fromThreeDigits(code.left(3));
    } else {
        if (whole == code.size())
            return refuse(QStringLiteral("it has no letter, and a capacitor's code without one has three figures"));
        const auto measure = pointLetter(code[at]);
        if (!measure)
            return refuse(quoted(code.mid(at, 1)) + QStringLiteral(" is no letter of the code"));
        ++at;
        const qsizetype start = at;
        while (at < code.size() && isDigit(code[at]))
            ++at;
        if (whole + at - start == 0)
            return refuse(QStringLiteral("it has no figures"));
        if (whole + at - start > 5)
            return refuse(QStringLiteral("it has too many figures"));
        const auto number = parseNumber(QString((whole ? code.left(whole).toString() : QStringLiteral("0")) + QLatin1Char('.') +
                                                (at > start ? code.mid(start, at - start).toString() : QStringLiteral("0"))));
        if (!number)
            return refuse(number.trouble().wrong);
        marking.value = Quantity(*number, *measure);
    }
    if (capacitorCode)
        at = 3;
    if (at < code.size()) {
        const Letter *letter = toleranceLetter(code[at]);
        if (!letter || at + 1 < code.size())
            return refuse(quoted(code.mid(letter ? at + 1 : at)) + QStringLiteral(" is no tolerance letter"));
        if (marking.value.value() == 0.0)
            return refuse(QStringLiteral("nothing has no tolerance"));
        setTolerance(marking, *letter);
    }
    if (marking.value.value() == 0.0 && marking.value.measure().symbol() != u"Ω")
        return refuse(QStringLiteral("a capacitor of nothing is not made"));
    return marking;
}

} // namespace ts
