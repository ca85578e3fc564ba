#include "model/sums/statistics/theil_sen.h"

#include "model/sums/normal.h"
#include "model/sums/spread.h"
#include "model/sums/statistics/line_fit.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace ts {

namespace {

constexpr qsizetype fewEnough = 1500; // 1.1 million slopes, 9 MB

/// How many pairs i < j have values[j] ≤ values[i]; sorts the stretch.
qint64 notRising(std::vector<double> &values, std::vector<double> &room, size_t from, size_t to)
{
    if (to - from < 2)
        return 0;
    const size_t middle = (from + to) / 2;
    qint64 count = notRising(values, room, from, middle) + notRising(values, room, middle, to);
    size_t left = from;
    size_t right = middle;
    for (size_t at = from; at < to; ++at) {
        if (right < to && (left >= middle || values[right] <= values[left])) {
            count += static_cast<qint64>(middle - left); // all that are left on the left are no smaller
            room[at] = values[right++];
        } else {
            room[at] = values[left++];
        }
    }
    std::copy(room.begin() + static_cast<qint64>(from), room.begin() + static_cast<qint64>(to),
              values.begin() + static_cast<qint64>(from));
    return count;
}

/// Counts slopes of pairs without making them all: a pair's slope is at most s where y − s x does not rise from one to the other.
class SlopeCounter {
public:
    SlopeCounter(const QList<double> &x, const QList<double> &y)
    {
        std::vector<qsizetype> order(static_cast<size_t>(x.size()));
        std::iota(order.begin(), order.end(), 0);
        std::sort(order.begin(), order.end(), [&](qsizetype a, qsizetype b) { return x.at(a) < x.at(b); });
        for (const qsizetype i : order) {
            m_x.push_back(x.at(i) - x.at(order.front()));
            m_y.push_back(y.at(i));
        }
        m_work.resize(m_x.size());
        m_room.resize(m_x.size());
        for (size_t from = 0, to = 0; from < m_x.size(); from = to) {
            while (to < m_x.size() && m_x[to] == m_x[from])
                ++to;
            if (to - from > 1)
                m_ties.emplace_back(from, to);
        }
        const auto pairsIn = [](size_t n) { return static_cast<qint64>(n) * static_cast<qint64>(n - 1) / 2; };
        m_pairs = pairsIn(m_x.size());
        for (const auto &[from, to] : m_ties)
            m_pairs -= pairsIn(to - from);
    }

    [[nodiscard]] qint64 pairs() const { return m_pairs; }

    [[nodiscard]] qint64 atMost(double slope)
    {
        const auto fill = [&] {
            for (size_t i = 0; i < m_x.size(); ++i)
                m_work[i] = m_y[i] - slope * m_x[i];
        };
        fill();
        qint64 count = 0;
        for (const auto &[from, to] : m_ties) // pairs of the same x have no slope
            count -= notRising(m_work, m_room, from, to);
        if (!m_ties.empty())
            fill();
        return count + notRising(m_work, m_room, 0, m_x.size());
    }

    /// The least slope that so many pairs do not exceed.
    [[nodiscard]] double ranked(qint64 rank, double guess)
    {
        double step = std::abs(guess) * 1e-3 + 1e-12;
        double low = guess - step;
        double high = guess + step;
        for (; atMost(low) >= rank; step *= 8)
            low -= step;
        for (; atMost(high) < rank; step *= 8)
            high += step;
        while (high - low > 1e-10 * std::max(std::abs(low), std::abs(high))) {
            const double middle = low + (high - low) / 2;
            if (middle <= low || middle >= high)
                break;
            (atMost(middle) >= rank ? high : low) = middle;
        }
        return low + (high - low) / 2;
    }

private:
    std::vector<double> m_x, m_y, m_work, m_room;
    std::vector<std::pair<size_t, size_t>> m_ties;
    qint64 m_pairs = 0;
};

double medianSlope(const QList<double> &x, const QList<double> &y, double guess)
{
    if (x.size() <= fewEnough)
        return *medianOf(pairSlopes(x, y));
    SlopeCounter counter(x, y);
    const qint64 half = counter.pairs() / 2;
    const double upper = counter.ranked(half + 1, guess);
    return counter.pairs() % 2 == 1 ? upper : (counter.ranked(half, upper) + upper) / 2;
}

} // namespace

SlopeInterval theilSenInterval(const QList<double> &x, const QList<double> &y, double slope)
{
    const auto n = static_cast<double>(x.size());
    const double width = coverage95 * std::sqrt(n * (n - 1) * (2 * n + 5) / 18);
    const auto ranks = [width](qint64 pairs) {
        const double half = (static_cast<double>(pairs) - width) / 2;
        const qint64 low = std::clamp<qint64>(std::llround(std::floor(half)), 1, pairs);
        return std::pair(low, std::clamp<qint64>(pairs - low + 1, 1, pairs));
    };
    if (x.size() <= fewEnough) {
        const QList<double> slopes = pairSlopes(x, y);
        const auto [low, high] = ranks(slopes.size());
        return {slopes.at(low - 1), slopes.at(high - 1)};
    }
    SlopeCounter counter(x, y);
    const auto [low, high] = ranks(counter.pairs());
    return {counter.ranked(low, slope), counter.ranked(high, slope)};
}

QList<double> pairSlopes(const QList<double> &x, const QList<double> &y)
{
    QList<double> slopes;
    for (qsizetype i = 0; i < x.size(); ++i)
        for (qsizetype j = i + 1; j < x.size(); ++j)
            if (x.at(i) != x.at(j))
                slopes << (y.at(j) - y.at(i)) / (x.at(j) - x.at(i));
    std::sort(slopes.begin(), slopes.end());
    return slopes;
}

Expected<RobustLine> theilSen(const QList<double> &x, const QList<double> &y)
{
    const auto fit = fitLine(x, y);
    if (!fit)
        return fit.trouble();
    RobustLine line;
    line.slope = medianSlope(x, y, fit->slope);
    QList<double> rest;
    rest.reserve(x.size());
    for (qsizetype i = 0; i < x.size(); ++i)
        rest << y.at(i) - line.slope * x.at(i);
    line.intercept = *medianOf(rest);
    return line;
}

} // namespace ts
