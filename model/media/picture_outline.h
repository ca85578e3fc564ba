#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QSize>

namespace ts {

/// The kinds of picture file that are taken in.
enum class PictureFormat { None, Jpeg, Png, WebP, Gif, Bmp };

/// What the structure of a picture file tells without unpacking the picture.
struct PictureOutline {
    PictureFormat format = PictureFormat::None; ///< by the first bytes, whatever the file's name ends in
    QSize size;                                 ///< in pixels as stored; invalid where it is not told (always so for WebP)
    bool reachedEnd = false; ///< the file reaches its own end: one cut off is otherwise drawn half grey and nobody warned
    bool sound = true;       ///< no checksum is wrong
    QByteArrayView metadata; ///< the Exif block, pointing into the file; empty where there is none
};

/// Walks through a file's blocks, not trusting a single length in it.
[[nodiscard]] PictureOutline pictureOutline(const QByteArray &file);

} // namespace ts
