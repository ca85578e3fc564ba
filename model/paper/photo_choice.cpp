#include "model/paper/photo_choice.h"

#include "model/paper/plain_words.h"

#include <QBuffer>
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

} // namespace

QList<RestorationFacts::Picture> chosenPictures(const QList<PaperPhoto> &photos, const QDateTime &now)
{
    QList<PaperPhoto> able;
    for (const PaperPhoto &photo : photos)
        if (!photo.record.removed && !jpegSize(photo.jpeg).isEmpty())
            able << photo;
    std::stable_sort(able.begin(), able.end(), [](const PaperPhoto &a, const PaperPhoto &b) {
        const auto instant = [](const Photo &p) { return p.takenAt.isValid() ? p.takenAt : p.at; };
        if (a.record.phase != b.record.phase)
            return a.record.phase < b.record.phase;
        if (a.record.position != b.record.position)
            return a.record.position < b.record.position;
        return instant(a.record) < instant(b.record);
    });

    QList<PaperPhoto> chosen;
    std::copy_if(able.cbegin(), able.cend(), std::back_inserter(chosen), [](const PaperPhoto &p) { return p.record.onSheet; });
    if (chosen.isEmpty()) {
        const auto isFound = [](const PaperPhoto &p) { return p.record.phase == Phase::AsFound; };
        const auto leaves = [](const PaperPhoto &p) { return p.record.phase == Phase::AsItLeaves; };
        if (const auto first = std::find_if(able.cbegin(), able.cend(), isFound); first != able.cend())
            chosen << *first;
        if (const auto last = std::find_if(able.crbegin(), able.crend(), leaves); last != able.crend())
            chosen << *last;
        if (chosen.isEmpty() && !able.isEmpty())
            chosen << able.first();
    }
    // Too many marked: the way from arrival to leaving is kept by dropping from the middle.
    while (chosen.size() > mostPictures)
        chosen.removeAt(chosen.size() / 2);

    QList<RestorationFacts::Picture> pictures;
    for (const PaperPhoto &photo : chosen) {
        const QSize size = jpegSize(photo.jpeg);
        pictures << RestorationFacts::Picture{photo.jpeg, size.width(), size.height(), captionOf(photo.record, now)};
    }
    return pictures;
}

} // namespace ts
