#include "model/values/money.h"

#include "model/values/number.h"
#include "model/values/quoted.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace ts {

namespace {

constexpr qint64 mostMinor = 9'000'000'000'000'000; // stays exact even in a program that reads the export as a double

// Products of two 64-bit numbers; gcc and clang have it on every 64-bit machine.
__extension__ using Wide = __int128;

quint64 sizeOf(qint64 value)
{
    return value < 0 ? 0 - static_cast<quint64>(value) : static_cast<quint64>(value);
}

bool isGroupMark(QChar c)
{
    return c == u' ' || c == u'\u00a0' || c == u'\u2009' || c == u'\u202f' || c == u'\'' || c == u'\u2019';
}

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

QString threeDecimalsAreAmbiguous(QStringView figures, QStringView whole, QStringView fraction)
{
    return QStringLiteral("in %1 the mark may part thousands or decimals; write %2%3 or %2.%4")
        .arg(quoted(figures), whole.toString(), fraction.toString(), fraction.left(2).toString());
}

/// The figures of an amount, told apart from their grouping: whole part and decimals, digits only.
struct Figures {
    QString whole;
    QString fraction;
};

Expected<Figures> partFigures(QStringView text, int decimals)
{
    const auto refuse = [](const QString &wrong) { return Trouble{{}, wrong, {}}; };
    qsizetype decimalAt = -1;
    QChar groupMark;
    const qsizetype lastPoint = text.lastIndexOf(u'.');
    const qsizetype lastComma = text.lastIndexOf(u',');
    if (lastPoint >= 0 && lastComma >= 0) { // both: the later one parts the decimals
        decimalAt = std::max(lastPoint, lastComma);
        groupMark = text[std::min(lastPoint, lastComma)];
    } else if (const qsizetype last = std::max(lastPoint, lastComma); last >= 0) {
        const QChar mark = text[last];
        if (text.count(mark) > 1 || (decimals == 0 && text.size() - last == 4)) {
            groupMark = mark; // 1,234,567: one mark twice cannot be decimal; nor can any in a currency without decimals
        } else {
            decimalAt = last;
            if (decimals == 2 && text.size() - last == 4 && last <= 3 && text.left(last) != u"0" &&
                std::all_of(text.begin(), text.end(), [mark](QChar c) { return isDigit(c) || c == mark; }))
                return refuse(threeDecimalsAreAmbiguous(text, text.left(last), text.mid(last + 1)));
        }
    }
    const QStringView wholePart = decimalAt < 0 ? text : text.left(decimalAt);
    const QStringView fraction = decimalAt < 0 ? QStringView() : text.mid(decimalAt + 1);
    Figures figures;
    qsizetype run = 0;
    bool grouped = false;
    for (const QChar c : wholePart) {
        if (isDigit(c)) {
            figures.whole += c;
            ++run;
        } else if (c == groupMark || isGroupMark(c)) {
            if (groupMark.isNull())
                groupMark = c;
            if (c != groupMark || run == 0 || run > 3 || (grouped && run != 3))
                return refuse(QStringLiteral("the thousands are not parted in threes"));
            grouped = true;
            run = 0;
        } else {
            return refuse(quoted(QStringView(&c, 1)) + QStringLiteral(" does not belong in a sum"));
        }
    }
    if (grouped && run != 3)
        return refuse(QStringLiteral("the thousands are not parted in threes"));
    for (const QChar c : fraction) {
        if (!isDigit(c))
            return refuse(quoted(QStringView(&c, 1)) + QStringLiteral(" does not belong in a sum"));
        figures.fraction += c;
    }
    if ((figures.whole.isEmpty() && figures.fraction.isEmpty()) || (decimalAt >= 0 && fraction.isEmpty()))
        return refuse(QStringLiteral("a figure is missing"));
    return figures;
}

/// Currencies whose people write the bare dollar sign for their own money.
bool isDollar(const Currency &currency)
{
    static constexpr std::array codes{"USD", "AUD", "CAD", "NZD", "HKD", "SGD", "TWD", "BBD", "BMD", "BND", "BSD",
                                      "BZD", "FJD", "GYD", "JMD", "KYD", "LRD", "NAD", "SBD", "SRD", "TTD", "XCD"};
    return std::any_of(codes.begin(), codes.end(), [&](const char *code) { return currency.code() == QLatin1String(code); });
}

} // namespace

