#include "model/desk/past_units.h"

namespace ts {

namespace {

std::optional<Money> inBench(const std::optional<Money> &sum, const std::optional<Money> &converted, const Currency &bench)
{
    for (const auto &money : {sum, converted})
        if (money && (money->currency().isNull() || money->currency() == bench))
            return Money(money->minor(), bench);
    return std::nullopt;
}

/// What the records of other kinds say of the closed units, by unit.
class Filling {
public:
    Filling(QHash<QUuid, PastUnit> units, Currency bench) : m_units(std::move(units)), m_bench(std::move(bench)) {}

    void take(const Plan &plan)
    {
        if (PastUnit *unit = of(plan.unit)) {
            unit->plannedMinutes = plan.minutes;
            unit->plannedResale = inBench(plan.resaleLikely, std::nullopt, m_bench);
        }
    }
    void take(const StageMove &move)
    {
        if (PastUnit *unit = of(move.unit); unit && move.toStage == Stage::Offered && !unit->offeredOn.isValid())
            unit->offeredOn = move.at.toUTC().date();
    }
    void take(const Spend &spend)
    {
        PastUnit *unit = of(spend.unit);
        const auto amount = inBench(spend.amount, spend.inBenchCurrency, m_bench);
        if (!unit || !amount)
            return;
        const QDate day = spend.paidOn.isValid() ? spend.paidOn : spend.at.toUTC().date();
        if (spend.kind == SpendKind::Sale && spend.flow == Flow::In) {
            unit->soldFor = unit->soldFor ? *unit->soldFor + *amount : *amount;
            unit->soldOn = day;
        } else if (spend.kind == SpendKind::Purchase && spend.flow == Flow::Out &&
                   (!unit->boughtOn.isValid() || day < unit->boughtOn)) {
            unit->boughtOn = day;
        } else if (spend.kind == SpendKind::Refund && spend.flow == Flow::Out) {
            unit->cameBack = true;
        }
    }
    [[nodiscard]] const QHash<QUuid, PastUnit> &units() const { return m_units; }

private:
    PastUnit *of(const Id<Unit> &id)
    {
        const auto found = m_units.find(id.value);
        return found == m_units.end() ? nullptr : &*found;
    }

    QHash<QUuid, PastUnit> m_units;
    Currency m_bench;
};

template <class R>
Expected<void> takeAll(Desk &desk, Filling &filling, const QString &column = {}, const QVariant &value = {})
{
    const auto records = desk.list<R>(column, value);
    if (!records)
        return records.trouble();
    for (const R &each : *records)
        filling.take(each);
    return {};
}

} // namespace

Expected<QList<PastUnit>> pastUnits(Desk &desk)
{
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    RackQuery closed;
    closed.stage = Stage::Closed;
    const auto rack = desk.rack(closed);
    if (!rack)
        return rack.trouble();
    QHash<QUuid, PastUnit> units;
    for (const RackRow &row : *rack) {
        PastUnit made;
        made.unit = row.id;
        made.tag = row.tag;
        made.name = row.name;
        made.category = row.category;
        made.outcome = row.outcome.value_or(Outcome::Kept);
        made.minutes = static_cast<int>(row.minutes);
        made.spent = row.spent;
        units.insert(row.id.value, made);
    }
    if (units.isEmpty())
        return QList<PastUnit>();
    Filling filling(std::move(units), bench->currency());
    if (auto done = takeAll<Plan>(desk, filling); !done)
        return done.trouble();
    if (auto done = takeAll<StageMove>(desk, filling, QStringLiteral("to_stage"), toWord(Stage::Offered)); !done)
        return done.trouble();
    for (const SpendKind kind : {SpendKind::Sale, SpendKind::Purchase, SpendKind::Refund})
        if (auto done = takeAll<Spend>(desk, filling, QStringLiteral("kind"), toWord(kind)); !done)
            return done.trouble();
    QList<PastUnit> list;
    for (const RackRow &row : *rack)
        list << filling.units().value(row.id.value);
    return list;
}

Expected<QList<Comparable>> comparablesLike(Desk &desk, const Unit &unit)
{
    auto list = desk.list<Comparable>(QStringLiteral("category"), toWord(unit.category));
    if (!list || unit.makerModel.isEmpty())
        return list;
    const auto model = desk.list<Comparable>(QStringLiteral("maker_model"), unit.makerModel);
    if (!model)
        return model.trouble();
    for (const Comparable &each : *model)
        if (each.category != unit.category)
            *list << each;
    return list;
}

} // namespace ts
