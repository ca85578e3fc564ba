#include "jot_bench.h"
#include "model/faults/alike.h"
#include "model/faults/fault_board.h"
#include "model/faults/fault_offer.h"
#include "model/records/settings.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include <cmath>

using namespace ts;
using ts::testing::JotBench;

namespace {

bool near(double value, double wanted, double tolerance = 1e-9)
{
    if (std::abs(value - wanted) <= tolerance)
        return true;
    qWarning("%.17g is not %.17g within %g", value, wanted, tolerance);
    return false;
}

/// A table of one symptom with two causes, as a user would write it.
QJsonObject smallTable()
{
    const auto cause = [](const char *name, double weight) {
        return QJsonObject{{QStringLiteral("cause"), QString::fromLatin1(name)},
                           {QStringLiteral("weight"), weight},
                           {QStringLiteral("fix_minutes"), 20},
                           {QStringLiteral("check"), QStringLiteral("look at ") + QString::fromLatin1(name)},
                           {QStringLiteral("minutes"), 5},
                           {QStringLiteral("normal"), QStringLiteral("sound")},
                           {QStringLiteral("sources"), QJsonArray{QStringLiteral("own")}}};
    };
    return {{QStringLiteral("category"), QStringLiteral("tuner")},
            {QStringLiteral("status"), QStringLiteral("mine")},
            {QStringLiteral("sources"), QJsonObject{{QStringLiteral("own"), QStringLiteral("my own bench")}}},
            {QStringLiteral("symptoms"),
             QJsonArray{
                 QJsonObject{{QStringLiteral("symptom"), QStringLiteral("drifts")},
                             {QStringLiteral("something_else"), 0.2},
                             {QStringLiteral("causes"), QJsonArray{cause("ceramic capacitor", 0.5), cause("dial cord", 0.3)}}}}}};
}

QByteArray json(const QJsonObject &object)
{
    return QJsonDocument(object).toJson();
}

SolvedCause solved(const char *model, const char *symptom, const char *cause)
{
    SolvedCause each;
    each.maker = QStringLiteral("Tarrick");
    each.makerModel = QString::fromLatin1(model);
    each.category = Category::Tuner;
    each.symptom = QString::fromLatin1(symptom);
    each.cause = QString::fromLatin1(cause);
    return each;
}

FaultOffer smallOffer()
{
    return offersOf(*readTable(json(smallTable()))).first();
}

} // namespace

class TestFaultsTables : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void shipped_data();
    void shipped();
    void shippedTogether();
    void refused_data();
    void refused();
    void ownTableComesFirst();
    void thereAndBack();
    void blendedWithOwnUnits();
    void blendedByCategory();
    void broughtIn();
    void matching_data();
    void matching();
};

void TestFaultsTables::shipped_data()
{
    QTest::addColumn<int>("category");
    for (const auto &[category, word] : Words<Category>::list)
        if (category != Category::Other)
            QTest::newRow(word) << static_cast<int>(category);
}

void TestFaultsTables::shipped()
{
    QFETCH(int, category);
    QFile file(QStringLiteral(":/faults/%1.json").arg(toWord(static_cast<Category>(category))));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const auto table = readTable(file.readAll());
    testing::wantOk(table);
    QCOMPARE(static_cast<int>(table->category), category);
    QVERIFY(table->status.contains(QStringLiteral("starting values")));
    QVERIFY(!table->symptoms.isEmpty());
    for (const QString &source : table->sources)
        QVERIFY(source.size() > 10);
    if (table->sources.contains(QStringLiteral("open_repair_records")))
        QVERIFY(table->sources.value(QStringLiteral("open_repair_records")).contains(QStringLiteral("CC BY-SA 4.0")));
    for (const TableSymptom &symptom : table->symptoms) {
        double sum = symptom.somethingElse;
        for (const TableCause &cause : symptom.causes) {
            sum += cause.weight;
            QVERIFY2(!cause.sources.isEmpty() && cause.minutes > 0 && cause.fixMinutes > 0 && !cause.normal.isEmpty(),
                     qPrintable(cause.cause));
        }
        QVERIFY2(std::abs(sum - 1) < 1e-9, qPrintable(symptom.symptom));
    }
    if (table->outcomes) {
        QCOMPARE(table->outcomes->fixed + table->outcomes->repairable + table->outcomes->endOfLife, table->outcomes->of);
        QVERIFY(table->outcomes->source.contains(QStringLiteral("Open Repair")));
    }
}

