// Weighted samples and three-point estimates against published tables, SciPy and closed forms.
#include "model/sums/beta.h"
#include "model/sums/normal.h"
#include "model/sums/three_point.h"
#include "model/sums/weighted_sample.h"
#include "tests/testing.h"

#include <QRandomGenerator>

#include <cmath>

using namespace ts;

namespace {

QList<Weighted> equal(const QList<double> &values)
{
    QList<Weighted> list;
    for (const double value : values)
        list << Weighted{value, 3.7};
    return list;
}

void wantNear(double got, double wanted, double tolerance)
{
    if (!(std::abs(got - wanted) <= tolerance))
        QFAIL(qPrintable(
            QStringLiteral("got %1, wanted %2 within %3").arg(got, 0, 'g', 12).arg(wanted, 0, 'g', 12).arg(tolerance)));
}

} // namespace

class TestSumsEstimates : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void equalWeightsAreTypeEight_data();
    void equalWeightsAreTypeEight();
    void weightsDoWhatTheyShould();
    void kernelAgainstSciPy();
    void betaAgainstSciPy();
    void pertTable_data();
    void pertTable();
    void pertCases();
};

void TestSumsEstimates::equalWeightsAreTypeEight_data()
{
    QTest::addColumn<QList<double>>("values");
    QTest::addColumn<double>("p");
    QTest::addColumn<double>("wanted");
    // Type 8 of the published quantile table: NIST e-Handbook 7.2.6.2 (resistivity) and R's quantile documentation, the rest by
    // the definition of Hyndman and Fan 1996.
    const QList<double> nist{95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610,
                             95.1591, 95.1195, 95.1772, 95.0925, 95.1990, 95.1682};
    const QList<double> many{12.5, 12.0, 11.8, 14.2, 14.9, 14.5, 21.0, 8.2,  10.3, 11.3, 14.1,
                             9.9,  12.2, 12.0, 12.1, 11.0, 19.8, 11.0, 10.0, 8.8,  9.0,  12.3};
    QTest::newRow("Q01") << nist << 0.9 << 95.197243;
    QTest::newRow("Q03") << many << 0.25 << 10.275;
    QTest::newRow("Q04") << many << 0.5 << 12.0;
    QTest::newRow("Q06") << many << 0.95 << 20.46;
    QTest::newRow("Q08") << QList<double>{1, 3, 2, 4} << 0.25 << 1.416667;
    QTest::newRow("Q09") << QList<double>{1, 3, 2, 4} << 0.75 << 3.583333;
    QTest::newRow("Q11") << QList<double>{0, 1} << 0.25 << 0.0;
    QTest::newRow("Q12") << QList<double>{15, 20, 35, 40, 50} << 0.4 << 27.0;
    QTest::newRow("Q24 top") << nist << 1.0 << 95.1990;
    QTest::newRow("Q24 bottom") << nist << 0.0 << 95.0610;
    QTest::newRow("one value") << QList<double>{7} << 0.1 << 7.0;
}

void TestSumsEstimates::equalWeightsAreTypeEight()
{
    QFETCH(QList<double>, values);
    QFETCH(double, p);
    QFETCH(double, wanted);
    const WeightedSample sample(equal(values));
    wantNear(sample.quantile(p), wanted, 1e-5);
    wantNear(sample.effectiveNumber(), static_cast<double>(values.size()), 1e-9);
}

