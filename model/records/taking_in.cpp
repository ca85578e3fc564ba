#include "model/records/taking_in.h"

#include "model/records/named_contact.h"

namespace ts {

namespace {

Spend spendOn(const Unit &unit, SpendKind kind, const QString &text, const Money &amount, Maker &maker)
{
    Spend spend = maker.fresh<Spend>();
    spend.unit = unit.id;
    spend.kind = kind;
    spend.text = text;
    spend.amount = amount;
    spend.paidOn = maker.now().date();
    return spend;
}

Expected<void> checked(const Arrival &arrival, const Maker &maker)
{
    const Unit &unit = arrival.unit;
    if (unit.name.trimmed().isEmpty())
        return Trouble{QStringLiteral("The unit has no name"), {}, QStringLiteral("call it what it is: maker, model, what kind of thing")};
    if (unit.stage == Stage::Held || unit.stage == Stage::Closed)
        return Trouble{QStringLiteral("A unit cannot be taken in as %1").arg(toWord(unit.stage)), {}, QStringLiteral("take it in first, then move it there")};
    if (unit.year && !canBeMadeIn(*unit.year, maker.now().date()))
        return Trouble{QStringLiteral("\"%1\" is no year that a unit can be made in").arg(*unit.year), {}, {}};
    const std::pair<const char *, std::optional<Money>> amounts[]{{"price paid", arrival.paid}, {"carriage", arrival.carriage}, {"planned resale", arrival.resalePlanned}};
    for (const auto &[name, amount] : amounts)
        if (amount && amount->minor() < 0)
            return Trouble{QStringLiteral("The %1 cannot be below zero").arg(QLatin1String(name)), {}, {}};
    if (arrival.minutesPlanned && *arrival.minutesPlanned < 0)
        return Trouble{QStringLiteral("The planned hours cannot be below zero"), {}, {}};
    return {};
}

} // namespace

bool canBeMadeIn(int year, const QDate &today)
{
    return year >= 1850 && year <= today.year() + 1; // before that, nothing of the kind was made
}

Expected<Change> takingIn(const Arrival &arrival, const BenchFile &bench, Maker &maker)
{
    if (auto sound = checked(arrival, maker); !sound)
        return sound.trouble();
    Unit unit = arrival.unit;
    unit.stageSince = unit.at;
    Change change(QStringLiteral("Took in ") + unit.name);
    if (!arrival.owner.isEmpty())
        unit.owner = contactNamed(bench, arrival.owner, change, maker);
    change.add(unit);
    for (TestPoint point : arrival.points) {
        const TestPoint fresh = maker.fresh<TestPoint>();
        point.id = fresh.id;
        point.at = fresh.at;
        point.version = fresh.version;
        point.unit = unit.id;
        point.modelNotes = {};
        change.add(point);
    }
    if (arrival.paid)
        change.add(spendOn(unit, SpendKind::Purchase, QStringLiteral("Bought"), *arrival.paid, maker));
    if (arrival.carriage)
        change.add(spendOn(unit, SpendKind::CarriageIn, QStringLiteral("Carriage in"), *arrival.carriage, maker));
    if (arrival.minutesPlanned || arrival.resalePlanned) {
        Plan plan = maker.fresh<Plan>();
        plan.unit = unit.id;
        plan.minutes = arrival.minutesPlanned;
        plan.resaleLikely = arrival.resalePlanned;
        change.add(plan);
    }
    for (Proof proof : arrival.proofs) {
        proof.unit = unit.id;
        change.add(proof);
    }
    return change;
}

void takeAfter(Arrival &arrival, const UnitFile &like)
{
    Unit &unit = arrival.unit;
    unit.name = like.unit.name;
    unit.maker = like.unit.maker;
    unit.makerModel = like.unit.makerModel;
    unit.category = like.unit.category;
    unit.mains = like.unit.mains;
    unit.protectionClass = like.unit.protectionClass;
    arrival.points = like.all<TestPoint>();
}

} // namespace ts
