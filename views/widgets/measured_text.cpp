#include "views/widgets/measured_text.h"

#include "model/values/wanted.h"
#include "views/widgets/locale_text.h"

#include <QCoreApplication>

#include <cmath>

namespace ts::shown {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts::shown", text);
}

QString plain(const Quantity &amount)
{
    return withMeasure(amount.value(), amount.measure());
}

// Figures as typed stand in the locale's own form; the words around them are those that a limit is read from.
QString localeFigures(const QString &typed)
{
    const QString sign = QLocale().decimalPoint();
    return sign == QLatin1String(".") || typed.contains(QLatin1String("..")) ? typed : QString(typed).replace(QLatin1Char('.'), sign);
}

} // namespace

double rounded(double value, int figures)
{
    if (value == 0 || !std::isfinite(value))
        return 0;
    const double size = std::pow(10.0, figures - 1 - std::floor(std::log10(std::abs(value))));
    return std::round(value * size) / size;
}

QString withMeasure(double value, const Measure &measure)
{
    return measure.isNone() ? number(value) : number(value) + QLatin1Char(' ') + measure.text();
}

QString quantity(const Quantity &quantity)
{
    switch (quantity.sense()) {
    case Sense::About:
        return tr("about %1").arg(plain(quantity));
    case Sense::Below:
        return QStringLiteral("< ") + plain(quantity);
    case Sense::Above:
        return QStringLiteral("> ") + plain(quantity);
    case Sense::OverRange:
        return tr("over range");
    case Sense::Plain:
        break;
    }
    return plain(quantity);
}

QString limit(const Limit &limit)
{
    if (limit.isNone())
        return {};
    const auto wanted = readWanted(limit.text(), {});
    if (!wanted)
        return limit.text();
    return spelled(*wanted, {number, plain, tr("%1 to %2"), tr("up to %1"), tr("at least %1")});
}

QString verdict(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Within:
        return tr("within");
    case Verdict::Outside:
        return tr("outside");
    case Verdict::TooCloseToCall:
        return tr("too close to call");
    case Verdict::NoLimit:
        break;
    }
    return tr("no limit");
}

QString phase(Phase phase)
{
    switch (phase) {
    case Phase::AsFound:
        return tr("as found");
    case Phase::DuringWork:
        return tr("during work");
    case Phase::AsItLeaves:
        break;
    }
    return tr("as it leaves");
}

QString spread(double uncertainty95, const Measure &measure)
{
    return QStringLiteral("± ") + withMeasure(rounded(uncertainty95, 2), measure);
}

QString toType(const Quantity &quantity)
{
    return quantity.sense() == Sense::OverRange ? QStringLiteral("OL") : localeFigures(quantity.text());
}

QString toType(const Limit &limit)
{
    return localeFigures(limit.text());
}

QString prefixed(double value, const QString &unit)
{
    static const QStringList taking{QStringLiteral("V"), QStringLiteral("A"), QStringLiteral("W"), QStringLiteral("Ω"), QStringLiteral("F"), QStringLiteral("H"), QStringLiteral("Hz"), QStringLiteral("J")};
    static const QList<std::pair<int, QString>> steps{{-12, QStringLiteral("p")}, {-9, QStringLiteral("n")}, {-6, QStringLiteral("µ")}, {-3, QStringLiteral("m")},
                                                      {0, QString()},             {3, QStringLiteral("k")},  {6, QStringLiteral("M")}};
    if (value == 0 || !taking.contains(unit))
        return QLocale().toString(value, 'g', 4) + (unit.isEmpty() ? QString() : QChar(0x00a0) + unit);
    const double magnitude = std::abs(value) * (1 + 1e-12);
    auto step = steps.first();
    for (const auto &each : steps)
        if (magnitude >= std::pow(10.0, each.first))
            step = each;
    return QLocale().toString(value / std::pow(10.0, step.first), 'g', 4) + QChar(0x00a0) + step.second + unit;
}

} // namespace ts::shown
