#pragma once

#include <QByteArray>
#include <QDateTime>

namespace ts {

/// What is worth knowing of a picture's metadata before they are dropped.
struct Exif {
    int orientation = 1; ///< 1 to 8, CIPA DC-008 (Exif) tag 274: which side of the stored picture is its top
    QDateTime takenAt;   ///< when the shutter fell, in UTC; invalid where it is not told

    bool operator==(const Exif &) const = default;
};

/// Reads the metadata of a JPEG, PNG or WebP file's bytes. Damaged or absent ones give the defaults; never an error,
/// for a picture is no worse without them. A time without its offset from UTC is taken as this computer's local time.
[[nodiscard]] Exif readExif(const QByteArray &file);

/// The same from the TIFF structure alone, as it stands behind "Exif\0\0" in a JPEG.
[[nodiscard]] Exif readTiff(QByteArrayView tiff);

} // namespace ts
