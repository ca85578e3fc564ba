#include "model/money/forecast.h"

#include "model/money/counter_draws.h"
#include "model/money/drawn_quantiles.h"

#include <algorithm>
#include <cmath>
#include <thread>
#include <vector>

namespace ts {

namespace {

/// Draws are summed block by block and the blocks' sums in their order, so that threads do not change a bit of the means.
constexpr int blockSize = 4096;

struct ReadyCause {
    double upTo = 0; ///< its share of the symptom's causes, and that of those before
    const DrawTable *minutes = nullptr;
    const DrawTable *cost = nullptr;
    double minutesScale = 1;
    double costScale = 1;
    double odds = 1;
    int index = 0;
};

struct Sums {
    double net = 0, perHour = 0, minutes = 0, parts = 0, days = 0, price = 0;
    double fees = 0, returns = 0, tax = 0, overhead = 0, capitalDays = 0;
    int losses = 0, repaired = 0;
    struct OfCause {
        int times = 0;
        double net = 0, minutes = 0, cost = 0;
    };
    std::vector<OfCause> causes;

    void add(const Sums &other)
    {
        net += other.net;
        perHour += other.perHour;
        minutes += other.minutes;
        parts += other.parts;
        days += other.days;
        price += other.price;
        fees += other.fees;
        returns += other.returns;
        tax += other.tax;
        overhead += other.overhead;
        capitalDays += other.capitalDays;
        losses += other.losses;
        repaired += other.repaired;
        for (std::size_t i = 0; i < causes.size(); ++i) {
            causes[i].times += other.causes[i].times;
            causes[i].net += other.causes[i].net;
            causes[i].minutes += other.causes[i].minutes;
            causes[i].cost += other.causes[i].cost;
        }
    }
};

class Drawing {
public:
    Drawing(const ForecastTerms &terms, const ForecastOptions &options)
        : m_terms(terms), m_options(options), m_minutesLeft(DrawTable::of(terms.minutesLeft)),
          m_partsLeft(DrawTable::of(terms.partsLeft)), m_daysToSell(DrawTable::of(terms.daysToSell))
    {
        makeReady();
        const auto count = static_cast<std::size_t>(options.draws);
        for (auto *list : {&m_net, &m_perHour, &m_minutes, &m_parts, &m_days, &m_price})
            list->resize(count);
    }

    Forecast made()
    {
        const int blocks = (m_options.draws + blockSize - 1) / blockSize;
        std::vector<Sums> sums(static_cast<std::size_t>(blocks));
        const int threads = std::clamp(m_options.threads, 1, std::max(1, blocks));
        std::vector<std::thread> others;
        const auto work = [&](int from) {
            for (int block = from; block < blocks; block += threads)
                sums[static_cast<std::size_t>(block)] = drawBlock(block);
        };
        for (int i = 1; i < threads; ++i)
            others.emplace_back(work, i);
        work(0);
        for (std::thread &each : others)
            each.join();
        Sums all;
        all.causes.resize(m_causeCount);
        for (const Sums &each : sums)
            all.add(each);
        return summedUp(all, threads);
    }

private:
    void makeReady()
    {
        // Causes whose fixes spread alike share one table, scaled: most have the usual spread about their own middle.
        int index = 0;
        for (const OpenSymptom &symptom : m_terms.symptoms) {
            double whole = 0;
            for (const CauseWeight &cause : symptom.causes)
                whole += std::max(0.0, cause.likelihood);
            std::vector<ReadyCause> ready;
            double upTo = 0;
            for (const CauseWeight &cause : symptom.causes) {
                upTo += whole > 0 ? std::max(0.0, cause.likelihood) / whole : 1.0 / static_cast<double>(symptom.causes.size());
                ReadyCause each;
                each.upTo = upTo;
                each.odds = cause.odds;
                each.index = index++;
                m_shares.push_back(upTo);
                std::tie(each.minutes, each.minutesScale) = tableOf(cause.minutes);
                std::tie(each.cost, each.costScale) = tableOf(cause.cost);
                ready.push_back(each);
            }
            if (!ready.empty()) {
                ready.back().upTo = 2; // whatever rounding left
                m_symptoms.push_back(ready);
            }
        }
        m_causeCount = static_cast<std::size_t>(index);
    }

