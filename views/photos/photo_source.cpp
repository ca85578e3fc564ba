#include "views/photos/photo_source.h"

#include <QFileInfo>
#include <QMimeData>
#include <QUrl>

#include <algorithm>

namespace ts {

QList<PhotoSource> photosOf(const QMimeData &data)
{
    QList<PhotoSource> sources;
    for (const QUrl &url : data.urls())
        if (url.isLocalFile())
            sources << PhotoSource{url.toLocalFile(), {}};
    if (sources.isEmpty() && data.hasImage())
        if (const QImage image = qvariant_cast<QImage>(data.imageData()); !image.isNull())
            sources << PhotoSource{{}, image};
    return sources;
}

bool areAllPictures(const QList<PhotoSource> &sources)
{
    return std::all_of(sources.begin(), sources.end(), [](const PhotoSource &source) { return source.file.isEmpty() || isCalledPicture(source.file); });
}

bool isCalledPicture(const QString &file)
{
    static const QStringList endings = QStringLiteral("jpg jpeg jpe png webp gif bmp heic heif").split(QLatin1Char(' '));
    return endings.contains(QFileInfo(file).suffix().toLower());
}

QList<PhotoSource> photoFiles(const QStringList &files)
{
    QList<PhotoSource> sources;
    for (const QString &file : files)
        sources << PhotoSource{file, {}};
    return sources;
}

} // namespace ts
