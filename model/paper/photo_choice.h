#pragma once

#include "model/paper/restoration_facts.h"
#include "model/records/photo.h"
#include "model/values/expected.h"

#include <functional>

namespace ts {

/// A photo as a paper gets it: its record and the bytes kept in the workbook.
struct PaperPhoto {
    Photo record;
    QByteArray jpeg;
};

/// Gives the bytes that the workbook keeps of a photo.
using PhotoBytes = std::function<Expected<QByteArray>(const Photo &)>;

/// The photos of a unit that go on its sheet, at most eight, from arrival to leaving: those marked for it; where none is, the
/// first as found and the last as it leaves, and where these are missing the first of the others. Bytes that are no JPEG picture
/// are passed over. Bytes are asked for only where they may be needed; not getting them is refused.
[[nodiscard]] Expected<QList<PaperPhoto>> photosForSheet(const QList<Photo> &photos, const PhotoBytes &bytes);

/// The same choice among photos at hand, as pictures with their captions. `now` gives the time zone of the dates.
[[nodiscard]] QList<RestorationFacts::Picture> chosenPictures(const QList<PaperPhoto> &photos, const QDateTime &now);

} // namespace ts
