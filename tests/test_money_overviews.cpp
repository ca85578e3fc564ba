// How the bench does as a whole, worked out by hand from a few units.
#include "model/money/overviews.h"
#include "tests/testing.h"

#include <QtTest>

using namespace ts;

namespace {

Money pounds(qint64 minor)
{
    return Money(minor, Currency::parse(QStringLiteral("GBP")).value());
}

PastUnit sold(Category category, qint64 price, qint64 spent, int minutes, const QDate &bought, const QDate &day, std::optional<int> planned = {})
{
    PastUnit unit;
    unit.category = category;
    unit.outcome = Outcome::Sold;
    unit.soldFor = pounds(price);
    unit.spent = pounds(spent);
    unit.minutes = minutes;
    unit.plannedMinutes = planned;
    unit.boughtOn = bought;
    unit.soldOn = day;
    return unit;
}

} // namespace

class TestMoneyOverviews : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatIsTiedUp()
    {
        const QDate today(2026, 11, 25);
        const Overviews made = overviews({{Stage::Bench, pounds(4000), 120, today.addDays(-30), today.addDays(-3)},
                                          {Stage::Bench, pounds(500), 60, today.addDays(-31), today.addDays(-9)},
                                          {Stage::Held, pounds(1000), 0, today.addDays(-400), today.addDays(-300)}},
                                         {}, {}, today);
        QCOMPARE(made.stages.size(), 8);
        QMap<QString, OverviewRow> rows;
        for (const OverviewRow &row : made.stages)
            rows.insert(row.key, row);
        QCOMPARE(rows[QStringLiteral("bench")].money, pounds(4500));
        QCOMPARE(rows[QStringLiteral("bench")].units, 2);
        QCOMPARE(*rows[QStringLiteral("bench")].days, 9.0);
        QCOMPARE(rows[QStringLiteral("ready")].units, 0);
        QCOMPARE(made.ages.size(), 5);
        QCOMPARE(made.ages[0].money, pounds(4000)); // 30 days and fewer
        QCOMPARE(made.ages[1].money, pounds(500));
        QCOMPARE(made.ages[4].money, pounds(1000)); // over a year
        Money together;
        for (const OverviewRow &row : made.ages)
            together += row.money;
        QCOMPARE(together, pounds(5500));
    }

    void whatWasEarned()
    {
        const Overviews made = overviews({},
                                         {sold(Category::CassetteDeck, 12000, 5000, 180, {2026, 1, 1}, {2026, 2, 10}, 120), sold(Category::CassetteDeck, 8000, 9000, 60, {2026, 1, 1}, {2026, 4, 1}),
                                          sold(Category::CassetteDeck, 5000, 2000, 60, {2026, 3, 1}, {2026, 4, 30}), sold(Category::Tuner, 3000, 1000, 0, {2026, 4, 1}, {2026, 4, 11})},
                                         {}, {2026, 11, 25});
        QCOMPARE(made.categories.size(), 2);
        const OverviewRow &decks = made.categories.first();
        QCOMPARE(decks.key, QStringLiteral("cassette_deck"));
        QCOMPARE(decks.units, 3);
        QCOMPARE(decks.money, pounds(9000)); // 70 − 10 + 30
        QCOMPARE(*decks.perHour, pounds(1800)); // 90.00 in five hours
        QCOMPARE(*decks.days, 60.0);            // of 40, 90 and 60 days
        QCOMPARE(decks.plannedMinutes, 120);
        QCOMPARE(decks.minutesOfPlanned, 180); // only of the one that had a plan
        QVERIFY(!made.categories.last().perHour); // no hours were taken
        QCOMPARE(made.months.size(), 3); // March stands between, with nothing
        QCOMPARE(made.months[0].money, pounds(7000));
        QCOMPARE(made.months[1].units, 0);
        QCOMPARE(made.months[2].money, pounds(4000)); // −10 + 30 + 20
    }

    void unsoldUnitsEarnNothingAndCausesAreCounted()
    {
        PastUnit scrapped = sold(Category::Tuner, 0, 900, 10, {2026, 1, 1}, {});
        scrapped.outcome = Outcome::Scrapped;
        scrapped.soldFor.reset();
        const Overviews made = overviews({}, {scrapped}, {QStringLiteral("belt perished"), QStringLiteral("dry joint"), QStringLiteral("Belt  perished")}, {2026, 11, 25});
        QVERIFY(made.categories.isEmpty() && made.months.isEmpty());
        QCOMPARE(made.causes.size(), 2);
        QCOMPARE(made.causes.first().key, QStringLiteral("belt perished"));
        QCOMPARE(made.causes.first().units, 2);
    }
};

QTEST_GUILESS_MAIN(TestMoneyOverviews)
#include "test_money_overviews.moc"
