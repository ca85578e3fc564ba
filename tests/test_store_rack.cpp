// The rack's sums are worked out in SQL; the same sums in plain code (model/sums) are the other opinion.
#include "model/sums/hours.h"
#include "model/sums/spent.h"
#include "tests/generated_rows.h"
#include "tests/workbooks.h"

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
};

QTEST_GUILESS_MAIN(TestStoreRack)
#include "test_store_rack.moc"