void TestSumsEstimates::weightsDoWhatTheyShould()
{
    // Kish's number by hand: weights 2, 1, 1 tell as much as 16/6.
    wantNear(WeightedSample({{1, 2}, {2, 1}, {3, 1}}).effectiveNumber(), 16.0 / 6, 1e-12);
    // What has no weight might as well not be there (Akinshin 2023, section 2: consistency with zero weights).
    const WeightedSample without({{10, 1}, {20, 1}, {40, 1}});
    const WeightedSample with({{5, 0}, {10, 1}, {15, 0}, {20, 1}, {40, 1}, {99, 0}, {7, std::nan("")}, {std::nan(""), 5}});
    // By the definition of that paper with type 8's position, worked out in NumPy 1.24 from the formula.
    const WeightedSample sales(
        {{64, .43}, {78, .46}, {92, .5}, {98, .56}, {112, .6}, {118, .64}, {124, .7}, {126, .77}, {141, .8}, {155, .85}});
    wantNear(sales.effectiveNumber(), 9.536561998515005, 1e-12);
    wantNear(sales.quantile(0.1), 73.38624703599913, 1e-9);
    wantNear(sales.quantile(0.25), 96.20025867643889, 1e-9);
    wantNear(sales.quantile(0.5), 120.68261838039808, 1e-9);
    wantNear(sales.quantile(0.75), 136.39358338722425, 1e-9);
    wantNear(sales.quantile(0.9), 154.50043831285478, 1e-9);
    QRandomGenerator random(8);
    for (int i = 0; i < 500; ++i) {
        const double p = random.generateDouble();
        wantNear(with.quantile(p), without.quantile(p), 1e-12);
        // Read from the other end it is the same: q(p) of the values is −q(1 − p) of their negatives.
        QList<Weighted> values;
        QList<Weighted> mirrored;
        for (int k = 0; k < 1 + i % 9; ++k) {
            values << Weighted{random.generateDouble() * 100, random.generateDouble()};
            mirrored << Weighted{-values.last().value, values.last().weight};
        }
        const WeightedSample sample(values);
        wantNear(sample.quantile(p), -WeightedSample(mirrored).quantile(1 - p), 1e-9);
        // It rises with p and stays among the values.
        QVERIFY(sample.quantile(p) <= sample.quantile(std::min(1.0, p + 0.01)) + 1e-9);
        QVERIFY(sample.quantile(p) >= sample.values().first().value - 1e-9 &&
                sample.quantile(p) <= sample.values().last().value + 1e-9);
        // A tiny weight hardly moves it (stability, same paper).
        QList<Weighted> disturbed = values;
        disturbed << Weighted{1e6, 1e-12};
        wantNear(WeightedSample(disturbed).quantile(0.5), sample.quantile(0.5), 1e-3);
    }
    QVERIFY(std::isnan(WeightedSample().quantile(0.5)) && std::isnan(without.quantile(1.1)) &&
            std::isnan(without.quantile(std::nan(""))));
}

void TestSumsEstimates::kernelAgainstSciPy()
{
    const WeightedSample sales(
        {{64, .43}, {78, .46}, {92, .5}, {98, .56}, {112, .6}, {118, .64}, {124, .7}, {126, .77}, {141, .8}, {155, .85}});
    // SciPy 1.10: gaussian_kde(values, weights, bw_method so that the width is 12); numpy.cov(aweights) for the deviation.
    wantNear(sales.deviation(), 27.337972647287653, 1e-9);
    wantNear(sales.density(60, 12), 0.00302506, 5e-9);
    wantNear(sales.density(100, 12), 0.00940735, 5e-9);
    wantNear(sales.density(120, 12), 0.01462891, 5e-9);
    wantNear(sales.density(170, 12), 0.0022852, 5e-9);
    // Silverman 1986, eq. 3.31, worked out in NumPy from the formula.
    wantNear(sales.bandwidth(), 15.672217376736885, 1e-9);
    // All that is expected lies somewhere.
    double sum = 0;
    for (double x = -50; x < 300; x += 0.25)
        sum += 0.25 * sales.density(x, 12);
    wantNear(sum, 1, 1e-9);
    QCOMPARE(WeightedSample({{5, 1}}).bandwidth(), 0.0);
    QCOMPARE(WeightedSample({{5, 1}, {5, 2}}).bandwidth(), 0.0);
}

void TestSumsEstimates::betaAgainstSciPy()
{
    // SciPy 1.10, stats.beta.cdf.
    wantNear(betaCdf(1.8, 4.2, 0.3), 0.5482303042619047, 1e-13);
    wantNear(betaCdf(1, 5, 0.5), 0.96875, 1e-14);
    wantNear(betaCdf(3.66666667, 2.33333333, 0.9), 0.9587707858288324, 1e-12);
    wantNear(betaCdf(1, 5, 0.001), 0.004990009995001, 1e-15);
    wantNear(betaCdf(5, 1, 0.9999), 0.9995000999900006, 1e-13);
    wantNear(betaCdf(2.5, 3.5, 0.4), 0.4869041915261176, 1e-13);
    for (double p = 0; p <= 1; p += 0.01)
        wantNear(betaCdf(1.8, 4.2, betaQuantile(1.8, 4.2, p)), p, 1e-12);
    QVERIFY(std::isnan(betaQuantile(2, 2, -0.1)));
    QCOMPARE(betaQuantile(2, 2, 1), 1.0);
}

