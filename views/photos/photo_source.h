#pragma once

#include <QImage>
#include <QList>
#include <QString>

class QMimeData;

namespace ts {

/// What is to become a photo: a file, or a picture that was copied.
struct PhotoSource {
    QString file; ///< empty where `image` is the picture
    QImage image;
};

/// What something dropped or copied has of photos: its files, else its picture; empty where it has neither. Files are
/// not looked into.
[[nodiscard]] QList<PhotoSource> photosOf(const QMimeData &data);
/// Whether all files in it are called like pictures, so that nobody can mean their names.
[[nodiscard]] bool areAllPictures(const QList<PhotoSource> &sources);
/// Whether a file is called like a picture: JPEG, PNG, WebP, GIF, BMP; or HEIF, which is refused with a reason.
[[nodiscard]] bool isCalledPicture(const QString &file);
/// The files as sources.
[[nodiscard]] QList<PhotoSource> photoFiles(const QStringList &files);

} // namespace ts
