#include "model/sums/markings/preferred_value.h"

#include "model/sums/given.h"
#include "model/values/number.h"

#include <QJsonArray>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

// IEC 60063: two figures up to E24, which were fixed before the formula and differ from it in places (47 for 46).
constexpr std::array e24{10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91};

// Steps that the decimals of a typed value and of a preferred one may differ by and still be the same value.
constexpr double same = 1e-9;

Trouble noValue(double value)
{
    return {u"There is no preferred value for %1"_s.arg(numberText(value)), {}, u"give a value above 0"_s};
}

/// Preferred values by their place: 0 is the first of the decade from 1 to 10, the next is 1, and so on in both directions.
class Ladder {
public:
    explicit Ladder(Series series) : m_decade(decadeOf(series)) {}

    [[nodiscard]] double at(qsizetype place) const
    {
        const qsizetype size = m_decade.size();
        const qsizetype in = ((place % size) + size) % size;
        return shiftDecimal(m_decade.at(in), static_cast<int>((place - in) / size) - 2);
    }
    /// The place of the largest preferred value that is not above the given one.
    [[nodiscard]] qsizetype placeUpTo(double value) const
    {
        const int decade = static_cast<int>(std::floor(std::log10(value)));
        qsizetype place = (decade - 1) * m_decade.size(); // a decade early, for a logarithm that is off by its last digit
        while (at(place + 1) <= value * (1 + same))
            ++place;
        return place;
    }

private:
    QList<int> m_decade;
};

bool usable(double value)
{
    return std::isfinite(value) && value > 1e-90 && value < 1e90;
}

double joinedTo(double a, double b, Joined joined)
{
    return joined == Joined::InSeries ? a + b : a * b / (a + b);
}

// A part a thousand times off does nothing that its tolerance would not undo.
constexpr double farthest = 1000;

/// What must be joined to `a` to make `value`, no farther from it than that.
double restFor(double value, double a, Joined joined)
{
    if (joined == Joined::InSeries)
        return std::max(value - a, value / farthest);
    return a > value ? std::min(a * value / (a - value), value * farthest) : value * farthest;
}

SumKey seriesKey(const QString &usual)
{
    return {u"series"_s, u"which series of preferred values"_s, false, {}, usual, allWords<Series>()};
}

Series seriesIn(Given &given)
{
    return static_cast<Series>(given.choice(u"series", allWords<Series>()));
}

} // namespace

QList<int> decadeOf(Series series)
{
    QList<int> decade;
    constexpr std::array steps{8, 4, 2, 1, 4, 2, 1}; // each series is every so many of E24, or of E192
    const auto step = steps[static_cast<size_t>(series)];
    if (series <= Series::E24) {
        for (size_t i = 0; i < e24.size(); i += static_cast<size_t>(step))
            decade << 10 * e24[i];
        return decade;
    }
    for (int i = 0; i < 192; i += step) {
        const int figures = static_cast<int>(std::lround(100 * std::pow(10.0, i / 192.0)));
        decade << (figures == 919 ? 920 : figures); // the one exception of the standard
    }
    return decade;
}

Expected<PreferredValue> preferredValue(double value, Series series)
{
    if (!usable(value))
        return noValue(value);
    const Ladder ladder(series);
    const qsizetype place = ladder.placeUpTo(value);
    const double upTo = ladder.at(place);
    const double over = ladder.at(place + 1);
    if (value - upTo <= same * value)
        return PreferredValue{upTo, ladder.at(place - 1), over};
    const bool lower = (value / upTo) * (1 + 1e-14) < over / value;
    return PreferredValue{lower ? upTo : over, upTo, over};
}

