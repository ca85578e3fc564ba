#include "views/photos/thumbnails.h"

#include "model/desk/desk.h"
#include "views/widgets/rounded.h"

#include <QTimer>

namespace ts {

namespace {

constexpr qsizetype mostBytes = 48 * 1024 * 1024; // of either kind: about 150 whole small pictures
constexpr int atOnce = 6;                         // a few milliseconds of reading between two looks at the keyboard

QString coverKey(const QString &sha256, const QSize &size, int radius, qreal devicePixelRatio)
{
    return QStringLiteral("%1 %2 %3 %4 %5").arg(sha256).arg(size.width()).arg(size.height()).arg(radius).arg(devicePixelRatio);
}

} // namespace

Thumbnails::Thumbnails(Desk &desk, QObject *parent) : QObject(parent), m_desk(desk), m_pictures(mostBytes), m_covers(mostBytes)
{
    // What was not there may be now: a server that came back, a photo that somebody else put in.
    connect(&m_desk, &Desk::recorded, this, [this] { m_none.clear(); });
    connect(&m_desk, &Desk::everythingChanged, this, [this] { m_none.clear(); });
}

QPixmap Thumbnails::cover(const QString &sha256, const QSize &size, int radius, qreal devicePixelRatio)
{
    if (const QPixmap *at = m_covers.object(coverKey(sha256, size, radius, devicePixelRatio)))
        return *at;
    if (const QImage *picture = m_pictures.object(sha256))
        return made(sha256, *picture, size, radius, devicePixelRatio);
    if (sha256.isEmpty() || m_none.contains(sha256) || m_wanted.contains(sha256))
        return {};
    if (m_wanted.isEmpty())
        QTimer::singleShot(0, this, &Thumbnails::fetchSome);
    m_wanted << sha256;
    return {};
}

QPixmap Thumbnails::coverNow(const QString &sha256, const QSize &size, int radius, qreal devicePixelRatio)
{
    if (const QPixmap *at = m_covers.object(coverKey(sha256, size, radius, devicePixelRatio)))
        return *at;
    const QImage picture = pictureNow(sha256);
    return picture.isNull() ? QPixmap() : made(sha256, picture, size, radius, devicePixelRatio);
}

QImage Thumbnails::pictureNow(const QString &sha256)
{
    if (const QImage *at = m_pictures.object(sha256))
        return *at;
    if (sha256.isEmpty() || m_none.contains(sha256))
        return {};
    const auto bytes = m_desk.thumbnail(sha256);
    const QImage picture = bytes ? QImage::fromData(*bytes) : QImage();
    if (picture.isNull())
        m_none << sha256;
    else
        m_pictures.insert(sha256, new QImage(picture), picture.sizeInBytes());
    return picture;
}

QPixmap Thumbnails::made(const QString &sha256, const QImage &picture, const QSize &size, int radius, qreal devicePixelRatio)
{
    const QPixmap cover = roundedCover(picture, size, radius, devicePixelRatio);
    m_covers.insert(coverKey(sha256, size, radius, devicePixelRatio), new QPixmap(cover), qsizetype(cover.width()) * cover.height() * 4);
    return cover;
}

void Thumbnails::fetchSome()
{
    for (int i = 0; i < atOnce && !m_wanted.isEmpty(); ++i)
        [[maybe_unused]] const QImage picture = pictureNow(m_wanted.takeFirst());
    if (!m_wanted.isEmpty())
        QTimer::singleShot(0, this, &Thumbnails::fetchSome);
    Q_EMIT arrived();
}

} // namespace ts