void TestSumsEstimates::pertTable_data()
{
    QTest::addColumn<double>("low");
    QTest::addColumn<double>("likely");
    QTest::addColumn<double>("high");
    QTest::addColumn<double>("mean");
    QTest::addColumn<double>("alpha");
    QTest::addColumn<double>("beta");
    QTest::addColumn<double>("deviation");
    // A published PERT network (means as printed there, to two decimals: Wikipedia, Program evaluation and review technique, and
    // course tables after it); alpha, beta and the deviation of the beta distribution itself worked out from the definition.
    QTest::newRow("Z01") << 5. << 5. << 7. << 5.33 << 1. << 5. << 0.281718;
    QTest::newRow("Z02") << 1. << 2. << 5. << 2.33 << 2. << 4. << 0.712697;
    QTest::newRow("Z04") << 4. << 8. << 13. << 8.17 << 2.777778 << 3.222222 << 1.696167;
    QTest::newRow("Z06") << 1. << 5. << 7. << 4.67 << 3.666667 << 2.333333 << 1.105542;
    QTest::newRow("Z08") << 4. << 4. << 6. << 4.33 << 1. << 5. << 0.281718;
    QTest::newRow("Z09") << 2. << 7. << 10. << 6.67 << 3.5 << 2.5 << 1.490712;
    QTest::newRow("Z10") << 2. << 4. << 7. << 4.17 << 2.6 << 3.4 << 0.936474;
    QTest::newRow("Z13") << 2. << 2. << 3. << 2.17 << 1. << 5. << 0.140859;
    QTest::newRow("Z14") << 7. << 7. << 12. << 7.83 << 1. << 5. << 0.704295;
    QTest::newRow("Z21") << 10. << 20. << 60. << 25. << 1.8 << 4.2 << 8.660254;
    QTest::newRow("Z23") << -1. << 0. << 1. << 0. << 3. << 3. << 0.377964;
}

void TestSumsEstimates::pertTable()
{
    QFETCH(double, low);
    QFETCH(double, likely);
    QFETCH(double, high);
    const auto points = ThreePoint::of(low, likely, high);
    testing::wantOk(points);
    QFETCH(double, mean);
    QFETCH(double, alpha);
    QFETCH(double, beta);
    QFETCH(double, deviation);
    QCOMPARE(std::round(points->mean() * 100) / 100, mean);
    wantNear(*points->alpha(), alpha, 1e-6);
    wantNear(*points->beta(), beta, 1e-6);
    wantNear(points->deviation(), deviation, 1e-6);
}

void TestSumsEstimates::pertCases()
{
    // Z03, Z25: a sure value, and no division by nothing.
    const auto sure = ThreePoint::of(5, 5, 5);
    testing::wantOk(sure);
    QCOMPARE(sure->mean(), 5.0);
    QCOMPARE(sure->deviation(), 0.0);
    QCOMPARE(sure->quantile(0.9), 5.0);
    QVERIFY(!sure->alpha() && !sure->beta());
    // Z23: the default of an R function; its 90 % point.
    wantNear(ThreePoint{-1, 0, 1}.quantile(0.9), 0.506727, 1e-6);
    // SciPy 1.10: 10 + 50 × stats.beta.ppf(p, 1.8, 4.2).
    wantNear(ThreePoint{10, 20, 60}.quantile(0.1), 14.49510652, 1e-7);
    wantNear(ThreePoint{10, 20, 60}.quantile(0.5), 23.83361297, 1e-7);
    wantNear(ThreePoint{10, 20, 60}.quantile(0.9), 37.26670252, 1e-7);
    // Z27: mean 44, variance 9, done by 47 (Hillier and Lieberman, from memory; Φ(1) of any table).
    wantNear(normalCdf((47.0 - 44) / 3), 0.841345, 1e-6);
    QVERIFY(testing::refusal(ThreePoint::of(3, 2, 5)).contains(QStringLiteral("do not rise")));
    QVERIFY(!ThreePoint::of(3, 6, 5).ok());
    QVERIFY(!ThreePoint::of(1, std::nan(""), 5).ok());
    QVERIFY(!ThreePoint::of(1, 2, HUGE_VAL).ok());
}

QTEST_GUILESS_MAIN(TestSumsEstimates)
#include "test_sums_estimates.moc"
