#pragma once

#include "model/desk/desk.h"
#include "model/media/prepared_photo.h"

namespace ts {

/// What goes with photos that are put on a unit.
struct PhotoWish {
    Id<Unit> unit;
    Phase phase = Phase::DuringWork;
    QString caption;
};

/// The phase that a photo most likely shows by where its unit stands: as found before the bench, as it leaves from Proving on.
[[nodiscard]] Phase usualPhase(Stage stage);

/// Keeps the bytes of the photos in the workbook and answers the change that puts them on a unit; nothing is seen of them before
/// it is applied. The change has no tag in its sentence: "Photo: lid.jpg", "3 photos".
[[nodiscard]] Expected<Change> keepingPhotos(Desk &desk, const QList<PreparedPhoto> &photos, const PhotoWish &wish);

} // namespace ts
