// The verbs for the bench as a whole: lots, settings, meters' ranges, the parts store, model notes.
#include "model/demo/player.h"
#include "model/records/all_records.h"

#include <QJsonArray>

namespace ts {

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
        QJsonObject fields = namedCells(row.toArray(), {"measure", "full_scale", "resolution", "percent_of_reading", "percent_of_range", "counts"});
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
    if (!done)
        return done;
    // What is known of the model, a list a kind; each row has the columns named.
    const auto known = [&](const char *name, const Kind &kind, bool ordered, std::initializer_list<const char *> columns) -> Done {
        int position = 0;
        for (const QJsonValue &row : event.content.value(QLatin1String(name)).toArray()) {
            QJsonObject fields = namedCells(row.toArray(), columns);
            fields.insert(QStringLiteral("model_notes"), notes->at(Kind::idColumn).toString());
            if (ordered)
                fields.insert(QStringLiteral("position"), ++position);
            if (const auto added = add(change, kind, fields); !added)
                return added.trouble();
        }
        return {};
    };
    for (const Done &each : {known("causes", description<KnownCause>(), false, {"symptom", "text", "weight", "fix_minutes", "note"}),
                             known("off", description<KnownTeardown>(), true, {"what", "fasteners", "connectors", "marks", "caution"}),
                             known("fits", description<KnownPart>(), false, {"position", "text", "rating", "quantity"}),
                             known("proofs", description<KnownProof>(), true, {"text"})})
        if (!each)
            return each;
    return apply(change);
}

} // namespace ts
