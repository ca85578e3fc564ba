// What a unit should fetch: which comparables count, how much, and what is said about them.
#include "model/records/settings.h"
#include "model/sums/looks.h"
#include "model/sums/resale.h"
#include "tests/testing.h"

#include <cmath>

using namespace ts;

namespace {

const QDate today(2026, 11, 25);

const Currency &pounds()
{
    static const Currency currency = *Currency::parse(u"GBP");
    return currency;
}

UnitFile deck(const QString &looks = {})
{
    UnitFile file;
    file.unit.id = Id<Unit>{QUuid::createUuid()};
    file.unit.maker = QStringLiteral("Pellworth");
    file.unit.makerModel = QStringLiteral("KD-7");
    file.unit.category = Category::CassetteDeck;
    file.unit.looks = looks;
    return file;
}

Comparable sale(const UnitFile &file, const char *price, int daysAgo = 0)
{
    Comparable made;
    made.id = Id<Comparable>{QUuid::createUuid()};
    made.unit = file.unit.id;
    made.maker = file.unit.maker;
    made.makerModel = file.unit.makerModel;
    made.category = file.unit.category;
    made.price = *Money::parse(QString::fromUtf8(price), pounds());
    made.soldOn = today.addDays(-daysAgo);
    return made;
}

Resale estimate(const UnitFile &file, const QList<Comparable> &others = {}, ResaleTerms terms = {})
{
    terms.day = today;
    return resaleOf(file, {}, others, terms);
}

const CountedSale &find(const QList<CountedSale> &sales, const Comparable &sale)
{
    for (const CountedSale &each : sales)
        if (each.id == sale.id)
            return each;
    static const CountedSale none;
    return none;
}

} // namespace

class TestSumsResale : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void ageHalvesTheWeight();
    void sameDaySalesAreTypeEight();
    void askingAndOtherStatesStayApart();
    void foreignPrices();
    void looks_data();
    void looks();
    void looksAdjustThePrice();
    void carriageComesOff();
    void likeModels();
    void guessesAreCalledSo();
    void barsHoldEverything();
    void settingsAreRead();
};

void TestSumsResale::ageHalvesTheWeight()
{
    UnitFile file = deck();
    const Comparable fresh = sale(file, "100");
    const Comparable older = sale(file, "140", 120);
    Comparable undated = sale(file, "90");
    undated.soldOn = {};
    const Comparable future = sale(file, "95", -3);
    file.all<Comparable>() << fresh << older << undated << future;
    const Resale resale = estimate(file);
    // A half-life of 120 days: 1, 1/2, 1/2 for no date, 1 for a date still to come; out of 3.
    QCOMPARE(find(resale.sold, fresh).share, 1.0 / 3);
    QCOMPARE(find(resale.sold, older).share, 0.5 / 3);
    QCOMPARE(find(resale.sold, undated).share, 0.5 / 3);
    QCOMPARE(find(resale.sold, future).share, 1.0 / 3);
    QCOMPARE(find(resale.sold, older).why, QStringLiteral("120 days old, same model"));
    QCOMPARE(resale.effective, 9.0 / 2.5); // 3² / (1 + 1/4 + 1/4 + 1)
    QCOMPARE(resale.sold.constFirst().price.decimal(), QStringLiteral("90.00"));
}

void TestSumsResale::sameDaySalesAreTypeEight()
{
    UnitFile file = deck();
    for (const char *price : {"15", "20", "35", "40", "50"})
        file.all<Comparable>() << sale(file, price);
    const Resale resale = estimate(file);
    // Row Q12 of the quantile table, type 8: the 0.4 quantile of these is 27; by the same rule, h = 1/3 + 16/3 p, the others.
    QCOMPARE(resale.sample.quantile(0.4), 2700.0);
    QCOMPARE(resale.middle->decimal(), QStringLiteral("35.00"));
    QCOMPARE(resale.quarter->decimal(), QStringLiteral("18.33")); // h = 1.6667: 15 + 2/3 × 5
    QCOMPARE(resale.low->decimal(), QStringLiteral("15.00"));
    QCOMPARE(resale.high->decimal(), QStringLiteral("50.00"));
    QVERIFY(!resale.guessing);
    QCOMPARE(resale.heading, QStringLiteral("5 comparable sales, newest counts most"));
    QCOMPARE(resale.from, QStringLiteral("median of 5 sold comparables"));
}