Expected<QList<PreferredPair>> preferredPairs(double value, Series series, Joined joined, qsizetype most)
{
    if (!usable(value))
        return noValue(value);
    const Ladder ladder(series);
    // The larger of two in series is at least half the whole, the smaller of two in parallel at most twice it.
    const qsizetype from = ladder.placeUpTo(joined == Joined::InSeries ? value / 2 : value);
    const qsizetype to = ladder.placeUpTo(joined == Joined::InSeries ? value : 2 * value) + 1;
    QList<PreferredPair> pairs;
    for (qsizetype place = from; place <= to; ++place) {
        const double a = ladder.at(place);
        const qsizetype near = ladder.placeUpTo(restFor(value, a, joined));
        for (const double b : {ladder.at(near), ladder.at(near + 1)}) {
            if (b > value * farthest * (1 + same) || b < value / farthest * (1 - same))
                continue;
            const PreferredPair pair{std::max(a, b), std::min(a, b), withoutBinaryDust(joinedTo(a, b, joined), a + b)};
            if (!pairs.contains(pair))
                pairs << pair;
        }
    }
    const auto off = [value](const PreferredPair &pair) { return std::abs(pair.together - value); };
    std::stable_sort(pairs.begin(), pairs.end(), [&](const PreferredPair &x, const PreferredPair &y) { return off(x) < off(y); });
    return pairs.mid(0, most);
}

Sum preferredValueSum()
{
    return {u"preferred-value"_s,
            u"the nearest preferred value and its neighbours"_s,
            {{u"value"_s, u"in any unit: 1563, 4k7, 8.9 nF"_s}, seriesKey(u"E24"_s)},
            {{u"nearest"_s, u"by ratio, the larger on a tie; in the unit without prefix"_s},
             {u"below"_s, u"the next one below the value"_s},
             {u"above"_s, u"the next one above it"_s},
             {u"error_percent"_s, u"how far the nearest is from the value"_s, true, u"%"_s}},
            u"IEC 60063:2015"_s,
            worked(u"preferred-value"_s,
                   [](Given &given) -> SumOutput {
                       const auto asked = Quantity::parse(given.text(u"value"));
                       const Series series = seriesIn(given);
                       if (!asked)
                           return given.refuse(asked.trouble());
                       const auto found = preferredValue(asked->base(), series);
                       if (!found)
                           return given.refuse(found.trouble());
                       return SumOutput{{u"nearest"_s, found->nearest},
                                        {u"below"_s, found->below},
                                        {u"above"_s, found->above},
                                        {u"error_percent"_s, withoutBinaryDust(found->errorPercent(asked->base()), 100)}};
                   }),
            u"rounded 10^(i / N) for i = 0 … N − 1, with the exceptions of the standard"_s};
}

Sum preferredPairSum()
{
    static const QStringList ways{u"series"_s, u"parallel"_s};
    return {u"preferred-pair"_s,
            u"two preferred values that together make a value that is not made"_s,
            {{u"value"_s, u"resistance"_s, true, u"Ω"_s},
             seriesKey(u"E24"_s),
             {u"joined"_s, u"how the two are joined; for capacitors ask for the other way"_s, false, {}, u"series"_s, ways}},
            {{u"first"_s, u"the larger of the two"_s},
             {u"second"_s, u"the smaller"_s},
             {u"value"_s, u"what they make"_s},
             {u"error_percent"_s, u"how far that is from the value"_s, true, u"%"_s},
             {u"others"_s, u"further pairs, each first, second, value"_s}},
            u"IEC 60063:2015; definition of series and parallel"_s,
            worked(u"preferred-pair"_s,
                   [](Given &given) -> SumOutput {
                       const double value = given.positive(u"value", u"Ω");
                       const auto joined = given.choice(u"joined", ways) == 0 ? Joined::InSeries : Joined::InParallel;
                       const Series series = seriesIn(given);
                       const auto pairs = preferredPairs(value, series, joined, 5);
                       if (!pairs)
                           return given.refuse(pairs.trouble());
                       if (pairs->isEmpty())
                           return given.refuse(Trouble{u"No pair of %1 makes that value"_s.arg(toWord(series)), {}, {}});
                       QJsonArray others;
                       for (const PreferredPair &pair : pairs->mid(1))
                           others << QJsonArray{pair.first, pair.second, pair.together};
                       const PreferredPair &best = pairs->first();
                       return SumOutput{{u"first"_s, best.first},
                                        {u"second"_s, best.second},
                                        {u"value"_s, best.together},
                                        {u"error_percent"_s, withoutBinaryDust(100 * (best.together / value - 1), 100)},
                                        {u"others"_s, others}};
                   }),
            u"series R1 + R2; parallel R1 R2 / (R1 + R2)"_s};
}

} // namespace ts
