#pragma once

#include <QImage>
#include <QStringList>

namespace ts {

/// The texts of the codes that a picture shows (Code 128 and QR), each once. Large pictures are looked at in two sizes.
[[nodiscard]] QStringList codesIn(const QImage &picture);

/// The tag whose label the picture shows: a code of one to six digits and nothing else. 0 where there is none, or several that
/// differ; whether there is such a unit is not looked up.
[[nodiscard]] int tagInPicture(const QImage &picture);
/// The same of a picture file; 0 where it cannot be read.
[[nodiscard]] int tagInPictureFile(const QString &file);

} // namespace ts
