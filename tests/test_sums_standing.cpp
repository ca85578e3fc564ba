#include "model/sums/category_facts.h"
#include "model/sums/standing.h"
#include "tests/testing.h"

using namespace ts;

namespace {

QDateTime at(int hour, int minute, int second = 0)
{
    return QDateTime(QDate(2026, 11, 25), QTime(hour, minute, second), Qt::UTC);
}

/// Ids that ascend, as the program's own do.
template <class R>
Id<R> nextId()
{
    static quint16 count = 0;
    return Id<R>{QUuid(0x019aa000u, ++count, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1)};
}

template <class R>
R &added(UnitFile &file, const QDateTime &when = at(10, 0))
{
    R record;
    record.id = nextId<R>();
    record.at = when;
    file.all<R>() << record;
    return file.all<R>().last();
}

void reading(UnitFile &file, const char *name, const char *value, const char *wanted, Phase phase,
             const QDateTime &when = at(11, 0))
{
    auto &record = added<Reading>(file, when);
    record.name = QString::fromUtf8(name);
    record.value = *Quantity::parse(QString::fromUtf8(value));
    record.wanted = *Limit::parse(QString::fromUtf8(wanted));
    record.phase = phase;
}

void off(UnitFile &file, const char *what, const char *fasteners, std::optional<int> count, int position)
{
    auto &record = added<TeardownItem>(file);
    record.what = QString::fromUtf8(what);
    record.fasteners = QString::fromUtf8(fasteners);
    record.fastenerCount = count;
    record.position = position;
    record.keptIn = QStringLiteral("tray A1");
}

QString lines(const QStringList &all)
{
    return all.join(QLatin1Char('\n'));
}

} // namespace

class TestSumsStanding : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void stands();
    void fasteners_data();
    void fasteners();
    void latest();
    void cautionsByCategory();
    void cautionsDefer();
    void mains();
};

void TestSumsStanding::stands()
{
    UnitFile file;
    auto &open = added<Symptom>(file);
    open.text = QStringLiteral("left channel weak");
    auto &cleared = added<Symptom>(file);
    cleared.state = SymptomState::Cleared;
    reading(file, "torque", "14 gf.cm", "35..65 gf.cm", Phase::AsFound, at(10, 0));
    reading(file, "torque", "47 gf.cm", "35..65 gf.cm", Phase::AsItLeaves, at(11, 0)); // put right since
    reading(file, "line out L", "96 mV", "387 mV 2dB", Phase::AsFound, at(10, 30));
    reading(file, "flutter", "< 0.2 %", "<= 0.12 %", Phase::AsFound, at(10, 31));
    for (const auto &[text, state, due] : {std::tuple{"belt", NeedState::Ordered, QDate(2026, 11, 30)},
                                           {"tyre", NeedState::Ordered, QDate(2026, 11, 28)},
                                           {"lamp", NeedState::Needed, QDate()},
                                           {"felt", NeedState::Here, QDate()},
                                           {"fuse", NeedState::Fitted, QDate()}}) {
        auto &need = added<Need>(file);
        need.text = QString::fromUtf8(text);
        need.state = state;
        need.due = due;
    }
    off(file, "lid", "5 screws M3x8", 5, 1);
    off(file, "front", "4 screw M3x8, 2 clips", {}, 2);
    off(file, "board", "", {}, 3);
    auto &back = added<TeardownItem>(file);
    back.state = TeardownState::Back;
    back.fasteners = QStringLiteral("9 screws");
    auto &left = added<LeftOff>(file, at(22, 10));
    left.next = QStringLiteral("swap head leads");
    left.doNotPower = QStringLiteral("CN5 unplugged");

    const Standing now = standing(file, {});
    QCOMPARE(now.symptoms, 2);
    QCOMPARE(now.openSymptoms.size(), 1);
    QCOMPARE(now.outside.size(), 1);
    QCOMPARE(now.outside.first().reading.name, QStringLiteral("line out L"));
    QCOMPARE(now.tooClose.size(), 1);
    QStringList awaited;
    for (const Need &need : now.awaited)
        awaited << need.text;
    QCOMPARE(awaited, (QStringList{QStringLiteral("tyre"), QStringLiteral("belt"), QStringLiteral("lamp")}));
    QCOMPARE(now.loose.size(), 3);
    QCOMPARE(now.loose.first().what, QStringLiteral("board")); // last off goes back first
    QCOMPARE(now.fasteners, (QList<FastenerCount>{{QStringLiteral("screw M3x8"), 9}, {QStringLiteral("clips"), 2}}));
    QCOMPARE(now.keptIn, QStringList{QStringLiteral("tray A1")});
    QCOMPARE(now.next, QStringLiteral("swap head leads"));
    QCOMPARE(now.doNotPower, QStringLiteral("CN5 unplugged"));
    QCOMPARE(now.leftOffAt, at(22, 10));
    QVERIFY(now.cautions.first().contains(QStringLiteral("CN5 unplugged")));
}

