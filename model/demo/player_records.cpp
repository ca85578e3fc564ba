// The verbs for what a line in the Log cannot say: tables of test points, bearings, money, proofs, soaks.
#include "model/demo/player.h"
#include "model/records/all_records.h"
#include "model/records/settings.h"
#include "model/sums/meter_spec.h"

#include <QJsonArray>

namespace ts {

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
        QJsonObject fields = namedCells(point.toArray(), {"name", "wanted", "conditions", "source"});
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
        const auto added = add(change, description<Bearing>(), namedCells(row.toArray(), {"check", "cause", "abnormal_if", "abnormal_if_not"}));
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
        QJsonObject fields = namedCells(row.toArray(), {"price", "sold_on", "condition", "working", "asking"});
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
        QJsonObject fields = namedCells(row.toArray(), {"item", "x", "y", "label"});
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
        QJsonObject fields = namedCells(row.toArray(), {"text", "kind", "amount", "flow", "contact"});
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
        QJsonObject fields = namedCells(row.toArray(), {"text", "came_out", "result", "instrument"});
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
        QJsonObject fields = namedCells(row.toArray(), {"text", "kind", "came_out", "result"});
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

} // namespace ts