    std::pair<const DrawTable *, double> tableOf(const ThreePoint &points)
    {
        const double scale = points.likely > 0 ? points.likely : 1;
        const ThreePoint shape{points.low / scale, points.likely / scale, points.high / scale};
        for (const auto &[known, table] : m_shapes)
            if (std::abs(known.low - shape.low) < 1e-12 && std::abs(known.likely - shape.likely) < 1e-12 &&
                std::abs(known.high - shape.high) < 1e-12)
                return {table.get(), scale};
        m_shapes.emplace_back(shape, std::make_unique<DrawTable>(DrawTable::of(shape)));
        return {m_shapes.back().second.get(), scale};
    }

    Sums drawBlock(int block)
    {
        Sums sums;
        sums.causes.resize(m_causeCount);
        std::vector<std::pair<const ReadyCause *, std::array<double, 2>>> drawn(m_symptoms.size());
        const ForecastTerms &t = m_terms;
        const int end = std::min(m_options.draws, (block + 1) * blockSize);
        for (int i = block * blockSize; i < end; ++i) {
            const auto draw = static_cast<quint32>(i);
            const auto first = chances(draw, 0, m_options.seed);
            const auto second = chances(draw, 1, m_options.seed);
            double minutes = m_minutesLeft.at(first[1]);
            double parts = m_partsLeft.at(first[2]);
            bool repaired = second[1] < t.chance;
            for (std::size_t s = 0; s < m_symptoms.size(); ++s) {
                const auto c = chances(draw, static_cast<quint32>(s) + 2, m_options.seed);
                const ReadyCause *cause = m_symptoms[s].data();
                while (c[0] >= cause->upTo)
                    ++cause;
                const double fixMinutes = cause->minutesScale * cause->minutes->at(c[1]);
                const bool had = c[3] < cause->odds;
                const double fixCost = had ? cause->costScale * cause->cost->at(c[2]) : 0;
                minutes += fixMinutes;
                parts += fixCost;
                repaired = repaired && had;
                drawn[s] = {cause, {fixMinutes, fixCost}};
            }
            const double days =
                t.waitingDays + (t.minutesPerDay > 0 ? minutes / t.minutesPerDay : 0) + m_daysToSell.at(second[0]);
            const auto price = static_cast<qint64>((repaired ? t.resale : t.asItStands).at(first[0]) + 0.5);
            const auto charged = static_cast<qint64>(t.carriageCharged);
            const qint64 fees = t.fees.total(price, charged);
            const double taken = static_cast<double>(price + charged);
            const double overhead = t.overheadPerMinute * minutes;
            double returns = 0;
            // One that comes back is carried twice, loses of its price, and pays again whatever fee is kept.
            if (first[3] < t.returnsRate)
                returns = 2 * t.carriageOut + t.packing + t.returnsDrop * static_cast<double>(price) +
                          static_cast<double>(t.fees.keptOnReturn(price, charged));
            double tax = 0;
            if (t.marginTaxRate > 0)
                tax = std::max(0.0, taken - t.bought) * static_cast<double>(t.marginTaxRate) /
                      static_cast<double>(1'000'000 + t.marginTaxRate);
            const double tied = (t.spent + parts) * (t.daysHeld + days);
            const double net = taken - static_cast<double>(fees) - t.carriageOut - t.packing - parts - overhead - returns - tax -
                               t.capitalPerDay * (t.spent + parts) * days;
            const double profit = net - t.spent;
            const double hours = (t.minutesToDate + minutes) / 60;
            const double perHour = hours > 0 ? profit / hours : 0;

            const auto at = static_cast<std::size_t>(i);
            m_net[at] = net;
            m_perHour[at] = perHour;
            m_minutes[at] = minutes;
            m_parts[at] = parts;
            m_days[at] = t.daysHeld + days;
            m_price[at] = static_cast<double>(price);
            sums.net += net;
            sums.perHour += perHour;
            sums.minutes += minutes;
            sums.parts += parts;
            sums.days += t.daysHeld + days;
            sums.price += static_cast<double>(price);
            sums.fees += static_cast<double>(fees);
            sums.returns += returns;
            sums.tax += tax;
            sums.overhead += overhead;
            sums.capitalDays += tied;
            sums.losses += profit < 0;
            sums.repaired += repaired;
            for (const auto &[cause, fix] : drawn) {
                auto &of = sums.causes[static_cast<std::size_t>(cause->index)];
                ++of.times;
                of.net += net;
                of.minutes += fix[0];
                of.cost += fix[1];
            }
        }
        return sums;
    }