void TestFaultsTables::shippedTogether()
{
    qsizetype symptoms = 0, causes = 0;
    for (const StartingTable &table : allTables({}))
        for (const TableSymptom &symptom : table.symptoms) {
            ++symptoms;
            causes += symptom.causes.size();
        }
    // As many as the collection they were written from has: ../shared/trade/categories.csv, 78 symptoms and 316 rows.
    QCOMPARE(symptoms, 78);
    QCOMPARE(causes, 316);
    // Disc players in open repair records: 992 of 1,971 fixed on the day (../shared/trade/base_rates.csv).
    QCOMPARE(tableOf({}, Category::DiscPlayer).outcomes->fixed, 992);
    QCOMPARE(tableOf({}, Category::DiscPlayer).outcomes->of, 1971);
    QVERIFY(tableOf({}, Category::Other).symptoms.isEmpty());
}

void TestFaultsTables::refused_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QString>("says");
    const auto changed = [](auto change) {
        QJsonObject table = smallTable();
        QJsonObject symptom = table.value(QStringLiteral("symptoms")).toArray().first().toObject();
        QJsonArray causes = symptom.value(QStringLiteral("causes")).toArray();
        change(table, symptom, causes);
        symptom.insert(QStringLiteral("causes"), causes);
        table.insert(QStringLiteral("symptoms"), QJsonArray{symptom});
        return json(table);
    };
    const auto cause = [&](const char *key, const QJsonValue &value) {
        return changed([&](QJsonObject &, QJsonObject &, QJsonArray &causes) {
            QJsonObject first = causes.first().toObject();
            first.insert(QLatin1String(key), value);
            causes[0] = first;
        });
    };
    QTest::newRow("no JSON") << QByteArray("[{") << "it is no JSON";
    QTest::newRow("category") << changed([](QJsonObject &table, auto &, auto &) {
        table.insert(QStringLiteral("category"), QStringLiteral("toaster"));
    }) << "\"toaster\" is no category";
    QTest::newRow("sum") << cause("weight", 0.6) << "add up to 1.1";
    QTest::newRow("weight") << cause("weight", -0.1) << "weight is no share";
    QTest::newRow("minutes") << cause("minutes", QStringLiteral("five")) << "minutes is no number of minutes";
    QTest::newRow("no check") << cause("check", QString()) << "it has no check";
    QTest::newRow("twice") << cause("cause", QStringLiteral("Dial cord")) << "stands there twice";
    QTest::newRow("also") << cause("also", QJsonArray{QStringLiteral("valve")}) << "which is no other cause there";
    QTest::newRow("source") << cause("sources", QJsonArray{QStringLiteral("hearsay")}) << "the source \"hearsay\" is not named";
    QTest::newRow("something else") << changed([](auto &, QJsonObject &symptom, auto &) {
        symptom.remove(QStringLiteral("something_else"));
    }) << "something_else is no share";
}

void TestFaultsTables::refused()
{
    QFETCH(QByteArray, text);
    QFETCH(QString, says);
    const QString said = testing::refusal(readTables(text));
    QVERIFY2(said.contains(says), qPrintable(said));
}

void TestFaultsTables::ownTableComesFirst()
{
    BenchFile bench;
    Setting setting;
    setting.name = settings::faultTables;
    setting.value = QString::fromUtf8(json(smallTable()));
    bench.all<Setting>() << setting;
    QVERIFY(tableOf(bench, Category::Tuner).own);
    QCOMPARE(tableOf(bench, Category::Tuner).symptoms.size(), 1);
    QVERIFY(!tableOf(bench, Category::Turntable).own);
    QVERIFY(tableOf(bench, Category::Turntable).symptoms.size() > 1);
    // One that has been spoilt since gives way to what ships.
    bench.all<Setting>().first().value = QStringLiteral("{");
    QVERIFY(!tableOf(bench, Category::Tuner).own);
}

void TestFaultsTables::thereAndBack()
{
    const QList<StartingTable> all = allTables({});
    const auto again = readTables(writeTables(all));
    testing::wantOk(again);
    QCOMPARE(writeTables(*again), writeTables(all));
}

void TestFaultsTables::blendedWithOwnUnits()
{
    Unit unit;
    unit.maker = QStringLiteral("Tarrick");
    unit.makerModel = QStringLiteral("T-9");
    unit.category = Category::Tuner;
    const QList<SolvedCause> history{solved("T-9", "drifts", "dial cord"), solved("T-9", "drifts", "dial cord"),
                                     solved("t-9", "Drifts", "regulator"), solved("T-3", "drifts", "ceramic capacitor"),
                                     solved("T-9", "hums", "earth lead")};
    const FaultOffer offer = blended(smallOffer(), unit, history);
    // Three of this model with this symptom; the offer counts as eight. By hand: (8 × 0.5 + 0) / 11, (8 × 0.3 + 2) / 11, 1 /
    // 11, 1.6 / 11.
    QCOMPARE(offer.causes.size(), 3);
    QVERIFY(near(offer.causes[0].weight, 4.0 / 11));
    QVERIFY(near(offer.causes[1].weight, 4.4 / 11));
    QCOMPARE(offer.causes[2].text, QStringLiteral("regulator"));
    QVERIFY(near(offer.causes[2].weight, 1.0 / 11));
    QVERIFY(near(offer.somethingElse, 1.6 / 11));
    QCOMPARE(offer.causes[1].count, 2);
    QCOMPARE(offer.causes[1].from, QStringLiteral("2 of your 3 closed units of this model; starting value (own) 30 %"));
    QVERIFY(offer.basis.first().contains(QStringLiteral("3 closed units of this model")));
}

