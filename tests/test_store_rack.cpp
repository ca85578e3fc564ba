// The rack's sums are worked out in SQL; the same sums in plain code (model/sums) are the other opinion.
#include "model/records/stage_change.h"
#include "model/sums/hours.h"
#include "model/sums/spent.h"
#include "tests/generated_rows.h"
#include "tests/workbooks.h"

#include <algorithm>

using namespace ts;
using namespace ts::testing;

namespace {

class Bench {
public:
    Bench(OpenDesk &desk, quint32 seed) : m_desk(desk), m_random(seed) {}

    Unit unit()
    {
        Unit unit = m_desk->maker().fresh<Unit>();
        unit.name = QStringLiteral("Unit");
        unit.stage = *fromWord<Stage>(m_random.pick(allWords<Stage>()));
        unit.stageSince = at();
        m_unit = unit.id;
        return unit;
    }
    ClockSpan span()
    {
        ClockSpan span = fresh<ClockSpan>();
        span.startedAt = at();
        // Mostly some whole half minutes, so that sums fall on the very edge of rounding; also none, one that runs, one that ends before it starts.
        const int how = m_random.below(10);
        if (how > 0)
            span.endedAt = span.startedAt.addSecs(how == 1 ? -600 : how == 2 ? 0 : 30 * m_random.below(900)).addMSecs(how == 3 ? m_random.below(60000) : 0);
        if (m_random.below(5) == 0)
            span.countedMinutes = m_random.below(200);
        return span;
    }
    Step step()
    {
        Step step = fresh<Step>();
        step.text = QStringLiteral("Cleaned");
        step.at = at();
        if (m_random.below(4) > 0)
            step.minutes = m_random.below(90);
        return step;
    }
    Spend spend()
    {
        Spend spend = fresh<Spend>();
        spend.text = QStringLiteral("Carriage");
        spend.kind = *fromWord<SpendKind>(m_random.pick(allWords<SpendKind>()));
        spend.flow = m_random.below(3) == 0 ? Flow::In : Flow::Out;
        spend.amount = money();
        if (m_random.below(2) == 0)
            spend.inBenchCurrency = money();
        return spend;
    }
    Need need()
    {
        Need need = fresh<Need>();
        need.text = QStringLiteral("Belt");
        need.state = *fromWord<NeedState>(m_random.pick(allWords<NeedState>()));
        need.quantity = m_random.below(5);
        if (m_random.below(4) > 0)
            need.price = money();
        return need;
    }
    Symptom symptom()
    {
        Symptom symptom = fresh<Symptom>();
        symptom.text = QStringLiteral("hums %1").arg(m_random.below(1000));
        symptom.state = m_random.below(2) == 0 ? SymptomState::Open : SymptomState::Cleared;
        symptom.at = at();
        return symptom;
    }
    int below(int limit) { return m_random.below(limit); }
    const Id<Unit> &unitId() const { return m_unit; }

private:
    template <class R>
    R fresh()
    {
        R record = m_desk->maker().fresh<R>();
        record.unit = m_unit;
        return record;
    }
    QDateTime at() { return QDateTime({2026, 11, 24}, {9, 0}, Qt::UTC).addSecs(30 * m_random.below(2400)); }
    Money money()
    {
        const auto currency = m_random.pick<QString>({QStringLiteral("GBP"), QStringLiteral("GBP"), QStringLiteral("EUR"), QStringLiteral("JPY")});
        return Money(m_random.below(100'000) - 5'000, *Currency::parse(currency));
    }

    OpenDesk &m_desk;
    GeneratedRows m_random;
    Id<Unit> m_unit;
};

template <class R>
void addSome(OpenDesk &desk, Bench &bench, R (Bench::*make)(), int most)
{
    for (int i = bench.below(most + 1); i > 0; --i) {
        const R record = (bench.*make)();
        wantOk(desk->apply(Change(QStringLiteral("Added")).add(record)));
        if (bench.below(6) == 0)
            wantOk(desk->apply(Change(QStringLiteral("Removed")).remove(*desk->get(record.id))));
    }
}

QString line(const RackRow &row)
{
    return QStringLiteral("%1 %2 %3 %4 %5 %6 %7").arg(row.tag).arg(toWord(row.stage)).arg(row.spent.minor()).arg(row.minutes)
        .arg(row.symptom).arg(row.doNotPower).arg(row.stageSince.toString(Qt::ISODateWithMs));
}

} // namespace

class TestStoreRack : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static void compare(OpenDesk &desk, const Currency &currency)
    {
        const auto rack = desk->rack();
        wantOk(rack);
        QVERIFY(rack->size() > 10);
        bool spentSome = false;
        bool workedSome = false;
        for (const RackRow &row : *rack) {
            const auto file = desk->unitFile(row.id);
            wantOk(file);
            QCOMPARE(row.spent, spentOn(*file, currency).total);
            QCOMPARE(row.minutes, hoursOf(*file, desk.clock.now()).minutes());
            QString symptom;
            for (const Symptom &each : file->all<Symptom>()) // in order of time: the last open one
                symptom = each.state == SymptomState::Open ? each.text : symptom;
            QCOMPARE(row.symptom, symptom);
            QCOMPARE(row.doNotPower, !file->all<LeftOff>().isEmpty() && !file->all<LeftOff>().first().doNotPower.isEmpty());
            QCOMPARE(row.stage, file->unit.stage);
            QCOMPARE(row.stageSince, file->unit.stageSince);
            spentSome = spentSome || row.spent.minor() != 0;
            workedSome = workedSome || row.minutes != 0;
        }
        QVERIFY(spentSome && workedSome);
    }

private Q_SLOTS:
    void sumsAgree_data() { engineRows(); }
    void sumsAgree()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        desk.clock.set(QDateTime({2026, 11, 25}, {9, 0, 30}, Qt::UTC));
        Bench bench(desk, 4711);
        for (int i = 0; i < 40; ++i) {
            wantOk(desk->apply(Change(QStringLiteral("Took in")).add(bench.unit())));
            addSome(desk, bench, &Bench::span, 6);
            addSome(desk, bench, &Bench::step, 5);
            addSome(desk, bench, &Bench::spend, 5);
            addSome(desk, bench, &Bench::need, 5);
            addSome(desk, bench, &Bench::symptom, 3);
            if (bench.below(3) == 0) {
                LeftOff left = desk->maker().fresh<LeftOff>();
                left.unit = bench.unitId();
                left.doNotPower = bench.below(2) == 0 ? QStringLiteral("primary exposed") : QString();
                wantOk(desk->apply(Change(QStringLiteral("Left")).add(left)));
            }
        }
        compare(desk, *Currency::parse(u"GBP"));
        for (const char *code : {"EUR", "JPY"}) { // the bench's own currency moves: other spends count as they are
            Setting setting = desk->maker().fresh<Setting>();
            setting.name = QStringLiteral("currency");
            setting.value = QLatin1String(code);
            wantOk(desk->apply(Change(QStringLiteral("Set")).add(setting)));
            compare(desk, *Currency::parse(setting.value));
            wantOk(desk->undo());
        }
        desk.clock.advance(86'400);
        compare(desk, *Currency::parse(u"GBP")); // spans that run have grown
    }

