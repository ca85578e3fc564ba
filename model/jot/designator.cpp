#include "model/jot/designator.h"

#include "model/jot/phrase.h"

#include <QSet>

namespace ts {

namespace {

QString withoutComma(QString piece)
{
    while (!piece.isEmpty() && QStringLiteral(",;:.").contains(piece.back()))
        piece.chop(1);
    return piece;
}

bool joins(const QString &piece)
{
    return piece == QLatin1String("and") || piece == QLatin1String("&") || piece == QLatin1String("+");
}

} // namespace

QString designator(const QString &piece)
{
    // The usual class letters of reference designations on boards: common practice, no single source.
    static const QSet<QString> letters{QStringLiteral("C"),  QStringLiteral("R"),   QStringLiteral("L"),  QStringLiteral("D"),
                                       QStringLiteral("Q"),  QStringLiteral("T"),   QStringLiteral("TR"), QStringLiteral("IC"),
                                       QStringLiteral("U"),  QStringLiteral("VR"),  QStringLiteral("RV"), QStringLiteral("ZD"),
                                       QStringLiteral("X"),  QStringLiteral("F"),   QStringLiteral("FS"), QStringLiteral("K"),
                                       QStringLiteral("RL"), QStringLiteral("RY"),  QStringLiteral("S"),  QStringLiteral("SW"),
                                       QStringLiteral("CN"), QStringLiteral("J"),   QStringLiteral("P"),  QStringLiteral("PL"),
                                       QStringLiteral("SK"), QStringLiteral("LED"), QStringLiteral("TH"), QStringLiteral("BR"),
                                       QStringLiteral("VT"), QStringLiteral("V"),   QStringLiteral("CR"), QStringLiteral("FR"),
                                       QStringLiteral("VC"), QStringLiteral("TC"),  QStringLiteral("PS"), QStringLiteral("LP")};
    const QString big = piece.toUpper();
    qsizetype at = 0;
    while (at < big.size() && at < 4 && big.at(at) >= QLatin1Char('A') && big.at(at) <= QLatin1Char('Z'))
        ++at;
    const qsizetype digits = big.size() - at;
    if (at == 0 || digits < 1 || digits > 4 || !letters.contains(big.left(at)))
        return {};
    for (qsizetype i = at; i < big.size(); ++i)
        if (big.at(i) < QLatin1Char('0') || big.at(i) > QLatin1Char('9'))
            return {};
    if (big.startsWith(QLatin1Char('X')) && digits == 1 && big.at(1) <= QLatin1Char('3'))
        return {};
    return big;
}

QString designatorsIn(const QString &text)
{
    QStringList all;
    for (const QString &piece : pieces(text))
        if (const QString name = designator(withoutComma(piece)); !name.isEmpty() && !all.contains(name) && all.size() < 20)
            all << name;
    return all.join(QStringLiteral(", "));
}

Placed takePlaces(const QString &text)
{
    const QStringList all = pieces(text);
    QStringList names;
    qsizetype at = 0;
    for (; at < all.size(); ++at) {
        const QString name = designator(withoutComma(all.at(at)));
        if (!name.isEmpty())
            names << name;
        else if (!(joins(all.at(at)) && !names.isEmpty() && at + 1 < all.size() &&
                   !designator(withoutComma(all.at(at + 1))).isEmpty()))
            break;
    }
    return {names.join(QStringLiteral(", ")), static_cast<int>(names.size()), all.mid(at).join(QLatin1Char(' '))};
}

} // namespace ts
