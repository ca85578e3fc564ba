// The photo beside the teardown list, and the pins on it.
#include "views/photos/thumbnails.h"
#include "views/teardown/pinned_photo.h"
#include "views/teardown/teardown_page.h"
#include "views/widgets/background.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"

#include <QLabel>
#include <QListWidget>

namespace ts {

// The photo that shows an item: that of its pins, else its own.
QUuid TeardownPage::photoOf(const TeardownItem &item) const
{
    const Photo *shown = photoAtHand();
    QUuid found;
    for (const PhotoPin &pin : file().all<PhotoPin>())
        if (pin.item == item.id) {
            if (shown && pin.photo == shown->id)
                return pin.photo.value;
            found = pin.photo.value;
        }
    return found.isNull() ? item.photo.value : found;
}

const Photo *TeardownPage::photoAtHand() const
{
    const QListWidgetItem *item = m_photos->currentItem();
    return item ? file().find(Id<Photo>{item->data(Qt::UserRole).toUuid()}) : nullptr;
}

void TeardownPage::refreshPhotos()
{
    const QList<Photo> &photos = file().all<Photo>();
    QList<QUuid> wanted;
    for (const Photo &photo : photos)
        wanted << photo.id.value;
    QList<QUuid> there;
    for (int i = 0; i < m_photos->count(); ++i)
        there << m_photos->item(i)->data(Qt::UserRole).toUuid();
    if (wanted != there) {
        const QUuid before = m_photos->currentItem() ? m_photos->currentItem()->data(Qt::UserRole).toUuid() : QUuid();
        const QSignalBlocker quiet(m_photos);
        m_photos->clear();
        for (const Photo &photo : photos) {
            auto *item = new QListWidgetItem(m_photos);
            item->setData(Qt::UserRole, photo.id.value);
            item->setIcon(QIcon(work().thumbnails().coverNow(photo.sha256, m_photos->iconSize(), 4, devicePixelRatioF())));
            const QString name = photo.caption.isEmpty() ? shown::dayAndTime(photo.takenAt.isValid() ? photo.takenAt : photo.at) : photo.caption;
            item->setToolTip(name.toHtmlEscaped());
            item->setData(Qt::AccessibleTextRole, name);
        }
        m_photos->setCurrentRow(static_cast<int>(std::max<qsizetype>(0, wanted.indexOf(before))));
    }
    m_photos->setHidden(photos.isEmpty());
    m_photo->setHidden(photos.isEmpty());
    m_noPhoto->setHidden(!photos.isEmpty());
    showPhoto();
}

// First the small picture, at once; then the whole one, unpacked beside the window to no more than a screen needs.
void TeardownPage::showPhoto()
{
    const Photo *photo = photoAtHand();
    const QString sha256 = photo ? photo->sha256 : QString();
    if (sha256 == m_shown)
        return;
    m_shown = sha256;
    m_background->forget();
    if (!photo)
        return m_photo->setPicture({}, {});
    const QString caption = tr("%1 · click to pin the item at hand").arg(photo->caption.isEmpty() ? shown::dayAndTime(photo->takenAt.isValid() ? photo->takenAt : photo->at) : photo->caption);
    m_photo->setPicture(work().thumbnails().pictureNow(sha256), caption);
    const auto bytes = work().desk().kept(sha256);
    if (!bytes)
        return;
    m_background->run([kept = *bytes] { return QImage::fromData(kept).scaled(1600, 1600, Qt::KeepAspectRatio, Qt::SmoothTransformation); },
                      [this, sha256, caption](const QImage &whole) {
                          if (sha256 == m_shown && !whole.isNull())
                              m_photo->setPicture(whole, caption);
                      });
}

void TeardownPage::refreshPins()
{
    const Photo *photo = photoAtHand();
    QList<PinnedPhoto::Pin> pins;
    if (photo)
        for (const PhotoPin &pin : file().all<PhotoPin>()) {
            if (pin.photo != photo->id)
                continue;
            const TeardownItem *item = file().find(pin.item);
            pins << PinnedPhoto::Pin{pin.id.value, item ? shown::count(item->position) : pin.label, pin.x, pin.y, item && item->id.value == m_table->currentKey()};
        }
    m_photo->setPins(pins);
}

} // namespace ts
