#include "model/values/quantity.h"

#include "model/values/quoted.h"

#include <array>
#include <cmath>

namespace ts {

namespace {

struct Prefix {
    char16_t sign;
    int exponent;
};
// SI prefixes (SI Brochure, 9th edition, table 7), those of the bench. K is not SI but is written for k everywhere.
constexpr std::array prefixes{Prefix{u'p', -12}, Prefix{u'n', -9}, Prefix{u'µ', -6}, Prefix{u'u', -6},
                              Prefix{u'm', -3},  Prefix{u'k', 3},  Prefix{u'K', 3},  Prefix{u'M', 6},
                              Prefix{u'G', 9},   Prefix{u'T', 12}, Prefix{u'd', -1}, Prefix{u'c', -2}};

// Symbols that take a prefix. Ah, Wh and J are cells and surges, N·m is torque; a voltage
// read as rms, peak or peak to peak is said to be so, and none of them compares with the others.
constexpr std::array<QStringView, 24> symbols{u"V",  u"A",  u"W",  u"Ω",  u"F",   u"H",    u"Hz",  u"s",
                                              u"m",  u"g",  u"N",  u"Pa", u"VA",  u"K",    u"bar", u"var",
                                              u"lx", u"Ah", u"Wh", u"J",  u"N·m", u"Vrms", u"Vpp", u"Vp"};

// Other ways to write a symbol. Lower case only where it can mean nothing else.
struct Alias {
    QStringView written;
    QStringView symbol;
};
constexpr std::array aliases{
    Alias{u"R", u"Ω"},     Alias{u"ohm", u"Ω"},     Alias{u"ohms", u"Ω"},    Alias{u"Ohm", u"Ω"},  Alias{u"Ohms", u"Ω"},
    Alias{u"OHM", u"Ω"},   Alias{u"OHMS", u"Ω"},    Alias{u"v", u"V"},       Alias{u"volt", u"V"}, Alias{u"volts", u"V"},
    Alias{u"a", u"A"},     Alias{u"amp", u"A"},     Alias{u"amps", u"A"},    Alias{u"w", u"W"},    Alias{u"watt", u"W"},
    Alias{u"watts", u"W"}, Alias{u"hz", u"Hz"},     Alias{u"HZ", u"Hz"},     Alias{u"Nm", u"N·m"}, Alias{u"sec", u"s"},
    Alias{u"va", u"VA"},   Alias{u"vrms", u"Vrms"}, Alias{u"VRMS", u"Vrms"}, Alias{u"lux", u"lx"}, Alias{u"ah", u"Ah"},
    Alias{u"wh", u"Wh"},   Alias{u"vpp", u"Vpp"},   Alias{u"Vp-p", u"Vpp"},
};

// Words that are kept whole but have one spelling here.
constexpr std::array spellings{
    Alias{u"gfcm", u"gf·cm"}, Alias{u"gf-cm", u"gf·cm"}, Alias{u"RPM", u"rpm"}, Alias{u"db", u"dB"},     Alias{u"DB", u"dB"},
    Alias{u"dbu", u"dBu"},    Alias{u"dBU", u"dBu"},     Alias{u"degC", u"°C"}, Alias{u"percent", u"%"}, Alias{u"PPM", u"ppm"},
    Alias{u"℃", u"°C"},       Alias{u"farads", u"F"},    Alias{u"farad", u"F"},
};

constexpr qsizetype longest = 16;

/// One spelling for signs that look alike: Ω and µ have two code points each, a product is written with four signs.
QString tidied(QStringView text)
{
    QString word = text.trimmed().toString();
    for (QChar &each : word) {
        switch (each.unicode()) {
        case 0x2126: // ohm sign
            each = u'Ω';
            break;
        case 0x03bc: // Greek mu; the micro sign is what is written
            each = u'µ';
            break;
        case u'*':
        case 0x22c5: // dot operator
        case 0x2219: // bullet operator
        case u'.':
            each = u'·';
            break;
        default:
            break;
        }
    }
    return word;
}

QStringView symbolOf(QStringView word)
{
    for (const QStringView each : symbols)
        if (word == each)
            return each;
    for (const Alias &each : aliases)
        if (word == each.written)
            return each.symbol;
    return {};
}

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

bool mayStart(QChar c)
{
    return c.isLetter() || c == u'%' || c == u'‰' || c == u'°' || c == u'℃' || c == u'/' || c == u'×' || c == u'′' || c == u'″';
}

bool mayFollow(QChar c)
{
    return mayStart(c) || isDigit(c) || c == u'·' || c == u'-' || c == u'_' || c == u'²' || c == u'³' || c == u'√' ||
           c == u'\'' || c == u'^';
}

/// What stops a word from being a unit of its own, or an empty text.
QString notAUnit(const QString &word)
{
    if (word.size() > longest)
        return QStringLiteral("a unit has at most %1 signs").arg(longest);
    for (qsizetype i = 0; i < word.size(); ++i) {
        const QChar c = word[i];
        if (i == 0 && c.isDigit())
            return QStringLiteral("a unit does not start with a figure");
        if (c.isSpace())
            return QStringLiteral("a unit is one word");
        if (!(i == 0 ? mayStart(c) : mayFollow(c)))
            return quoted(QStringView(&c, 1)) + QStringLiteral(" does not belong in a unit");
    }
    if (word.endsWith(QChar(u'·')) || word.endsWith(QLatin1Char('-')) || word.contains(QStringLiteral("··")))
        return QStringLiteral("it breaks off");
    if (word.size() > 1 && (word.front() == u'x' || word.front() == u'×') && isDigit(word[1]))
        return QStringLiteral("it is the size of something, not a measure"); // 78x4x0.6
    for (qsizetype i = 1; i + 1 < word.size(); ++i)
        if (word[i] == u'·' && isDigit(word[i - 1]) && isDigit(word[i + 1]))
            return QStringLiteral("it holds a number");
    for (const QStringView each : {u"OL", u"nan", u"inf", u"infinity", u"to"}) // "to" stands between the ends of a limit
        if (word.compare(each, Qt::CaseInsensitive) == 0)
            return QStringLiteral("it is no measure of anything");
    return {};
}

} // namespace

Expected<Measure> Measure::parse(QStringView text)
{
    const QString word = tidied(text.left(4 * longest));
    if (word.isEmpty())
        return Trouble{QStringLiteral("No unit was given"), {}, {}};
    Measure measure;
    if (const QStringView symbol = symbolOf(word); !symbol.isEmpty()) {
        measure.m_symbol = symbol.toString();
        return measure;
    }
    for (const Prefix &prefix : prefixes) {
        if (word.front() != prefix.sign)
            continue;
        const QStringView rest = QStringView(word).mid(1);
        const bool lengthOnly = prefix.sign == u'd' || prefix.sign == u'c'; // dV is no voltage that anybody writes
        const QStringView symbol = symbolOf(rest);
        if (rest.isEmpty() && !lengthOnly) { // "k": a prefix of no symbol, as in "4.7 k"
            measure.m_exponent = prefix.exponent;
            return measure;
        }
        // "pa" is a pascal in lower case as much as a picoampere: no prefix is guessed
        if (symbol.isEmpty() || (lengthOnly && symbol != u"m" && symbol != u"N·m") || word == u"pa")
            continue;
        measure.m_symbol = symbol.toString();
        measure.m_exponent = prefix.exponent;
        return measure;
    }
    for (const Alias &each : spellings) {
        if (word == each.written) {
            measure.m_symbol = each.symbol.toString();
            return measure;
        }
    }
    if (const QString wrong = notAUnit(word); !wrong.isEmpty())
        return Trouble{quoted(text) + QStringLiteral(" is no unit"), wrong, {}};
    measure.m_symbol = word;
    return measure;
}

QString Measure::text() const
{
    for (const Prefix &prefix : prefixes)
        if (m_exponent == prefix.exponent && m_exponent != 0)
            return QChar(prefix.sign) + m_symbol;
    return m_symbol;
}

double Measure::factor() const
{
    return std::pow(10.0, m_exponent);
}

} // namespace ts
