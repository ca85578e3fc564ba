#include "model/paper/photo_choice.h"

#include "model/paper/plain_words.h"

#include <QBuffer>
#include <QHash>
#include <QImageReader>
#include <QLocale>
#include <QTimeZone>

#include <algorithm>

namespace ts {

namespace {

constexpr qsizetype mostPictures = 8;

QSize jpegSize(const QByteArray &bytes)
{
    if (!bytes.startsWith("\xff\xd8"))
        return {};
    QBuffer buffer;
    buffer.setData(bytes);
    return QImageReader(&buffer, "jpeg").size();
}

QString captionOf(const Photo &photo, const QDateTime &now)
{
    const QDateTime at = photo.takenAt.isValid() ? photo.takenAt : photo.at;
    const QString day = at.isValid() ? QStringLiteral(", ") +
                                           QLocale::c().toString(at.toTimeZone(now.timeZone()).date(), QStringLiteral("d MMMM"))
                                     : QString();
    const QString own = withoutBareClaims(photo.caption).replace(QLatin1Char('\n'), QLatin1Char(' '));
    const QString rest = own.isEmpty() ? QString() : QStringLiteral(": ") + own;
    switch (photo.phase) {
    case Phase::AsFound:
        return QStringLiteral("As it arrived") + day + rest;
    case Phase::AsItLeaves:
        return QStringLiteral("As it leaves") + day + rest;
    case Phase::DuringWork:
        break;
    }
    return own.isEmpty() ? QStringLiteral("During the work") + day : own;
}

/// Which of the photos go on the sheet, in its order. `usable` says whether a photo's bytes are a picture.
QList<qsizetype> choice(const QList<Photo> &photos, const std::function<bool(qsizetype)> &usable)
{
    QList<qsizetype> order;
    for (qsizetype i = 0; i < photos.size(); ++i)
        if (!photos.at(i).removed)
            order << i;
    std::stable_sort(order.begin(), order.end(), [&](qsizetype left, qsizetype right) {
        const auto instant = [](const Photo &p) { return p.takenAt.isValid() ? p.takenAt : p.at; };
        const Photo &a = photos.at(left);
        const Photo &b = photos.at(right);
        if (a.phase != b.phase)
            return a.phase < b.phase;
        if (a.position != b.position)
            return a.position < b.position;
        return instant(a) < instant(b);
    });

    // Of too many marked, the way from arrival to leaving is kept by dropping from the middle; only those that stay are looked at,
    // and one that is no picture gives its place to another.
    QList<qsizetype> marked;
    std::copy_if(order.cbegin(), order.cend(), std::back_inserter(marked), [&](qsizetype i) { return photos.at(i).onSheet; });
    QList<qsizetype> chosen;
    for (bool again = true; again;) {
        chosen = marked;
        while (chosen.size() > mostPictures)
            chosen.removeAt(chosen.size() / 2);
        const auto bad = std::find_if_not(chosen.cbegin(), chosen.cend(), usable);
        again = bad != chosen.cend();
        if (again)
            marked.removeOne(*bad);
    }
    if (chosen.isEmpty()) {
        const auto first = std::find_if(order.cbegin(), order.cend(), [&](qsizetype i) { return photos.at(i).phase == Phase::AsFound && usable(i); });
        const auto last = std::find_if(order.crbegin(), order.crend(), [&](qsizetype i) { return photos.at(i).phase == Phase::AsItLeaves && usable(i); });
        if (first != order.cend())
            chosen << *first;
        if (last != order.crend())
            chosen << *last;
        if (const auto any = chosen.isEmpty() ? std::find_if(order.cbegin(), order.cend(), usable) : order.cend(); any != order.cend())
            chosen << *any;
    }
    return chosen;
}

} // namespace

Expected<QList<PaperPhoto>> photosForSheet(const QList<Photo> &photos, const PhotoBytes &bytes)
{
    QHash<qsizetype, QByteArray> read;
    std::optional<Trouble> trouble;
    const QList<qsizetype> chosen = choice(photos, [&](qsizetype i) {
        if (trouble || read.contains(i))
            return !trouble;
        const auto got = bytes(photos.at(i));
        if (!got) {
            trouble = got.trouble();
            return false;
        }
        if (jpegSize(*got).isEmpty())
            return false;
        read.insert(i, *got);
        return true;
    });
    if (trouble)
        return *trouble;
    QList<PaperPhoto> list;
    for (const qsizetype i : chosen)
        list << PaperPhoto{photos.at(i), read.value(i)};
    return list;
}

QList<RestorationFacts::Picture> chosenPictures(const QList<PaperPhoto> &photos, const QDateTime &now)
{
    QList<Photo> records;
    for (const PaperPhoto &photo : photos)
        records << photo.record;
    QList<RestorationFacts::Picture> pictures;
    for (const qsizetype i : choice(records, [&](qsizetype at) { return !jpegSize(photos.at(at).jpeg).isEmpty(); })) {
        const PaperPhoto &photo = photos.at(i);
        const QSize size = jpegSize(photo.jpeg);
        pictures << RestorationFacts::Picture{photo.jpeg, size.width(), size.height(), captionOf(photo.record, now)};
    }
    return pictures;
}

} // namespace ts