Expected<Money> Money::parse(QStringView text, const Currency &fallback)
{
    const auto refuse = [&](const QString &wrong, const QString &todo = {}) {
        return Trouble{quoted(text) + QStringLiteral(" is no sum of money"), wrong, todo};
    };
    QStringView rest = text.trimmed();
    if (rest.isEmpty())
        return Trouble{QStringLiteral("No sum of money was given"), {}, {}};

    bool negative = false;
    bool signSeen = false;
    const auto takeSign = [&] {
        if (!rest.isEmpty() && !signSeen && (rest.front() == u'-' || rest.front() == u'+' || rest.front() == u'\u2212')) {
            signSeen = true;
            negative = rest.front() != u'+';
            rest = rest.mid(1).trimmed();
        }
    };
    const auto isFigure = [](QChar c) { return isDigit(c) || c == u'.' || c == u','; };
    takeSign();
    qsizetype start = 0;
    while (start < rest.size() && !isFigure(rest[start]) && rest[start] != u'-' && rest[start] != u'+' &&
           rest[start] != u'\u2212')
        ++start;
    const QStringView before = rest.left(start).trimmed();
    rest = rest.mid(start);
    takeSign();
    qsizetype end = rest.size();
    while (end > 0 && !isFigure(rest[end - 1]))
        --end;
    const QStringView after = rest.mid(end).trimmed();
    rest = rest.left(end);
    if (rest.isEmpty())
        return refuse(QStringLiteral("it has no figures"));

    Currency currency = fallback;
    bool named = false;
    for (const QStringView word : {before, after}) {
        if (word.isEmpty())
            continue;
        auto read = Currency::parse(word);
        if (!read)
            return refuse(quoted(word) + QStringLiteral(" is no currency that is known here"));
        if (word == u"$" && isDollar(fallback)) // the sign is shared; where the books are in dollars it means those
            read = fallback;
        if (named && !(*read == currency))
            return refuse(QStringLiteral("it names two currencies, %1 and %2").arg(currency.code(), read->code()));
        currency = *read;
        named = true;
    }

    const auto figures = partFigures(rest, currency.decimals());
    if (!figures)
        return refuse(figures.trouble().wrong);
    QString fraction = figures->fraction;
    while (fraction.size() > currency.decimals() && fraction.endsWith(QLatin1Char('0')))
        fraction.chop(1);
    if (fraction.size() > currency.decimals())
        return refuse(currency.decimals() == 0 ? QStringLiteral("%1 has no smaller part").arg(currency.code())
                                               : QStringLiteral("it has more than %1 decimals").arg(currency.decimals()));
    QString digits = figures->whole + fraction.leftJustified(currency.decimals(), QLatin1Char('0'));
    while (digits.size() > 1 && digits.startsWith(QLatin1Char('0')))
        digits.remove(0, 1);
    bool fits = digits.size() <= 16;
    const qint64 minor = fits ? digits.toLongLong(&fits) : 0;
    if (!fits || minor > mostMinor)
        return refuse(QStringLiteral("it is too large to keep to the penny"));
    return Money(negative ? -minor : minor, currency);
}

QString Money::decimal() const
{
    const int decimals = m_currency.decimals();
    QString text = QString::number(sizeOf(m_minor)).rightJustified(decimals + 1, QLatin1Char('0'));
    if (decimals > 0)
        text.insert(text.size() - decimals, QLatin1Char('.'));
    return m_minor < 0 ? QLatin1Char('-') + text : text;
}

QString Money::display() const
{
    const QString amount = decimal();
    return m_minor < 0 ? QLatin1Char('-') + m_currency.sign() + amount.mid(1) : m_currency.sign() + amount;
}

Money Money::operator+(const Money &other) const
{
    Q_ASSERT(m_currency.isNull() || other.m_currency.isNull() || m_currency == other.m_currency);
    return {m_minor + other.m_minor, m_currency.isNull() ? other.m_currency : m_currency};
}

Money Money::operator-(const Money &other) const
{
    return *this + -other;
}

Money Money::scaled(qint64 numerator, qint64 denominator, Rounding rounding) const
{
    Q_ASSERT(denominator != 0);
    Wide product = static_cast<Wide>(m_minor) * numerator;
    Wide divisor = denominator;
    if (divisor < 0) {
        product = -product;
        divisor = -divisor;
    }
    // Rounded by size, so that a refund is the exact mirror of the payment: half up is away from zero, down towards it.
    const bool negative = product < 0;
    const Wide size = negative ? -product : product;
    Wide result = size / divisor;
    const Wide left = size % divisor;
    if ((rounding == Rounding::HalfUp && 2 * left >= divisor) || (rounding == Rounding::Up && left > 0))
        ++result;
    constexpr Wide most = std::numeric_limits<qint64>::max();
    Q_ASSERT(result <= most);
    result = std::min(result, most);
    return {static_cast<qint64>(negative ? -result : result), m_currency};
}

Expected<QList<Money>> Money::shared(const QList<double> &weights) const
{
    const auto refuse = [](const QString &wrong) { return Trouble{QStringLiteral("The sum cannot be shared out"), wrong, {}}; };
    if (weights.isEmpty())
        return refuse(QStringLiteral("there is nothing to share it among"));
    double largest = 0;
    for (const double weight : weights) {
        if (!std::isfinite(weight) || weight < 0)
            return refuse(QStringLiteral("a weight of %1 is not possible")
                              .arg(std::isfinite(weight) ? numberText(weight) : QStringLiteral("that size")));
        largest = std::max(largest, weight);
    }
    if (largest <= 0)
        return refuse(QStringLiteral("all weights are 0"));

    // Weights become whole numbers before anything is divided, so that 0.1, 0.2 and 0.3 share exactly as 1, 2 and 3 do
    // and remainders that are equal on paper are equal here. 15 digits below the largest are kept, all that a double carries.
    const int exponent = 14 - static_cast<int>(std::floor(std::log10(largest)));
    QList<qint64> parts;
    Wide sum = 0;
    for (const double weight : weights) {
        parts << std::llround(shiftDecimal(weight, exponent));
        sum += parts.back();
    }
    const quint64 total = sizeOf(m_minor);
    struct Remainder {
        Wide left;
        qsizetype index;
    };
    QList<qint64> shares;
    QList<Remainder> remainders;
    quint64 given = 0;
    for (qsizetype i = 0; i < parts.size(); ++i) {
        const Wide exact = static_cast<Wide>(total) * parts[i];
        const qint64 share = static_cast<qint64>(exact / sum);
        shares << share;
        given += static_cast<quint64>(share);
        remainders << Remainder{exact % sum, i};
    }
    std::stable_sort(remainders.begin(), remainders.end(),
                     [](const Remainder &a, const Remainder &b) { return a.left > b.left; });
    for (qsizetype i = 0; given < total; ++i, ++given)
        ++shares[remainders[i].index];

    QList<Money> result;
    for (const qint64 share : shares)
        result << Money(m_minor < 0 ? -share : share, m_currency);
    return result;
}

} // namespace ts
