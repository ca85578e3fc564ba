// The forecast's draws against known answers, closed forms and quadrature, and one thread against two.
#include "model/money/counter_draws.h"
#include "model/money/drawn_quantiles.h"
#include "model/money/forecast.h"
#include "model/money/forecast_rests.h"
#include "model/sums/beta.h"
#include "model/sums/normal.h"
#include "tests/testing.h"

#include <QRandomGenerator>

#include <cmath>

using namespace ts;

namespace {

const Currency &pounds()
{
    static const Currency currency = *Currency::parse(u"GBP");
    return currency;
}

/// A unit that sells for a sure 100.00, with nothing else to it.
ForecastTerms plain()
{
    ForecastTerms terms;
    terms.currency = pounds();
    terms.resale = DrawTable(10'000);
    terms.asItStands = DrawTable(2'500);
    return terms;
}

CauseWeight cause(const char *text, double likelihood, double minutes, double cost, double odds = 1)
{
    return {QString::fromUtf8(text), likelihood, ThreePoint::sure(minutes), ThreePoint::sure(cost), odds};
}

void wantNear(double got, double wanted, double tolerance)
{
    if (!(std::abs(got - wanted) <= tolerance))
        QFAIL(qPrintable(
            QStringLiteral("got %1, wanted %2 within %3").arg(got, 0, 'g', 12).arg(wanted, 0, 'g', 12).arg(tolerance)));
}

FeeSchedule fees(qint64 rate, qint64 fixed)
{
    FeeRule rule;
    rule.rate = rate;
    rule.fixed = Money(fixed, pounds());
    return *FeeSchedule::of({rule});
}

constexpr int draws = 100'000;

} // namespace

class TestMoneyForecast : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void generatorKnownAnswers();
    void tablesAreTheDistributions();
    void sureTermsGiveSureAnswers();
    void threePointsAgainstClosedForms();
    void causesMixAsTheyShould();
    void fixesThatCannotBeHad();
    void returnsAndTax();
    void lossAgainstQuadrature();
    void salesAgainstTheKernel();
    void sameSeedSameAnswer();
    void fewDraws();
    void quantilesOfDraws();
    void whatItRestsOn();
};

void TestMoneyForecast::generatorKnownAnswers()
{
    // kat_vectors of the Random123 distribution, philox4x32 with 10 rounds.
    using Four = std::array<quint32, 4>;
    QCOMPARE(philox({0, 0, 0, 0}, {0, 0}), (Four{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}));
    const quint32 all = 0xffffffff;
    QCOMPARE(philox({all, all, all, all}, {all, all}), (Four{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}));
    QCOMPARE(philox({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}),
             (Four{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}));
    QVERIFY(unitShare(0) > 0 && unitShare(all) < 1);
}

void TestMoneyForecast::tablesAreTheDistributions()
{
    for (const ThreePoint &points : {ThreePoint{10, 20, 60}, ThreePoint{5, 5, 7}, ThreePoint{-1, 0, 1}, ThreePoint{0, 9, 9}}) {
        const DrawTable table = DrawTable::of(points);
        const double span = points.high - points.low;
        for (double p = 0.005; p < 1; p += 0.005)
            wantNear(table.at(p), points.quantile(p), 0.001 * span);
        wantNear(table.mean(), points.mean(), 0.0005 * span);
    }
    QCOMPARE(DrawTable(7).at(0.3), 7.0);
    QCOMPARE(DrawTable::of(ThreePoint::sure(3)).at(0.9), 3.0);
    // Sales against the kernel estimate's own distribution function, by the normal law.
    const WeightedSample sales({{6400, 1}, {9800, 2}, {12000, 3}, {15500, 1}});
    const DrawTable table = DrawTable::of(sales, 900);
    for (double p = 0.01; p < 1; p += 0.01) {
        double share = 0;
        for (const Weighted &each : sales.values())
            share += each.weight * normalCdf((table.at(p) - each.value) / 900);
        wantNear(share, p, 0.002);
    }
    wantNear(table.mean(), sales.mean(), 5);
    QVERIFY(DrawTable::of(WeightedSample({{100, 1}}), 500).at(0.0001) >= 0); // nothing fetches less than nothing
    QCOMPARE(DrawTable::of(WeightedSample(), 5).at(0.5), 0.0);
}

void TestMoneyForecast::sureTermsGiveSureAnswers()
{
    ForecastTerms terms = plain();
    terms.fees = fees(128'000, 30);
    terms.minutesLeft = ThreePoint::sure(90);
    terms.partsLeft = ThreePoint::sure(350);
    terms.carriageCharged = 1'000;
    terms.carriageOut = 1'100;
    terms.packing = 350;
    terms.overheadPerMinute = 5;
    terms.spent = 4'675;
    terms.minutesToDate = 30;
    terms.daysHeld = 6;
    terms.daysToSell = ThreePoint::sure(30);
    terms.waitingDays = 3;
    terms.minutesPerDay = 45;
    terms.capitalPerDay = 0.001;
    const Forecast made = forecastOf(terms);
    // By hand: 100 + 10 − (12.80 + 0.30) − 11 − 3.50 − 3.50 − 4.50 = 74.40; 35 days × 0.001 × (46.75 + 3.50) = 1.75875.
    const double net = 7'440 - 35 * 0.001 * 5'025;
    for (const double value : {made.net.low, made.net.middle, made.net.high, made.net.mean})
        wantNear(value, net, 1e-6);
    wantNear(made.profit.middle, net - 4'675, 1e-6);
    wantNear(made.perHour.middle, (net - 4'675) / 2, 1e-6);
    QCOMPARE(made.minutes.middle, 90.0);
    QCOMPARE(made.days.middle, 41.0); // 6 + 3 + 90/45 + 30
    wantNear(made.capitalDays, 5'025.0 * 41, 1e-3);
    QCOMPARE(made.chanceOfLoss, 0.0);
    QCOMPARE(made.chanceRepaired, 1.0);
    QCOMPARE(made.draws, draws);
}

void TestMoneyForecast::threePointsAgainstClosedForms()
{
    ForecastTerms terms = plain();
    terms.minutesLeft = {10, 20, 60};
    terms.overheadPerMinute = 20;
    const Forecast made = forecastOf(terms);
    // The mean, and by the beta distribution itself (SciPy in test_sums_estimates) the quantiles; four standard errors.
    const double error = 4 * terms.minutesLeft.deviation() / std::sqrt(draws);
    wantNear(made.minutes.mean, 25, error);
    wantNear(made.minutes.low, 14.49510652, 0.15);
    wantNear(made.minutes.middle, 23.83361297, 0.15);
    wantNear(made.minutes.high, 37.26670252, 0.25);
    wantNear(made.net.mean, 10'000 - 20 * 25, 20 * error);
    wantNear(made.net.low, 10'000 - 20 * 37.26670252, 5); // what takes long leaves little
}

void TestMoneyForecast::causesMixAsTheyShould()
{
    ForecastTerms terms = plain();
    terms.symptoms << OpenSymptom{QStringLiteral("weak"),
                                  {cause("lead", 0.3, 20, 100), cause("head", 0.1, 60, 3'000), cause("other", 0.1, 90, 1'000)}}
                   << OpenSymptom{QStringLiteral("wavers"), {cause("belt", 0.9, 10, 250)}};
    const Forecast made = forecastOf(terms);
    // Likelihoods are brought to 1 in all: 0.6, 0.2, 0.2; and one cause alone is sure.
    const double minutes = 0.6 * 20 + 0.2 * 60 + 0.2 * 90 + 10;
    const double cost = 0.6 * 100 + 0.2 * 3'000 + 0.2 * 1'000 + 250;
    wantNear(made.minutes.mean, minutes, 4 * 29 / std::sqrt(draws));
    wantNear(made.parts.mean, cost, 4 * 1'130 / std::sqrt(draws));
    wantNear(made.net.mean, 10'000 - cost, 4 * 1'130 / std::sqrt(draws));
    QCOMPARE(made.causes.size(), 4);
    wantNear(made.causes.at(0).likelihood, 0.6, 4 * std::sqrt(0.24 / draws));
    QCOMPARE(made.causes.at(3).likelihood, 1.0);
    // With sure fixes, what each cause comes to is sure.
    wantNear(made.causes.at(1).meanNet, 10'000 - 3'000 - 250, 1e-6);
    wantNear(made.causes.at(1).meanCost, 3'000, 1e-6);
    wantNear(made.causes.at(1).meanMinutes, 60, 1e-6);
    QCOMPARE(made.minutes.middle, 30.0); // the lead, 60 of 100
    QCOMPARE(made.minutes.high, 100.0);  // the other, the last 20
}

void TestMoneyForecast::fixesThatCannotBeHad()
{
    ForecastTerms terms = plain();
    terms.chance = 0.9;
    terms.symptoms << OpenSymptom{QStringLiteral("a"), {cause("x", 1, 30, 2'000, 0.8)}}
                   << OpenSymptom{QStringLiteral("b"), {cause("y", 1, 30, 0, 0.5)}};
    const Forecast made = forecastOf(terms);
    const double repaired = 0.9 * 0.8 * 0.5;
    const double error = 4 * std::sqrt(0.25 / draws);
    wantNear(made.chanceRepaired, repaired, error);
    wantNear(made.price.mean, repaired * 10'000 + (1 - repaired) * 2'500, error * 7'500);
    wantNear(made.parts.mean, 0.8 * 2'000, error * 2'000); // what cannot be had is not paid
    wantNear(made.minutes.mean, 60, 1e-6);                 // and the time is gone all the same
}

void TestMoneyForecast::returnsAndTax()
{
    ForecastTerms terms = plain();
    terms.returnsRate = 0.05;
    terms.returnsDrop = 0.25;
    terms.carriageOut = 1'100;
    terms.packing = 350;
    terms.fees = fees(100'000, 0);
    const Forecast made = forecastOf(terms);
    // One that comes back: carriage twice, packing, a quarter of the price, and the fee of 10.00 that is kept.
    const double loss = 2 * 1'100 + 350 + 2'500 + 1'000;
    wantNear(made.meanReturns, 0.05 * loss, 4 * loss * std::sqrt(0.0475 / draws));
    terms = plain();
    terms.bought = 3'000;
    terms.marginTaxRate = 200'000;
    wantNear(forecastOf(terms).meanTax, 7'000.0 / 6, 1e-6); // one sixth of the margin (check values V12)
    terms.bought = 12'000;
    QCOMPARE(forecastOf(terms).meanTax, 0.0); // a loss has none (V03)
}

void TestMoneyForecast::lossAgainstQuadrature()
{
    ForecastTerms terms = plain();
    const ThreePoint price{8'000, 12'000, 16'000};
    terms.resale = DrawTable::of(price);
    terms.minutesLeft = {10, 60, 240};
    terms.overheadPerMinute = 20;
    terms.spent = 9'500;
    const Forecast made = forecastOf(terms);
    // P(price − 20 minutes < spent), summed over the minutes' distribution by Simpson's rule with the incomplete beta function.
    const ThreePoint &m = terms.minutesLeft;
    const auto below = [&](double share) { // at that share of the minutes' span
        const double limit = terms.spent + 20 * (m.low + share * (m.high - m.low));
        return betaCdf(*price.alpha(), *price.beta(), (limit - price.low) / (price.high - price.low));
    };
    constexpr int cells = 2'000;
    double chance = 0;
    for (int i = 0; i < cells; ++i) {
        const double from = static_cast<double>(i) / cells;
        const double weight = betaCdf(*m.alpha(), *m.beta(), from + 1.0 / cells) - betaCdf(*m.alpha(), *m.beta(), from);
        chance += weight * (below(from) + 4 * below(from + 0.5 / cells) + below(from + 1.0 / cells)) / 6;
    }
    QVERIFY(chance > 0.2 && chance < 0.8);
    wantNear(made.chanceOfLoss, chance, 4 * std::sqrt(chance * (1 - chance) / draws) + 0.001);
    wantNear(made.profit.mean, price.mean() - 20 * m.mean() - 9'500, 4 * 1'600 / std::sqrt(draws));
}

void TestMoneyForecast::salesAgainstTheKernel()
{
    ForecastTerms terms = plain();
    const WeightedSample sales({{6400, .43}, {7800, .46}, {9200, .5}, {11200, .6}, {11800, .64}, {12600, .77}, {15500, .85}});
    terms.resale = DrawTable::of(sales, 1'200);
    const Forecast made = forecastOf(terms);
    wantNear(made.price.mean, sales.mean(), 4 * 3'400 / std::sqrt(draws) + 2);
    // The share of sales below the drawn quantiles, by the normal law.
    for (const auto &[value, p] : {std::pair{made.price.low, 0.1}, {made.price.middle, 0.5}, {made.price.high, 0.9}}) {
        double share = 0;
        for (const Weighted &each : sales.values())
            share += each.weight * normalCdf((value - each.value) / 1'200);
        wantNear(share, p, 4 * std::sqrt(p * (1 - p) / draws) + 0.001);
    }
}

void TestMoneyForecast::sameSeedSameAnswer()
{
    ForecastTerms terms = plain();
    terms.resale = DrawTable::of(ThreePoint{8'000, 12'000, 16'000});
    terms.minutesLeft = {10, 60, 240};
    terms.overheadPerMinute = 20;
    terms.fees = fees(128'000, 30);
    terms.symptoms << OpenSymptom{QStringLiteral("weak"), {cause("lead", 0.6, 20, 100, 0.9), cause("head", 0.4, 60, 3'000, 0.7)}};
    const Forecast one = forecastOf(terms, {draws, 7, 1});
    QVERIFY(one == forecastOf(terms, {draws, 7, 1}));
    QVERIFY(one == forecastOf(terms, {draws, 7, 2}));
    QVERIFY(one == forecastOf(terms, {draws, 7, 3}));
    QVERIFY(!(one == forecastOf(terms, {draws, 8, 1})));
}

void TestMoneyForecast::fewDraws()
{
    for (int count = 0; count < 30; ++count) {
        ForecastTerms terms = plain();
        terms.minutesLeft = {10, 20, 60};
        const Forecast made = forecastOf(terms, {count, 1, 2});
        QCOMPARE(made.draws, count);
        QVERIFY(made.minutes.low <= made.minutes.middle && made.minutes.middle <= made.minutes.high);
    }
}

void TestMoneyForecast::quantilesOfDraws()
{
    // Type 8 of the published quantile table: Q01 (NIST e-Handbook 7.2.6.2), and by its rule, h = 1/3 + (12 + 1/3) p, the others.
    const auto nist = tenthMiddleNinth(
        {95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1772, 95.0925, 95.1990, 95.1682});
    wantNear(nist[0], 95.0610 + (1.0 / 3 + 37.0 / 30 - 1) * (95.0925 - 95.0610), 1e-9);
    wantNear(nist[1], (95.1591 + 95.1682) / 2, 1e-9);
    wantNear(nist[2], 95.197243, 1e-5);
    // Random lists of every shape against the weighted sample's quantiles, which are checked in test_sums_estimates.
    QRandomGenerator random(31);
    for (int round = 0; round < 400; ++round) {
        std::vector<double> values;
        QList<Weighted> same;
        const int count = 1 + random.bounded(200);
        for (int i = 0; i < count; ++i) {
            const double value = round % 3 == 0   ? random.bounded(5)
                                 : round % 3 == 1 ? std::exp(40 * random.generateDouble())
                                                  : -random.generateDouble();
            values.push_back(value);
            same << Weighted{value, 1};
        }
        const auto found = tenthMiddleNinth(values);
        const WeightedSample sample(same);
        for (const auto &[got, p] : {std::pair{found[0], 0.1}, {found[1], 0.5}, {found[2], 0.9}})
            wantNear(got, sample.quantile(p), 1e-9 * (1 + std::abs(got)));
    }
}

void TestMoneyForecast::whatItRestsOn()
{
    // All by algebra: with no fees, what is sold for a pound more is worth a pound more; an hour is worth its rate.
    const ThreePoint price{8'000, 10'000, 13'000};
    ForecastTerms terms = plain();
    terms.resale = DrawTable::of(price);
    terms.minutesLeft = {60, 90, 180};
    terms.symptoms = {{QStringLiteral("hum"), {cause("capacitor", 0.75, 30, 1'000), cause("transformer", 0.25, 90, 5'000)}}};
    const ForecastOptions options{draws, 7, 1};
    const double perMinute = 20;
    const Forecast forecast = forecastOf(terms, options);
    const QList<ForecastRest> rests = forecastRests(terms, forecast, perMinute, options);
    QHash<int, ForecastRest> by;
    for (const ForecastRest &rest : rests)
        by.insert(static_cast<int>(rest.what), rest);
    const auto of = [&](Rest what) { return by.value(static_cast<int>(what)); };
    const double spread = price.quantile(0.9) - price.quantile(0.1);
    wantNear(of(Rest::Price).swing(), spread, spread * 0.01); // a table of 1,024 steps
    const double minutes = terms.minutesLeft.quantile(0.9) - terms.minutesLeft.quantile(0.1);
    wantNear(of(Rest::Hours).swing(), minutes * perMinute, 1e-3 * minutes * perMinute);
    // The dearer cause costs 40.00 and an hour at 12.00 more; the draws' own noise in price is left.
    wantNear(of(Rest::Cause).swing(), 4'000 + 60 * perMinute, 60);
    QCOMPARE(of(Rest::Cause).worseCause, QStringLiteral("transformer"));
    QCOMPARE(of(Rest::Cause).betterCause, QStringLiteral("capacitor"));
    // Nothing but the chance decides between a sale at the price and one as it stands.
    wantNear(of(Rest::Chance).swing(), 0.15 * (terms.resale.mean() - 2'500), 200);
    QVERIFY(!by.contains(static_cast<int>(Rest::Parts))); // sure
    for (qsizetype i = 1; i < rests.size(); ++i)
        QVERIFY(rests.at(i - 1).swing() >= rests.at(i).swing());
    QVERIFY(forecastRests(plain(), forecastOf(plain(), options), perMinute, options).size() <= 1); // all sure but the chance
}

QTEST_GUILESS_MAIN(TestMoneyForecast)
#include "test_money_forecast.moc"
