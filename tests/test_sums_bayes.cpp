#include "model/sums/bayes.h"
#include "model/sums/check_order.h"
#include "model/sums/reckon.h"
#include "tests/testing.h"

#include <QJsonArray>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace ts;

namespace {

bool near(double value, double wanted, double tolerance)
{
    if (std::abs(value - wanted) <= tolerance)
        return true;
    qWarning("%.17g is not %.17g within %g", value, wanted, tolerance);
    return false;
}

QString listed(const QList<qsizetype> &order)
{
    QStringList places;
    for (const qsizetype place : order)
        places << QString::number(place + 1);
    return places.join(QLatin1Char(','));
}

double value(const Expected<SumOutput> &out, const QString &key)
{
    if (out)
        for (const auto &[name, each] : *out)
            if (name == key)
                return each.toDouble();
    return std::nan("");
}

/// The information that a column of the 14-day table gives on the last one, in bit: categories, not two outcomes.
double gain(const QList<QPair<int, int>> &yesAndNo)
{
    double all = 0, yes = 0, after = 0;
    for (const auto &[y, n] : yesAndNo) {
        all += y + n;
        yes += y;
    }
    for (const auto &[y, n] : yesAndNo)
        after += (y + n) / all * entropyBits({double(y), double(n)});
    return entropyBits({yes, all - yes}) - after;
}

} // namespace

class TestSumsBayes : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void positiveTest_data();
    void positiveTest();
    void entropyOfTheTable();
    void informationOfTheTable_data();
    void informationOfTheTable();
    void expectedInformationOfATest_data();
    void expectedInformationOfATest();
    void orders_data();
    void orders();
    void orderAgainstAllOrders();
    void impossible();
    void refusals_data();
    void refusals();
};

void TestSumsBayes::positiveTest_data()
{
    QTest::addColumn<QString>("prior");
    QTest::addColumn<QString>("abnormalIf");
    QTest::addColumn<QString>("abnormalIfNot");
    QTest::addColumn<double>("posterior");
    // ../shared/checks/10_diagnosis_cases.csv, rows B01 to B06; sources S-BAYES1 to S-BAYES6 there.
    QTest::newRow("B01, course handout") << "0.01"
                                         << "0.80"
                                         << "0.096" << 0.0776398;
    QTest::newRow("B02, Rice, Mathematical Statistics and Data Analysis") << "0.01"
                                                                          << "0.80"
                                                                          << "0.10" << 0.0747664;
    QTest::newRow("B04, university course notes p. 45") << "0.0001"
                                                        << "0.90"
                                                        << "0.001" << 0.0825764;
    QTest::newRow("B05, computational physics course") << "0.4 %"
                                                       << "80 %"
                                                       << "10%" << 0.0311284;
    QTest::newRow("B06, coeliac testing") << "0.01"
                                          << "0.93"
                                          << "0.04" << 0.190184;
}

void TestSumsBayes::positiveTest()
{
    QFETCH(QString, prior);
    QFETCH(QString, abnormalIf);
    QFETCH(QString, abnormalIfNot);
    QFETCH(double, posterior);
    const auto out = reckon(QStringLiteral("bayes"), {{QStringLiteral("prior"), prior},
                                                      {QStringLiteral("abnormal_if"), abnormalIf},
                                                      {QStringLiteral("abnormal_if_not"), abnormalIfNot},
                                                      {QStringLiteral("outcome"), QStringLiteral("abnormal")}});
    testing::wantOk(out);
    QVERIFY(near(value(out, QStringLiteral("posterior")), posterior, 1e-6));
}

void TestSumsBayes::entropyOfTheTable()
{
    // B08: 9 yes, 5 no (S-GAIN).
    QVERIFY(near(entropyBits({9, 5}), 0.940286, 1e-6));
    QCOMPARE(entropyBits({1, 0, 0}), 0.0);
    QCOMPARE(entropyBits({}), 0.0);
}

