#include "model/jot/price.h"

#include <QRegularExpression>

namespace ts {

namespace {

bool isSign(QChar c)
{
    return c.category() == QChar::Symbol_Currency;
}

/// A currency by itself: a sign, or a code in capitals. In small letters only codes that are no other word ("all" is a currency
/// too).
bool isCurrency(const QString &piece, const Currency &bench)
{
    if (piece.isEmpty() || piece.size() > 3)
        return false;
    if (piece.size() == 1 && !isSign(piece.at(0)))
        return false;
    const auto currency = Currency::parse(piece);
    if (!currency)
        return false;
    static const QStringList plain{QStringLiteral("GBP"), QStringLiteral("EUR"), QStringLiteral("USD"), QStringLiteral("CHF")};
    return piece == piece.toUpper() || plain.contains(currency->code()) || *currency == bench;
}

bool isNumber(const QString &piece)
{
    static const QRegularExpression form(QStringLiteral("^(\\d{1,12}([.,]\\d{1,4})?|\\d{1,3}(,\\d{3})+(\\.\\d{1,4})?)$"));
    return piece.size() <= 24 && form.match(piece).hasMatch();
}

bool hasTwoDecimals(const QString &piece)
{
    static const QRegularExpression form(QStringLiteral("^[\\d,]{1,16}[.,]\\d\\d$"));
    return piece.size() <= 24 && form.match(piece).hasMatch() && isNumber(piece);
}

/// "£2.50", "2.50€", "2,50EUR".
bool isMarkedNumber(const QString &piece)
{
    if (piece.size() < 2 || piece.size() > 24)
        return false;
    if (isSign(piece.front()))
        return isNumber(piece.mid(1));
    if (isSign(piece.back()))
        return isNumber(piece.chopped(1));
    const QString code = piece.right(3);
    return piece.size() > 3 && code == code.toUpper() && isNumber(piece.chopped(3)) && Currency::parse(code).ok();
}

bool isTimes(const QString &piece)
{
    return piece == QLatin1String("x") || piece == QLatin1String("X") || piece == QStringLiteral("×") ||
           piece == QLatin1String("*");
}

bool isAt(const QString &piece)
{
    const QString word = piece.toLower();
    return word == QLatin1String("at") || word == QLatin1String("@");
}

bool isFor(const QString &piece)
{
    return piece.compare(QLatin1String("for"), Qt::CaseInsensitive) == 0;
}

std::optional<Money> moneyOf(const QString &text, const Currency &bench)
{
    const auto money = Money::parse(text, bench);
    return money ? std::optional(*money) : std::nullopt;
}

} // namespace

std::optional<Taken<Money>> takePrice(const QString &text, const Currency &bench, Amounts amounts)
{
    QStringList all = pieces(text);
    if (!all.isEmpty() && (all.last() == QLatin1String("each") || all.last() == QLatin1String("ea")))
        all.removeLast();
    const qsizetype n = all.size();
    if (n == 0)
        return std::nullopt;
    const QString last = all.at(n - 1);
    const QString before = n > 1 ? all.at(n - 2) : QString();
    std::optional<Money> amount;
    qsizetype used = 1;
    if (n > 1 && isCurrency(last, bench) && isNumber(before)) {
        amount = moneyOf(before + QLatin1Char(' ') + last, bench);
        used = 2;
    } else if (n > 1 && isCurrency(before, bench) && isNumber(last)) {
        amount = moneyOf(before + QLatin1Char(' ') + last, bench);
        used = 2;
    } else if (isMarkedNumber(last)) {
        amount = moneyOf(last, bench);
    } else if (isNumber(last) && !isTimes(before) && (amounts == Amounts::Any || hasTwoDecimals(last) || isAt(before))) {
        amount = moneyOf(last, bench);
    }
    if (!amount)
        return std::nullopt;
    all = all.first(n - used);
    if (all.size() > 1 && (isAt(all.last()) || isFor(all.last())))
        all.removeLast();
    if (all.isEmpty() && amounts == Amounts::Marked)
        return std::nullopt;
    return Taken<Money>{*amount, all.join(QLatin1Char(' '))};
}

std::optional<Taken<Money>> takeLeadingPrice(const QString &text, const Currency &bench, Amounts amounts)
{
    QStringList all = pieces(text);
    for (const qsizetype used : {qsizetype(2), qsizetype(1)}) {
        if (all.size() < used)
            continue;
        const auto taken = takePrice(all.first(used).join(QLatin1Char(' ')), bench, Amounts::Any);
        if (!taken || !taken->rest.isEmpty())
            continue;
        if (amounts == Amounts::Marked && used == 1 && !isMarkedNumber(all.first()) && !hasTwoDecimals(all.first()))
            continue;
        all = all.mid(used);
        if (all.size() > 1 && (isFor(all.first()) || all.first() == QLatin1String("of")))
            all.removeFirst();
        return Taken<Money>{taken->value, all.join(QLatin1Char(' '))};
    }
    return std::nullopt;
}

} // namespace ts
