#pragma once

#include "model/paper/restoration_facts.h"
#include "model/records/photo.h"

namespace ts {

/// A photo as a paper gets it: its record and the bytes kept in the workbook.
struct PaperPhoto {
    Photo record;
    QByteArray jpeg;
};

/// The pictures of a sheet with their captions, at most eight, from arrival to leaving: those marked for it; where none is,
/// the first as found and the last as it leaves, and where these are missing the first of the others. Bytes that are no
/// JPEG picture are passed over. `now` gives the time zone of the dates.
[[nodiscard]] QList<RestorationFacts::Picture> chosenPictures(const QList<PaperPhoto> &photos, const QDateTime &now);

} // namespace ts
