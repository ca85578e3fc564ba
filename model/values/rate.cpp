#include "model/values/money.h"
#include "model/values/quoted.h"

namespace ts {

namespace {
constexpr int percentDecimals = 4; // a millionth is 0.0001 %
constexpr qint64 perPercent = 10'000;
constexpr qsizetype mostWhole = 6; // beyond a million per cent nobody means it
} // namespace

Expected<Rate> Rate::parse(QStringView text)
{
    const auto refuse = [&](const QString &wrong) {
        return Trouble{quoted(text) + QStringLiteral(" is no percentage"), wrong, QStringLiteral("write it as 12.8 %")};
    };
    QStringView rest = text.trimmed();
    if (rest.isEmpty())
        return Trouble{QStringLiteral("No percentage was given"), {}, QStringLiteral("write it as 12.8 %")};
    if (rest.endsWith(u'%'))
        rest = rest.chopped(1).trimmed();
    bool negative = false;
    if (!rest.isEmpty() && (rest.front() == u'-' || rest.front() == u'+' || rest.front() == u'\u2212')) {
        negative = rest.front() != u'+';
        rest = rest.mid(1);
    }
    qint64 figures = 0;
    qsizetype whole = 0;
    int decimals = -1; // -1 until the decimal sign was seen
    for (qsizetype i = 0; i < rest.size(); ++i) {
        const QChar each = rest[i];
        if ((each == u'.' || each == u',') && decimals < 0) {
            decimals = 0;
        } else if (each >= u'0' && each <= u'9') {
            if (decimals < 0 ? ++whole > mostWhole : ++decimals > percentDecimals)
                return refuse(decimals < 0 ? QStringLiteral("it is far too large")
                                           : QStringLiteral("it has more than four decimals"));
            figures = figures * 10 + (each.unicode() - u'0');
        } else {
            return refuse(quoted(rest.mid(i)) + QStringLiteral(" does not belong in a number"));
        }
    }
    if (whole == 0 || decimals == 0)
        return refuse(QStringLiteral("a figure is missing"));
    for (int have = std::max(decimals, 0); have < percentDecimals; ++have)
        figures *= 10;
    return Rate(negative ? -figures : figures);
}

QString Rate::percent() const
{
    const quint64 size = m_millionths < 0 ? 0 - static_cast<quint64>(m_millionths) : static_cast<quint64>(m_millionths);
    QString fraction = QString::number(size % perPercent).rightJustified(percentDecimals, QLatin1Char('0'));
    while (fraction.endsWith(QLatin1Char('0')))
        fraction.chop(1);
    QString text = QString::number(size / perPercent);
    if (!fraction.isEmpty())
        text += QLatin1Char('.') + fraction;
    return m_millionths < 0 ? QLatin1Char('-') + text : text;
}

} // namespace ts
