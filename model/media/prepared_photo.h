#pragma once

#include "model/values/expected.h"

#include <QByteArray>
#include <QDateTime>
#include <QString>

namespace ts {

/// A picture as the workbook keeps it: upright, of a sensible size, without a word about where or with what it was taken.
struct PreparedPhoto {
    QByteArray bytes;     ///< JPEG, long side at most 2560
    QByteArray thumbnail; ///< JPEG, long side at most 320
    int width = 0;        ///< of `bytes`, in pixels
    int height = 0;
    QDateTime takenAt;    ///< in UTC; invalid where the picture does not tell
    QString originalName; ///< file name without its folder

    bool operator==(const PreparedPhoto &) const = default;
};

/// Reads a picture file (JPEG, PNG, WebP, GIF, BMP) and makes it ready to be kept. The file itself is only read.
/// Refused, in one sentence: a file that is not there, is empty, is no such picture, is cut off, or is too large.
[[nodiscard]] Expected<PreparedPhoto> preparePhoto(const QString &file);

/// The same from bytes at hand, a pasted picture for one; `name` is what a refusal calls it.
[[nodiscard]] Expected<PreparedPhoto> preparePhoto(const QByteArray &data, const QString &name);

} // namespace ts