void TestSumsBayes::informationOfTheTable_data()
{
    QTest::addColumn<QList<QPair<int, int>>>("counts");
    QTest::addColumn<double>("bits");
    // B09 and B10, from the 14 days of 10_playtennis_data.csv (S-GAIN, S-GAIN2): yes and no by each word of the column.
    QTest::newRow("outlook: sunny, overcast, rain") << QList<QPair<int, int>>{{2, 3}, {4, 0}, {3, 2}} << 0.246750;
    QTest::newRow("humidity: high, normal") << QList<QPair<int, int>>{{3, 4}, {6, 1}} << 0.151836;
    QTest::newRow("wind: weak, strong") << QList<QPair<int, int>>{{6, 2}, {3, 3}} << 0.048127;
    QTest::newRow("temperature: hot, mild, cool") << QList<QPair<int, int>>{{2, 2}, {4, 2}, {3, 1}} << 0.029223;
}

void TestSumsBayes::informationOfTheTable()
{
    using Counts = QList<QPair<int, int>>;
    QFETCH(Counts, counts);
    QFETCH(double, bits);
    QVERIFY(near(gain(counts), bits, 1e-6));
    if (counts.size() == 2) {
        // As a check with two outcomes on two causes (yes, no): its expected information is the same.
        const double yes = counts[0].first + counts[1].first, no = counts[0].second + counts[1].second;
        QVERIFY(near(expectedInformation({yes, no}, {counts[0].first / yes, counts[0].second / no}), bits, 1e-6));
    }
}

void TestSumsBayes::expectedInformationOfATest_data()
{
    QTest::addColumn<double>("prior");
    QTest::addColumn<double>("abnormalIf");
    QTest::addColumn<double>("abnormalIfNot");
    QTest::addColumn<double>("bits");
    QTest::addColumn<double>("tolerance");
    // 10_diagnosis_cases.csv, computed from the definition.
    QTest::newRow("B12") << 0.3 << 0.9 << 0.2 << 0.330452 << 1e-6;
    QTest::newRow("B14 perfect") << 0.5 << 1.0 << 0.0 << 1.0 << 1e-12;
    QTest::newRow("B14 useless") << 0.3 << 0.5 << 0.5 << 0.0 << 1e-12;
}

void TestSumsBayes::expectedInformationOfATest()
{
    QFETCH(double, prior);
    QFETCH(double, abnormalIf);
    QFETCH(double, abnormalIfNot);
    QFETCH(double, bits);
    QFETCH(double, tolerance);
    QVERIFY(near(expectedInformation({prior, 1 - prior}, {abnormalIf, abnormalIfNot}), bits, tolerance));
}

void TestSumsBayes::orders_data()
{
    QTest::addColumn<QString>("causes");
    QTest::addColumn<QString>("order");
    QTest::addColumn<double>("minutes");
    // 10_diagnosis_cases.csv; the rule is that of Kalagnanam and Henrion (S-KH), costs computed by brute force.
    QTest::newRow("J12") << "0.5:10,0.3:2,0.2:1"
                         << "3,2,1" << 7.60;
    // J13 ties 2 with 4 (10 = 10): the cheaper goes first. J16 (6.70) is the same data with the last inferred: not our choice.
    QTest::newRow("J13") << "0.40:8,0.30:3,0.20:5,0.10:1"
                         << "4,2,1,3" << 9.50;
    // Weights are of any scale, and ties go to the one entered first where the minutes are the same too.
    QTest::newRow("J12 in percent") << "50:10, 30:2, 20:1"
                                    << "3,2,1" << 7.60;
    QTest::newRow("all alike") << "1:4,1:4,1:4"
                               << "1,2,3" << 8.0;
    QTest::newRow("one without weight goes last") << "0:1,1:5"
                                                  << "2,1" << 5.0;
}