    static Spread spreadOf(const std::vector<double> &values, double sum)
    {
        const auto found = tenthMiddleNinth(values);
        return {found[0], found[1], found[2], sum / static_cast<double>(values.size())};
    }

    Forecast summedUp(const Sums &all, int threads)
    {
        const auto n = static_cast<double>(m_options.draws);
        Forecast made;
        made.draws = m_options.draws;
        const std::array<std::tuple<Spread *, std::vector<double> *, double>, 6> lists{{{&made.net, &m_net, all.net},
                                                                                        {&made.perHour, &m_perHour, all.perHour},
                                                                                        {&made.minutes, &m_minutes, all.minutes},
                                                                                        {&made.parts, &m_parts, all.parts},
                                                                                        {&made.days, &m_days, all.days},
                                                                                        {&made.price, &m_price, all.price}}};
        const auto work = [&](std::size_t start, std::size_t step) {
            for (std::size_t i = start; i < lists.size(); i += step)
                *std::get<0>(lists[i]) = spreadOf(*std::get<1>(lists[i]), std::get<2>(lists[i]));
        };
        if (threads > 1) {
            std::thread other(work, 1, 2);
            work(0, 2);
            other.join();
        } else {
            work(0, 1);
        }
        made.profit = {made.net.low - m_terms.spent, made.net.middle - m_terms.spent, made.net.high - m_terms.spent,
                       made.net.mean - m_terms.spent};
        made.meanFees = all.fees / n;
        made.meanReturns = all.returns / n;
        made.meanTax = all.tax / n;
        made.meanOverhead = all.overhead / n;
        made.capitalDays = all.capitalDays / n;
        made.chanceOfLoss = all.losses / n;
        made.chanceRepaired = all.repaired / n;
        std::size_t index = 0;
        for (const OpenSymptom &symptom : m_terms.symptoms) {
            double upTo = 0;
            for (const CauseWeight &cause : symptom.causes) {
                const double share = std::min(1.0, m_shares[index]) - upTo;
                upTo += share;
                const auto &of = all.causes[index++];
                const double times = std::max(1, of.times);
                made.causes << CauseOutcome{symptom.text, cause.text, share, of.net / times, of.minutes / times, of.cost / times};
            }
        }
        return made;
    }

    const ForecastTerms &m_terms;
    ForecastOptions m_options;
    DrawTable m_minutesLeft;
    DrawTable m_partsLeft;
    DrawTable m_daysToSell;
    std::vector<std::pair<ThreePoint, std::unique_ptr<DrawTable>>> m_shapes;
    std::vector<std::vector<ReadyCause>> m_symptoms;
    std::size_t m_causeCount = 0;
    std::vector<double> m_shares; ///< of each cause with those before it in its symptom
    std::vector<double> m_net, m_perHour, m_minutes, m_parts, m_days, m_price;
};

} // namespace

Forecast forecastOf(const ForecastTerms &terms, const ForecastOptions &options)
{
    if (options.draws <= 0)
        return {};
    return Drawing(terms, options).made();
}

} // namespace ts