void TestFaultsTables::blendedByCategory()
{
    Unit unit;
    unit.maker = QStringLiteral("Tarrick");
    unit.makerModel = QStringLiteral("T-70");
    unit.category = Category::Tuner;
    const FaultOffer offer = blended(smallOffer(), unit, {solved("T-9", "drifts", "dial cord")});
    QVERIFY(near(offer.causes[1].weight, 3.4 / 9));
    QVERIFY(offer.causes[1].from.contains(QStringLiteral("1 of your 1 closed units of this category")));
    // Nothing of one's own: as it was.
    QCOMPARE(blended(smallOffer(), unit, {}).causes[0].weight, 0.5);
    QCOMPARE(blended(smallOffer(), unit, {solved("T-9", "hums", "earth lead")}).causes[0].weight, 0.5);
}

void TestFaultsTables::broughtIn()
{
    JotBench bench;
    bench.put(QStringLiteral("saw it drifts"));
    const Id<Symptom> symptom = bench.last<Symptom>().id;
    bench.put(QStringLiteral("think Dial cord 40% 10m"));
    const auto change = bringIn(bench.file, symptom, smallOffer(), bench.maker());
    testing::wantOk(change);
    QCOMPARE(change->sentence(), QStringLiteral("Brought in from starting values of the category: 1 causes, 2 checks"));
    bench.apply(*change);
    QCOMPARE(bench.count<Cause>(), 3); // dial cord as it was, the capacitor, something else
    QCOMPARE(bench.count<Check>(), 2);
    QCOMPARE(bench.count<Bearing>(), 2);
    QCOMPARE(bench.file.all<Cause>().first().weight, std::optional(0.4));
    QCOMPARE(bench.file.all<Cause>().at(1).weightFrom, QStringLiteral("starting value (own)"));
    QCOMPARE(bench.file.all<Check>().first().wanted, QStringLiteral("sound"));
    const FaultBoard board = boardOf(bench.file, bench.bench, symptom);
    for (const BoardCause &cause : board.causes)
        QCOMPARE(cause.weightTyped, cause.text == QStringLiteral("Dial cord"));
    for (const BoardCheck &check : board.checks)
        QCOMPARE(std::count_if(check.marks.begin(), check.marks.end(), [](const BoardMark &mark) { return mark.marked(); }), 1);
    QVERIFY(testing::refusal(bringIn(bench.file, symptom, smallOffer(), bench.maker())).contains(QStringLiteral("already")));
    // A weight of one's own stands for itself from then on.
    bench.put(QStringLiteral("think ceramic capacitor 70%"));
    QCOMPARE(bench.file.all<Cause>().at(1).weightFrom, QString());
}

void TestFaultsTables::matching_data()
{
    QTest::addColumn<int>("category");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("found");
    QTest::newRow("hum") << int(Category::AmplifierReceiver) << "hum in both channels"
                         << "hum in both channels";
    QTest::newRow("relay") << int(Category::AmplifierReceiver) << "Protection relay will not close"
                           << "the protection relay does not close";
    QTest::newRow("one channel") << int(Category::CassetteDeck) << "left channel low"
                                 << "one channel silent, low or crackling";
    QTest::newRow("tray") << int(Category::DiscPlayer) << "tray stays shut"
                          << "tray stays shut, or does not close";
    QTest::newRow("none") << int(Category::DiscPlayer) << "smells of lavender"
                          << "";
}

void TestFaultsTables::matching()
{
    QFETCH(int, category);
    QFETCH(QString, typed);
    QFETCH(QString, found);
    const QList<FaultOffer> offers = offersOf(tableOf({}, static_cast<Category>(category)));
    const qsizetype place = offerFor(offers, typed);
    QCOMPARE(place < 0 ? QString() : offers[place].symptom, found);
    QVERIFY(alike(QStringLiteral("Belt, slack"), QStringLiteral("slack belts")));
    QVERIFY(!alike(QStringLiteral("belt slack"), QStringLiteral("motor worn")));
}

QTEST_GUILESS_MAIN(TestFaultsTables)
#include "test_faults_tables.moc"
