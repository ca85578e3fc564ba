#include "model/sums/reckon_faults.h"

#include "model/sums/bayes.h"
#include "model/sums/check_order.h"
#include "model/values/quantity.h"

#include <QJsonArray>

namespace ts {

namespace {

/// A chance from 0 to 1, as such or in percent.
Expected<double> chanceOf(const SumInput &given, const QString &key)
{
    QString text = given.value(key).trimmed();
    const bool percent = text.endsWith(QLatin1Char('%'));
    if (percent)
        text = text.chopped(1).trimmed();
    const auto number = parseNumber(text);
    const double chance = number ? *number / (percent ? 100 : 1) : -1;
    if (!(chance >= 0 && chance <= 1))
        return Trouble{QStringLiteral("Cannot reckon bayes"), QStringLiteral("%1 is no chance from 0 to 1").arg(key),
                       QStringLiteral("write it as 0.05 or 5 %")};
    return chance;
}

Expected<SumOutput> bayesOf(const SumInput &given)
{
    const auto prior = chanceOf(given, QStringLiteral("prior"));
    const auto abnormalIf = chanceOf(given, QStringLiteral("abnormal_if"));
    const auto abnormalIfNot = chanceOf(given, QStringLiteral("abnormal_if_not"));
    for (const auto *each : {&prior, &abnormalIf, &abnormalIfNot})
        if (!*each)
            return each->trouble();
    const QString outcome = given.value(QStringLiteral("outcome")).trimmed().toLower();
    const bool abnormal = outcome == QLatin1String("abnormal");
    if (!abnormal && outcome != QLatin1String("normal"))
        return Trouble{QStringLiteral("Cannot reckon bayes"), QStringLiteral("\"%1\" is no outcome").arg(outcome),
                       QStringLiteral("choose abnormal or normal")};
    const auto likelihood = [abnormal](double chance) { return abnormal ? chance : 1 - chance; };
    const QList<double> after = bayes({*prior, 1 - *prior}, {likelihood(*abnormalIf), likelihood(*abnormalIfNot)});
    if (after.isEmpty())
        return Trouble{
            QStringLiteral("Cannot reckon bayes"), QStringLiteral("that outcome cannot happen with these chances"), {}};
    return SumOutput{{QStringLiteral("posterior"), after.first()}};
}

Expected<SumOutput> checkOrderOf(const SumInput &given)
{
    QList<SuspectCost> suspects;
    for (const QString &piece : given.value(QStringLiteral("causes")).split(QLatin1Char(','))) {
        const QStringList pair = piece.split(QLatin1Char(':'));
        const auto weight = parseNumber(pair.value(0).trimmed());
        const auto minutes = parseNumber(pair.value(1).trimmed());
        if (pair.size() != 2 || !weight || !minutes)
            return Trouble{QStringLiteral("Cannot reckon check-order"),
                           QStringLiteral("\"%1\" is no weight and minutes").arg(piece.trimmed()),
                           QStringLiteral("write causes as weight:minutes with decimal points, comma-separated: 0.5:10,0.3:2")};
        suspects << SuspectCost{*weight, *minutes};
    }
    const auto best = checkOrder(suspects);
    if (!best)
        return best.trouble();
    QJsonArray order;
    for (const qsizetype place : best->order)
        order << place + 1;
    return SumOutput{{QStringLiteral("order"), order}, {QStringLiteral("expected_minutes"), best->expectedMinutes}};
}

} // namespace

Sum bayesSum()
{
    const QString chance = QStringLiteral("a chance, 0 to 1 or in percent");
    return {QStringLiteral("bayes"),
            QStringLiteral("how likely a cause is after a check"),
            {{QStringLiteral("prior"), chance + QStringLiteral(": the cause before the check")},
             {QStringLiteral("abnormal_if"), chance + QStringLiteral(": abnormal if it is the cause")},
             {QStringLiteral("abnormal_if_not"), chance + QStringLiteral(": abnormal if it is not")},
             {QStringLiteral("outcome"),
              QStringLiteral("how it came out"),
              true,
              {},
              {},
              {QStringLiteral("abnormal"), QStringLiteral("normal")}}},
            {{QStringLiteral("posterior"), QStringLiteral("the cause after the check, 0 to 1")}},
            QStringLiteral("Bayes' rule"),
            bayesOf,
            QStringLiteral("after = before × P(outcome | cause) / P(outcome)")};
}

Sum checkOrderSum()
{
    return {
        QStringLiteral("check-order"),
        QStringLiteral("in which order to check suspects of which one is guilty, in the fewest minutes"),
        {{QStringLiteral("causes"), QStringLiteral("weight:minutes, comma-separated; minutes of the check that settles it")}},
        {{QStringLiteral("order"), QStringLiteral("places in the list, from 1")},
         {QStringLiteral("expected_minutes"), QStringLiteral("minutes until the guilty one is settled, the last paid for too")}},
        QStringLiteral("minutes over weight, ascending: Kalagnanam and Henrion, arXiv 1304.2362"),
        checkOrderOf,
        QStringLiteral("E = Σ p(i) × (minutes up to and with i), least where minutes / p ascends")};
}

} // namespace ts
