#include "views/photos/photo_intake.h"

#include "model/keeping/kept_photos.h"
#include "model/records/tag_text.h"

#include <QBuffer>
#include <QFileInfo>

namespace ts {

namespace {

constexpr qsizetype mostSaid = 6; // sentences in one notice

/// In the thread beside the window.
Expected<PreparedPhoto> prepared(const PhotoSource &source, const QString &pasted)
{
    if (!source.file.isEmpty())
        return preparePhoto(source.file);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    source.image.save(&buffer, "BMP"); // nothing is lost and nothing is packed only to be unpacked
    return preparePhoto(bytes, pasted);
}

} // namespace

PhotoIntake::PhotoIntake(Workplace &workplace, QObject *parent) : QObject(parent), m_work(workplace) {}

void PhotoIntake::take(const QList<PhotoSource> &sources, const Id<Unit> &unit)
{
    if (sources.isEmpty())
        return;
    const auto record = m_work.desk().get(unit);
    const auto photos = record ? m_work.desk().list<Photo>(QStringLiteral("unit"), unit.text()) : Expected<QList<Photo>>(record.trouble());
    if (!photos)
        return m_work.refuse(photos.trouble());
    Lot lot{.unit = *record, .waiting = sources, .total = static_cast<int>(sources.size()), .change = {}, .there = {}, .refused = {}};
    for (const Photo &photo : *photos)
        lot.there << photo.sha256;
    m_lots.enqueue(lot);
    if (m_lots.size() == 1)
        beginLot();
}

void PhotoIntake::beginLot()
{
    const Lot &lot = m_lots.head();
    ++m_number;
    Q_EMIT began(tr("%n photo(s) for %1", nullptr, lot.total).arg(tagText(lot.unit.tag)));
    next();
}

void PhotoIntake::next()
{
    Lot &lot = m_lots.head();
    const int number = m_number;
    Q_EMIT advanced(lot.total - static_cast<int>(lot.waiting.size()), lot.total);
    if (number != m_number)
        return; // whoever was told has stopped it
    if (lot.waiting.isEmpty())
        return endLot();
    const PhotoSource source = lot.waiting.takeFirst();
    m_background.run([source, pasted = tr("pasted picture")] { return prepared(source, pasted); },
                     [this, number](const Expected<PreparedPhoto> &photo) {
                         if (number == m_number && isBusy())
                             arrived(photo);
                     });
}

void PhotoIntake::arrived(const Expected<PreparedPhoto> &photo)
{
    Lot &lot = m_lots.head();
    if (photo)
        keep(lot, *photo);
    else
        lot.refused << photo.trouble().sentence();
    next();
}

void PhotoIntake::keep(Lot &lot, const PreparedPhoto &photo)
{
    // The bytes go into the workbook one by one, so that a hundred photos are never held at once; none is seen before the change.
    const auto change = keepingPhotos(m_work.desk(), {photo}, {.unit = lot.unit.id, .phase = usualPhase(lot.unit.stage), .caption = {}});
    if (!change) {
        lot.refused << change.trouble().sentence();
        return;
    }
    const auto record = description<Photo>().fromRow(*change->items().first().after);
    if (record && lot.there.contains(record->sha256)) {
        lot.refused << Trouble{tr("%1 was not taken again").arg(photo.originalName), tr("%1 has this photo already").arg(tagText(lot.unit.tag)), {}}.sentence();
        return;
    }
    if (record)
        lot.there << record->sha256;
    if (lot.change.isEmpty())
        lot.change.setSentence(change->sentence());
    lot.change.join(*change);
}

void PhotoIntake::endLot()
{
    Lot lot = m_lots.dequeue();
    if (const auto count = lot.change.items().size(); count > 1)
        lot.change.setSentence(tr("%1 photos").arg(count));
    lot.change.setSentence(tagText(lot.unit.tag) + QLatin1Char(' ') + lot.change.sentence());
    m_work.record(lot.change);
    if (lot.refused.size() > mostSaid) {
        const auto more = static_cast<int>(lot.refused.size() - mostSaid + 1);
        lot.refused = lot.refused.mid(0, mostSaid - 1) << tr("So it went with %n more.", nullptr, more);
    }
    if (!lot.refused.isEmpty())
        m_work.refuse(lot.refused.join(QLatin1Char('\n')));
    if (isBusy())
        beginLot();
    else
        Q_EMIT ended();
}

void PhotoIntake::stop()
{
    if (!isBusy())
        return;
    ++m_number;
    m_background.forget();
    while (m_lots.size() > 1)
        m_lots.removeLast();
    m_lots.head().waiting.clear();
    endLot();
}

} // namespace ts