void TestSumsResale::askingAndOtherStatesStayApart()
{
    UnitFile file = deck();
    Comparable asked = sale(file, "500");
    asked.asking = true;
    Comparable dead = sale(file, "20");
    dead.working = false;
    Comparable works = sale(file, "110");
    works.working = true;
    Comparable gone = sale(file, "1");
    gone.removed = true;
    file.all<Comparable>() << asked << dead << works << gone << sale(file, "100");
    const Resale working = estimate(file);
    QCOMPARE(working.count, 2);
    QCOMPARE(working.middle->decimal(), QStringLiteral("105.00"));
    QCOMPARE(working.asking.size(), 1);
    QCOMPARE(working.asking.constFirst().share, 0.0);
    QCOMPARE(working.leftOut, QStringList({QStringLiteral("1 asking price"), QStringLiteral("1 sold as not working")}));
    ResaleTerms asItStands;
    asItStands.working = false;
    const Resale stands = estimate(file, {}, asItStands);
    QCOMPARE(stands.count, 1);
    QCOMPARE(stands.middle->decimal(), QStringLiteral("20.00"));
    QVERIFY(stands.asking.isEmpty());
}

void TestSumsResale::foreignPrices()
{
    UnitFile file = deck();
    Comparable converted = sale(file, "120 EUR");
    converted.inBenchCurrency = *Money::parse(u"103.20", pounds());
    file.all<Comparable>() << converted << sale(file, "120 EUR");
    const Resale resale = estimate(file);
    QCOMPARE(resale.count, 1);
    QCOMPARE(resale.middle->decimal(), QStringLiteral("103.20"));
    QCOMPARE(resale.sold.constFirst().entered.display(), QStringLiteral("€120.00"));
    QCOMPARE(resale.leftOut, QStringList{QStringLiteral("1 sold in another currency")});
}

void TestSumsResale::looks_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("grade");
    const auto row = [](const char *text, int grade) { QTest::newRow(text) << QString::fromUtf8(text) << grade; };
    row("fair: lid scuffed", 1);
    row("very good, one mark", 3);
    row("Good", 2);
    row("working, mint, remote", 4);
    row("poor", 0);
    row("goods train", -1); // whole words only
    row("", -1);
    row("working, measured", -1);
}

void TestSumsResale::looks()
{
    QFETCH(QString, text);
    QFETCH(int, grade);
    QCOMPARE(looksGrade(text).value_or(-1), grade);
}

void TestSumsResale::looksAdjustThePrice()
{
    UnitFile file = deck(QStringLiteral("good"));
    Comparable better = sale(file, "200");
    better.condition = QStringLiteral("mint"); // two grades better: 14 % off
    Comparable worse = sale(file, "100");
    worse.condition = QStringLiteral("fair"); // one worse: 7 % on
    Comparable unsaid = sale(file, "150");
    unsaid.condition = QStringLiteral("working");
    file.all<Comparable>() << better << worse << unsaid;
    const Resale resale = estimate(file);
    QCOMPARE(find(resale.sold, better).price.decimal(), QStringLiteral("172.00"));
    QCOMPARE(find(resale.sold, worse).price.decimal(), QStringLiteral("107.00"));
    QCOMPARE(find(resale.sold, unsaid).price.decimal(), QStringLiteral("150.00"));
    QCOMPARE(find(resale.sold, better).why, QStringLiteral("0 days old, same model; looks 2 grades better: 14 % off"));
    file.unit.looks.clear(); // with no grade of its own nothing is adjusted
    QCOMPARE(find(estimate(file).sold, better).price.decimal(), QStringLiteral("200.00"));
}

void TestSumsResale::carriageComesOff()
{
    UnitFile file = deck();
    Comparable with = sale(file, "120");
    with.carriageIncluded = true;
    file.all<Comparable>() << with;
    ResaleTerms terms;
    terms.carriage = *Money::parse(u"11", pounds());
    QCOMPARE(estimate(file, {}, terms).middle->decimal(), QStringLiteral("109.00"));
    QCOMPARE(estimate(file).middle->decimal(), QStringLiteral("120.00"));
    QVERIFY(estimate(file).sold.constFirst().why.endsWith(QStringLiteral("carriage is in it")));
}

