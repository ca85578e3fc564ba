#include "model/sums/statistics/line_fit.h"

#include "model/sums/given.h"
#include "model/sums/number_column.h"
#include "model/sums/statistics/kept_sum.h"
#include "model/sums/statistics/student_t.h"
#include "model/sums/statistics/theil_sen.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// A row's mean as a rounded figure and the small remainder, so that deviations lose nothing to its rounding.
class Centre {
public:
    explicit Centre(const QList<double> &row) : m_row(row)
    {
        const auto n = static_cast<double>(row.size());
        KeptSum sum;
        for (const double value : row)
            sum.add(value / n);
        m_rounded = sum.value();
        KeptSum left;
        for (const double value : row)
            left.add(value - m_rounded);
        m_remainder = left.value() / n;
    }
    [[nodiscard]] double mean() const { return m_rounded + m_remainder; }
    [[nodiscard]] double deviation(qsizetype i) const { return (m_row.at(i) - m_rounded) - m_remainder; }

private:
    const QList<double> &m_row;
    double m_rounded = 0;
    double m_remainder = 0;
};

Trouble noFit(const QString &wrong, const QString &todo)
{
    return {u"Cannot fit a line"_s, wrong, todo};
}

/// One of the two rows: typed under its key, or a column of the file.
Expected<QList<double>> rowOf(const Given &given, QStringView key)
{
    if (given.has(u"file"))
        return numbersInFile(given.text(u"file"), key.toString());
    return numbersOf(given.text(key));
}

SumOutput answers(const LineFit &fit, const RobustLine &robust)
{
    return {{u"n"_s, static_cast<qint64>(fit.n)},
            {u"slope"_s, fit.slope},
            {u"intercept"_s, fit.intercept},
            {u"slope_sd"_s, orNull(fit.slopeSd)},
            {u"intercept_sd"_s, orNull(fit.interceptSd)},
            {u"residual_sd"_s, orNull(fit.residualSd)},
            {u"r2"_s, fit.r2},
            {u"theil_sen"_s, robust.slope},
            {u"theil_sen_intercept"_s, robust.intercept},
            {u"slope_half_95"_s, orNull(fit.slopeHalf95)},
            {u"regression_ss"_s, fit.regressionSquares},
            {u"residual_ss"_s, fit.residualSquares},
            {u"correlation"_s, fit.correlation}};
}

} // namespace

Expected<LineFit> fitLine(const QList<double> &x, const QList<double> &y)
{
    if (x.size() != y.size())
        return noFit(u"there are %1 x and %2 y"_s.arg(x.size()).arg(y.size()), u"give as many of each"_s);
    if (x.size() < 2)
        return noFit(u"there are fewer than two points"_s, u"give more"_s);
    const auto finite = [](double value) { return std::isfinite(value); };
    if (!std::all_of(x.begin(), x.end(), finite) || !std::all_of(y.begin(), y.end(), finite))
        return noFit(u"one of the numbers is not finite"_s, u"leave it out"_s);

    const Centre centreX(x);
    const Centre centreY(y);
    KeptSum xx;
    KeptSum xy;
    KeptSum yy;
    for (qsizetype i = 0; i < x.size(); ++i) {
        const double dx = centreX.deviation(i);
        const double dy = centreY.deviation(i);
        xx.add(dx * dx);
        xy.add(dx * dy);
        yy.add(dy * dy);
    }
    if (!(xx.value() > 0))
        return noFit(u"all x are the same"_s, u"give points at different x"_s);

    LineFit fit;
    const auto n = static_cast<double>(x.size());
    fit.n = x.size();
    fit.slope = xy.value() / xx.value();
    fit.intercept = centreY.mean() - fit.slope * centreX.mean();
    KeptSum residuals;
    for (qsizetype i = 0; i < x.size(); ++i) {
        const double residual = centreY.deviation(i) - fit.slope * centreX.deviation(i);
        residuals.add(residual * residual);
    }
    fit.residualSquares = residuals.value();
    fit.regressionSquares = fit.slope * xy.value();
    fit.r2 = yy.value() > 0 ? 1 - fit.residualSquares / yy.value() : 1;
    const double spreadOfIntercept = 1 / n + centreX.mean() * centreX.mean() / xx.value();
    fit.correlation = -centreX.mean() / std::sqrt(xx.value() * spreadOfIntercept);
    if (x.size() > 2) {
        fit.residualSd = std::sqrt(fit.residualSquares / (n - 2));
        fit.slopeSd = *fit.residualSd / std::sqrt(xx.value());
        fit.interceptSd = *fit.residualSd * std::sqrt(spreadOfIntercept);
        fit.slopeHalf95 = studentFactor(0.95, n - 2) * *fit.slopeSd;
    }
    return fit;
}

Sum lineFitSum()
{
    return {u"line-fit"_s,
            u"a straight line through points, by least squares and by the median of all slopes"_s,
            {{u"file"_s, u"a CSV file with columns x and y"_s, false},
             {u"x"_s, u"numbers, comma-separated"_s, false},
             {u"y"_s, u"as many numbers"_s, false}},
            {{u"n"_s, u"how many points"_s},
             {u"slope"_s, u"by least squares"_s},
             {u"intercept"_s, u"by least squares"_s},
             {u"slope_sd"_s, u"standard deviation of the slope; null for two points"_s},
             {u"intercept_sd"_s, u"standard deviation of the intercept; null for two points"_s},
             {u"residual_sd"_s, u"with n − 2; null for two points"_s},
             {u"r2"_s, u"share of the variation that the line explains"_s},
             {u"theil_sen"_s, u"slope that outliers do not pull: the median of the slopes of all pairs"_s},
             {u"theil_sen_intercept"_s, u"the median of y − slope · x"_s},
             {u"slope_half_95"_s, u"half width that holds the slope with 95 %, by the t law"_s},
             {u"regression_ss"_s, u"sum of squares, one degree of freedom"_s},
             {u"residual_ss"_s, u"sum of squares, n − 2 degrees of freedom"_s},
             {u"correlation"_s, u"of slope and intercept"_s}},
            u"NIST Statistical Reference Datasets, Norris; Theil-Sen by Hollander and Wolfe, 9.1"_s,
            worked(u"line-fit"_s,
                   [](Given &given) -> SumOutput {
                       if (given.has(u"file") == (given.has(u"x") || given.has(u"y")))
                           return given.refuse(u"it needs either a file or x and y"_s, u"give file=… or x=… and y=…"_s);
                       const auto x = rowOf(given, u"x");
                       const auto y = rowOf(given, u"y");
                       if (!x || !y)
                           return given.refuse(x ? y.trouble() : x.trouble());
                       const auto fit = fitLine(*x, *y);
                       if (!fit)
                           return given.refuse(fit.trouble());
                       return answers(*fit, *theilSen(*x, *y));
                   }),
            u"slope = Σ dx dy / Σ dx²; intercept = mean y − slope · mean x"_s};
}

} // namespace ts
