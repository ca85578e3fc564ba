#pragma once

#include <QCache>
#include <QImage>
#include <QObject>
#include <QPixmap>
#include <QSet>
#include <QStringList>

namespace ts {

class Desk;

/// The small pictures of kept photos by their SHA-256, each read from the workbook once. One a window; the Workplace has it.
class Thumbnails : public QObject {
    Q_OBJECT
public:
    explicit Thumbnails(Desk &desk, QObject *parent = nullptr);

    /// A photo cut to fill `size` (in device-independent pixels) with rounded corners. Never reads the workbook, so it may be
    /// called while painting: what is not at hand is null, is fetched when the program is idle, and arrived() tells of it.
    [[nodiscard]] QPixmap cover(const QString &sha256, const QSize &size, int radius, qreal devicePixelRatio);
    /// The same, read from the workbook at once where it is not at hand; null where the workbook has no such picture.
    [[nodiscard]] QPixmap coverNow(const QString &sha256, const QSize &size, int radius, qreal devicePixelRatio);
    /// The whole small picture, long side at most 320 pixels, read at once where it is not at hand.
    [[nodiscard]] QImage pictureNow(const QString &sha256);

Q_SIGNALS:
    void arrived(); ///< pictures that were asked for while painting are at hand now

private:
    [[nodiscard]] QPixmap made(const QString &sha256, const QImage &picture, const QSize &size, int radius, qreal devicePixelRatio);
    void fetchSome();

    Desk &m_desk;
    QCache<QString, QImage> m_pictures; ///< cost in bytes
    QCache<QString, QPixmap> m_covers;
    QStringList m_wanted;
    QSet<QString> m_none; ///< asked for and not there
};

} // namespace ts
