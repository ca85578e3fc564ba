// What the desk answers of the rack.
#include "model/desk/desk.h"
#include "model/store/rack_order.h"
#include "model/store/rack_reader.h"
#include "model/store/store.h"

#include <algorithm>

namespace ts {

namespace {

RackRow rackRow(const Row &row, const Currency &currency)
{
    const auto at = [&row](RackColumn column) { return row.at(static_cast<int>(column)); };
    RackRow line;
    line.id = Id<Unit>::fromText(at(RackColumn::Id).toString());
    line.tag = at(RackColumn::Tag).toInt();
    line.name = at(RackColumn::Name).toString();
    line.category = fromWord<Category>(at(RackColumn::Category).toString()).value_or(Category::Other);
    line.kind = fromWord<UnitKind>(at(RackColumn::Kind).toString()).value_or(UnitKind::ToSell);
    line.stage = fromWord<Stage>(at(RackColumn::Stage).toString()).value_or(Stage::Shelved);
    line.stageSince = instantFromStored(at(RackColumn::StageSince).toString());
    line.heldBecause = at(RackColumn::HeldBecause).toString();
    line.heldUntil = QDate::fromString(at(RackColumn::HeldUntil).toString(), Qt::ISODate);
    line.outcome = fromWord<Outcome>(at(RackColumn::Outcome).toString());
    line.sourceId = at(RackColumn::SourceId).toString();
    line.spent = Money(at(RackColumn::Spent).toLongLong(), currency);
    line.minutes = at(RackColumn::Minutes).toLongLong();
    line.symptom = at(RackColumn::Symptom).toString();
    line.doNotPower = !at(RackColumn::DoNotPower).isNull();
    return line;
}

RackRow tagRow(const Row &row, const Currency &currency)
{
    const auto at = [&row](RackColumn column) { return row.at(static_cast<int>(column)); };
    RackRow line = rackRow(row, currency);
    line.taken = instantFromStored(at(RackColumn::Taken).toString());
    line.mains = at(RackColumn::Mains).toString();
    line.protectionClass = fromWord<ProtectionClass>(at(RackColumn::ProtectionClass).toString());
    line.claim = at(RackColumn::Claim).toString();
    line.next = at(RackColumn::Next).toString();
    line.openSymptoms = at(RackColumn::OpenSymptoms).toInt();
    line.loose = at(RackColumn::Loose).toInt();
    line.soak = at(RackColumn::Soak).toString();
    line.soakSince = instantFromStored(at(RackColumn::SoakSince).toString());
    line.partsHere = row.at(static_cast<int>(RackColumn::PartsHere)).toInt() > 0;
    line.due = QDate::fromString(at(RackColumn::Due).toString(), Qt::ISODate);
    line.photos = at(RackColumn::Photos).toInt();
    line.sheets = at(RackColumn::Sheets).toInt();
    line.channel = at(RackColumn::Channel).toString();
    if (!at(RackColumn::Asked).isNull()) {
        const auto asked = Currency::parse(at(RackColumn::AskedCurrency).toString());
        line.asked = Money(at(RackColumn::Asked).toLongLong(), asked ? *asked : currency);
    }
    if (!at(RackColumn::SoldFor).isNull())
        line.soldFor = Money(at(RackColumn::SoldFor).toLongLong(), currency);
    return line;
}

// As in model/store/rack_reader.cpp: what is worked on first.
int placeOf(Stage stage)
{
    switch (stage) {
    case Stage::Bench:
        return 0;
    case Stage::Held:
        return 1;
    case Stage::Proving:
        return 2;
    case Stage::Ready:
        return 3;
    case Stage::Offered:
        return 4;
    case Stage::Shelved:
        return 5;
    case Stage::Inbound:
        return 6;
    case Stage::Scouted:
        return 7;
    case Stage::Closed:
        break;
    }
    return 8;
}

struct Hanging {
    RackPlace place;
    int stage = 0;
    qint64 tag = 0;
    QString key;
};

// Stored instants and days are texts that sort as they are.
QString keyOf(const Row &row, RackSort sort)
{
    const auto at = [&row](OrderColumn column) { return row.at(static_cast<int>(column)).toString(); };
    switch (sort) {
    case RackSort::ByTag:
        return {};
    case RackSort::ByName:
        return at(OrderColumn::Name).toCaseFolded();
    case RackSort::DueFirst:
        return at(OrderColumn::HeldUntil).isEmpty() ? QStringLiteral("~") : at(OrderColumn::HeldUntil); // the undated last
    case RackSort::MovedLast:
        return std::max(at(OrderColumn::StageSince), at(OrderColumn::PartsSince));
    case RackSort::WaitingLongest:
        break;
    }
    return at(OrderColumn::StageSince);
}

} // namespace

Expected<Currency> Desk::currency()
{
    const auto bench = list<Setting>();
    if (!bench)
        return bench.trouble();
    BenchFile settings;
    settings.all<Setting>() = *bench;
    return settings.currency();
}

Expected<QList<RackRow>> Desk::rack(const RackQuery &query)
{
    const auto ours = currency();
    if (!ours)
        return ours.trouble();
    const auto rows = readRack(m_store->connection(), ours->code(), toStored(m_ids.clock().now()), query.stage ? toWord(*query.stage) : QString(),
                               query.offset, query.limit);
    if (!rows)
        return rows.trouble();
    QList<RackRow> rack;
    rack.reserve(rows->size());
    for (const Row &row : *rows)
        rack << rackRow(row, *ours);
    return rack;
}

Expected<QList<RackPlace>> Desk::rackOrder(const QString &words, RackSort sort, const QList<Stage> &stages)
{
    QStringList names;
    for (const Stage stage : stages)
        names << toWord(stage);
    const auto rows = readRackOrder(m_store->connection(), m_store->search(), words, names);
    if (!rows)
        return rows.trouble();
    QList<Hanging> all;
    all.reserve(rows->size());
    for (const Row &row : *rows) {
        const Stage stage = fromWord<Stage>(row.at(static_cast<int>(OrderColumn::Stage)).toString()).value_or(Stage::Shelved);
        all << Hanging{{Id<Unit>::fromText(row.at(static_cast<int>(OrderColumn::Id)).toString()), stage}, placeOf(stage),
                       row.at(static_cast<int>(OrderColumn::Tag)).toLongLong(), keyOf(row, sort)};
    }
    const bool backwards = sort == RackSort::MovedLast;
    std::sort(all.begin(), all.end(), [&](const Hanging &a, const Hanging &b) {
        if (a.stage != b.stage)
            return a.stage < b.stage;
        if (const int key = QString::compare(a.key, b.key); key != 0)
            return backwards ? key > 0 : key < 0;
        return a.tag > b.tag;
    });
    QList<RackPlace> order;
    order.reserve(all.size());
    for (const Hanging &each : all)
        order << each.place;
    return order;
}

Expected<QHash<Stage, int>> Desk::rackCounts(const QString &words)
{
    const auto rows = countRack(m_store->connection(), m_store->search(), words);
    if (!rows)
        return rows.trouble();
    QHash<Stage, int> counts;
    for (const Row &row : *rows)
        if (const auto stage = fromWord<Stage>(row.first().toString()))
            counts.insert(*stage, row.last().toInt());
    return counts;
}

Expected<QList<RackRow>> Desk::rackUnits(const QList<Id<Unit>> &units)
{
    const auto ours = currency();
    if (!ours)
        return ours.trouble();
    QStringList ids;
    for (const Id<Unit> &unit : units)
        ids << unit.text();
    const auto rows = readRackUnits(m_store->connection(), ours->code(), toStored(m_ids.clock().now()), ids);
    if (!rows)
        return rows.trouble();
    QHash<QUuid, RackRow> found;
    for (const Row &row : *rows) {
        const RackRow line = tagRow(row, *ours);
        found.insert(line.id.value, line);
    }
    QList<RackRow> asked;
    for (const Id<Unit> &unit : units)
        if (const auto line = found.constFind(unit.value); line != found.constEnd())
            asked << *line;
    return asked;
}

} // namespace ts
