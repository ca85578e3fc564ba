#include "model/keeping/kept_photos.h"

namespace ts {

Phase usualPhase(Stage stage)
{
    switch (stage) {
    case Stage::Scouted:
    case Stage::Inbound:
    case Stage::Shelved:
        return Phase::AsFound;
    case Stage::Bench:
    case Stage::Held:
        return Phase::DuringWork;
    case Stage::Proving:
    case Stage::Ready:
    case Stage::Offered:
    case Stage::Closed:
        break;
    }
    return Phase::AsItLeaves;
}

Expected<Change> keepingPhotos(Desk &desk, const QList<PreparedPhoto> &photos, const PhotoWish &wish)
{
    Change change;
    Maker maker = desk.maker();
    for (const PreparedPhoto &each : photos) {
        const auto sha256 = desk.keep(each.bytes, each.thumbnail);
        if (!sha256)
            return sha256.trouble();
        Photo photo = maker.fresh<Photo>();
        photo.unit = wish.unit;
        photo.sha256 = *sha256;
        photo.phase = wish.phase;
        photo.caption = wish.caption;
        photo.width = each.width;
        photo.height = each.height;
        photo.takenAt = each.takenAt;
        photo.originalName = each.originalName;
        change.add(photo);
    }
    if (photos.size() > 1)
        change.setSentence(QStringLiteral("%1 photos").arg(photos.size()));
    else if (!photos.isEmpty())
        change.setSentence(QStringLiteral("Photo: ") + (wish.caption.isEmpty() ? photos.first().originalName : wish.caption));
    return change;
}

} // namespace ts
