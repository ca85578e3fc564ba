#include "model/values/weighting.h"

#include "model/values/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace ts {

namespace {

struct Point {
    double hertz;
    double db;
};

// ITU-R BS.468-4, table 1. 100, 800, 3150, 6300, 9000, 14000 and 31500 Hz from memory, the others seen in copies that agree.
constexpr std::array itu468{Point{31.5, -29.9}, Point{63, -23.9},  Point{100, -19.8},  Point{200, -13.8},   Point{400, -7.8},
                            Point{800, -1.9},   Point{1000, 0},    Point{2000, 5.6},   Point{3150, 9.0},    Point{4000, 10.5},
                            Point{5000, 11.7},  Point{6300, 12.2}, Point{7100, 12.0},  Point{8000, 11.4},   Point{9000, 10.1},
                            Point{10000, 8.1},  Point{12500, 0},   Point{14000, -5.3}, Point{16000, -11.7}, Point{20000, -22.2},
                            Point{31500, -42.7}};

// IEC 60386:1972 with amendment 1, from memory; its slopes agree with what the catalogue says of AES6.
constexpr std::array flutter{Point{0.1, -48.0}, Point{0.2, -30.6}, Point{0.315, -19.7}, Point{0.4, -15.0}, Point{0.63, -8.4},
                             Point{0.8, -6.0},  Point{1.0, -4.2},  Point{1.6, -1.8},    Point{2.0, -0.9},  Point{4.0, 0.0},
                             Point{6.3, -0.9},  Point{10, -2.1},   Point{20, -5.9},     Point{40, -10.4},  Point{63, -14.2},
                             Point{100, -17.3}, Point{200, -23.0}};

Trouble noFrequency(double hertz, const QString &todo)
{
    return {QStringLiteral("There is no weighting at %1 Hz").arg(numberText(hertz)), {}, todo};
}

/// A straight line over log f through `of` each point; the ends' values beyond them.
template <class Value>
double between(std::span<const Point> points, double hertz, Value of)
{
    if (hertz <= points.front().hertz)
        return of(points.front());
    if (hertz >= points.back().hertz)
        return of(points.back());
    const auto next = std::upper_bound(points.begin(), points.end(), hertz, [](double f, const Point &p) { return f < p.hertz; });
    const Point &low = *(next - 1);
    const double share = std::log(hertz / low.hertz) / std::log(next->hertz / low.hertz);
    return of(low) + share * (of(*next) - of(low));
}

/// The network of the recommendation as a rational function; its coefficients are from memory, within 0.1 dB of the table.
double network468(double f)
{
    const double f2 = f * f;
    const double h1 = ((-4.737338981378384e-24 * f2 + 2.043828333606125e-15) * f2 - 1.363894795463638e-7) * f2 + 1;
    const double h2 = ((1.306612257412824e-19 * f2 - 2.118150887518656e-11) * f2 + 5.559488023498642e-4) * f;
    return 18.2 + 20 * std::log10(1.246332637532143e-4 * f / std::hypot(h1, h2));
}

} // namespace

Expected<double> aWeighting(double hertz)
{
    if (!(hertz > 0) || !std::isfinite(hertz))
        return noFrequency(hertz, QStringLiteral("give more than 0 Hz"));
    // Pole frequencies of IEC 61672-1:2013, annex E.
    constexpr double f1 = 20.598997;
    constexpr double f2 = 107.65265;
    constexpr double f3 = 737.86223;
    constexpr double f4 = 12194.217;
    const auto level = [](double f) {
        const double s = f * f;
        return 20 * std::log10(f4 * f4 * s * s / ((s + f1 * f1) * std::sqrt((s + f2 * f2) * (s + f3 * f3)) * (s + f4 * f4)));
    };
    return level(hertz) - level(1000);
}

Expected<double> itu468Weighting(double hertz)
{
    if (!(hertz > 0) || !std::isfinite(hertz))
        return noFrequency(hertz, QStringLiteral("give more than 0 Hz"));
    const double correction = between(itu468, hertz, [](const Point &p) { return p.db - network468(p.hertz); });
    return network468(hertz) + correction;
}

Expected<double> flutterWeighting(double hertz)
{
    if (!(hertz >= flutter.front().hertz) || hertz > flutter.back().hertz)
        return noFrequency(hertz, QStringLiteral("its table goes from 0.1 to 200 Hz"));
    return between(flutter, hertz, [](const Point &p) { return p.db; });
}

} // namespace ts
