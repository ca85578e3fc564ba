#include "views/overview/overview_pictures.h"

#include "views/widgets/locale_text.h"
#include "views/widgets/names.h"
#include "views/widgets/stage_names.h"

#include <QCoreApplication>

#include <cmath>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

double whole(const Money &money, const Currency &currency)
{
    return static_cast<double>(money.minor()) / std::pow(10.0, currency.decimals());
}

QString categoryText(const QString &key)
{
    return categoryName(fromWord<Category>(key).value_or(Category::Other));
}

QString daysText(const std::optional<double> &days)
{
    return days ? QCoreApplication::translate("ts", "%n day(s)", nullptr, static_cast<int>(std::lround(*days))) : QString();
}

QString moneyText(const std::optional<Money> &money)
{
    return money ? shown::money(*money) : QString();
}

QString ageText(const QList<OverviewRow> &ages, qsizetype at)
{
    const int from = at == 0 ? 0 : ages.at(at - 1).key.toInt() + 1;
    return ages.at(at).key.isEmpty() ? tr("over %1 days").arg(from - 1) : tr("%1 to %2 days").arg(from).arg(ages.at(at).key);
}

OverviewPicture tiedByStage(const Overviews &all, const Currency &currency)
{
    OverviewPicture made{.title = tr("Tied up"), .says = tr("Money spent on units that are not closed, by stage."), .measure = currency.code(), .names = {}, .sets = {{tr("Spent"), {}}},
                         .heads = {tr("Stage"), tr("Units"), tr("Spent"), tr("Hours"), tr("Longest there")}, .rows = {}, .empty = {}};
    for (const OverviewRow &row : all.stages) {
        const QString name = shown::stage(fromWord<Stage>(row.key).value_or(Stage::Shelved));
        made.names << name;
        made.sets[0].second << whole(row.money, currency);
        made.rows << QStringList{name, shown::count(row.units), shown::money(row.money), shown::duration(row.minutes), daysText(row.days)};
    }
    return made;
}

OverviewPicture tiedByAge(const Overviews &all, const Currency &currency)
{
    OverviewPicture made{.title = tr("Age"), .says = tr("Money spent on units that are not closed, by how long ago they were taken in."), .measure = currency.code(), .names = {}, .sets = {{tr("Spent"), {}}}, .upright = true,
                         .heads = {tr("Taken in"), tr("Units"), tr("Spent"), tr("Hours")}, .rows = {}, .empty = {}};
    for (qsizetype i = 0; i < all.ages.size(); ++i) {
        const OverviewRow &row = all.ages.at(i);
        made.names << ageText(all.ages, i);
        made.sets[0].second << whole(row.money, currency);
        made.rows << QStringList{made.names.last(), shown::count(row.units), shown::money(row.money), shown::duration(row.minutes)};
    }
    return made;
}

QString nothingSold()
{
    return tr("Nothing was sold yet: this begins with the first unit that is closed as sold.");
}

OverviewPicture perHour(const Overviews &all, const Currency &currency)
{
    OverviewPicture made{.title = tr("Earned per hour"), .says = tr("What sold units left, less everything spent on them, for each hour taken."), .measure = currency.code(), .names = {}, .sets = {{tr("Per hour"), {}}},
                         .heads = {tr("Category"), tr("Sold"), tr("Earned"), tr("Hours"), tr("Per hour")}, .rows = {}, .empty = nothingSold()};
    for (const OverviewRow &row : all.categories) {
        made.names << categoryText(row.key);
        made.sets[0].second << (row.perHour ? whole(*row.perHour, currency) : 0);
        made.rows << QStringList{made.names.last(), shown::count(row.units), shown::money(row.money), shown::duration(row.minutes), moneyText(row.perHour)};
    }
    return made;
}

OverviewPicture planned(const Overviews &all)
{
    OverviewPicture made{.title = tr("Hours"), .says = tr("Hours planned against hours taken, on sold units that had a plan."), .measure = tr("hours"), .names = {}, .sets = {{tr("Planned"), {}}, {tr("Taken"), {}}},
                         .heads = {tr("Category"), tr("Planned"), tr("Taken"), tr("Taken for each planned")}, .rows = {}, .empty = tr("No sold unit had hours planned yet.")};
    for (const OverviewRow &row : all.categories) {
        if (row.plannedMinutes == 0)
            continue;
        made.names << categoryText(row.key);
        made.sets[0].second << row.plannedMinutes / 60.0;
        made.sets[1].second << row.minutesOfPlanned / 60.0;
        made.rows << QStringList{made.names.last(), shown::duration(row.plannedMinutes), shown::duration(row.minutesOfPlanned),
                                 QLocale().toString(static_cast<double>(row.minutesOfPlanned) / row.plannedMinutes, 'f', 2)};
    }
    return made;
}

OverviewPicture byCause(const Overviews &all)
{
    OverviewPicture made{.title = tr("Causes"), .says = tr("Causes that were confirmed, by on how many units."), .measure = tr("units"), .names = {}, .sets = {{tr("Units"), {}}}, .counts = true, .heads = {tr("Cause"), tr("Units")},
                         .rows = {}, .empty = tr("No cause was confirmed yet.")};
    for (const OverviewRow &row : all.causes) {
        made.names << row.key;
        made.sets[0].second << row.units;
        made.rows << QStringList{row.key, shown::count(row.units)};
    }
    return made;
}

OverviewPicture days(const Overviews &all)
{
    OverviewPicture made{.title = tr("Days to sale"), .says = tr("Days from purchase to sale, the middle one of each category."), .measure = tr("days"), .names = {}, .sets = {{tr("Days"), {}}},
                         .heads = {tr("Category"), tr("Sold"), tr("Middle")}, .rows = {}, .empty = nothingSold()};
    for (const OverviewRow &row : all.categories) {
        if (!row.days)
            continue;
        made.names << categoryText(row.key);
        made.sets[0].second << *row.days;
        made.rows << QStringList{made.names.last(), shown::count(row.units), daysText(row.days)};
    }
    return made;
}

OverviewPicture byMonth(const Overviews &all, const Currency &currency)
{
    OverviewPicture made{.title = tr("Profit by month"), .says = tr("What sold units left, less everything spent on them, in the month of their sale. Your hours are not in it."), .measure = currency.code(), .names = {},
                         .sets = {{tr("Earned"), {}}}, .upright = true, .heads = {tr("Month"), tr("Sold"), tr("Earned"), tr("Hours"), tr("Per hour")}, .rows = {}, .empty = nothingSold()};
    for (const OverviewRow &row : all.months) {
        made.names << QLocale().toString(QDate::fromString(row.key + QStringLiteral("-01"), Qt::ISODate), QStringLiteral("MMM yy"));
        made.sets[0].second << whole(row.money, currency);
        made.rows << QStringList{made.names.last(), shown::count(row.units), shown::money(row.money), shown::duration(row.minutes), moneyText(row.perHour)};
    }
    return made;
}

} // namespace

QList<OverviewPicture> overviewPictures(const Overviews &overviews, const Currency &currency)
{
    return {tiedByStage(overviews, currency), tiedByAge(overviews, currency), perHour(overviews, currency), planned(overviews), byCause(overviews), days(overviews), byMonth(overviews, currency)};
}

} // namespace ts