void TestSumsStanding::fasteners_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("count"); // below zero: none
    QTest::addColumn<QString>("found");
    // Readings of plain words; no source.
    QTest::newRow("one kind") << "5 screws M3x8" << -1 << "5 screws M3x8";
    QTest::newRow("count beside") << "screws M3x8" << 5 << "5 screws M3x8";
    QTest::newRow("count twice") << "5 screws M3x8" << 5 << "5 screws M3x8";
    QTest::newRow("count corrected") << "5 screws M3x8" << 4 << "4 screws M3x8";
    QTest::newRow("two kinds") << "4 screws M3x8, 2 self-tappers" << 6 << "4 screws M3x8|2 self-tappers";
    QTest::newRow("and") << "1 nut and 3 washers" << -1 << "1 nut|3 washers";
    QTest::newRow("times") << "2 x M2.5x6" << -1 << "2 M2.5x6";
    QTest::newRow("count alone") << "" << 7 << "7 fasteners";
    QTest::newRow("nothing to read") << "some clips" << -1 << "";
    QTest::newRow("nothing") << "" << -1 << "";
    QTest::newRow("partly") << "3 screws, clips" << -1 << "3 screws";
}

void TestSumsStanding::fasteners()
{
    QFETCH(QString, text);
    QFETCH(int, count);
    QFETCH(QString, found);
    TeardownItem item;
    item.fasteners = text;
    if (count >= 0)
        item.fastenerCount = count;
    QStringList said;
    for (const FastenerCount &each : fastenersOf(item))
        said << QStringLiteral("%1 %2").arg(each.count).arg(each.kind);
    QCOMPARE(said.join(QLatin1Char('|')), found);
}

void TestSumsStanding::latest()
{
    UnitFile file;
    auto &point = added<TestPoint>(file);
    point.name = QStringLiteral("CN2.4");
    reading(file, "CN2.4", "11 V", "12 V 5%", Phase::AsFound, at(10, 0));
    file.all<Reading>().last().point = point.id;
    reading(file, "cn2.4 ", "12 V", "12 V 5%", Phase::AsItLeaves, at(11, 0)); // only named
    QCOMPARE(latestReadings(file).size(), 1);
    QCOMPARE(latestReadings(file).first().value->value(), 12.0);
    QCOMPARE(latestReadings(file, Phase::AsFound).first().value->value(), 11.0);
    QVERIFY(latestReadings(file, Phase::DuringWork).isEmpty());
}

void TestSumsStanding::cautionsByCategory()
{
    const auto of = [](Category category, const QString &plate = {}) {
        UnitFile file;
        file.unit.category = category;
        file.unit.mains = plate;
        return lines(cautions(file, {}));
    };
    // Which hazards belong to which category: common practice, no standard lists them.
    QVERIFY(of(Category::DiscPlayer).contains(QStringLiteral("Laser")));
    QVERIFY(!of(Category::CassetteDeck).contains(QStringLiteral("Laser")));
    QVERIFY(of(Category::OldComputer).contains(QStringLiteral("Picture tube")));
    QVERIFY(of(Category::Radio).contains(QStringLiteral("Live chassis")));
    QVERIFY(of(Category::GameConsole).contains(QStringLiteral("Lithium")));
    QVERIFY(of(Category::AmplifierReceiver).contains(QStringLiteral("Stored charge")));
    QVERIFY(!of(Category::Loudspeaker).contains(QStringLiteral("Mains")));
    QVERIFY(of(Category::Loudspeaker, QStringLiteral("230 V 50 Hz")).contains(QStringLiteral("Mains")));
    QVERIFY(!of(Category::Radio, QStringLiteral("9 V DC, battery")).contains(QStringLiteral("Mains:")));
    QVERIFY(of(Category::Other).contains(QStringLiteral("Mains")));

    UnitFile file;
    file.unit.maker = QStringLiteral("Pellworth");
    file.unit.makerModel = QStringLiteral("KD-7");
    auto &item = added<TeardownItem>(file);
    item.what = QStringLiteral("spring");
    item.caution = QStringLiteral("under tension");
    BenchFile bench;
    ModelNotes notes;
    notes.maker = QStringLiteral("pellworth");
    notes.makerModel = QStringLiteral("KD-7 ");
    notes.cautions = QStringLiteral("chassis edge is sharp");
    bench.all<ModelNotes>() << notes;
    QVERIFY(cautions(file, bench).contains(QStringLiteral("spring: under tension")));
    QVERIFY(cautions(file, bench).contains(QStringLiteral("chassis edge is sharp")));
    bench.all<ModelNotes>().first().makerModel = QStringLiteral("KD-8");
    QVERIFY(!cautions(file, bench).contains(QStringLiteral("chassis edge is sharp")));
}

void TestSumsStanding::cautionsDefer()
{
    for (const auto &[category, word] : Words<Category>::list) {
        UnitFile file;
        file.unit.category = category;
        const QStringList all = cautions(file, {});
        QVERIFY2(!all.isEmpty(), word);
        for (const QString &each : all) // every text of the program's own names who has the last word
            QVERIFY2(each.contains(QStringLiteral("ocal")), qPrintable(each));
    }
}

void TestSumsStanding::mains()
{
    Unit unit;
    unit.category = Category::CassetteDeck;
    QVERIFY(mainsPowered(unit));
    unit.protectionClass = ProtectionClass::III;
    QVERIFY(!mainsPowered(unit));
    unit.protectionClass = ProtectionClass::II;
    unit.category = Category::Loudspeaker;
    QVERIFY(mainsPowered(unit));
    unit.protectionClass.reset();
    QVERIFY(!mainsPowered(unit));
    unit.mains = QStringLiteral("115/230 V~ 50/60 Hz");
    QVERIFY(mainsPowered(unit));
}

QTEST_GUILESS_MAIN(TestSumsStanding)
#include "test_sums_standing.moc"
