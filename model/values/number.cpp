#include "model/values/number.h"

#include "model/values/quoted.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

bool isSign(QChar c)
{
    return c == u'-' || c == u'+' || c == u'\u2212';
}

qsizetype digitsFrom(QStringView text, qsizetype at)
{
    qsizetype end = at;
    while (end < text.size() && isDigit(text[end]))
        ++end;
    return end - at;
}

} // namespace

qsizetype numberLength(QStringView text)
{
    qsizetype at = !text.isEmpty() && isSign(text.front()) ? 1 : 0;
    const qsizetype whole = digitsFrom(text, at);
    at += whole;
    qsizetype fraction = 0;
    if (at < text.size() && (text[at] == u'.' || text[at] == u',')) {
        fraction = digitsFrom(text, at + 1);
        if (fraction > 0)
            at += 1 + fraction;
    }
    if (whole + fraction == 0)
        return 0;
    if (at < text.size() && (text[at] == u'e' || text[at] == u'E')) {
        const qsizetype sign = at + 1 < text.size() && isSign(text[at + 1]) ? 1 : 0;
        if (const qsizetype exponent = digitsFrom(text, at + 1 + sign); exponent > 0)
            at += 1 + sign + exponent;
    }
    return at;
}

Expected<double> parseNumber(QStringView text)
{
    const QStringView word = text.trimmed();
    const auto refuse = [&](const QString &wrong) { return Trouble{quoted(text) + QStringLiteral(" is no number"), wrong, {}}; };
    if (word.isEmpty())
        return Trouble{QStringLiteral("No number was given"), {}, {}};
    if (word.compare(u"nan", Qt::CaseInsensitive) == 0 || word.compare(u"inf", Qt::CaseInsensitive) == 0 ||
        word.compare(u"infinity", Qt::CaseInsensitive) == 0 || word == u"\u221e")
        return refuse(QStringLiteral("only figures that can be counted with are taken"));
    const qsizetype length = numberLength(word);
    if (length == 0)
        return refuse(QString());
    if (length < word.size())
        return refuse(
            QStringLiteral("%1 after %2 does not belong to it").arg(quoted(word.mid(length)), quoted(word.left(length))));
    QString plain = word.toString();
    plain.replace(QLatin1Char(','), QLatin1Char('.')).replace(QChar(0x2212), QLatin1Char('-'));
    bool ok = false;
    const double value = plain.toDouble(&ok);
    if (!ok || !std::isfinite(value))
        return refuse(QStringLiteral("it is too large or too small to count with"));
    if (!std::isnormal(value)) { // 0 only where every figure is 0: a number too small for a double is not nothing
        const qsizetype e = plain.indexOf(QLatin1Char('e'), 0, Qt::CaseInsensitive);
        const QString figures = e < 0 ? plain : plain.left(e);
        if (std::any_of(figures.begin(), figures.end(), [](QChar c) { return c >= u'1' && c <= u'9'; }))
            return refuse(QStringLiteral("it is too large or too small to count with"));
        return 0.0; // and never -0, which would print as another number
    }
    return value;
}

QString numberText(double value)
{
    if (!std::isfinite(value))
        return {};
    if (value == 0.0)
        return QStringLiteral("0");
    // Plain figures where a person can take them in, powers of ten beyond.
    const double size = std::abs(value);
    return QString::number(value, size >= 1e-4 && size < 1e15 ? 'f' : 'g', QLocale::FloatingPointShortest);
}

double shiftDecimal(double value, int places)
{
    if (places == 0 || value == 0.0 || !std::isfinite(value))
        return value;
    const QByteArray figures = QByteArray::number(value, 'e', QLocale::FloatingPointShortest);
    const qsizetype e = figures.indexOf('e');
    return (figures.left(e + 1) + QByteArray::number(figures.mid(e + 1).toInt() + places)).toDouble();
}

double withoutBinaryDust(double value, double scale)
{
    constexpr int figures = 14;
    if (value == 0.0 || scale == 0.0 || !std::isfinite(value) || !std::isfinite(scale))
        return value;
    const int decimals = figures - 1 - static_cast<int>(std::floor(std::log10(std::abs(scale))));
    if (decimals < 0)
        return QByteArray::number(value, 'g', figures).toDouble();
    const double rounded = QByteArray::number(value, 'f', decimals).toDouble();
    return rounded == 0.0 ? 0.0 : rounded;
}

} // namespace ts
