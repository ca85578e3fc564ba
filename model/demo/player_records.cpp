// The verbs for what a line in the Log cannot say: tables of test points, bearings, money, proofs, the bench itself.
#include "model/demo/player.h"
#include "model/records/all_records.h"
#include "model/records/settings.h"
#include "model/sums/meter_spec.h"

#include <QJsonArray>

namespace ts {

namespace {

/// {"text": row[0], …} of the names given; shorter rows leave the rest out.
QJsonObject asFields(const QJsonArray &row, std::initializer_list<const char *> names)
{
    QJsonObject fields;
    qsizetype i = 0;
    for (const char *name : names) {
        if (i < row.size() && !row.at(i).isNull())
            fields.insert(QString::fromLatin1(name), row.at(i));
        ++i;
    }
    return fields;
}

} // namespace

Expected<void> Player::record(const DemoEvent &event)
{
    QJsonObject fields = event.said().toObject();
    const QString table = fields.take(QLatin1String("table")).toString();
    const Kind *kind = kindNamed(table);
    if (!kind)
        return Trouble{QStringLiteral("there is no kind of record \"%1\"").arg(table), {}, {}};
    Change change;
    const auto row = add(change, *kind, fields);
    if (!row)
        return row.trouble();
    QString sentence = kind->noun() + QStringLiteral(": ") + RowWriter::naming(*kind, *row);
    sentence[0] = sentence.at(0).toUpper();
    change.setSentence(sentence);
    return apply(change);
}

Expected<void> Player::edit(const DemoEvent &event)
{
    const QJsonObject what = event.said().toObject();
    const Kind *kind = kindNamed(what.value(QLatin1String("table")).toString());
    if (!kind)
        return Trouble{QStringLiteral("there is no such kind of record"), {}, {}};
    const auto before = m_writer.named(*kind, what.value(QLatin1String("find")).toString(), m_unit);
    if (!before)
        return before.trouble();
    const auto after = m_writer.with(*kind, *before, what.value(QLatin1String("set")).toObject());
    if (!after)
        return after.trouble();
    return apply(Change(QStringLiteral("Edited the %1 %2").arg(kind->noun(), RowWriter::naming(*kind, *before))).addItem({kind, *before, *after}));
}

Expected<void> Player::addPoints(Change &change, const QJsonArray &points, const QJsonObject &owner)
{
    int position = 0;
    for (const QJsonValue &point : points) {
        QJsonObject fields = asFields(point.toArray(), {"name", "wanted", "conditions", "source"});
        const auto wanted = Limit::parse(fields.value(QLatin1String("wanted")).toString());
        if (!wanted)
            return wanted.trouble();
        fields.insert(QStringLiteral("wanted"), wanted->text());
        fields.insert(QStringLiteral("position"), ++position);
        for (auto it = owner.begin(); it != owner.end(); ++it)
            fields.insert(it.key(), it.value());
        if (const auto row = add(change, description<TestPoint>(), fields); !row)
            return row.trouble();
    }
    return {};
}

Expected<void> Player::points(const DemoEvent &event)
{
    Change change(QStringLiteral("Test points"));
    const Done done = addPoints(change, event.said().toArray(), {});
    return done ? apply(change) : done;
}

Expected<void> Player::bearings(const DemoEvent &event)
{
    Change change(QStringLiteral("What the checks bear on"));
    for (const QJsonValue &row : event.said().toArray()) {
        const auto added = add(change, description<Bearing>(), asFields(row.toArray(), {"check", "cause", "abnormal_if", "abnormal_if_not"}));
        if (!added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::comparables(const DemoEvent &event)
{
    const auto unit = m_desk.get(m_unit);
    if (!unit)
        return unit.trouble();
    Change change(QStringLiteral("Comparable sales"));
    for (const QJsonValue &row : event.said().toArray()) {
        QJsonObject fields = asFields(row.toArray(), {"price", "sold_on", "condition", "working", "asking"});
        fields.insert(QStringLiteral("maker"), unit->maker);
        fields.insert(QStringLiteral("maker_model"), unit->makerModel);
        fields.insert(QStringLiteral("category"), toWord(unit->category));
        fields.insert(QStringLiteral("source"), QStringLiteral("Lantern Lots, ended sales"));
        if (const auto added = add(change, description<Comparable>(), fields); !added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::plan(const DemoEvent &event)
{
    Change change(QStringLiteral("Plan"));
    const auto row = add(change, description<Plan>(), event.said().toObject());
    return row ? apply(change) : Done(row.trouble());
}

Expected<void> Player::pins(const DemoEvent &event)
{
    const QJsonObject what = event.said().toObject();
    Change change(QStringLiteral("Pins on the photo"));
    for (const QJsonValue &row : what.value(QLatin1String("at")).toArray()) {
        QJsonObject fields = asFields(row.toArray(), {"item", "x", "y", "label"});
        fields.insert(QStringLiteral("photo"), what.value(QLatin1String("photo")));
        if (const auto added = add(change, description<PhotoPin>(), fields); !added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::spends(const DemoEvent &event)
{
    Change change(QStringLiteral("Money"));
    for (const QJsonValue &row : event.said().toArray()) {
        QJsonObject fields = asFields(row.toArray(), {"text", "kind", "amount", "flow", "contact"});
        fields.insert(QStringLiteral("paid_on"), today().toString(Qt::ISODate));
        if (const auto added = add(change, description<Spend>(), fields); !added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::safety(const DemoEvent &event)
{
    const auto bench = m_desk.benchFile();
    if (!bench)
        return bench.trouble();
    const QJsonObject what = event.said().toObject();
    Change change(QStringLiteral("Electrical safety"));
    for (const QJsonValue &row : what.value(QLatin1String("rows")).toArray()) {
        QJsonObject fields = asFields(row.toArray(), {"text", "came_out", "result", "instrument"});
        fields.insert(QStringLiteral("kind"), toWord(ProofKind::ElectricalSafety));
        fields.insert(QStringLiteral("rule_set"), what.value(QLatin1String("rule_set")));
        fields.insert(QStringLiteral("done_on"), today().toString(Qt::ISODate));
        fields.insert(QStringLiteral("initials"), bench->setting(settings::worker));
        if (const auto added = add(change, description<Proof>(), fields); !added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::proofs(const DemoEvent &event)
{
    const auto bench = m_desk.benchFile();
    if (!bench)
        return bench.trouble();
    Change change(QStringLiteral("Proofs"));
    for (const QJsonValue &row : event.said().toArray()) {
        QJsonObject fields = asFields(row.toArray(), {"text", "kind", "came_out", "result"});
        fields.insert(QStringLiteral("done_on"), today().toString(Qt::ISODate));
        fields.insert(QStringLiteral("initials"), bench->setting(settings::worker));
        if (const auto added = add(change, description<Proof>(), fields); !added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::clockFrom(const DemoEvent &event)
{
    ClockSpan span = m_desk.maker().fresh<ClockSpan>();
    span.unit = m_unit;
    span.startedAt = QDateTime::fromString(event.said().toString(), Qt::ISODate).toUTC();
    span.endedAt = event.at;
    if (!span.startedAt.isValid() || span.startedAt >= span.endedAt)
        return Trouble{QStringLiteral("the clock cannot stop before it starts"), {}, {}};
    return apply(Change(QStringLiteral("Clock stopped after %1 min").arg(span.startedAt.secsTo(span.endedAt) / 60)).add(span));
}

Expected<void> Player::soak(const DemoEvent &event)
{
    const QJsonObject what = event.said().toObject();
    const auto wanted = Limit::parse(what.value(QLatin1String("wanted")).toString());
    if (!wanted)
        return wanted.trouble();
    Soak soak = m_desk.maker().fresh<Soak>();
    soak.unit = m_unit;
    soak.name = what.value(QLatin1String("name")).toString();
    soak.wanted = *wanted;
    soak.startedAt = event.at;
    soak.intervalMinutes = what.value(QLatin1String("interval_minutes")).toInt();
    soak.conditions = what.value(QLatin1String("conditions")).toString();
    return apply(Change(QStringLiteral("Soak started: ") + soak.name).add(soak));
}

Expected<void> Player::soakReading(const DemoEvent &event)
{
    const QJsonObject what = event.said().toObject();
    const auto wanted = Limit::parse(what.value(QLatin1String("wanted")).toString());
    const auto measure = Measure::parse(what.value(QLatin1String("unit")).toString());
    if (!wanted || !measure)
        return wanted ? measure.trouble() : wanted.trouble();
    const QString name = what.value(QLatin1String("name")).toString();
    const auto bench = m_desk.benchFile();
    const Meter *meter = bench ? meterNamed(*bench, what.value(QLatin1String("meter")).toString()) : nullptr;
    if (!meter)
        return Trouble{QStringLiteral("there is no such meter"), {}, {}};
    const auto uncertainty = uncertaintyOf(*bench, meter->id, Quantity(what.value(QLatin1String("value")).toDouble(), *measure));
    if (!uncertainty)
        return uncertainty.trouble();
    Change change(QStringLiteral("Soak reading: ") + name);
    const auto row = add(change, description<Reading>(),
                         {{QStringLiteral("name"), name},
                          {QStringLiteral("uncertainty"), *uncertainty},
                          {QStringLiteral("value"), what.value(QLatin1String("value"))},
                          {QStringLiteral("value_unit"), measure->text()},
                          {QStringLiteral("value_sense"), QStringLiteral("plain")},
                          {QStringLiteral("wanted"), wanted->text()},
                          {QStringLiteral("phase"), toWord(Phase::AsItLeaves)},
                          {QStringLiteral("meter"), meter->id.text()},
                          {QStringLiteral("meter_name"), meter->name},
                          {QStringLiteral("soak"), name}});
    return row ? apply(change) : Done(row.trouble());
}

Expected<void> Player::soakEnd(const DemoEvent &event)
{
    const auto row = m_writer.named(description<Soak>(), event.said().toObject().value(QLatin1String("name")).toString(), m_unit);
    const auto before = row ? description<Soak>().fromRow(*row) : Expected<Soak>(row.trouble());
    if (!before)
        return before.trouble();
    Soak after = *before;
    after.endedAt = event.at;
    return apply(Change(QStringLiteral("Soak ended: ") + after.name).edit(*before, after));
}

Expected<void> Player::lotShares(const DemoEvent &event)
{
    const auto row = m_writer.named(description<Lot>(), event.said().toString(), {});
    const auto lot = row ? description<Lot>().fromRow(*row) : Expected<Lot>(row.trouble());
    if (!lot)
        return lot.trouble();
    QList<double> weights;
    QList<Id<Unit>> units;
    for (const QJsonValue &pair : event.content.value(QLatin1String("by")).toArray()) {
        const auto id = m_desk.unitByTag(pair.toArray().at(0).toInt());
        if (!id)
            return id.trouble();
        units << *id;
        weights << pair.toArray().at(1).toDouble();
    }
    Change change(QStringLiteral("Apportioned ") + lot->name);
    for (const auto &[whole, kind, text] : {std::tuple{lot->price, SpendKind::Purchase, QStringLiteral("Share of the lot's price")},
                                            std::tuple{lot->carriage, SpendKind::CarriageIn, QStringLiteral("Share of the lot's carriage")}}) {
        if (!whole)
            continue;
        const auto shares = whole->shared(weights);
        if (!shares)
            return shares.trouble();
        for (qsizetype i = 0; i < units.size(); ++i) {
            Spend spend = m_desk.maker().fresh<Spend>();
            spend.unit = units.at(i);
            spend.text = text;
            spend.kind = kind;
            spend.amount = shares->at(i);
            spend.paidOn = lot->boughtOn;
            spend.contact = lot->seller;
            spend.lot = lot->id;
            change.add(spend);
        }
    }
    return apply(change);
}

Expected<void> Player::settings(const DemoEvent &event)
{
    Change change(QStringLiteral("Settings of the bench"));
    const QJsonObject all = event.said().toObject();
    for (auto it = all.begin(); it != all.end(); ++it) {
        Setting setting = m_desk.maker().fresh<Setting>();
        setting.name = it.key();
        setting.value = it.value().toString();
        change.add(setting);
    }
    return apply(change);
}

Expected<void> Player::ranges(const DemoEvent &event)
{
    Change change(QStringLiteral("Ranges of the ") + event.said().toString());
    for (const QJsonValue &row : event.content.value(QLatin1String("rows")).toArray()) {
        QJsonObject fields = asFields(row.toArray(), {"measure", "full_scale", "resolution", "percent_of_reading", "percent_of_range", "counts"});
        fields.insert(QStringLiteral("meter"), event.said());
        if (const auto added = add(change, description<MeterRange>(), fields); !added)
            return added.trouble();
    }
    return apply(change);
}

Expected<void> Player::stock(const DemoEvent &event)
{
    m_unit = {};
    Change change(QStringLiteral("Into the parts store: ") + event.said().toObject().value(QLatin1String("name")).toString());
    const auto part = add(change, description<Part>(), event.said().toObject());
    if (!part)
        return part.trouble();
    QJsonObject fields = event.content.value(QLatin1String("batch")).toObject();
    fields.insert(QStringLiteral("part"), part->at(Kind::idColumn).toString());
    const auto batch = add(change, description<Batch>(), fields);
    return batch ? apply(change) : Done(batch.trouble());
}

Expected<void> Player::notesOn(const DemoEvent &event)
{
    Change change(QStringLiteral("Model notes: ") + event.said().toObject().value(QLatin1String("maker_model")).toString());
    const auto notes = add(change, description<ModelNotes>(), event.said().toObject());
    if (!notes)
        return notes.trouble();
    const Done done = addPoints(change, event.content.value(QLatin1String("points")).toArray(),
                                {{QStringLiteral("model_notes"), notes->at(Kind::idColumn).toString()}});
    return done ? apply(change) : done;
}

} // namespace ts
