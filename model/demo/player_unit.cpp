// The verbs that take a unit in, move it, photograph it and send it away.
#include "model/demo/drawing.h"
#include "model/demo/player.h"
#include "model/keeping/outgoing_sheet.h"
#include "model/media/prepared_photo.h"
#include "model/paper/restoration.h"
#include "model/records/all_records.h"
#include "model/records/tag_text.h"
#include "model/sums/fees.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QJsonArray>

namespace ts {

Expected<void> Player::unit(const DemoEvent &event)
{
    QJsonObject fields = event.said().toObject();
    fields.insert(QLatin1String("tag"), event.tag);
    fields.insert(QLatin1String("stage_since"), event.at.toString(Qt::ISODate));
    const QString name = fields.value(QLatin1String("name")).toString();
    const bool scouted = fields.value(QLatin1String("stage")).toString() == QLatin1String("scouted");
    Change change((scouted ? QStringLiteral("Scouted ") : QStringLiteral("Took in ")) + name);
    const auto row = add(change, description<Unit>(), fields);
    return row ? apply(change) : Done(row.trouble());
}

Expected<void> Player::bought(const DemoEvent &event)
{
    Change change(QStringLiteral("Bought for ") + event.said().toString());
    const auto spend = [&](const QString &text, SpendKind kind, const QJsonValue &amount) {
        QJsonObject fields{{QStringLiteral("text"), text}, {QStringLiteral("kind"), toWord(kind)}, {QStringLiteral("amount"), amount},
                           {QStringLiteral("paid_on"), today().toString(Qt::ISODate)}};
        if (event.content.contains(QLatin1String("from")))
            fields.insert(QStringLiteral("contact"), event.content.value(QLatin1String("from")));
        return add(change, description<Spend>(), fields);
    };
    if (const auto row = spend(QStringLiteral("Bought"), SpendKind::Purchase, event.said()); !row)
        return row.trouble();
    if (event.content.contains(QLatin1String("carriage"))) {
        const auto row = spend(QStringLiteral("Carriage in"), SpendKind::CarriageIn, event.content.value(QLatin1String("carriage")));
        if (!row)
            return row.trouble();
    }
    return apply(change);
}

Expected<void> Player::stage(const DemoEvent &event)
{
    const auto before = m_desk.get(m_unit);
    const auto to = fromWord<Stage>(event.said().toString());
    if (!before || !to)
        return before ? Trouble{QStringLiteral("there is no such stage"), {}, {}} : before.trouble();
    Unit after = *before;
    after.stage = *to;
    after.stageSince = m_desk.maker().now();
    after.outcome = fromWord<Outcome>(event.content.value(QLatin1String("outcome")).toString());
    after.heldBecause.clear();
    after.heldUntil = {};
    if (event.content.contains(QLatin1String("asked"))) {
        const auto asked = money(event.content.value(QLatin1String("asked")));
        const auto channel = m_writer.named(description<Channel>(), event.content.value(QLatin1String("channel")).toString(), {});
        if (!asked || !channel)
            return asked ? channel.trouble() : asked.trouble();
        after.asked = *asked;
        after.channel = Id<Channel>{Kind::id(*channel)};
    }
    StageMove move = m_desk.maker().fresh<StageMove>();
    move.unit = m_unit;
    move.fromStage = before->stage;
    move.toStage = *to;
    move.because = event.content.value(QLatin1String("because")).toString();
    move.outcome = after.outcome;
    if (*to == Stage::Offered) {
        move.channel = after.channel;
        move.asked = after.asked;
    }
    return apply(Change(QStringLiteral("Moved to ") + event.said().toString()).edit(*before, after).add(move));
}

Expected<void> Player::photo(const DemoEvent &event)
{
    const auto unit = m_desk.get(m_unit);
    const auto photos = m_desk.list<Photo>(QStringLiteral("unit"), m_unit.text());
    if (!unit || !photos)
        return unit ? photos.trouble() : unit.trouble();
    const QJsonObject what = event.said().toObject();
    const QString view = what.value(QLatin1String("draw")).toString();
    const QString subject = what.value(QLatin1String("subject")).toString();
    const auto known = fromWord<DemoView>(view);
    const auto phase = fromWord<Phase>(what.value(QLatin1String("phase")).toString());
    if (!known || !phase || (*known == DemoView::Detail && !demoSubjects().contains(subject)))
        return Trouble{QStringLiteral("there is no such drawing or phase"), {}, {}};
    const DemoPicture picture{*known, unit->category, unit->name, unit->maker, unit->makerModel, unit->serial, subject,
                              what.value(QLatin1String("wear")).toInt(), static_cast<quint32>(unit->tag)};
    QByteArray jpeg;
    QBuffer buffer(&jpeg);
    if (!buffer.open(QIODevice::WriteOnly) || !drawDemoPicture(picture).save(&buffer, "JPEG", 88))
        return Trouble{QStringLiteral("the picture cannot be written as JPEG"), {}, {}};
    const QString name = QStringLiteral("%1-%2-%3.jpg").arg(tagText(unit->tag), subject.isEmpty() ? view : subject).arg(photos->size() + 1);
    const auto prepared = preparePhoto(jpeg, name);
    if (!prepared)
        return prepared.trouble();
    const auto sha256 = m_desk.keep(prepared->bytes, prepared->thumbnail);
    if (!sha256)
        return sha256.trouble();
    Photo photo = m_desk.maker().fresh<Photo>();
    photo.unit = m_unit;
    photo.sha256 = *sha256;
    photo.phase = *phase;
    photo.caption = what.value(QLatin1String("caption")).toString();
    photo.width = prepared->width;
    photo.height = prepared->height;
    photo.takenAt = event.at;
    photo.originalName = name;
    photo.onSheet = what.value(QLatin1String("on_sheet")).toBool();
    photo.position = static_cast<int>(photos->size()) + 1;
    return apply(Change(QStringLiteral("Photo: ") + photo.caption).add(photo));
}

Expected<void> Player::sale(const DemoEvent &event)
{
    const QJsonObject what = event.said().toObject();
    const auto price = money(what.value(QLatin1String("price")));
    const auto carriage = money(what.value(QLatin1String("carriage")));
    const auto bench = m_desk.benchFile();
    if (!price || !carriage || !bench)
        return Trouble{QStringLiteral("the price or the carriage is no money"), {}, {}};
    const auto channelRow = m_writer.named(description<Channel>(), what.value(QLatin1String("channel")).toString(), {});
    if (!channelRow)
        return channelRow.trouble();
    const Id<Channel> channel{Kind::id(*channelRow)};
    const auto fees = feesOf(rulesOn(*bench, channel, today()), {*price, *carriage, Money(0, price->currency())});
    if (!fees)
        return fees.trouble();
    if (fees->total.decimal() != what.value(QLatin1String("fee")).toString())
        return Trouble{QStringLiteral("the fee comes to %1, not %2").arg(fees->total.decimal(), what.value(QLatin1String("fee")).toString()), {}, {}};
    Change change(QStringLiteral("Sold for ") + price->display());
    const auto buyer = m_writer.fresh(description<Contact>(), what.value(QLatin1String("buyer")).toObject(), {});
    if (!buyer)
        return buyer.trouble();
    change.addItem({&description<Contact>(), std::nullopt, *buyer});
    Spend sold = m_desk.maker().fresh<Spend>();
    sold.unit = m_unit;
    sold.text = QStringLiteral("sold for %1, carriage %2 paid by the buyer").arg(price->display(), carriage->display());
    sold.kind = SpendKind::Sale;
    sold.flow = Flow::In;
    sold.amount = *price + *carriage;
    sold.paidOn = today();
    sold.contact = Id<Contact>{Kind::id(*buyer)};
    sold.channel = channel;
    Spend fee = m_desk.maker().fresh<Spend>();
    fee.unit = m_unit;
    fee.text = QStringLiteral("selling fee");
    fee.kind = SpendKind::SellingFee;
    fee.amount = fees->total;
    fee.paidOn = today();
    fee.channel = channel;
    return apply(change.add(sold).add(fee));
}

Expected<void> Player::paper(const DemoEvent &)
{
    const auto file = m_desk.unitFile(m_unit);
    const auto bench = m_desk.benchFile();
    if (!file || !bench)
        return file ? bench.trouble() : file.trouble();
    const auto facts = restorationFacts(m_desk, *file, *bench, m_desk.maker().now());
    if (!facts)
        return facts.trouble();
    // Drawing a PDF takes an application with fonts; without one the sheet is kept as the web page, which is the same sheet.
    const bool draws = qobject_cast<QGuiApplication *>(QCoreApplication::instance()) != nullptr;
    const auto kept = handOver(m_desk, m_unit, *facts, {.format = draws ? QStringLiteral("pdf") : QStringLiteral("html")});
    return kept ? Expected<void>() : Expected<void>(kept.trouble());
}

} // namespace ts