void TestSumsBayes::orders()
{
    QFETCH(QString, causes);
    QFETCH(QString, order);
    QFETCH(double, minutes);
    const auto out = reckon(QStringLiteral("check-order"), {{QStringLiteral("causes"), causes}});
    testing::wantOk(out);
    QStringList places;
    for (const QJsonValue &place : out->first().second.toArray())
        places << QString::number(place.toInt());
    QCOMPARE(places.join(QLatin1Char(',')), order);
    QVERIFY(near(value(out, QStringLiteral("expected_minutes")), minutes, 1e-9));
    // J12 and J13 by likelihood alone, and J13 by cost alone.
    const QList<SuspectCost> j12{{0.5, 10}, {0.3, 2}, {0.2, 1}}, j13{{0.4, 8}, {0.3, 3}, {0.2, 5}, {0.1, 1}};
    QVERIFY(near(expectedMinutes(j12, {0, 1, 2}), 11.20, 1e-9));
    QVERIFY(near(expectedMinutes(j13, {0, 1, 2, 3}), 11.40, 1e-9));
    QVERIFY(near(expectedMinutes(j13, {3, 1, 2, 0}), 9.90, 1e-9));
    // J23, screening tests that end at the first reject (S-REJECT): the same rule on cost over the chance of a reject.
    QCOMPARE(listed(checkOrder({{0.5, 4}, {0.1, 2}, {0.8, 5}})->order), QStringLiteral("3,1,2"));
}

void TestSumsBayes::orderAgainstAllOrders()
{
    QRandomGenerator dice(4);
    for (int round = 0; round < 2000; ++round) {
        QList<SuspectCost> suspects;
        for (int n = 1 + dice.bounded(6); n > 0; --n)
            suspects << SuspectCost{double(dice.bounded(100)), double(dice.bounded(40))};
        if (std::all_of(suspects.begin(), suspects.end(), [](const SuspectCost &each) { return each.weight == 0; }))
            continue;
        QList<qsizetype> order(suspects.size());
        std::iota(order.begin(), order.end(), 0);
        double best = 1e300;
        do
            best = std::min(best, expectedMinutes(suspects, order));
        while (std::next_permutation(order.begin(), order.end()));
        const auto found = checkOrder(suspects);
        testing::wantOk(found);
        QVERIFY(near(found->expectedMinutes, best, 1e-9));
    }
}

void TestSumsBayes::impossible()
{
    QVERIFY(bayes({0.5, 0.5}, {0, 0}).isEmpty());
    QVERIFY(bayes({0.5, 0.5}, {1}).isEmpty());
    QCOMPARE(bayes({2, 6}, {1, 1}), (QList<double>{0.25, 0.75}));
}

void TestSumsBayes::refusals_data()
{
    QTest::addColumn<QString>("sum");
    QTest::addColumn<QString>("given");
    QTest::addColumn<QString>("says");
    QTest::newRow("no chance") << "bayes"
                               << "prior=1.2 abnormal_if=0.9 abnormal_if_not=0.1 outcome=normal"
                               << "prior is no chance";
    QTest::newRow("rubbish") << "bayes"
                             << "prior=0.5 abnormal_if=often abnormal_if_not=0.1 outcome=normal"
                             << "abnormal_if is no chance";
    QTest::newRow("outcome") << "bayes"
                             << "prior=0.5 abnormal_if=0.9 abnormal_if_not=0.1 outcome=fine"
                             << "\"fine\" is no outcome";
    QTest::newRow("cannot happen") << "bayes"
                                   << "prior=0.5 abnormal_if=0 abnormal_if_not=0 outcome=abnormal"
                                   << "cannot happen";
    QTest::newRow("no minutes") << "check-order"
                                << "causes=0.5,0.3:2"
                                << "\"0.5\" is no weight and minutes";
    QTest::newRow("below 0") << "check-order"
                             << "causes=0.5:-1"
                             << "numbers from 0 up";
    QTest::newRow("all 0") << "check-order"
                           << "causes=0:1,0:2"
                           << "all weights are 0";
}

void TestSumsBayes::refusals()
{
    QFETCH(QString, sum);
    QFETCH(QString, given);
    QFETCH(QString, says);
    SumInput input;
    for (const QString &pair : given.split(QLatin1Char(' ')))
        input.insert(pair.section(QLatin1Char('='), 0, 0), pair.section(QLatin1Char('='), 1));
    const QString said = testing::refusal(reckon(sum, input));
    QVERIFY2(said.contains(says), qPrintable(said));
}

QTEST_GUILESS_MAIN(TestSumsBayes)
#include "test_sums_bayes.moc"
