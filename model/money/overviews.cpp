#include "model/money/overviews.h"


#include <algorithm>
#include <array>

namespace ts {

namespace {

constexpr std::array ageSteps{30, 90, 180, 365};

/// The middle of the list: half of the sum of the two middle ones where it is even.
double middleOf(QList<double> values)
{
    std::sort(values.begin(), values.end());
    const qsizetype half = values.size() / 2;
    return values.size() % 2 == 1 ? values.at(half) : (values.at(half - 1) + values.at(half)) / 2;
}

void tiedUp(Overviews &made, const QList<OpenUnit> &open, const QDate &today)
{
    for (const auto &[stage, word] : Words<Stage>::list)
        if (stage != Stage::Closed)
            made.stages << OverviewRow{.key = QString::fromLatin1(word), .money = {}, .days = {}, .perHour = {}};
    for (const int step : ageSteps)
        made.ages << OverviewRow{.key = QString::number(step), .money = {}, .days = {}, .perHour = {}};
    made.ages << OverviewRow{.key = {}, .money = {}, .days = {}, .perHour = {}};
    for (const OpenUnit &unit : open) {
        const auto add = [&unit](OverviewRow &row) {
            ++row.units;
            row.money += unit.spent;
            row.minutes += unit.minutes;
        };
        for (OverviewRow &row : made.stages)
            if (row.key == toWord(unit.stage)) {
                add(row);
                if (unit.stageSince.isValid())
                    row.days = std::max(row.days.value_or(0), static_cast<double>(unit.stageSince.daysTo(today)));
            }
        const qint64 days = unit.since.isValid() ? unit.since.daysTo(today) : 0;
        const auto step = std::find_if(ageSteps.begin(), ageSteps.end(), [days](int each) { return days <= each; });
        add(made.ages[step - ageSteps.begin()]);
    }
}

void byCategory(Overviews &made, const QList<PastUnit> &sold)
{
    QMap<QString, OverviewRow> rows;
    QHash<QString, QList<double>> days;
    for (const PastUnit &unit : sold) {
        const QString key = toWord(unit.category);
        OverviewRow &row = rows[key];
        row.key = key;
        ++row.units;
        row.money += *unit.soldFor - unit.spent;
        row.minutes += unit.minutes;
        if (unit.plannedMinutes && *unit.plannedMinutes > 0) {
            row.plannedMinutes += *unit.plannedMinutes;
            row.minutesOfPlanned += unit.minutes;
        }
        if (unit.boughtOn.isValid() && unit.soldOn.isValid())
            days[key] << static_cast<double>(unit.boughtOn.daysTo(unit.soldOn));
    }
    for (OverviewRow &row : rows) {
        if (row.minutes > 0)
            row.perHour = row.money.scaled(60, row.minutes, Rounding::HalfUp);
        if (days.contains(row.key))
            row.days = middleOf(days.value(row.key));
        made.categories << row;
    }
    std::stable_sort(made.categories.begin(), made.categories.end(), [](const OverviewRow &a, const OverviewRow &b) { return a.units > b.units; });
}

void byMonth(Overviews &made, const QList<PastUnit> &sold)
{
    QMap<QDate, OverviewRow> months;
    for (const PastUnit &unit : sold) {
        if (!unit.soldOn.isValid())
            continue;
        OverviewRow &row = months[QDate(unit.soldOn.year(), unit.soldOn.month(), 1)];
        ++row.units;
        row.money += *unit.soldFor - unit.spent;
        row.minutes += unit.minutes;
    }
    if (months.isEmpty())
        return;
    for (QDate month = months.firstKey(); month <= months.lastKey(); month = month.addMonths(1)) {
        OverviewRow row = months.value(month);
        row.key = month.toString(QStringLiteral("yyyy-MM"));
        if (row.minutes > 0)
            row.perHour = row.money.scaled(60, row.minutes, Rounding::HalfUp);
        made.months << row;
    }
}

void byCause(Overviews &made, const QStringList &causes)
{
    QHash<QString, qsizetype> places;
    for (const QString &cause : causes) {
        const QString key = cause.simplified().toCaseFolded();
        if (!places.contains(key)) {
            places.insert(key, made.causes.size());
            made.causes << OverviewRow{.key = cause.simplified(), .money = {}, .days = {}, .perHour = {}};
        }
        ++made.causes[places.value(key)].units;
    }
    std::stable_sort(made.causes.begin(), made.causes.end(), [](const OverviewRow &a, const OverviewRow &b) { return a.units > b.units; });
    if (made.causes.size() > 20)
        made.causes.resize(20);
}

} // namespace

Overviews overviews(const QList<OpenUnit> &open, const QList<PastUnit> &past, const QStringList &causes, const QDate &today)
{
    Overviews made;
    tiedUp(made, open, today);
    QList<PastUnit> sold;
    for (const PastUnit &unit : past)
        if (unit.outcome == Outcome::Sold && unit.soldFor)
            sold << unit;
    byCategory(made, sold);
    byMonth(made, sold);
    byCause(made, causes);
    return made;
}

} // namespace ts
