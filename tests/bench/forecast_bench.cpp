// How long a forecast of 100,000 draws takes, on one thread and on two; tests/bench/forecast_numpy.py draws the same model.
#include "model/money/forecast.h"
#include "tests/bench/timing.h"

#include <cstdio>

using namespace ts;

int main()
{
    const Currency pounds = *Currency::parse(u"GBP");
    ForecastTerms terms;
    terms.currency = pounds;
    const WeightedSample sales({{6400, .43},
                                {7800, .46},
                                {9200, .5},
                                {9800, .56},
                                {11200, .6},
                                {11800, .64},
                                {12400, .7},
                                {12600, .77},
                                {14100, .8},
                                {15500, .85}});
    terms.minutesLeft = {95, 140, 235};
    terms.partsLeft = {0, 350, 900};
    terms.carriageOut = 1'100;
    terms.packing = 350;
    terms.returnsRate = 0.05;
    terms.returnsDrop = 0.25;
    terms.overheadPerMinute = 0.83;
    terms.spent = 4'675;
    terms.minutesToDate = 175;
    terms.daysToSell = {3, 30, 120};
    terms.daysHeld = 6;
    terms.minutesPerDay = 69;
    FeeRule commission;
    commission.rate = 128'000;
    commission.fixed = Money(30, pounds);
    const auto spread = [](double likely, double low, double high) { return ThreePoint{likely * low, likely, likely * high}; };
    const auto cause = [&](const char *text, double share, double minutes, double cost, double odds) {
        return CauseWeight{QString::fromUtf8(text), share, spread(minutes, 0.6, 2.2), spread(cost, 0.8, 1.5), odds};
    };
    terms.symptoms << OpenSymptom{QStringLiteral("weak"),
                                  {cause("lead", 0.55, 20, 10, 1), cause("head", 0.27, 55, 2'800, 0.8),
                                   cause("else", 0.18, 90, 1'000, 0.7)}}
                   << OpenSymptom{QStringLiteral("wavers"), {cause("belt", 0.9, 10, 250, 1), cause("else", 0.1, 90, 500, 0.7)}};
    Forecast made;
    const auto timed = [&](int threads) {
        // The tables are made anew each time, as while a figure is being edited.
        return bench::median(31, [&] {
            terms.resale = DrawTable::of(sales, 1'567);
            terms.asItStands = DrawTable::of(ThreePoint{1'700, 3'400, 5'700});
            terms.fees = *FeeSchedule::of({commission});
            made = forecastOf(terms, {100'000, 1, threads});
        });
    };
    const double one = timed(1);
    const double two = timed(2);
    std::printf("100,000 draws: %.1f ms on one thread, %.1f ms on two (aim 25 ms)\n", one, two);
    std::printf("net %.0f, %.0f, %.0f, mean %.1f; repaired %.4f; loss %.4f\n", made.net.low, made.net.middle, made.net.high,
                made.net.mean, made.chanceRepaired, made.chanceOfLoss);
    return 0;
}