void TestSumsResale::likeModels()
{
    UnitFile file = deck();
    const UnitFile other = [] {
        UnitFile made = deck();
        made.unit.maker = QStringLiteral("Ardmoor");
        made.unit.makerModel = QStringLiteral("C-1");
        return made;
    }();
    Comparable sameModel = sale(file, "100");
    sameModel.unit = {};
    sameModel.makerModel = QStringLiteral("kd 7");
    Comparable sameMaker = sale(file, "60");
    sameMaker.unit = {};
    sameMaker.makerModel = QStringLiteral("KD-3");
    const Comparable sameKind = sale(other, "40");
    Comparable elsewhere = sale(other, "900");
    elsewhere.category = Category::Radio;
    Comparable entered = sale(other, "105");
    entered.likeness = 0.8;
    const Resale few = estimate(file, {sameModel, sameMaker, sameKind, elsewhere, entered});
    QCOMPARE(few.count, 4);
    const double all = 1 + 0.35 + 0.15 + 0.8;
    QCOMPARE(find(few.sold, sameModel).share, 1 / all);
    QCOMPARE(find(few.sold, sameMaker).share, 0.35 / all);
    QCOMPARE(find(few.sold, sameKind).share, 0.15 / all);
    QCOMPARE(find(few.sold, entered).share, 0.8 / all);
    QVERIFY(few.guessing);
    // Five of the model are enough: the others no longer count.
    for (int i = 0; i < 4; ++i)
        file.all<Comparable>() << sale(file, "101");
    const Resale enough = estimate(file, {sameModel, sameMaker, sameKind, elsewhere});
    QCOMPARE(enough.count, 5);
    QVERIFY(!enough.guessing);
    // The same sale given twice counts once.
    QCOMPARE(estimate(file, file.all<Comparable>()).count, 4);
}

void TestSumsResale::guessesAreCalledSo()
{
    UnitFile file = deck();
    const Resale none = estimate(file);
    QVERIFY(none.guessing && !none.middle && none.bars.isEmpty() && none.density(100) == 0);
    QVERIFY(none.why.contains(QStringLiteral("This is a guess: there are no sold comparables")));
    for (int i = 0; i < 4; ++i)
        file.all<Comparable>() << sale(file, "100");
    const Resale four = estimate(file);
    QVERIFY(four.guessing);
    QVERIFY(four.why.contains(QStringLiteral("it rests on 4 sold comparables")));
    file.all<Comparable>() << sale(file, "100");
    const Resale five = estimate(file);
    QVERIFY(!five.guessing && !five.why.contains(QStringLiteral("guess")));
    QVERIFY(five.width > 0); // all alike, and still not sure to the penny
}

void TestSumsResale::barsHoldEverything()
{
    UnitFile file = deck();
    int i = 0;
    for (const char *price : {"64", "78", "92", "98", "112", "118", "124", "126", "141", "155"})
        file.all<Comparable>() << sale(file, price, 20 * i++);
    const Resale resale = estimate(file);
    QVERIFY(resale.bars.size() >= 5 && resale.bars.size() <= 11);
    double held = 0;
    for (qsizetype k = 0; k < resale.bars.size(); ++k) {
        const PriceBar &bar = resale.bars.at(k);
        held += bar.share;
        if (k > 0)
            QCOMPARE(bar.from, resale.bars.at(k - 1).to);
        // Against the kernel estimate itself, summed by the midpoint rule.
        double sum = 0;
        for (double x = static_cast<double>(bar.from.minor()) + 0.5; x < static_cast<double>(bar.to.minor()); x += 1)
            sum += resale.density(x);
        QVERIFY2(std::abs(sum - bar.share) < 1e-6, qPrintable(QString::number(sum - bar.share)));
    }
    QVERIFY2(held > 0.9 && held <= 1, qPrintable(QString::number(held)));
    QVERIFY(resale.bars.first().from.minor() <= 6400 && resale.bars.last().to.minor() >= 15500);
}

void TestSumsResale::settingsAreRead()
{
    UnitFile file = deck();
    BenchFile bench;
    for (const auto &[name, value] : {std::pair{settings::resaleHalfLife, "60"}, {settings::looksStep, "10"}}) {
        Setting setting;
        setting.name = name;
        setting.value = QString::fromUtf8(value);
        bench.all<Setting>() << setting;
    }
    Plan plan;
    plan.carriageOut = *Money::parse(u"11", pounds());
    file.all<Plan>() << plan;
    const ResaleTerms terms = ResaleTerms::of(file, bench, today);
    QCOMPARE(terms.halfLife, 60);
    QCOMPARE(terms.looksStep, 100'000);
    QCOMPARE(terms.carriage->decimal(), QStringLiteral("11.00"));
    QCOMPARE(terms.day, today);
}

QTEST_GUILESS_MAIN(TestSumsResale)
#include "test_sums_resale.moc"