    void aPriceWithoutCurrencyIsInTheBenchs_data() { engineRows(); }
    void aPriceWithoutCurrencyIsInTheBenchs()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Bench bench(desk, 1);
        const Unit unit = bench.unit();
        Need need = bench.need();
        need.state = NeedState::Fitted;
        need.quantity = 2;
        need.price = Money(617, *Currency::parse(u"EUR"));
        Row row = description<Need>().toRow(need);
        row[description<Need>().column(u"price_currency")] = QStringLiteral("");
        wantOk(desk->apply(Change(QStringLiteral("Took in")).add(unit).addItem({&description<Need>(), std::nullopt, row})));
        QCOMPARE(desk->rack()->first().spent.minor(), 1234);
        QCOMPARE(spentOn(*desk->unitFile(unit.id), *Currency::parse(u"GBP")).total.minor(), 1234);
    }

    void pagesAreTheWhole_data() { engineRows(); }
    void pagesAreTheWhole()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Bench bench(desk, 99);
        for (int i = 0; i < 57; ++i)
            wantOk(desk->apply(Change(QStringLiteral("Took in")).add(bench.unit()).add(bench.span()).add(bench.spend()).add(bench.symptom())));
        const auto lines = [&](const RackQuery &query) {
            QStringList all;
            const auto rows = desk->rack(query);
            for (const RackRow &row : *rows)
                all << line(row);
            return all;
        };
        const QStringList whole = lines({});
        QCOMPARE(whole.size(), 57);
        for (const int page : {1, 7, 57, 100}) {
            QStringList pages;
            for (int from = 0; from < 57; from += page)
                pages += lines({from, page, {}});
            QCOMPARE(pages, whole);
        }
        QCOMPARE(lines({57, 10, {}}), QStringList());
        QCOMPARE(lines({0, 0, {}}), QStringList());
        QStringList byStage; // the order of the stages on the rack (model/desk/rack_row.h)
        for (const Stage stage : {Stage::Bench, Stage::Held, Stage::Proving, Stage::Ready, Stage::Offered, Stage::Shelved, Stage::Inbound, Stage::Scouted, Stage::Closed}) {
            const QStringList some = lines({0, -1, stage});
            for (const QString &each : some)
                QCOMPARE(each.section(QLatin1Char(' '), 1, 1), toWord(stage));
            QCOMPARE(lines({0, 2, stage}) + lines({2, 100, stage}), some);
            byStage += some;
        }
        QCOMPARE(byStage, whole);
    }

    void theOrderIsTheRacks_data() { engineRows(); }
    void theOrderIsTheRacks()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Bench bench(desk, 5);
        QSet<QString> names;
        for (int i = 0; i < 60; ++i) {
            Unit unit = bench.unit();
            unit.name = QStringLiteral("%1 unit %2").arg(QChar(u'a' + bench.below(26))).arg(bench.below(5));
            if (unit.stage == Stage::Held && bench.below(2) == 0)
                unit.heldUntil = QDate(2026, 12, 1).addDays(bench.below(40));
            names << unit.name;
            wantOk(desk->apply(Change(QStringLiteral("Took in")).add(unit)));
        }
        QVERIFY(names.size() > 20);
        const auto rack = desk->rack(); // sorted by the other statement
        wantOk(rack);
        const auto order = desk->rackOrder({}, RackSort::MovedLast);
        wantOk(order);
        QCOMPARE(order->size(), rack->size());
        const auto counts = desk->rackCounts();
        wantOk(counts);
        QHash<Stage, int> counted;
        for (qsizetype i = 0; i < rack->size(); ++i) {
            QCOMPARE(order->at(i).id, rack->at(i).id);
            QCOMPARE(order->at(i).stage, rack->at(i).stage);
            ++counted[rack->at(i).stage];
        }
        QCOMPARE(*counts, counted);
        QHash<QUuid, RackRow> byId;
        for (const RackRow &row : *rack)
            byId.insert(row.id.value, row);
        for (const RackSort sort : {RackSort::WaitingLongest, RackSort::ByTag, RackSort::ByName, RackSort::DueFirst}) {
            const auto sorted = desk->rackOrder({}, sort, {Stage::Held, Stage::Bench});
            wantOk(sorted);
            QCOMPARE(sorted->size(), counted.value(Stage::Held) + counted.value(Stage::Bench));
            for (qsizetype i = 1; i < sorted->size(); ++i) {
                const RackRow &a = byId[sorted->at(i - 1).id.value];
                const RackRow &b = byId[sorted->at(i).id.value];
                QVERIFY(a.stage == b.stage || (a.stage == Stage::Bench && b.stage == Stage::Held));
                if (a.stage != b.stage)
                    continue;
                QVERIFY(sort != RackSort::WaitingLongest || a.stageSince <= b.stageSince);
                QVERIFY(sort != RackSort::ByTag || a.tag > b.tag);
                QVERIFY(sort != RackSort::ByName || a.name <= b.name);
                QVERIFY(sort != RackSort::DueFirst || (a.heldUntil.isValid() && (!b.heldUntil.isValid() || a.heldUntil <= b.heldUntil)) || !b.heldUntil.isValid());
            }
        }
    }

    void wordsNarrowByUnitAndOpenSymptom_data() { engineRows(); }
    void wordsNarrowByUnitAndOpenSymptom()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Bench bench(desk, 6);
        const auto add = [&](const QString &name, const QString &symptom, SymptomState state) {
            Unit unit = bench.unit();
            unit.name = name;
            unit.stage = Stage::Bench;
            Symptom seen = bench.symptom();
            seen.text = symptom;
            seen.state = state;
            wantOk(desk->apply(Change(QStringLiteral("Took in")).add(unit).add(seen)));
            return unit.id;
        };
        const auto deck = add(QStringLiteral("Pellworth KD-7 Größe"), QStringLiteral("left channel weak"), SymptomState::Open);
        const auto tuner = add(QStringLiteral("Tarrick T-9"), QStringLiteral("left channel weak"), SymptomState::Cleared);
        const auto found = [&](const QString &words) {
            QSet<QUuid> units;
            const auto order = desk->rackOrder(words, RackSort::ByTag);
            for (const RackPlace &place : *order)
                units << place.id.value;
            const auto counts = desk->rackCounts(words);
            return counts->value(Stage::Bench) == units.size() ? units : QSet<QUuid>{QUuid()};
        };
        const QSet<QUuid> none;
        QCOMPARE(found({}), QSet<QUuid>({deck.value, tuner.value}));
        QCOMPARE(found(QStringLiteral("left")), QSet<QUuid>({deck.value})); // the tuner's is cleared
        QCOMPARE(found(QStringLiteral("PELL weak")), QSet<QUuid>({deck.value})); // one word of the unit, one of its symptom
        QCOMPARE(found(QStringLiteral("tarrick weak")), none);
        QCOMPARE(found(QStringLiteral("grosse")), QSet<QUuid>({deck.value}));
        QCOMPARE(found(QStringLiteral("0002")), QSet<QUuid>({tuner.value})); // a tag
        QCOMPARE(found(QStringLiteral("\" OR 1=1 --")), none);
        wantOk(desk->apply(Change(QStringLiteral("Removed")).remove(desk->list<Symptom>().value().first())));
        QCOMPARE(found(QStringLiteral("left")), none);
    }

    void aTagSaysWhatIsRecorded_data() { engineRows(); }
    void aTagSaysWhatIsRecorded()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        desk.clock.set(QDateTime({2026, 11, 25}, {9, 0, 30}, Qt::UTC));
        Bench bench(desk, 12);
        QList<Id<Unit>> all;
        for (int i = 0; i < 120; ++i) { // more than are read at once
            Unit unit = bench.unit();
            unit.mains = QStringLiteral("230 V 50 Hz");
            unit.claim = QStringLiteral("does not play");
            all << unit.id;
            wantOk(desk->apply(Change(QStringLiteral("Took in")).add(unit)));
            if (i % 7 != 0)
                continue;
            addSome(desk, bench, &Bench::span, 3);
            addSome(desk, bench, &Bench::step, 3);
            addSome(desk, bench, &Bench::need, 3);
            addSome(desk, bench, &Bench::spend, 6);
            addSome(desk, bench, &Bench::symptom, 4);
            TeardownItem lid = desk->maker().fresh<TeardownItem>();
            lid.unit = unit.id;
            lid.what = QStringLiteral("lid");
            lid.state = bench.below(2) == 0 ? TeardownState::Off : TeardownState::Back;
            Soak soak = desk->maker().fresh<Soak>();
            soak.unit = unit.id;
            soak.name = QStringLiteral("drift");
            soak.startedAt = unit.at.addSecs(-3600);
            soak.endedAt = bench.below(2) == 0 ? unit.at : QDateTime();
            Photo photo = desk->maker().fresh<Photo>();
            photo.unit = unit.id;
            LeftOff left = desk->maker().fresh<LeftOff>();
            left.unit = unit.id;
            left.next = QStringLiteral("fit the belt");
            photo.sha256 = *desk->keep(QByteArrayLiteral("x"));
            wantOk(desk->apply(Change(QStringLiteral("Added")).add(lid).add(soak).add(photo).add(left)));
        }
        const auto rows = desk->rackUnits(all);
        wantOk(rows);
        QCOMPARE(rows->size(), all.size());
        const auto whole = desk->rack();
        QHash<QUuid, QString> lines;
        for (const RackRow &row : *whole)
            lines.insert(row.id.value, line(row));
        for (qsizetype i = 0; i < all.size(); ++i) {
            const RackRow &row = rows->at(i);
            QCOMPARE(row.id, all.at(i));
            QCOMPARE(line(row), lines.value(row.id.value));
            const auto file = desk->unitFile(row.id);
            wantOk(file);
            const auto count = [](const auto &list, const auto &fits) { return static_cast<int>(std::count_if(list.begin(), list.end(), fits)); };
            QCOMPARE(row.taken, file->unit.at);
            QCOMPARE(row.mains, file->unit.mains);
            QCOMPARE(row.claim, file->unit.claim);
            QCOMPARE(row.openSymptoms, count(file->all<Symptom>(), [](const Symptom &each) { return each.state == SymptomState::Open; }));
            QCOMPARE(row.loose, count(file->all<TeardownItem>(), [](const TeardownItem &each) { return each.state == TeardownState::Off; }));
            QCOMPARE(row.photos, file->all<Photo>().size());
            QCOMPARE(row.next, file->all<LeftOff>().isEmpty() ? QString() : QStringLiteral("fit the belt"));
            const bool soaks = !file->all<Soak>().isEmpty() && !file->all<Soak>().first().endedAt.isValid();
            QCOMPARE(row.soak, soaks ? QStringLiteral("drift") : QString());
            QCOMPARE(row.soakSince, soaks ? file->all<Soak>().first().startedAt : QDateTime());
            std::optional<Money> sold;
            for (const Spend &each : file->all<Spend>())
                if (each.kind == SpendKind::Sale && each.flow == Flow::In)
                    sold = sold.value_or(Money()) + inCurrency(each, *Currency::parse(u"GBP")).value_or(Money(0, *Currency::parse(u"GBP")));
            QCOMPARE(row.soldFor, sold);
        }
        QCOMPARE(desk->rackUnits({Id<Unit>{desk.ids.nextUuid()}, all.at(3)})->size(), 1);
        QCOMPARE(desk->rackUnits({})->size(), 0);
    }

    void whereAndForHowMuchItIsOffered_data() { engineRows(); }
    void whereAndForHowMuchItIsOffered()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Bench bench(desk, 3);
        Unit unit = bench.unit();
        unit.stage = Stage::Bench;
        Channel channel = desk->maker().fresh<Channel>();
        channel.name = QStringLiteral("Lantern Lots");
        wantOk(desk->apply(Change(QStringLiteral("Took in")).add(channel).add(unit)));
        Maker maker = desk->maker();
        const auto move = [&](const StageWish &wish) { return stageChange(*desk->get(unit.id), wish, maker); };
        const Money price(6850, *Currency::parse(u"GBP"));
        QVERIFY(refusal(move({.stage = Stage::Bench, .asked = price})).contains(QLatin1String("only an offered unit")));
        QVERIFY(refusal(move({.stage = Stage::Offered, .asked = -price})).contains(QLatin1String("not below nothing")));
        const auto offered = move({.stage = Stage::Offered, .channel = channel.id, .asked = price});
        wantOk(offered);
        QVERIFY(offered->sentence().endsWith(QStringLiteral("Offered at £68.50")));
        wantOk(desk->apply(*offered));
        const RackRow row = desk->rackUnits({unit.id})->first();
        QCOMPARE(row.channel, channel.name);
        QCOMPARE(row.asked, std::optional(price));
        QCOMPARE(desk->unitFile(unit.id)->all<StageMove>().last().asked, std::optional(price));
        wantOk(desk->apply(*move({.stage = Stage::Shelved}))); // it is remembered for the next time
        QCOMPARE(desk->get(unit.id)->asked, std::optional(price));
        wantOk(desk->undo());
        wantOk(desk->undo());
        QCOMPARE(desk->get(unit.id)->asked, std::optional<Money>());
    }
};

QTEST_GUILESS_MAIN(TestStoreRack)
#include "test_store_rack.moc"
