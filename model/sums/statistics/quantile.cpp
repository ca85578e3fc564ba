#include "model/sums/statistics/quantile.h"

#include "model/sums/given.h"
#include "model/sums/number_column.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double hair = 4 * std::numeric_limits<double>::epsilon(); // n p falls short of a whole number by its last bits

/// Where the quantile lies: this many values below it, and the share of the step to the next one.
struct Place {
    qsizetype below = 0;
    double share = 0;
};

/// Types 1 to 3: the steps of the empirical distribution.
Place stepped(double n, double p, int type)
{
    const double position = type == 3 ? n * p - 0.5 : n * p;
    const double below = std::floor(position + hair * n);
    const bool onStep = position <= below + hair * n;
    double share = 1;
    if (onStep && type == 1)
        share = 0;
    if (onStep && type == 2)
        share = 0.5;
    if (onStep && type == 3)
        share = std::fmod(below, 2) == 0 ? 0 : 1; // to the even one
    return {static_cast<qsizetype>(below), share};
}

/// Types 4 to 9: straight lines between plotting positions (k − a) / (n + 1 − a − b).
Place lined(double n, double p, int type)
{
    struct Positions {
        double a;
        double b;
    };
    constexpr std::array<Positions, 6> types{{{0, 1}, {0.5, 0.5}, {0, 0}, {1, 1}, {1.0 / 3, 1.0 / 3}, {0.375, 0.375}}};
    const auto [a, b] = types[static_cast<size_t>(type - 4)];
    const double position = a + p * (n + 1 - a - b);
    const double below = std::floor(position + hair * n);
    const double share = position - below;
    return {static_cast<qsizetype>(below), std::abs(share) < hair * n ? 0 : share};
}

} // namespace

Expected<double> quantileOf(QList<double> values, double p, int type)
{
    const QString did = u"Cannot work out the quantile"_s;
    if (values.isEmpty())
        return Trouble{did, u"there are no numbers"_s, u"give one or more"_s};
    if (!(p >= 0) || p > 1)
        return Trouble{did, u"%1 is no share"_s.arg(p), u"give p between 0 and 1"_s};
    if (type < 1 || type > 9)
        return Trouble{did, u"there is no type %1"_s.arg(type), u"give 1 to 9"_s};
    std::sort(values.begin(), values.end());
    const auto n = static_cast<double>(values.size());
    const Place place = type <= 3 ? stepped(n, p, type) : lined(n, p, type);
    const auto value = [&](qsizetype place1) { return values.at(std::clamp<qsizetype>(place1, 1, values.size()) - 1); };
    const double low = value(place.below);
    return place.share == 0.0 ? low : low + place.share * (value(place.below + 1) - low);
}

Sum quantileSum()
{
    return {u"quantile"_s,
            u"the value below which a share of a row of numbers lies"_s,
            {{u"values"_s, u"numbers, comma-separated"_s},
             {u"p"_s, u"the share, 0 to 1"_s},
             {u"type"_s, u"1 to 9; 8 is median-unbiased, 7 is that of most spreadsheets"_s, false, {}, u"8"_s}},
            {{u"value"_s, u"in the unit of the numbers"_s}},
            u"Hyndman and Fan, The American Statistician 50(4), 1996"_s,
            worked(u"quantile"_s,
                   [](Given &given) -> SumOutput {
                       const auto values = numbersOf(given.text(u"values"));
                       const double p = given.number(u"p");
                       const auto type = static_cast<int>(given.whole(u"type", 1, 9));
                       if (!values)
                           return given.refuse(values.trouble());
                       const auto value = quantileOf(*values, p, type);
                       if (!value)
                           return given.refuse(value.trouble());
                       return {{u"value"_s, *value}};
                   }),
            u"type 8: position 1/3 + (n + 1/3) p in the sorted row, straight lines between"_s};
}

} // namespace ts
