#include "model/demo/bulk_notes.h"
#include "model/demo/bulk_unit.h"
#include "model/demo/demo.h"
#include "model/demo/drawing.h"
#include "model/media/prepared_photo.h"
#include "model/records/settings.h"

#include <QBuffer>

namespace ts {

namespace {

constexpr int unitsAtOnce = 200; // one change of about 10,000 records: quick to commit, small enough to hold
constexpr int years = 3;

/// The settings, instruments, people and stock that the units share, in one change.
Expected<BulkBench> makeBench(Desk &desk, int units, Dice &dice)
{
    BulkBench bench;
    bench.currency = *Currency::parse(u"GBP");
    BulkWords words(dice);
    Maker maker = desk.maker();
    Change change(QStringLiteral("The bench of the workbook for measuring"));
    for (const auto &[name, value] : {std::pair{settings::benchName, QStringLiteral("Measuring Bench")}, std::pair{settings::currency, QStringLiteral("GBP")},
                                      std::pair{settings::hourlyRate, QStringLiteral("12.00")}, std::pair{settings::channel, QStringLiteral("Lantern Lots")}}) {
        Setting setting = maker.fresh<Setting>();
        setting.name = name;
        setting.value = value;
        change.add(setting);
    }
    for (const auto *name : {"bench meter", "hand meter", "insulation tester", "sound file", "counter"}) {
        Meter meter = maker.fresh<Meter>();
        meter.name = QString::fromLatin1(name);
        change.add(meter);
        bench.meters << meter;
        MeterRange range = maker.fresh<MeterRange>();
        range.meter = meter.id;
        range.measure = QStringLiteral("V");
        range.fullScale = 40;
        range.resolution = 0.01;
        range.percentOfReading = 0.5;
        range.counts = 2;
        change.add(range);
    }
    for (const auto *name : {"Lantern Lots", "Corner Shelf", "Parish Board"}) {
        Channel channel = maker.fresh<Channel>();
        channel.name = QString::fromLatin1(name);
        change.add(channel);
        bench.channels << channel;
        FeeRule rule = maker.fresh<FeeRule>();
        rule.channel = channel.id;
        rule.name = QStringLiteral("commission");
        rule.validFrom = QDate(2023, 1, 1);
        rule.base = FeeBase::ItemAndCarriage;
        rule.rate = 128000;
        change.add(rule);
    }
    for (int i = 0; i < 4 + units / 20; ++i) {
        Contact contact = maker.fresh<Contact>();
        contact.name = words.person();
        contact.reach = QStringLiteral("01632 960%1").arg(i % 1000, 3, 10, QLatin1Char('0'));
        change.add(contact);
        bench.people << contact;
    }
    for (int i = 0; i < 1 + units / 50; ++i) {
        Lot lot = maker.fresh<Lot>();
        lot.name = QStringLiteral("Clearance %1, box").arg(i + 1);
        lot.price = Money(dice.whole(2000, 9000), bench.currency);
        lot.boughtOn = QDate(2024, 1, 1).addDays(i % 1000);
        lot.seller = bench.people.at(i % bench.people.size()).id;
        change.add(lot);
        bench.lots << lot;
    }
    for (int i = 0; i < 120; ++i) {
        Part part = maker.fresh<Part>();
        part.name = QStringLiteral("%1 %2").arg(words.piece(words.category())).arg(i + 1);
        part.kind = QStringLiteral("part");
        part.place = QStringLiteral("drawer C%1").arg(i % 12 + 1);
        part.supplier = QStringLiteral("Tern Street Components");
        change.add(part);
        bench.parts << part;
        Batch batch = maker.fresh<Batch>();
        batch.part = part.id;
        batch.quantity = 20;
        batch.left = dice.whole(0, 20);
        batch.unitCost = Money(dice.whole(10, 900), bench.currency);
        batch.boughtOn = QDate(2025, 3, 1);
        change.add(batch);
    }
    for (int i = 0; i < 60; ++i) {
        ModelNotes notes = maker.fresh<ModelNotes>();
        notes.category = words.category();
        notes.maker = words.maker();
        notes.makerModel = words.makerModel(notes.category);
        notes.usualCauses = words.cause(notes.category) + QStringLiteral(", then ") + words.cause(notes.category);
        change.add(notes);
        writeKnown(change, notes, maker, words, dice);
    }
    for (int i = 0; i < 12; ++i) {
        DemoPicture picture;
        picture.category = static_cast<Category>(i);
        picture.maker = words.maker();
        picture.makerModel = words.makerModel(picture.category);
        picture.seed = static_cast<quint32>(i) + 1;
        QByteArray jpeg;
        QBuffer buffer(&jpeg);
        if (!buffer.open(QIODevice::WriteOnly) || !drawDemoPicture(picture).scaledToWidth(320, Qt::SmoothTransformation).save(&buffer, "JPEG", 70))
            return Trouble{QStringLiteral("Cannot draw the photos"), QStringLiteral("JPEG cannot be written here"), {}};
        const auto prepared = preparePhoto(jpeg, QStringLiteral("drawing"));
        const auto kept = prepared ? desk.keep(prepared->bytes, prepared->thumbnail) : Expected<QString>(prepared.trouble());
        if (!kept)
            return kept.trouble();
        bench.photos << *kept;
    }
    const auto paper = desk.keep(QByteArrayLiteral("<!DOCTYPE html><title>Sheet</title><p>A paper of the workbook for measuring.</p>"));
    if (!paper)
        return paper.trouble();
    bench.paper = *paper;
    const auto applied = desk.apply(change);
    return applied ? Expected<BulkBench>(bench) : Expected<BulkBench>(applied.trouble());
}

} // namespace

Expected<void> makeBulk(Desk &desk, SetClock &clock, int units, quint32 seed, const Progress &progress)
{
    Dice dice(seed);
    const QDateTime today({2026, 11, 25}, {9, 0}, Qt::UTC);
    const qint64 span = static_cast<qint64>(years) * 365 * 86400;
    clock.set(today.addSecs(-span));
    const auto bench = makeBench(desk, units, dice);
    if (!bench)
        return bench.trouble();
    BulkUnit writer(*bench, desk.maker(), clock, dice);
    for (int done = 0; done < units;) {
        const int until = qMin(units, done + unitsAtOnce);
        Change change(QStringLiteral("Units %1 to %2 of the workbook for measuring").arg(done + 1).arg(until));
        for (; done < until; ++done)
            writer.write(change, today.addSecs(-span + span * done / units), today);
        const auto applied = desk.apply(change);
        if (!applied)
            return applied.trouble();
        if (progress && !progress(done, units))
            return Trouble{QStringLiteral("Making the workbook was stopped"), {}, {}};
    }
    clock.set(today);
    return {};
}

} // namespace ts
