#include "views/sums/sum_words.h"

#include "views/widgets/measured_text.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonObject>
#include <QLocale>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

} // namespace

QString keyTitle(const QString &name)
{
    QString text = name;
    text.replace(QLatin1Char('_'), QLatin1Char(' ')).replace(QLatin1Char('-'), QLatin1Char(' '));
    static const QHash<QString, QString> units{{QStringLiteral("db"), QStringLiteral("dB")}, {QStringLiteral("hz"), QStringLiteral("Hz")}, {QStringLiteral("us"), QStringLiteral("µs")}, {QStringLiteral("percent"), QStringLiteral("%")}};
    QStringList words = text.split(QLatin1Char(' '));
    words.last() = units.value(words.last(), words.last());
    text = words.join(QLatin1Char(' '));
    if (!text.isEmpty() && !text.startsWith(QLatin1String("dB")))
        text[0] = text.at(0).toUpper();
    return text;
}

QString sumTitle(const Sum &sum)
{
    return keyTitle(sum.name);
}

QString sumGroup(const QString &name)
{
    static const QHash<QString, QStringList> groups{
        {tr("Markings and values"), {QStringLiteral("preferred-value"), QStringLiteral("preferred-pair"), QStringLiteral("colour-code"), QStringLiteral("letter-code"), QStringLiteral("digit-code")}},
        {tr("Fuses and supply"), {QStringLiteral("fuse"), QStringLiteral("fuse-marking"), QStringLiteral("discharge"), QStringLiteral("ripple"), QStringLiteral("esr"), QStringLiteral("series-lamp"), QStringLiteral("leakage")}},
        {tr("Currents and loads"), {QStringLiteral("idle-current"), QStringLiteral("load-power"), QStringLiteral("dropper"), QStringLiteral("damping")}},
        {tr("Levels and curves"), {QStringLiteral("level"), QStringLiteral("replay-curve"), QStringLiteral("weighting")}},
        {tr("Speed and belts"), {QStringLiteral("strobe"), QStringLiteral("speed-error"), QStringLiteral("mains-speed"), QStringLiteral("belt"), QStringLiteral("tape-length")}},
        {tr("Readings"), {QStringLiteral("spread"), QStringLiteral("line-fit"), QStringLiteral("quantile"), QStringLiteral("uncertainty"), QStringLiteral("budget"), QStringLiteral("derived"), QStringLiteral("acceptance-risk")}},
        {tr("Money"), {QStringLiteral("three-point"), QStringLiteral("margin-tax"), QStringLiteral("break-even"), QStringLiteral("bid"), QStringLiteral("apportion")}},
        {tr("Fault-finding"), {QStringLiteral("bayes"), QStringLiteral("check-order")}}};
    for (auto it = groups.begin(); it != groups.end(); ++it)
        if (it->contains(name))
            return it.key();
    return tr("More");
}

QString sumValue(const SumKey &key, const QJsonValue &value)
{
    if (value.isNull() || value.isUndefined())
        return tr("none");
    if (value.isBool())
        return value.toBool() ? tr("yes") : tr("no");
    if (value.isDouble()) {
        const bool percent = key.unit.isEmpty() && key.name.endsWith(QLatin1String("percent"));
        return percent ? QLocale().toString(value.toDouble(), 'g', 4) + QChar(0x00a0) + QLatin1Char('%') : shown::prefixed(value.toDouble(), key.unit);
    }
    if (value.isString())
        return value.toString();
    const bool list = value.isArray();
    QStringList parts;
    if (list) {
        for (const QJsonValue &each : value.toArray())
            parts << sumValue(key, each);
    } else {
        const QJsonObject object = value.toObject();
        for (auto it = object.begin(); it != object.end(); ++it)
            parts << it.key() + QLatin1Char(' ') + sumValue({.name = it.key(), .meaning = {}}, it.value());
    }
    const bool nested = list && !value.toArray().isEmpty() && (value.toArray().first().isArray() || value.toArray().first().isObject());
    return parts.isEmpty() ? tr("none") : parts.join(nested ? QStringLiteral("; ") : QStringLiteral(", "));
}

QString sumLine(const Sum &sum, const SumInput &given, const SumOutput &out)
{
    QStringList asked;
    for (const SumKey &key : sum.keys)
        if (const QString value = given.value(key.name).simplified(); !value.isEmpty())
            asked << keyTitle(key.name).toLower() + QLatin1Char(' ') + value;
    QStringList came;
    for (const auto &[name, value] : out) {
        if (value.isNull() || (value.isString() && value.toString().isEmpty()))
            continue;
        SumKey key{.name = name, .meaning = {}};
        for (const SumKey &each : sum.gives)
            if (each.name == name)
                key = each;
        came << keyTitle(name).toLower() + QLatin1Char(' ') + sumValue(key, value);
    }
    QString line = QStringLiteral("%1: %2: %3").arg(sumTitle(sum), asked.join(QStringLiteral(", ")), came.join(QStringLiteral(", ")));
    if (!sum.formula.isEmpty())
        line += QStringLiteral(" (%1)").arg(sum.formula);
    return line;
}

} // namespace ts
